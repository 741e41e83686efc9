using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>MIL-STD-975M bundle rule: (29 − N)/28 of the single-wire current for up to 15 wires, one half above.</summary>
/// <remarks>
/// <code>f = (29 − N)/28 for 1 ≤ N ≤ 15; f = 0.5 for N > 15</code>
/// From memory; some attribute it to EEE-INST-002. It disagrees with the bundled column of that document (0.45 to 0.61), so it is kept apart: on
/// <see cref="NasaEeeInst002.SingleWire"/> it must be added as a foreign factor, and <see cref="NasaEeeInst002.BundledWire"/> refuses it. Spacecraft, in vacuum.
/// </remarks>
public static class NasaBundle
{
    private const int MostWires = 100_000;

    /// <summary>Where the rule comes from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "NASA MIL-STD-975M", Edition = "1994", Locator = "wire derating, bundle formula", Kind = ReferenceKind.FromMemory,
        Note = "Disagrees with the bundled column of EEE-INST-002; never use both.",
    };

    /// <summary>The factor for a bundle.</summary>
    /// <param name="wires">Wires in the bundle: 1 or more.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or above 100 000.</exception>
    public static DeratingFactor Factor(int wires) =>
        new(Value(Accept.Count(wires, 1, MostWires, nameof(wires))), DeratingKind.ConductorCount, RuleSet.NasaMilStd975, Reference)
        {
            BundleMeaning = "all wires of a bundle in vacuum",
            Holds = new LateText("{0} wires", wires),
        };

    internal static double Value(int wires) => wires <= 15 ? (29 - wires) / 28.0 : 0.5;
}
