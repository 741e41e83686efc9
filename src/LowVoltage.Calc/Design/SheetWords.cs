using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>The lines of a calculation sheet that are the same in each of its languages.</summary>
internal static class SheetWords
{
    internal const string Assumptions = "Assumptions, to be confirmed by whoever installs the circuit";
    internal const string Cautions = "Cautions";
    internal const string Help = "What would help";

    internal static readonly string[] Signatures = ["Calculated by", "Checked by"];

    /// <summary>Program, version and date always, what else was stated only then.</summary>
    internal static IEnumerable<(string Label, string Value)> Details(SheetDetails details)
    {
        yield return ("Program", details.Program);
        yield return ("Version", details.Version);
        yield return ("Date", details.Date);
        if (details.Project.Length > 0)
        {
            yield return ("Project", details.Project);
        }

        if (details.Number.Length > 0)
        {
            yield return ("Number", details.Number);
        }
    }

    /// <summary>The step of the working that makes a check's comparison.</summary>
    internal static int? StepOf(WorkedSolution working, CheckResult check)
    {
        for (int i = 0; i < working.Steps.Count; i++)
        {
            if (working.Steps[i].Sought == "check: " + check.Name)
            {
                return i + 1;
            }
        }

        return null;
    }
}
