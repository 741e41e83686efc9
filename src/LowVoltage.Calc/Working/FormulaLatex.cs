using System.Text;

namespace LowVoltage.Calc.Working;

/// <summary>Formulas in LaTeX math. Digits 0 writes symbols; more puts the numbers in with their units.</summary>
internal static class FormulaLatex
{
    internal static string Write(Formula formula, NumberStyle style)
    {
        bool numbers = style.HasNumbers;
        return formula.Kind switch
        {
            FormulaKind.Symbol => numbers ? WithUnit(formula.Number, style, formula.Unit) : ((Symbol)formula).Latex,
            FormulaKind.Number => WithUnit(formula.Number, numbers ? style : 16, formula.Unit),
            FormulaKind.Sum => Within(formula.First, FormulaPrecedence.Sum, style) + " + " + Within(formula.Second, FormulaPrecedence.RightOf(formula), style),
            FormulaKind.Difference => Within(formula.First, FormulaPrecedence.Sum, style) + " - " + Within(formula.Second, FormulaPrecedence.Product, style),
            FormulaKind.Product => Within(formula.First, FormulaPrecedence.Product, style) + @" \cdot " + Within(formula.Second, FormulaPrecedence.Product, style),
            FormulaKind.Quotient => @"\frac{" + Write(formula.First, style) + "}{" + Write(formula.Second, style) + "}",
            FormulaKind.Power => Within(formula.First, FormulaPrecedence.Atom, style) + "^{" + Write(formula.Second, style) + "}",
            FormulaKind.SquareRoot => @"\sqrt{" + Write(formula.First, style) + "}",
            FormulaKind.Logarithm => @"\ln" + Brackets(formula.First, style),
            FormulaKind.Exponential => @"\exp" + Brackets(formula.First, style),
            FormulaKind.Negation => "-" + Within(formula.First, FormulaPrecedence.Product, style),
            FormulaKind.Least => @"\min\left(" + Several(formula, style) + @"\right)",
            _ => @"\max\left(" + Several(formula, style) + @"\right)",
        };
    }

    internal static string WithUnit(double value, NumberStyle style, string unit)
    {
        (double shown, string shownUnit) = style.Engineering ? EngineeringUnit.Of(value, unit) : (value, unit);
        string number = NumberText.Latex(shown, style.Digits);
        return unit.Length == 0 ? number : number + @"\,\mathrm{" + Unit(shownUnit) + "}";
    }

    private static string Several(Formula formula, NumberStyle style) => string.Join(";\\ ", formula.Several().Select(operand => Write(operand, style)));

    private static string Within(Formula formula, int least, NumberStyle style) =>
        FormulaPrecedence.Of(formula, style) >= least ? Write(formula, style) : Brackets(formula, style);

    private static string Brackets(Formula formula, NumberStyle style) => @"\left(" + Write(formula, style) + @"\right)";

    private static string Unit(string unit)
    {
        StringBuilder latex = new();
        foreach (char c in unit)
        {
            latex.Append(c switch
            {
                'Ω' => @"\Omega ",
                '°' => @"^{\circ}",
                '²' => "^{2}",
                '³' => "^{3}",
                '⁴' => "^{4}",
                '·' => @"\cdot ",
                '√' => @"\surd ",
                'µ' or 'μ' => @"\mu ",
                '%' => @"\%",
                ' ' => @"\ ",
                _ => c.ToString(),
            });
        }

        return latex.ToString();
    }
}
