using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>Just behind the near end one wire carries the whole fault (Kirchhoff); IEC 60364-4-43, 434.4, from memory.</summary>
public class FaultInOneParallelWireCheckTests
{
    private static readonly Load Load = Load.ConstantCurrent(A(5));

    [Fact]
    public void OneWire_TakesTheWholeOfTheFault()
    {
        // 15 A type C: 36·15²·0.1 = 810 A²s at every current beyond 90 A.
        CircuitDesign design = Laid(2.5, 2, Blade(15));
        Assert.True(11.89 / (0.018 + CheckCase.Lead + CheckCase.Chassis + Plain.PerMeter(7.60, 160)) > 90);
        design.Is(CheckKind.FaultInOneParallelWire, Plain.Adiabatic(7.60, 2.5, 810, 70), 160, 1e-6);
        CheckCase.Answers(
            design, CheckKind.FaultInOneParallelWire, CheckOutcome.Pass, "wire", "worst with the fault at 0 % of the length, where one wire carries 100 % of the current");
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FaultInOneParallelWire, "θ_fw ≤ θ_sc");
        SolutionStep limit = sheet.Steps.First(step => step.Symbol?.Spec == "θ_sc");
        Assert.Equal(("limit of the insulation in a short circuit", "°C", "For at most 5 s."), (limit.Sought, limit.Unit, limit.Reason));
        Near(810, CheckCase.Number(sheet, "I²t_w"), 1e-9);
        Assert.Equal(1, CheckCase.Number(sheet, "s_w"));

        // The two together take half each in a short at the far end.
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(7.60, 2.5, 810 / 4.0, 70), 160, 1e-6);
    }

    [Fact]
    public void WireThatBurns_Fails()
    {
        // 60 A type E lets 360²·1 s = 129 600 A²s through: 2.5 mm² copper would be at 264 °C.
        CircuitDesign design = Laid(2.5, 3, FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(60)));
        CheckResult result = design.Of(CheckKind.FaultInOneParallelWire);
        Assert.Equal((CheckOutcome.Fail, "wire", 160.0), (result.Outcome, result.Where, result.Limit));
        Assert.True(result.Value > Plain.Adiabatic(7.60, 2.5, 129_600, 70) - 1);
        Assert.Equal(
            "A fault in one of the parallel wires burns it before the common fuse opens: use one thicker wire, fewer and thicker wires, or a fuse for each wire at both ends.",
            CheckCase.AdviceOf(design, CheckKind.FaultInOneParallelWire));
    }

    [Fact]
    public void WorstPlaceInTheMiddle_OneWireHasTheSquareOfItsShare()
    {
        // Between 1.35 and 2 times its rating type E opens with I^-8.7 (1800 s and 60 s): what it lets through grows with I^-6.7 as the current falls. Over 60 m the current falls from some
        // 2.4 to 1.6 times 60 A, so that further on the fuse lets through more than the share squared takes off, until that has fallen to a quarter.
        CircuitRequirements asked = CheckCase.Asked(Load, feed: 60);
        CircuitDesign design = CircuitDesigner.Verify(asked, Path(asked, 16, 2), FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(A(60)), CheckCase.Table);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FaultInOneParallelWire, "θ_fw ≤ θ_sc");
        double share = CheckCase.Number(sheet, "s_w");
        Assert.InRange(share, 0.5, 0.99);
        Near(share * share * CheckCase.Number(sheet, "I²t_w"), CheckCase.Number(sheet, "I²t_1"), 1e-9);
    }

    [Fact]
    public void FuseThatNeedNotOpen_FailsInWords()
    {
        // A weak supply: 12 V behind 0.4 Ω at its worst, some 28 A, where 40 A need not open.
        CircuitRequirements asked = CheckCase.Asked(Load, Source.BehindResistance(V(12), V(12), V(14), MilliOhm(20), MilliOhm(400)));
        CircuitDesign design = CircuitDesigner.Verify(asked, Path(asked, 1.5, 2), Blade(40), CheckCase.Table);
        CheckResult result = design.Of(CheckKind.FaultInOneParallelWire);
        Assert.Equal((CheckOutcome.Fail, null, null), (result.Outcome, result.Value, result.Limit));
        Assert.Matches("^worst with the fault at .* % of the length, where one wire carries .* % of the current: at the 2[0-9.]+ A that may flow the 40 A blade fuse .* need not open$", result.Note);
        CheckCase.Stated(design, CheckKind.FaultInOneParallelWire);
    }

    [Fact]
    public void SupplyThatOneWireCarries_IsNotAsked()
    {
        // Two together 0.825 of 24 A: 19.8 A each.
        Assert.Null(Held(19.79).Find(CheckKind.FaultInOneParallelWire));
        Assert.NotNull(Held(19.81).Find(CheckKind.FaultInOneParallelWire));

        static CircuitDesign Held(double amperes)
        {
            CircuitRequirements asked = CheckCase.Asked(Load, Source.CurrentLimited(V(12), A(amperes)));
            return CircuitDesigner.Verify(asked, Path(asked, 1.5, 2), Blade(10), CheckCase.Table);
        }
    }

    [Fact]
    public void NoWiresInParallel_OrNoFuse_IsNotAsked()
    {
        Assert.Null(Laid(2.5, 1, Blade(15)).Find(CheckKind.FaultInOneParallelWire));
        Assert.Null(Laid(2.5, 2, null).Find(CheckKind.FaultInOneParallelWire));
    }

    [Fact]
    public void FuseOfUnknownTimes_IsUndetermined()
    {
        CircuitDesign design = Laid(2.5, 2, CheckCase.Nameless);
        CheckCase.Answers(design, CheckKind.FaultInOneParallelWire, CheckOutcome.Undetermined, "wire", "no operating times are published for the 10 A fuse (own list)");
        Assert.StartsWith("What is undetermined about the fuse: get its d.c. voltage", CheckCase.AdviceOf(design, CheckKind.FaultInOneParallelWire), StringComparison.Ordinal);
        CheckCase.Stated(design, CheckKind.FaultInOneParallelWire);
    }

    [Fact]
    public void TwoParallelStretches_TheHotterIsNamed_NotTheSingleOne()
    {
        CircuitRequirements asked = CheckCase.Asked(Load);
        CircuitPath path = CircuitPath.Create([Segment.Create(RoadVehicle(2.5), M(1), 2), Segment.Create(RoadVehicle(1), M(0.2)), Segment.Create(RoadVehicle(1.5), M(1), 2)], asked.Return);
        CircuitDesign design = CircuitDesigner.Verify(asked, path, Blade(15), CheckCase.Table);
        design.Is(CheckKind.FaultInOneParallelWire, Plain.Adiabatic(12.7, 1.5, 810, 70), 160, 1e-6);
        Assert.Equal("feed, 1 m of 2 × 1.5 mm² road-vehicle copper", design.Of(CheckKind.FaultInOneParallelWire).Where);
        WorkedSolution sheet = CheckCase.Steps(design, CheckKind.FaultInOneParallelWire, "θ_fw ≤ θ_sc");
        Assert.Contains(sheet.Steps, s => s.Sought == "stretch whose wires lie in parallel" && s.Reason == "The stretch of 1 m of 2 × 1.5 mm² road-vehicle copper.");
    }

    private static CircuitDesign Laid(double squareMillimeters, int wires, FuseRating? fuse)
    {
        CircuitRequirements asked = CheckCase.Asked(Load, feed: 1);
        return CircuitDesigner.Verify(asked, Path(asked, squareMillimeters, wires), fuse, CheckCase.Table);
    }

    private static CircuitPath Path(CircuitRequirements asked, double squareMillimeters, int wires) =>
        CircuitPath.Create(Segment.Create(RoadVehicle(squareMillimeters), asked.Feed, wires), asked.Return);
}
