using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>A published ampacity table: allowed continuous currents (current ratings, how many amps a wire carries) by conductor size or gauge and insulation temperature rating.</summary>
/// <remarks>
/// <para>A size that is not in the table is refused: the table interpolates no sizes. Between two insulation columns the lower one
/// is used, which is the safer, and the result says so. Below the lowest and above the highest column the table has no answer:
/// <see cref="TryColumnAtMost(Temperature, out Temperature)"/> tells which column a better insulation may safely be read from.</para>
/// <para>The published ones are members of the types named after their source; <see cref="Create"/> makes a table of the caller's. Immutable and thread-safe.</para>
/// </remarks>
public sealed partial class AmpacityTable
{
    // Gauge numbers end at 40 and kcmil begin above 211, so that one number tells them apart.
    private const double LargestGauge = 100;

    private readonly double[] columns;
    private readonly double[] sizes;
    private readonly double[] amperes;
    private readonly DeratingKind[] settled;
    private readonly SizeSystem[] systems;

    /// <param name="systems">The systems whose sizes the rows name; the first one is used for text.</param>
    /// <param name="columns">Insulation ratings, °C, ascending.</param>
    /// <param name="rows">One row a size: the size key (AWG number or nominal mm²), then a current per column; NaN where the source has none.</param>
    /// <param name="settled">Kinds of factor that must not be applied to these numbers.</param>
    internal AmpacityTable(SizeSystem[] systems, double[] columns, double[][] rows, params DeratingKind[] settled)
    {
        this.systems = systems;
        this.columns = columns;
        this.settled = settled;
        sizes = new double[rows.Length];
        amperes = new double[rows.Length * columns.Length];
        for (int i = 0; i < rows.Length; i++)
        {
            sizes[i] = rows[i][0];
            Array.Copy(rows[i], 1, amperes, i * columns.Length, columns.Length);
        }
    }

    /// <summary>What the table is called.</summary>
    public required string Name { get; init; }

    /// <summary>Where the numbers come from.</summary>
    public required Reference Reference { get; init; }

    /// <summary>The family of rules that the table belongs to.</summary>
    public RuleSet RuleSet { get; internal init; }

    /// <summary>The ambient temperature that the numbers hold for.</summary>
    public Temperature BaseAmbient => Temperature.FromDegreesCelsius(BaseAmbientCelsius);

    /// <summary>What the numbers already contain: ambient, number of conductors, altitude, way of laying.</summary>
    public string Conditions { get; internal init; } = "";

    /// <summary>Traps and limits that a careful user must know. May be empty.</summary>
    public string Notes { get; internal init; } = "";

    /// <summary>Kinds of factor that must not be applied to this table, because its numbers contain the effect or hold for one fixed condition only.</summary>
    public IReadOnlyList<DeratingKind> SettledFactors => [.. settled];

    /// <summary>The insulation ratings that have a column, ascending.</summary>
    public IReadOnlyList<Temperature> InsulationRatings => [.. columns.Select(celsius => Temperature.FromDegreesCelsius(celsius))];

    /// <summary>What the table covers, in words: sizes and insulation ratings.</summary>
    public string Covers =>
        $"{string.Join(", ", sizes.Select(SizeText))} at insulation ratings of {string.Join(", ", columns.Select(Accept.Text))} °C"
        + (Array.Exists(amperes, double.IsNaN) ? " (some cells are blank)" : "");

    internal double BaseAmbientCelsius { get; init; }

    /// <summary>Whether a design reads a section in mm² that stands between two rows on the straight line between them, logarithmic in both.</summary>
    internal bool ReadsBetweenRows { get; init; }

    /// <summary>Loaded conductors together that the numbers hold for, where the caller says so.</summary>
    internal int Conductors { get; init; } = 1;

    /// <summary>How the table is read for a place: with which factors, and where not at all.</summary>
    internal TableRule Rule { get; init; } = TableRules.AsItStands;

    /// <summary>The table read for a place.</summary>
    internal PlacedTable At(in TablePlace place) => Rule(this, place);

    internal ReadOnlySpan<double> SizeKeys => sizes;

    internal ReadOnlySpan<double> Columns => columns;

    /// <summary>The allowed current of a size.</summary>
    /// <param name="size">The size, of a system that the table names; sizes of other systems are not converted, whatever their number.</param>
    /// <param name="insulationRating">Continuous temperature rating of the insulation.</param>
    /// <param name="rating">The rating; null when the table does not cover the question.</param>
    /// <returns>Whether the table covers this size and insulation rating.</returns>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The size is a <c>default</c>, which is no size, or the temperature is one that no insulation has (absolute zero or colder, above 10 000 °C).
    /// </exception>
    public bool TryRating(ConductorSize size, Temperature insulationRating, [NotNullWhen(true)] out TableRating? rating)
    {
        ConductorSize asked = size.Need(nameof(size));
        double celsius = TableKey.Celsius(insulationRating, nameof(insulationRating));
        rating = TryAmperes(asked.System, asked.Value, celsius, out double current, out double column)
            ? new TableRating(this, asked.Designation, current, celsius, column)
            : null;
        return rating is not null;
    }

    /// <summary>The allowed current of a size.</summary>
    /// <param name="size">The size, of a system that the table names.</param>
    /// <param name="insulationRating">Continuous temperature rating of the insulation.</param>
    /// <returns>The rating and the column it was read from.</returns>
    /// <exception cref="OutsidePublishedRangeException">The table does not cover this size or insulation rating.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size, or the temperature is one that no insulation has.</exception>
    public TableRating Rating(ConductorSize size, Temperature insulationRating) => TryRating(size, insulationRating, out TableRating? rating)
        ? rating
        : throw OutsidePublishedRangeException.For(
            nameof(size), $"{size} at {Accept.Text(TableKey.Celsius(insulationRating, nameof(insulationRating)))} °C", Name, Covers);

    /// <summary>The highest column that an insulation may safely be read from: its own rating or the next lower one.</summary>
    /// <param name="insulationRating">Continuous temperature rating of the insulation; it may be above the highest column.</param>
    /// <param name="column">The column to ask for; zero when there is none.</param>
    /// <returns>False when the insulation is rated below the lowest column.</returns>
    public bool TryColumnAtMost(Temperature insulationRating, out Temperature column)
    {
        bool found = TryColumnAtMost(TableKey.Celsius(insulationRating, nameof(insulationRating)), out double celsius);
        column = found ? Temperature.FromDegreesCelsius(celsius) : default;
        return found;
    }

    /// <summary>Whether a factor of this kind must not be applied to these numbers.</summary>
    /// <param name="kind">The kind of factor; kinds that describe the same effect count as one.</param>
    /// <returns>True when the table settles the effect itself.</returns>
    public bool Settles(DeratingKind kind)
    {
        DeratingKind effect = DeratingEffect.Of(kind);
        return Array.Exists(settled, own => DeratingEffect.Of(own) == effect);
    }

    /// <summary>Whether the rows of this table name sizes of a system; plain mm² belong to each metric one.</summary>
    internal bool Accepts(SizeSystem system) =>
        Array.IndexOf(systems, system == SizeSystem.Metric ? SizeSystem.Iec60228 : system) >= 0;

    internal bool TryColumnAtMost(double insulationCelsius, out double columnCelsius)
    {
        int index = ColumnAtMost(insulationCelsius);
        columnCelsius = index < 0 ? 0 : columns[index];
        return index >= 0;
    }

    /// <summary>The lookup itself: no allocation, no exception. The key is an AWG number (−3 for 4/0) or nominal mm²; temperatures in °C.</summary>
    internal bool TryAmperes(SizeSystem system, double sizeKey, double insulationCelsius, out double current, out double columnCelsius)
    {
        current = 0;
        columnCelsius = 0;
        int row = Array.IndexOf(sizes, sizeKey);
        int column = ColumnAtMost(insulationCelsius);
        if (row < 0 || column < 0 || insulationCelsius > columns[columns.Length - 1] || !Accepts(system))
        {
            return false;
        }

        double cell = amperes[(row * columns.Length) + column];
        if (double.IsNaN(cell))
        {
            return false;
        }

        current = cell;
        columnCelsius = columns[column];
        return true;
    }

    /// <summary>The lookup of a design: a row, or between two rows where the table is read so. No allocation, no exception.</summary>
    internal bool TryDesignAmperes(SizeSystem system, double sizeKey, double insulationCelsius, out double current)
    {
        if (TryAmperes(system, sizeKey, insulationCelsius, out current, out _))
        {
            return true;
        }

        int above = Array.FindIndex(sizes, size => size > sizeKey);
        if (!ReadsBetweenRows || above < 1
            || !TryAmperes(system, sizes[above - 1], insulationCelsius, out double low, out _) || !TryAmperes(system, sizes[above], insulationCelsius, out double high, out _))
        {
            return false;
        }

        current = low * Math.Pow(high / low, Math.Log(sizeKey / sizes[above - 1]) / Math.Log(sizes[above] / sizes[above - 1]));
        return true;
    }

    /// <summary>What a design reads for a size of which <see cref="TryDesignAmperes"/> knows a current.</summary>
    internal TableRating DesignRating(ConductorSize size, double insulationCelsius)
    {
        if (TryRating(size, Temperature.FromDegreesCelsius(insulationCelsius), out TableRating? printed))
        {
            return printed;
        }

        int above = Array.FindIndex(sizes, row => row > size.Value);
        TryDesignAmperes(size.System, size.Value, insulationCelsius, out double current);
        TryColumnAtMost(insulationCelsius, out double column);
        return new TableRating(this, $"{size.Designation}, between {SizeText(sizes[above - 1])} and {SizeText(sizes[above])}", current, insulationCelsius, column);
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    private int ColumnAtMost(double celsius)
    {
        int index = columns.Length - 1;
        while (index >= 0 && columns[index] > celsius)
        {
            index--;
        }

        return index;
    }

    private string SizeText(double key) => systems[0] switch
    {
        SizeSystem.Kcmil => KcmilSize.FromKcmil(key).ToString(),
        SizeSystem.VehicleGauge => VehicleGaugeSize.FromNumber((int)key).ToString(),
        SizeSystem.AmericanWireGauge when key > LargestGauge => KcmilSize.FromKcmil(key).ToString(),
        SizeSystem.AmericanWireGauge => AwgSize.FromNumber((int)key).ToString(),
        SizeSystem.AircraftWire => AircraftWireSize.FromNumber((int)key).ToString(),
        _ => Accept.Text(key) + " mm²",
    };
}
