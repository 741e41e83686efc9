using System.Text.Json;
using LowVoltage.Calc.Harnesses.Sizing;

namespace LowVoltage.Calc.Tests.Harnesses.Sizing;

/// <summary>The trees of <see cref="TreeSizerTests"/> for <c>bash .ci/milp</c>, which solves each once more by mixed-integer programming.</summary>
public class SizingStudy
{
    // Not a test of its own: it writes problems and answers to the folder that LOWVOLTAGE_MILP names.
    [Fact]
    public void Problems_AreWrittenWhereAskedFor()
    {
        if (Environment.GetEnvironmentVariable("LOWVOLTAGE_MILP") is not { Length: > 0 } folder)
        {
            return;
        }

        _ = Directory.CreateDirectory(folder);
        Random small = new(41), large = new(47);
        for (int n = 0; n < 80; n++)
        {
            bool isSmall = n < 40;
            SizingProblem problem = isSmall ? SizingProblems.Tree(small, 2 + (n % 3), 4) : SizingProblems.Tree(large, 12, 12);
            int[]? found = TreeSizer.TryCreate(problem)!.Solve();
            File.WriteAllText(Path.Combine(folder, $"{(isSmall ? "small" : "large")}-{n:D2}.json"), JsonSerializer.Serialize(new
            {
                cost = problem.Cost,
                drop = problem.Drop,
                loads = problem.Loads,
                allowance = problem.Allowance,
                found,
                least = found is null ? (double?)null : problem.CostOf(found),
            }));
        }

        Assert.Equal(80, Directory.GetFiles(folder, "*.json").Length);
    }
}
