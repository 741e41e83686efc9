using System.Reflection.Metadata;
using System.Reflection.Metadata.Ecma335;
using System.Reflection.PortableExecutable;
using System.Text.RegularExpressions;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests;

/// <summary>The texts that stand word for word in the library: who changes one reads it where it is written.</summary>
internal static partial class LibraryTexts
{
    private static readonly Lazy<HashSet<string>> Texts = new(Read);

    /// <summary>Whether the whole line is one of them, or what stands in it behind a label of ours ("advice: "); its first letter may be capital, and a full stop or brackets may enclose it.</summary>
    internal static bool Has(string line)
    {
        int colon = line.IndexOf(": ", StringComparison.Ordinal);
        return Texts.Value.Contains(Plain(line)) || (colon > 0 && line[..colon].All(char.IsAsciiLetterLower) && Texts.Value.Contains(Plain(line[(colon + 2)..])));
    }

    private static string Plain(string text)
    {
        string bare = text.Trim().Trim('[', ']', '-', '#', '*', '.', ' ');
        return bare.Length == 0 ? "" : char.ToLowerInvariant(bare[0]) + bare[1..];
    }

    [GeneratedRegex(@"\{\d+[^{}]*\}")]
    private static partial Regex Gap();

    // All strings of the compiled library.
    private static HashSet<string> Read()
    {
        using PEReader file = new(File.OpenRead(typeof(CircuitDesigner).Assembly.Location));
        MetadataReader metadata = file.GetMetadataReader();
        HashSet<string> texts = new(StringComparer.Ordinal);
        for (UserStringHandle at = metadata.GetNextHandle(MetadataTokens.UserStringHandle(0)); !at.IsNil; at = metadata.GetNextHandle(at))
        {
            // Where strings with numbers are made by a format, its parts stand in one; elsewhere they stand by themselves.
            foreach (string part in Gap().Split(metadata.GetUserString(at)))
            {
                texts.Add(Plain(part));
            }
        }

        return texts;
    }
}
