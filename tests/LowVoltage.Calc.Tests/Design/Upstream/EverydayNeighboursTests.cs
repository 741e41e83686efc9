using LowVoltage.Calc.Checks;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>Three hundred circuits near the sixty everyday ones, so that the sixty are no lucky draw: other currents (0.6 to 1.6 times), lengths (0.5 to 1.6 times) and panels (1 to 20 mΩ).</summary>
public class EverydayNeighboursTests
{
    private static readonly (Everyday.Row Row, CircuitDesign Design)[] Drawn = [.. Near(seed: 2032).Select(row => (row, EverydayCircuitsTests.Designed(row)))];

    [Fact]
    public void Circuit_NearAnEverydayOne_HasAWireOfTheTables() => Assert.All(Drawn, drawn =>
    {
        if (drawn.Design.Verdict != Verdict.Fail)
        {
            EverydayCircuitsTests.AssertWireOfTheTables(drawn.Row, drawn.Design);
        }
    });

    /// <summary>Only a drop that the panel and the longest legs leave no room for fails, and only what a main fuse's published times do not separate is undetermined.</summary>
    [Fact]
    public void Circuit_NearAnEverydayOne_FailsOnlyByADropThatNoSizeCures()
    {
        Assert.All(Drawn, drawn =>
        {
            foreach (CheckResult check in drawn.Design.Checks.Where(check => check.Outcome != CheckOutcome.Pass))
            {
                Assert.Equal(check.Outcome == CheckOutcome.Fail ? CheckKind.VoltageDrop : CheckKind.SelectivityOfFuses, check.Kind);
            }

            if (drawn.Design.Verdict == Verdict.Fail)
            {
                Assert.False(EverydayCircuitsTests.AnySizeDropsLittle(drawn.Row), $"{drawn.Row}: {drawn.Design}");
            }
        });
        Assert.True(Drawn.Count(drawn => drawn.Design.Verdict == Verdict.Pass) >= 0.9 * Drawn.Length, $"{Drawn.Count(drawn => drawn.Design.Verdict == Verdict.Pass)} of {Drawn.Length} pass");
    }

    private static IEnumerable<Everyday.Row> Near(int seed)
    {
        Random random = new(seed);
        return Everyday.Rows.SelectMany(row => Enumerable.Range(0, 5).Select(_ => row with
        {
            Amperes = row.Amperes * (0.6 + random.NextDouble()),
            Meters = row.Meters * (0.5 + (1.1 * random.NextDouble())),
            MilliOhms = 1 + (19 * random.NextDouble()),
        }));
    }
}
