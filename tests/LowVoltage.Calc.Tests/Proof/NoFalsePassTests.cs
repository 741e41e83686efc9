using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>No verdict of the library passes what the simulator says must fail.</summary>
public class NoFalsePassTests
{
    [Fact]
    public void Verdicts_RandomCircuits_NoFalsePass()
    {
        ProofRun run = SimulatorTests.Run.Value;
        Assert.True(run["false pass"] == 0, run.Report() + run.Examples("false pass"));
    }

    [Fact]
    public void Checks_RandomCircuitsLeftUndetermined_NoneOfThemPassesWrongly()
    {
        ProofRun run = SimulatorTests.Run.Value;
        string examples = run.Examples("pass in an undetermined verdict");
        Assert.True(examples.Length == 0, run.Report() + examples);
    }
}
