using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;
using MathNet.Numerics.OdeSolvers;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class OverloadHeatingTests
{
    private static readonly Wire Wire14 = Solid(1.628, 0.6);

    /// <summary>Independent integration in time: MathNet's fourth-order Runge-Kutta on the heat balance, surface temperature by bisection.</summary>
    [Theory]
    [InlineData(1.628, 0.6, 40, 1.2, 40, 160)]
    [InlineData(1.628, 0.6, 40, 1.001, 40, 98)]
    [InlineData(1.628, 0, 25, 1.3, 25, 1000)]
    [InlineData(1.628, 0.6, 25, 10, 25, 250)]
    [InlineData(0.4, 0.2, 25, 1.1, 60, 200)]
    [InlineData(9, 1.3, 25, 2, 70, 100)]
    [InlineData(1.628, 3, 25, 1.8, 25, 900)]
    public void TimeToReach_AgainstRungeKutta_AgreesToOneInAMillion(
        double diameter, double wall, double ambient, double timesSteady, double from, double to)
    {
        Wire wire = Solid(diameter, wall);
        Surroundings air = Air(ambient);
        double amperes = timesSteady * HeatBalance.CurrentFor(wire, air, C(to)).Amperes;
        Duration? time = OverloadHeating.TimeToReach(wire, air, A(amperes), C(from), C(to));
        Assert.NotNull(time);
        double reached = Integrate(wire, air, amperes, from, time.Value.Seconds);
        Assert.InRange(reached, to - (1e-6 * (to - from)), to + (1e-6 * (to - from)));
        Temperature after = OverloadHeating.TemperatureAfter(wire, air, A(amperes), time.Value, C(from));
        Assert.InRange(after.DegreesCelsius, to - (1e-7 * (to - from)), to + (1e-7 * (to - from)));
    }

    /// <summary>A rise of next to nothing has an answer too, and soon: with layers the current lies between that without any heat of the insulation and that with all of it.</summary>
    [Theory]
    [InlineData(1e-6)]
    [InlineData(1e-9)]
    [InlineData(1e-12)]
    public void CurrentToReach_NextToNoRise_LiesBetweenNoneAndAllOfTheInsulation(double rise)
    {
        double amperes(double seconds, InsulationHeat heat) => OverloadHeating.CurrentToReach(Wire14, Air(30), C(100), C(100 + rise), S(seconds), heat).Amperes;
        foreach (double seconds in new[] { 1.0, 3600 })
        {
            double none = amperes(seconds, InsulationHeat.None), all = amperes(seconds, InsulationHeat.All);
            Assert.InRange(amperes(seconds, InsulationHeat.Layers), none * (1 - 1e-11), all * (1 + 1e-11));
        }
    }

    [Theory]
    [InlineData(150, 0, 30)]
    [InlineData(150, 10, 100)]
    [InlineData(20, 0, 10)]
    public void TemperatureAfter_Cooling_AgreesWithRungeKutta(double from, double amperes, double seconds)
    {
        double expected = Integrate(Wire14, Air(40), amperes, from, seconds);
        Temperature after = OverloadHeating.TemperatureAfter(Wire14, Air(40), A(amperes), S(seconds), C(from));
        Assert.InRange(after.DegreesCelsius, expected - 1e-4, expected + 1e-4);
    }

    /// <summary>IEC 60949 adiabatic formula: I²t = K²S²·ln((θf + β)/(θi + β)) with K² = σc·(β + 20)/ρ20 and β + 20 = 1/α20.</summary>
    [Theory]
    [InlineData(1e4)]
    [InlineData(1e5)]
    [InlineData(1e6)]
    public void TimeToReach_GreatCurrent_IsTheAdiabaticTime(double amperes)
    {
        const double Beta = (1 / 0.00393) - 20;
        double area = Math.PI / 4 * 1.628 * 1.628 * 1e-6;
        double adiabatic = 3.45e6 * (Beta + 20) * 58e6 * area * area * Math.Log((160 + Beta) / (25 + Beta)) / (amperes * amperes);
        Duration? time = OverloadHeating.TimeToReach(Wire14, Air(25), A(amperes), C(160));
        Assert.NotNull(time);

        // Loss is some 10 W/m of 5 MW/m at 25 kA.
        Assert.InRange(time.Value.Seconds / adiabatic, 1 - 1e-8, 1 + (2e3 / (amperes * amperes)));
        ElectricCurrent back = OverloadHeating.CurrentToReach(Wire14, Air(25), C(160), time.Value);
        Assert.InRange(back.Amperes / amperes, 1 - 1e-8, 1 + 1e-8);
    }

    /// <summary>Losses only ever lengthen the time of the bare adiabatic conductor, and counted insulation only lengthens it further.</summary>
    [Fact]
    public void TimeToReach_MoreInsulationCounted_TakesLonger()
    {
        double[] seconds =
        [
            .. new[] { InsulationHeat.None, InsulationHeat.Layers, InsulationHeat.All }
                .Select(i => OverloadHeating.TimeToReach(Wire14, Air(25), A(60), C(25), C(160), i)!.Value.Seconds),
        ];
        Assert.True(seconds[0] < seconds[1] && seconds[1] < seconds[2]);

        // Copper 3.45e6 · 2.0816 mm² = 7.182 J/(m·K); PVC 1.7e6 · 4.1998 mm² = 7.140 J/(m·K).
        double copper = 3.45 * Math.PI / 4 * 1.628 * 1.628, plastic = 1.7 * Math.PI / 4 * ((2.828 * 2.828) - (1.628 * 1.628));
        Assert.Equal((copper + plastic) / copper, seconds[2] / seconds[0], 7);
        Assert.Throws<ArgumentOutOfRangeException>("insulation", () => OverloadHeating.TimeToReach(Wire14, Air(25), A(60), C(25), C(160), (InsulationHeat)7));
    }

    [Fact]
    public void TimeToReach_SustainableCurrent_IsNever()
    {
        double steady = HeatBalance.TemperatureAt(Wire14, Air(40), A(25)).DegreesCelsius;
        Assert.Null(OverloadHeating.TimeToReach(Wire14, Air(40), A(25), C(steady + 0.001)));
        Assert.Null(OverloadHeating.TimeToReach(Wire14, Air(40), A(25), C(steady)));
        Assert.NotNull(OverloadHeating.TimeToReach(Wire14, Air(40), A(25), C(steady - 1e-6)));
        Assert.Null(OverloadHeating.TimeToReach(Wire14, Air(40), A(0), C(41)));
        Assert.Null(OverloadHeating.TimeToReach(Wire14, Air(40), A(10), C(120), C(150)));
    }

    [Fact]
    public void TimeToReach_AtOrAboveTheLimitAlready_IsZero()
    {
        Assert.Equal(0, OverloadHeating.TimeToReach(Wire14, Air(40), A(25), C(40))!.Value.Seconds);
        Assert.Equal(0, OverloadHeating.TimeToReach(Wire14, Air(40), A(0), C(90), C(90))!.Value.Seconds);
    }

    /// <summary>Close to the steady state the time grows by one time constant for every e.</summary>
    [Fact]
    public void TimeToReach_NearEquilibrium_GrowsByTheTimeConstant()
    {
        double steady = HeatBalance.TemperatureAt(Wire14, Air(40), A(25)).DegreesCelsius;
        double first = OverloadHeating.TimeToReach(Wire14, Air(40), A(25), C(steady - 1e-2))!.Value.Seconds;
        double second = OverloadHeating.TimeToReach(Wire14, Air(40), A(25), C(steady - (1e-2 / Math.E)))!.Value.Seconds;
        double constant = OverloadHeating.TimeConstant(Wire14, Air(40), A(25))!.Value.Seconds;
        Assert.Equal(1, (second - first) / constant, 4);
        Assert.Null(OverloadHeating.TimeConstant(Wire14, Air(40), A(1000)));
    }

    [Fact]
    public void TemperatureAfter_LongTime_IsTheSteadyState()
    {
        double steady = HeatBalance.TemperatureAt(Wire14, Air(40), A(25)).DegreesCelsius;
        Assert.Equal(steady, OverloadHeating.TemperatureAfter(Wire14, Air(40), A(25), S(1e9)).DegreesCelsius, 9);
        Assert.Equal(steady, OverloadHeating.TemperatureAfter(Wire14, Air(40), A(25), S(1e9), C(900)).DegreesCelsius, 9);
        Assert.Equal(40, OverloadHeating.TemperatureAfter(Wire14, Air(40), A(0), S(1e9)).DegreesCelsius, 9);
        Assert.Equal(77, OverloadHeating.TemperatureAfter(Wire14, Air(40), A(25), S(0), C(77)).DegreesCelsius, 9);
    }

    [Fact]
    public void TemperatureAfter_PastTheMeltingPoint_IsNull()
    {
        Duration melt = OverloadHeating.TimeToReach(Wire14, Air(40), A(200), C(1083))!.Value;
        ConductorMeltsException melts = Assert.Throws<ConductorMeltsException>(() => OverloadHeating.TemperatureAfter(Wire14, Air(40), A(200), S(melt.Seconds * 1.001)));
        Assert.Equal(melt.Seconds, melts.TimeToMelt.Seconds, 1e-9 * melt.Seconds);
        Assert.Equal(1083, melts.MeltingPoint.DegreesCelsius);
        Assert.InRange(OverloadHeating.TemperatureAfter(Wire14, Air(40), A(200), S(melt.Seconds * 0.999)).DegreesCelsius, 1070, 1083);
        Assert.Throws<ConductorMeltsException>(() => OverloadHeating.TemperatureAfter(Wire14, Air(40), A(200), S(1), C(1083)));
        Assert.False(OverloadHeating.TryTemperatureAfter(Wire14, Air(40), A(200), S(1), C(1083), out Temperature reached));
        Assert.Equal(1083, reached.DegreesCelsius);
        Assert.True(OverloadHeating.TryTemperatureAfter(Wire14, Air(40), A(20), S(1), C(60), out _));
        Assert.True(OverloadHeating.TemperatureAfter(Wire14, Air(40), A(0), S(1), C(1083)).DegreesCelsius < 1083);
    }

    /// <summary>Heat made less heat lost is heat stored: 1e-9 by an independent quadrature of the losses over the same rise.</summary>
    [Theory]
    [InlineData(60, 200)]
    [InlineData(300, 500)]
    public void TimeToReach_EnergyBalance_Closes(double amperes, double limit)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Wire14, Air(25));
        double capacity = OverloadKernel.Capacity(Wire14, InsulationHeat.None);
        double time = OverloadHeating.TimeToReach(Wire14, Air(25), A(amperes), C(60), C(limit))!.Value.Seconds;

        // ∫ (I²R′ − q′) dt over time, each temperature from TemperatureAfter. From 60 °C, since the loss has no smooth start at the ambient.
        double stored = MathNet.Numerics.Integration.GaussLegendreRule.Integrate(
            t =>
            {
                double hot = OverloadHeating.TemperatureAfter(Wire14, Air(25), A(amperes), S(t), C(60)).DegreesCelsius;
                return (amperes * amperes * heat.OhmsPerMeterAt(hot)) - heat.Loss(heat.SurfaceFor(hot), out _);
            },
            0,
            time,
            64);
        Assert.Equal(1, stored / (capacity * (limit - 60)), 9);
    }

    [Fact]
    public void CurrentToReach_IsTheInverse()
    {
        foreach (double seconds in new[] { 1e-4, 0.01, 1, 10, 100, 1000, 1e5 })
        {
            ElectricCurrent current = OverloadHeating.CurrentToReach(Wire14, Air(40), C(105), S(seconds));
            double steady = HeatBalance.CurrentFor(Wire14, Air(40), C(105)).Amperes;
            Assert.True(current.Amperes >= steady);

            // After that long the current is the one carried indefinitely, to the last digits, and the time says nothing of it.
            if (seconds > 500)
            {
                Assert.Equal(1, current.Amperes / steady, 6);
                continue;
            }

            Duration? time = OverloadHeating.TimeToReach(Wire14, Air(40), current, C(105));
            Assert.NotNull(time);
            Assert.InRange(time.Value.Seconds / seconds, 1 - 1e-6, 1 + 1e-6);
        }

        Assert.Equal(0, OverloadHeating.CurrentToReach(Wire14, Air(40), C(40), S(1)).Amperes);
        Assert.Equal(0, OverloadHeating.CurrentToReach(Wire14, Air(40), C(80), C(80), S(1)).Amperes);
        Assert.Equal(0, OverloadHeating.CurrentToReach(Wire14, Air(40), C(0), C(20), S(1e6)).Amperes);
        double warming = OverloadHeating.CurrentToReach(Wire14, Air(40), C(0), C(60), S(10), InsulationHeat.All).Amperes;
        Assert.InRange(OverloadHeating.TimeToReach(Wire14, Air(40), A(warming), C(0), C(60), InsulationHeat.All)!.Value.Seconds, 9.99999, 10.00001);
    }

    [Fact]
    public void CyclicBand_RepeatsItself()
    {
        TemperatureBand? band = OverloadHeating.CyclicBand(Wire14, Air(40), A(40), S(10), S(20));
        Assert.NotNull(band);
        Temperature peak = OverloadHeating.TemperatureAfter(Wire14, Air(40), A(40), S(10), band.Lowest);
        Assert.Equal(band.Highest.DegreesCelsius, peak.DegreesCelsius, 8);
        Temperature back = OverloadHeating.TemperatureAfter(Wire14, Air(40), A(0), S(20), band.Highest);
        Assert.Equal(band.Lowest.DegreesCelsius, back.DegreesCelsius, 7);
        Assert.InRange(band.Highest.DegreesCelsius, band.Lowest.DegreesCelsius + 1, HeatBalance.TemperatureAt(Wire14, Air(40), A(40)).DegreesCelsius);
    }

    /// <summary>Short cycles settle where the r.m.s. current does, long ones swing between ambient and the steady state.</summary>
    [Fact]
    public void CyclicBand_AtItsEnds_IsRmsAndSteadyState()
    {
        TemperatureBand fast = OverloadHeating.CyclicBand(Wire14, Air(40), A(40), S(1e-3), S(2e-3))!;
        double mean = HeatBalance.TemperatureAt(Wire14, Air(40), A(40 / Math.Sqrt(3))).DegreesCelsius;
        Assert.InRange(fast.Lowest.DegreesCelsius, mean - 0.05, mean + 0.05);
        Assert.InRange(fast.Highest.DegreesCelsius, fast.Lowest.DegreesCelsius, mean + 0.05);
        TemperatureBand slow = OverloadHeating.CyclicBand(Wire14, Air(40), A(30), S(1e5), S(1e5))!;
        Assert.Equal(40, slow.Lowest.DegreesCelsius, 6);
        Assert.Equal(HeatBalance.TemperatureAt(Wire14, Air(40), A(30)).DegreesCelsius, slow.Highest.DegreesCelsius, 6);
        TemperatureBand idle = OverloadHeating.CyclicBand(Wire14, Air(40), A(0), S(1), S(1))!;
        Assert.Equal(40, idle.Highest.DegreesCelsius, 9);
    }

    [Fact]
    public void CyclicBand_CurrentWithoutSteadyState_SettlesOrMelts()
    {
        TemperatureBand? pulses = OverloadHeating.CyclicBand(Wire14, Air(40), A(300), S(0.1), S(30));
        Assert.NotNull(pulses);
        Temperature peak = OverloadHeating.TemperatureAfter(Wire14, Air(40), A(300), S(0.1), pulses.Lowest);
        Assert.Equal(pulses.Highest.DegreesCelsius, peak.DegreesCelsius, 6);
        Assert.Null(OverloadHeating.CyclicBand(Wire14, Air(40), A(300), S(0.1), S(0.1)));
        Assert.Null(OverloadHeating.CyclicBand(Wire14, Air(40), A(300), S(100), S(1e5)));
    }

    [Fact]
    public void PublicMembers_BadArguments_NameTheParameter()
    {
        Assert.Throws<ArgumentNullException>("wire", () => OverloadHeating.TimeToReach(null!, Air(), A(1), C(70)));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => OverloadHeating.TimeToReach(Wire14, Air(), A(1), C(1084)));
        Assert.Throws<ArgumentOutOfRangeException>("initial", () => OverloadHeating.TimeToReach(Wire14, Air(), A(1), C(-71), C(70)));
        Assert.Throws<ArgumentOutOfRangeException>("current", () => OverloadHeating.TimeToReach(Wire14, Air(), A(-1), C(70)));
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => OverloadHeating.CurrentToReach(Wire14, Air(), C(70), S(0)));
        Assert.Throws<ArgumentOutOfRangeException>("duration", () => OverloadHeating.TemperatureAfter(Wire14, Air(), A(1), S(-1)));
        Assert.Throws<ArgumentOutOfRangeException>("on", () => OverloadHeating.CyclicBand(Wire14, Air(), A(1), S(0), S(1)));
        Assert.Throws<ArgumentOutOfRangeException>("off", () => OverloadHeating.CyclicBand(Wire14, Air(), A(1), S(1), S(0)));
    }

    /// <summary>One order in every room: the start comes before the limit, as in the adiabatic formula. The wrong one once gave 0 s here.</summary>
    [Fact]
    public void TimeToReach_StartAfterLimit_IsRefusedAsInTheAdiabaticFormula()
    {
        ArgumentOutOfRangeException here = Assert.Throws<ArgumentOutOfRangeException>("limit", () => OverloadHeating.TimeToReach(Wire14, Air(40), A(60), C(160), C(70)));
        Assert.Contains("at least the 160 °C that the wire starts at; it was 70 °C", here.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => AdiabaticHeating.TimeToReach(Wire14.Conductor, A(60), C(160), C(70)));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => OverloadHeating.CurrentToReach(Wire14, Air(40), C(160), C(70), S(1)));
        double slow = OverloadHeating.TimeToReach(Wire14, Air(40), A(3000), C(70), C(160))!.Value.Seconds;
        Assert.Equal(1, slow / AdiabaticHeating.TimeToReach(Wire14.Conductor, A(3000), C(70), C(160)).Seconds, 1e-3);
    }

    [Fact]
    public void GaussKronrod_KnownIntegrals_AreExact()
    {
        Assert.Equal(2, GaussKronrod.Integrate(new Sine(), 0, Math.PI, 1e-10), 14);
        Assert.Equal(-2, GaussKronrod.Integrate(new Sine(), Math.PI, 0, 1e-10), 14);
        Assert.Equal(2 - Math.Log(2), 2 - GaussKronrod.Integrate(new Reciprocal(), 1, 2, 1e-10), 14);

        // A pole close to the end needs many halvings: ln(1e9).
        Assert.Equal(Math.Log(1e9), GaussKronrod.Integrate(new Reciprocal(), 1e-9, 1, 1e-10), 8);
    }

    private readonly struct Sine : IScalarFunction
    {
        public double Evaluate(double x) => Math.Sin(x);
    }

    private readonly struct Reciprocal : IScalarFunction
    {
        public double Evaluate(double x) => 1 / x;
    }

    private static double Integrate(Wire wire, Surroundings air, double amperes, double from, double seconds)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, air);
        double capacity = 3.45e6 * wire.Conductor.EffectiveAreaSquareMillimeters * 1e-6;
        double[] path = RungeKutta.FourthOrder(
            from,
            0,
            seconds,
            4001,
            (_, hot) => ((amperes * amperes * wire.Conductor.OhmsPerMeterAt(hot)) - heat.Loss(Bisect(heat, hot), out double _)) / capacity);
        return path[^1];
    }

    // A surface temperature found without the kernel's own solver.
    private static double Bisect(HeatBalanceKernel heat, double conductor)
    {
        double low = Math.Min(conductor, heat.NoLoadCelsius), high = Math.Max(conductor, heat.NoLoadCelsius);
        for (int i = 0; i < 60; i++)
        {
            double middle = 0.5 * (low + high);
            if (middle + (heat.InnerResistance * heat.Loss(middle, out _)) < conductor)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return 0.5 * (low + high);
    }
}
