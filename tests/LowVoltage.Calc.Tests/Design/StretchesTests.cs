using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>Several stretches behind one fuse: which of them a check is about, and each in its own place and insulation.</summary>
public class StretchesTests
{
    private const string Thin = "0.4 m of 1 mm² road-vehicle copper";

    private static readonly DesignRules Vehicle = new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable, DropLimit = DropLimit.Percent(10) };
    private static readonly DesignRules Boat = new(DesignRules.SmallCraft) { Ampacity = AmpacityBasis.SmallCraftTable, DropLimit = DropLimit.Percent(10) };

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Verify_TwoSizesBehindOneFuse_NamesTheOneThatFailsInCheckHeadlineAndAdvice(bool inFeed)
    {
        Segment thick = Segment.Create(RoadVehicle(2.5), M(2)), thin = Segment.Create(RoadVehicle(1), M(0.4));
        CircuitPath path = inFeed ? CircuitPath.Create([thick, thin], ReturnPath.Wire(thick)) : CircuitPath.Create([thick], ReturnPath.Wire(thick, thin));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(8))), path, Blade(20), Vehicle);
        string where = (inFeed ? "feed, " : "return, ") + Thin;

        // Table 19 A, two together 0.825: 15.675 A. A 20 A fuse need not open below 27 A, which brings it far beyond 95 °C.
        design.Is(CheckKind.FuseProtectsWire, 20, 19 * 0.825, 1e-8);
        design.Is(CheckKind.OverloadTemperature, Plain.Heated(18.5, 1, 30, 19 * 0.825, 70, 70, 27, double.PositiveInfinity), 95, 1e-6);
        Assert.Equal([CheckKind.FuseProtectsWire, CheckKind.OverloadTemperature], design.Checks.Where(c => c.Outcome == CheckOutcome.Fail).Select(c => c.Kind!));
        Assert.Equal($"fuse protects the wire 20 A, at most 15.68 A, {where}: fail", design.Of(CheckKind.FuseProtectsWire).ToString());
        Assert.EndsWith($", at most 95 °C, {where}: fail", design.Of(CheckKind.OverloadTemperature).ToString(), StringComparison.Ordinal);
        Assert.Equal(where, design.Governing.Where);
        Assert.EndsWith($", at most 95 °C, {where}: fail", design.ToString(), StringComparison.Ordinal);
        Assert.Equal(2, design.Advice.Count(line => line.EndsWith($" This concerns the {where}.", StringComparison.Ordinal)));
    }

    [Fact]
    public void Verify_OneSize_NamesNoStretch()
    {
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(8)), feed: 2), RoadVehicle(1), Blade(20), Vehicle);
        Assert.Equal("fuse protects the wire 20 A, at most 15.68 A: fail", design.Of(CheckKind.FuseProtectsWire).ToString());
        Assert.Equal("wire", design.Of(CheckKind.FuseProtectsWire).Where);
        Assert.DoesNotContain(design.Advice, line => line.Contains("This concerns", StringComparison.Ordinal));
        Assert.All(design.Checks, check => Assert.NotEqual("", check.Where));
    }

    [Fact]
    public void Verify_StretchInAHotterPlaceOfItsOwn_IsRatedAndHeatedThere()
    {
        // 2.5 mm² at 30 °C, and half a metre of it at 60 °C. Table 32 A, two together 0.825, √((70 − 60)/(70 − 30)) = 0.5 there.
        Segment cool = Segment.Create(RoadVehicle(2.5), M(2)), hot = Segment.Create(RoadVehicle(2.5), M(0.5)).WithPlace(new Place { Ambient = C(60) });
        CircuitDesign design = CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(8))), CircuitPath.Create([cool, hot], ReturnPath.Wire(Segment.Create(RoadVehicle(2.5), M(2.5)))), Blade(10), Vehicle);
        double rated = 32 * 0.825, there = rated * 0.5;
        const string Where = "feed, 0.5 m of 2.5 mm² road-vehicle copper";
        design.Is(CheckKind.ContinuousCurrent, 8, there);
        design.Is(CheckKind.ConductorTemperature, Plain.Warm(60, 70, 8, there), 70);
        design.Is(CheckKind.FuseProtectsWire, 10, there, 1e-8);
        Assert.All(new[] { CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature, CheckKind.FuseProtectsWire }, kind => Assert.Equal(Where, design.Of(kind).Where));

        // Its resistance is that of its own temperature.
        double ohms = (4.5 * Plain.PerMeter(7.60, Plain.Warm(30, 70, 8, rated))) + (0.5 * Plain.PerMeter(7.60, Plain.Warm(60, 70, 8, there)));
        design.Is(CheckKind.VoltageDrop, 8 * (ohms + 0.020), 1.2);
        Assert.Contains(design.Assumptions, line => line.StartsWith("Feed, 0.5 m of 2.5 mm² road-vehicle copper: ", StringComparison.Ordinal) && line.Contains("60 °C", StringComparison.Ordinal));

        // The same wiring all in the cool place carries twice as much.
        CircuitDesign all = CircuitDesigner.Verify(design.Requirements, CircuitPath.Create([cool], ReturnPath.Wire(Segment.Create(RoadVehicle(2.5), M(2.5)))), Blade(10), Vehicle);
        all.Is(CheckKind.ContinuousCurrent, 8, rated);

        // A place hotter than the insulation may be fails, and is named.
        CircuitDesign oven = CircuitDesigner.Verify(
            design.Requirements, CircuitPath.Create([cool, hot.WithPlace(new Place { Ambient = C(75) })], ReturnPath.Wire(Segment.Create(RoadVehicle(2.5), M(2.5)))), Blade(10), Vehicle);
        Assert.Equal($"conductor temperature 75 °C, at most 70 °C, {Where}: fail", oven.Of(CheckKind.ConductorTemperature).ToString());
    }

    [Fact]
    public void Verify_StretchOfAnotherInsulationInAnEngineSpace_HasItsOwnColumnLimitAndFactor()
    {
        // 14 AWG: PVC counts in the 60 °C column, 20 A at 30 °C; XLPE 30 A at 90 °C, in the engine space 0.82 of that, for 50 °C.
        InsulationMaterial xlpe = InsulationMaterial.CrossLinkedPolyethylene;
        Segment cabin = Segment.Create(Awg(14), M(1));
        Segment engine = Segment.Create(Wire.Create(Awg(14), xlpe, Length.FromMillimeters(0.8)), M(1)).WithPlace(new Place { Ambient = C(50), EngineSpace = true });
        CircuitDesign of(double amperes) => CircuitDesigner.Verify(
            Circuit(Load.ConstantCurrent(A(amperes)), upstreamMilliOhms: 15), CircuitPath.Create([cabin, engine], ReturnPath.Wire(cabin)), Blade(15), Boat);
        CircuitDesign design = of(10);
        double there = 30 * 0.82, ohms = (2 * Plain.PerMeter(Plain.AwgPerKilometer(14), Plain.Warm(30, 60, 10, 20))) + Plain.PerMeter(Plain.AwgPerKilometer(14), Plain.Warm(50, 90, 10, there));
        design.Is(CheckKind.VoltageDrop, 10 * (ohms + 0.015), 1.2);
        design.Is(CheckKind.ContinuousCurrent, 10, 20);
        Assert.Equal("feed, 1 m of 14 AWG stranded copper", design.Of(CheckKind.ContinuousCurrent).Where);

        // Room to its own limit: PVC 70 − 37.5 K, XLPE 90 − 56.6 K. The PVC has less, although it is the cooler.
        Assert.True(70 - Plain.Warm(30, 60, 10, 20) < 90 - Plain.Warm(50, 90, 10, there));
        design.Is(CheckKind.ConductorTemperature, Plain.Warm(30, 60, 10, 20), 70);

        // All of it in the engine space: PVC of the 60 °C column 0.58 of 20 A, which the 15 A fuse is too large for.
        CircuitDesign pvc = CircuitDesigner.Verify(
            design.Requirements, CircuitPath.Create([cabin, Segment.Create(Awg(14), M(1)).WithPlace(new Place { Ambient = C(50), EngineSpace = true })], ReturnPath.Wire(cabin)), Blade(15), Boat);
        pvc.Is(CheckKind.FuseProtectsWire, 15, 20 * 0.58, 1e-8);
        Assert.Equal(CheckOutcome.Fail, pvc.Of(CheckKind.FuseProtectsWire).Outcome);
    }

    [Fact]
    public void Verify_StretchStatedHotterThanItsInsulationMayBe_Fails()
    {
        // A stated temperature once changed nothing: pass at 32 °C for a stretch stated at 120 °C.
        Segment plain = Segment.Create(RoadVehicle(2.5), M(1)), stated = Segment.Create(RoadVehicle(2.5), M(1)).WithTemperature(ConductorTemperature.At(C(120)));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(5))), CircuitPath.Create([plain, stated], ReturnPath.Wire(plain)), Blade(10), Vehicle);
        design.Is(CheckKind.ConductorTemperature, 120, 70);
        Assert.Equal(CheckOutcome.Fail, design.Of(CheckKind.ConductorTemperature).Outcome);
        double ohms = (2 * Plain.PerMeter(7.60, Plain.Warm(30, 70, 5, 32 * 0.825))) + Plain.PerMeter(7.60, 120);
        design.Is(CheckKind.VoltageDrop, 5 * (ohms + 0.020), 1.2);

        // The fault finds it as hot: 6² · 10² · 0.1 = 360 A²s beyond 60 A.
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(7.60, 2.5, 360, 120), 160, 1e-6);
        Assert.StartsWith("from 120 °C", design.Of(CheckKind.ShortCircuitTemperature).Note, StringComparison.Ordinal);
    }
}
