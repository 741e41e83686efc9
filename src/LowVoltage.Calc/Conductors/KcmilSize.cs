using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A conductor size above 4/0 AWG in thousands of circular mils (kcmil, formerly MCM).</summary>
/// <remarks>
/// <code>A = kcmil · 1000 · π/4 · (0.0254 mm)²</code>
/// Stored as one number in kcmil. Accepted: above 211.6 (4/0 AWG) and at most 1e6. <c>default</c> is no size (<see cref="IsNone"/>): it
/// prints <c>no size</c>, comes before every size and is refused wherever a size is needed.
/// </remarks>
public readonly partial struct KcmilSize
{
    /// <summary>4/0 AWG: sizes up to it are named by gauge.</summary>
    private const double FourOughtKcmil = 211.6;

    private const double Most = 1e6;

    private static readonly double[] Standard = [250, 300, 350, 400, 500, 600, 700, 750, 800, 900, 1000];

    private readonly double kcmil;

    private KcmilSize(double kcmil) => this.kcmil = kcmil;

    /// <summary>The source of the series.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "NFPA 70 (NEC)", Edition = "1999 to 2023", Locator = "Chapter 9, Table 8", Kind = ReferenceKind.FromMemory,
    };

    /// <summary>The usual sizes, 250 to 1000 kcmil, in ascending order.</summary>
    public static IReadOnlyList<KcmilSize> All { get; } = Array.AsReadOnly(Every(Standard));

    /// <summary>Whether this is no size: a <c>default</c>, or what a <c>TryParse</c> left that answered false.</summary>
    public bool IsNone => kcmil == 0;

    /// <summary>Thousands of circular mils.</summary>
    /// <exception cref="InvalidOperationException">This is no size (<see cref="IsNone"/>); so for every property of a size.</exception>
    public double Kcmil => kcmil > 0 ? kcmil : throw NoSize.Read(nameof(KcmilSize));

    /// <summary>Circular mils.</summary>
    public double CircularMils => Kcmil * 1000;

    /// <summary>Cross-section of the metal.</summary>
    public Area Area => Area.FromSquareMillimeters(AreaSquareMillimeters);

    internal double AreaSquareMillimeters => Kcmil * 1000 * CircularMil.SquareMillimeters;

    /// <summary>A size from thousands of circular mils.</summary>
    /// <param name="value">Above 211.6 (4/0 AWG), at most 1e6.</param>
    /// <returns>The size.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside that range.</exception>
    public static KcmilSize FromKcmil(double value) =>
        value > FourOughtKcmil && value <= Most
            ? new KcmilSize(value)
            : throw new ArgumentOutOfRangeException(
                nameof(value),
                value,
                $"value must be above {Accept.Text(FourOughtKcmil)} kcmil (4/0 AWG) and at most {Accept.Text(Most)} kcmil; it was {Accept.Text(value)} kcmil.");

    /// <inheritdoc/>
    public bool Equals(KcmilSize other) => kcmil.Equals(other.kcmil);

    /// <inheritdoc/>
    public override int GetHashCode() => kcmil.GetHashCode();

    /// <summary>Orders by metal, no size first.</summary>
    /// <param name="other">Another size.</param>
    /// <returns>Negative when this size holds less metal.</returns>
    public int CompareTo(KcmilSize other) => kcmil.CompareTo(other.kcmil);

    /// <summary>This size, or a refusal of no size that names the parameter.</summary>
    internal KcmilSize Need(string name) => kcmil > 0 ? this : throw NoSize.Argument(name, nameof(KcmilSize));

    private static KcmilSize[] Every(double[] values)
    {
        KcmilSize[] sizes = new KcmilSize[values.Length];
        for (int i = 0; i < sizes.Length; i++)
        {
            sizes[i] = new KcmilSize(values[i]);
        }

        return sizes;
    }

    private static bool TryRead(ReadOnlySpan<char> text, IFormatProvider? provider, out KcmilSize result) => TryRead(text, provider, needsUnit: false, out result);

    /// <summary>Reads a size; where the system is not known, a number without a unit is not one.</summary>
    internal static bool TryRead(ReadOnlySpan<char> text, IFormatProvider? provider, bool needsUnit, out KcmilSize result)
    {
        bool valid = SizeText.TryNumberAndUnit(text, provider, out double value, out ReadOnlySpan<char> unit)
            && (unit.IsEmpty ? !needsUnit : IsUnit(unit)) && value > FourOughtKcmil && value <= Most;
        result = valid ? new KcmilSize(value) : default;
        return valid;
    }

    private static bool IsUnit(ReadOnlySpan<char> unit) => SizeText.Same(unit, "kcmil") || SizeText.Same(unit, "MCM");

    private string Write(string? format, IFormatProvider provider)
    {
        string number = SizeText.Number(kcmil, format, provider);
        return IsNone ? NoSize.Text : number + " kcmil";
    }
}
