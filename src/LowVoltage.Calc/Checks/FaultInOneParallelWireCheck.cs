using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <content>A fault in one of several wires in parallel.</content>
public abstract partial class CheckKind
{
    /// <summary>Where wires lie in parallel: does one of them survive a fault anywhere along it until the fuse opens? °C, at most.</summary>
    public static CheckKind FaultInOneParallelWire { get; } = Register(new FaultInOneParallelWireCheck());
}

internal sealed class FaultInOneParallelWireCheck()
    : Check(170, nameof(FaultInOneParallelWire), "fault in one of the parallel wires", "°C", limitIsLeast: false, SheetSection.FarEnd, ("θ_pv", "θ_pl"))
{
    private enum Word : byte
    {
        None,
        NoTimes,
    }

    internal override string Where => "wire";

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse || !Array.Exists(at.Stretches, s => s.Parallel > 1) || at.AtFuseAmperes <= LeastOfOneWire(at, out int _))
        {
            // No wires in parallel, or a supply that cannot push more than one of them carries continuously.
            return false;
        }

        if (fuse.FaultCurve is not { } curve)
        {
            result = Unknown(ParallelWireFault.Reference, CheckSubject.Of((byte)Word.NoTimes, fuse.Untimed));
            return true;
        }

        (int stretch, ParallelWirePoint point, double limit) = Find(at, curve);
        double melting = at.Stretches[stretch].Conductor.Material.MeltingPointCelsius;
        CheckSubject about = new() { About = new Place(fuse, point), Stretch = at.NameOf(stretch) };
        result = double.IsInfinity(point.Celsius)
            ? InWords(CheckOutcome.Fail, ParallelWireFault.Reference, about)
            : Judge(Math.Min(point.Celsius, melting), limit, ParallelWireFault.Reference, about);
        return true;
    }

    internal override string Note(in CheckResult result) => (Word)result.NoteKind == Word.NoTimes
        ? $"no operating times are published for the {result.About}"
        : result.About?.ToString() ?? "";

    internal override string Advice(in CheckResult result, BranchState at) => result.Outcome == CheckOutcome.Undetermined
        ? FuseData.Missing
        : "A fault in one of the parallel wires burns it before the common fuse opens: use one thicker wire, fewer and thicker wires, or a fuse for each wire at both ends.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (!result.HasNumbers)
        {
            return;
        }

        (int stretch, ParallelWirePoint point, double limit) = Find(sheet.At, sheet.At.Fuse!.FaultCurve!);
        SegmentState s = sheet.At.Stretches[stretch];
        sheet.Tell(stretch, "stretch whose wires lie in parallel");
        Working.Symbol share = sheet.Board.LookUp(
            $"share of the fault's current in the hotter part of that wire, the fault at {Accept.Short(100 * point.Position)} % of its length", "s_w", point.Share, "", ParallelWireFault.Reference,
            "Kirchhoff: the near part carries (1 − x + c)/(1 + c), the far part x/(1 + c), c = 1/(n − 1); at most, as the wires heat.");
        Working.Symbol energy = sheet.Board.LookUp("greatest Joule integral that the fuse lets through there", "I²t_w", point.Joules, "A²·s", null, "From its longest times, over all currents that may flow.");
        Working.Symbol own = sheet.Board.Step("Joule integral in that wire", "I²t_1", Working.Formula.Square(share) * energy, point.Share * point.Share * point.Joules, "A²·s", null);
        sheet.Value(this, Heating.AdiabaticHeating.WriteFinal(
            sheet.Board, s.Conductor.Material, sheet.EffectiveSection(s.Conductor), own, sheet.FaultStart(stretch), Math.Min(point.Celsius, s.Conductor.Material.MeltingPointCelsius), "w"));
        sheet.Limit(this, sheet.Board.LookUp("limit of the insulation in a short circuit", "θ_sc", limit, "°C", s.Site.Insulation.Reference, "For at most 5 s."));
    }

    /// <summary>What one of the wires that lie in parallel carries continuously, A; the least of all stretches, infinite where none do.</summary>
    internal static double LeastOfOneWire(BranchState at, out int stretch)
    {
        double least = double.PositiveInfinity;
        stretch = -1;
        for (int i = 0; i < at.Stretches.Length; i++)
        {
            ref readonly SegmentState s = ref at.Stretches[i];
            if (s.Parallel > 1 && s.RatedAmperes / s.Parallel < least)
            {
                (least, stretch) = (s.RatedAmperes / s.Parallel, i);
            }
        }

        return least;
    }

    // The stretch and the place where it is worst. The way back of such a fault is not known: from none at all to the whole of it.
    private static (int Stretch, ParallelWirePoint Point, double Limit) Find(BranchState at, TimeCurrentCurve curve)
    {
        double leastOhms = Math.Max(Accept.Least, at.Source.LeastOhms + (at.UpstreamOhms ?? 0)), greatestOhms = at.Source.GreatestOhms + at.HotPathOhms;
        FaultSupply supply = FaultSupply.Of(at.Weakest.MinimumVolts, at.Source.MaximumVolts, leastOhms, Math.Max(leastOhms, greatestOhms), at.Source.HeldAmperes,
            at.Source.HeldThrough(Circuits.SupplyLevel.Maximum, leastOhms));
        (int Stretch, ParallelWirePoint Point, double Limit) worst = (-1, default, 0);
        for (int i = 0; i < at.Stretches.Length; i++)
        {
            ref readonly SegmentState s = ref at.Stretches[i];
            if (s.Parallel == 1)
            {
                continue;
            }

            double limit = Math.Min(s.Site.Insulation.ShortCircuitCelsiusFor(s.Conductor.AreaSquareMillimeters), s.Conductor.Material.MeltingPointCelsius);
            double start = Math.Min(at.FaultStartCelsius(i), limit), cold = Math.Min(s.CoolCelsius, start);
            ParallelWirePoint point = new ParallelWireKernel(s.Conductor, s.Parallel, s.Meters, cold, start, limit, supply, curve).Worst();
            if (worst.Stretch < 0 || point.Celsius - limit > worst.Point.Celsius - worst.Limit)
            {
                worst = (i, point, limit);
            }
        }

        return worst;
    }

    private sealed class Place(FuseRating fuse, ParallelWirePoint point)
    {
        public override string ToString()
        {
            string place = $"worst with the fault at {Accept.Short(100 * point.Position)} % of the length, where one wire carries {Accept.Short(100 * point.Share)} % of the current";
            return double.IsInfinity(point.Celsius) ? $"{place}: at the {Accept.Short(point.LeastAmperes)} A that may flow the {fuse} need not open" : place;
        }
    }
}
