using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A fault whose return also carries others' constant current, against an integration in time of both conductors.</summary>
public class SharedReturnFaultTests
{
    private static readonly TimeCurrentCurve Ten = FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(10)).Curve!;

    /// <summary>A shared return once did not heat: 3.80 s where its own conductor gave 5.03 s, and an integration 5.77 s.</summary>
    [Fact]
    public void Latest_ThinSharedReturn_IsNotEarlierThanOneOfItsOwn()
    {
        FaultPath own = Loop(0), shared = Loop(0.1);
        double alone = FaultClearing.Latest(own, Ten).State!.Time.Seconds, together = FaultClearing.Latest(shared, Ten).State!.Time.Seconds;
        Assert.True(together > alone, $"{together} s, alone {alone} s");
        double integrated = Integrate(0.1);
        Assert.InRange(together, integrated * (1 - 1e-5), integrated * 1.02);
    }

    [Theory]
    [InlineData(0.0, 1.00002)]
    [InlineData(0.02, 1.01)]
    [InlineData(0.05, 1.02)]
    [InlineData(0.3, 1.1)]
    [InlineData(0.6, 1.4)]
    public void Latest_OthersCurrent_IsNeverEarlierThanTheIntegrationAndNear(double others, double near)
    {
        FaultOpening latest = FaultClearing.Latest(Loop(others), Ten);
        Assert.Equal(FaultOutcome.Opens, latest.Outcome);
        double integrated = Integrate(others);
        Assert.InRange(latest.State!.Time.Seconds, integrated * (1 - 1e-5), integrated * near);
    }

    [Fact]
    public void Latest_OthersTakeTheVoltage_NeedNotOpen()
    {
        FaultPath path = Loop(20);
        Assert.Equal(FaultOutcome.NeedNotOpen, FaultClearing.Latest(path, Ten).Outcome);
        FaultSegment segment = path.Segments[1];
        Assert.Equal(20, segment.OtherCurrent.Amperes);
        Assert.Equal(0, path.Segments[0].OtherCurrent.Amperes);
        Assert.Throws<ArgumentOutOfRangeException>("others", () => segment.Sharing(A(-1)));
    }

    [Fact]
    public void Transient_OthersCurrent_IsRefused()
    {
        Assert.Throws<ArgumentException>("path", () => FaultTransient.StateAfter(Loop(0.1), S(1)));
        Assert.Throws<ArgumentException>("path", () => FaultTransient.TimeToReach(Loop(0.1), C(100)));
        Assert.Equal(FaultOutcome.Opens, FaultClearing.Soonest(Loop(0.1), Ten).Outcome);
    }

    // 12 V behind 20 mΩ, 7 m out and 12.5 m back of 0.75 mm² (0.978 mm), starting at 70 °C.
    private static FaultPath Loop(double others) => FaultPath.Create(
        FaultCase.V(12), FaultCase.M(20), FaultCase.Segment(6.7, 0.97721, 70), FaultCase.Segment(12.5, 0.97721, 70).Sharing(A(others)));

    /// <summary>The rule of the latest clearing on the true course: MathNet's Runge-Kutta on the temperature of both conductors and the Joule integral.</summary>
    private static double Integrate(double others)
    {
        const double Until = 60;
        const int Steps = 240_001;
        double rho = 1e-6 / 58, area = 0.25 * Math.PI * 0.97721 * 0.97721 * 1e-6, perMeter20 = rho / area, capacity = 3.45e6 * area;
        double PerMeter(double celsius) => perMeter20 * (1 + (0.00393 * (celsius - 20)));
        double Amperes(double outward, double back) =>
            (12 - (others * 12.5 * PerMeter(back))) / (0.02 + (6.7 * PerMeter(outward)) + (12.5 * PerMeter(back)));
        Assert.Equal(3.45e6, LowVoltage.Calc.Conductors.ConductorMaterial.Copper.HeatCapacityJoulesPerCubicMeterKelvin, 1e4);
        Vector<double>[] course = RungeKutta.FourthOrder(Vector<double>.Build.Dense([70, 70, 0]), 0, Until, Steps, (_, y) =>
        {
            double amperes = Amperes(y[0], y[1]), both = amperes + others;
            return Vector<double>.Build.Dense(
                [amperes * amperes * PerMeter(y[0]) / capacity, both * both * PerMeter(y[1]) / capacity, amperes * amperes]);
        });
        double before = -1;
        for (int i = 0; i < Steps; i++)
        {
            double amperes = Amperes(course[i][0], course[i][1]);
            if (!Ten.TryLongestSeconds(amperes, out double longest))
            {
                break;
            }

            double surplus = (course[i][2] / (amperes * amperes * longest)) - 1;
            if (surplus >= 0)
            {
                // Straight between the two steps.
                return (i - (surplus / (surplus - before))) * Until / (Steps - 1);
            }

            before = surplus;
        }

        throw new InvalidOperationException("It does not open.");
    }
}
