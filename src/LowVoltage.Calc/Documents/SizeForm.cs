using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Documents;

/// <summary>A conductor size, as the library itself writes it: <c>14 AWG</c>, <c>2.5 mm²</c> (or <c>mm2</c>), <c>250 kcmil</c>, <c>14 SAE</c>, <c>20 aircraft</c>.</summary>
internal sealed class SizeForm : Form
{
    internal static SizeForm Any { get; } = new();

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind != NodeKind.Text)
        {
            return Refuse(node, reading, $"must be a size as a text, \"2.5 mm²\"; it was {node.Said}.");
        }

        // One way of writing, so that the schema can say it too.
        return ConductorSize.TryParse(node.Text, out ConductorSize size) && size.Designation == node.Text.Replace("mm2", "mm²", StringComparison.Ordinal)
            ? size
            : Refuse(node, reading, $"must be a size with its system, written as {(size.IsNone ? "14 AWG, 4/0 AWG, 250 kcmil, 2.5 mm², 14 SAE or 20 aircraft" : size.Designation)}; it was {node.Said}.");
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Text("type", "string");
        schema.Text("pattern", "^([1-4]/0|[1-9][0-9]?) (AWG|SAE|aircraft)$|^[1-9][0-9]{2,3} kcmil$|^(0|[1-9][0-9]*)(\\.[0-9]*[1-9])? mm(²|2)$");
    }
}
