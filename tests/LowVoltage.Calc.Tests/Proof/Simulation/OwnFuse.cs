using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>A fuse or breaker from its published gates, straight in log-log between them.</summary>
internal sealed class OwnFuse
{
    private readonly (double Amperes, double Seconds)[] longest = [];
    private readonly (double Amperes, double Seconds)[] least = [];
    private readonly (double Amperes, double Seconds)? carried;

    public OwnFuse(FuseRating fuse)
    {
        Amperes = fuse.Current.Amperes;
        Volts = fuse.VoltageBasis == RatingBasis.DirectCurrent ? fuse.VoltageRating?.Volts : null;
        Breaks = fuse.BreakingCapacityBasis == RatingBasis.DirectCurrent ? fuse.BreakingCapacity?.Amperes : null;
        IsGg = fuse.Series.Limits == OperatingTimeLimits.IndustrialGg;
        if (fuse.Curve is null)
        {
            return;
        }

        if (fuse.Series.Limits is not { } limits)
        {
            // The only curve of a caller here is the invented breaker's.
            IsBreaker = true;
            longest = [.. OwnBreaker.Longest.Select(point => (point.Multiple * Amperes, point.Seconds))];
            least = [.. OwnBreaker.Least.Select(point => (point.Multiple * Amperes, point.Seconds))];
            return;
        }

        OperatingTimeGate[] gates = [.. limits.Gates.Where(gate => gate.LeastRating.Amperes <= Amperes && gate.MostRating.Amperes >= Amperes)];
        longest = [.. gates.Where(gate => !gate.IsNonFusing && gate.Longest is not null).Select(gate => (At(gate), gate.Longest!.Value.Seconds)).OrderBy(point => point.Item1)];
        least = [.. gates.Where(gate => !gate.IsNonFusing && gate.Least is not null).Select(gate => (At(gate), gate.Least!.Value.Seconds)).OrderBy(point => point.Item1)];
        carried = Array.Find(gates, gate => gate.IsNonFusing) is { Least: { } time } gateOf ? (At(gateOf), time.Seconds) : null;
    }

    public double Amperes { get; }

    public double? Volts { get; }

    public double? Breaks { get; }

    public bool IsGg { get; }

    public bool IsBreaker { get; }

    public bool HasTimes => longest.Length > 0;

    public bool HasLeastTimes => least.Length > 0;

    /// <summary>From here on it must open.</summary>
    public double FusingAmperes => longest[0].Amperes;

    /// <summary>What it carries for hours at least.</summary>
    public double CarriedAmperes => Math.Max(Amperes, carried?.Amperes ?? 0);

    public IEnumerable<double> Gates => longest.Select(point => point.Amperes);

    /// <summary>Share of the rating that is left in warm surroundings, where one is published: gG, 0.5 % per kelvin above 40 °C to 80 °C.</summary>
    public double ShareAt(double ambient) => IsGg && ambient > 40 ? 1 - (0.005 * (Math.Min(ambient, 80) - 40)) : 1;

    /// <summary>Longest time to open, s; infinite where it need not.</summary>
    public double Longest(double amperes) =>
        !HasTimes || amperes < longest[0].Amperes * (1 - 1e-9) ? double.PositiveInfinity : On(longest, amperes, IsBreaker ? 0 : 2);

    /// <summary>Least time to open by the customary line between the gates, s; infinite up to the rating, where nothing melts.</summary>
    public double Least(double amperes)
    {
        if (amperes <= Amperes)
        {
            return double.PositiveInfinity;
        }

        return carried is { } held && amperes <= held.Amperes * (1 + 1e-9) ? held.Seconds
            : amperes <= least[0].Amperes ? least[0].Seconds
            : On(least, amperes, 2);
    }

    /// <summary>Least time to open that the stated points alone give, s: that of the next one at or above the current; zero beyond the last.</summary>
    public double ProvenLeast(double amperes) =>
        carried is { } held && amperes <= held.Amperes * (1 + 1e-9) ? held.Seconds : least.Where(point => point.Amperes >= amperes * (1 - 1e-9)).Select(point => point.Seconds).DefaultIfEmpty(0).First();

    /// <summary>The least I²t that opens it at a current or at a stated point below.</summary>
    public double LeastJoule(double amperes) =>
        least.Where(point => point.Amperes < amperes).Select(point => point.Amperes * point.Amperes * point.Seconds).Append(amperes * amperes * Least(amperes)).Min();

    private double At(OperatingTimeGate gate) => gate.Current?.Amperes ?? (Amperes * gate.PercentOfRating!.Value / 100);

    private static double On((double Amperes, double Seconds)[] points, double amperes, double beyond)
    {
        (double x, double t) = points[^1];
        if (amperes >= x)
        {
            return t * Math.Pow(x / amperes, beyond);
        }

        int right = Array.FindIndex(points, point => point.Amperes > amperes);
        (double x1, double t1) = points[Math.Max(0, right - 1)];
        (double x2, double t2) = points[Math.Max(1, right)];
        double along = Math.Log(Math.Max(amperes, x1) / x1) / Math.Log(x2 / x1);
        return Math.Exp((Math.Log(t1) * (1 - along)) + (Math.Log(t2) * along));
    }
}

/// <summary>An invented breaker, by multiples of its rating: a caller's curve.</summary>
internal static class OwnBreaker
{
    public static readonly (double Multiple, double Seconds)[] Longest = [(1.3, 3600), (2, 60), (5, 5), (10, 0.02)];

    public static readonly (double Multiple, double Seconds)[] Least = [(1.31, 30), (2, 8), (5, 0.01)];
}
