namespace LowVoltage.Calc.Working;

/// <summary>How tightly a node holds together when it is written down.</summary>
internal static class FormulaPrecedence
{
    internal const int Sum = 1;
    internal const int Product = 2;
    internal const int Power = 3;
    internal const int Atom = 4;

    internal static int Of(Formula formula, NumberStyle style) => formula.Kind switch
    {
        FormulaKind.Sum or FormulaKind.Difference or FormulaKind.Negation => Sum,
        FormulaKind.Product or FormulaKind.Quotient => Product,
        FormulaKind.Power => Power,
        FormulaKind.Symbol when !style.HasNumbers => Atom,
        // A number: a sign, a unit or a power of ten must be held together under an exponent.
        FormulaKind.Symbol or FormulaKind.Number => formula.Number < 0 ? Sum : formula.Unit.Length > 0 ? Power : Atom,
        _ => Atom,
    };

    /// <summary>What the right side of a sum or difference must have to stand without brackets: a sum may be opened up inside a sum, a negative number may not.</summary>
    internal static int RightOf(Formula formula) =>
        formula.Kind == FormulaKind.Sum && formula.Second.Kind is FormulaKind.Sum or FormulaKind.Difference ? Sum : Product;
}
