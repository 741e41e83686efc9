using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class FuseCarriesLoadCheckTests
{
    [Theory]
    [InlineData(7.999, CheckOutcome.Pass)]
    [InlineData(8, CheckOutcome.Pass)]
    [InlineData(8.001, CheckOutcome.Fail)]
    public void AroundEightyPerCent_PassesAndFails(double amperes, CheckOutcome expected)
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(amperes)), Blade(10));
        design.Is(CheckKind.FuseCarriesLoad, 10, amperes / 0.8, 2e-9);
        CheckCase.Answers(design, CheckKind.FuseCarriesLoad, expected, "fuse", "");
        Assert.Same(CheckCase.Table.FusePractice.LoadingReference, design.Of(CheckKind.FuseCarriesLoad).Reference);
        Assert.Equal("The fuse is too small for the load: use a larger rating, another series, or two circuits.", CheckCase.AdviceOf(design, CheckKind.FuseCarriesLoad));
        Assert.Equal(0.8, CheckCase.Number(CheckCase.Steps(design, CheckKind.FuseCarriesLoad, "I_n ≥ I_min"), "k_f"));
    }

    [Fact]
    public void PulsedLoad_CountsByItsPeak()
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(8)).WithDutyCycle(DutyCycle.FromFraction(0.25)), Blade(10));
        design.Is(CheckKind.FuseCarriesLoad, 10, 8 / 0.8, 2e-9);
        Assert.Equal(SupplyLevel.Minimum, design.Of(CheckKind.FuseCarriesLoad).Level);
        CircuitDesign heater = CheckCase.Verify(Load.Resistance(ElectricResistance.FromOhms(2)), Blade(10));
        Assert.Equal(SupplyLevel.Maximum, heater.Of(CheckKind.FuseCarriesLoad).Level);
    }

    [Fact]
    public void MotorThatStartsInEachPeriod_CountsByItsRmsCurrent()
    {
        // 5 A in running, 24 A for 9 of each 11 s: 21.8 A r.m.s. The end of a pulse of 10 s counts as it does for the wire.
        Load motor = Load.Motor(A(5), A(24), A(24), Duration.FromSeconds(9)).WithThermalCutOut().WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(10), Duration.FromSeconds(11)));
        double heat = (1 - Math.Exp(-10 / 1.15)) / (1 - Math.Exp(-11 / 1.15)), rms = Math.Sqrt((25 * heat) + ((576 - 25) * 9.0 / 11));
        CircuitDesign design = CheckCase.Verify(motor, Blade(20));
        design.Is(CheckKind.FuseCarriesLoad, 20, rms / 0.8, 2e-9);
        CheckCase.Answers(design, CheckKind.FuseCarriesLoad, CheckOutcome.Fail, "fuse", "by the r.m.s. current, which the starts in each period make larger than the current in running");
        _ = CheckCase.Steps(design, CheckKind.FuseCarriesLoad, "I_n ≥ I_min");
        Assert.Equal(CheckOutcome.Pass, CheckCase.Verify(motor, Blade(30)).Of(CheckKind.FuseCarriesLoad).Outcome);

        // Starts that are rare, with short pulses, heat less than the running current would.
        Load rare = Load.Motor(A(5), A(24), A(24), Duration.FromSeconds(0.5)).WithThermalCutOut().WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(1), Duration.FromSeconds(100)));
        CheckCase.Verify(rare, Blade(20)).Is(CheckKind.FuseCarriesLoad, 20, 5 / 0.8, 2e-9);
    }

    [Theory]
    [InlineData(7.199, CheckOutcome.Pass)]
    [InlineData(7.201, CheckOutcome.Fail)]
    public void FuseInWarmAir_CarriesLess(double amperes, CheckOutcome expected)
    {
        // gG: 0.5 % per kelvin above 40 °C: 90 % at 60 °C.
        CircuitDesign design = At(60, amperes);
        design.Is(CheckKind.FuseCarriesLoad, 10, amperes / 0.8 / 0.9, 2e-9);
        CheckCase.Answers(design, CheckKind.FuseCarriesLoad, expected, "fuse", "in the air around it the fuse carries 90 % of its rating (gG fuse-link)");
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FuseCarriesLoad, "I_n ≥ I_min");
        Assert.Equal(0.9, CheckCase.Number(sheet, "f_θ"), 1e-12);
        Assert.Contains(sheet.Steps, s => s.Sought == "share of its rating that the fuse carries in air of 60 °C");
    }

    [Fact]
    public void FuseInCoolAir_CarriesNoMoreThanItsRating()
    {
        CircuitDesign design = At(20, 8);
        design.Is(CheckKind.FuseCarriesLoad, 10, 10, 2e-9);
        CheckCase.Answers(design, CheckKind.FuseCarriesLoad, CheckOutcome.Pass, "fuse", "");
    }

    [Fact]
    public void AirBeyondTheRerating_IsUndetermined()
    {
        CircuitDesign design = At(81, 1);
        CheckCase.Answers(design, CheckKind.FuseCarriesLoad, CheckOutcome.Undetermined, "fuse", "the re-rating of the 10 A gG fuse-link (IEC 60269-1 gG) does not cover 81 °C");
        Assert.Equal("Put the fuse in a cooler place, or get its re-rating with temperature from its manufacturer.", CheckCase.AdviceOf(design, CheckKind.FuseCarriesLoad));
        CheckCase.Stated(design, CheckKind.FuseCarriesLoad);
        Assert.Equal(CheckOutcome.Pass, At(80, 1).Of(CheckKind.FuseCarriesLoad).Outcome);
    }

    [Fact]
    public void NoFuse_OrNoOperatingPoint_IsNotAsked()
    {
        Assert.Null(CheckCase.Verify(Load.ConstantCurrent(A(8)), null).Find(CheckKind.FuseCarriesLoad));
        Assert.Null(CheckCase.Verify(Load.ConstantPower(W(5000)), Blade(10)).Find(CheckKind.FuseCarriesLoad));
    }

    private static CircuitDesign At(double fuseCelsius, double amperes) => CheckCase.Verify(
        new CircuitRequirements(CheckCase.Asked(Load.ConstantCurrent(A(amperes)))) { FuseAmbient = C(fuseCelsius) }, FuseSeries.IndustrialGg.SmallestAtLeast(A(10)));
}
