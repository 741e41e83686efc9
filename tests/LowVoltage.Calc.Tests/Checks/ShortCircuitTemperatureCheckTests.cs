using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>IEC 60949 with the most that the fuse lets through; PVC 160 °C.</summary>
public class ShortCircuitTemperatureCheckTests
{
    private const double Fixed = 0.018 + CheckCase.Lead + CheckCase.Chassis;
    private static readonly Load Load = Load.ConstantCurrent(A(5));

    [Theory]
    [InlineData(40, CheckOutcome.Pass)]
    [InlineData(50, CheckOutcome.Fail)]
    public void SlowFuse_AroundTheLimit(double rating, CheckOutcome expected)
    {
        // 30 cm; type E: at least 6²·1 s of the rating squared: 57 600 A²s for 40 A.
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load, feed: 0.3), FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(rating)));
        (_, double last) = Plain.Clear(Plain.HighCurrentLongest, rating, 11.89, Fixed, 0.3, CheckCase.PerKilometer, 2.5, 70);
        double joule = Plain.MostJoule(Plain.HighCurrentLongest, rating, last, 14.4 / (0.0036 + CheckCase.Lead));
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(CheckCase.PerKilometer, 2.5, joule, 70), 160, 1e-6);
        CheckResult result = design.Of(CheckKind.ShortCircuitTemperature);
        Assert.Equal((expected, "wire"), (result.Outcome, result.Where));
        Assert.StartsWith("from 70 °C, worst at ", result.Note, StringComparison.Ordinal);
        Assert.Equal("The wire overheats before the fuse opens: a larger wire, a faster fuse, or insulation with a higher short-circuit limit.", CheckCase.AdviceOf(design, CheckKind.ShortCircuitTemperature));
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.ShortCircuitTemperature, "θ_f ≤ θ_sc");
        Near(joule, CheckCase.Number(sheet, "I²t"), 1e-5);
    }

    [Theory]
    [InlineData(0.0001, CheckOutcome.Pass)]
    [InlineData(-0.0001, CheckOutcome.Fail)]
    public void AroundALimitStated_PassesAndFails(double more, CheckOutcome expected)
    {
        // 30 A type C, beyond 600 %: 6²·30²·0.1 s = 3240 A²s at every current.
        double celsius = Plain.Adiabatic(CheckCase.PerKilometer, 2.5, 3240, 70);
        InsulationMaterial own = InsulationMaterial.Rated("own", C(70), C(celsius + more));
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load, feed: 0.3, insulation: own), Blade(30));
        design.Is(CheckKind.ShortCircuitTemperature, celsius, celsius + more, 1e-7);
        Assert.Equal(expected, design.Of(CheckKind.ShortCircuitTemperature).Outcome);
    }

    [Fact]
    public void InsulationWithoutRoom_IsFoundAsTheLoadLeavesIt()
    {
        // ETFE 150 °C, no short-circuit limit; size 20 by FAA AC 43.13-1B Table 11-9, 7 A at 150 °C in 70 °C: 80 K. 5 A in air of 40 °C: 80.8 °C.
        DesignRules rules = new(DesignRules.LightAircraft) { FusePractice = new FusePractice { Overload = null } };
        Conductor wire = Conductor.AircraftWire(AircraftWireSize.FromNumber(20));
        CircuitRequirements asked = CheckCase.Asked(Load, feed: 0.3, ambient: 40, insulation: InsulationMaterial.Etfe);
        CircuitDesign design = CircuitDesigner.Verify(asked, CircuitPath.Create(Segment.Create(wire, M(0.3)), asked.Return), Blade(7.5), rules);
        double start = 40 + (80 * 25 / 49.0), r = 9.88 / 0.3048, area = 1216 * Math.PI / 4 * 0.0254 * 0.0254;
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(r, area, 36 * 7.5 * 7.5 * 0.1, start), 150, 1e-6);
        Assert.StartsWith("from 80.82 °C, worst at ", design.Of(CheckKind.ShortCircuitTemperature).Note, StringComparison.Ordinal);
        Near(start, CheckCase.Number(CheckCase.Steps(design, CheckKind.ShortCircuitTemperature, "θ_f ≤ θ_sc"), "θ_i"), 1e-9);
    }

    [Fact]
    public void InsulationWithoutRoom_OnAWireThatIsNotRated_IsUndetermined()
    {
        CircuitRequirements asked = CheckCase.Asked(Load, insulation: InsulationMaterial.Etfe);
        CircuitDesign design = CheckCase.Verify(asked, Blade(10));
        CheckCase.Answers(design, CheckKind.ShortCircuitTemperature, CheckOutcome.Undetermined, "wire", "the wire is not rated here");
        Assert.StartsWith("The wire has no rating where it runs", CheckCase.AdviceOf(design, CheckKind.ShortCircuitTemperature), StringComparison.Ordinal);
        CheckCase.Stated(design, CheckKind.ShortCircuitTemperature);

        // With room above its continuous limit the rating is not needed.
        Assert.Equal(
            CheckOutcome.Pass, CheckCase.Verify(new CircuitRequirements(asked) { Insulation = InsulationMaterial.CrossLinkedPolyethylene }, Blade(10)).Of(CheckKind.ShortCircuitTemperature).Outcome);
    }

    [Fact]
    public void FuseOfUnknownTimes_IsUndetermined()
    {
        CircuitDesign design = CheckCase.Verify(Load, CheckCase.Nameless);
        CheckCase.Answers(design, CheckKind.ShortCircuitTemperature, CheckOutcome.Undetermined, "wire", "no operating times are published for the 10 A fuse (own list)");
        Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(design, CheckKind.ShortCircuitTemperature), StringComparison.Ordinal);
    }

    [Fact]
    public void SeveralStretches_TheOneNearestToItsLimit_EachByItsOwnSection()
    {
        // 2.5 mm² alone, two 1.5 mm² side by side (25.4 mΩ/m·m over two), 4 mm²: the two together have more section than 2.5 mm².
        CircuitRequirements asked = CheckCase.Asked(Load, feed: 3);
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(4), M(1)), Segment.Create(RoadVehicle(2.5), M(0.5)), Segment.Create(RoadVehicle(1.5), M(1), 2)], asked.Return);
        CircuitDesign design = CircuitDesigner.Verify(asked, path, Blade(15), CheckCase.Table);
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(7.60, 2.5, 36 * 15 * 15 * 0.1, 70), 160, 1e-6);
        Assert.Equal("feed, 0.5 m of 2.5 mm² road-vehicle copper", design.Of(CheckKind.ShortCircuitTemperature).Where);
        CheckCase.Steps(design, CheckKind.ShortCircuitTemperature, "θ_f ≤ θ_sc");

        // Without the single one it is the two, each with half of the current.
        CircuitPath two = CircuitPath.Create([Segment.Create(RoadVehicle(4), M(1)), Segment.Create(RoadVehicle(1.5), M(1), 2)], asked.Return);
        CircuitDesign pair = CircuitDesigner.Verify(asked, two, Blade(15), CheckCase.Table);
        pair.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(12.7, 1.5, 9 * 15 * 15 * 0.1, 70), 160, 1e-6);
        Assert.Contains(CheckCase.Steps(pair, CheckKind.ShortCircuitTemperature, "θ_f ≤ θ_sc").Steps, s => s.Symbol?.Spec == "S_n");
    }

    [Fact]
    public void SupplyThatCannotOverloadTheWire_OrNoFuse_IsNotAsked()
    {
        Assert.Null(CheckCase.Verify(Load, Blade(10), source: Source.CurrentLimited(V(12), A(32))).Find(CheckKind.ShortCircuitTemperature));
        Assert.NotNull(CheckCase.Verify(Load, Blade(10), source: Source.CurrentLimited(V(12), A(33))).Find(CheckKind.ShortCircuitTemperature));
        Assert.Null(CheckCase.Verify(Load, null).Find(CheckKind.ShortCircuitTemperature));
    }
}
