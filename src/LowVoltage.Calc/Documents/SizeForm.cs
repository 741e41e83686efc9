using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Documents;

/// <summary>A conductor size, as the library itself writes it: <c>14 AWG</c>, <c>2.5 mm²</c> (or <c>mm2</c>), <c>250 kcmil</c>, <c>14 SAE</c>, <c>20 aircraft</c>.</summary>
internal sealed class SizeForm : Form
{
    // What IsWritten reads; a test holds the two together.
    private const string Pattern = "^([1-4]/0|[1-9][0-9]?) (AWG|SAE|aircraft)$|^[1-9][0-9]{2,3} kcmil$|^(0|[1-9][0-9]*)(\\.[0-9]*[1-9])? mm(²|2)$";

    internal static SizeForm Any { get; } = new();

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind != ValueKind.Text || !IsWritten(node.Text))
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

    /// <summary>Whether a text is written as a size, whether or not there is such a one.</summary>
    internal static bool IsWritten(string text)
    {
        int space = text.IndexOf(' ', StringComparison.Ordinal);
        if (space < 1)
        {
            return false;
        }

        ReadOnlySpan<char> number = text.AsSpan(0, space);
        return text[(space + 1)..] switch
        {
            "AWG" or "SAE" or "aircraft" => number is ['1' or '2' or '3' or '4', '/', '0'] || (number.Length <= 2 && IsWhole(number)),
            "kcmil" => number.Length is 3 or 4 && IsWhole(number),
            "mm²" or "mm2" => IsDecimal(number),
            _ => false,
        };
    }

    private static bool IsWhole(ReadOnlySpan<char> number) => number[0] != '0' && number.IndexOfAnyExceptInRange('0', '9') < 0;

    private static bool IsDecimal(ReadOnlySpan<char> number)
    {
        int point = number.IndexOf('.');
        ReadOnlySpan<char> whole = point < 0 ? number : number[..point];
        bool isWhole = whole is "0" || (whole.Length > 0 && IsWhole(whole));
        return isWhole && (point < 0 || (number[^1] is >= '1' and <= '9' && number[(point + 1)..].IndexOfAnyExceptInRange('0', '9') < 0));
    }
}
