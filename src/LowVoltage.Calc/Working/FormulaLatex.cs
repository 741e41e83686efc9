using System.Text;

namespace LowVoltage.Calc.Working;

/// <summary>Formulas in LaTeX math. Digits 0 writes symbols; more puts the numbers in with their units.</summary>
internal static class FormulaLatex
{
    internal static string Write(Formula formula, int digits)
    {
        bool numbers = digits > 0;
        return formula.Kind switch
        {
            FormulaKind.Symbol => numbers ? WithUnit(formula.Number, digits, formula.Unit) : ((Symbol)formula).Latex,
            FormulaKind.Number => WithUnit(formula.Number, numbers ? digits : 16, formula.Unit),
            FormulaKind.Sum => Within(formula.First, FormulaPrecedence.Sum, digits) + " + " + Within(formula.Second, FormulaPrecedence.RightOf(formula), digits),
            FormulaKind.Difference => Within(formula.First, FormulaPrecedence.Sum, digits) + " - " + Within(formula.Second, FormulaPrecedence.Product, digits),
            FormulaKind.Product => Within(formula.First, FormulaPrecedence.Product, digits) + @" \cdot " + Within(formula.Second, FormulaPrecedence.Product, digits),
            FormulaKind.Quotient => @"\frac{" + Write(formula.First, digits) + "}{" + Write(formula.Second, digits) + "}",
            FormulaKind.Power => Within(formula.First, FormulaPrecedence.Atom, digits) + "^{" + Write(formula.Second, digits) + "}",
            FormulaKind.SquareRoot => @"\sqrt{" + Write(formula.First, digits) + "}",
            FormulaKind.Logarithm => @"\ln" + Brackets(formula.First, digits),
            FormulaKind.Exponential => @"\exp" + Brackets(formula.First, digits),
            FormulaKind.Negation => "-" + Within(formula.First, FormulaPrecedence.Product, digits),
            FormulaKind.Least => @"\min\left(" + Several(formula, digits) + @"\right)",
            _ => @"\max\left(" + Several(formula, digits) + @"\right)",
        };
    }

    internal static string WithUnit(double value, int digits, string unit) =>
        unit.Length == 0 ? NumberText.Latex(value, digits) : NumberText.Latex(value, digits) + @"\,\mathrm{" + Unit(unit) + "}";

    private static string Several(Formula formula, int digits) => string.Join(";\\ ", formula.Several().Select(operand => Write(operand, digits)));

    private static string Within(Formula formula, int least, int digits) =>
        FormulaPrecedence.Of(formula, digits) >= least ? Write(formula, digits) : Brackets(formula, digits);

    private static string Brackets(Formula formula, int digits) => @"\left(" + Write(formula, digits) + @"\right)";

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
