using Spectre.Console;

namespace CircuitSchedule;

/// <summary>Where the schedule is printed: how wide it is, and whether it has colours.</summary>
internal sealed class Screen
{
    /// <summary>Columns where the output goes to a file or another program, so that it is the same on every machine.</summary>
    public const int PlainWidth = 100;

    public const int Narrowest = 40;
    public const int Widest = 400;

    private readonly IAnsiConsole? colours;

    private Screen(TextWriter output, int width, IAnsiConsole? colours) => (Output, Width, this.colours) = (output, width, colours);

    public TextWriter Output { get; }

    public int Width { get; }

    /// <summary>Whether a person watches the rows go by.</summary>
    public bool IsTerminal => colours is not null;

    public static Screen Plain(TextWriter output, int width = PlainWidth) => new(output, width, null);

    public static Screen Terminal(TextWriter output, IAnsiConsole console) =>
        new(output, Math.Clamp(console.Profile.Width, Narrowest, Widest), console);

    public Screen WithWidth(int? width) => width is { } columns ? new Screen(Output, columns, colours) : this;

    /// <summary>Writes a verdict and ends the line. The colour only repeats what the word says.</summary>
    public void WriteVerdict(string verdict)
    {
        if (colours is null || verdict.Length == 0)
        {
            Output.WriteLine(verdict);
            return;
        }

        Output.Flush();
        Color color = verdict switch { "pass" => Color.Green, "FAIL" or "BAD ROW" => Color.Red, _ => Color.Yellow };
        colours.Write(new Text(verdict + "\n", new Style(color)));
    }

    /// <summary>Writes a text with a mark in front, such as a name or a dash, and its further lines indented under the text.</summary>
    public void WriteItem(string mark, string text)
    {
        IReadOnlyList<string> lines = TextTable.Wrap(text, Width - mark.Length);
        Output.WriteLine(mark + lines[0]);
        foreach (string line in lines.Skip(1))
        {
            Output.WriteLine(new string(' ', mark.Length) + line);
        }
    }
}
