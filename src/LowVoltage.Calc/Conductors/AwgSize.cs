using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A size of the American Wire Gauge (AWG), 4/0 to 40 (ASTM B258): diameter, mm² and circular mils of a gauge number.</summary>
/// <remarks>
/// <code>d = 0.127 mm · 92^((36 − n)/39), n = −3 for 4/0, 0 for 1/0</code>
/// <para>Stored as the gauge number, so equality is exact; ordered by copper, so 40 AWG is less than 14 AWG and that is less than 4/0.
/// <c>default</c> is no size (<see cref="IsNone"/>): it prints <c>no size</c>, comes before every size and is refused wherever a size is needed.</para>
/// <para><b>Two conventions</b> are in print. The older series (and this library) uses the exact formula. ASTM B258-61 and the tables
/// of NBS Handbook 100 (1966) round the diameter to 0.1 mil first and compute everything from that: <see cref="RoundedDiameter"/>. They
/// agree within 0.8 % in resistance down to 31 AWG and differ by up to 3 % at 37 to 40 AWG.</para>
/// <para>A vehicle gauge or an aircraft wire of the same number holds another amount of copper: <see cref="VehicleGaugeSize"/>,
/// <see cref="AircraftWireSize"/>.</para>
/// </remarks>
public readonly partial struct AwgSize
{
    private const int Smallest = 40;

    private const int Count = Smallest - SizeText.FourOught + 1;

    // One power per size and process instead of one per access; from 4/0 down.
    private static readonly double[] Diameters = Thicknesses();
    private static readonly double[] Areas = Sections();

    // 1 for 40 AWG to 44 for 4/0, so that a zero is no size and the order is that of copper.
    private readonly byte place;

    private AwgSize(int number) => place = (byte)(Smallest + 1 - number);

    /// <summary>The source of the gauge.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "ASTM B258",
        Edition = "2018",
        Kind = ReferenceKind.Standard,
        Note = "Exact formula; the rounded nominal diameters of the 1961 edition are a second convention.",
    };

    /// <summary>All sizes, from the least copper (40 AWG) to the most (4/0 AWG).</summary>
    public static IReadOnlyList<AwgSize> All { get; } = Array.AsReadOnly(Every());

    /// <summary>Whether this is no size: a <c>default</c>, or what a <c>TryParse</c> left that answered false.</summary>
    public bool IsNone => place == 0;

    /// <summary>The gauge number: −3 for 4/0, −2 for 3/0, −1 for 2/0, 0 for 1/0, else 1 to 40.</summary>
    /// <exception cref="InvalidOperationException">This is no size (<see cref="IsNone"/>); so for every property of a size.</exception>
    public int Number => place > 0 ? Smallest + 1 - place : throw NoSize.Read(nameof(AwgSize));

    /// <summary>Nominal diameter of the solid wire, by the exact formula.</summary>
    public Length Diameter => Length.FromMillimeters(DiameterMillimeters);

    /// <summary>The diameter rounded to 0.1 mil, as ASTM B258-61 and NBS Handbook 100 print it.</summary>
    /// <remarks>Give it to <see cref="Conductor.SolidOfDiameter"/> for that handbook's areas, resistances and masses.</remarks>
    public Length RoundedDiameter => Length.FromMillimeters(Math.Round(DiameterMillimeters / CircularMil.MillimetersPerMil, 1) * CircularMil.MillimetersPerMil);

    /// <summary>Cross-section of the solid wire, by the exact formula.</summary>
    public Area Area => Area.FromSquareMillimeters(AreaSquareMillimeters);

    /// <summary>Cross-section in circular mils: the square of the diameter in mils. 211 600 for 4/0.</summary>
    public double CircularMils
    {
        get
        {
            double mils = DiameterMillimeters / CircularMil.MillimetersPerMil;
            return mils * mils;
        }
    }

    internal double DiameterMillimeters => Diameters[Number - SizeText.FourOught];

    internal double AreaSquareMillimeters => Areas[Number - SizeText.FourOught];

    /// <summary>A size from its number.</summary>
    /// <param name="number">−3 for 4/0, −2 for 3/0, −1 for 2/0, 0 for 1/0, else 1 to 40.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is not from −3 to 40.</exception>
    public static AwgSize FromNumber(int number) => new(Accept.Count(number, SizeText.FourOught, Smallest, nameof(number)));

    /// <summary>The next size with more copper.</summary>
    /// <param name="larger">That size, or this one when there is none.</param>
    /// <returns>False for 4/0 AWG.</returns>
    /// <exception cref="InvalidOperationException">This is no size.</exception>
    public bool TryNextLarger(out AwgSize larger)
    {
        bool found = Number > SizeText.FourOught;
        larger = found ? new AwgSize(Number - 1) : this;
        return found;
    }

    /// <summary>The next size with less copper.</summary>
    /// <param name="smaller">That size, or this one when there is none.</param>
    /// <returns>False for 40 AWG.</returns>
    /// <exception cref="InvalidOperationException">This is no size.</exception>
    public bool TryNextSmaller(out AwgSize smaller)
    {
        bool found = Number < Smallest;
        smaller = found ? new AwgSize(Number + 1) : this;
        return found;
    }

    /// <inheritdoc/>
    public bool Equals(AwgSize other) => place == other.place;

    /// <inheritdoc/>
    public override int GetHashCode() => place;

    /// <summary>Orders by copper: no size first, then 40 AWG, 4/0 AWG last.</summary>
    /// <param name="other">Another size.</param>
    /// <returns>Negative when this size holds less copper.</returns>
    public int CompareTo(AwgSize other) => place.CompareTo(other.place);

    /// <summary>This size, or a refusal of no size that names the parameter.</summary>
    internal AwgSize Need(string name) => place > 0 ? this : throw NoSize.Argument(name, nameof(AwgSize));

    private static AwgSize[] Every()
    {
        AwgSize[] sizes = new AwgSize[Count];
        for (int i = 0; i < Count; i++)
        {
            sizes[i] = new AwgSize(Smallest - i);
        }

        return sizes;
    }

    private static double[] Thicknesses()
    {
        double[] millimeters = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            millimeters[i] = 0.127 * Math.Pow(92, (36 - (i + SizeText.FourOught)) / 39.0);
        }

        return millimeters;
    }

    private static double[] Sections()
    {
        double[] squareMillimeters = new double[Count];
        for (int i = 0; i < Count; i++)
        {
            squareMillimeters[i] = Math.PI / 4 * Diameters[i] * Diameters[i];
        }

        return squareMillimeters;
    }

    private static bool TryRead(ReadOnlySpan<char> text, IFormatProvider? provider, out AwgSize result)
    {
        _ = provider;
        bool valid = SizeText.TryGauge(text, "AWG", out int number, out _) && number <= Smallest;
        result = valid ? new AwgSize(number) : default;
        return valid;
    }

    private string Write(string? format, IFormatProvider provider)
    {
        _ = provider;
        return SizeText.Gauge(IsNone ? null : Number, "AWG", format);
    }
}
