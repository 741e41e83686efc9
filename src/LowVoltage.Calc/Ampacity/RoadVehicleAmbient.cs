using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Ambient correction for <see cref="RoadVehicleSingleCore"/>: the square-root law that takes its 30 °C column to its 50 °C column.</summary>
/// <remarks>
/// <code>f = √((70 − θ)/(70 − θa))</code> with θ the ambient and θa that of the table, 30 °C or 50 °C, in °C.
/// <para>The handbooks print two columns only and no factor for another ambient; that the same law holds between and beyond them is common practice. All 13 sizes of the 50 °C column
/// come out within 0.5 % of the 30 °C column times √(20/40). Valid from the base ambient of the table to below 70 °C.</para>
/// </remarks>
public static class RoadVehicleAmbient
{
    private const double Conductor = 70;

    /// <summary>Where the rule comes from.</summary>
    public static Reference Reference { get; } = Reference.CommonPractice(
        "square-root law on the road-vehicle table of PVC cable limited to 70 °C, matched by its printed 50 °C column");

    /// <summary>The factor for an ambient.</summary>
    /// <param name="ambient">Ambient temperature, from the base of the table to below 70 °C.</param>
    /// <param name="baseAmbient">Base ambient of the table: 30 °C or 50 °C.</param>
    /// <param name="factor">The factor; null outside that range.</param>
    /// <returns>Whether there is a factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is absolute zero or colder, or above 10 000 °C.</exception>
    public static bool TryFactor(Temperature ambient, Temperature baseAmbient, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        double air = TableKey.Celsius(ambient, nameof(ambient));
        double tableAir = TableKey.Celsius(baseAmbient, nameof(baseAmbient));
        factor = TryValue(air, tableAir, out double value)
            ? new DeratingFactor(value, DeratingKind.Ambient, RuleSet.RoadVehicle, Reference)
            {
                BaseAmbientCelsius = tableAir,
                InsulationCelsius = Conductor,
                Holds = new LateText("ambient {0} °C, conductor at 70 °C", air),
            }
            : null;
        return factor is not null;
    }

    /// <summary>The factor for an ambient.</summary>
    /// <param name="ambient">Ambient temperature, from the base of the table to below 70 °C.</param>
    /// <param name="baseAmbient">Base ambient of the table: 30 °C or 50 °C.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The ambient or the base is outside that range.</exception>
    public static DeratingFactor Factor(Temperature ambient, Temperature baseAmbient) => TryFactor(ambient, baseAmbient, out DeratingFactor? factor)
        ? factor
        : throw OutsidePublishedRangeException.For(
            nameof(ambient),
            $"{Accept.Text(Accept.Raw(ambient))} °C over a base of {Accept.Text(Accept.Raw(baseAmbient))} °C",
            "the road-vehicle table",
            "ambients from the base of the table (30 °C or 50 °C) to below 70 °C");

    internal static bool TryValue(double ambient, double baseAmbient, out double value)
    {
        bool found = (baseAmbient == 30 || baseAmbient == 50) && ambient >= baseAmbient && ambient < Conductor;
        value = found ? SquareRootAmbient.Factor(Conductor, ambient, baseAmbient) : 0;
        return found;
    }
}
