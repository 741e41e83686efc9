using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>NASA EEE-INST-002 section W1: currents of 200 °C wire in vacuum, single and in bundles of 15 or more wires.</summary>
/// <remarks>
/// Hard vacuum, ambient at most 70 °C: no convection. Conservative on the ground, and the wrong model for anything that has air.
/// Other insulation ratings go through <see cref="NasaInsulation"/>. The bundled column is not the formula of <see cref="NasaBundle"/> (ratios run from
/// 0.45 to 0.61): use one or the other, never both. From memory, confirmed by reading at 12 AWG and, bundled, at 20 AWG.
/// </remarks>
public static class NasaEeeInst002
{
    private const string Vacuum = "wire of 200 °C, ambient at most 70 °C, hard vacuum";

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "NASA EEE-INST-002", Edition = "2003", Locator = "section W1, wire derating table", Kind = ReferenceKind.FromMemory,
        Note = "30 of the 34 currents agree with an independent transcription, 2026-11; those of 26 and 28 AWG were not found in it.",
    };

    /// <summary>A single wire.</summary>
    public static AmpacityTable SingleWire { get; } = new(
        [SizeSystem.AmericanWireGauge],
        [200],
        [
            [30, 1.3], [28, 1.8], [26, 2.5], [24, 3.3], [22, 4.5], [20, 6.5], [18, 9.2], [16, 13.0], [14, 19.0],
            [12, 25.0], [10, 33.0], [8, 44.0], [6, 60.0], [4, 81.0], [2, 108.0], [0, 147.0], [-1, 169.0],
        ],
        DeratingKind.Ambient,
        DeratingKind.Altitude)
    {
        Name = "NASA EEE-INST-002 single wire",
        Reference = Reference,
        RuleSet = RuleSet.NasaEeeInst002,
        Rule = TableRules.Vacuum,
        BaseAmbientCelsius = 70,
        Conditions = Vacuum + ", one wire alone",
        Notes = "Spacecraft only.",
    };

    /// <summary>A wire in a bundle of 15 or more.</summary>
    public static AmpacityTable BundledWire { get; } = new(
        [SizeSystem.AmericanWireGauge],
        [200],
        [
            [30, 0.7], [28, 1.0], [26, 1.4], [24, 2.0], [22, 2.5], [20, 3.7], [18, 5.0], [16, 6.5], [14, 8.5],
            [12, 11.5], [10, 16.5], [8, 23.0], [6, 30.0], [4, 40.0], [2, 50.0], [0, 75.0], [-1, 87.5],
        ],
        DeratingKind.Ambient,
        DeratingKind.Altitude,
        DeratingKind.ConductorCount)
    {
        Name = "NASA EEE-INST-002 bundled wire",
        Reference = Reference,
        RuleSet = RuleSet.NasaEeeInst002,
        Rule = TableRules.Vacuum,
        BaseAmbientCelsius = 70,
        Conditions = Vacuum + ", 15 or more wires in the bundle",
        Notes = "Spacecraft only. Contains the bundle.",
    };
}
