using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>How the currents of a caller's ampacity table fall in warmer air: the ambient temperature correction factors (derating for heat) of a maker's sheet, or of a standard that is not carried.</summary>
/// <remarks>
/// <code>I = I(table) · f, with f of the first row that is not cooler than the air</code>
/// <para>The first row is the air that the table's currents hold for, with factor 1; cooler air counts as that row. Nothing is interpolated: air between two rows takes the warmer one, which is the
/// safer. Above the last row there is no factor, and no current. The factors apply to every insulation rating of the table they are used with; those of the lowest rating are on the safe side for the others.</para>
/// <para>Used in <see cref="AmpacityBasis.FromTable(AmpacityTable, AmbientDerating, GroupingDerating)"/>. Immutable and thread-safe.</para>
/// </remarks>
public sealed class AmbientDerating
{
    private const double Coldest = -60;
    private const double Hottest = 400;

    private readonly double[] celsius;
    private readonly double[] factors;

    private AmbientDerating(string name, Reference reference, double[] celsius, double[] factors)
    {
        Name = name;
        Reference = reference;
        this.celsius = celsius;
        this.factors = factors;
    }

    /// <summary>What the factors are called.</summary>
    public string Name { get; }

    /// <summary>Where they come from.</summary>
    public Reference Reference { get; }

    /// <summary>The air of the first row, that of the table.</summary>
    public Temperature BaseAmbient => Temperature.FromDegreesCelsius(celsius[0]);

    /// <summary>The air of the last row; above it there is no factor.</summary>
    public Temperature Highest => Temperature.FromDegreesCelsius(celsius[celsius.Length - 1]);

    internal double BaseCelsius => celsius[0];

    internal double HighestCelsius => celsius[celsius.Length - 1];

    internal ReadOnlySpan<double> Celsius => celsius;

    internal ReadOnlySpan<double> Factors => factors;

    /// <summary>Factors that the caller states, a row an air temperature.</summary>
    /// <param name="name">What they are called.</param>
    /// <param name="reference">Where they come from.</param>
    /// <param name="ambients">Air temperatures, rising, from −60 °C to 400 °C. The first is that of the table.</param>
    /// <param name="factors">Factor on the table's current at each: the first is 1, the others above 0 and never rising.</param>
    /// <returns>The factors.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, there is no row, the lists differ in length, a temperature does not rise, the first factor is not 1 or a factor rises. The message names the row.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature or a factor is outside its range. The message names the row.</exception>
    public static AmbientDerating Create(string name, Reference reference, IReadOnlyList<Temperature> ambients, IReadOnlyList<double> factors)
    {
        string own = DeratingRows.Named(name);
        _ = reference ?? throw new ArgumentNullException(nameof(reference));
        _ = ambients ?? throw new ArgumentNullException(nameof(ambients));
        double[] air = DeratingRows.Rising([.. ambients.Select(a => TableKey.Rounded(Accept.Raw(a)))], Coldest, Hottest, Text, nameof(ambients));
        return new AmbientDerating(own, reference, air, DeratingRows.Falling(factors, air, Text));
    }

    /// <summary>The factor for an air temperature, to be used by hand on a rating of the table too (<see cref="DeratedAmpacity.With(DeratingFactor)"/>).</summary>
    /// <param name="ambient">Air around the wire.</param>
    /// <param name="factor">The factor, at most 1; null above the last row.</param>
    /// <returns>Whether there is one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is absolute zero or colder, or above 10 000 °C.</exception>
    public bool TryFactor(Temperature ambient, [NotNullWhen(true)] out DeratingFactor? factor) => TryFactor(TableKey.Celsius(ambient, nameof(ambient)), out factor, out _);

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static string Text(double air) => Accept.Text(air) + " °C";

    /// <summary>The factor, and the air of its row, °C.</summary>
    internal bool TryFactor(double air, [NotNullWhen(true)] out DeratingFactor? factor, out double row)
    {
        int index = Steps.AtLeast(celsius, TableKey.Rounded(air));
        row = index < 0 ? 0 : celsius[index];
        factor = index < 0 ? null : new DeratingFactor(factors[index], DeratingKind.Ambient, RuleSet.Caller, Reference)
        {
            BaseAmbientCelsius = celsius[0],
            Holds = new LateText(row == TableKey.Rounded(air) ? "ambient {0} °C" : "ambient {0} °C, row {1} °C", air, row),
        };
        return factor is not null;
    }
}
