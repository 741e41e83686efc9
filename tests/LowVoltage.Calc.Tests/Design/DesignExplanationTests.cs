using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Tests.Working;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>The calculation sheet of a design holds the design's own numbers, whatever the outcome.</summary>
public class DesignExplanationTests
{
    [Fact]
    public void Sheet_OfADesign_HoldsEveryCheckWithItsNumbers()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantPower(W(60), 0.9, V(10.5))), DesignRules.RoadVehicle);
        WorkedSolution sheet = design.Explain();
        AssertHoldsChecks(design, sheet);
        Assert.Equal(design.ToString(), sheet.Answer);
        SupplyRange range = design.SupplyRange!;
        foreach (OperatingPoint point in new[] { range.Minimum, range.Nominal, range.Maximum })
        {
            Assert.Contains(sheet.Steps, s => s.Symbol?.Name.StartsWith('I') == true && s.Result!.Value.Equals(point.Current.Amperes));
            Assert.Contains(sheet.Steps, s => s.Symbol?.Name.StartsWith('U') == true && s.Result!.Value.Equals(point.VoltageAtLoad.Volts));
            Assert.Contains(sheet.Steps, s => s.Symbol?.Name.StartsWith("ΔV", StringComparison.Ordinal) == true && s.Result!.Value.Equals(point.Drop.Volts));
        }

        Assert.Equal(design.Rejected.Select(r => r.ToString()), Lines(sheet, "Why no smaller size"));
        Assert.Equal(design.Assumptions, Lines(sheet, "Assumptions, to be confirmed by whoever installs the circuit"));
        Assert.Contains(sheet.Steps, s => s.Sought == "what governs" && s.Reason.Contains(design.Governing.ToString(), StringComparison.Ordinal));
        Assert.All(design.Cautions, caution => Assert.Contains(caution, sheet.Cautions));
    }

    [Fact]
    public void Sheet_TablePreset_HoldsTheDeratingSteps()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(8)), ambient: 45, conductors: 6), DesignRules.SmallCraft);
        WorkedSolution sheet = design.Explain();
        Assert.NotNull(design.Ampacity);
        Assert.Contains(sheet.Steps, s => s.Symbol?.Name is "I_z" or "I_za" && Math.Abs(s.Result!.Value - design.Ampacity.Current.Amperes) <= 1e-12 * s.Result.Value);
        AssertHoldsChecks(design, sheet);
    }

    [Fact]
    public void Sheet_NothingFits_SaysWhyAndWhatWouldHelp()
    {
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantPower(W(5000)), feed: 200), DesignRules.RoadVehicle);
        Assert.True(design.IsNearest);
        Assert.Equal(Verdict.Fail, design.Verdict);
        WorkedSolution sheet = design.Explain();
        AssertHoldsChecks(design, sheet);
        Assert.Equal(design.Advice, Lines(sheet, "What would help"));
        Assert.Contains("Do not build it", sheet.Cautions[0], StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", sheet.ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_OfAVerification_ShowsTheFailedCheck()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(12)), feed: 12), RoadVehicle(0.75), Blade(30), DesignRules.RoadVehicle);
        WorkedSolution sheet = design.Explain();
        AssertHoldsChecks(design, sheet);
        Assert.Contains(sheet.Steps, s => s.Holds == false);
        ExplanationProperties.AssertReadsBack(sheet, "verification", engineering: true);
    }

    // A check lets rounding take a billionth of its limit; the step that it shows does not.
    private const double Play = 1e-8;

    private static IReadOnlyList<string> Lines(WorkedSolution sheet, string heading) => sheet.Notes.Single(n => n.Heading == heading).Lines;

    private static void AssertHoldsChecks(CircuitDesign design, WorkedSolution sheet)
    {
        foreach (CheckResult check in design.Checks)
        {
            SolutionStep step = Assert.Single(sheet.Steps, s => s.Sought == "check: " + check.Name && (s.Symbol is null || Math.Abs(s.Result!.Value - check.Value!.Value) <= Play * Math.Abs(check.Value.Value)));
            Assert.Equal(check.Reference, step.Source);
            if (step.Kind == StepKind.Statement)
            {
                Assert.Contains(check.ToString(), step.Reason, StringComparison.Ordinal);
            }
            else
            {
                Near(check.Limit, step.Limit!.Value, Play, check.Name);
                Assert.Equal(check.Outcome == CheckOutcome.Pass, step.Holds);
                Assert.Contains(step.Reason.Split('.')[0].Split(' ')[0], (string[])["Margin", "Beyond", "More"]);
            }
        }
    }
}
