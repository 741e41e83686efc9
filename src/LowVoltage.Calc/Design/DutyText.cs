using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Design;

/// <summary>What is assumed of the duty cycles of a load, and of the loads in it.</summary>
internal static class DutyText
{
    internal static IEnumerable<string> Of(Load load)
    {
        (Load Load, DutyCycle[] Duties)[] leaves = [.. load.Leaves.Where(leaf => leaf.Load is not CapacitorInput)];
        if (leaves.Any(leaf => leaf.Duties.Any(duty => duty.OnSeconds > 0)))
        {
            yield return "The duty cycle heats as much as the end of a pulse does in a stranded wire of 30 AWG, its metal alone, in still air; thicker wires stay cooler.";
        }

        if (leaves.Any(leaf => leaf.Duties.Any(duty => duty.OnSeconds == 0)))
        {
            yield return "The duty cycle heats by its r.m.s. current: its pulses are taken to be short, well under a second for thin wires; state the time on and the period of longer ones.";
        }

        if (leaves.Any(leaf => leaf.Duties.Length > 1))
        {
            yield return "A load with a duty cycle in a group with another heats by the smaller of the two shares: their pulses may coincide.";
        }

        foreach (string line in Starts([.. leaves.Where(leaf => leaf.Load.Starts)]))
        {
            yield return line;
        }
    }

    private static IEnumerable<string> Starts((Load Load, DutyCycle[] Duties)[] motors)
    {
        if (motors.Any(motor => motor.Duties.Any(duty => duty.OnSeconds > 0)))
        {
            yield return "A motor starts in every stated period, and its starting current heats the wire for the length of the start.";
        }

        if (motors.Any(motor => motor.Duties.Any(duty => duty.OnSeconds == 0)))
        {
            yield return "Of a motor with a share of the time alone, what its starts heat is not known and not counted: state the time on and the period.";
        }
    }
}
