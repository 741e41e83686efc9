namespace LowVoltage.Calc.Working;

/// <summary>Formulas in one line of plain text. Digits 0 writes symbols; more puts the numbers in with their units.</summary>
internal static class FormulaText
{
    internal static string Write(Formula formula, int digits)
    {
        bool numbers = digits > 0;
        return formula.Kind switch
        {
            FormulaKind.Symbol => numbers ? NumberText.WithUnit(formula.Number, digits, formula.Unit) : ((Symbol)formula).Name,
            FormulaKind.Number => NumberText.WithUnit(formula.Number, numbers ? digits : 16, formula.Unit),
            FormulaKind.Sum => Pair(formula, " + ", digits),
            FormulaKind.Difference => Pair(formula, " − ", digits),
            FormulaKind.Product => Pair(formula, numbers ? " · " : "·", digits),
            FormulaKind.Quotient => Pair(formula, numbers ? " / " : "/", digits),
            FormulaKind.Power => Within(formula.First, FormulaPrecedence.Atom, digits) + Exponent(formula.Second, digits),
            FormulaKind.SquareRoot => "√" + (IsPlain(formula.First, digits) ? Write(formula.First, digits) : $"({Write(formula.First, digits)})"),
            FormulaKind.Logarithm => $"ln({Write(formula.First, digits)})",
            FormulaKind.Exponential => $"exp({Write(formula.First, digits)})",
            FormulaKind.Negation => "−" + Within(formula.First, FormulaPrecedence.Product + 1, digits),
            FormulaKind.Least => $"min({Several(formula, digits)})",
            _ => $"max({Several(formula, digits)})",
        };
    }

    private static string Several(Formula formula, int digits) => string.Join("; ", formula.Several().Select(operand => Write(operand, digits)));

    private static string Pair(Formula formula, string sign, int digits)
    {
        int level = FormulaPrecedence.Of(formula, digits);
        // a/b·c would be read in two ways.
        int left = formula.Kind == FormulaKind.Product && formula.First.Kind == FormulaKind.Quotient ? level + 1 : level;
        int right = level == FormulaPrecedence.Sum ? FormulaPrecedence.RightOf(formula) : level + 1;
        return Within(formula.First, left, digits) + sign + Within(formula.Second, right, digits);
    }

    private static string Exponent(Formula exponent, int digits)
    {
        if (exponent.Kind == FormulaKind.Number && exponent.Number is >= 2 and <= 9 && exponent.Number == Math.Floor(exponent.Number))
        {
            return NumberText.Superscript((int)exponent.Number);
        }

        return "^" + Within(exponent, FormulaPrecedence.Atom, digits);
    }

    private static string Within(Formula formula, int least, int digits)
    {
        string text = Write(formula, digits);
        return FormulaPrecedence.Of(formula, digits) >= least ? text : $"({text})";
    }

    private static bool IsPlain(Formula formula, int digits) => digits == 0 && formula.Kind == FormulaKind.Symbol;
}
