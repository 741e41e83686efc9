namespace LowVoltage.Calc.Protection;

/// <summary>What sort of current a voltage rating or breaking capacity was stated for. An a.c. value says nothing about d.c.</summary>
public enum RatingBasis
{
    /// <summary>The source does not say, or states no value.</summary>
    NotStated,

    /// <summary>Direct current.</summary>
    DirectCurrent,

    /// <summary>Alternating current: the arc goes out at each zero crossing, which direct current does not have.</summary>
    AlternatingCurrent,
}
