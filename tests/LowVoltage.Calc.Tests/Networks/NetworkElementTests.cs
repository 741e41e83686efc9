using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Tests.Working;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Networks;

public class NetworkElementTests
{
    private static readonly NetworkElement[] Every =
    [
        NetworkElement.VoltageSource("B1", "a", "0", ElectricPotential.FromVolts(12.5), ElectricResistance.FromOhms(0.5)),
        NetworkElement.VoltageSource("E1", "b", "0", ElectricPotential.FromVolts(10)),
        NetworkElement.Resistance("R1", "a", "b", ElectricResistance.FromOhms(2)),
        NetworkElement.Current("I1", "a", "0", ElectricCurrent.FromAmperes(1.5)),
        NetworkElement.ConstantPower("P1", "a", "0", Power.FromWatts(10)),
    ];

    [Fact]
    public void ToString_OfEveryKind_SaysWhatAndBetweenWhich() => Assert.Equal(
        ["B1: 12.5 V behind 0.5 Ω, a over 0", "E1: 10 V, b over 0", "R1: 2 Ω between a and b", "I1: 1.5 A from a to 0", "P1: 10 W from a to 0"], Every.Select(element => element.ToString()));

    [Fact]
    public void Solve_OneOfEachKind_BalancesByHand()
    {
        // At a: (12.5 − U)/0.5 = (U − 10)/2 + 1.5 + 10/U, so 2.5·U² − 28.5·U + 10 = 0.
        double u = (28.5 + Math.Sqrt((28.5 * 28.5) - (4 * 2.5 * 10))) / 5, through = (u - 10) / 2;
        ResistiveNetworkSolution solution = ResistiveNetwork.Create("0", Every).Solve();
        Assert.Equal(u, solution.VoltageOf("a").Volts, 1e-12);
        Assert.Equal((12.5 - u) / 0.5, solution.CurrentOf("B1").Amperes, 1e-12);
        Assert.Equal(through, solution.CurrentOf("R1").Amperes, 1e-12);
        Assert.Equal(-through, solution.CurrentOf("E1").Amperes, 1e-12);
        Assert.Equal(10 / u, solution.CurrentOf("P1").Amperes, 1e-12);
        double heat = (through * through * 2) + ((12.5 - u) * (12.5 - u) / 0.5);
        Assert.Equal(heat, (double)solution.Heat.Watts, 1e-12);
        Assert.Matches("^3 nodes, 5 elements, [0-9.]+ W of heat$", solution.ToString());

        // The sheet: each current from the two voltages, and the sums at the nodes.
        WorkedSolution sheet = solution.Explain();
        ExplanationProperties.AssertEvaluates(sheet, "one of each kind");
        ExplanationProperties.AssertReadsBack(sheet, "one of each kind");
        ExplanationProperties.AssertOneMeaning(sheet, "one of each kind");
        SolutionStep step(string sought) => Assert.Single(sheet.Steps, s => s.Sought == sought);
        SolutionStep stated = step("current of I1 from a to 0"), given = step("current that B1 gives"), power = step("current of P1 from a to 0"), tie = step("current that E1 gives");
        Assert.Equal((StepKind.LookUp, 1.5, "A", "Stated."), (stated.Kind, stated.Result!.Value, stated.Unit, stated.Reason));
        Assert.Equal((StepKind.Calculation, "A"), (given.Kind, given.Unit));
        Assert.Equal((12.5 - u) / 0.5, given.Result!.Value, 1e-12);
        Assert.Contains("12.5 V", Plain(given), StringComparison.Ordinal);
        Assert.Contains("0.5 Ω", Plain(given), StringComparison.Ordinal);
        Assert.Equal((StepKind.Calculation, "A"), (power.Kind, power.Unit));
        Assert.Contains("10 W", Plain(power), StringComparison.Ordinal);
        Assert.Equal("It has no resistance: its current is what the other elements at its node leave.", tie.Reason);
        Assert.All(sheet.Steps.Where(s => s.Sought.StartsWith("sum of the currents", StringComparison.Ordinal)), s => Assert.Equal((0.0, "A"), (s.Result!.Value, s.Unit)));
    }

    private static string Plain(SolutionStep step) => step.InNumbers.Replace('\u00A0', ' ').Replace('\u202F', ' ');
}
