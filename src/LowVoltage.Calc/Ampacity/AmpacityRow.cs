using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>One row of a table of the caller's: a size and its allowed current in each column.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class AmpacityRow
{
    private readonly double[] amperes;

    private AmpacityRow(ConductorSize size, double[] amperes)
    {
        Size = size;
        this.amperes = amperes;
    }

    /// <summary>The size.</summary>
    public ConductorSize Size { get; }

    internal ReadOnlySpan<double> Amperes => amperes;

    /// <summary>A row.</summary>
    /// <param name="size">The size.</param>
    /// <param name="currents">The current of each column, lowest insulation rating first; null where the source has none. Positive.</param>
    /// <returns>The row.</returns>
    /// <exception cref="ArgumentNullException">The array is null.</exception>
    /// <exception cref="ArgumentException">No column has a current.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, or a current is outside its range.</exception>
    public static AmpacityRow Create(ConductorSize size, params ElectricCurrent?[] currents)
    {
        _ = currents ?? throw new ArgumentNullException(nameof(currents));
        ConductorSize own = size.Need(nameof(size));
        double[] amperes = new double[currents.Length];
        bool some = false;
        for (int i = 0; i < amperes.Length; i++)
        {
            amperes[i] = currents[i] is { } current ? Accept.Amperes(current, nameof(currents)) : double.NaN;
            some |= currents[i] is not null;
        }

        return some ? new AmpacityRow(own, amperes) : throw new ArgumentException($"The row of {own} has no current.", nameof(currents));
    }

    /// <summary>The size of the row.</summary>
    public override string ToString() => Size.ToString();
}
