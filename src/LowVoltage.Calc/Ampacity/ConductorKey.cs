using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Ampacity;

/// <summary>How the published tables name a conductor.</summary>
internal static class ConductorKey
{
    // ASTM B33, finest strands: the most resistive metal that still counts as copper.
    private const double MostResistiveCopper = 1.852e-8;

    /// <summary>Gauge number or nominal mm²; false for a conductor of the caller's geometry or of another metal than copper.</summary>
    internal static bool TryGet(Conductor conductor, out double key)
    {
        key = conductor.Size is { } size ? size.Value : 0;
        return conductor.Size is not null && conductor.Material.OhmMeters20 <= MostResistiveCopper;
    }
}
