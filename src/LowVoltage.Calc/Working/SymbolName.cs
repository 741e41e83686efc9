using System.Text;
using System.Xml.Linq;
using static LowVoltage.Calc.Working.Xhtml;

namespace LowVoltage.Calc.Working;

/// <summary>The letters of a quantity in text, LaTeX and MathML, from one spelling: <c>ρ_20</c>.</summary>
internal static class SymbolName
{
    private const string Plain = "0123456789aeioruvxhklmnpst+";
    private const string Below = "₀₁₂₃₄₅₆₇₈₉ₐₑᵢₒᵣᵤᵥₓₕₖₗₘₙₚₛₜ₊";

    private const string Greek = "αβγδεηθκλμνπρστφωΔΣΩ";

    private static readonly string[] GreekNames =
    [
        "alpha", "beta", "gamma", "delta", "varepsilon", "eta", "theta", "kappa", "lambda", "mu", "nu", "pi", "rho", "sigma", "tau", "varphi", "omega", "Delta", "Sigma", "Omega",
    ];

    /// <summary>A letter with a mark behind its subscript.</summary>
    internal static string With(string spec, string mark) => mark.Length == 0 ? spec : Split(spec).Sub.Length == 0 ? spec + "_" + mark : spec + mark;

    internal static string Text(string spec)
    {
        (string basis, string sub) = Split(spec);
        if (sub.Length == 0)
        {
            return basis;
        }

        StringBuilder below = new(basis);
        foreach (char c in sub)
        {
            int at = Plain.IndexOf(c);
            if (at < 0)
            {
                return basis + "_" + sub;
            }

            below.Append(Below[at]);
        }

        return below.ToString();
    }

    internal static string Latex(string spec)
    {
        (string basis, string sub) = Split(spec);
        string letters = LatexLetters(basis);
        return sub.Length == 0 ? letters : letters + "_{" + (IsWord(sub) ? @"\mathrm{" + sub + "}" : LatexLetters(sub)) + "}";
    }

    internal static XElement MathMl(string spec)
    {
        (string basis, string sub) = Split(spec);
        XElement letters = basis.Length == 1 ? Element("mi", basis) : Element("mi", Attribute("mathvariant", "italic"), basis);
        return sub.Length == 0 ? letters : Element("msub", letters, Element(char.IsDigit(sub[0]) ? "mn" : "mtext", sub));
    }

    private static (string Basis, string Sub) Split(string spec)
    {
        int at = spec.IndexOf('_');
        return at < 0 ? (spec, "") : (spec.Substring(0, at), spec.Substring(at + 1));
    }

    private static bool IsWord(string sub) => sub.Length > 1 && char.IsLetter(sub[0]);

    private static string LatexLetters(string letters)
    {
        StringBuilder latex = new();
        for (int i = 0; i < letters.Length; i++)
        {
            char c = letters[i];
            int greek = Greek.IndexOf(c);
            bool more = i + 1 < letters.Length && char.IsLetter(letters[i + 1]);
            latex.Append(greek >= 0 ? @"\" + GreekNames[greek] + (more ? " " : "") : c == '′' ? "'" : c == '²' ? "^{2}" : c.ToString());
        }

        return latex.ToString();
    }
}
