using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>That two classes, or two years, don't meet the same problem again soon.</summary>
public class VarietyTests
{
    public static TheoryData<Difficulty, ProblemUnits> Kinds
    {
        get
        {
            TheoryData<Difficulty, ProblemUnits> kinds = [];
            foreach (Difficulty difficulty in Enum.GetValues<Difficulty>())
            {
                foreach (ProblemUnits units in Enum.GetValues<ProblemUnits>())
                {
                    kinds.Add(difficulty, units);
                }
            }

            return kinds;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Statements_OfTheFirstHundredSheets_AreAllDifferent(Difficulty difficulty, ProblemUnits units)
    {
        // Twenty topics on each sheet: two thousand statements.
        string[] statements = [.. Enumerable.Range(1, 100).AsParallel()
            .SelectMany(seed => ProblemSheet.Create(seed, 20, [], difficulty, units, ProblemForm.Numeric).Problems.Select(problem => problem.Statement))];

        Assert.Equal(2000, statements.Length);
        Assert.Empty(statements.GroupBy(statement => statement).Where(group => group.Count() > 1).Select(group => group.Key));
    }

    [Fact]
    public void Statements_OfAThousandMetricSeeds_AreAlmostAllDifferent()
    {
        // The docs give the same numbers by topic; the least of them stands here.
        int least = (from topic in Enum.GetValues<ProblemTopic>().AsParallel()
                     from difficulty in new[] { Difficulty.OneStep, Difficulty.SeveralSteps }
                     select Enumerable.Range(0, 1000).Select(seed => ProblemGenerator.Create(seed, topic, difficulty).Statement).Distinct().Count()).Min();

        Assert.InRange(least, 990, 1000);
    }
}
