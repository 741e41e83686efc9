using System.Text;
using LowVoltage.Calc.Design;
using Spectre.Console;

namespace CircuitSchedule;

/// <summary>One run: opens the file, designs its circuits, writes each to wherever the schedule goes.</summary>
internal sealed class Run(Options options, Screen screen, TextWriter error, CancellationToken stop)
{
    /// <returns>The exit code.</returns>
    public int Go(IAnsiConsole? progress)
    {
        RefuseOverwriting();
        using ScheduleFile file = ScheduleFile.Open(options.InputPath, options.Decimals);
        foreach (string note in file.Notes)
        {
            error.WriteLine(note);
        }

        if (progress is null)
        {
            return Write(file, null);
        }

        int code = 0;
        progress.Progress().AutoClear(true).Start(context =>
        {
            ProgressTask task = context.AddTask("Designing circuits", maxValue: 1);
            code = Write(file, task);
        });
        return code;
    }

    private int Write(ScheduleFile file, ProgressTask? progress)
    {
        using OutputFile? csv = options.CsvPath is { } csvPath ? new OutputFile(csvPath, ResultCsv.Encoding) : null;
        using OutputFile? html = options.HtmlPath is { } htmlPath ? new OutputFile(htmlPath, new UTF8Encoding(false)) : null;
        using ScreenSchedule shown = new(screen.WithWidth(options.Width));
        List<IScheduleWriter> writers = [shown];
        if (csv is not null)
        {
            writers.Add(new ResultCsv(csv.Text, file.Dialect));
        }

        if (html is not null)
        {
            writers.Add(new HtmlSchedule(html.Text));
        }

        SheetFolder? sheets = options.SheetFolder is { } folder ? new SheetFolder(folder, new SheetDetails("CircuitSchedule", HtmlSchedule.Version, options.Date, paper: options.Paper)) : null;
        if (sheets is not null)
        {
            writers.Add(sheets);
        }

        Heading heading = new(Path.GetFileName(options.InputPath), $"{file.Dialect}, {file.Encoding}", options.IsShippedScenario);
        Tally tally = new(options.List);
        writers.ForEach(writer => writer.Begin(heading));
        foreach (ScheduleEntry entry in Schedule.Design(file.Rows(), options.Practice, stop))
        {
            tally.Add(entry);
            writers.ForEach(writer => writer.Row(entry));
            progress?.Value = file.Fraction;
        }

        writers.ForEach(writer => writer.End(tally));
        Complete(csv, "Results", options.CsvPath);
        Complete(html, "Page", options.HtmlPath);
        if (sheets is not null)
        {
            screen.Output.WriteLine($"{sheets.Count} calculation sheet{(sheets.Count == 1 ? "" : "s")} written to {options.SheetFolder}");
        }

        return tally.ExitCode;
    }

    private void Complete(OutputFile? file, string what, string? path)
    {
        if (file is not null)
        {
            file.Complete();
            screen.Output.WriteLine($"{what} written to {path}");
        }
    }

    private void RefuseOverwriting()
    {
        string input = Path.GetFullPath(options.InputPath);
        string?[] outputs = [options.CsvPath, options.HtmlPath];
        if (Array.Find(outputs, output => output is not null && Path.GetFullPath(output) == input) is { } over)
        {
            throw new ScheduleFileException($"'{over}' is the input file: name another one to write.");
        }

        if (options.CsvPath is { } csv && options.HtmlPath is { } html && Path.GetFullPath(csv) == Path.GetFullPath(html))
        {
            throw new ScheduleFileException($"'{csv}' is named twice: the results and the page need a file each.");
        }
    }
}
