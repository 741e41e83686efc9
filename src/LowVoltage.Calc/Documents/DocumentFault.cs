using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Documents;

/// <summary>One mistake of a document: where it stands and what would be accepted.</summary>
/// <remarks>Immutable.</remarks>
public sealed class DocumentFault
{
    internal DocumentFault(string path, int line, int column, string message)
    {
        Path = path;
        Line = line;
        Column = column;
        Message = message;
    }

    /// <summary>The path to the value, such as <c>$.load.power_W</c>; a dollar sign alone is the whole document.</summary>
    public string Path { get; }

    /// <summary>The line in the text, from 1.</summary>
    public int Line { get; }

    /// <summary>The column in the line, in characters, from 1.</summary>
    public int Column { get; }

    /// <summary>What is wrong and what would be accepted.</summary>
    public string Message { get; }

    /// <summary>Whether the schema refuses it too.</summary>
    internal bool IsOfShape { get; init; }

    /// <summary>The mistake in one line: <c>12:18 $.load.power_W: must be …</c>.</summary>
    public override string ToString() => $"{Accept.Text(Line)}:{Accept.Text(Column)} {Path}: {Message}";
}
