using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The fuse against the wire over every current from the conventional fusing current to the prospective one.</content>
public abstract partial class CheckKind
{
    /// <summary>
    /// Does the fuse open before an overload, at any current up to the prospective one, takes the conductor too far? °C, at most: settled at the largest current that
    /// the fuse need not open, or reached where time is shortest, whichever is nearer to its limit.
    /// </summary>
    public static CheckKind OverloadTemperature { get; } = Register(new OverloadTemperatureCheck());
}

internal sealed class OverloadTemperatureCheck()
    : Check(200, nameof(OverloadTemperature), "overload temperature", "°C", limitIsLeast: false, SheetSection.Overload, ("θ_ov", "θ_ol"))
{
    private enum Word : byte
    {
        None,
        NoTimes,
        NotRated,
        Opened,
        Held,
        Melts,
    }

    // Which of the two numbers is shown.
    private enum Shown : byte
    {
        Settled,
        Reached,
    }

    internal override string Where => "wire";

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse || at.Practice.Overload is not { } allowance || at.SupplyIsWeak)
        {
            // The rule on currents was taken instead, or the supply cannot overload the wire.
            return false;
        }

        if (!at.IsRated)
        {
            result = Unknown(allowance.Reference, CheckSubject.Of((byte)Word.NotRated));
            return true;
        }

        if (fuse.FaultCurve is not { } curve)
        {
            result = Unknown(allowance.Reference, CheckSubject.Of((byte)Word.NoTimes, fuse.Untimed));
            return true;
        }

        if (at.AskedFor != AskedFor.Everything && (Protects(at, curve, allowance) is var protects) && (protects || at.AskedFor == AskedFor.Verdict))
        {
            result = Judged(protects, double.NaN, double.NaN, allowance.Reference, default);
            return true;
        }

        Finding found = default;
        Find(at, fuse, curve, allowance, ref found);
        result = Judged(
            found.Point.Ratio >= 1, found.Celsius, found.LimitCelsius, allowance.Reference,
            new CheckSubject { Note = (byte)found.Word, About = fuse, Number = found.Amperes, Stretch = at.NameOf(found.Stretch) });
        return true;
    }

    internal override string Note(in CheckResult result) => (Word)result.NoteKind switch
    {
        Word.NoTimes => $"no operating times are published for the {result.About}",
        Word.NotRated => "the wire is not rated here",
        Word.Opened => Opened((FuseRating)result.About!, result.Number),
        Word.Held => $"tightest up to {Accept.Short(result.Number)} A, at which the {result.About} need not open",
        Word.Melts => $"tightest at {Accept.Short(result.Number)} A, where the {result.About} lets the wire melt; its melting point is shown",
        _ => "",
    };

    private static string Opened(FuseRating fuse, double amperes) => fuse.TryLongestSeconds(amperes, out double seconds)
        ? $"tightest at {Accept.Short(amperes)} A, which the {fuse} may let pass for {Accept.Short(seconds)} s"
        : $"tightest at {Accept.Short(amperes)} A";

    internal override string Advice(in CheckResult result, BranchState at) => (Word)result.NoteKind == Word.NotRated
        ? Unrated.Advice
        : result.Outcome == CheckOutcome.Undetermined ? FuseData.Missing
        : "An overload that the fuse does not interrupt overheats the wire: use a smaller fuse, a larger wire, a cooler place, fewer conductors together, or better insulation.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        BranchState at = sheet.At;
        if (!result.HasNumbers)
        {
            return;
        }

        FuseRating fuse = at.Fuse!;
        Finding found = default;
        Find(at, fuse, fuse.FaultCurve!, at.Practice.Overload!, ref found);
        if (!sheet.IsRated(found.Stretch))
        {
            return;
        }

        SegmentState s = at.Stretches[found.Stretch];
        sheet.Tell(found.Stretch, "stretch that an overload is hardest on");
        Symbol continuous = sheet.ContinuousOf(found.Stretch);
        Ampacity.RatingLetters letters = sheet.LettersOf(found.Stretch);
        CoolingSymbols cooling = sheet.Cooling(found.Stretch);
        OverloadSteps steps = new(sheet.Board, new OverloadLetters
        {
            Wire = s.Site.WireOf(s.Conductor),
            Allowance = at.Practice.Overload!,
            Ambient = letters.Ambient,
            RatedAmbient = cooling.Ambient,
            Continuous = continuous,
            Rated = cooling.Amperes,
            RatedCelsius = cooling.Celsius,
            Parallel = s.Parallel,
            Mark = letters.Mark,
            StartsHot = at.FaultStartCelsius(found.Stretch).Equals(continuous.Value),
            StartLetter = Sheet.StartLetter(found.Stretch),
            StartWords = Sheet.StartWords,
        }, fuse.FaultCurve!, fuse.Series.Reference);
        steps.Write(found.Limits, found.Point);
        Symbol? value = (found.Shown == Shown.Settled ? steps.Settled : steps.Reached) ?? sheet.Board.Find("θ_m");
        if (found.Word != Word.Melts && found.Celsius.Equals(found.Limits.StartCelsius))
        {
            // It starts above its limit, and cools.
            value = sheet.FaultStart(found.Stretch);
        }

        if (value is not null)
        {
            sheet.Value(this, value);
        }

        sheet.Limit(this, found.Shown == Shown.Reached && steps.ReachedLimit is { } most ? most : steps.SettledLimit);
    }

    private static bool Protects(BranchState at, TimeCurrentCurve curve, OverloadAllowance allowance)
    {
        for (int i = 0; i < at.Stretches.Length; i++)
        {
            if (!FuseAgainstWireKernel.Protects(at.LimitsOf(i, allowance), curve, at.BoundedAtFuseAmperes))
            {
                return false;
            }
        }

        return true;
    }

    // The stretch and the current at which the fuse is nearest to failing its wire. Currents that the fuse need never open make every stretch alike by time: then
    // the one nearest to its limit, or furthest beyond it.
    private static void Find(BranchState at, FuseRating fuse, TimeCurrentCurve curve, OverloadAllowance allowance, ref Finding worst)
    {
        double prospective = at.BoundedAtFuseAmperes;
        worst.Stretch = -1;
        for (int i = 0; i < at.Stretches.Length; i++)
        {
            ref readonly WireLimits limits = ref at.LimitsOf(i, allowance);
            TightestPoint point = FuseAgainstWireKernel.Verdict(limits, curve, prospective);
            if (worst.Stretch >= 0 && point.Ratio > worst.Point.Ratio)
            {
                continue;
            }

            Finding found = new() { Stretch = i, Point = point, Limits = limits };
            Show(fuse, ref found);
            if (worst.Stretch < 0 || point.Ratio < worst.Point.Ratio || found.Margin < worst.Margin)
            {
                worst = found;
            }
        }
    }

    // What the wire settles at under the largest current that the fuse need not open, and what it reaches where time is shortest: the one nearer to its limit is shown.
    private static void Show(FuseRating fuse, ref Finding found)
    {
        ShowAt(fuse, found.Point.Amperes, found.Point.Regime, ref found);
        if (found.Point.Regime == ProtectionRegime.Sustained || found.Point.Ratio < 1)
        {
            return;
        }

        Finding settled = found;
        ShowAt(fuse, Math.Min(fuse.FaultCurve!.FusingAmperes, found.Point.Amperes), ProtectionRegime.Sustained, ref settled);
        found = settled.Margin < found.Margin ? settled : found;
    }

    private static void ShowAt(FuseRating fuse, double amperes, ProtectionRegime regime, ref Finding found)
    {
        bool opens = fuse.TryLongestSeconds(amperes, out double seconds) && regime != ProtectionRegime.Sustained;
        double? reached = found.Limits.ReachedCelsius(amperes, opens ? seconds : null);
        found.Word = reached is null ? Word.Melts : opens ? Word.Opened : Word.Held;
        found.Shown = regime == ProtectionRegime.Sustained ? Shown.Settled : Shown.Reached;
        found.Amperes = amperes;

        // A wire that starts above its limit fails there, whatever it cools to.
        found.Celsius = Math.Max(reached ?? found.Limits.Heat.MostCelsius, found.Point.Ratio >= 1 ? double.NegativeInfinity : found.Limits.StartCelsius);
        found.LimitCelsius = found.Limits.LimitCelsius(regime);
    }

    private struct Finding
    {
        internal int Stretch;
        internal TightestPoint Point;
        internal WireLimits Limits;
        internal Word Word;
        internal Shown Shown;
        internal double Amperes;
        internal double Celsius;
        internal double LimitCelsius;

        internal readonly double Margin => (LimitCelsius - Celsius) / Math.Abs(LimitCelsius);
    }
}
