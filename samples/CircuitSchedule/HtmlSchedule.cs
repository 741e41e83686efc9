using System.Net;
using System.Reflection;
using System.Text.RegularExpressions;
using LowVoltage.Calc;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Design;

namespace CircuitSchedule;

/// <summary>The schedule as one page without scripts, pictures or anything from elsewhere: to read on light and dark screens, and to print.</summary>
internal sealed partial class HtmlSchedule(TextWriter output) : IScheduleWriter
{
    private Heading? heading;

    public void Begin(Heading heading)
    {
        this.heading = heading;
        output.WriteLine($"""
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8"/>
            <meta name="viewport" content="width=device-width, initial-scale=1"/>
            <title>{Heading.Title}: {Text(heading.File)}</title>
            <style>
            {HtmlStyle.Css}
            </style>
            </head>
            <body>
            <main>
            <h1>{Heading.Title}</h1>
            <p>{Text(heading.From)} Calculated with LowVoltage.Calc {Text(Version)}. {Text(heading.Closing)} <a href="#summary">Summary and notes</a> follow the table.</p>
            <section class="cautions" aria-labelledby="cautions">
            <h2 id="cautions">Cautions</h2>
            <ul>
            """);
        Items(Cautions.General);
        output.WriteLine($"""
            </ul>
            </section>
            <div class="wide" role="region" aria-labelledby="circuits" tabindex="0">
            <table>
            <caption id="circuits">Circuits: extra-low-voltage DC, currents while the load is on, from the lowest to the highest supply voltage</caption>
            <thead>
            <tr>{string.Concat(Cells.Titles.Select(title => $"<th scope=\"col\">{Text(title)}</th>"))}</tr>
            </thead>
            <tbody>
            """);
    }

    public void Row(ScheduleEntry entry)
    {
        string[] cells = Cells.Of(entry);
        string style = entry.Answer?.Verdict switch { Verdict.Pass => "pass", Verdict.Undetermined => "undetermined", _ => "fail" };
        output.Write($"<tr class=\"{style}\"><th scope=\"row\">{Text(cells[0])}</th>");
        for (int i = 1; i < cells.Length; i++)
        {
            output.Write($"<td>{Text(WithUnits(cells[i])).Replace("\n", "<br/>", StringComparison.Ordinal)}</td>");
        }

        output.WriteLine("</tr>");
    }

    public void End(Tally tally)
    {
        output.WriteLine($"</tbody>\n</table>\n</div>\n<h2 id=\"summary\">Summary</h2>\n<p>{Text(tally.Summary)}</p>");
        Section(Heading.Assumed, tally.Assumptions);
        Section(
            Title("Circuits that fail", tally.FirstFailing.Count, tally.Failing),
            tally.FirstFailing.Select(entry => string.Join("\n", [$"{entry.Circuit}: {entry.Answer!.InWords}", .. entry.Answer.OwnCautions, .. entry.Answer.Advice.Select(advice => "What would help: " + advice)])));
        Section(
            Title("Undetermined: not passed, to be settled before building", tally.FirstUndetermined.Count, tally.Undetermined),
            tally.FirstUndetermined.Select(entry => string.Join("\n", [$"{entry.Circuit}: {string.Join("\n", entry.Answer!.Undetermined)}", .. entry.Answer.OwnCautions])));
        Section(
            Title("Bad rows: not designed", tally.FirstBad.Count, tally.BadRows),
            tally.FirstBad.SelectMany(entry => entry.Problems).Select(problem => problem.ToString()));
        output.WriteLine("<p class=\"signature\"><span>Checked by</span><span>Date</span></p>\n</main>\n</body>\n</html>");
    }

    public void Dispose() => output.Dispose();

    // Released versions carry the commit behind a plus sign.
    internal static string Version { get; } =
        typeof(CircuitDesigner).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "";

    // A number stays beside its unit.
    private static string WithUnits(string cell) => BeforeUnit().Replace(cell, "\u00A0");

    [GeneratedRegex("(?<=[0-9]) (?=A|V|%|mm²|AWG)")]
    private static partial Regex BeforeUnit();

    private static string Title(string title, int shown, int all) => shown == all ? title : $"{title} (the first {shown} of {all}; the CSV results have all)";

    private static string Text(string text) => WebUtility.HtmlEncode(text);

    private void Section(string title, IEnumerable<string> items)
    {
        string[] all = [.. items];
        if (all.Length > 0)
        {
            output.WriteLine($"<h2>{Text(title)}</h2>\n<ul>");
            Items(all);
            output.WriteLine("</ul>");
        }
    }

    private void Items(IEnumerable<string> items)
    {
        foreach (string item in items)
        {
            output.WriteLine($"<li>{Text(item).Replace("\n", "<br/>", StringComparison.Ordinal)}</li>");
        }
    }
}
