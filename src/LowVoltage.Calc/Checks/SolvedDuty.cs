using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Checks;

/// <summary>What a solved network says of a branch that is part of it, in place of the branch's own loop.</summary>
internal sealed class SolvedDuty
{
    internal required WireDuty Duty { get; init; }

    /// <summary>r.m.s. current of each stretch, A.</summary>
    internal required double[] Heating { get; init; }

    /// <summary>The operating point of the load at each supply level while it starts; empty where that is not asked.</summary>
    internal LoopPoint[] Starts { get; init; } = [];
}
