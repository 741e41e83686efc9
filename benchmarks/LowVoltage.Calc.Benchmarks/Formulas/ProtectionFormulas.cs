using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Benchmarks.Formulas;

[Formula("FuseLoading.LeastRatingFor", "I/f", 1)]
public readonly struct LeastRating : IUnitsFormula
{
    public double Raw(Case x) => x.Amperes / 0.75;

    public double UnitsNet(Case x) => (x.Current / 0.75).Amperes;

    public double Typed(Case x) => FuseLoading.LeastRatingFor(x.Current, 0.75).Amperes;
}

[Formula("PulseShape.Rectangle", "Î²·t", 2)]
public readonly struct PulseRectangle : IFormula
{
    public double Raw(Case x) => x.MoreAmperes * x.MoreAmperes * x.Seconds;

    public double Typed(Case x) => PulseShape.Rectangle(x.MoreCurrent, x.Duration).AmpereSquaredSeconds;
}

[Formula("PulseShape.HalfSine", "Î²·t/2", 2)]
public readonly struct PulseHalfSine : IFormula
{
    public double Raw(Case x) => x.MoreAmperes * x.MoreAmperes / 2 * x.Seconds;

    public double Typed(Case x) => PulseShape.HalfSine(x.MoreCurrent, x.Duration).AmpereSquaredSeconds;
}

[Formula("PulseShape.Triangle", "Î²·t/3", 2)]
public readonly struct PulseTriangle : IFormula
{
    public double Raw(Case x) => x.MoreAmperes * x.MoreAmperes / 3 * x.Seconds;

    public double Typed(Case x) => PulseShape.Triangle(x.MoreCurrent, x.Duration).AmpereSquaredSeconds;
}

[Formula("PulseShape.Parabola", "Î²·t/5", 2)]
public readonly struct PulseParabola : IFormula
{
    public double Raw(Case x) => x.MoreAmperes * x.MoreAmperes / 5 * x.Seconds;

    public double Typed(Case x) => PulseShape.Parabola(x.MoreCurrent, x.Duration).AmpereSquaredSeconds;
}

[Formula("PulseShape.Exponential", "Î²·τ/2", 2)]
public readonly struct PulseExponential : IFormula
{
    public double Raw(Case x) => x.MoreAmperes * x.MoreAmperes / 2 * x.Seconds;

    public double Typed(Case x) => PulseShape.Exponential(x.MoreCurrent, x.Duration).AmpereSquaredSeconds;
}

[Formula("PulseShape.Trapezoid", "(Ib² + Ib·Î + Î²)/3·t", 3)]
public readonly struct PulseTrapezoid : IFormula
{
    public double Raw(Case x) => ((x.Amperes * x.Amperes) + (x.Amperes * x.MoreAmperes) + (x.MoreAmperes * x.MoreAmperes)) / 3 * x.Seconds;

    public double Typed(Case x) => PulseShape.Trapezoid(x.Current, x.MoreCurrent, x.Duration).AmpereSquaredSeconds;
}

[Formula("PulseWithstand.LeastMeltingFor", "I²t over the share for that many pulses", 0)]
public readonly struct LeastMelting : IFormula
{
    public double Raw(Case x) => x.AmpereSquaredSeconds / 0.29;

    public double Typed(Case x) => PulseWithstand.LeastMeltingFor(x.Joule, 10_000).AmpereSquaredSeconds;
}

[Formula("AmbientRerating.FactorAt", "linear between two points", 1)]
public readonly struct ReratingFactor : IFormula
{
    public double Raw(Case x)
    {
        double share = (x.HotCelsius - 25) / (85 - 25);
        return (1.00 * (1 - share)) + (0.70 * share);
    }

    public double Typed(Case x) => AmbientRerating.SpaceHardware.FactorAt(x.Hot);
}

[Formula("FuseSeries.SmallestAtLeast", "the first rating at or above a current", 1, Baseline = "a loop over the ratings, by hand")]
public readonly struct SmallestFuse : IFormula
{
    private static readonly double[] Ratings = [.. FuseSeries.RoadVehicleBlade.Ratings.Select(fuse => fuse.Current.Amperes)];

    public double Raw(Case x)
    {
        foreach (double rating in Ratings)
        {
            if (rating >= x.Amperes)
            {
                return rating;
            }
        }

        return double.NaN;
    }

    public double Typed(Case x) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(x.Current).Current.Amperes;
}

[Formula("TimeCurrentCurve.LongestTime", "t on a curve that is straight on logarithmic axes", 1, Baseline = "kernel")]
public readonly struct LongestTime : IFormula
{
    private static readonly TimeCurrentCurve Curve = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10)).Curve!;

    public double Raw(Case x) => Curve.TryLongestSeconds(x.MoreAmperes, out double seconds) ? seconds : double.NaN;

    public double Typed(Case x) => Curve.LongestTime(x.MoreCurrent)!.Value.Seconds;
}

[Formula("FuseLoading.MostLoadFor", "Ir·f", 0)]
public readonly struct MostLoad : IFormula
{
    private static readonly FuseRating Fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10));

    public double Raw(Case x) => 10 * (x.Percent / 100);

    public double Typed(Case x) => FuseLoading.MostLoadFor(Fuse, x.Percent / 100).Amperes;
}

[Formula("FuseRating.OperatingTime, longest", "both times on the fuse's curve", 1, Baseline = "kernel, the longest alone")]
public readonly struct OperatingTime : IFormula
{
    private static readonly FuseRating Fuse = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10));

    public double Raw(Case x) => Fuse.Curve!.TryLongestSeconds(x.MoreAmperes, out double seconds) ? seconds : double.NaN;

    public double Typed(Case x) => Fuse.OperatingTime(x.MoreCurrent).Longest.Seconds;
}

[Formula("SmallCraftInterrupting.MainDevice", "one of three by the cranking current", 1, Baseline = "by hand")]
public readonly struct MainDevice : IFormula
{
    public double Raw(Case x) => x.FaultAmperes <= 650 ? 1500 : x.FaultAmperes <= 1100 ? 3000 : 5000;

    public double Typed(Case x) => SmallCraftInterrupting.MainDevice(x.Fault).Amperes;
}

[Formula("PulseAgainstFuse.Check, share", "I²t over the share of the melting integral, with its sentence", 0, Baseline = "the formula alone")]
public readonly struct PulseShare : IFormula
{
    private static readonly JouleIntegral Melting = JouleIntegral.FromAmpereSquaredSeconds(2000);

    public double Raw(Case x) => x.AmpereSquaredSeconds / (0.29 * 2000);

    public double Typed(Case x) => PulseAgainstFuse.Check(Melting, x.Joule, 10_000).Share!.Value;
}

[Formula("OverloadCoordination.Check, share", "If/(1.45·Iz), with its sentence", 2, Baseline = "the formula alone")]
public readonly struct OverloadShare : IFormula
{
    private static readonly FuseRating Fuse = FuseSeries.IndustrialGg.SmallestAtLeast(ElectricCurrent.FromAmperes(16));
    private static readonly double Fusing = Fuse.Curve!.FusingAmperes;

    public double Raw(Case x) => Fusing / (1.45 * x.MoreAmperes);

    public double Typed(Case x) => OverloadCoordination.Check(Fuse, x.Current, x.MoreCurrent).Share!.Value;
}

[Formula("FuseAgainstFuse.RatioRule, share", "2·I₂/I₁, with its sentence", 0, Baseline = "the formula alone")]
public readonly struct RatioRuleShare : IFormula
{
    private static readonly FuseRating Upstream = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(30));
    private static readonly FuseRating Downstream = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10));

    public double Raw(Case x) => 2 / (30.0 / 10);

    public double Typed(Case x) => FuseAgainstFuse.RatioRule(Upstream, Downstream).Share!.Value;
}
