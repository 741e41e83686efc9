using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>With what strength a fault is fed: one end of the range.</summary>
/// <param name="Level">Where in its range every source is.</param>
/// <param name="Hot">Whether the wires are as hot as their insulation allows; else as cool as the air.</param>
/// <param name="BatteriesOnly">Whether supplies that hold a limit, and solar panels, give nothing.</param>
/// <param name="LoadsOn">Whether the loads keep drawing their running current while they have voltage.</param>
internal sealed record FaultScenario(SupplyLevel Level, bool Hot, bool BatteriesOnly, bool LoadsOn)
{
    /// <summary>The most current: all sources at their strongest, cool wires, no load that takes any away.</summary>
    internal static FaultScenario Greatest { get; } = new(SupplyLevel.Maximum, false, false, false);

    /// <summary>The least: batteries at their weakest, hot wires, all loads drawing.</summary>
    internal static FaultScenario Least { get; } = new(SupplyLevel.Minimum, true, true, true);

    /// <summary>The same with supplies and panels giving what they can.</summary>
    internal static FaultScenario LeastOfAll { get; } = new(SupplyLevel.Minimum, true, false, true);
}
