using System.Text;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>A formula in LaTeX as MathML, which browsers draw by themselves.</summary>
/// <remarks>
/// A formula breaks before a relation, a displayed one before a term too, and between formulas set side by side: each part is a <c>math</c> element of its own, and none is wider than a phone.
/// The LaTeX is what docs/ and the library's Markdown use; anything else is refused with the command it stumbled over.
/// </remarks>
public static class MathMarkup
{
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
            bool breaks = node.Kind is MathKind.Relation or MathKind.Separator || (display && node.Kind == MathKind.Sum && part is not [.., { Kind: MathKind.Relation }]);
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

public enum MathKind { Other, Relation, Sum, Separator }

public readonly record struct MathNode(string Markup, MathKind Kind = MathKind.Other, bool TakesLimits = false);
