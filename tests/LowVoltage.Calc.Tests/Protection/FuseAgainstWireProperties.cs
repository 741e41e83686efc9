using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>A wire, a fuse and a fault drawn at random; Share picks a current of the range.</summary>
public sealed record ProtectionCase(
    double Density, double Wall, int Insulation, double Ambient, double StartShare, int Series, int Rating, double Prospective, double Share, int Allowance)
{
    private static readonly InsulationMaterial[] Insulations =
    [
        InsulationMaterial.PolyvinylChloride, InsulationMaterial.CrossLinkedPolyethylene, InsulationMaterial.SiliconeRubber, InsulationMaterial.Etfe,
        InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B), InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C),
    ];

    private static readonly FuseSeries[] AllSeries =
    [
        FuseSeries.RoadVehicleBlade, FuseSeries.RoadVehicleSmallBlade, FuseSeries.RoadVehicleHighCurrentBlade, FuseSeries.IndustrialGg,
        FuseSeries.Iec60127Sheet2, FuseSeries.RoadVehicleStrip51.WithLimits(OperatingTimeLimits.RoadVehicleStrip),
    ];

    private static readonly OverloadAllowance[] Allowances =
        [OverloadAllowance.None, OverloadAllowance.Ageing240Hours, OverloadAllowance.Ageing6Hours];

    public FuseRating Fuse
    {
        get
        {
            FuseRating[] known = [.. AllSeries[Series].Ratings.Where(r => r.Curve is not null)];
            return known[Rating % known.Length];
        }
    }

    /// <summary>A section that the rating loads with the drawn current density, so that many cases lie near the limit of protection.</summary>
    public double Diameter => Math.Max(0.2, Math.Sqrt(4 / Math.PI * Fuse.Current.Amperes / Density));

    public ProtectedWire Wire
    {
        get
        {
            InsulationMaterial insulation = Insulations[Insulation];
            double limit = insulation.ContinuousLimit.DegreesCelsius;
            return ProtectedWire.Create(Solid(Diameter, Wall, insulation), Air(Ambient))
                .StartingAt(C(Ambient + (StartShare * (limit - Ambient)))).With(Allowances[Allowance]);
        }
    }

    public double ProspectiveAmperes => Prospective * Fuse.Current.Amperes;
}

public static class ProtectionCases
{
    public static Arbitrary<ProtectionCase> Case() => (
        from density in AdiabaticCases.LogUniform(1.5, 20)
        from wall in AdiabaticCases.LogUniform(0.15, 2)
        from insulation in Gen.Choose(0, 5)
        from ambient in Gen.Choose(-40, 69)
        from start in Gen.Choose(0, 100)
        from series in Gen.Choose(0, 5)
        from rating in Gen.Choose(0, 1000)
        from prospective in AdiabaticCases.LogUniform(1.1, 300)
        from share in Gen.Choose(0, 1000)
        from allowance in Gen.Choose(0, 2)
        select new ProtectionCase(density, wall, insulation, ambient, start / 100.0, series, rating, prospective, share / 1000.0, allowance)).ToArbitrary();
}

[Properties(Arbitrary = [typeof(ProtectionCases)], MaxTest = 4000)]
public class FuseAgainstWireProperties
{
    /// <summary>Protected means protected: the heat balance integrated in time at a current of the range never passes the limit before the fuse opens.</summary>
    [Property]
    public bool Protected_AtAnyCurrentOfTheRange_NeverPassesTheLimit(ProtectionCase c)
    {
        WireProtection outcome = FuseAgainstWire.Check(c.Fuse, c.Wire, A(c.ProspectiveAmperes));
        if (outcome.Verdict != ProtectionVerdict.Protected)
        {
            return true;
        }

        WireLimits wire = c.Wire.Limits();
        double least = 0.5 * c.Fuse.Curve!.FusingAmperes;
        double amperes = c.Share == 1 ? c.ProspectiveAmperes : least * Math.Pow(c.ProspectiveAmperes / least, c.Share);
        bool opens = c.Fuse.TryLongestSeconds(amperes, out double seconds);
        double limit = !opens ? wire.SustainedCelsius : seconds > 5 ? wire.OverloadCelsius : wire.ShortCircuitCelsius;
        double hottest = Hottest(c, amperes, opens ? seconds : 1e7, wire.StartCelsius);
        return hottest <= limit + (1e-6 * (limit - wire.StartCelsius)) + 1e-6;
    }

    /// <summary>The drawn cases hold enough of every outcome for the properties to mean something.</summary>
    [Fact]
    public void Cases_HoldEveryOutcome()
    {
        WireProtection[] outcomes = [.. ProtectionCases.Case().Generator.Sample(4000).Select(c => FuseAgainstWire.Check(c.Fuse, c.Wire, A(c.ProspectiveAmperes)))];
        Assert.True(outcomes.Count(o => o.Verdict == ProtectionVerdict.Protected && o.TimeRatio < 20) > 20);
        Assert.True(outcomes.Count(o => o.Verdict == ProtectionVerdict.NotProtected && o.Regime == ProtectionRegime.Overload) > 20);
        Assert.True(outcomes.Count(o => o.Verdict == ProtectionVerdict.NotProtected && o.Regime == ProtectionRegime.Sustained) > 20);
        Assert.True(outcomes.Count(o => o.Regime == ProtectionRegime.ShortCircuit) > 20);
    }

    /// <summary>Not protected means that it fails where it says: there the wire passes the limit before the longest time is over.</summary>
    [Property]
    public bool NotProtected_AtTheTightestCurrent_PassesTheLimit(ProtectionCase c)
    {
        WireProtection outcome = FuseAgainstWire.Check(c.Fuse, c.Wire, A(c.ProspectiveAmperes));
        if (outcome.Verdict == ProtectionVerdict.NotEvaluated)
        {
            return c.Fuse.FaultCurve is null;
        }

        if (outcome.Verdict != ProtectionVerdict.NotProtected)
        {
            return outcome.Verdict == ProtectionVerdict.Protected && outcome.TimeRatio >= 1;
        }

        double limit = outcome.Limit!.Value.DegreesCelsius;
        bool hotter = outcome.TemperatureReached is not { } reached || reached.DegreesCelsius >= limit - 1e-4;
        double hottest = Hottest(c, outcome.TightestCurrent!.Value.Amperes, outcome.FuseTime?.Seconds ?? 1e7, c.Wire.Limits().StartCelsius);
        return hotter && outcome.TimeRatio < 1 && hottest >= limit - 1e-3;
    }

    /// <summary>The search's yes or no is that of the least ratio, for wires free in air and for wires of a stated continuous current.</summary>
    [Property]
    public bool Protects_IsTheVerdict(ProtectionCase c)
    {
        if (c.Fuse.Curve is not { } curve)
        {
            return true;
        }

        WireLimits free = c.Wire.Limits(), cooled = c.Wire.Carrying(A(c.Fuse.Current.Amperes * (0.7 + c.Share))).Limits();
        return FuseAgainstWireKernel.Protects(free, curve, c.ProspectiveAmperes) == (FuseAgainstWireKernel.Verdict(free, curve, c.ProspectiveAmperes).Ratio >= 1)
            && FuseAgainstWireKernel.Protects(cooled, curve, c.ProspectiveAmperes) == (FuseAgainstWireKernel.Verdict(cooled, curve, c.ProspectiveAmperes).Ratio >= 1);
    }

    /// <summary>The least ratio is the least: no current of the range has a smaller one.</summary>
    [Property]
    public bool TightestCurrent_HasTheLeastRatio(ProtectionCase c)
    {
        WireProtection outcome = FuseAgainstWire.Check(c.Fuse, c.Wire, A(c.ProspectiveAmperes));
        double first = c.Fuse.Curve!.FusingAmperes;
        if (outcome.Regime == ProtectionRegime.Sustained || c.ProspectiveAmperes < first)
        {
            return true;
        }

        double amperes = first * Math.Pow(c.ProspectiveAmperes / first, c.Share);
        _ = c.Fuse.TryLongestSeconds(amperes, out double seconds);
        WireLimits wire = c.Wire.Limits();
        double limit = seconds > 5 ? wire.OverloadCelsius : wire.ShortCircuitCelsius;

        // At its limit from the start: the time is nothing, or indefinitely where the current is carried.
        bool stays = wire.StartCelsius >= limit && wire.Heat.AmperesFor(limit) >= amperes;
        double time = stays ? double.PositiveInfinity : OverloadHeating.Seconds(wire.Heat, wire.Capacity, amperes, wire.StartCelsius, limit);
        return time / seconds >= outcome.TimeRatio * (1 - 1e-5);
    }

    /// <summary>The quick verdict for a search over fuses is that of the full one.</summary>
    [Property]
    public bool Verdict_IsThatOfTheFullSearch(ProtectionCase c)
    {
        TightestPoint quick = FuseAgainstWireKernel.Verdict(c.Wire.Limits(), c.Fuse.Curve!, c.ProspectiveAmperes);
        TightestPoint full = FuseAgainstWireKernel.Tightest(c.Wire.Limits(), c.Fuse.Curve!, c.ProspectiveAmperes);
        return (quick.Ratio >= 1) == (full.Ratio >= 1) && (double.IsInfinity(full.Ratio) ? double.IsInfinity(quick.Ratio) : quick.Ratio <= full.Ratio * (1 + 1e-5));
    }

    [Property]
    public bool AHotterStart_NeverProtectsBetter(ProtectionCase c)
    {
        WireProtection cold = FuseAgainstWire.Check(c.Fuse, c.Wire, A(c.ProspectiveAmperes));
        WireProtection hot = FuseAgainstWire.Check(c.Fuse, ProtectedWire.Create(c.Wire.Wire, c.Wire.Surroundings).With(c.Wire.Allowance), A(c.ProspectiveAmperes));
        return c.Fuse.FaultCurve is null || hot.TimeRatio <= cold.TimeRatio * (1 + 1e-5) && (cold.Verdict == ProtectionVerdict.Protected || hot.Verdict == ProtectionVerdict.NotProtected);
    }

    [Property]
    public bool PoorerCooling_NeverProtectsBetter(ProtectionCase c)
    {
        double free = HeatBalance.CurrentFor(c.Wire.Wire, c.Wire.Surroundings, c.Wire.Wire.Insulation.ContinuousLimit).Amperes;
        ProtectedWire bundled = c.Wire.Carrying(A((0.2 + (0.8 * c.Share)) * free));
        WireProtection alone = FuseAgainstWire.Check(c.Fuse, c.Wire, A(c.ProspectiveAmperes));
        WireProtection together = FuseAgainstWire.Check(c.Fuse, bundled, A(c.ProspectiveAmperes));
        return c.Fuse.FaultCurve is null || alone.Verdict == ProtectionVerdict.Protected || together.Verdict == ProtectionVerdict.NotProtected
            || bundled.ContinuousCurrent!.Value.Amperes > 0.99 * free;
    }

    [Property]
    public bool AThickerConductor_InTheSameWall_IsNeverProtectedWorse(ProtectionCase c)
    {
        ProtectionCase thicker = c with { Density = c.Density / 1.4 };
        return FuseAgainstWire.Check(c.Fuse, c.Wire, A(c.ProspectiveAmperes)).Verdict != ProtectionVerdict.Protected
            || FuseAgainstWire.Check(c.Fuse, thicker.Wire, A(c.ProspectiveAmperes)).Verdict == ProtectionVerdict.Protected;
    }

    /// <summary>The table's time is a lower bound, and a close one.</summary>
    [Property]
    public bool OverloadTable_NeverOverstatesTheTime(ProtectionCase c)
    {
        WireLimits wire = c.Wire.Limits();
        double limit = wire.ShortCircuitCelsius;
        if (wire.StartCelsius >= limit)
        {
            return true;
        }

        OverloadTable table = new(new double[OverloadTable.DoublesFor(10)], wire.Heat, wire.Capacity, wire.StartCelsius, limit);
        double amperes = table.SteadyAmperes * (1.0001 + (c.Prospective * c.Share));
        double exact = OverloadHeating.Seconds(wire.Heat, wire.Capacity, amperes, wire.StartCelsius, limit);
        double found = table.Seconds(amperes);
        return found <= exact * (1 + 1e-7) && found >= exact * 0.99;
    }

    /// <summary>Fourth-order Runge-Kutta in time on the surface temperature; stops when nothing changes any more.</summary>
    private static double Hottest(ProtectionCase c, double amperes, double seconds, double start)
    {
        Wire wire = c.Wire.Wire;
        HeatBalanceKernel heat = HeatBalanceKernel.For(wire, c.Wire.Surroundings);
        double capacity = 3.45e6 * wire.Conductor.EffectiveAreaSquareMillimeters * 1e-6;
        double Rate(double u)
        {
            double loss = heat.Loss(u, out double slope);
            double power = (amperes * amperes * heat.OhmsPerMeterAt(u + (heat.InnerResistance * loss))) - loss;
            return power / (capacity * (1 + (heat.InnerResistance * slope)));
        }

        double hot = heat.SurfaceFor(start), hottest = hot, step = Math.Min(seconds / 200, 0.05 * capacity / (Math.PI * heat.Diameter * 40));
        int steps = (int)Math.Min(200_000, Math.Ceiling(seconds / step));
        step = steps < 200_000 ? seconds / steps : step;
        for (int i = 0; i < steps; i++)
        {
            double k1 = Rate(hot), k2 = Rate(hot + (0.5 * step * k1)), k3 = Rate(hot + (0.5 * step * k2)), k4 = Rate(hot + (step * k3));
            double change = step / 6 * (k1 + (2 * k2) + (2 * k3) + k4);
            hot += change;
            hottest = Math.Max(hottest, hot);
            if (Math.Abs(change) < 1e-12 || hot > heat.MostCelsius)
            {
                break;
            }
        }

        return heat.ConductorAt(hottest);
    }
}
