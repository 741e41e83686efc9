using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Documents;

/// <summary>What a value of a document is.</summary>
internal enum ValueKind
{
    Object,
    List,
    Text,
    Number,
    Flag,
    Null,
}

/// <summary>A member of an object: its name, where the name stands, its value.</summary>
internal readonly record struct NodeMember(string Name, int Offset, DocumentNode Value);

/// <summary>A value of a document with its place: what <c>JsonDocument</c> does not keep.</summary>
internal sealed class DocumentNode(ValueKind kind, int offset, DocumentNode? parent, string name, int index)
{
    internal ValueKind Kind => kind;

    /// <summary>Where the value begins, bytes from the start of the document.</summary>
    internal int Offset => offset;

    internal string Text { get; init; } = "";

    /// <summary>The number, +∞ or −∞ where it is too large for a double.</summary>
    internal double Number { get; init; }

    internal bool Flag { get; init; }

    internal List<NodeMember> Members { get; } = [];

    internal List<DocumentNode> Items { get; } = [];

    /// <summary>The way to the value: <c>$.joints[2].resistance_ohm</c>.</summary>
    internal string Path
    {
        get
        {
            if (parent is null)
            {
                return "$";
            }

            StringBuilder path = new(parent.Path);
            return parent.Kind == ValueKind.List
                ? path.Append('[').Append(index.ToString(CultureInfo.InvariantCulture)).Append(']').ToString()
                : path.Append(Step(name)).ToString();
        }
    }

    /// <summary>The value in a refusal: <c>the text "5 A"</c>.</summary>
    internal string Said => kind switch
    {
        ValueKind.Object => "an object",
        ValueKind.List => "a list",
        ValueKind.Text => $"the text \"{Short(Text)}\"",
        ValueKind.Number => $"the number {Quantities.Accept.Text(Number)}",
        ValueKind.Flag => Flag ? "true" : "false",
        _ => "null",
    };

    internal DocumentNode? Find(string member)
    {
        foreach (NodeMember own in Members)
        {
            if (own.Name == member)
            {
                return own.Value;
            }
        }

        return null;
    }

    internal static string Short(string text) => text.Length <= 60 ? text : text[..57] + "...";

    // A member whose name is a word stands behind a point, any other in brackets and quotes.
    private static string Step(string member)
    {
        bool word = member.Length > 0 && !char.IsAsciiDigit(member[0]);
        foreach (char letter in member)
        {
            word &= char.IsAsciiLetterOrDigit(letter) || letter is '_' or '$';
        }

        return word ? "." + member : "['" + Short(member).Replace("\\", "\\\\", StringComparison.Ordinal).Replace("'", "\\'", StringComparison.Ordinal) + "']";
    }
}
