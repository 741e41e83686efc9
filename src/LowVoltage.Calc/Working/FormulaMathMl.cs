namespace LowVoltage.Calc.Working;

/// <summary>Formulas in MathML, which browsers draw themselves. Digits 0 writes symbols; more puts the numbers in with their units.</summary>
internal static class FormulaMathMl
{
    internal static string Write(Formula formula, NumberStyle style)
    {
        bool numbers = style.HasNumbers;
        return formula.Kind switch
        {
            FormulaKind.Symbol => numbers ? WithUnit(formula.Number, style, formula.Unit) : SymbolName.MathMl(((Symbol)formula).Spec),
            FormulaKind.Number => WithUnit(formula.Number, numbers ? style : 16, formula.Unit),
            FormulaKind.Sum => Pair(formula, "+", FormulaPrecedence.Sum, FormulaPrecedence.RightOf(formula), style),
            FormulaKind.Difference => Pair(formula, "−", FormulaPrecedence.Sum, FormulaPrecedence.Product, style),
            FormulaKind.Product => Pair(formula, "·", FormulaPrecedence.Product, FormulaPrecedence.Product, style),
            FormulaKind.Quotient => "<mfrac>" + Row(formula.First, style) + Row(formula.Second, style) + "</mfrac>",
            FormulaKind.Power => "<msup>" + Group(Within(formula.First, FormulaPrecedence.Atom, style)) + Row(formula.Second, style) + "</msup>",
            FormulaKind.SquareRoot => "<msqrt>" + Write(formula.First, style) + "</msqrt>",
            FormulaKind.Logarithm => "<mi>ln</mi>" + Brackets(Write(formula.First, style)),
            FormulaKind.Exponential => "<mi>exp</mi>" + Brackets(Write(formula.First, style)),
            FormulaKind.Negation => "<mo>−</mo>" + Within(formula.First, FormulaPrecedence.Product, style),
            FormulaKind.Least => "<mi>min</mi>" + Brackets(Several(formula, style)),
            _ => "<mi>max</mi>" + Brackets(Several(formula, style)),
        };
    }

    /// <summary>The formula in pieces that follow one another on a line, so that a browser may break it where a sum, a product or a list goes on.</summary>
    /// <remarks>A fraction, a power and what stands in their brackets stay whole.</remarks>
    internal static List<string> Parts(Formula formula, NumberStyle style)
    {
        switch (formula.Kind)
        {
            case FormulaKind.Sum:
                return Joined(formula, "+", FormulaPrecedence.Sum, FormulaPrecedence.RightOf(formula), style);
            case FormulaKind.Difference:
                return Joined(formula, "−", FormulaPrecedence.Sum, FormulaPrecedence.Product, style);
            case FormulaKind.Product:
                return Joined(formula, "·", FormulaPrecedence.Product, FormulaPrecedence.Product, style);
            case FormulaKind.Least or FormulaKind.Greatest:
                List<string> all = [];
                foreach (Formula operand in formula.Several())
                {
                    if (all.Count > 0)
                    {
                        all[all.Count - 1] += "<mo>;</mo>";
                    }

                    all.AddRange(Parts(operand, style));
                }

                return Held(all, formula.Kind == FormulaKind.Least ? "<mi>min</mi>" : "<mi>max</mi>");
            default:
                return [Write(formula, style)];
        }
    }

    private static List<string> Joined(Formula formula, string sign, int left, int right, NumberStyle style)
    {
        List<string> all = PartsWithin(formula.First, left, style), more = PartsWithin(formula.Second, right, style);
        more[0] = "<mo form=\"infix\">" + sign + "</mo>" + more[0];
        all.AddRange(more);
        return all;
    }

    private static List<string> PartsWithin(Formula formula, int least, NumberStyle style) =>
        FormulaPrecedence.Of(formula, style) >= least ? Parts(formula, style) : Held(Parts(formula, style), "");

    // Brackets that stand in different pieces cannot grow with what is between them: round something high they stay in one piece.
    private static List<string> Held(List<string> parts, string name)
    {
        if (parts.Count == 1 || parts.Exists(part => part.Contains("<mfrac>") || part.Contains("<msqrt>")))
        {
            return [name + Brackets(string.Concat(parts))];
        }

        parts[0] = name + "<mo stretchy=\"false\">(</mo>" + parts[0];
        parts[parts.Count - 1] += "<mo stretchy=\"false\">)</mo>";
        return parts;
    }

    internal static string WithUnit(double value, NumberStyle style, string unit)
    {
        (double shown, string shownUnit) = style.Engineering ? EngineeringUnit.Of(value, unit) : (value, unit);
        string number = NumberText.MathMl(shown, style.Digits);
        return unit.Length == 0 ? number : number + "<mtext>" + NumberText.Thin + SolutionHtml.Escape(shownUnit) + "</mtext>";
    }

    private static string Pair(Formula formula, string sign, int left, int right, NumberStyle style) =>
        Within(formula.First, left, style) + "<mo>" + sign + "</mo>" + Within(formula.Second, right, style);

    private static string Several(Formula formula, NumberStyle style) => string.Join("<mo>;</mo>", formula.Several().Select(operand => Write(operand, style)));

    private static string Within(Formula formula, int least, NumberStyle style)
    {
        string inner = Write(formula, style);
        return FormulaPrecedence.Of(formula, style) >= least ? inner : Brackets(inner);
    }

    private static string Row(Formula formula, NumberStyle style) => Group(Write(formula, style));

    private static string Group(string inner) => "<mrow>" + inner + "</mrow>";

    private static string Brackets(string inner) => "<mrow><mo>(</mo>" + inner + "<mo>)</mo></mrow>";
}
