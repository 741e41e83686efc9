using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>The network solver against 21 harnesses that a general circuit simulator solved.</summary>
public class SolvedHarnessTests
{
    public static TheoryData<string> Ids => [.. SolvedHarness.All.Select(h => h.Id)];

    [Fact]
    public void Solved_Cases_Are21() => Assert.Equal(21, SolvedHarness.All.Count);

    [Theory]
    [MemberData(nameof(Ids))]
    public void Solve_EachCase_AgreesWithTheSimulator(string id)
    {
        SolvedHarness harness = SolvedHarness.All.Single(h => h.Id == id);
        NetworkSolver solver = harness.Solver();

        Assert.Equal(NetworkEnd.Solved, solver.Solve());

        for (int node = 0; node < harness.Volts.Count; node++)
        {
            Assert.Equal(harness.Volts[node], solver.Volts[node], 1e-6 * harness.SourceVolts);
        }

        // Where next to nothing flows (one case has 48 nA), what the reference itself left over counts.
        double most = harness.Amperes.Max(Math.Abs), allowed = (1e-6 * most) + (10 * harness.BalanceLeft);
        for (int k = 0; k < harness.Amperes.Count; k++)
        {
            Assert.Equal(harness.Amperes[k], solver.Amperes[k], allowed);
        }

        Assert.InRange(solver.Balance, 0, 1e-9);
        Assert.InRange(solver.Steps, 1, 30);
    }
}
