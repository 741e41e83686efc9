using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>An aircraft wire size of FAA AC 43.13-1B Table 11-9: numbered like AWG, with an area and a largest resistance of its own.</summary>
/// <remarks>
/// <para>Tin-plated copper. Sizes 24 to 18 hold 17 % to 19 % more copper than AWG, 16 to 10 6 % to 10 % less. The resistance is the largest allowed
/// at 20 °C, printed to 0.01 Ω/1000 ft: one or two digits for size 4 and larger, so up to 8 % off at 4/0. The 28.40 Ω/1000 ft of size 24
/// belongs to high-strength alloy (26.2 for soft copper, from memory); the printed, larger figure is used.</para>
/// <para>Texts need the word: <c>20 aircraft</c>. A number alone is read by <see cref="AwgSize"/> only.</para>
/// <para>Stored as the number, so equality is exact; ordered by copper. <c>default</c> is no size (<see cref="IsNone"/>): it prints <c>no size</c>, comes before every size and is refused wherever a size is needed.</para>
/// </remarks>
public readonly partial struct AircraftWireSize
{
    // Number, mm² from the printed circular mils, strands (military stranding, from memory, confirmed by area), Ω/1000 ft at 20 °C.
    private static readonly GaugeRow[] Table =
    [
        new(24, 475 * CircularMil.SquareMillimeters, 19, 28.40),
        new(22, 755 * CircularMil.SquareMillimeters, 19, 16.20),
        new(20, 1216 * CircularMil.SquareMillimeters, 19, 9.88),
        new(18, 1900 * CircularMil.SquareMillimeters, 19, 6.23),
        new(16, 2426 * CircularMil.SquareMillimeters, 19, 4.81),
        new(14, 3831 * CircularMil.SquareMillimeters, 19, 3.06),
        new(12, 5874 * CircularMil.SquareMillimeters, 37, 2.02),
        new(10, 9354 * CircularMil.SquareMillimeters, 37, 1.26),
        new(8, 16983 * CircularMil.SquareMillimeters, 133, 0.70),
        new(6, 26818 * CircularMil.SquareMillimeters, 133, 0.44),
        new(4, 42615 * CircularMil.SquareMillimeters, 133, 0.28),
        new(2, 66500 * CircularMil.SquareMillimeters, 665, 0.18),
        new(1, 81700 * CircularMil.SquareMillimeters, 817, 0.15),
        new(0, 104500 * CircularMil.SquareMillimeters, 1045, 0.12),
        new(-1, 133000 * CircularMil.SquareMillimeters, 1330, 0.09),
        new(-2, 166500 * CircularMil.SquareMillimeters, 1665, 0.07),
        new(-3, 210900 * CircularMil.SquareMillimeters, 2109, 0.06),
    ];

    private const int Beyond = 41;

    // 41 less the number, so that a zero is no size and the order is that of copper.
    private readonly byte place;

    private AircraftWireSize(int number) => place = (byte)(Beyond - number);

    /// <summary>The source of areas and resistances.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B",
        Edition = "change 1, 2001",
        Locator = "Table 11-9",
        Kind = ReferenceKind.Handbook,
        Note = "Largest resistance of tin-plated copper at 20 °C, rounded to 0.01 Ω/1000 ft; strand counts from memory.",
    };

    /// <summary>All sizes, 24 to 2 even, 1 and 1/0 to 4/0, from the least copper to the most.</summary>
    public static IReadOnlyList<AircraftWireSize> All { get; } = Array.AsReadOnly(Every());

    /// <summary>The number: −3 for 4/0, −2 for 3/0, −1 for 2/0, 0 for 1/0, else as printed.</summary>
    /// <exception cref="InvalidOperationException">This is no size (<see cref="IsNone"/>); so for every property of a size.</exception>
    public int Number => place > 0 ? Beyond - place : throw NoSize.Read(nameof(AircraftWireSize));

    /// <summary>Whether this is no size: a <c>default</c>, or what a <c>TryParse</c> left that answered false.</summary>
    public bool IsNone => place == 0;

    /// <summary>Nominal conductor area, from the printed circular mils.</summary>
    public Area Area => Area.FromSquareMillimeters(AreaSquareMillimeters);

    /// <summary>Largest resistance at 20 °C, tin-plated copper.</summary>
    public LinearResistance LargestResistance => LinearResistance.FromOhmsPerThousandFeet(Row.OhmsPerThousandFeet);

    internal double AreaSquareMillimeters => Row.SquareMillimeters;

    internal GaugeRow Row => GaugeRow.TryFind(Table, Number, out GaugeRow row) ? row : default;

    /// <summary>A size from its number.</summary>
    /// <param name="number">−3 for 4/0, −2 for 3/0, −1 for 2/0, 0 for 1/0, else as printed.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not a size of the table.</exception>
    public static AircraftWireSize FromNumber(int number) =>
        GaugeRow.TryFind(Table, number, out _)
            ? new AircraftWireSize(number)
            : throw new ArgumentOutOfRangeException(nameof(number), number, $"number must be a size of the table ({Accepted}); it was {Accept.Text(number)}.");

    /// <inheritdoc/>
    public bool Equals(AircraftWireSize other) => place == other.place;

    /// <inheritdoc/>
    public override int GetHashCode() => place;

    /// <summary>Orders by copper: no size first, then the highest number, 4/0 last.</summary>
    /// <param name="other">Another size.</param>
    /// <returns>Negative when this size holds less copper.</returns>
    public int CompareTo(AircraftWireSize other) => place.CompareTo(other.place);

    /// <summary>This size, or a refusal of no size that names the parameter.</summary>
    internal AircraftWireSize Need(string name) => place > 0 ? this : throw NoSize.Argument(name, nameof(AircraftWireSize));

    private static AircraftWireSize[] Every()
    {
        AircraftWireSize[] sizes = new AircraftWireSize[Table.Length];
        for (int i = 0; i < sizes.Length; i++)
        {
            sizes[i] = new AircraftWireSize(Table[i].Number);
        }

        return sizes;
    }

    private static bool TryRead(ReadOnlySpan<char> text, IFormatProvider? provider, out AircraftWireSize result)
    {
        _ = provider;
        return TryRead(text, needsWord: false, out result);
    }

    /// <summary>Reads a size; where the system is not known, a number without its word is not one.</summary>
    internal static bool TryRead(ReadOnlySpan<char> text, bool needsWord, out AircraftWireSize result)
    {
        bool valid = SizeText.TryGauge(text, "aircraft", out int number, out bool hasWord) && (hasWord || !needsWord) && GaugeRow.TryFind(Table, number, out _);
        result = valid ? new AircraftWireSize(number) : default;
        return valid;
    }

    private string Write(string? format, IFormatProvider provider)
    {
        _ = provider;
        return SizeText.Gauge(IsNone ? null : Number, "aircraft", format);
    }
}
