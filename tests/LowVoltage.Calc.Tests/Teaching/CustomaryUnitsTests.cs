using System.Text.RegularExpressions;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>That a sheet in United States units is in them throughout: statement, table, choices, diagram, answer and solution.</summary>
public class CustomaryUnitsTests(ManyProblems many) : IClassFixture<ManyProblems>
{
    // A metric unit after a number or in the head of a table. The ohm, the ampere and the second are everybody's, and 20 °C is where tables of copper begin.
    private static readonly Regex Metric = new(@"(?<![a-z])mm|\bkm\b|[\d][ \u00A0]m\b|[\d][ \u00A0]cm\b|[\d][ \u00A0]kg\b", RegexOptions.None);
    private static readonly Regex Celsius = new(@"(?<!\()\b(\d+)[ \u00A0]°C(?!\))");

    [Fact]
    public void UsCustomary_HasNoMetricUnit()
    {
        Problem[] customary = [.. many.All.Where(problem => problem.Units == ProblemUnits.UsCustomary)];

        Assert.True(customary.Length > 6000);
        Assert.All(customary, problem => Assert.DoesNotMatch(Metric, Everything(problem)));
        Assert.All(customary, problem => Assert.DoesNotMatch(Metric, problem.Solution.ToText()));
    }

    [Fact]
    public void UsCustomary_StatesTemperaturesInFahrenheit_WithCelsiusInBracketsWhereATableHasIt()
    {
        foreach (Problem problem in many.All.Where(problem => problem.Units == ProblemUnits.UsCustomary))
        {
            // What a formula counts in °C from: its 20 °C, and the constant of the short-circuit equation.
            string[] celsius = [.. Celsius.Matches(problem.Story).Select(match => match.Groups[1].Value).Except(["20", "234", "228"])];
            Assert.True(celsius.Length == 0, problem.Story);
            Assert.True(problem.Answer.Unit != "°C", problem.Story);
        }
    }

    [Fact]
    public void Metric_HasNoCustomaryUnit()
    {
        Assert.All(many.All.Where(problem => problem.Units == ProblemUnits.Metric), problem =>
            Assert.DoesNotMatch(@"AWG|\bmil\b|cmil|\bft\b|°F", Everything(problem)));
    }

    private static string Everything(Problem problem) =>
        $"{problem.Statement}\n{problem.Answer}\n{string.Join("\n", problem.KnownMistakes.Select(wrong => wrong.Text))}\n{problem.Diagram?.Description}";
}
