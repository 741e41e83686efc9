using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>Metal and insulation in layers, against conduction along the radius.</summary>
public class LayeredInsulationTests(Xunit.Abstractions.ITestOutputHelper output)
{
    // 26 AWG to 2/0 with a thin and a thick wall, mm.
    private static readonly (int Gauge, double Thin, double Thick)[] Sizes =
        [(26, 0.2, 0.6), (22, 0.25, 0.8), (18, 0.3, 0.8), (14, 0.4, 1.1), (10, 0.5, 1.2), (6, 0.8, 1.6), (2, 1, 2), (-1, 1.2, 2.5)];

    public static TheoryData<int, double> Walls
    {
        get
        {
            TheoryData<int, double> data = [];
            foreach ((int gauge, double thin, double thick) in Sizes)
            {
                data.Add(gauge, thin);
                data.Add(gauge, thick);
            }

            return data;
        }
    }

    /// <summary>
    /// From 1.05 to 10 times the rated current: never later than conduction along the radius, and at most 1.5 times earlier. Without the insulation a thin wire looks four times as fast.
    /// </summary>
    [Theory]
    [MemberData(nameof(Walls))]
    public void TimeToReach_Layers_IsNeverLaterThanTheRadialSolutionAndNear(int gauge, double wall)
    {
        double earliest = 1, latest = 0;
        foreach (InsulationMaterial insulation in new[] { InsulationMaterial.PolyvinylChloride, InsulationMaterial.CrossLinkedPolyethylene })
        {
            Wire wire = Wire.Create(Conductor.Solid(AwgSize.FromNumber(gauge), ConductorMaterial.Copper), insulation, Length.FromMillimeters(wall));
            RadialWire radial = new(wire, Air(30));
            double rated = HeatBalance.CurrentFor(wire, Air(30), insulation.ContinuousLimit).Amperes, hot = insulation.ContinuousLimit.DegreesCelsius;
            foreach (double times in new[] { 1.05, 1.2, 1.5, 2.5, 5, 10 })
            {
                foreach ((double start, double limit) in new[] { (30.0, hot), (hot, hot + 25), (hot, insulation.ShortCircuitLimit.DegreesCelsius) })
                {
                    if (OverloadHeating.TimeToReach(wire, Air(30), A(times * rated), C(start), C(limit), InsulationHeat.Layers) is not { } time)
                    {
                        continue;
                    }

                    // The oracle's steps leave it some 0.2 % late.
                    double along = radial.SecondsTo(times * rated, start, limit);
                    Assert.InRange(time.Seconds, along / 1.5, along * 0.999);
                    (earliest, latest) = (Math.Min(earliest, time.Seconds / along), Math.Max(latest, time.Seconds / along));
                    Assert.True(OverloadHeating.TimeToReach(wire, Air(30), A(times * rated), C(start), C(limit))!.Value.Seconds < time.Seconds);
                }
            }
        }

        output.WriteLine(FormattableString.Invariant($"{gauge} AWG, wall {wall} mm: {earliest:0.000} to {latest:0.000} of the radial time"));
    }

    [Fact]
    public void RadialWire_FinerRingsAndSteps_ChangeNothing()
    {
        Wire wire = Wire.Create(Conductor.Solid(AwgSize.FromNumber(22), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.5));
        foreach (double amperes in new[] { 25.0, 50, 120 })
        {
            Assert.Equal(1, new RadialWire(wire, Air(30)).SecondsTo(amperes, 70, 160) / new RadialWire(wire, Air(30), 60).SecondsTo(amperes, 70, 160, 5000), 4e-3);
        }
    }

    /// <summary>How much a thin wire gains: 26 AWG for some seconds.</summary>
    [Fact]
    public void TimeToReach_ThinWire_IsSeveralTimesThatOfTheMetalAlone()
    {
        Wire wire = Wire.Create(Conductor.Solid(AwgSize.FromNumber(26), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.4));
        double rated = HeatBalance.CurrentFor(wire, Air(30), C(70)).Amperes;
        double two = OverloadHeating.TimeToReach(wire, Air(30), A(1.5 * rated), C(30), C(70), InsulationHeat.Layers)!.Value.Seconds;
        double one = OverloadHeating.TimeToReach(wire, Air(30), A(1.5 * rated), C(30), C(70))!.Value.Seconds;
        Assert.InRange(two / one, 3, 5);
    }

    [Theory]
    [InlineData(26, 0.4, 12, 30, 5)]
    [InlineData(14, 0.6, 60, 70, 20)]
    [InlineData(14, 0.6, 5, 150, 100)]
    [InlineData(2, 1.5, 400, 40, 60)]
    public void TemperatureAfter_Layers_AgreesWithRungeKutta(int gauge, double wall, double amperes, double start, double seconds)
    {
        Wire wire = Wire.Create(Conductor.Solid(AwgSize.FromNumber(gauge), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(wall));
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, Air(30));
        double metal = OverloadKernel.Capacity(wire, InsulationHeat.None), share = 1.7e6 * Math.PI / 4 * 1e-6;
        double inside = wire.Conductor.DiameterMillimeters, ratio = (inside + (2 * wall)) / inside, drop = start - heat.SurfaceFor(start);
        double Layer(double from, double to) => share * inside * inside * (Math.Pow(ratio, 2 * to) - Math.Pow(ratio, 2 * from));
        double[] layers = [Layer(0, 0.2), Layer(0.2, 0.5), Layer(0.5, 1)];
        Vector<double> end = RungeKutta.FourthOrder(Vector<double>.Build.Dense([start, start - (0.2 * drop), start - (0.5 * drop), start - drop]), 0, seconds, 40_001, (_, y) =>
        {
            double one = (y[0] - y[1]) / heat.InnerResistance / 0.2, two = (y[1] - y[2]) / heat.InnerResistance / 0.3, three = (y[2] - y[3]) / heat.InnerResistance / 0.5;
            return Vector<double>.Build.Dense(
            [
                ((amperes * amperes * heat.OhmsPerMeterAt(y[0])) - one) / metal, (one - two) / layers[0], (two - three) / layers[1],
                (three - heat.Loss(y[3], out double _)) / layers[2],
            ]);
        })[^1];
        Temperature after = OverloadHeating.TemperatureAfter(wire, Air(30), A(amperes), S(seconds), C(start), InsulationHeat.Layers);
        Assert.Equal(end[0], after.DegreesCelsius, 1e-5);
        if (end[0] > start)
        {
            Assert.Equal(1, OverloadHeating.TimeToReach(wire, Air(30), A(amperes), C(start), after, InsulationHeat.Layers)!.Value.Seconds / seconds, 1e-5);
            Assert.Equal(1, OverloadHeating.CurrentToReach(wire, Air(30), C(start), after, S(seconds), InsulationHeat.Layers).Amperes / amperes, 1e-6);
        }
    }

    [Fact]
    public void Layers_AtTheEdges_NeverBareAndMelting()
    {
        Wire wire = Solid(0.4, 0.4);
        double steady = HeatBalance.TemperatureAt(wire, Air(30), A(5)).DegreesCelsius;
        Assert.Null(OverloadHeating.TimeToReach(wire, Air(30), A(5), C(30), C(steady + 0.01), InsulationHeat.Layers));
        Assert.NotNull(OverloadHeating.TimeToReach(wire, Air(30), A(5), C(30), C(steady - 0.01), InsulationHeat.Layers));
        Assert.Equal(0, OverloadHeating.TimeToReach(wire, Air(30), A(5), C(60), C(60), InsulationHeat.Layers)!.Value.Seconds);
        Assert.Equal(77, OverloadHeating.TemperatureAfter(wire, Air(30), A(5), S(0), C(77), InsulationHeat.Layers).DegreesCelsius, 1e-9);
        Assert.Equal(steady, OverloadHeating.TemperatureAfter(wire, Air(30), A(5), S(1e4), C(30), InsulationHeat.Layers).DegreesCelsius, 1e-4);
        Assert.Throws<ConductorMeltsException>(() => OverloadHeating.TemperatureAfter(wire, Air(30), A(100), S(10), C(30), InsulationHeat.Layers));

        Wire bare = Solid(0.4, 0);
        Assert.Equal(
            OverloadHeating.TimeToReach(bare, Air(30), A(20), C(30), C(200)),
            OverloadHeating.TimeToReach(bare, Air(30), A(20), C(30), C(200), InsulationHeat.Layers));
        Assert.Throws<ArgumentOutOfRangeException>("insulation", () => OverloadHeating.CyclicBand(wire, Air(30), A(5), S(1), S(1), InsulationHeat.Layers));
        Assert.Throws<ArgumentOutOfRangeException>("insulation", () => OverloadHeating.TimeConstant(wire, Air(30), A(5), InsulationHeat.Layers));
    }
}
