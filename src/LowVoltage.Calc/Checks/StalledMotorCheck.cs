using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Checks;

/// <content>A stalled motor.</content>
public abstract partial class CheckKind
{
    /// <summary>
    /// Where a motor can stall: does the fuse open before its wire is too hot? °C, at most. Where the fuse need not open and the wire bears it, the motor
    /// needs a thermal cut-out: undetermined until the load says that it has one.
    /// </summary>
    public static CheckKind StalledMotor { get; } = Register(new StalledMotorCheck());
}

internal sealed class StalledMotorCheck()
    : Check(180, nameof(StalledMotor), "wire temperature with the motor stalled", "°C", limitIsLeast: false, SheetSection.Overload, ("θ_sv", "θ_sl"))
{
    private enum Word : byte
    {
        None,
        NoTimes,
        NotRated,
        NeverOpens,
        CutOut,
        Melts,
    }

    internal override bool IsOfStart => true;

    internal override string Where => "wire";

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (at.Fuse is not { } fuse || !at.Load.CanStall || !at.Duty.Exists || at.Practice.Overload is not { } allowance)
        {
            return false;
        }

        if (!at.IsRated)
        {
            result = Unknown(Protection.StalledMotor.Reference, CheckSubject.Of((byte)Word.NotRated));
            return true;
        }

        (double least, double greatest) = Currents(at);
        if (at.AskedFor == AskedFor.Verdict && fuse.FaultCurve is { } curve && at.Stretches.Length == 1)
        {
            StallOutcome outcome = Protection.StalledMotor.OutcomeOf(at.LimitsOf(0, allowance), curve, least, greatest);
            result = outcome == StallOutcome.WireBears && !at.Load.HasThermalCutOut
                ? Unknown(Protection.StalledMotor.Reference, CheckSubject.Of((byte)Word.NeverOpens, fuse))
                : Judged(outcome != StallOutcome.WireTooHot, double.NaN, double.NaN, Protection.StalledMotor.Reference, default);
            return true;
        }

        (int stretch, StallFinding found) = Find(at, fuse.FaultCurve, allowance, least, greatest);
        result = found.Outcome == StallOutcome.NotEvaluated
            ? Unknown(Protection.StalledMotor.Reference, CheckSubject.Of((byte)Word.NoTimes, fuse.Untimed))
            : Answer(at, fuse, stretch, found, least);
        return true;
    }

    private CheckResult Answer(BranchState at, FuseRating fuse, int stretch, in StallFinding found, double least)
    {
        StretchName? name = at.NameOf(stretch);
        if (found.Outcome == StallOutcome.WireBears && !at.Load.HasThermalCutOut)
        {
            return Unknown(Protection.StalledMotor.Reference, new CheckSubject { Note = (byte)Word.NeverOpens, About = fuse, Number = least, Stretch = name });
        }

        double celsius = found.Reached ?? at.Stretches[stretch].Conductor.Material.MeltingPointCelsius;

        // A wire that starts above its limit fails there, whatever it cools to.
        celsius = found.Outcome == StallOutcome.WireTooHot ? Math.Max(celsius, at.FaultStartCelsius(stretch)) : celsius;
        Word word = found.Reached is null ? Word.Melts : found.Outcome == StallOutcome.WireBears ? Word.CutOut : Word.None;
        return Judged(
            found.Outcome is StallOutcome.DeviceOpens or StallOutcome.WireBears, celsius, found.Limit, Protection.StalledMotor.Reference,
            new CheckSubject { Note = (byte)word, About = fuse, Number = found.Amperes, Stretch = name });
    }

    internal override string Note(in CheckResult result) => (Word)result.NoteKind switch
    {
        Word.NoTimes => $"no operating times are published for the {result.About}",
        Word.NotRated => "the wire is not rated here",
        Word.NeverOpens => $"at the {Accept.Short(result.Number)} A of the stalled motor the {result.About} need not open, and the wire bears it: the motor itself needs a thermal cut-out",
        Word.CutOut => $"at {Accept.Short(result.Number)} A, at which the {result.About} need not open; the motor was stated to have a thermal cut-out or to bear it",
        Word.Melts => $"at {Accept.Short(result.Number)} A the {result.About} lets the wire melt; its melting point is shown",
        _ => $"at {Accept.Short(result.Number)} A, until the {result.About} opens",
    };

    internal override string Advice(in CheckResult result, BranchState at) => (Word)result.NoteKind == Word.NeverOpens
        ? "Fit a motor with a thermal cut-out of its own, or one that bears its stall, and say so of the load; a fuse alone does not protect this motor."
        : (Word)result.NoteKind == Word.NotRated ? Unrated.Advice
        : result.Outcome == CheckOutcome.Undetermined ? FuseData.Missing
        : "A stalled motor overheats the wire before the fuse opens: use a larger wire, a smaller fuse, or a thermal cut-out in the motor.";

    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (!result.HasNumbers)
        {
            return;
        }

        BranchState at = sheet.At;
        (double least, double greatest) = Currents(at);
        (int stretch, StallFinding found) = Find(at, at.Fuse!.FaultCurve, at.Practice.Overload!, least, greatest);
        sheet.Tell(stretch, "stretch that a stalled motor is hardest on");
        sheet.Board.LookUp("least current of the stalled motor", "I_lr", least, "A", null, "The least that the supply range brings, the path as warm as in running.");
        sheet.Board.LookUp("greatest current of the stalled motor", "I_lrg", greatest, "A", null, "At the highest supply voltage, the path as cool as the air.");
        sheet.Value(this, sheet.Board.LookUp(
            found.Reached is null ? "melting point of the metal, which is reached" : "temperature that the wire reaches there", "θ_sv", result.Value!.Value, "°C", Heating.OverloadHeating.Reference,
            "By the balance and the quadrature of the overload below, at the current where the fuse is nearest to failing the wire."));
        sheet.Limit(this, sheet.Board.LookUp("limit at that current", "θ_sl", found.Limit, "°C", at.Practice.Overload!.Reference));
    }

    private static (int Stretch, StallFinding Found) Find(BranchState at, TimeCurrentCurve? curve, OverloadAllowance allowance, double least, double greatest)
    {
        int weakest = 0;
        StallFinding worst = Protection.StalledMotor.Find(at.LimitsOf(0, allowance), curve, least, greatest);
        for (int i = 1; i < at.Stretches.Length; i++)
        {
            StallFinding found = Protection.StalledMotor.Find(at.LimitsOf(i, allowance), curve, least, greatest);
            if (found.IsWeakerThan(worst))
            {
                (weakest, worst) = (i, found);
            }
        }

        return (weakest, worst);
    }

    // From the least with the path as warm as in running to the greatest with a cool one; where the path gives less than the motor asks for, what it gives.
    private static (double Least, double Greatest) Currents(BranchState at)
    {
        // Beside a constant power, which draws less the higher the voltage, the least may be at the highest.
        double least = Math.Min(
            Through(at, at.StalledPoint(SupplyLevel.Minimum), SupplyLevel.Minimum, at.HotPathOhms), Through(at, at.StalledPoint(SupplyLevel.Maximum), SupplyLevel.Maximum, at.HotPathOhms));
        double most = Through(at, at.StalledPoint(SupplyLevel.Maximum), SupplyLevel.Maximum, at.CoolPathOhms);
        double stated = at.Load.AmperesAt(at.Source.MaximumVolts, LoadState.LockedRotor);
        most = Math.Min(Math.Max(most, stated), Math.Max(most, at.Source.MaximumVolts / Math.Max(Accept.Least, at.Source.LeastOhms + at.CoolPathOhms)));
        most = Math.Min(most, Math.Min(at.Source.HeldThrough(SupplyLevel.Maximum, at.Source.LeastOhms + at.CoolPathOhms), Accept.MostAmperes));
        return (Math.Min(least, most), most);
    }

    private static double Through(BranchState at, in LoopPoint point, SupplyLevel level, double pathOhms) => point.Exists
        ? point.Amperes
        : Math.Max(Accept.Least, Math.Min(at.Source.HeldAmperes, (at.Source.VoltsAt(level) - at.SharedVolts) / Math.Max(Accept.Least, at.Source.OhmsAt(level) + pathOhms)));
}
