using System.Globalization;
using System.Xml.Linq;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Working.Xhtml;

namespace LowVoltage.Calc.Design;

/// <summary>A calculation sheet as one HTML page that is well-formed XML too: own plain style, no script, nothing from a network.</summary>
internal static class CalculationSheetHtml
{
    internal static string Write(CalculationSheet sheet, SheetFacts facts)
    {
        return SolutionHtml.Page(sheet.Title, CalculationSheetStyle.Of(sheet), Element("main", Element("section", Class("page-one"), FrontPage(sheet, facts)), Working(sheet)));
    }

    private static IEnumerable<XElement> FrontPage(CalculationSheet sheet, SheetFacts facts)
    {
        CircuitDesign design = sheet.Design;
        yield return Element("header", Element("h1", sheet.Title), Pairs("details", SheetWords.Details(sheet.Details)));
        yield return Element("p", Class("verdict " + facts.Verdict.ToLowerInvariant()), Element("b", facts.Verdict), " ", facts.Because);
        yield return Element("div", Class("facts"), Pairs("answer", facts.Answer), Pairs("circuit", facts.Circuit));
        yield return Element("figure", sheet.Diagram.ToElement("circuit", out _));
        yield return Element("div", Class("wide"), Attribute("role", "region"), Attribute("aria-labelledby", "checks"), Attribute("tabindex", "0"), Checks(sheet));
        yield return List(SheetWords.Assumptions, design.Assumptions);
        yield return List(SheetWords.Cautions, design.Cautions);
        yield return Element("div", Class("signatures"), SheetWords.Signatures.Select(words => Element("p", Element("span", words), Element("span", Class("line")), Element("span", "date"), Element("span", Class("line short")))));
        if (design.Advice.Count > 0)
        {
            yield return List(SheetWords.Help, design.Advice);
        }
    }

    private static XElement Pairs(string kind, IEnumerable<(string Label, string Value)> rows) => Element(
        "dl", Class(kind), rows.Select(row => Element("div", Element("dt", row.Label), Element("dd", row.Value.Length > 0 ? row.Value : Element("span", Class("line"))))));

    private static XElement Checks(CalculationSheet sheet) => Element(
        "table",
        Class("checks"),
        Element("caption", Attribute("id", "checks"), "Checks: what the circuit has, what is allowed, and by how much"),
        Element("thead", Element("tr", SheetFacts.CheckHeads.Select(head => Element("th", Attribute("scope", "col"), head)))),
        Element("tbody", sheet.Design.Checks.Select(check => Row(check, SheetWords.StepOf(sheet.Working, check)))));

    private static XElement Row(CheckResult check, int? step)
    {
        (string[] cells, string note) = SheetFacts.Row(check);
        object number = step is { } at ? Element("a", Attribute("href", "#" + SolutionHtml.Anchor(at)), at.ToString(CultureInfo.InvariantCulture)) : "";
        IEnumerable<XElement> middle = note.Length == 0
            ? cells.Skip(1).Take(cells.Length - 2).Select(cell => Element("td", cell))
            : [Element("td", Attribute("colspan", (cells.Length - 2).ToString(CultureInfo.InvariantCulture)), $"{note} ({cells[cells.Length - 2]})")];
        return Element("tr", Class(check.Outcome.ToString().ToLowerInvariant()), Element("th", Attribute("scope", "row"), cells[0]), middle, Element("td", cells[cells.Length - 1]), Element("td", number));
    }

    private static XElement List(string heading, IReadOnlyList<string> lines) => Element(
        "section", Class(heading == SheetWords.Cautions ? "cautions" : "list"), Element("h2", heading), Element("ul", lines.Select(line => Element("li", line))));

    private static XElement Working(CalculationSheet sheet) => Element(
        "section", Class("working"), Element("h1", "Working"), SolutionHtml.Working(sheet.Working, DesignSheet.HowToRead, DesignSheet.WhyNoSmaller));
}
