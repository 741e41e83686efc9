namespace LowVoltage.Calc.Protection;

/// <summary>The outcome of a check against a rating.</summary>
public enum RatingVerdict
{
    /// <summary>The rating is not stated, or stated for a.c. only, so that nothing is proven. Never a pass.</summary>
    NotProven,

    /// <summary>The value lies within the rating.</summary>
    Within,

    /// <summary>The value exceeds the rating.</summary>
    Exceeded,
}
