namespace LowVoltage.Calc.Working;

/// <summary>Formulas in one line of plain text. Digits 0 writes symbols; more puts the numbers in with their units.</summary>
internal static class FormulaText
{
    internal static string Write(Formula formula, NumberStyle style)
    {
        bool numbers = style.HasNumbers;
        return formula.Kind switch
        {
            FormulaKind.Symbol => numbers ? NumberText.WithUnit(formula.Number, style, formula.Unit) : ((Symbol)formula).Name,
            FormulaKind.Number => NumberText.WithUnit(formula.Number, numbers ? style : 16, formula.Unit),
            FormulaKind.Sum => Pair(formula, " + ", style),
            FormulaKind.Difference => Pair(formula, " − ", style),
            FormulaKind.Product => Pair(formula, numbers ? " · " : "·", style),
            FormulaKind.Quotient => Pair(formula, numbers ? " / " : "/", style),
            FormulaKind.Power => Within(formula.First, FormulaPrecedence.Atom, style) + Exponent(formula.Second, style),
            FormulaKind.SquareRoot => "√" + (IsPlain(formula.First, style) ? Write(formula.First, style) : $"({Write(formula.First, style)})"),
            FormulaKind.Logarithm => $"ln({Write(formula.First, style)})",
            FormulaKind.Exponential => $"exp({Write(formula.First, style)})",
            FormulaKind.Negation => "−" + Within(formula.First, FormulaPrecedence.Product + 1, style),
            FormulaKind.Least => $"min({Several(formula, style)})",
            _ => $"max({Several(formula, style)})",
        };
    }

    private static string Several(Formula formula, NumberStyle style) => string.Join("; ", formula.Several().Select(operand => Write(operand, style)));

    private static string Pair(Formula formula, string sign, NumberStyle style)
    {
        int level = FormulaPrecedence.Of(formula, style);
        // a/b·c would be read in two ways.
        int left = formula.Kind == FormulaKind.Product && formula.First.Kind == FormulaKind.Quotient ? level + 1 : level;
        int right = level == FormulaPrecedence.Sum ? FormulaPrecedence.RightOf(formula) : level + 1;
        return Within(formula.First, left, style) + sign + Within(formula.Second, right, style);
    }

    private static string Exponent(Formula exponent, NumberStyle style)
    {
        if (exponent.Kind == FormulaKind.Number && exponent.Number is >= 2 and <= 9 && exponent.Number == Math.Floor(exponent.Number))
        {
            return NumberText.Superscript((int)exponent.Number);
        }

        return "^" + Within(exponent, FormulaPrecedence.Atom, style);
    }

    private static string Within(Formula formula, int least, NumberStyle style)
    {
        string text = Write(formula, style);
        return FormulaPrecedence.Of(formula, style) >= least ? text : $"({text})";
    }

    private static bool IsPlain(Formula formula, NumberStyle style) => !style.HasNumbers && formula.Kind == FormulaKind.Symbol;
}
