using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A vehicle gauge (SAE J1128 primary cable, J1127 battery cable): numbered like AWG but holding less copper.</summary>
/// <remarks>
/// <para>Never converted to or from AWG by number: 14 SAE may hold 11 % less copper than 14 AWG. The area is the least one where the standard
/// states it (20 to 8, SAE J1128, <b>from memory, medium confidence</b>) and the circular-mil area published for the size where it does not
/// (6 to 4/0, retail reprints; 1 and 3/0 from memory). For size 6 two figures circulate, 24 538 and 25 910 cmil: the smaller is used.
/// Size 22 is left out because its least area is not known.</para>
/// <para>Texts need the word: <c>14 SAE</c>. A number alone is read by <see cref="AwgSize"/> only.</para>
/// <para>Stored as the number, so equality is exact; ordered by copper. <c>default</c> is no size (<see cref="IsNone"/>): it prints <c>no size</c>, comes before every size and is refused wherever a size is needed.</para>
/// </remarks>
public readonly partial struct VehicleGaugeSize
{
    // Number, mm², usual strands (from memory above size 8; they set the diameter only). Areas from size 6 up are circular mils as published, times 5.067075e-4.
    private static readonly GaugeRow[] Table =
    [
        new(20, 0.508, 7),
        new(18, 0.760, 16),
        new(16, 1.12, 19),
        new(14, 1.85, 19),
        new(12, 2.91, 19),
        new(10, 4.65, 19),
        new(8, 7.23, 19),
        new(6, 24538 * CircularMil.SquareMillimeters, 37),
        new(4, 37360 * CircularMil.SquareMillimeters, 61),
        new(2, 62450 * CircularMil.SquareMillimeters, 127),
        new(1, 77790 * CircularMil.SquareMillimeters, 127),
        new(0, 98980 * CircularMil.SquareMillimeters, 127),
        new(-1, 125100 * CircularMil.SquareMillimeters, 127),
        new(-2, 158600 * CircularMil.SquareMillimeters, 259),
        new(-3, 205500 * CircularMil.SquareMillimeters, 259),
    ];

    private const int Beyond = 41;

    // 41 less the number, so that a zero is no size and the order is that of copper.
    private readonly byte place;

    private VehicleGaugeSize(int number) => place = (byte)(Beyond - number);

    /// <summary>The source of the areas.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "SAE J1128 and J1127",
        Locator = "minimum conductor areas",
        Kind = ReferenceKind.FromMemory,
        Note = "Least areas of sizes 20 to 8 from memory; 6 to 4/0 are published SAE circular-mil areas (retail reprints), 1 and 3/0 from memory.",
    };

    /// <summary>All sizes, 20 to 8 even, 6, 4, 2, 1 and 1/0 to 4/0, from the least copper to the most.</summary>
    public static IReadOnlyList<VehicleGaugeSize> All { get; } = Array.AsReadOnly(Every());

    /// <summary>The number: −3 for 4/0, −2 for 3/0, −1 for 2/0, 0 for 1/0, else as printed.</summary>
    /// <exception cref="InvalidOperationException">This is no size (<see cref="IsNone"/>); so for every property of a size.</exception>
    public int Number => place > 0 ? Beyond - place : throw NoSize.Read(nameof(VehicleGaugeSize));

    /// <summary>Whether this is no size: a <c>default</c>, or what a <c>TryParse</c> left that answered false.</summary>
    public bool IsNone => place == 0;

    /// <summary>The copper: the standard's least area for 20 to 8 (from memory), the published circular-mil area for 6 to 4/0.</summary>
    public Area Area => Area.FromSquareMillimeters(AreaSquareMillimeters);

    /// <summary>Whether <see cref="Area"/> is the standard's least area (from memory) and not a published nominal one.</summary>
    public bool IsLeastArea => Number >= 8;

    internal double AreaSquareMillimeters => Row.SquareMillimeters;

    internal GaugeRow Row => GaugeRow.TryFind(Table, Number, out GaugeRow row) ? row : default;

    /// <summary>A size from its number.</summary>
    /// <param name="number">−3 for 4/0, −2 for 3/0, −1 for 2/0, 0 for 1/0, else as printed.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not a size of the table.</exception>
    public static VehicleGaugeSize FromNumber(int number) =>
        GaugeRow.TryFind(Table, number, out _)
            ? new VehicleGaugeSize(number)
            : throw new ArgumentOutOfRangeException(nameof(number), number, $"number must be a size of the table ({Accepted}); it was {Quantities.Accept.Text(number)}.");

    /// <inheritdoc/>
    public bool Equals(VehicleGaugeSize other) => place == other.place;

    /// <inheritdoc/>
    public override int GetHashCode() => place;

    /// <summary>Orders by copper: no size first, then the highest number, 4/0 last.</summary>
    /// <param name="other">Another size.</param>
    /// <returns>Negative when this size holds less copper.</returns>
    public int CompareTo(VehicleGaugeSize other) => place.CompareTo(other.place);

    /// <summary>This size, or a refusal of no size that names the parameter.</summary>
    internal VehicleGaugeSize Need(string name) => place > 0 ? this : throw NoSize.Argument(name, nameof(VehicleGaugeSize));

    private static VehicleGaugeSize[] Every()
    {
        VehicleGaugeSize[] sizes = new VehicleGaugeSize[Table.Length];
        for (int i = 0; i < sizes.Length; i++)
        {
            sizes[i] = new VehicleGaugeSize(Table[i].Number);
        }

        return sizes;
    }

    private static bool TryRead(ReadOnlySpan<char> text, IFormatProvider? provider, out VehicleGaugeSize result)
    {
        _ = provider;
        return TryRead(text, needsWord: false, out result);
    }

    /// <summary>Reads a size; where the system is not known, a number without its word is not one.</summary>
    internal static bool TryRead(ReadOnlySpan<char> text, bool needsWord, out VehicleGaugeSize result)
    {
        bool valid = SizeText.TryGauge(text, "SAE", out int number, out bool hasWord) && (hasWord || !needsWord) && GaugeRow.TryFind(Table, number, out _);
        result = valid ? new VehicleGaugeSize(number) : default;
        return valid;
    }

    private string Write(string? format, IFormatProvider provider)
    {
        _ = provider;
        return SizeText.Gauge(IsNone ? null : Number, "SAE", format);
    }
}
