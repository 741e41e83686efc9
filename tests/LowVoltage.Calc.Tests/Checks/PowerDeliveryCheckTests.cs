using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>Asked only where there is no operating point: then it fails. It is never undetermined.</summary>
public class PowerDeliveryCheckTests
{
    // At the lowest voltage, 11.89 V: source, lead and chassis, the wire at 30 °C and what its own warmth adds.
    private const double Fixed = 0.018 + CheckCase.Lead + CheckCase.Chassis;

    [Fact]
    public void LoadWithAnOperatingPoint_IsNotAsked() => Assert.Null(CheckCase.Verify(Load.ConstantPower(W(60)), Blade(10)).Find(CheckKind.PowerDelivery));

    [Fact]
    public void MorePowerThanComesThrough_FailsWithTheMostThatDoes()
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantPower(W(1000)), Blade(10));
        design.Is(CheckKind.PowerDelivery, Most(11.89, double.PositiveInfinity), 1000, 1e-6);
        CheckCase.Answers(design, CheckKind.PowerDelivery, CheckOutcome.Fail, "load", "more power than can come through this wire");
        Assert.Equal(SupplyLevel.Minimum, design.Of(CheckKind.PowerDelivery).Level);
        Assert.Equal("Ohm's law; the worst of minimum, nominal and maximum supply voltage", design.Of(CheckKind.PowerDelivery).Reference.Title);
        Assert.Equal(
            "The load cannot get the power it needs: use a shorter run, a larger wire, a higher supply voltage, fewer or better joints, a stronger source, or a smaller load.",
            CheckCase.AdviceOf(design, CheckKind.PowerDelivery));
        Assert.True(CheckCase.IsCured(design, CheckKind.PowerDelivery));

        // Nothing of the wire in service is asked without a point, and the headline says why.
        Assert.Null(design.Find(CheckKind.VoltageDrop));
        Assert.Equal(CheckKind.PowerDelivery, design.Governing.Kind);
        Near(11.89 * 11.89 / (4 * (Fixed + CheckCase.WireOhmsAt(30))), CheckCase.Number(CheckCase.Steps(design, CheckKind.PowerDelivery, "P_del ≥ P_L"), "P_cap"), 1e-12);
    }

    [Fact]
    public void ALittleLessThanTheMost_HasAPoint()
    {
        double most = Most(11.89, double.PositiveInfinity);
        Assert.Null(CheckCase.Verify(Load.ConstantPower(W(most * 0.9999)), Blade(10)).Find(CheckKind.PowerDelivery));
        Assert.NotNull(CheckCase.Verify(Load.ConstantPower(W(most * 1.0001)), Blade(10)).Find(CheckKind.PowerDelivery));
    }

    [Fact]
    public void CurrentThatDropsEverything_SaysSo()
    {
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(400)), Blade(10));
        design.Is(CheckKind.PowerDelivery, Most(11.89, double.PositiveInfinity), 400 * 11.89, 1e-6);
        CheckCase.Answers(design, CheckKind.PowerDelivery, CheckOutcome.Fail, "load", "the current would drop more than the whole voltage in this wire, or melt it");
    }

    [Fact]
    public void SupplyAtItsLimit_SaysTheLimit()
    {
        // 6 A of 5: at the limit 12 V less what source and path take are left; 1 m of wire.
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(6)), Blade(10), source: Source.CurrentLimited(V(12), A(5)));
        double left = 12 - (5 * (CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhms(5)));
        design.Is(CheckKind.PowerDelivery, 5 * left, 6 * 12, 1e-9);
        CheckCase.Answers(design, CheckKind.PowerDelivery, CheckOutcome.Fail, "load", "the load takes more than the source's limit of 5 A");
        Assert.Null(CheckCase.Verify(Load.ConstantCurrent(A(5)), Blade(10), source: Source.CurrentLimited(V(12), A(5))).Find(CheckKind.PowerDelivery));
    }

    [Fact]
    public void PackThatDisconnects_BringsNoMoreThanItsLimitLetsThrough()
    {
        // 16 cells, 40 V at the least: 5 kW are out of reach of the path, but what counts is that the pack disconnects at 22 A, with at most 22 A · 40 V.
        Source pack = Battery.LithiumIronPhosphate(16, ElectricCharge.FromAmpereHours(70), A(22));
        CircuitDesign design = CheckCase.Verify(Load.ConstantPower(W(5000)), Blade(10), source: pack);
        CheckResult delivery = design.Of(CheckKind.PowerDelivery);
        Assert.True(delivery.Value <= 22 * 40, $"{delivery}");
        Assert.Equal("the source disconnects above 22 A", delivery.Note);
        Assert.StartsWith("The source does not give the current", CheckCase.AdviceOf(design, CheckKind.PowerDelivery), StringComparison.Ordinal);
        _ = CheckCase.Steps(design, CheckKind.PowerDelivery, "P_del ≥ P_L");
    }

    [Theory]
    [InlineData(0.02)]
    [InlineData(0.05)]
    [InlineData(0.1)]
    public void WireThatMelts_IsExplained(double ohms)
    {
        // A resistance that draws hundreds of amperes through 0.5 mm²: no operating point, and a sheet that says so.
        CircuitDesign design = CheckCase.Verify(CheckCase.Asked(Load.Resistance(ElectricResistance.FromOhms(ohms)), Source.Ideal(V(24)), feed: 0.2), Blade(10), DesignRules.RoadVehicle, squareMillimeters: 0.5);
        CheckResult delivery = design.Of(CheckKind.PowerDelivery);
        Assert.Equal(CheckOutcome.Fail, delivery.Outcome);
        Assert.Contains(design.Explain().Steps, s => s.Symbol is { } power && power.Value.Equals(delivery.Value!.Value));
    }

    [Fact]
    public void PackThatDisconnects_SaysAtWhich()
    {
        // Four cells, 100 Ah: 10 V behind 3.2 mΩ at least; off above 25 A.
        Source pack = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), A(25));
        CircuitDesign design = CheckCase.Verify(Load.ConstantCurrent(A(26)), Blade(40), source: pack);
        double volts = 10 - (25 * (0.0032 + CheckCase.Lead + CheckCase.Chassis + CheckCase.WireOhms(26)));
        design.Is(CheckKind.PowerDelivery, 25 * volts, 26 * 10, 1e-9);
        CheckCase.Answers(design, CheckKind.PowerDelivery, CheckOutcome.Fail, "load", "the source disconnects above 25 A");
        Assert.Null(CheckCase.Verify(Load.ConstantCurrent(A(25)), Blade(40), source: pack).Find(CheckKind.PowerDelivery));
    }

    // The top of I·(V − A·I − B·I³), looked for by thirds.
    private static double Most(double volts, double amperes)
    {
        double ohms = Fixed + CheckCase.WireOhmsAt(30), bend = CheckCase.WireOhms(1) - CheckCase.WireOhmsAt(30), from = 0, to = Math.Min(amperes, volts / ohms);
        double watts(double i) => i * (volts - (i * ohms) - (i * i * i * bend));
        for (int k = 0; k < 200; k++)
        {
            double a = from + ((to - from) / 3), b = to - ((to - from) / 3);
            (from, to) = watts(a) < watts(b) ? (a, to) : (from, b);
        }

        return watts(0.5 * (from + to));
    }
}
