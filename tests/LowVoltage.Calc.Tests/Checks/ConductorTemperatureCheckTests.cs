using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

public class ConductorTemperatureCheckTests
{
    [Theory]
    [InlineData(16, CheckOutcome.Pass)]
    [InlineData(31.999, CheckOutcome.Pass)]
    [InlineData(32.001, CheckOutcome.Fail)]
    public void AroundTheLimit_PassesAndFails(double amperes, CheckOutcome expected)
    {
        // 30 °C, and 40 K at 32 A.
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(amperes)), Blade(40));
        design.Is(CheckKind.ConductorTemperature, 30 + (40 * amperes * amperes / (32 * 32)), 70, 1e-9);
        CheckCase.Answers(design, CheckKind.ConductorTemperature, expected, "wire", "");
        Assert.Equal(InsulationMaterial.PolyvinylChloride.Reference, design.Of(CheckKind.ConductorTemperature).Reference);
        Assert.Equal("The wire gets too hot: use a cooler place, fewer loaded conductors together, or better insulation.", CheckCase.AdviceOf(design, CheckKind.ConductorTemperature));
        CheckCase.Steps(design, CheckKind.ConductorTemperature, "θ_h ≤ θ_c");
    }

    [Fact]
    public void TellsTheSameAsTheCurrent_SoTheCurrentGoverns()
    {
        // 33 A: 3.1 % beyond in amperes, 3.6 % in degrees.
        CircuitDesign design = CheckCase.Verify(new CircuitRequirements(CheckCase.Asked(Load.ConstantCurrent(A(33)), feed: 0.1)) { DropLimit = DropLimit.Percent(20) }, Blade(40), squareMillimeters: 2.5);
        Assert.True(design.Of(CheckKind.ConductorTemperature).Margin < design.Of(CheckKind.ContinuousCurrent).Margin);
        Assert.True(design.Of(CheckKind.ContinuousCurrent).IsTighterThan(design.Of(CheckKind.ConductorTemperature)));
        Assert.False(design.Of(CheckKind.ConductorTemperature).IsTighterThan(design.Of(CheckKind.ContinuousCurrent)));
    }

    [Fact]
    public void AirHotterThanTheInsulation_FailsWithoutACurrent()
    {
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load.ConstantCurrent(A(1)), ambient: 75), Blade(3));
        design.Is(CheckKind.ConductorTemperature, 75, 70);
        CheckCase.Answers(design, CheckKind.ConductorTemperature, CheckOutcome.Fail, "wire", "the air is not cooler than the insulation may be, without any current");
        CheckCase.Steps(design, CheckKind.ConductorTemperature, "θ_a ≤ θ_c");
    }

    [Fact]
    public void AirJustAsHot_FailsInWords()
    {
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load.ConstantCurrent(A(1)), ambient: 70), Blade(3));
        CheckCase.Answers(design, CheckKind.ConductorTemperature, CheckOutcome.Fail, "wire", "the air is not cooler than the insulation may be, without any current");
        Assert.Equal((null, null), (design.Of(CheckKind.ConductorTemperature).Value, design.Of(CheckKind.ConductorTemperature).Limit));
        CheckCase.Stated(design, CheckKind.ConductorTemperature);
    }

    [Fact]
    public void WireThatIsNotRated_IsUndetermined()
    {
        CircuitRequirements asked = CheckCase.Asked(Load.ConstantCurrent(A(8)));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(Awg(2), M(3)), asked.Return), Blade(10), CheckCase.Table);
        CheckCase.Answers(design, CheckKind.ConductorTemperature, CheckOutcome.Undetermined, "wire", "the wire is not rated here");
        Assert.StartsWith("The wire has no rating where it runs", CheckCase.AdviceOf(design, CheckKind.ConductorTemperature), StringComparison.Ordinal);
    }

    [Fact]
    public void WireThatNeverSettles_ShowsItsMeltingPoint()
    {
        // 5 cm of 1 mm² that 400 A of others share: at any temperature the heat is more than the air takes.
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(2)), feed: 1, back: ReturnPath.Shared([Segment.Create(RoadVehicle(1), M(0.05))], A(400)), conductors: 1, drop: DropLimit.Percent(60));
        foreach (AmpacityBasis basis in new[] { AmpacityBasis.HeatBalance, AmpacityBasis.RoadVehicleTable })
        {
            CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(1)), asked.Return), Blade(3), new(CheckCase.Table) { Ampacity = basis });
            CheckCase.Answers(
                design, CheckKind.ConductorTemperature, CheckOutcome.Fail, "shared return, 0.05 m of 1 mm² road-vehicle copper",
                "the wire finds no steady temperature at this current; its melting point is shown");
            Near(ConductorMaterial.Copper.MeltingPoint.DegreesCelsius, design.Of(CheckKind.ConductorTemperature).Value, 1e-12);
        }
    }

    [Fact]
    public void SeveralStretches_TheOneWithTheLeastRoom()
    {
        // 10 A: 30 + 40·(10/24/0.825)² in 1.5 mm², less in 4 mm²; the place of the thick one is hotter, but 0.66 of it.
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(10)), conductors: 1, drop: DropLimit.Percent(20));
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(4), M(1)), Segment.Create(RoadVehicle(1.5), M(1))], ReturnPath.Wire(Segment.Create(RoadVehicle(2.5), M(1))));
        CircuitDesign design = CircuitDesigner.Verify(asked, path, Blade(15), CheckCase.Table);
        design.Is(CheckKind.ConductorTemperature, Plain.Warm(30, 70, 10, 24 * 0.825), 70, 1e-9);
        Assert.Equal("feed, 1 m of 1.5 mm² road-vehicle copper", design.Of(CheckKind.ConductorTemperature).Where);
        CheckCase.Steps(design, CheckKind.ConductorTemperature, "θ_h ≤ θ_c");
    }

    [Fact]
    public void WiresInParallel_EachCarriesItsShare()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(20)), back: ReturnPath.Chassis(MilliOhm(1)), conductors: 1, drop: DropLimit.Percent(20));
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(RoadVehicle(1.5), M(3), 2), asked.Return), Blade(25), CheckCase.Table);
        design.Is(CheckKind.ConductorTemperature, Plain.Warm(30, 70, 10, 24 * 0.825), 70, 1e-9);
        Assert.Contains(CheckCase.Steps(design, CheckKind.ConductorTemperature, "θ_h ≤ θ_c").Steps, s => s.Symbol?.Spec == "I_1" && s.Result == 10);
    }

    [Fact]
    public void LoadWithoutAnOperatingPoint_IsNotAsked() => Assert.Null(CheckCase.Verify(Load.ConstantPower(W(5000)), Blade(10)).Find(CheckKind.ConductorTemperature));
}
