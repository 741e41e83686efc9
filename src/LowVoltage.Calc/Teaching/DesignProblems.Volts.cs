using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <content>Questions on volts: lost in the wire, left at the load.</content>
internal static partial class DesignProblems
{
    private static bool AtLoad(ProblemDraft d, DesignCircuit c)
    {
        Symbol r = c.StepResistance();
        double volts = InternalResistance.TerminalVoltage(Make.V(c.U.Value), Make.Ohm(r.Value), Make.A(c.Right.Amperes)).Volts;
        d.Ask("What voltage reaches the load with the wire that you choose?", d.Step("the voltage at the load", "U_x", c.U.Symbol - (c.Current * r), volts, "V", OhmsLaw.Reference, "The supply less the drop."), 4, 0.0006 * volts);
        d.Wrong(Mistake.DropForVolts, c.U.Value - volts);
        d.Wrong(Mistake.DropAdded, (2 * c.U.Value) - volts);
        d.Wrong(Mistake.ReturnForgotten, (c.U.Value + volts) / 2);
        return Finish(d, c, choice => c.U.Value - (choice.Amperes * choice.Ohms));
    }

    private static bool WithBattery(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven inner = d.Give("internal resistance of the battery", "R_i", d.Random.OnGrid(4m, 24m, 1m), "mΩ");
        d.Say($"The battery behind it has {c.U} at rest and an internal resistance of {inner}.");
        Symbol r = c.StepResistance();
        double all = r.Value + (inner.Value / 1000), volts = OhmsLaw.FromCurrentAndResistance(Make.A(c.Right.Amperes), Make.Ohm(all)).Voltage.Volts;
        d.Ask("By how many volts does the voltage at the load fall below that of the battery at rest, with the wire that you choose?", d.Step(
            "the drop in battery and wires", "ΔU", c.Current * (r + (inner.Symbol / 1000)), volts, "V", OhmsLaw.Reference, "Battery and wires are in series."));
        d.Wrong(Mistake.SourceForgotten, c.Right.Amperes * r.Value);
        d.Wrong(Mistake.WireResistanceForgotten, c.Right.Amperes * inner.Value / 1000);
        d.Wrong(Mistake.PowerForDrop, c.Right.Amperes * volts);
        return Finish(d, c, choice => choice.Amperes * (choice.Ohms + (inner.Value / 1000)));
    }

    private static bool WithJoints(ProblemDraft d, DesignCircuit c)
    {
        DrawnGiven n = d.Give("number of joints", "n", (decimal)(3 + d.Random.Next(6)), "");
        DrawnGiven joint = d.Give("resistance of one joint", "R_1", d.Random.OnGrid(0.5m, 3m, 0.5m), "mΩ");
        d.Say($"There are also {n} joints of {joint} each, which do not count towards the allowed drop.");
        Symbol r = c.StepResistance();
        double joints = n.Value * joint.Value / 1000, volts = OhmsLaw.FromCurrentAndResistance(Make.A(c.Right.Amperes), Make.Ohm(r.Value + joints)).Voltage.Volts;
        d.Ask("How many volts are lost, out and back, in the wire that you choose and its joints together?", d.Step(
            "the drop with the joints", "ΔU", c.Current * (r + (n.Symbol * joint.Symbol / 1000)), volts, "V", OhmsLaw.Reference, "Wire and joints are in series."));
        d.Wrong(Mistake.OneJointOnly, c.Right.Amperes * (r.Value + (joint.Value / 1000)));
        d.Wrong(Mistake.JointsForgotten, c.Right.Amperes * r.Value);
        d.Wrong(Mistake.PowerForDrop, c.Right.Amperes * volts);
        return Finish(d, c, choice => choice.Amperes * (choice.Ohms + joints));
    }

    private static bool Percent(ProblemDraft d, DesignCircuit c)
    {
        Symbol r = c.StepResistance();
        d.Ask("What percentage of the voltage is lost, out and back, with the wire that you choose?", d.Step("the drop of the voltage", "p_x", c.Current * r / c.U.Symbol * 100, "%", OhmsLaw.Reference, "The drop over the voltage."));
        d.Wrong(Mistake.DropInVolts, c.Right.Amperes * r.Value);
        return Finish(d, c, choice => choice.Amperes * choice.Ohms / c.U.Value * 100);
    }

    private static bool Drop(ProblemDraft d, DesignCircuit c)
    {
        Symbol r = c.StepResistance();
        double volts = OhmsLaw.FromCurrentAndResistance(Make.A(c.Right.Amperes), Make.Ohm(r.Value)).Voltage.Volts;
        d.Ask("How many volts are lost, out and back, with the wire that you choose?", d.Step("the voltage drop", "ΔU", c.Current * r, volts, "V", OhmsLaw.Reference, "Ohm's law for the path."));
        d.Wrong(Mistake.PowerForDrop, c.Right.Amperes * volts);
        d.Wrong(Mistake.ReturnForgotten, c.Chassis is null ? volts / 2 : volts - (c.Right.Amperes * c.Chassis.Value / 1000));
        return Finish(d, c, choice => choice.Amperes * choice.Ohms);
    }
}
