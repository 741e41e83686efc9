namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>A value of the catalogue as text with what it holds.</summary>
internal sealed class CatalogueNode(string text, IReadOnlyList<CatalogueNode>? parts = null)
{
    private readonly string text = text.ReplaceLineEndings(" / ");
    private readonly IReadOnlyList<CatalogueNode> parts = parts ?? [];
    private string name = "";
    private string? whole;

    private string Whole => whole ??= $"{name}: {text}" + string.Concat(parts.Select(part => "\n" + part.Whole.Replace("\n", "\n ", StringComparison.Ordinal)));

    internal CatalogueNode Named(string property)
    {
        name = property;
        return this;
    }

    /// <summary>What stands for all that the members hold.</summary>
    internal static string Digest(IEnumerable<CatalogueNode> members) => ApprovedText.Digest(string.Join('\n', members.Select(member => member.Whole)));
}
