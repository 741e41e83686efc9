using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>A series of preferred numbers (ISO 3): rounded steps that divide a decade evenly.</summary>
/// <remarks>Fuse ratings are often taken from R10, sometimes with small steps rounded further (gG: 6, 8 and 12 A).</remarks>
public sealed class PreferredNumbers
{
    private readonly int[] hundredths;

    private PreferredNumbers(string name, int[] hundredths)
    {
        Name = name;
        this.hundredths = hundredths;
        Values = [.. hundredths.Select(h => h / 100.0)];
    }

    /// <summary>The source.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "ISO 3", Edition = "1973", Kind = ReferenceKind.FromMemory,
        Note = "Each value lies within 1.3 % of the exact power of ten.",
    };

    /// <summary>Five steps a decade.</summary>
    public static PreferredNumbers R5 { get; } = new("R5", [100, 160, 250, 400, 630]);

    /// <summary>Ten steps a decade.</summary>
    public static PreferredNumbers R10 { get; } = new("R10", [100, 125, 160, 200, 250, 315, 400, 500, 630, 800]);

    /// <summary>Twenty steps a decade.</summary>
    public static PreferredNumbers R20 { get; } = new(
        "R20", [100, 112, 125, 140, 160, 180, 200, 224, 250, 280, 315, 355, 400, 450, 500, 560, 630, 710, 800, 900]);

    /// <summary>Name of the series: <c>R10</c>.</summary>
    public string Name { get; }

    /// <summary>The numbers of the decade from 1 to below 10.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>The preferred currents between two currents, as a series of ratings.</summary>
    /// <param name="least">Smallest current that may be in the series. Positive.</param>
    /// <param name="most">Largest current that may be in the series. Positive, not below the least.</param>
    /// <returns>The series; it knows no voltage, breaking capacity or operating time.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A current is outside its range, or no preferred number lies between the two.</exception>
    public FuseSeries Ratings(ElectricCurrent least, ElectricCurrent most)
    {
        double from = Accept.Amperes(least, nameof(least)), to = Accept.Amperes(most, nameof(most));
        List<ElectricCurrent> ratings = [];
        for (int decade = (int)Math.Floor(Math.Log10(from)) - 1; Math.Pow(10, decade) <= to; decade++)
        {
            ratings.AddRange(hundredths.Select(h => InDecade(h, decade)).Where(a => a >= from && a <= to).Select(a => ElectricCurrent.FromAmperes(a)));
        }

        return ratings.Count > 0
            ? FuseSeries.Create(new FuseSeriesDefinition { Name = "ISO 3 " + Name, Kind = "fuse", Reference = Reference, Ratings = ratings })
            : throw new ArgumentOutOfRangeException(
                nameof(most), to, $"most must leave room for a number of {Name} from {Accept.Text(from)} A upward; it was {Accept.Text(to)} A.");
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    // One rounding only, so that 112 hundredths ×10² are 112 and not 112.00000000000001.
    private static double InDecade(int hundredths, int decade) =>
        decade >= 2 ? hundredths * Math.Pow(10, decade - 2) : hundredths / Math.Pow(10, 2 - decade);
}
