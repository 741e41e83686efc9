using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Why no size at all can be rated in a place; none by default. Put in words when somebody reads it: where another basis counts, nobody does.</summary>
internal readonly struct RatingGap
{
    private readonly string? text;
    private readonly double celsius;

    internal RatingGap(string text, double celsius = double.NaN)
    {
        this.text = text;
        this.celsius = celsius;
    }

    internal bool Exists => text is { Length: > 0 };

    /// <summary>The table of a basis has no column for insulation of that temperature.</summary>
    internal static RatingGap NoColumn(double celsius) => new("the table has no column for insulation of", celsius);

    /// <summary>The reason, without a full stop; empty when there is none.</summary>
    public override string ToString() => text is null ? "" : double.IsNaN(celsius) ? text : $"{text} {Accept.Text(celsius)} °C";
}
