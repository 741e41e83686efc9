using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Tests.Validation;
using static LowVoltage.Calc.Tests.Docs.Tables.MarkdownTable;

namespace LowVoltage.Calc.Tests.Docs.Tables;

internal static class FuseTables
{
    public static string Series()
    {
        MarkdownTable table = new("series", "ratings", "from", "to", "voltage", "breaking capacity", "ratings with operating times");
        foreach (FuseSeries series in FuseSeriesTablesTests.Series.Values)
        {
            IReadOnlyList<FuseRating> ratings = series.Ratings;
            table.Row(
                series.Name, Number(ratings.Count), Number(ratings[0].Current.Amperes) + " A", Number(ratings[^1].Current.Amperes) + " A",
                series.VoltageRating is { } volts ? $"{Number(volts.Volts)} V {Basis(series.VoltageBasis)}" : "by rating or not stated",
                series.BreakingCapacity is { } amperes ? $"{Number(amperes.Amperes)} A {Basis(series.BreakingCapacityBasis)}" : "by rating or not stated",
                Number(ratings.Count(rating => rating.Curve is not null)));
        }

        return table.ToString();
    }

    public static string BladeTimes()
    {
        MarkdownTable table = new("blade fuse, ISO 8820-3 type C", "opens no sooner than", "opens no later than");
        FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10));
        foreach (double percent in new[] { 110.0, 135, 160, 200, 350, 600 })
        {
            ElectricCurrent current = ElectricCurrent.FromAmperes(10 * percent / 100);
            table.Row(
                Number(percent) + " %",
                fuse.Curve!.ProvenLeastTime(current) is { } least ? Number(least.Seconds, "0.###") + " s" : "not stated",
                fuse.Curve.LongestTime(current) is { } longest ? Number(longest.Seconds, "0.###") + " s" : "need not open");
        }

        return table.ToString();
    }

    /// <summary>The tightest point that is found against the least ratio of twenty thousand currents tried one by one.</summary>
    public static string AgainstWire()
    {
        MarkdownTable table = new("wire, PVC, 30 °C air", "blade fuse", "verdict", "tightest current", "time ratio", "least of 20 000 tried");
        foreach ((double section, double rating) in new[] { (0.5, 3.0), (0.5, 10), (1, 10), (1.5, 15), (2.5, 20), (2.5, 30) })
        {
            Conductor conductor = Conductor.Iso6722(MetricSize.FromSquareMillimeters(section));
            Wire wire = Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, InsulationWall.UsualFor(conductor));
            Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(30) };
            FuseRating fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(rating));
            WireProtection found = FuseAgainstWire.Check(fuse, ProtectedWire.Create(wire, air), ElectricCurrent.FromAmperes(1000));
            table.Row(
                Number(section) + " mm²", Number(rating) + " A", Words(found.Verdict),
                found.TightestCurrent is { } tightest ? Number(tightest.Amperes) + " A" : "",
                found.Regime == ProtectionRegime.Sustained ? "need not open" : Number(found.TimeRatio, "G3"),
                found.Regime == ProtectionRegime.Sustained ? "" : Number(LeastTried(wire, air, fuse, 1000), "G3"));
        }

        return table.ToString();
    }

    public static string AgainstFuse()
    {
        double[] ratings = [5, 7.5, 10, 15, 20, 25, 30];
        FuseSeries high = FuseSeries.RoadVehicleHighCurrentBlade;
        MarkdownTable table = new(["upstream, high-current blade", .. ratings.Select(rating => Number(rating) + " A blade")]);
        foreach (FuseRating upstream in high.Ratings.Where(rating => rating.Curve is not null))
        {
            table.Row([Number(upstream.Current.Amperes) + " A", .. ratings.Select(rating => Cell(upstream, rating))]);
        }

        return table.ToString();
    }

    public static string Pulses()
    {
        MarkdownTable table = new("pulse of 20 A peak", "length or time constant", "Joule integral", "numerical integral");
        ElectricCurrent peak = ElectricCurrent.FromAmperes(20);
        Duration t = Duration.FromSeconds(0.05);
        (string Name, JouleIntegral Closed, Func<double, double> Current, double End)[] shapes =
        [
            ("rectangle", PulseShape.Rectangle(peak, t), _ => 20, 0.05),
            ("half sine", PulseShape.HalfSine(peak, t), s => 20 * Math.Sin(Math.PI * s / 0.05), 0.05),
            ("triangle", PulseShape.Triangle(peak, t), s => 20 * s / 0.05, 0.05),
            ("trapezoid from 5 A", PulseShape.Trapezoid(ElectricCurrent.FromAmperes(5), peak, t), s => 5 + (15 * s / 0.05), 0.05),
            ("exponential", PulseShape.Exponential(peak, t), s => 20 * Math.Exp(-s / 0.05), 1),
        ];
        foreach ((string name, JouleIntegral closed, Func<double, double> current, double end) in shapes)
        {
            double numerical = MathNet.Numerics.Integration.GaussLegendreRule.Integrate(s => current(s) * current(s), 0, end, 64);
            table.Row(name, "50 ms", Number(closed.AmpereSquaredSeconds) + " A²s", Number(numerical) + " A²s");
        }

        return table.ToString();
    }

    private static string Cell(FuseRating upstream, double rating)
    {
        FuseSelectivity check = FuseAgainstFuse.Check(upstream, FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(rating)), ElectricCurrent.FromAmperes(1000));
        return check.Verdict switch
        {
            Selectivity.Proven => "proven",
            Selectivity.Disproven => "disproven",
            _ => check.Current is { } current ? $"up to {Number(current.Amperes, "G4")} A" : "not proven",
        };
    }

    private static double LeastTried(Wire wire, Surroundings air, FuseRating fuse, double prospective)
    {
        double limit = wire.Insulation.ContinuousLimit.DegreesCelsius, fault = wire.Insulation.ShortCircuitLimit.DegreesCelsius;
        double overload = Math.Min(limit + OverloadAllowance.Ageing240Hours.Opened.Kelvins, fault);
        double first = fuse.Curve!.FusingCurrent.Amperes, least = double.PositiveInfinity;
        for (int i = 0; i <= 20_000; i++)
        {
            ElectricCurrent current = ElectricCurrent.FromAmperes(first * Math.Pow(prospective / first, i / 20_000.0));
            double opens = fuse.Curve.LongestTime(current)?.Seconds ?? fuse.Curve.LongestTime(ElectricCurrent.FromAmperes(current.Amperes * (1 + 1e-9)))!.Value.Seconds;
            Temperature allowed = Temperature.FromDegreesCelsius(opens > 5 ? overload : fault);
            double survives = OverloadHeating.TimeToReach(wire, air, current, wire.Insulation.ContinuousLimit, allowed)?.Seconds ?? double.PositiveInfinity;
            least = Math.Min(least, survives / opens);
        }

        return least;
    }

    private static string Words(ProtectionVerdict verdict) => verdict switch
    {
        ProtectionVerdict.Protected => "protected",
        ProtectionVerdict.NotProtected => "not protected",
        _ => "not evaluated",
    };

    private static string Basis(RatingBasis basis) => basis switch
    {
        RatingBasis.DirectCurrent => "d.c.",
        RatingBasis.AlternatingCurrent => "a.c.",
        _ => "basis not stated",
    };
}
