using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Design;

/// <content>Voltage: the drop, what the load sees, and what it sees while it starts.</content>
internal sealed partial class CircuitEvaluator
{
    private void CheckDrop(ref CheckList list, in WireDuty duty)
    {
        if (dropLimit.TryVolts(source.NominalVolts, requirements.Intermittent, out double most))
        {
            list.Add(new CheckResult(CheckKind.VoltageDrop, duty.DropVolts, most, dropLimit.Reference));
        }
        else
        {
            list.Add(CheckResult.Undetermined(
                CheckKind.VoltageDrop, duty.DropVolts, dropLimit.Reference, new CheckNote(NoteKind.DropNotCovered, null, source.NominalVolts)));
        }

        if (load.MinimumVolts is { } least)
        {
            list.Add(new CheckResult(CheckKind.LoadVoltage, duty.LeastLoadVolts, least, LoadReference));
        }
    }

    // The start is over before the conductors warm up: they are as warm as in running.
    private void CheckStartVoltage(ref CheckList list, in WireDuty duty)
    {
        if (!load.Starts)
        {
            return;
        }

        double ohms = 0, lowest = double.PositiveInfinity;
        for (int i = 0; i < links.Length; i++)
        {
            ohms += links[i].OhmsAt(links[i].CelsiusAt(duty.HeatingAmperes));
        }

        for (SupplyLevel level = SupplyLevel.Minimum; level <= SupplyLevel.Maximum; level++)
        {
            KernelPoint point = OperatingPointKernel.Solve(
                source.VoltsAt(level) - sharedVolts,
                source.OhmsAt(level) + fixedOhms,
                ohms,
                new FixedConductorTemperature(Ambient, 1),
                load,
                LoadState.Peak,
                source.HeldAmperes);
            bool held = point.Limited || (!point.Exists && point.Reason == NoOperatingPoint.SourceLimit);
            bool off = source.Action == LimitAction.Disconnects && point.Exists && point.Amperes > source.LimitAmperes;
            if (held)
            {
                list.Add(CheckResult.Undetermined(CheckKind.StartVoltage, point.Volts, StartedReference, new CheckNote(NoteKind.StartAtLimit, null, source.HeldAmperes)));
                return;
            }

            if (off || !point.Exists)
            {
                list.Add(CheckResult.Never(
                    CheckKind.StartVoltage, load.MinimumVolts ?? 0, StartedReference, off ? new CheckNote(NoteKind.StartTrips, null, source.LimitAmperes) : "the start takes more than can come through this path"));
                return;
            }

            lowest = Math.Min(lowest, point.Volts);
        }

        if (load.MinimumVolts is { } least)
        {
            list.Add(new CheckResult(CheckKind.StartVoltage, lowest, least, LoadReference));
        }
    }

    private static Reference StartedReference { get; } = Reference.CommonPractice("a load must get enough while it starts, and its source must stay on");

    private static Reference LoadReference { get; } = Reference.CommonPractice("least voltage stated for the load");
}
