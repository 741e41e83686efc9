using System.Xml.Linq;
using static LowVoltage.Calc.Working.Xhtml;

namespace LowVoltage.Calc.Working;

/// <summary>Formulas in MathML, which browsers draw themselves. Digits 0 writes symbols; more puts the numbers in with their units.</summary>
/// <remarks>What stands in one row is an array of elements.</remarks>
internal static class FormulaMathMl
{
    internal static XElement[] Write(Formula formula, NumberStyle style)
    {
        bool numbers = style.HasNumbers;
        return formula.Kind switch
        {
            FormulaKind.Symbol => numbers ? WithUnit(formula.Number, style, formula.Unit) : [SymbolName.MathMl(((Symbol)formula).Spec)],
            FormulaKind.Number => WithUnit(formula.Number, numbers ? style : 16, formula.Unit),
            FormulaKind.Sum => Pair(formula, "+", FormulaPrecedence.Sum, FormulaPrecedence.RightOf(formula), style),
            FormulaKind.Difference => Pair(formula, "−", FormulaPrecedence.Sum, FormulaPrecedence.Product, style),
            FormulaKind.Product => Pair(formula, "·", FormulaPrecedence.Product, FormulaPrecedence.Product, style),
            FormulaKind.Quotient => [Element("mfrac", Row(formula.First, style), Row(formula.Second, style))],
            FormulaKind.Power => [Element("msup", Group(Within(formula.First, FormulaPrecedence.Atom, style)), Row(formula.Second, style))],
            FormulaKind.SquareRoot => [Element("msqrt", Write(formula.First, style))],
            FormulaKind.Logarithm => [Name("ln"), Brackets(Write(formula.First, style))],
            FormulaKind.Exponential => [Name("exp"), Brackets(Write(formula.First, style))],
            FormulaKind.Negation => [Sign("−"), .. Within(formula.First, FormulaPrecedence.Product, style)],
            FormulaKind.Least => [Name("min"), Brackets(Several(formula, style))],
            _ => [Name("max"), Brackets(Several(formula, style))],
        };
    }

    /// <summary>The formula in pieces that follow one another on a line, so that a browser may break it where a sum, a product or a list goes on.</summary>
    /// <remarks>A fraction, a power and what stands in their brackets stay whole.</remarks>
    internal static List<XElement[]> Parts(Formula formula, NumberStyle style)
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
                List<XElement[]> all = [];
                foreach (Formula operand in formula.Several())
                {
                    if (all.Count > 0)
                    {
                        all[all.Count - 1] = [.. all[all.Count - 1], Sign(";")];
                    }

                    all.AddRange(Parts(operand, style));
                }

                return Held(all, [Name(formula.Kind == FormulaKind.Least ? "min" : "max")]);
            default:
                return [Write(formula, style)];
        }
    }

    internal static XElement[] WithUnit(double value, NumberStyle style, string unit)
    {
        (double shown, string shownUnit) = style.Engineering ? EngineeringUnit.Of(value, unit) : (value, unit);
        XElement[] number = NumberText.MathMl(shown, style.Digits);
        return unit.Length == 0 ? number : [.. number, Element("mtext", NumberText.Thin + shownUnit)];
    }

    internal static XElement Sign(string sign) => Element("mo", sign);

    /// <summary>A sign with room on both sides, also where nothing stands before it.</summary>
    internal static XElement Infix(string sign) => Element("mo", Attribute("form", "infix"), sign);

    // Upright, as what is no quantity.
    private static XElement Name(string function) => Element("mi", Attribute("mathvariant", "normal"), function);

    private static List<XElement[]> Joined(Formula formula, string sign, int left, int right, NumberStyle style)
    {
        List<XElement[]> all = PartsWithin(formula.First, left, style), more = PartsWithin(formula.Second, right, style);
        more[0] = [Infix(sign), .. more[0]];
        all.AddRange(more);
        return all;
    }

    private static List<XElement[]> PartsWithin(Formula formula, int least, NumberStyle style) =>
        FormulaPrecedence.Of(formula, style) >= least ? Parts(formula, style) : Held(Parts(formula, style), []);

    // Brackets that stand in different pieces cannot grow with what is between them: round something high they stay in one piece.
    private static List<XElement[]> Held(List<XElement[]> parts, XElement[] name)
    {
        if (parts.Count == 1 || parts.Exists(part => part.DescendantsAndSelf().Any(element => element.Name.LocalName is "mfrac" or "msqrt")))
        {
            return [[.. name, Brackets([.. parts.SelectMany(part => part)])]];
        }

        parts[0] = [.. name, Bracket("("), .. parts[0]];
        parts[parts.Count - 1] = [.. parts[parts.Count - 1], Bracket(")")];
        return parts;
    }

    private static XElement Bracket(string sign) => Element("mo", Attribute("stretchy", "false"), sign);

    private static XElement[] Pair(Formula formula, string sign, int left, int right, NumberStyle style) => [.. Within(formula.First, left, style), Sign(sign), .. Within(formula.Second, right, style)];

    private static XElement[] Several(Formula formula, NumberStyle style)
    {
        List<XElement> all = [];
        foreach (Formula operand in formula.Several())
        {
            all.AddRange(all.Count > 0 ? [Sign(";"), .. Write(operand, style)] : Write(operand, style));
        }

        return [.. all];
    }

    private static XElement[] Within(Formula formula, int least, NumberStyle style)
    {
        XElement[] inner = Write(formula, style);
        return FormulaPrecedence.Of(formula, style) >= least ? inner : [Brackets(inner)];
    }

    private static XElement Row(Formula formula, NumberStyle style) => Group(Write(formula, style));

    private static XElement Group(XElement[] inner) => Element("mrow", inner);

    private static XElement Brackets(XElement[] inner) => Element("mrow", Sign("("), inner, Sign(")"));
}
