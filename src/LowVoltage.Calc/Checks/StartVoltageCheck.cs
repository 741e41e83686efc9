using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>What the load gets while it starts.</content>
public abstract partial class CheckKind
{
    /// <summary>Does the load see its own minimum voltage while it starts, and does the source stay on? V, at least.</summary>
    public static CheckKind StartVoltage { get; } = Register(new StartVoltageCheck());
}

internal sealed class StartVoltageCheck()
    : Check(50, nameof(StartVoltage), "voltage at the load while it starts", "V", limitIsLeast: true, SheetSection.Delivery, ("U_start", "U_sl"))
{
    private static readonly Reference StartedReference = Reference.CommonPractice("a load must get enough while it starts, and its source must stay on");

    private enum Word : byte
    {
        None,
        AtLimit,
        Trips,
        TooMuch,
    }

    internal override string Where => "load";

    internal override CheckScope Scope => CheckScope.Load;

    internal override bool IsCuredBySize(BranchState at) => LoadVoltageCheck.SourceIsTooLow(at) is null;

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        if (!at.Load.Starts || !at.Duty.Exists)
        {
            return false;
        }

        double lowest = double.PositiveInfinity;
        SupplyLevel where = SupplyLevel.Minimum;
        for (SupplyLevel level = SupplyLevel.Minimum; level <= SupplyLevel.Maximum; level++)
        {
            LoopPoint point = at.StartPoint(level);
            Word word = Trouble(at.Source, point);
            if (word == Word.AtLimit)
            {
                result = Unknown(StartedReference, new CheckSubject { Note = (byte)word, Number = at.Source.HeldAmperes, Level = level });
                return true;
            }

            if (word != Word.None)
            {
                result = InWords(CheckOutcome.Fail, StartedReference, new CheckSubject { Note = (byte)word, Number = at.Source.LimitAmperes, Level = level });
                return true;
            }

            if (point.Volts < lowest)
            {
                lowest = point.Volts;
                where = level;
            }
        }

        if (at.Load.MinimumVolts is not { } least)
        {
            return false;
        }

        result = Judge(lowest, least, LoadVoltageCheck.Stated, CheckSubject.At(where));
        return true;
    }

    private static Word Trouble(in SourceNumbers source, in LoopPoint point) =>
        point.Limited || (!point.Exists && point.Reason == NoOperatingPoint.SourceLimit) ? Word.AtLimit
        : source.Action == LimitAction.Disconnects && point.Exists && point.Amperes > source.LimitAmperes ? Word.Trips
        : point.Exists ? Word.None
        : Word.TooMuch;

    internal override string Note(in CheckResult result) => (Word)result.NoteKind switch
    {
        Word.AtLimit => $"the supply holds {Accept.Short(result.Number)} A and the start asks for more: whether the load starts is not known",
        Word.Trips => $"the start takes more than the {Accept.Short(result.Number)} A at which the source disconnects",
        Word.TooMuch => "the start takes more than can come through this path",
        _ => "",
    };

    internal override string Advice(in CheckResult result, BranchState at) => LoadVoltageCheck.SourceIsTooLow(at)
        ?? "The load gets too little, or nothing, while it starts: a stronger source, a larger wire, a shorter run, or limit the starting current.";

    // A motor alone at the end: the voltage while it starts, at the level that gives the lowest.
    internal override void Explain(Sheet sheet, in CheckResult result)
    {
        if (sheet.Board.Find("U_min") is { } least)
        {
            sheet.Limit(this, least);
        }

        LoadSymbols load = sheet.Load;
        if (!result.HasNumbers || !sheet.HasPoints || load.Motors.Count != 1 || load.Currents.Count != 1
            || load.Lamps + load.Resistances.Count + load.Powers().Count > 0 || sheet.At.SharedVolts > 0)
        {
            return;
        }

        Symbol warm = sheet.WarmPath, v = sheet.Source.Volts(result.Level!.Value), inner = sheet.Source.Ohms(result.Level.Value);
        (Symbol peak, Symbol _, Symbol? rated) = load.Motors[0];
        double ohms = inner.Value + warm.Value;
        double u = rated is null ? v.Value - (peak.Value * ohms) : v.Value / (1 + (ohms * peak.Value / rated.Value));
        if (Math.Abs(u - result.Value!.Value) > 1e-9 * result.Value.Value)
        {
            // The start finds the conductors at the temperature of another level than the one whose path is written: the number stands without steps.
            return;
        }

        Formula all = inner.Value > 0 ? inner + warm : warm;
        sheet.Value(this, sheet.Board.Step(
            "lowest voltage at the load while it starts", "U_start", rated is null ? v - (peak * all) : v / (1 + (all * peak / rated)), u, "V", OhmsLaw.Reference,
            $"The lowest of the supply levels; the start is over before the wire warms up further.{(rated is null ? "" : " At standstill the motor is a resistance.")}"));
    }
}
