using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>NEC ambient correction, 310.15(B), in closed form.</summary>
/// <remarks>
/// <code>f = √((θc − θa′)/(θc − θa))</code>
/// <para><b>Symbols.</b> θc [°C]: conductor rating, the column of the table. θa′: actual ambient. θa: ambient of the table, 30 °C (40 °C in some tables).</para>
/// <para>Every tabulated factor of the code is this at the upper end of its 5 K or 10 K band, rounded to two decimals; inside a band the
/// equation gives more than the table. The lowest row reads "10 °C or less", so a colder ambient counts as 10 °C.</para>
/// <para><b>Valid</b> for an ambient below θc. Above one when the ambient is below the base: see <see cref="DeratedAmpacity.With(DeratingFactor, bool)"/>.</para>
/// </remarks>
public static class NecAmbient
{
    private const double ColdestRow = 10;

    /// <summary>Where the rule comes from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "NFPA 70 (NEC)", Edition = "2020 and later", Locator = "310.15(B) equation and Tables 310.15(B)(1)(1) and (2)", Kind = ReferenceKind.Standard,
        Note = "Law where adopted. Earlier editions number the tables 310.15(B)(2)(a) and (b).",
    };

    /// <summary>The factor on a table with a base ambient of 30 °C.</summary>
    /// <param name="ambient">Actual ambient, below the conductor rating.</param>
    /// <param name="conductorRating">Conductor rating: the column that the current was read from.</param>
    /// <param name="factor">The factor; null when the ambient reaches the conductor rating.</param>
    /// <returns>Whether there is a factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is absolute zero or colder, or above 10 000 °C.</exception>
    public static bool TryFactor(Temperature ambient, Temperature conductorRating, [NotNullWhen(true)] out DeratingFactor? factor) =>
        TryFactor(ambient, conductorRating, Temperature.FromDegreesCelsius(30), out factor);

    /// <summary>The factor on a table with another base ambient.</summary>
    /// <param name="ambient">Actual ambient, below the conductor rating.</param>
    /// <param name="conductorRating">Conductor rating: the column that the current was read from.</param>
    /// <param name="baseAmbient">Ambient of the table, below the conductor rating.</param>
    /// <param name="factor">The factor; null when an ambient reaches the conductor rating.</param>
    /// <returns>Whether there is a factor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is absolute zero or colder, or above 10 000 °C.</exception>
    public static bool TryFactor(Temperature ambient, Temperature conductorRating, Temperature baseAmbient, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        double air = TableKey.Celsius(ambient, nameof(ambient));
        double conductor = TableKey.Celsius(conductorRating, nameof(conductorRating));
        double tableAir = TableKey.Celsius(baseAmbient, nameof(baseAmbient));
        factor = TryValue(air, conductor, tableAir, out double value)
            ? new DeratingFactor(value, DeratingKind.Ambient, RuleSet.Nec, Reference)
            {
                BaseAmbientCelsius = tableAir,
                InsulationCelsius = conductor,
                Holds = new LateText("ambient {0} °C, conductor of {1} °C" + (air < ColdestRow ? ", counted as 10 °C" : ""), air, conductor),
            }
            : null;
        return factor is not null;
    }

    /// <summary>The factor on a table with a base ambient of 30 °C.</summary>
    /// <param name="ambient">Actual ambient, below the conductor rating.</param>
    /// <param name="conductorRating">Conductor rating: the column that the current was read from.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The ambient, or the base, reaches the conductor rating.</exception>
    public static DeratingFactor Factor(Temperature ambient, Temperature conductorRating) =>
        Factor(ambient, conductorRating, Temperature.FromDegreesCelsius(30));

    /// <summary>The factor on a table with another base ambient.</summary>
    /// <param name="ambient">Actual ambient, below the conductor rating.</param>
    /// <param name="conductorRating">Conductor rating: the column that the current was read from.</param>
    /// <param name="baseAmbient">Ambient of the table, below the conductor rating.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The ambient, or the base, reaches the conductor rating.</exception>
    public static DeratingFactor Factor(Temperature ambient, Temperature conductorRating, Temperature baseAmbient) =>
        TryFactor(ambient, conductorRating, baseAmbient, out DeratingFactor? factor)
            ? factor
            : throw OutsidePublishedRangeException.For(
                nameof(ambient),
                $"{Accept.Text(Accept.Raw(ambient))} °C over a base of {Accept.Text(Accept.Raw(baseAmbient))} °C",
                "the NEC equation",
                $"an ambient and a base below the conductor rating of {Accept.Text(Accept.Raw(conductorRating))} °C");

    internal static bool TryValue(double ambient, double conductor, double baseAmbient, out double value)
    {
        double air = Math.Max(ambient, ColdestRow);
        bool found = air < conductor && baseAmbient < conductor;
        value = found ? SquareRootAmbient.Factor(conductor, air, baseAmbient) : 0;
        return found;
    }
}
