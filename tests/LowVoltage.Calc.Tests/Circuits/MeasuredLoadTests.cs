using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Working;

namespace LowVoltage.Calc.Tests.Circuits;

public class MeasuredLoadTests
{
    private static readonly double[] Volts = [9, 10.5, 12, 13, 14.4], Amperes = [2.1, 2.6, 3, 3.1, 3.1];

    private static Load Of(double[] volts, double[] amperes) =>
        Load.Measured([.. volts.Select(u => ElectricPotential.FromVolts(u))], [.. amperes.Select(i => ElectricCurrent.FromAmperes(i))]);

    private static double At(Load load, double volts) => load.CurrentAt(ElectricPotential.FromVolts(volts), LoadState.Running).Amperes;

    [Fact]
    public void CurrentAt_AMeasuredPoint_IsTheMeasuredCurrent() =>
        Assert.All(Volts.Zip(Amperes), point => Assert.Equal(point.Second, At(Of(Volts, Amperes), point.First), 1e-12));

    // Points of a straight line give the line, those of a resistance the resistance.
    [Theory]
    [InlineData(5)]
    [InlineData(9.3)]
    [InlineData(13.7)]
    [InlineData(16)]
    public void CurrentAt_PointsOfAResistance_IsOhmsLaw(double volts) =>
        Assert.Equal(volts / 4, At(Of([8, 10, 11, 14], [2, 2.5, 2.75, 3.5]), volts), 1e-9);

    [Fact]
    public void CurrentAt_BetweenPoints_NeverLeavesThemNorFalls()
    {
        // A step that an ordinary cubic would overshoot.
        Load load = Of([6, 7, 8, 9, 10], [1, 1, 1.01, 4, 4]);
        double before = 0;
        for (double u = 0.01; u < 14; u += 0.01)
        {
            double now = At(load, u);
            Assert.True(now >= before - 1e-12, $"{u} V: {now} A after {before} A");
            Assert.InRange(now, 0, 4 + 1e-12);
            before = now;
        }
    }

    [Fact]
    public void Solve_AMeasuredResistance_IsTheOperatingPointOfTheResistance()
    {
        Load measured = Of([6, 9, 12, 15], [1.5, 2.25, 3, 3.75]);
        OperatingPoint one = OperatingPoint.Solve(Paths.Battery(12.6, 0.02), Paths.Of(0.3), measured, Paths.At(20));
        OperatingPoint other = OperatingPoint.Solve(Paths.Battery(12.6, 0.02), Paths.Of(0.3), Load.Resistance(ElectricResistance.FromOhms(4)), Paths.At(20));
        Assert.Equal(other.Current.Amperes, one.Current.Amperes, 1e-9);
        ExplanationProperties.AssertEvaluates(one.Explain(), "measured load");
        Assert.Contains("6 V: 1.5 A; 9 V: 2.25 A", one.Explain().ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_BesideAConstantPower_BalancesTheLoop()
    {
        Load both = Load.Together(Of(Volts, Amperes), Load.ConstantPower(Power.FromWatts(30)));
        OperatingPoint point = OperatingPoint.Solve(Paths.Battery(12.6, 0.02), Paths.Of(0.1), both, Paths.At(20));
        double u = point.VoltageAtLoad.Volts;
        Assert.Equal((12.6 - u) / 0.12, At(Of(Volts, Amperes), u) + (30 / u), 1e-8);
    }

    [Fact]
    public void Solve_OutsideTheMeasuredPoints_SaysSo()
    {
        string Assumed(double volts) => string.Join(' ', OperatingPoint.Solve(Paths.Battery(volts, 0.001), Paths.Of(0.001), Of(Volts, Amperes), Paths.At(20)).Assumptions);
        Assert.Contains("outside its measured points of 9 V to 14.4 V", Assumed(20), StringComparison.Ordinal);
        Assert.Contains("outside its measured points", Assumed(8), StringComparison.Ordinal);
        Assert.DoesNotContain("measured points", Assumed(12), StringComparison.Ordinal);
    }

    [Fact]
    public void Design_OfAMeasuredLoad_IsThatOfTheSameResistance()
    {
        CircuitRequirements Asked(Load load) => CircuitRequirements.Create(
            Battery.LeadAcid(ElectricCurrent.FromAmperes(300)), load, Length.FromMeters(4), ReturnPath.Wire(Length.FromMeters(4)), Calc.Conductors.Place.Create(Temperature.FromDegreesCelsius(30)),
            Calc.Conductors.InsulationMaterial.PolyvinylChloride).WithUpstream(ElectricResistance.FromMilliohms(10));
        CircuitDesign measured = CircuitDesigner.Design(Asked(Of([6, 9, 12, 16], [1.5, 2.25, 3, 4])), DesignRules.RoadVehicle);
        CircuitDesign plain = CircuitDesigner.Design(Asked(Load.Resistance(ElectricResistance.FromOhms(4))), DesignRules.RoadVehicle);
        Assert.Equal((plain.Wire, plain.Fuse, plain.Verdict), (measured.Wire, measured.Fuse, measured.Verdict));
        ExplanationProperties.AssertEvaluates(measured.Explain(), "design of a measured load");
    }

    [Theory]
    [InlineData(new double[] { 9, 12 }, new double[] { 1, 2 }, "voltages", "At least 3")]
    [InlineData(new double[] { 9, 12, 14 }, new double[] { 1, 2 }, "currents", "3 voltages and 2 currents")]
    [InlineData(new double[] { 9, 9, 14 }, new double[] { 1, 2, 3 }, "voltages", "voltages[1] must be above the one before it, 9 V; it was 9 V")]
    [InlineData(new double[] { 9, 12, 14 }, new double[] { 3, 2, 3 }, "currents", "currents[1] must not be below the one before it, 3 A; it was 2 A")]
    [InlineData(new double[] { -9, 12, 14 }, new double[] { 1, 2, 3 }, "voltages", "voltages[0] must be")]
    [InlineData(new double[] { 9, 12, 14 }, new double[] { 0, 2, 3 }, "currents", "currents[0] must be")]
    public void Measured_BadPoints_AreRefusedWithRowAndReason(double[] volts, double[] amperes, string name, string reason)
    {
        ArgumentException refused = Assert.ThrowsAny<ArgumentException>(() => Of(volts, amperes));
        Assert.Equal(name, refused.ParamName);
        Assert.Contains(reason, refused.Message, StringComparison.Ordinal);
    }
}
