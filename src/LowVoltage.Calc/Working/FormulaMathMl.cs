namespace LowVoltage.Calc.Working;

/// <summary>Formulas in MathML, which browsers draw themselves. Digits 0 writes symbols; more puts the numbers in with their units.</summary>
internal static class FormulaMathMl
{
    internal static string Write(Formula formula, int digits)
    {
        bool numbers = digits > 0;
        return formula.Kind switch
        {
            FormulaKind.Symbol => numbers ? WithUnit(formula.Number, digits, formula.Unit) : SymbolName.MathMl(((Symbol)formula).Spec),
            FormulaKind.Number => WithUnit(formula.Number, numbers ? digits : 16, formula.Unit),
            FormulaKind.Sum => Pair(formula, "+", FormulaPrecedence.Sum, FormulaPrecedence.RightOf(formula), digits),
            FormulaKind.Difference => Pair(formula, "−", FormulaPrecedence.Sum, FormulaPrecedence.Product, digits),
            FormulaKind.Product => Pair(formula, "·", FormulaPrecedence.Product, FormulaPrecedence.Product, digits),
            FormulaKind.Quotient => "<mfrac>" + Row(formula.First, digits) + Row(formula.Second, digits) + "</mfrac>",
            FormulaKind.Power => "<msup>" + Group(Within(formula.First, FormulaPrecedence.Atom, digits)) + Row(formula.Second, digits) + "</msup>",
            FormulaKind.SquareRoot => "<msqrt>" + Write(formula.First, digits) + "</msqrt>",
            FormulaKind.Logarithm => "<mi>ln</mi>" + Brackets(Write(formula.First, digits)),
            FormulaKind.Exponential => "<mi>exp</mi>" + Brackets(Write(formula.First, digits)),
            FormulaKind.Negation => "<mo>−</mo>" + Within(formula.First, FormulaPrecedence.Product, digits),
            FormulaKind.Least => "<mi>min</mi>" + Brackets(Several(formula, digits)),
            _ => "<mi>max</mi>" + Brackets(Several(formula, digits)),
        };
    }

    internal static string WithUnit(double value, int digits, string unit)
    {
        string number = NumberText.MathMl(value, digits);
        return unit.Length == 0 ? number : number + "<mtext>" + NumberText.Thin + SolutionHtml.Escape(unit) + "</mtext>";
    }

    private static string Pair(Formula formula, string sign, int left, int right, int digits) =>
        Within(formula.First, left, digits) + "<mo>" + sign + "</mo>" + Within(formula.Second, right, digits);

    private static string Several(Formula formula, int digits) => string.Join("<mo>;</mo>", formula.Several().Select(operand => Write(operand, digits)));

    private static string Within(Formula formula, int least, int digits)
    {
        string inner = Write(formula, digits);
        return FormulaPrecedence.Of(formula, digits) >= least ? inner : Brackets(inner);
    }

    private static string Row(Formula formula, int digits) => Group(Write(formula, digits));

    private static string Group(string inner) => "<mrow>" + inner + "</mrow>";

    private static string Brackets(string inner) => "<mrow><mo>(</mo>" + inner + "<mo>)</mo></mrow>";
}
