namespace CircuitSchedule;

/// <summary>How a file writes its cells and numbers, to be read the same way and written back so.</summary>
/// <param name="Separator">Between the cells.</param>
/// <param name="Decimals">The sign before the decimals.</param>
internal sealed record Dialect(char Separator, DecimalSign Decimals)
{
    public const string Separators = ",;\t";

    public static string NameOf(char separator) => separator switch { ',' => "commas", ';' => "semicolons", '\t' => "tabs", _ => $"'{separator}'" };

    /// <summary>The sign for the result file. Whoever separates with semicolons does so because the comma is the decimal sign, unless the numbers say otherwise.</summary>
    public char ResultDecimal => Decimals switch
    {
        DecimalSign.Comma => ',',
        DecimalSign.Point => '.',
        _ => Separator == ';' ? ',' : '.',
    };

    /// <summary>What a number looks like in this file.</summary>
    public string Example => Decimals switch
    {
        DecimalSign.Comma => "a number with a decimal comma, such as 2,5",
        DecimalSign.Point => "a number with a decimal point, such as 2.5",
        _ => "a number such as 2.5 or 2,5",
    };

    public override string ToString() => $"{NameOf(Separator)} between the cells, " + Decimals switch
    {
        DecimalSign.Comma => "decimal commas",
        DecimalSign.Point => "decimal points",
        _ => "decimal points or commas",
    };
}
