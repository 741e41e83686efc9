using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>FAA AC 43.13-1B Table 11-9: continuous current of copper aircraft wire in bundles, derated already.</summary>
/// <remarks>
/// The numbers contain 70 °C ambient, 33 or more wires in the bundle (9 from size 8 up), at most 20 % of the bundle's capacity in use, and
/// 60 000 ft. No ambient, bundle or altitude factor may be applied to them again; the table refuses it.
/// Sizes are those of aircraft wire (<see cref="AircraftWireSize"/>). An AWG size is refused: 20 AWG holds 16 % less copper than aircraft size 20.
/// The jump between size 10 and size 8 is the smaller bundle. Guidance, public domain.
/// </remarks>
public static class FaaAc43Table11Dash9
{
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "Table 11-9, note 1", Kind = ReferenceKind.Handbook,
        Note = "Guidance. The currents are derated already.",
    };

    /// <summary>The table: size 24 to 4/0, wire of 105 °C, 150 °C and 200 °C.</summary>
    public static AmpacityTable Table { get; } = new(
        [SizeSystem.AircraftWire],
        [105, 150, 200],
        [
            [24, 2.5, 4, 5],
            [22, 3, 5, 6],
            [20, 4, 7, 9],
            [18, 6, 9, 12],
            [16, 7, 11, 14],
            [14, 10, 14, 18],
            [12, 13, 19, 25],
            [10, 17, 26, 32],
            [8, 38, 57, 71],
            [6, 50, 76, 97],
            [4, 68, 103, 133],
            [2, 95, 141, 179],
            [1, 113, 166, 210],
            [0, 128, 192, 243],
            [-1, 147, 222, 285],
            [-2, 172, 262, 335],
            [-3, 204, 310, 395],
        ],
        DeratingKind.Ambient,
        DeratingKind.BundleLoading,
        DeratingKind.Altitude)
    {
        Name = "FAA AC 43.13-1B Table 11-9 (copper)",
        Reference = Reference,
        RuleSet = RuleSet.FaaAc4313,
        Rule = TableRules.FaaDerated,
        BaseAmbientCelsius = 70,
        Conditions = "ambient 70 °C, 33 or more wires in the bundle for sizes 24 to 10 and 9 for size 8 and larger, at most 20 % of the bundle's capacity in use, 60 000 ft",
        Notes = "Derated already: no ambient, bundle or altitude factor may be applied. Sizes are aircraft wire sizes; an AWG size is refused, because "
            + "it may hold less copper than the aircraft size of its number (20 AWG 1022 circular mils, size 20 1216).",
    };
}
