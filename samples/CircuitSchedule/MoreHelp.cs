namespace CircuitSchedule;

/// <summary>The part of <c>--help</c> that follows the options: exit codes and columns.</summary>
internal static class MoreHelp
{
    public static void Write(TextWriter output)
    {
        output.WriteLine("""
            Exit codes:
              0    every circuit passes
              1    some circuit fails
              2    bad arguments, a file that cannot be used, or a bad row; wins over 1 and 3
              3    nothing fails, but some check could not be made: undetermined is not a pass
              130  stopped by Ctrl-C

            Columns of FILE, in any order; those with * must be there. Commas, semicolons or tabs between
            the cells. The supply needs the columns of its kind, the load those of its own.

            """);
        foreach (Column column in Column.All)
        {
            IReadOnlyList<string> lines = TextTable.Wrap(column.Meaning, 72);
            output.WriteLine($"{(column.Required ? "*" : " ")} {column.Name,-23} {lines[0]}");
            foreach (string line in lines.Skip(1))
            {
                output.WriteLine(new string(' ', 26) + line);
            }
        }
    }
}
