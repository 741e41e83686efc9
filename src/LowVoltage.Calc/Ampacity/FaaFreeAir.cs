using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>FAA AC 43.13-1B figure 11-4a: single copper aircraft wire of 200 °C in free air. Only the five points that worked examples state.</summary>
/// <remarks>
/// The figure is a picture; no other point is offered and nothing is interpolated. Use the points as a start for <see cref="FaaBundle"/> and
/// <see cref="FaaAltitude"/>, or to check a heat balance. One table an ambient: 25 °C (size 12), 50 °C (size 14), 60 °C (sizes 22, 20, 12).
/// Sizes are those of aircraft wire (<see cref="AircraftWireSize"/>); an AWG size is refused.
/// Four of the five points are from memory; size 14 at 50 °C was read in the circular.
/// </remarks>
public static class FaaFreeAir
{
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "Figure 11-4a, as stated in the examples of paragraph 11-69", Kind = ReferenceKind.FromMemory,
        Note = "Size 14 at 50 °C was read in the circular, the other points are from memory.",
    };

    /// <summary>One wire at 25 °C: size 12.</summary>
    public static AmpacityTable Ambient25 { get; } = At(25, [[12, 68]]);

    /// <summary>One wire at 50 °C: size 14.</summary>
    public static AmpacityTable Ambient50 { get; } = At(50, [[14, 47]]);

    /// <summary>One wire at 60 °C: sizes 22, 20 and 12.</summary>
    public static AmpacityTable Ambient60 { get; } = At(60, [[22, 16.2], [20, 21.5], [12, 61]]);

    /// <summary>The points at one ambient.</summary>
    /// <param name="ambient">Ambient temperature: exactly 25 °C, 50 °C or 60 °C.</param>
    /// <param name="table">The points; null when no example states one at this ambient.</param>
    /// <returns>Whether there is a point at this ambient.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is absolute zero or colder, or above 10 000 °C.</exception>
    public static bool TryTable(Temperature ambient, [NotNullWhen(true)] out AmpacityTable? table)
    {
        double celsius = TableKey.Celsius(ambient, nameof(ambient));
        table = celsius == 25 ? Ambient25 : celsius == 50 ? Ambient50 : celsius == 60 ? Ambient60 : null;
        return table is not null;
    }

    private static AmpacityTable At(double ambient, double[][] rows) => new(
        [SizeSystem.AircraftWire], [200], rows, DeratingKind.Ambient)
    {
        Name = $"FAA AC 43.13-1B figure 11-4a at {Accept.Text(ambient)} °C",
        Reference = Reference,
        RuleSet = RuleSet.FaaAc4313,
        Rule = TableRules.FaaFreeAir,
        BaseAmbientCelsius = ambient,
        Conditions = $"one wire in free air at sea level, ambient {Accept.Text(ambient)} °C, conductor at 200 °C",
        Notes = "Points of a curve that worked examples state; not interpolated.",
    };
}
