using System.Text;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>A formula in LaTeX as MathML, which browsers draw by themselves.</summary>
/// <remarks>
/// A formula breaks before a relation, and between formulas set side by side, so each part is a <c>math</c> element of its own and none is wider than a phone.
/// The LaTeX is what docs/ and the library's Markdown use; anything else is refused with the command it stumbled over.
/// </remarks>
public static class MathMarkup
{
    public static string Write(string latex, bool display)
    {
        List<MathNode> nodes = new MathParser(latex).Parse();
        List<string> formulas = [];
        StringBuilder formula = new();
        foreach (List<MathNode> part in Parts(nodes))
        {
            if (part is [{ Kind: MathKind.Separator }])
            {
                formulas.Add(formula.ToString());
                formula.Clear();
                continue;
            }

            formula.Append(formula.Length > 0 ? " " : "").Append(display ? "<math displaystyle=\"true\">" : "<math>").Append("<mrow>");
            // The blank between two parts is the space before a relation.
            part.ForEach(node => formula.Append(formula.Length > 0 && node.Kind == MathKind.Relation ? node.Markup.Replace("<mo form=\"infix\">", "<mo form=\"infix\" lspace=\"0\">", StringComparison.Ordinal) : node.Markup));
            formula.Append("</mrow></math>");
        }

        formulas.Add(formula.ToString());
        string inner = string.Join(" ", formulas.Where(text => text.Length > 0).Select(text => $"<span>{text}</span>"));
        return display ? $"<div class=\"formula\">{inner}</div>" : $"<span class=\"formula\">{inner}</span>";
    }

    private static IEnumerable<List<MathNode>> Parts(List<MathNode> nodes)
    {
        List<MathNode> part = [];
        foreach (MathNode node in nodes)
        {
            if ((node.Kind is MathKind.Relation or MathKind.Separator) && part.Count > 0)
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

public enum MathKind { Other, Relation, Separator }

public readonly record struct MathNode(string Markup, MathKind Kind = MathKind.Other, bool TakesLimits = false);
