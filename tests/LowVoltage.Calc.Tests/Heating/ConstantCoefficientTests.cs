using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using MathNet.Numerics.Integration;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>A wire that loses heat by a given coefficient: diameter and wall in mm, W/(m²·K), start and limit in °C, current over the one that holds the limit.</summary>
public sealed record ConstantCase(double Diameter, double Wall, double Coefficient, double Start, double Rise, double Times);

public static class ConstantCases
{
    public static Arbitrary<ConstantCase> Case() => (
        from diameter in AdiabaticCases.LogUniform(0.3, 12)
        from wall in AdiabaticCases.LogUniform(0.1, 2)
        from coefficient in AdiabaticCases.LogUniform(1, 60)
        from start in Gen.Choose(25, 120)
        from rise in Gen.Choose(1, 250)
        from times in AdiabaticCases.LogUniform(1.0001, 60)
        select new ConstantCase(diameter, wall, coefficient, start, rise, times)).ToArbitrary();
}

/// <summary>Closed forms where the coefficient of heat transfer is given: the same as a quadrature to 1e-9, in every kernel that has them.</summary>
[Properties(Arbitrary = [typeof(ConstantCases)], MaxTest = 500)]
public class ConstantCoefficientTests
{
    [Property]
    public bool Times_ByLogarithm_AreThoseOfAQuadrature(ConstantCase c)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Solid(c.Diameter, c.Wall), Given(25, c.Coefficient));
        double limit = c.Start + c.Rise, amperes = c.Times * heat.AmperesFor(limit), capacity = OverloadKernel.Capacity(Solid(c.Diameter, c.Wall), InsulationHeat.None);

        // By hand: q = G·(θ − 25)/(1 + W·G), integrated over ln(distance to the settled temperature or to where resistance vanishes) in pieces.
        double conductance = Math.PI * (c.Diameter + (2 * c.Wall)) * 1e-3 * c.Coefficient, apparent = conductance / (1 + (heat.InnerResistance * conductance));
        double Power(double hot) => (amperes * amperes * heat.OhmsPerMeterAt(hot)) - (apparent * (hot - 25));
        double slope = (amperes * amperes * heat.OhmsPerMeter20 * heat.Alpha) - apparent, expected = 0;
        const int Pieces = 40;

        // Steps that shorten with the power see its zero close behind the limit.
        double Place(int i) => Math.Abs(slope) > 1e-12
            ? c.Start + (Power(c.Start) / slope * (Math.Pow(Power(limit) / Power(c.Start), (double)i / Pieces) - 1))
            : c.Start + (c.Rise * (double)i / Pieces);
        for (int i = 0; i < Pieces; i++)
        {
            expected += GaussLegendreRule.Integrate(hot => capacity / Power(hot), Place(i), i == Pieces - 1 ? limit : Place(i + 1), 16);
        }

        double seconds = OverloadHeating.Seconds(heat, capacity, amperes, c.Start, limit);
        OverloadTable table = new(stackalloc double[OverloadTable.DoublesFor(6)], heat, capacity, c.Start, limit);
        return Math.Abs((seconds / expected) - 1) < 1e-9 && Math.Abs((table.Seconds(amperes) / expected) - 1) < 1e-9;
    }

    [Property]
    public bool Temperatures_ByExponential_AreTheInverse(ConstantCase c)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Solid(c.Diameter, c.Wall), Given(25, c.Coefficient));
        double limit = c.Start + c.Rise, amperes = c.Times * heat.AmperesFor(limit), capacity = OverloadKernel.Capacity(Solid(c.Diameter, c.Wall), InsulationHeat.None);
        double seconds = OverloadHeating.Seconds(heat, capacity, amperes, c.Start, limit);
        OverloadKernel overload = new(heat, amperes, capacity, heat.SurfaceFor(c.Start));
        return overload.TryAdvance(seconds, heat.SurfaceFor(heat.MostCelsius), out double surface)
            && Math.Abs(heat.ConductorAt(surface) - limit) < 1e-9 * (1 + c.Rise) * Math.Max(1, seconds / Math.Min(seconds, overload.TimeConstant))
            && Math.Abs(heat.ConductorAt(heat.SurfaceFor(limit)) - limit) < 1e-9;
    }

    /// <summary>The settled temperature by one division: heat made is heat lost.</summary>
    [Property]
    public bool Balance_ByOneDivision_MakesWhatItLoses(ConstantCase c)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Solid(c.Diameter, c.Wall), Given(25, c.Coefficient));
        double amperes = heat.AmperesFor(c.Start + c.Rise);
        return heat.TryBalance(amperes * amperes, out double surface)
            && Math.Abs(heat.ConductorAt(surface) - (c.Start + c.Rise)) < 1e-7
            && heat.TryBalance(1e16, out _) == false;
    }

    /// <summary>The verdict of a search, by closed forms, is that of the exact comparison.</summary>
    [Property]
    public bool Verdict_OfARatedWire_IsTheExactOne(ConstantCase c)
    {
        WireLimits wire = ProtectedWire.Create(Solid(c.Diameter, c.Wall), Air(25)).Carrying(A(0.5 * HeatBalance.CurrentFor(Solid(c.Diameter, c.Wall), Air(25), C(70)).Amperes)).Limits();
        foreach (FuseRating fuse in FuseSeries.RoadVehicleBlade.Ratings.Where(f => f.Curve is not null))
        {
            TightestPoint quick = FuseAgainstWireKernel.Verdict(wire, fuse.Curve!, 800), exact = FuseAgainstWireKernel.Tightest(wire, fuse.Curve!, 800);
            if (quick.Ratio >= 1 != exact.Ratio >= 1)
            {
                return false;
            }
        }

        return wire.Heat.Conductance > 0;
    }

    [Fact]
    public void Cooling_ByExponential_RunsIntoTheAmbient()
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Solid(2, 0.5), Given(25, 12));
        double conductance = Math.PI * 3e-3 * 12, inertia = 10 * (1 + (heat.InnerResistance * conductance));
        OverloadKernel cooling = new(heat, 0, 10, 125);
        Assert.True(cooling.TryAdvance(60, 1000, out double surface));
        Assert.Equal(25 + (100 * Math.Exp(-60 * conductance / inertia)), surface, 1e-9);
        Assert.True(cooling.TryAdvance(1e9, 1000, out surface));
        Assert.Equal(25, surface, 1e-9);
    }
}
