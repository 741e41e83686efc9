using System.Text.RegularExpressions;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Documents;

/// <summary>A conductor size, as the library itself writes it: <c>14 AWG</c>, <c>2.5 mm²</c> (or <c>mm2</c>), <c>250 kcmil</c>, <c>14 SAE</c>, <c>20 aircraft</c>.</summary>
internal sealed partial class SizeForm : Form
{
    private const string Pattern = "^([1-4]/0|[1-9][0-9]?) (AWG|SAE|aircraft)$|^[1-9][0-9]{2,3} kcmil$|^(0|[1-9][0-9]*)(\\.[0-9]*[1-9])? mm(²|2)$";

    internal static SizeForm Any { get; } = new();

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind != NodeKind.Text || !Written().IsMatch(node.Text))
        {
            return Refuse(node, reading, $"must be a size with its system, written as 14 AWG, 4/0 AWG, 250 kcmil, 2.5 mm², 14 SAE or 20 aircraft; it was {node.Said}.");
        }

        if (ConductorSize.TryParse(node.Text, out ConductorSize size))
        {
            return size;
        }

        reading.Judge(node, $"must be a size that its system has; it was {node.Said}.");
        return Failed;
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Text("type", "string");
        schema.Text("pattern", Pattern);
    }

    [GeneratedRegex(Pattern, RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
