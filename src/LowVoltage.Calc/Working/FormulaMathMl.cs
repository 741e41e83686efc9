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

    /// <summary>The formula in pieces that follow one another on a line, so that a browser may break it where a sum, a product or a list goes on.</summary>
    /// <remarks>A fraction, a power and what stands in their brackets stay whole.</remarks>
    internal static List<string> Parts(Formula formula, int digits)
    {
        switch (formula.Kind)
        {
            case FormulaKind.Sum:
                return Joined(formula, "+", FormulaPrecedence.Sum, FormulaPrecedence.RightOf(formula), digits);
            case FormulaKind.Difference:
                return Joined(formula, "−", FormulaPrecedence.Sum, FormulaPrecedence.Product, digits);
            case FormulaKind.Product:
                return Joined(formula, "·", FormulaPrecedence.Product, FormulaPrecedence.Product, digits);
            case FormulaKind.Least or FormulaKind.Greatest:
                List<string> all = [];
                foreach (Formula operand in formula.Several())
                {
                    if (all.Count > 0)
                    {
                        all[all.Count - 1] += "<mo>;</mo>";
                    }

                    all.AddRange(Parts(operand, digits));
                }

                return Held(all, formula.Kind == FormulaKind.Least ? "<mi>min</mi>" : "<mi>max</mi>");
            default:
                return [Write(formula, digits)];
        }
    }

    private static List<string> Joined(Formula formula, string sign, int left, int right, int digits)
    {
        List<string> all = PartsWithin(formula.First, left, digits), more = PartsWithin(formula.Second, right, digits);
        more[0] = "<mo form=\"infix\">" + sign + "</mo>" + more[0];
        all.AddRange(more);
        return all;
    }

    private static List<string> PartsWithin(Formula formula, int least, int digits) =>
        FormulaPrecedence.Of(formula, digits) >= least ? Parts(formula, digits) : Held(Parts(formula, digits), "");

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
