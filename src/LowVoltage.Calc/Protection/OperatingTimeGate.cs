using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>One row of a standard's operating times: at this current a fuse of these ratings opens within these limits.</summary>
public sealed class OperatingTimeGate
{
    internal OperatingTimeGate()
    {
    }

    internal double LeastRatingAmperes { get; init; }

    internal double MostRatingAmperes { get; init; }

    internal double? Percent { get; init; }

    internal double? Amperes { get; init; }

    internal double? LeastSeconds { get; init; }

    internal double? LongestSeconds { get; init; }

    internal double? LeastPreArcingAmpereSquaredSeconds { get; init; }

    internal double? MostPreArcingAmpereSquaredSeconds { get; init; }

    /// <summary>Smallest rated current of the row.</summary>
    public ElectricCurrent LeastRating => ElectricCurrent.FromAmperes(LeastRatingAmperes);

    /// <summary>Largest rated current of the row.</summary>
    public ElectricCurrent MostRating => ElectricCurrent.FromAmperes(MostRatingAmperes);

    /// <summary>The current in per cent of the rated current; null where the standard states amperes.</summary>
    public double? PercentOfRating => Percent;

    /// <summary>The current where the standard states amperes, else null.</summary>
    public ElectricCurrent? Current => Amperes is double amperes ? ElectricCurrent.FromAmperes(amperes) : null;

    /// <summary>The fuse must not open sooner; null where the row states no such limit.</summary>
    public Duration? Least => LeastSeconds is double seconds ? Duration.FromSeconds(seconds) : null;

    /// <summary>The fuse must open by then; null where the row states no such limit.</summary>
    public Duration? Longest => LongestSeconds is double seconds ? Duration.FromSeconds(seconds) : null;

    /// <summary>Least pre-arcing (melting) Joule integral at 0.01 s, where the standard states it, else null.</summary>
    public JouleIntegral? LeastPreArcing => Joule(LeastPreArcingAmpereSquaredSeconds);

    /// <summary>Greatest pre-arcing (melting) Joule integral at 0.01 s, where the standard states it, else null. The arc comes on top.</summary>
    public JouleIntegral? MostPreArcing => Joule(MostPreArcingAmpereSquaredSeconds);

    /// <summary>Whether the row is the conventional non-fusing current: carried for the least time, and nothing said of what follows.</summary>
    public bool IsNonFusing { get; internal init; }

    /// <summary>The source of this row.</summary>
    public required Reference Reference { get; init; }

    private static JouleIntegral? Joule(double? value) => value is double v ? JouleIntegral.FromAmpereSquaredSeconds(v) : null;

    internal bool Covers(double ratingAmperes) => ratingAmperes >= LeastRatingAmperes && ratingAmperes <= MostRatingAmperes;

    /// <summary>The current of the row for a rating, in A. Per cent are multiplied before they are divided, so that whole ones stay exact.</summary>
    internal double AmperesFor(double ratingAmperes) => Amperes ?? (ratingAmperes * Percent!.Value / 100);

    /// <summary>The row in words: <c>135 %: 0.75 s to 1800 s</c>.</summary>
    public override string ToString()
    {
        string at = Percent is double percent ? $"{Accept.Text(percent)} %" : $"{Accept.Text(Amperes!.Value)} A";
        return (LeastSeconds, LongestSeconds) switch
        {
            (double least, double longest) => $"{at}: {Accept.Text(least)} s to {Accept.Text(longest)} s",
            (double least, null) => $"{at}: not within {Accept.Text(least)} s",
            (null, double longest) => $"{at}: within {Accept.Text(longest)} s",
            _ => at,
        };
    }
}
