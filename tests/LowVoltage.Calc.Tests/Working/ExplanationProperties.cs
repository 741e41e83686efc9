using System.Xml.Linq;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Tests.Protection;
using LowVoltage.Calc.Working;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace LowVoltage.Calc.Tests.Working;

/// <summary>What holds for every explanation of the library, over random numbers.</summary>
public class ExplanationProperties
{
    private const int Seeds = 150;

    [Fact]
    public void EveryStep_EvaluatedFromItsOwnOperands_GivesItsResult()
    {
        foreach ((string name, WorkedSolution solution, double? _) in Everything())
        {
            AssertEvaluates(solution, name);
        }
    }

    [Fact]
    public void LastStep_IsTheTypedAnswer_ToTheLastBits()
    {
        int compared = 0;
        foreach ((string name, WorkedSolution solution, double? answer) in Everything())
        {
            if (answer is { } typed)
            {
                double last = solution.Steps[^1].Result!.Value;
                // Two units in the last place: a change of the unit shown (mm² for m²) may cost one each. UnitsNet keeps a power as a decimal of 15 digits.
                double ulp = Math.BitIncrement(Math.Abs(typed)) - Math.Abs(typed), play = solution.Steps[^1].Unit == "W" ? 5e-15 * Math.Abs(typed) : 2 * ulp;
                Assert.True(Math.Abs(last - typed) <= play, $"{name}: {last:R} is not {typed:R}\n{solution}");
                compared++;
            }
        }

        Assert.True(compared > 40 * Seeds, $"{compared}");
    }

    [Fact]
    public void EveryNumber_ReadBackFromTheText_SatisfiesTheFormula()
    {
        int lines = 0;
        foreach ((string name, WorkedSolution solution, double? _) in Everything())
        {
            lines += AssertReadsBack(solution, name);
        }

        Assert.True(lines > 100 * Seeds, $"{lines}");
    }

    [Fact]
    public void EveryLetter_StandsForOneQuantity_InOneSolution()
    {
        foreach ((string name, WorkedSolution solution, double? _) in Everything())
        {
            AssertOneMeaning(solution, name);
        }
    }

    [Fact]
    public void ToText_FitsAConsole_AndHoldsEveryLine()
    {
        foreach ((string name, WorkedSolution solution, double? _) in Explained.All(1))
        {
            string text = solution.ToText();
            Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 100, $"{name}: {line}"));
            string joined = string.Join(' ', text.Split('\n').Select(line => line.Trim()));
            Assert.All(solution.Steps.Where(s => s.Kind != StepKind.Statement), step => Assert.Contains(step.InNumbers, joined, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void ToHtml_OfEverything_IsWellFormedAndOffline()
    {
        foreach ((string _, WorkedSolution solution, double? _) in Explained.All(2))
        {
            Assert.NotNull(XDocument.Parse(solution.ToHtmlPage()).Root);
            WorkedSolutionTests.AssertOffline(solution.ToHtmlPage());
        }
    }

    [Fact]
    public void ToMarkdown_OfEverything_HasBalancedMath()
    {
        foreach ((string name, WorkedSolution solution, double? _) in Explained.All(3))
        {
            string text = solution.ToMarkdown().Replace("\\$", "", StringComparison.Ordinal).Replace("\\{", "", StringComparison.Ordinal).Replace("\\}", "", StringComparison.Ordinal);
            Assert.True(text.Count(c => c == '$') % 2 == 0, name);
            Assert.True(text.Count(c => c == '{') == text.Count(c => c == '}'), name);
            Assert.Equal(text.Split("\\left(").Length, text.Split("\\right)").Length);
        }
    }

    [Fact]
    public void FuseAgainstWire_EveryOutcome_IsExplainedWithItsOwnNumbers()
    {
        HashSet<ProtectionVerdict> seen = [];
        foreach (ProtectionCase c in ProtectionCases.Case().Generator.Sample(400))
        {
            WireProtection outcome = FuseAgainstWire.Check(c.Fuse, c.Wire, ElectricCurrent.FromAmperes(c.ProspectiveAmperes));
            WorkedSolution solution = outcome.Explain();
            AssertEvaluates(solution, c.ToString());
            AssertReadsBack(solution, c.ToString());
            AssertOneMeaning(solution, c.ToString());
            seen.Add(outcome.Verdict);
            Assert.Equal(outcome.Reason, solution.Answer);
            if (outcome.TemperatureReached is { } reached && outcome.Verdict != ProtectionVerdict.NotEvaluated)
            {
                Assert.Equal(reached.DegreesCelsius, solution.Steps[^1].Result!.Value, 1e-9);
                Assert.Equal(outcome.Verdict == ProtectionVerdict.Protected, solution.Steps[^1].Holds);
            }
        }

        Assert.Contains(ProtectionVerdict.Protected, seen);
        Assert.Contains(ProtectionVerdict.NotProtected, seen);
    }

    [Property(Arbitrary = [typeof(AnyCircuit)], MaxTest = 60)]
    public void Design_EveryStep_EvaluatesAndReadsBack(AnyCircuit circuit)
    {
        WorkedSolution sheet = CircuitDesigner.Design(circuit.Requirements(), circuit.Rules).Explain();
        AssertEvaluates(sheet, circuit.ToString());
        AssertReadsBack(sheet, circuit.ToString(), engineering: true);
        AssertOneMeaning(sheet, circuit.ToString());
        AssertReadsTheSame(sheet, circuit.ToString());
        Assert.NotNull(XDocument.Parse(sheet.ToHtmlPage()).Root);
        Assert.All(sheet.ToText().Split('\n'), line => Assert.True(line.Length <= 100, line));
    }

    internal static void AssertEvaluates(WorkedSolution solution, string name)
    {
        Assert.NotEmpty(solution.Steps);
        Assert.NotEmpty(solution.Answer);
        foreach (SolutionStep step in solution.Steps)
        {
            Assert.NotEmpty(step.Sought);
            if (step.Formula is { } formula)
            {
                // What is subtracted sets the scale of the rounding: 12 V − 11.9 V is known to the bits of 12 V.
                double scale = Math.Max(Math.Abs(step.Result!.Value), Largest(formula, step.Unit));
                Assert.True(Math.Abs(formula.Evaluate() - step.Result.Value) <= 1e-12 * scale, $"{name}: {formula.Evaluate():R} is not {step.Result:R} in {step}");
            }
        }
    }

    // The steps' lines, worked out by a reader who has nothing but the text.
    internal static int AssertReadsBack(WorkedSolution solution, string name, bool engineering = false)
    {
        int lines = 0;
        foreach (SolutionStep step in solution.Steps)
        {
            if (step.Kind == StepKind.Calculation)
            {
                (string letter, string expression, string result) = PlainMath.Split(step.InNumbers);
                Assert.Equal(step.Symbol!.Name, letter);
                double shown = PlainMath.Evaluate(result, engineering), worked = PlainMath.Evaluate(expression, engineering);
                double play = PlainMath.LastOfFour(shown) * (step.Rounding == RoundingDirection.Nearest ? 0.5 : 1) * (1 + 1e-6);
                Assert.True(Math.Abs(worked - shown) <= play + (1e-13 * Math.Abs(worked)), $"{name}: {step.InNumbers} works out as {worked:R}");
                AssertSafeSide(step, shown);
                lines++;
            }
            else if (step.Kind == StepKind.Comparison)
            {
                string[] parts = step.InNumbers.Split(": ");
                string[] sides = parts[0].Split([" ≤ ", " ≥ ", " < ", " > "], StringSplitOptions.None);
                double left = PlainMath.Evaluate(sides[0], engineering), right = PlainMath.Evaluate(sides[1], engineering);
                bool holds = parts[0].Contains('≤', StringComparison.Ordinal) ? left <= right : parts[0].Contains('≥', StringComparison.Ordinal) ? left >= right
                    : parts[0].Contains('<', StringComparison.Ordinal) ? left < right : left > right;
                Assert.Equal(holds ? "holds" : "does not hold", parts[1]);
                lines++;
            }
            else if (step.Kind == StepKind.LookUp)
            {
                double shown = PlainMath.Evaluate(step.InNumbers.Split(" = ")[1], engineering);
                Assert.Equal(step.Result!.Value, shown, 0.5e-4 * Math.Abs(shown) * (1 + 1e-9));
                lines++;
            }
        }

        return lines;
    }

    // One letter, one quantity: the same value, unit and words wherever it stands. "Once more" closes a loop on the same quantity.
    internal static void AssertOneMeaning(WorkedSolution solution, string name)
    {
        Dictionary<string, Symbol> known = [];
        foreach (Symbol symbol in solution.Givens.Select(g => g.Symbol).OfType<Symbol>().Concat(solution.Steps.SelectMany(SymbolsOf)))
        {
            if (!known.TryGetValue(symbol.Latex, out Symbol? first))
            {
                known.Add(symbol.Latex, symbol);
                continue;
            }

            Assert.True(Math.Abs(first.Value - symbol.Value) <= 2e-8 * Math.Abs(first.Value), $"{name}: {symbol.Name} is {first.Value:R}, {first.Meaning}, and {symbol.Value:R}, {symbol.Meaning}\n{solution}");
            Assert.True(first.Unit == symbol.Unit, $"{name}: {symbol.Name} in {first.Unit} and {symbol.Unit}");
            Assert.True(Plain(first) == Plain(symbol), $"{name}: {symbol.Name} is {first.Meaning} and {symbol.Meaning}");
        }
    }

    private static string Plain(Symbol symbol) => symbol.Meaning.Replace(" once more, round the loop", "", StringComparison.Ordinal).Replace(" once more", "", StringComparison.Ordinal);

    // Where a check shows a number that a step gave, it shows the step's own digits, or the same number to more of them.
    internal static void AssertReadsTheSame(WorkedSolution solution, string name)
    {
        Dictionary<string, string> shown = [];
        foreach (SolutionStep step in solution.Steps)
        {
            if (step.Kind is StepKind.Calculation or StepKind.LookUp)
            {
                shown.TryAdd(step.Symbol!.Latex, step.Rounded);
            }
            else if (step.Kind == StepKind.Comparison)
            {
                string[] sides = step.InNumbers.Split(": ")[0].Split([" ≤ ", " ≥ ", " < ", " > "], StringSplitOptions.None);
                foreach ((Symbol symbol, string text) in new[] { (step.Symbol!, sides[0]), (step.Limit!, sides[1]) })
                {
                    if (shown.TryGetValue(symbol.Latex, out string? before) && text.Length <= before.Length)
                    {
                        Assert.True(before == text, $"{name}: {symbol.Name} reads {before} and {text}");
                    }
                }
            }
        }
    }

    private static IEnumerable<Symbol> SymbolsOf(SolutionStep step) =>
        new[] { step.Symbol, step.Limit }.OfType<Symbol>().Concat(step.Formula is { } formula ? Leaves(formula) : []);

    private static IEnumerable<Symbol> Leaves(Formula formula) => formula is Symbol symbol ? [symbol] : formula.Operands.SelectMany(Leaves);

    private static void AssertSafeSide(SolutionStep step, double shown)
    {
        double slack = 2e-12 * Math.Abs(shown);
        Assert.True(step.Rounding != RoundingDirection.Down || shown <= step.Result + slack, step.ToString());
        Assert.True(step.Rounding != RoundingDirection.Up || shown >= step.Result - slack, step.ToString());
    }

    private static double Largest(Formula formula, string unit) => formula.Operands.Count == 0
        ? (formula.Unit == unit || (unit == "°C" && formula.Unit == "K") ? Math.Abs(formula.Evaluate()) : 0)
        : formula.Operands.Max(operand => Largest(operand, unit));

    private static IEnumerable<(string Name, WorkedSolution Solution, double? Answer)> Everything() => Enumerable.Range(0, Seeds).SelectMany(Explained.All);
}
