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
