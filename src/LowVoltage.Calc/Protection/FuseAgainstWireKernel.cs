using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Protection;

/// <summary>The tightest current of a fuse against a wire, on doubles.</summary>
/// <remarks>
/// ln(wire time) is convex in ln I and falls at a slope of −2 or steeper (<see cref="OverloadTable"/>); ln(fuse time) is straight between two stated points,
/// with slope −p. So ln(wire time/fuse time) is convex on each piece: it has one least value there, which stands at the right end where
/// p ≤ 2 or the slope is still negative there, else where the slope of the wire is −p. Nothing is sampled, and no least value can be missed.
/// Does not allocate.
/// </remarks>
internal static partial class FuseAgainstWireKernel
{
    /// <summary>The source's limit for short circuits: beyond it the overload limit counts.</summary>
    internal const double ShortCircuitSeconds = 5;

    // Intervals of the table, and how far the ratio found may lie above the least one. The coarse table understates the wire's time by less than 1 %.
    private const int Coarse = 6;
    private const double CoarseAccuracy = 1e-3;
    private const int Fine = 160;
    private const double FineAccuracy = 1e-7;

    // Half the distance in ln I over which a slope is taken.
    private const double HalfStep = 1e-4;
    private const int MostIterations = 60;

    /// <summary>The current at which the ratio of wire time to fuse time is least, from the fusing current to the prospective one, and below it indefinitely.</summary>
    /// <remarks>The ratio is that of the table, on the safe side by less than a millionth. At least 1: protected.</remarks>
    internal static TightestPoint Tightest(in WireLimits wire, TimeCurrentCurve curve, double prospective)
    {
        return Tightest(wire, curve, 0, prospective);
    }

    /// <summary>The same over the currents from a least one on only.</summary>
    internal static TightestPoint Tightest(in WireLimits wire, TimeCurrentCurve curve, double least, double prospective)
    {
        TightestPoint found = wire.Heat.Conductance > 0
            ? Closed(wire, curve, least, prospective)
            : Tightest(wire, curve, least, prospective, stackalloc double[2 * OverloadTable.DoublesFor(Fine)], FineAccuracy);
        return new TightestPoint(found.Amperes, found.Ratio * (1 - FineAccuracy), found.Regime);
    }

    /// <summary>The same with the longest times that the stated points alone prove: between two of them that of the smaller current.</summary>
    /// <remarks>Beyond the last point of a fuse its constant Joule integral counts here too; it is on the safe side by itself.</remarks>
    internal static TightestPoint TightestByStatedPoints(in WireLimits wire, TimeCurrentCurve curve, double prospective)
    {
        TightestPoint found = Tightest(wire, curve, 0, prospective, stackalloc double[2 * OverloadTable.DoublesFor(Fine)], FineAccuracy, stepped: true);
        return new TightestPoint(found.Amperes, found.Ratio * (1 - FineAccuracy), found.Regime);
    }

    /// <summary>The same verdict (ratio at least 1 or not) for a search over many fuses: the current and ratio only roughly the tightest, on the safe side.</summary>
    internal static TightestPoint Verdict(in WireLimits wire, TimeCurrentCurve curve, double prospective)
    {
        if (TryWithoutLoss(wire, curve, prospective, out TightestPoint plain))
        {
            return plain;
        }

        if (wire.Heat.Conductance > 0)
        {
            // Closed forms: nothing is rough.
            TightestPoint closed = Closed(wire, curve, 0, prospective);
            return new TightestPoint(closed.Amperes, closed.Ratio * (1 - FineAccuracy), closed.Regime);
        }

        TightestPoint rough = Tightest(wire, curve, 0, prospective, stackalloc double[2 * OverloadTable.DoublesFor(Coarse)], CoarseAccuracy);
        double least = rough.Ratio * (1 - CoarseAccuracy);
        return least >= 1 || ExactRatio(wire, curve, rough) < 1
            ? new TightestPoint(rough.Amperes, least, rough.Regime)
            : Tightest(wire, curve, prospective);
    }

    // Where a coefficient is given the two ends of a table are all there is to know.
    private static TightestPoint Closed(in WireLimits wire, TimeCurrentCurve curve, double least, double prospective) =>
        Tightest(wire, curve, least, prospective, stackalloc double[2 * OverloadTable.DoublesFor(1)], FineAccuracy);

    /// <summary>Proves a small fuse on a thick wire without a quadrature: what the wire does not carry indefinitely opens the fuse within 5 s, before the wire is at its short-circuit limit even if it lost no heat.</summary>
    /// <returns>Whether that proves it; otherwise nothing is said. The ratio understates the wire's time.</returns>
    private static bool TryWithoutLoss(in WireLimits wire, TimeCurrentCurve curve, double prospective, out TightestPoint point)
    {
        LogLogLine longest = curve.LongestLine;
        point = new TightestPoint(Math.Min(longest.FirstX, prospective), double.PositiveInfinity, ProtectionRegime.Sustained);
        if (wire.StartCelsius > wire.SustainedCelsius || wire.Heat.Alpha <= 0 || wire.Heat.AmperesFor(wire.SustainedCelsius) < point.Amperes)
        {
            return false;
        }

        double carried = wire.Heat.AmperesFor(wire.OverloadCelsius);
        if (carried >= prospective)
        {
            return true;
        }

        if (!curve.TryLongestSeconds(carried, out double seconds) || seconds > ShortCircuitSeconds)
        {
            return false;
        }

        double from = wire.Heat.AmperesFor(wire.ShortCircuitCelsius);
        if (from >= prospective)
        {
            return true;
        }

        double fuse = curve.GreatestLongestJouleIntegral(from, prospective, out double worst);
        double growth = Math.Log(wire.Heat.OhmsPerMeterAt(wire.ShortCircuitCelsius) / wire.Heat.OhmsPerMeterAt(wire.StartCelsius));
        double ratio = wire.Capacity * growth / (wire.Heat.Alpha * wire.Heat.OhmsPerMeter20) / fuse;
        point = new TightestPoint(worst, ratio, ProtectionRegime.ShortCircuit);
        return ratio >= 1;
    }

    /// <summary>The ratio at a point by quadrature; infinite when the wire never reaches its limit.</summary>
    internal static double ExactRatio(in WireLimits wire, TimeCurrentCurve curve, in TightestPoint point)
    {
        if (point.Regime == ProtectionRegime.Sustained || double.IsInfinity(point.Ratio) || !curve.TryLongestSeconds(point.Amperes, out double fuse))
        {
            return point.Ratio;
        }

        double limit = point.Regime == ProtectionRegime.Overload ? wire.OverloadCelsius : wire.ShortCircuitCelsius;
        return OverloadHeating.Seconds(wire.Heat, wire.Capacity, point.Amperes, wire.StartCelsius, limit) / fuse;
    }

    private static TightestPoint Tightest(in WireLimits wire, TimeCurrentCurve curve, double least, double prospective, Span<double> room, double accuracy, bool stepped = false)
    {
        LogLogLine longest = curve.LongestLine;
        double first = Math.Min(longest.FirstX, prospective);
        if (IsLost(wire, longest, least, prospective))
        {
            return new TightestPoint(first, 0, ProtectionRegime.Sustained);
        }

        TightestPoint best = new(first, double.PositiveInfinity, ProtectionRegime.Sustained);
        if (prospective < longest.FirstX)
        {
            return best;
        }

        Search search = new(longest, least, prospective, stepped, accuracy);
        int half = room.Length / 2;
        if (half > OverloadTable.DoublesFor(Coarse) && longest.Count <= MostPiecesRanked)
        {
            Ranked(search, wire, room, ref best);
            return best;
        }

        OverloadTable overload = new(room.Slice(0, half), wire.Heat, wire.Capacity, wire.StartCelsius, wire.OverloadCelsius);
        OverloadTable fault = new(room.Slice(half), wire.Heat, wire.Capacity, wire.StartCelsius, wire.ShortCircuitCelsius);
        for (int i = 0; i < longest.Count; i++)
        {
            search.Take(i, ProtectionRegime.Overload, overload, ref best);
            search.Take(i, ProtectionRegime.ShortCircuit, fault, ref best);
        }

        return best;
    }
}
