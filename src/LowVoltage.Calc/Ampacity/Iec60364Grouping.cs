using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>IEC 60364-5-52 Table B.52.17: factors for circuits or multi-core cables of equal loading together.</summary>
/// <remarks>
/// It counts circuits, not wires: out and return of one DC circuit are one. Bunched (item 1): 1 to 9, 12, 16 and 20 circuits; between two counts the larger is used, which
/// is the safer. Single layer on a surface (item 2): 1 to 9. Circuits that carry at most 30 % of their grouped rating may be left out of the count (from memory).
/// </remarks>
public static class Iec60364Grouping
{
    private const int MostCircuits = 100_000;

    private static readonly double[] BunchedCounts = [1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 16, 20];
    private static readonly double[] BunchedFactors = [1.00, 0.80, 0.70, 0.65, 0.60, 0.57, 0.54, 0.52, 0.50, 0.45, 0.41, 0.38];
    private static readonly double[] LayerCounts = [1, 2, 3, 4, 5, 6, 7, 8, 9];
    private static readonly double[] LayerFactors = [1.00, 0.85, 0.79, 0.75, 0.73, 0.72, 0.72, 0.71, 0.70];

    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60364-5-52", Edition = "2009", Locator = "Table B.52.17, items 1 and 2", Kind = ReferenceKind.FromMemoryCompared,
        Note = "2 to 9 circuits were read in a summary of BS 7671 too.",
    };

    /// <summary>The factor for a number of circuits.</summary>
    /// <param name="circuits">Circuits or multi-core cables together: 1 or more.</param>
    /// <param name="arrangement">How they lie.</param>
    /// <param name="factor">The factor; null when the table ends before that count.</param>
    /// <returns>Whether the table covers the count.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or above 100 000, or the arrangement is not one of the enumeration.</exception>
    public static bool TryFactor(int circuits, Iec60364Arrangement arrangement, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        _ = Accept.Count(circuits, 1, MostCircuits, nameof(circuits));
        if (arrangement is not (Iec60364Arrangement.Bunched or Iec60364Arrangement.SingleLayerOnSurface))
        {
            throw new ArgumentOutOfRangeException(nameof(arrangement), arrangement, $"arrangement must be a value of {nameof(Iec60364Arrangement)}; it was {Accept.Text((int)arrangement)}.");
        }

        factor = TryValue(circuits, arrangement, out double value, out int row)
            ? new DeratingFactor(value, DeratingKind.Grouping, RuleSet.Iec60364, Reference)
            {
                BundleMeaning = "circuits or multi-core cables of equal loading, not single wires",
                Holds = new LateText(row == circuits ? "{0} circuits" : "{0} circuits, row {1}", circuits, row),
            }
            : null;
        return factor is not null;
    }

    /// <summary>The factor for a number of circuits.</summary>
    /// <param name="circuits">Circuits or multi-core cables together: 1 or more.</param>
    /// <param name="arrangement">How they lie.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="OutsidePublishedRangeException">The table ends before that count.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The count is below 1 or above 100 000, or the arrangement is not one of the enumeration.</exception>
    public static DeratingFactor Factor(int circuits, Iec60364Arrangement arrangement) => TryFactor(circuits, arrangement, out DeratingFactor? factor)
        ? factor
        : throw OutsidePublishedRangeException.For(
            nameof(circuits), circuits + " circuits", "IEC 60364-5-52 Table B.52.17", "1 to 20 circuits bunched and 1 to 9 in a single layer");

    internal static bool TryValue(int circuits, Iec60364Arrangement arrangement, out double value, out int row)
    {
        bool bunched = arrangement == Iec60364Arrangement.Bunched;
        double[] counts = bunched ? BunchedCounts : LayerCounts;
        int index = Steps.AtLeast(counts, circuits);
        value = index < 0 ? 0 : (bunched ? BunchedFactors : LayerFactors)[index];
        row = index < 0 ? 0 : (int)counts[index];
        return index >= 0;
    }
}
