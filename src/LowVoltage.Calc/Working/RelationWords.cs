namespace LowVoltage.Calc.Working;

/// <summary>Two numbers held against each other.</summary>
internal static class RelationWords
{
    internal static bool Holds(double left, Relation relation, double right) => relation switch
    {
        Relation.AtMost => left <= right,
        Relation.AtLeast => left >= right,
        Relation.Below => left < right,
        _ => left > right,
    };

    internal static string Sign(Relation relation) => relation switch
    {
        Relation.AtMost => "≤",
        Relation.AtLeast => "≥",
        Relation.Below => "<",
        _ => ">",
    };

    /// <summary>The sign, or the one that says that it does not hold.</summary>
    internal static string Sign(Relation relation, bool holds) => holds ? Sign(relation) : relation switch
    {
        Relation.AtMost => "≰",
        Relation.AtLeast => "≱",
        Relation.Below => "≮",
        _ => "≯",
    };

    internal static string LatexSign(Relation relation, bool holds) => relation switch
    {
        Relation.AtMost => holds ? @"\le" : @"\nleq",
        Relation.AtLeast => holds ? @"\ge" : @"\ngeq",
        Relation.Below => holds ? "<" : @"\nless",
        _ => holds ? ">" : @"\ngtr",
    };
}
