using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>46 CFR 183.380(d) and its like: the overcurrent device of a conductor on an inspected passenger vessel.</summary>
/// <remarks>At the conductor's current, or the next larger standard rating where none matches, never above 150 %. Another title of the CFR than the one for recreational boats.</remarks>
public static class Cfr46OvercurrentRule
{
    /// <summary>Where the rule comes from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "46 CFR 183.380(d)", Edition = "2004", Locator = "also 120.380(d) and 111.50-3(c)", Kind = ReferenceKind.Law,
    };

    /// <summary>How large a device may be.</summary>
    /// <param name="allowedCurrent">Current-carrying capacity of the conductor.</param>
    /// <returns>The limit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is not positive, or too large.</exception>
    public static DeviceRatingLimit Limit(ElectricCurrent allowedCurrent)
    {
        double allowed = Accept.Amperes(allowedCurrent, nameof(allowedCurrent));
        return new DeviceRatingLimit(allowed, 1.5 * allowed, Reference);
    }
}
