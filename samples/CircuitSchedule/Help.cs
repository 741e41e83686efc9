namespace CircuitSchedule;

/// <summary>What <c>--help</c> prints.</summary>
internal static class Help
{
    public static void Print(TextWriter output)
    {
        output.WriteLine("""
            Designs every circuit of a CSV file (extra-low-voltage DC, up to 60 V) and prints the schedule.

              CircuitSchedule [FILE] [--csv OUT]

              FILE        circuits, one a line; without it the invented scenario that ships with the program
              --csv OUT   writes the results as CSV as well, one row per circuit
              --help      this text

            Exit code: 0 no circuit fails, 1 some circuit fails, 2 bad input.

            Columns of FILE, in any order (* must be there). Comma or semicolon between cells, decimal point in numbers:

            """);
        foreach (Column column in Column.All)
        {
            IReadOnlyList<string> lines = TextTable.Wrap(column.Meaning, 90);
            output.WriteLine($"{(column.Required ? "*" : " ")} {column.Name,-22} {lines[0]}");
            foreach (string line in lines.Skip(1))
            {
                output.WriteLine(new string(' ', 25) + line);
            }
        }
    }
}
