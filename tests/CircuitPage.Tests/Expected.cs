using System.Globalization;
using System.Xml.Linq;
using LowVoltage.Calc;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Design;

namespace CircuitPage.Tests;

/// <summary>What the page must show of a design, by the library alone: none of the page's code is asked.</summary>
internal static class Expected
{
    /// <summary>The rows of the checks as the calculation sheet has them; temperatures converted where the page is in US units.</summary>
    public static string[] Checks(CircuitDesign design, bool isUs)
    {
        string[][] sheet = [.. CalculationSheet.Create(design).ToMarkdown().Split('\n')
            .SkipWhile(line => !line.StartsWith("| check |", StringComparison.Ordinal)).Skip(2).TakeWhile(line => line.StartsWith('|'))
            .Select(line => line.Replace("\\", "", StringComparison.Ordinal).Trim('|').Split(" | ").Select(OpenPage.Plain).ToArray())];
        Assert.Equal(design.Checks.Count, sheet.Length);
        return [.. sheet.Select((cells, i) => Row(cells, design.Checks[i], isUs))];
    }

    public static string Verdict(CircuitDesign design) => design.Verdict switch { LowVoltage.Calc.Checks.Verdict.Pass => "Pass", LowVoltage.Calc.Checks.Verdict.Fail => "Fail", _ => "Undetermined" };

    public static string Wire(CircuitDesign design) => $"{design.Wire}, {design.Requirements.Insulation.Name}{Nearest(design)}";

    public static string Fuse(CircuitDesign design) => design.Fuse is { } fuse ? fuse + Nearest(design) : "none";

    /// <summary>The three limits, each four figures towards the safe side, by decimal arithmetic.</summary>
    public static string[] Limits(CircuitDesign design, bool isUs)
    {
        if (design.Fuse is not { } fuse)
        {
            return [];
        }

        CircuitRequirements asked = design.Requirements;
        return
        [
            Limit(CircuitDesigner.LongestRun(asked, design.Wire, fuse, design.Rules), run => Down(isUs ? run.Feet : run.Meters) + (isUs ? " ft" : " m")),
            Limit(CircuitDesigner.HottestAmbient(asked, design.Wire, fuse, design.Rules), air => Down(isUs ? (air.DegreesCelsius * 1.8) + 32 : air.DegreesCelsius) + (isUs ? " °F" : " °C")),
            Limit(CircuitDesigner.MostLoadedConductors(asked, design.Wire, fuse, design.Rules), count => count.ToString(CultureInfo.InvariantCulture)),
        ];
    }

    /// <summary>The text of markup, blanks as one.</summary>
    public static string TextOf(string markup) => OpenPage.Plain(XElement.Parse(markup).Value);

    private static string Row(string[] cells, in CheckResult check, bool isUs)
    {
        if (check is not { Value: { } value, Limit: { } limit })
        {
            string note = cells[5].Split(": ", 2)[1];
            return $"{cells[0]} {note} {cells[5].Split(": ", 2)[0]} {cells[4]}";
        }

        if (isUs && check.Unit == "°C")
        {
            double room = 1.8 * Math.Abs(limit - value);
            cells[1] = Four((value * 1.8) + 32) + " °F";
            cells[2] = $"{(check.LimitIsLeast ? "≥" : "≤")} {Four((limit * 1.8) + 32)} °F";
            cells[3] = (check.Outcome == CheckOutcome.Fail ? "−" : "") + room.ToString("G3", CultureInfo.InvariantCulture) + " °F";
        }
        else if (isUs && check.Unit == "m")
        {
            cells[1] = Four(value / 0.3048) + " ft";
            cells[2] = $"{(check.LimitIsLeast ? "≥" : "≤")} {Four(limit / 0.3048)} ft";
        }

        return $"{cells[0]} {cells[1]} {cells[2]} {cells[3]} {cells[5]} {cells[4]}";
    }

    private static string Limit<T>(DesignLimit<T> limit, Func<T, string> shown)
        where T : struct => (limit.Value is { } value ? shown(value) : "none passes") + " " + (limit.Governing is not { } stop ? "nothing in the range searched"
            : stop.Outcome == CheckOutcome.Undetermined ? $"{stop.Name} becomes undetermined" : $"{stop.Name} fails");

    private static string Nearest(CircuitDesign design) => design.IsNearest ? ", the nearest: none passes" : "";

    private static string Four(double value) => value.ToString("G4", CultureInfo.InvariantCulture);

    private static string Down(double value)
    {
        decimal exact = (decimal)value, step = 1000m;
        while (step > Math.Abs(exact) / 1000m && step > 0.0000001m)
        {
            step /= 10m;
        }

        return ((double)(Math.Floor(exact / step) * step)).ToString("G4", CultureInfo.InvariantCulture);
    }
}
