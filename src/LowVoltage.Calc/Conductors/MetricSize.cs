using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A nominal metric conductor size. The number is a name fixed by a standard's largest resistance, not a measured area.</summary>
/// <remarks>
/// Stored as one number in mm², so equality and ordering are exact. <c>default</c> is no size (<see cref="IsNone"/>): it prints <c>no size</c>, comes before every size and is refused wherever a size is needed.
/// The metal that a standard asks for is 4 % to 14 % less than the name: see <see cref="Conductor.EffectiveArea"/>.
/// </remarks>
public readonly partial struct MetricSize
{
    private static readonly double[] Iec =
        [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240, 300, 400];

    private static readonly double[] Road =
    [
        0.13, 0.22, 0.35, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 16, 20, 25, 30, 35, 40, 50, 60, 70, 95, 120,
    ];

    private readonly double squareMillimeters;

    private MetricSize(double squareMillimeters) => this.squareMillimeters = squareMillimeters;

    /// <summary>The source of the IEC series.</summary>
    public static Reference Iec60228Reference { get; } = new()
    {
        Title = "IEC 60228", Edition = "2004", Locator = "Tables 1 to 4", Kind = ReferenceKind.Standard, Note = "0.5 to 400 mm², read in reprints.",
    };

    /// <summary>The source of the road-vehicle series.</summary>
    public static Reference RoadVehicleReference { get; } = new()
    {
        Title = "ISO 6722-1", Edition = Editions.Iso6722, Kind = ReferenceKind.FromMemory, Note = "0.13 to 120 mm².",
    };

    /// <summary>The IEC 60228 series, 0.5 to 400 mm², ascending.</summary>
    public static IReadOnlyList<MetricSize> Iec60228Series { get; } = Array.AsReadOnly(Every(Iec));

    /// <summary>The road-vehicle series (ISO 6722, ISO 19642), 0.13 to 120 mm², ascending. From memory.</summary>
    public static IReadOnlyList<MetricSize> RoadVehicleSeries { get; } = Array.AsReadOnly(Every(Road));

    /// <summary>Whether this is no size: a <c>default</c>, or what a <c>TryParse</c> left that answered false.</summary>
    public bool IsNone => squareMillimeters == 0;

    /// <summary>The nominal cross-section.</summary>
    /// <exception cref="InvalidOperationException">This is no size (<see cref="IsNone"/>); so for every property of a size.</exception>
    public Area NominalArea => Area.FromSquareMillimeters(SquareMillimeters);

    /// <summary>Whether the size is in the IEC 60228 series.</summary>
    public bool IsIec60228 => Array.IndexOf(Iec, SquareMillimeters) >= 0;

    /// <summary>Whether the size is in the road-vehicle series.</summary>
    public bool IsRoadVehicle => Array.IndexOf(Road, SquareMillimeters) >= 0;

    internal double SquareMillimeters => squareMillimeters > 0 ? squareMillimeters : throw NoSize.Read(nameof(MetricSize));

    /// <summary>A size from its nominal square millimetres.</summary>
    /// <param name="value">Nominal square millimetres. Positive, at most 1e6; in a series or not.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range.</exception>
    public static MetricSize FromSquareMillimeters(double value) =>
        new(Accept.Positive(value, Accept.MostSquareMillimeters, "mm²", nameof(value)));

    /// <inheritdoc/>
    public bool Equals(MetricSize other) => squareMillimeters.Equals(other.squareMillimeters);

    /// <inheritdoc/>
    public override int GetHashCode() => squareMillimeters.GetHashCode();

    /// <summary>Orders by nominal section, no size first.</summary>
    /// <param name="other">Another size.</param>
    /// <returns>Negative when this size is the smaller.</returns>
    public int CompareTo(MetricSize other) => squareMillimeters.CompareTo(other.squareMillimeters);

    /// <summary>This size, or a refusal of no size that names the parameter.</summary>
    internal MetricSize Need(string name) => squareMillimeters > 0 ? this : throw NoSize.Argument(name, nameof(MetricSize));

    private static MetricSize[] Every(double[] values)
    {
        MetricSize[] sizes = new MetricSize[values.Length];
        for (int i = 0; i < sizes.Length; i++)
        {
            sizes[i] = new MetricSize(values[i]);
        }

        return sizes;
    }

    private static bool TryRead(ReadOnlySpan<char> text, IFormatProvider? provider, out MetricSize result) => TryRead(text, provider, false, out result);

    /// <summary>Reads a size; where the system is not known, a number without a unit is not one.</summary>
    internal static bool TryRead(ReadOnlySpan<char> text, IFormatProvider? provider, bool needsUnit, out MetricSize result)
    {
        bool valid = SizeText.TryNumberAndUnit(text, provider, out double value, out ReadOnlySpan<char> unit)
            && (unit.IsEmpty ? !needsUnit : IsUnit(unit)) && value >= Accept.Least && value <= Accept.MostSquareMillimeters;
        result = valid ? new MetricSize(value) : default;
        return valid;
    }

    private static bool IsUnit(ReadOnlySpan<char> unit) =>
        SizeText.Same(unit, "mm²") || SizeText.Same(unit, "mm2") || SizeText.Same(unit, "mm^2")
        || SizeText.Same(unit, "sqmm") || SizeText.Same(unit, "sq mm") || SizeText.Same(unit, "sq. mm");

    private string Write(string? format, IFormatProvider provider)
    {
        string number = SizeText.Number(squareMillimeters, format, provider);
        return IsNone ? NoSize.Text : number + " mm²";
    }
}
