using System.Text;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>A value of the catalogue as text with what it holds.</summary>
internal sealed class CatalogueNode(string text, IReadOnlyList<CatalogueNode>? parts = null)
{
    // What has fewer words is a number, a size or a name, and stands in the digest.
    private const int WordsOfASentence = 4;

    private readonly string text = text.ReplaceLineEndings(" / ");
    private readonly IReadOnlyList<CatalogueNode> parts = parts ?? [];
    private string name = "";
    private string? whole;

    private string Whole => whole ??= $"{name}: {text}" + string.Concat(parts.Select(part => "\n" + part.Whole.Replace("\n", "\n ", StringComparison.Ordinal)));

    // In words: no number or unit, which differ from one size to the next.
    private bool IsSentence => text.Split(' ').Count(word => word.Length > 1 && word.All(char.IsLetter)) >= WordsOfASentence;

    internal CatalogueNode Named(string property)
    {
        name = property;
        return this;
    }

    /// <summary>What stands for all that the members hold.</summary>
    internal static string Digest(IEnumerable<CatalogueNode> members) => ApprovedText.Digest(string.Join('\n', members.Select(member => member.Whole)))[..8];

    /// <summary>What it says in words that nothing before it says; where two differ in their numbers alone, they are alike.</summary>
    internal void Write(StringBuilder all, HashSet<string> known)
    {
        if (IsSentence && !parts.Any(part => part.IsSentence && text.Contains(part.text.Split(" | ")[0], StringComparison.Ordinal)) && known.Add(News.Alike(text)))
        {
            all.Append("  ").Append(text).Append('\n');
        }

        foreach (CatalogueNode part in parts)
        {
            part.Write(all, known);
        }
    }
}
