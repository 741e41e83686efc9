using System.Text;

namespace LowVoltage.Calc.Docs.Finish;

/// <summary>Reads the LaTeX of one formula.</summary>
public sealed class MathParser(string latex)
{
    private readonly bool upright;
    private int at;

    private MathParser(string latex, bool upright) : this(latex) => this.upright = upright;

    public List<MathNode> Parse()
    {
        List<MathNode> nodes = Row("");
        return at == latex.Length ? nodes : throw Wrong($"'{latex[at]}'");
    }

    /// <summary>Items up to one of the characters, which is not taken, or to a closing command.</summary>
    private List<MathNode> Row(string stops)
    {
        List<MathNode> nodes = [];
        for (SkipBlanks(); at < latex.Length && !stops.Contains(latex[at], StringComparison.Ordinal) && latex[at] != '}' && !Sees(@"\right"); SkipBlanks())
        {
            MathNode node = latex[at] is '^' or '_' or '\'' ? new MathNode("<mrow></mrow>") : Atom();
            bool isSign = node.Kind == MathKind.Sum && (nodes.Count == 0 || nodes[^1].Kind is not MathKind.Other);
            nodes.Add(isSign ? new MathNode(node.Markup.Replace("infix", "prefix", StringComparison.Ordinal)) : WithScripts(node));
        }

        return nodes;
    }

    private MathNode WithScripts(MathNode node)
    {
        string below = "", above = "";
        for (SkipBlanks(); at < latex.Length && latex[at] is '^' or '_' or '\''; SkipBlanks())
        {
            char mark = latex[at++];
            if (mark == '\'')
            {
                above = "<mo lspace=\"0\" rspace=\"0\">′</mo>" + above;
            }
            else if (mark == '_')
            {
                below += Argument();
            }
            else
            {
                above += Argument();
            }

            if (at == latex.Length)
            {
                break;
            }
        }

        if (below.Length + above.Length == 0)
        {
            return node;
        }

        (string both, string under, string over) = node.TakesLimits ? ("munderover", "munder", "mover") : ("msubsup", "msub", "msup");
        string tag = above.Length == 0 ? under : below.Length == 0 ? over : both;
        string scripts = (below.Length > 0 ? $"<mrow>{below}</mrow>" : "") + (above.Length > 0 ? $"<mrow>{above}</mrow>" : "");
        return node with { Markup = $"<{tag}>{node.Markup}{scripts}</{tag}>" };
    }

    private MathNode Atom()
    {
        char next = latex[at];
        if (next == '\\')
        {
            return Command(Name());
        }

        if (next == '{')
        {
            return new MathNode(Argument());
        }

        if (char.IsDigit(next))
        {
            return new MathNode($"<mn>{Take(c => char.IsDigit(c) || c == '.')}</mn>");
        }

        if (char.IsLetter(next) && upright)
        {
            return MathSymbols.Identifier(Take(char.IsLetter), true);
        }

        at++;
        return char.IsLetter(next) ? MathSymbols.Identifier(next.ToString(), false) : MathSymbols.Operator(next) ?? throw Wrong($"'{next}'");
    }

    private MathNode Command(string name)
    {
        switch (name)
        {
            case "frac" or "dfrac":
                return new MathNode($"<mfrac>{Argument()}{Argument()}</mfrac>");
            case "tfrac":
                return new MathNode($"<mstyle displaystyle=\"false\"><mfrac>{Argument()}{Argument()}</mfrac></mstyle>");
            case "sqrt":
                return new MathNode($"<msqrt>{Argument()}</msqrt>");
            case "text":
                return new MathNode($"<mtext>{Verbatim().Replace(' ', '\u00a0')}</mtext>");
            case "mathrm":
                return new MathNode(Markup(new MathParser(Verbatim(), upright: true).Parse()));
            case "left":
                return Fenced();
            case "textstyle" or "bigl" or "bigr" or "Big":
                return new MathNode("");
        }

        return MathSymbols.Command(name, upright) ?? throw Wrong('\\' + name);
    }

    private MathNode Fenced()
    {
        string open = Fence();
        List<MathNode> inner = Row("");
        if (!Sees(@"\right"))
        {
            throw Wrong(@"a \left without its \right");
        }

        at += @"\right".Length;
        return new MathNode($"<mrow><mo stretchy=\"true\">{open}</mo>{Markup(inner)}<mo stretchy=\"true\">{Fence()}</mo></mrow>");
    }

    private string Fence()
    {
        SkipBlanks();
        string fence = latex[at] == '\\' ? latex.Substring(at + 1, 1) : latex.Substring(at, 1);
        at += latex[at] == '\\' ? 2 : 1;
        return fence == "." ? "" : "()[]{}|".Contains(fence, StringComparison.Ordinal) ? fence : throw Wrong($"the fence {fence}");
    }

    /// <summary>One argument as markup of one element.</summary>
    private string Argument()
    {
        SkipBlanks();
        if (at == latex.Length)
        {
            throw Wrong("the end, where an argument is meant");
        }

        if (latex[at] != '{')
        {
            return char.IsDigit(latex[at]) ? $"<mn>{latex[at++]}</mn>" : Atom().Markup;
        }

        at++;
        List<MathNode> nodes = Row("}");
        if (at == latex.Length)
        {
            throw Wrong("a { without its }");
        }

        at++;
        return nodes.Count == 1 && nodes[0].Markup.Length > 0 ? nodes[0].Markup : $"<mrow>{Markup(nodes)}</mrow>";
    }

    /// <summary>The text between a pair of braces as it stands.</summary>
    private string Verbatim()
    {
        SkipBlanks();
        int start = at, depth = 0;
        do
        {
            depth += at == latex.Length ? throw Wrong("a { without its }") : latex[at] == '{' ? 1 : latex[at] == '}' ? -1 : 0;
            at++;
        }
        while (depth > 0);
        return latex[(start + 1)..(at - 1)];
    }

    private string Name()
    {
        at++;
        return at < latex.Length && char.IsAsciiLetter(latex[at]) ? Take(char.IsAsciiLetter) : latex[at++].ToString();
    }

    private string Take(Func<char, bool> wanted)
    {
        int start = at;
        while (at < latex.Length && wanted(latex[at]))
        {
            at++;
        }

        return latex[start..at];
    }

    private void SkipBlanks() => Take(char.IsWhiteSpace);

    private bool Sees(string text) => string.CompareOrdinal(latex, at, text, 0, text.Length) == 0;

    private static string Markup(List<MathNode> nodes)
    {
        StringBuilder text = new();
        nodes.ForEach(node => text.Append(node.Markup));
        return text.ToString();
    }

    private FormatException Wrong(string what) => new($"The formula {latex} has {what} at character {at}; MathParser reads no such thing.");
}
