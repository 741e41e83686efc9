using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Tests.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>Wires thinner than those whose time constant is known: pulses of stated times are not counted there. 36 AWG had passed where the end of a pulse brings it beyond its limit.</summary>
public class TooThinTests
{
    private static readonly DesignRules Rules = DesignRules.Bench.WithConductors(ConductorSeries.AwgSolid)
        .WithMinimumSection(Area.FromSquareMillimeters(0.001), DesignRules.Bench.MinimumSectionReference);

    private static readonly DutyCycle Times = DutyCycle.FromTimes(Duration.FromSeconds(0.1), Duration.FromSeconds(500));

    // 36 AWG bears some 0.9 A here by the heat balance, 30 AWG some 2.5 A.
    private static CircuitRequirements Asked(Load load) => Circuit(load, Source.CurrentLimited(V(12), A(9)), feed: 0.1);

    private static CircuitDesign Verify(Load load, Conductor wire) => CircuitDesigner.Verify(Asked(load), wire, Blade(3), Rules);

    private static Conductor Solid(int number) => Conductor.Solid(AwgSize.FromNumber(number), ConductorMaterial.Copper);

    /// <summary>The starts of a motor heat it faster than they are counted too, whatever its running current.</summary>
    [Fact]
    public void AMotorWithStatedTimes_IsUndetermined_InACircuitAndInAHarness()
    {
        Load motor = Load.Motor(A(0.2), A(0.4), A(0.4), Duration.FromSeconds(0.05)).WithDutyCycle(Times);
        Assert.Equal(CheckOutcome.Undetermined, Verify(motor, Solid(36)).Of(CheckKind.ContinuousCurrent).Outcome);
        Assert.Equal(CheckOutcome.Pass, Verify(motor, Solid(30)).Of(CheckKind.ContinuousCurrent).Outcome);
        HarnessVerification found = HarnessDesigner.Verify(HarnessBuilder.FromCircuit(Asked(motor), Blade(3), Rules, Segment.Create(Solid(36), M(0.1))).Build());
        Assert.Contains(found.Checks, check => check.Kind == CheckKind.ContinuousCurrent);
        Assert.All(found.Checks.Where(check => check.Kind == CheckKind.ContinuousCurrent), check => Assert.Equal(CheckOutcome.Undetermined, check.Result.Outcome));
    }

    [Theory]
    [InlineData(36)]
    [InlineData(31)]
    public void PulsesOfStatedTimes_OnAWireBelow30Awg_AreUndetermined(int number)
    {
        double rated = Verify(Load.ConstantCurrent(A(0.1)), Solid(number)).Of(CheckKind.ContinuousCurrent).Limit!.Value;
        CircuitDesign design = Verify(Load.ConstantCurrent(A(1.5 * rated)).WithDutyCycle(Times), Solid(number));
        foreach (CheckKind kind in new[] { CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature })
        {
            CheckResult result = design.Of(kind);
            Assert.Equal(CheckOutcome.Undetermined, result.Outcome);
            Assert.EndsWith("state the load as continuous", result.Note, StringComparison.Ordinal);
            Assert.StartsWith("The wire is too thin for the heat of pulses to be known", CheckCase.AdviceOf(design, kind), StringComparison.Ordinal);
            CheckCase.Stated(design, kind);
        }
    }

    [Fact]
    public void PulsesOfStatedTimes_ThatTheWireBearsContinuously_Pass()
    {
        double rated = Verify(Load.ConstantCurrent(A(0.1)), Solid(36)).Of(CheckKind.ContinuousCurrent).Limit!.Value;
        CircuitDesign design = Verify(Load.ConstantCurrent(A(0.99 * rated)).WithDutyCycle(Times), Solid(36));
        Assert.Equal((CheckOutcome.Pass, CheckOutcome.Pass), (design.Of(CheckKind.ContinuousCurrent).Outcome, design.Of(CheckKind.ConductorTemperature).Outcome));
    }

    [Fact]
    public void PulsesOfStatedTimes_BeyondTheRatingByTheirHeatAlready_Fail()
    {
        CircuitDesign design = Verify(Load.ConstantCurrent(A(8)).WithDutyCycle(Times), Solid(36));
        Assert.Equal((CheckOutcome.Fail, CheckOutcome.Fail), (design.Of(CheckKind.ContinuousCurrent).Outcome, design.Of(CheckKind.ConductorTemperature).Outcome));
    }

    [Fact]
    public void AShareAlone_OrAWireOf30Awg_IsJudgedAsEver()
    {
        double thin = Verify(Load.ConstantCurrent(A(0.1)), Solid(36)).Of(CheckKind.ContinuousCurrent).Limit!.Value;
        Assert.Equal(CheckOutcome.Pass, Verify(Load.ConstantCurrent(A(1.2 * thin)).WithDutyCycle(DutyCycle.FromFraction(0.1)), Solid(36)).Of(CheckKind.ContinuousCurrent).Outcome);
        double thick = Verify(Load.ConstantCurrent(A(0.1)), Solid(30)).Of(CheckKind.ContinuousCurrent).Limit!.Value;
        Assert.Equal(CheckOutcome.Pass, Verify(Load.ConstantCurrent(A(1.5 * thick)).WithDutyCycle(Times), Solid(30)).Of(CheckKind.ContinuousCurrent).Outcome);
    }

    /// <summary>Aluminium of the same section holds less heat.</summary>
    [Fact]
    public void AluminiumOf30Awg_IsTooThinToo()
    {
        Conductor wire = Conductor.Solid(AwgSize.FromNumber(30), ConductorMaterial.Aluminium);
        double rated = Verify(Load.ConstantCurrent(A(0.1)), wire).Of(CheckKind.ContinuousCurrent).Limit!.Value;
        Assert.Equal(CheckOutcome.Undetermined, Verify(Load.ConstantCurrent(A(1.5 * rated)).WithDutyCycle(Times), wire).Of(CheckKind.ContinuousCurrent).Outcome);
    }

    [Fact]
    public void AThinWireOfAHarness_IsAskedTheSame()
    {
        double rated = Verify(Load.ConstantCurrent(A(0.1)), Solid(36)).Of(CheckKind.ContinuousCurrent).Limit!.Value;
        CircuitRequirements asked = Asked(Load.ConstantCurrent(A(1.5 * rated)).WithDutyCycle(Times));
        HarnessVerification found = HarnessDesigner.Verify(HarnessBuilder.FromCircuit(asked, Blade(3), Rules, Segment.Create(Solid(36), M(0.1))).Build());
        Assert.All(
            found.Checks.Where(check => check.Kind == CheckKind.ContinuousCurrent || check.Kind == CheckKind.ConductorTemperature),
            check => Assert.Equal(CheckOutcome.Undetermined, check.Result.Outcome));
        Assert.Contains(found.Checks, check => check.Kind == CheckKind.ContinuousCurrent);
    }
}
