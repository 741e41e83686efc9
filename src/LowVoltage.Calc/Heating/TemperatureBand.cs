using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>The conductor temperatures between which a wire under a repeating load settles.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class TemperatureBand
{
    private readonly double lowest;
    private readonly double highest;

    internal TemperatureBand(double lowest, double highest)
    {
        this.lowest = lowest;
        this.highest = highest;
    }

    /// <summary>Conductor temperature when the current comes on.</summary>
    public Temperature Lowest => Temperature.FromDegreesCelsius(lowest);

    /// <summary>Conductor temperature when the current goes off.</summary>
    public Temperature Highest => Temperature.FromDegreesCelsius(highest);
}
