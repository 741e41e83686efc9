using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>The working of a solved harness, and two harnesses laid side by side.</summary>
public class HarnessExplainTests
{
    private static Load Amperes(double amperes) => Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));

    [Theory]
    [InlineData("panel")]
    [InlineData("frame")]
    [InlineData("minus")]
    [InlineData("main")]
    [InlineData("chassis")]
    [InlineData("FL")]
    [InlineData("left")]
    [InlineData("battery")]
    public void Explain_AnyPart_HasStepsThatComeOut(string id)
    {
        HarnessSolution solved = Vans.Two(Amperes(5), Load.Lamp(Power.FromWatts(55), ElectricPotential.FromVolts(12))).Build().Solve(SupplyLevel.Minimum);
        WorkedSolution working = solved.Explain(id);

        Assert.NotEmpty(working.Steps);
        foreach (SolutionStep step in working.Steps.Where(s => s.Kind == StepKind.Calculation))
        {
            Assert.Equal(step.Result!.Value, step.Formula!.Evaluate(), 1e-9 * Math.Max(1, Math.Abs(step.Result.Value)));
        }
    }

    // 14 A come in through the main wire; 5 A and 9 A leave: the sum is nothing.
    [Fact]
    public void Explain_Node_BalancesTheCurrentsOfItsBranches()
    {
        WorkedSolution working = Vans.Two(Amperes(5), Amperes(9)).Build().Solve().Explain("panel");
        Assert.Equal([-14.0, 5, 9], working.Steps.Where(s => s.Sought.StartsWith("current into", StringComparison.Ordinal)).Select(s => Math.Round(s.Result!.Value, 9)));
        Assert.Equal(0, working.Steps[^1].Result);
    }

    [Fact]
    public void Explain_UnknownName_IsRefused() =>
        Assert.Contains("nowhere", Assert.Throws<ArgumentException>(() => Vans.Two(Amperes(5), Amperes(9)).Build().Solve().Explain("nowhere")).Message, StringComparison.Ordinal);

    [Fact]
    public void Between_OneMoreAmpere_NamesTheLoadAndItsWires()
    {
        HarnessComparison changed = HarnessComparison.Between(Vans.Two(Amperes(5), Amperes(9)).Build().Solve(), Vans.Two(Amperes(6), Amperes(9)).Build().Solve());
        Assert.Contains(changed.Differences, d => d is { Place: "left feed", What: "current", Before: > 4.99 and < 5.01, After: > 5.99 and < 6.01 });
        Assert.Contains(changed.Differences, d => d is { Place: "chassis", Before: > 13.99 and < 14.01, After: > 14.99 and < 15.01 });
        Assert.DoesNotContain(changed.Differences, d => d.Place == "right feed");
    }

    [Fact]
    public void Between_VerificationsOfAThinnerWire_NameTheCheckThatFailsNow()
    {
        HarnessBuilder builder = Vans.Two(Amperes(5), Amperes(9));
        Harness before = builder.Build(), after = before.WithConductors(new Dictionary<string, Calc.Conductors.Conductor> { ["left feed"] = Vans.Copper(0.5) });
        HarnessComparison changed = HarnessComparison.Between(HarnessDesigner.Verify(before), HarnessDesigner.Verify(after));
        Assert.Contains(changed.Differences, d => d.Place == "left" && d.ToString().Contains("was pass, is fail", StringComparison.Ordinal));
    }

    [Fact]
    public void Between_OneAndTheSame_IsSame()
    {
        Harness harness = Vans.Two(Amperes(5), Amperes(9)).Build();
        Assert.True(HarnessComparison.Between(harness.Solve(), harness.Solve(), 0).IsSame);
    }
}
