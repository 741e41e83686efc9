using System.Globalization;

namespace FleetStudy;

/// <summary>The variants that could not be studied.</summary>
internal static class BadList
{
    public static void Write(Tally tally, TextWriter output)
    {
        if (tally.BadCount == 0)
        {
            return;
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{tally.BadCount} could not be studied; those of the lowest numbers:"));
        foreach (BadVariant bad in tally.Bad)
        {
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {bad.Variant}: {bad.Reason}"));
        }

        output.WriteLine();
    }
}
