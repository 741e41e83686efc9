namespace LowVoltage.Calc.Working;

/// <summary>How one number must stand to another.</summary>
public enum Relation
{
    /// <summary>Not more than, ≤.</summary>
    AtMost,

    /// <summary>Not less than, ≥.</summary>
    AtLeast,

    /// <summary>Less than, &lt;.</summary>
    Below,

    /// <summary>More than, &gt;.</summary>
    Above,
}
