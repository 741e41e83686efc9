using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Design;

/// <content>Does the fuse hold while the load starts.</content>
internal sealed partial class CircuitEvaluator
{
    private static readonly Reference StartReference = Reference.CommonPractice("a fuse must not open while its load starts");

    private readonly List<Inrush> surges = [];
    private bool surged;

    private void CheckStart(ref CheckList list, FuseRating fuse)
    {
        double ohms = StartOhms;
        if (!surged)
        {
            // The same for every fuse on this wire.
            surges.Clear();
            load.AddInrush(source.MaximumVolts, ohms, surges);
            surged = true;
        }

        if (FindStart(fuse, ohms) is { } found)
        {
            list.Add(found.Check);
        }
    }

    /// <summary>The surge that is hardest on the fuse, of those of the last check; null when none exceeds the rating.</summary>
    internal (CheckResult Check, Inrush Surge, double PeakAmperes)? FindStart(FuseRating fuse) => FindStart(fuse, StartOhms);

    /// <summary>The least resistance that a surge meets, Ω.</summary>
    internal double StartOhms => Math.Max(Accept.Least, source.LeastOhms + PathOhmsAt(Ambient));

    private (CheckResult Check, Inrush Surge, double PeakAmperes)? FindStart(FuseRating fuse, double ohms)
    {
        (CheckResult Check, Inrush Surge, double PeakAmperes)? hardest = null;
        for (int i = 0; i < surges.Count; i++)
        {
            double peak = TogetherAmperes(i, source.MaximumVolts / ohms);
            if (Math.Min(peak, source.HeldAmperes) > fuse.Amperes)
            {
                CheckResult check = StartCheck(fuse, surges[i], peak);
                hardest = hardest is { } known && !Harder(check, known.Check) ? known : (check, surges[i], peak);
            }
        }

        return hardest;
    }

    // Surges of the same shape come at the same time: four lamps switched together. The path bounds what they can draw.
    private double TogetherAmperes(int index, double mostAmperes)
    {
        double peak = 0;
        foreach (Inrush surge in surges)
        {
            bool alike = surge.Wave == surges[index].Wave && surge.Seconds.Equals(surges[index].Seconds);
            peak += alike ? surge.PeakAmperes : 0;
        }

        return Math.Min(peak, Math.Max(mostAmperes, surges[index].PeakAmperes));
    }

    private CheckResult StartCheck(FuseRating fuse, Inrush surge, double peak)
    {
        // The time that the peak, held, would need to let the same Joule integral through. A source at its limit gives the same charge, later.
        double held = Math.Min(peak, source.HeldAmperes);
        double seconds = held < peak ? surge.Seconds * peak / held : surge.AmpereSquaredSeconds / (surge.PeakAmperes * surge.PeakAmperes);
        return fuse.TryLeastSeconds(held, out double least)
            ? new CheckResult(CheckKind.InrushHeld, seconds, least, StartReference, new CheckNote(NoteKind.Surge, surge.Load, held))
            : CheckResult.Undetermined(CheckKind.InrushHeld, seconds, StartReference, new CheckNote(NoteKind.NoLeastTime, new FuseAndLoad(fuse, surge.Load), held));
    }

    // A failure before an open point before a pass; of two alike the one with less margin.
    private static bool Harder(in CheckResult check, in CheckResult than) =>
        Rank(check) != Rank(than) ? Rank(check) > Rank(than) : check.Margin < than.Margin;

    private static int Rank(in CheckResult check) => check.Outcome switch { CheckOutcome.Fail => 2, CheckOutcome.Undetermined => 1, _ => 0 };
}
