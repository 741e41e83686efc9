namespace LowVoltage.Calc.Working;

/// <summary>What a node of a <see cref="Formula"/> is.</summary>
public enum FormulaKind
{
    /// <summary>A named quantity with a value and a unit; a <see cref="Working.Symbol"/>.</summary>
    Symbol,

    /// <summary>A number that belongs to the formula itself.</summary>
    Number,

    /// <summary>a + b.</summary>
    Sum,

    /// <summary>a − b.</summary>
    Difference,

    /// <summary>a · b.</summary>
    Product,

    /// <summary>a / b.</summary>
    Quotient,

    /// <summary>a to the power of b.</summary>
    Power,

    /// <summary>Square root of a.</summary>
    SquareRoot,

    /// <summary>Natural logarithm of a.</summary>
    Logarithm,

    /// <summary>e to the power of a.</summary>
    Exponential,

    /// <summary>−a.</summary>
    Negation,

    /// <summary>The smaller of a and b.</summary>
    Least,

    /// <summary>The larger of a and b.</summary>
    Greatest,
}
