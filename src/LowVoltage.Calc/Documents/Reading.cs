using System.Text;

namespace LowVoltage.Calc.Documents;

/// <summary>One document being read: gathers its mistakes.</summary>
internal sealed class Reading
{
    private readonly List<(int Offset, string Path, string Message, bool Shape)> found = [];

    internal int Count => found.Count;

    internal void Refuse(DocumentNode node, string message) => Refuse(node.Offset, node.Path, message);

    /// <summary>Refuses what the schema refuses too.</summary>
    internal void Refuse(int offset, string path, string message) => found.Add((offset, path, message, true));

    /// <summary>Refuses what a schema cannot say: what two values mean together, a member given twice, a text that is no JSON.</summary>
    internal void Judge(DocumentNode node, string message) => Judge(node.Offset, node.Path, message);

    internal void Judge(int offset, string path, string message) => found.Add((offset, path, message, false));

    /// <summary>The mistakes in the order of the text, with lines and columns.</summary>
    internal DocumentFault[] Faults(ReadOnlySpan<byte> utf8)
    {
        DocumentFault[] faults = new DocumentFault[found.Count];
        int line = 1, lineStart = 0, seen = 0, i = 0;

        // OrderBy is stable: two mistakes of one value stay in the order in which they were found.
        foreach ((int offset, string path, string message, bool shape) in found.OrderBy(fault => fault.Offset))
        {
            for (; seen < offset; seen++)
            {
                if (utf8[seen] == (byte)'\n')
                {
                    line++;
                    lineStart = seen + 1;
                }
            }

            faults[i++] = new DocumentFault(path, line, 1 + Encoding.UTF8.GetCharCount(utf8[lineStart..offset]), message) { IsOfShape = shape };
        }

        return faults;
    }
}
