using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Protection;

/// <summary>A fault somewhere along one of several equal wires in parallel, on doubles: the hottest that this one wire can get. Does not allocate.</summary>
/// <remarks>
/// <code>
/// c = 1/(n − 1);  R(x) = R·x·(1 − x + c)/(1 + c)
/// near part of the wire carries (1 − x + c)/(1 + c) of the current, its far part x/(1 + c)
/// </code>
/// x is the place as a share of the length from the source's end, R one whole wire. All wires are tied at both ends. The worst place is bounded on
/// intervals of x: each share at its largest there, the current anywhere from the least (weakest supply, all wires at the limit) to the greatest
/// (strongest supply, all wires as cold as they may be), the most that the device lets through over that range, and no heat leaving. An interval that does not
/// pass is halved until it does or a place in it fails.
/// <para><b>The shares</b> change as the wires heat unevenly. Up to x = (1 + c)/2 the near part carries more than the far one and is always the hottest, so its share only falls
/// below that of equal temperatures. Beyond, the far part is always hotter than the near one; its share grows at most to that with the near part at
/// the limit and the rest still at the start.</para>
/// </remarks>
internal readonly struct ParallelWireKernel
{
    private const int Halvings = 12;

    // A place that fails is reported to this share of the worst.
    private const double WorstAccuracy = 0.002;

    private readonly double others;
    private readonly double coldOhms;
    private readonly double hotOhms;
    private readonly double heating;
    private readonly double constant;
    private readonly double area;
    private readonly double start;
    private readonly double beta;
    private readonly double limit;
    private readonly FaultSupply supply;
    private readonly TimeCurrentCurve curve;

    internal ParallelWireKernel(
        Conductor conductor, int parallel, double meters, double coldest, double start, double limit, FaultSupply supply, TimeCurrentCurve curve)
    {
        others = 1.0 / (parallel - 1);
        coldOhms = conductor.OhmsPerMeterAt(coldest) * meters;
        hotOhms = conductor.OhmsPerMeterAt(limit) * meters;
        heating = hotOhms / (conductor.OhmsPerMeterAt(start) * meters);
        constant = AdiabaticKernel.ConstantSquared(conductor.Material);
        area = conductor.EffectiveAreaSquareMillimeters;
        beta = -conductor.Material.InferredZeroCelsius;
        this.start = start;
        this.limit = limit;
        this.supply = supply;
        this.curve = curve;
    }

    /// <summary>The hottest place: a bound of all when it passes, a place that fails when not.</summary>
    internal ParallelWirePoint Worst()
    {
        ParallelWirePoint passing = new() { Celsius = double.NegativeInfinity }, failing = passing;
        Search(0, 1, Halvings, ref passing, ref failing);
        return failing.Celsius > limit ? failing : passing;
    }

    /// <summary>The bound of one interval of places; of one place when both ends are one.</summary>
    internal ParallelWirePoint Between(double from, double to)
    {
        double top = 0.5 * (1 + others);
        double near = from <= top ? (1 - from + others) / (1 + others) : 0;
        double far = to > top ? to * heating / ((to * heating) + 1 - to + others) : 0;
        double share = Math.Max(near, far);
        double most = Math.Max(Through(from), Through(to)), least = Math.Min(Through(from), Through(to));
        most = from < top && top < to ? Through(top) : most;
        double weak = supply.LeastAmperes(hotOhms * most), strong = Math.Max(weak, supply.GreatestAmperes(coldOhms * least));
        ParallelWirePoint point = new()
        {
            Position = near >= far ? from : to, IsFarPart = far > near, Share = share, LeastAmperes = weak, GreatestAmperes = strong, Celsius = double.PositiveInfinity,
        };
        if (!curve.TryLongestSeconds(weak, out double seconds))
        {
            return point;
        }

        point.Seconds = seconds;

        // A breaker's time, unlike a fuse's Joule integral, says nothing about the current before.
        point.Joules = curve.IsBreaker ? strong * strong * seconds : curve.GreatestLongestJouleIntegral(weak, strong, out _);
        point.Celsius = AdiabaticKernel.FinalCelsius(constant, area, share * share * point.Joules, start, beta);
        return point;
    }

    private void Search(double from, double to, int halvings, ref ParallelWirePoint passing, ref ParallelWirePoint failing)
    {
        ParallelWirePoint bound = Between(from, to);
        if (bound.Celsius <= limit)
        {
            passing = bound.Celsius > passing.Celsius ? bound : passing;
            return;
        }

        double middle = 0.5 * (from + to);
        Take(halvings > 0 ? Between(middle, middle) : bound, ref failing);
        bool known = failing.Celsius > limit && !(bound.Celsius > failing.Celsius * (1 + WorstAccuracy));
        if (halvings > 0 && !known)
        {
            Search(from, middle, halvings - 1, ref passing, ref failing);
            Search(middle, to, halvings - 1, ref passing, ref failing);
        }
    }

    private void Take(in ParallelWirePoint point, ref ParallelWirePoint failing) =>
        failing = point.Celsius > limit && point.Celsius > failing.Celsius ? point : failing;

    private double Through(double x) => x * (1 - x + others) / (1 + others);
}

/// <summary>What a fault at a place, or somewhere in an interval, does to the wire.</summary>
internal struct ParallelWirePoint
{
    /// <summary>Share of the length from the source's end.</summary>
    internal double Position;

    /// <summary>Whether the part beyond the fault is the hotter.</summary>
    internal bool IsFarPart;

    /// <summary>Share of the current in the hotter part.</summary>
    internal double Share;
    internal double LeastAmperes;
    internal double GreatestAmperes;

    /// <summary>The device's longest time at the least current; zero where it need not open.</summary>
    internal double Seconds;

    /// <summary>The most that the device lets through, A²s.</summary>
    internal double Joules;

    /// <summary>Temperature, not limited by melting; infinite where the device need not open.</summary>
    internal double Celsius;
}
