using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>The FAA's estimate of a conductor's temperature in service, for the resistance in a voltage-drop calculation.</summary>
/// <remarks>
/// <code>T2 = T1 + (TR − T1)·√(I2/Imax)</code>
/// <para><b>Symbols.</b> T1 ambient, TR rated conductor temperature, I2 the current, Imax the current that the wire is rated for at that ambient.</para>
/// <para>An estimate on the high side: by heat transfer the rise goes with the square of the current (<see cref="Circuits.ConductorTemperature.SelfHeated"/>), by this rule with its root. At a quarter of the rated current it
/// says half of the permitted rise, where the square says a sixteenth. Both agree without current and at the rating. For a temperature to rely on ask <see cref="Heating.HeatBalance"/>.</para>
/// </remarks>
public static class FaaConductorTemperature
{
    /// <summary>Where the rule comes from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "paragraph 11-66", Kind = ReferenceKind.FromMemory, Note = "A textbook example that follows it is reproduced to its printed digits.",
    };

    /// <summary>The estimate.</summary>
    /// <param name="ambient">Ambient temperature T1, −70 °C to 300 °C.</param>
    /// <param name="rated">Rated conductor temperature TR, above the ambient, at most 300 °C.</param>
    /// <param name="current">Current I2, zero up to the rated current.</param>
    /// <param name="ratedCurrent">Current Imax that brings the conductor to its rating at this ambient. Positive.</param>
    /// <returns>T2.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static Temperature Estimate(Temperature ambient, Temperature rated, ElectricCurrent current, ElectricCurrent ratedCurrent)
    {
        double cool = Accept.CelsiusWithin(ambient, -70, 300, nameof(ambient)), hot = Accept.CelsiusWithin(rated, -70, 300, nameof(rated));
        if (!(hot > cool))
        {
            Accept.Refuse(nameof(rated), hot, "°C", $"above the ambient of {Accept.Text(cool)} °C");
        }

        double most = Accept.Amperes(ratedCurrent, nameof(ratedCurrent));
        double amperes = Accept.Within(Accept.AmperesOrZero(current, nameof(current)), 0, most, "A", nameof(current));
        return Temperature.FromDegreesCelsius(cool + ((hot - cool) * Math.Sqrt(amperes / most)));
    }
}
