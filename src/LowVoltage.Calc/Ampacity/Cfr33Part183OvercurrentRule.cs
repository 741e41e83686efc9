using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>33 CFR 183.455 and 183.425: rating and place of the overcurrent device, and the smallest conductors, in petrol-engined recreational boats.</summary>
/// <remarks>
/// Below 50 V the device may be rated up to 150 % of the conductor's allowed current; at 50 V or more up to 100 %, or the next larger standard rating where none
/// matches, never above 150 %. The device's voltage rating must be at least that of the circuit. Not for cranking-motor conductors, ignition secondaries or pigtails under 7 inch (from memory).
/// </remarks>
public static class Cfr33Part183OvercurrentRule
{
    private const double ThresholdVolts = 50;
    private const double MostShare = 1.5;

    /// <summary>Where the device rule comes from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "33 CFR 183.455", Edition = "Code of Federal Regulations", Locator = "(b) and (c)", Kind = ReferenceKind.Law,
    };

    /// <summary>Where the smallest sizes come from.</summary>
    public static Reference SmallestSizeReference { get; } = new()
    {
        Title = "33 CFR 183.425", Edition = "Code of Federal Regulations", Locator = "(d) and (e)", Kind = ReferenceKind.Law,
    };

    /// <summary>Where the distance from a battery comes from.</summary>
    public static Reference BatteryDistanceReference { get; } = new()
    {
        Title = "33 CFR 183.460", Edition = "Code of Federal Regulations", Locator = "(a) and (b)", Kind = ReferenceKind.FromMemory,
    };

    /// <summary>Farthest a device may be from its source, measured along the conductor, where it cannot be at the source: 7 inch.</summary>
    public static Length FarthestFromSource { get; } = Length.FromInches(7);

    /// <summary>The same where the conductor lies in a sheath or enclosure over the whole distance: 40 inch.</summary>
    public static Length FarthestFromSourceEnclosed { get; } = Length.FromInches(40);

    /// <summary>Farthest the device of a battery feed that shares the cranking-motor main may be from the battery: 72 inch (from memory).</summary>
    public static Length FarthestFromBattery { get; } = Length.FromInches(72);

    /// <summary>Smallest conductor in a sheath with others: 18 AWG.</summary>
    public static AwgSize SmallestInSheath { get; } = AwgSize.FromNumber(18);

    /// <summary>Smallest conductor installed separately: 16 AWG.</summary>
    public static AwgSize SmallestSeparate { get; } = AwgSize.FromNumber(16);

    /// <summary>How large a device may be.</summary>
    /// <param name="allowedCurrent">Allowed current of the conductor from Table 5, after its notes.</param>
    /// <param name="circuitVoltage">Voltage of the circuit.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current or the voltage is not positive, or too large.</exception>
    public static DeviceRatingLimit Limit(ElectricCurrent allowedCurrent, ElectricPotential circuitVoltage)
    {
        double allowed = Accept.Amperes(allowedCurrent, nameof(allowedCurrent));
        (double limit, double greatest) = LimitAmperes(allowed, Accept.Volts(circuitVoltage, nameof(circuitVoltage)));
        return new DeviceRatingLimit(limit, greatest, Reference);
    }

    internal static (double Limit, double Greatest) LimitAmperes(double allowed, double volts) =>
        (volts < ThresholdVolts ? MostShare * allowed : allowed, MostShare * allowed);
}
