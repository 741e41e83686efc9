using System.Globalization;
using LowVoltage.Calc;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace CircuitPage;

/// <summary>How far the circuit can be pushed in one direction with the wire and fuse chosen, and what stops it there.</summary>
/// <param name="Name">What is pushed.</param>
/// <param name="Now">What the circuit has.</param>
/// <param name="Furthest">The last value that passes, rounded to the safe side.</param>
/// <param name="Beyond">What fails beyond it.</param>
internal sealed record LimitRow(string Name, string Now, string Furthest, string Beyond)
{
    /// <summary>Longest run, hottest air, most conductors together; empty where there is no fuse to go on with.</summary>
    public static IReadOnlyList<LimitRow> Of(CircuitDesign design, PageUnits units)
    {
        CircuitRequirements asked = design.Requirements;
        if (design.Fuse is not { } fuse)
        {
            return [];
        }

        int conductors = asked.Place.LoadedConductors ?? 2;
        return
        [
            Run(asked, design.Wire, fuse, design.Rules, units),
            Air(asked, design.Wire, fuse, design.Rules, units),
            Row("Most loaded conductors together", Whole(conductors), CircuitDesigner.MostLoadedConductors(asked, design.Wire, fuse, design.Rules), Whole),
        ];
    }

    private static LimitRow Run(CircuitRequirements asked, Conductor wire, FuseRating fuse, DesignRules rules, PageUnits units)
    {
        string unit = NumberWords.Thin + (units == PageUnits.Us ? "ft" : "m");
        string shown(Length length) => NumberWords.ShortDown(UnitText.FromMetric(length.Meters, Measure.Length, units)) + unit;
        return Row("Longest feed, one way", NumberWords.Short(UnitText.FromMetric(asked.Feed.Meters, Measure.Length, units)) + unit, CircuitDesigner.LongestRun(asked, wire, fuse, rules), shown);
    }

    private static LimitRow Air(CircuitRequirements asked, Conductor wire, FuseRating fuse, DesignRules rules, PageUnits units)
    {
        string unit = NumberWords.Thin + (units == PageUnits.Us ? "°F" : "°C");
        string shown(Temperature air) => NumberWords.ShortDown(UnitText.FromMetric(air.DegreesCelsius, Measure.Temperature, units)) + unit;
        double now = UnitText.FromMetric(asked.Place.Ambient.DegreesCelsius, Measure.Temperature, units);
        return Row("Hottest air around the wire", NumberWords.Short(now) + unit, CircuitDesigner.HottestAmbient(asked, wire, fuse, rules), shown);
    }

    private static LimitRow Row<T>(string name, string now, DesignLimit<T> limit, Func<T, string> shown)
        where T : struct => new(
            name,
            now,
            limit.Value is { } value ? shown(value) : "none passes",
            limit.Governing is not { } stop ? "nothing in the range searched"
                : stop.Outcome == CheckOutcome.Undetermined ? $"{stop.Name} becomes undetermined" : $"{stop.Name} fails");

    private static string Whole(int count) => count.ToString(CultureInfo.InvariantCulture);
}
