using System.Text;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>A formula in LaTeX as MathML, which browsers draw by themselves.</summary>
/// <remarks>
/// A formula breaks before a relation, a displayed one before a term too, a long one before a factor, and between formulas set side by side: each part is a <c>math</c> element of its own, and none is wider than a phone.
/// The LaTeX is what docs/ and the library's Markdown use; anything else is refused with the command it stumbled over.
/// </remarks>
public static class MathMarkup
{
    /// <summary>Signs after which a product may go on in the next line.</summary>
    private const int LongFactor = 12;

    public static string Write(string latex, bool display)
    {
        List<string> formulas = [];
        StringBuilder formula = new();
        foreach (List<MathNode> part in Parts(new MathParser(latex).Parse(), display))
        {
            if (part is [{ Kind: MathKind.Separator }])
            {
                formulas.Add(formula.ToString());
                formula.Clear();
                continue;
            }

            bool follows = formula.Length > 0;
            formula.Append(follows ? " " : "").Append(display ? "<math displaystyle=\"true\">" : "<math>").Append("<mrow>");
            for (int i = 0; i < part.Count; i++)
            {
                // The blank between two parts is the space before the sign that the second begins with.
                formula.Append(i == 0 && follows ? part[i].Markup.Replace("<mo form=\"infix\">", "<mo form=\"infix\" lspace=\"0\">", StringComparison.Ordinal) : part[i].Markup);
            }

            formula.Append("</mrow></math>");
        }

        formulas.Add(formula.ToString());
        string inner = string.Join(" ", formulas.Where(text => text.Length > 0).Select(text => $"<span>{text}</span>"));
        return display ? $"<div class=\"formula\">{inner}</div>" : $"<span class=\"formula\">{inner}</span>";
    }

    private static IEnumerable<List<MathNode>> Parts(List<MathNode> nodes, bool display)
    {
        List<MathNode> part = [];
        foreach (MathNode node in nodes)
        {
            bool breaks = node.Kind switch
            {
                MathKind.Relation or MathKind.Separator => true,
                MathKind.Sum => display && part is not [.., { Kind: MathKind.Relation }],
                MathKind.Product => part.Sum(shown => shown.Length) >= LongFactor,
                _ => false,
            };
            if (breaks && part.Count > 0)
            {
                yield return part;
                part = [];
            }

            if (node.Kind == MathKind.Separator)
            {
                yield return [node];
                continue;
            }

            part.Add(node);
        }

        if (part.Count > 0)
        {
            yield return part;
        }
    }
}

public enum MathKind { Other, Relation, Sum, Product, Separator }

/// <summary>A piece of a formula as markup.</summary>
public readonly record struct MathNode(string Markup, MathKind Kind = MathKind.Other, bool TakesLimits = false)
{
    /// <summary>How many signs it shows, tags left out.</summary>
    public int Length
    {
        get
        {
            int shown = 0;
            bool inside = false;
            foreach (char sign in Markup)
            {
                inside = sign == '<' || (inside && sign != '>');
                shown += inside || sign == '>' ? 0 : 1;
            }

            return shown;
        }
    }
}
