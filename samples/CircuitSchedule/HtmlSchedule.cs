using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using LowVoltage.Calc;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Design;
using static CircuitSchedule.PageWriter;

namespace CircuitSchedule;

/// <summary>The schedule as one page without scripts, pictures or anything from elsewhere: to read on light and dark screens, and to print.</summary>
internal sealed partial class HtmlSchedule(TextWriter output) : IScheduleWriter
{
    private readonly PageWriter page = new(output);

    public void Begin(Heading heading)
    {
        Head(heading);
        page.Open("body");
        page.Open("main");
        page.Add(Element("h1", Heading.Title));
        page.Add(Element(
            "p",
            $"{heading.From} Calculated with LowVoltage.Calc {Version}. {heading.Closing} ",
            Element("a", new XAttribute("href", "#summary"), "Summary and notes"),
            " follow the table."));
        page.Open("section", Class("cautions"), LabelledBy("cautions"));
        page.Add(Element("h2", Id("cautions"), "Cautions"));
        Items(Cautions.General);
        page.Close();
        page.Open("div", Class("wide"), new XAttribute("role", "region"), LabelledBy("circuits"), new XAttribute("tabindex", "0"));
        page.Open("table");
        page.Add(Element("caption", Id("circuits"), "Circuits: extra-low-voltage DC, currents while the load is on, from the lowest to the highest supply voltage"));
        page.Add(Element("thead", Element("tr", Cells.Titles.Select(title => Element("th", Scope("col"), title)))));
        page.Open("tbody");
    }

    public void Row(ScheduleEntry entry)
    {
        string[] cells = Cells.Of(entry);
        string style = entry.Answer?.Verdict switch { Verdict.Pass => "pass", Verdict.Undetermined => "undetermined", _ => "fail" };
        page.Add(Element("tr", Class(style), Element("th", Scope("row"), cells[0]), cells.Skip(1).Select(cell => Element("td", WithUnits(cell)))));
    }

    public void End(Tally tally)
    {
        page.Close();
        page.Close();
        page.Close();
        page.Add(Element("h2", Id("summary"), "Summary"));
        page.Add(Element("p", tally.Summary));
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
        page.Add(Element("p", Class("signature"), Element("span", "Checked by"), Element("span", "Date")));
        page.Finish();
    }

    public void Dispose() => page.Dispose();

    // Released versions carry the commit behind a plus sign.
    internal static string Version { get; } =
        typeof(CircuitDesigner).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "";

    private void Head(Heading heading)
    {
        page.Open("html", new XAttribute("lang", "en"));
        page.Open("head");
        page.Add(Element("meta", new XAttribute("charset", "utf-8")));
        page.Add(Element("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")));
        page.Add(Element("title", $"{Heading.Title}: {heading.File}"));
        page.AddStyle(HtmlStyle.Css);
        page.Close();
    }

    private void Section(string title, IEnumerable<string> items)
    {
        string[] all = [.. items];
        if (all.Length > 0)
        {
            page.Add(Element("h2", title));
            Items(all);
        }
    }

    private void Items(IEnumerable<string> items)
    {
        page.Open("ul");
        foreach (string item in items)
        {
            page.Add(Element("li", item));
        }

        page.Close();
    }

    private static string Title(string title, int shown, int all) => shown == all ? title : $"{title} (the first {shown} of {all}; the CSV results have all)";

    // A number stays beside its unit.
    private static string WithUnits(string cell) => BeforeUnit().Replace(cell, "\u00A0");

    [GeneratedRegex("(?<=[0-9]) (?=A|V|%|mm²|AWG)")]
    private static partial Regex BeforeUnit();

    private static XAttribute Class(string name) => new("class", name);

    private static XAttribute Id(string name) => new("id", name);

    private static XAttribute LabelledBy(string id) => new("aria-labelledby", id);

    private static XAttribute Scope(string name) => new("scope", name);
}
