using System.Text;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>A value of the catalogue as text with what it holds.</summary>
internal sealed class CatalogueNode(string text, IReadOnlyList<CatalogueNode>? parts = null)
{
    // Longer lists are shown by their ends.
    private const int MostItems = 6;

    // Shorter texts are no shorter to point at.
    private const int LongText = 60;

    private readonly string text = text.ReplaceLineEndings(" / ");
    private readonly IReadOnlyList<CatalogueNode> parts = parts ?? [];
    private string name = "";
    private string? whole;

    internal bool IsList { get; init; }

    private string Whole => whole ??= name + text + string.Concat(parts.Select(part => "\n" + part.Whole.Replace("\n", "\n ", StringComparison.Ordinal)));

    internal CatalogueNode Named(string property)
    {
        name = property + ": ";
        return this;
    }

    internal void Write(StringBuilder all, int level, HashSet<string> known)
    {
        bool isNew = known.Add(Whole);
        string line = !isNew && parts.Count == 0 && text.Length > LongText ? text[..(LongText / 2)] + " …" : text;
        if (name.Length + line.Length > 0)
        {
            all.Append(' ', level).Append((name + line).TrimEnd()).Append(isNew || parts.Count == 0 ? "\n" : " … as above\n");
        }

        if (!isNew)
        {
            return;
        }

        bool isLong = IsList && parts.Count > MostItems;
        for (int i = 0; i < parts.Count; i++)
        {
            // A name that only says the whole again is left out: should it differ, it shows.
            if ((!isLong || i < 2 || i == parts.Count - 1) && (IsList || parts[i].text != text || parts[i].parts.Count > 0))
            {
                parts[i].Write(all, level + 1, known);
            }
            else if (isLong && i == 2)
            {
                all.Append(' ', level + 1).Append("… ").Append(parts.Count - 3).Append(" more, ").Append(ApprovedText.Digest(string.Join("\n", parts.Select(part => part.Whole)))).Append('\n');
            }
        }
    }
}
