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
internal static class FuseAgainstWireKernel
{
    /// <summary>The source's limit for short circuits: beyond it the overload limit counts.</summary>
    internal const double ShortCircuitSeconds = 5;

    private const int Coarse = 10;
    private const int Fine = 160;

    // Half the distance in ln I over which a slope is taken, and the accuracy in ln I of the least ratio, which is flat there.
    private const double HalfStep = 1e-4;
    private const double Accuracy = 1e-5;

    /// <summary>The current at which the ratio of wire time to fuse time is least, from the fusing current to the prospective one, and below it for ever.</summary>
    internal static TightestPoint Tightest(in WireLimits wire, TimeCurrentCurve curve, double prospective)
    {
        TightestPoint rough = Tightest(wire, curve, prospective, stackalloc double[2 * OverloadTable.DoublesFor(Coarse)]);
        if (rough.Ratio >= 1 || rough.Regime == ProtectionRegime.Sustained || ExactRatio(wire, curve, rough) < 1)
        {
            return rough;
        }

        // The table understates the wire by less than 1 %; so close to 1 it needs more intervals to decide.
        return Tightest(wire, curve, prospective, stackalloc double[2 * OverloadTable.DoublesFor(Fine)]);
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

    private static TightestPoint Tightest(in WireLimits wire, TimeCurrentCurve curve, double prospective, Span<double> room)
    {
        LogLogLine longest = curve.LongestLine;
        double first = Math.Min(longest.FirstX, prospective);
        if (wire.StartCelsius > wire.SustainedCelsius || wire.Heat.AmperesFor(wire.SustainedCelsius) < first * (1 - 1e-12))
        {
            return new TightestPoint(first, 0, ProtectionRegime.Sustained);
        }

        TightestPoint best = new(first, double.PositiveInfinity, ProtectionRegime.Sustained);
        if (prospective < longest.FirstX)
        {
            return best;
        }

        int half = room.Length / 2;
        OverloadTable overload = new(room[..half], wire.Heat, wire.Capacity, wire.StartCelsius, wire.OverloadCelsius);
        OverloadTable fault = new(room[half..], wire.Heat, wire.Capacity, wire.StartCelsius, wire.ShortCircuitCelsius);
        for (int i = 0; i < longest.Count && longest.X(i) <= prospective; i++)
        {
            double end = i + 1 < longest.Count ? Math.Min(longest.X(i + 1), prospective) : prospective;
            Piece piece = new(longest.X(i), end, longest.Y(i), -longest.Slope(i));
            double split = piece.CurrentAt(ShortCircuitSeconds);
            if (split > piece.From)
            {
                piece.To(Math.Min(split, end)).Least(overload, ProtectionRegime.Overload, ref best);
            }

            if (split <= end)
            {
                piece.Since(Math.Max(split, piece.From)).Least(fault, ProtectionRegime.ShortCircuit, ref best);
            }
        }

        return best;
    }

    /// <summary>Currents between which the fuse's time is a power: t = t₀·(I/I₀)^−p.</summary>
    private readonly struct Piece(double from, double to, double seconds, double power)
    {
        internal double From => from;

        /// <summary>The current at which the fuse takes a time; infinite when it is slower all along, zero when faster.</summary>
        internal double CurrentAt(double time) =>
            seconds <= time ? 0 : power > 0 ? from * Math.Exp(Math.Log(seconds / time) / power) : double.PositiveInfinity;

        internal Piece To(double end) => new(from, end, seconds, power);

        internal Piece Since(double begin) => new(begin, to, SecondsAt(begin), power);

        internal void Least(in OverloadTable wire, ProtectionRegime regime, ref TightestPoint best)
        {
            double low = Math.Max(from, wire.SteadyAmperes * (1 + 1e-9));
            if (wire.IsThere)
            {
                Take(from, wire, regime, ref best);
            }

            if (low > to)
            {
                return;
            }

            Take(to, wire, regime, ref best);
            if (wire.IsThere || power <= 2 || low >= to || Slope(wire, to) <= 0)
            {
                return;
            }

            Take(Slope(wire, low) >= 0 ? low : Turn(wire, low), wire, regime, ref best);
        }

        private double SecondsAt(double amperes) => amperes.Equals(from) ? seconds : seconds * Math.Exp(-power * Math.Log(amperes / from));

        private void Take(double amperes, in OverloadTable wire, ProtectionRegime regime, ref TightestPoint best)
        {
            double ratio = wire.Seconds(amperes) / SecondsAt(amperes);
            if (ratio < best.Ratio)
            {
                best = new TightestPoint(amperes, ratio, regime);
            }
        }

        /// <summary>d ln(ratio)/d ln I; −∞ next to the current that is carried for ever.</summary>
        private double Slope(in OverloadTable wire, double amperes)
        {
            double before = wire.Seconds(amperes * (1 - HalfStep)), after = wire.Seconds(amperes * (1 + HalfStep));
            return double.IsInfinity(before) ? double.NegativeInfinity : (Math.Log(after / before) / (2 * HalfStep)) + power;
        }

        /// <summary>The current at which the slope turns, between one where it falls and the end, where it rises.</summary>
        private double Turn(in OverloadTable wire, double begin)
        {
            double low = Math.Log(begin), high = Math.Log(to);
            double lowSlope = Slope(wire, begin), highSlope = Slope(wire, to);
            for (int i = 0; i < 60 && high - low > Accuracy; i++)
            {
                // The false position every other time: it converges fast where the slope is straight, the half always.
                double share = i % 2 == 0 && !double.IsInfinity(lowSlope) ? highSlope / (highSlope - lowSlope) : 0.5;
                double middle = high - ((high - low) * Math.Max(0.01, Math.Min(0.99, share)));
                double slope = Slope(wire, Math.Exp(middle));
                if (slope <= 0)
                {
                    (low, lowSlope) = (middle, slope);
                }
                else
                {
                    (high, highSlope) = (middle, slope);
                }
            }

            return Math.Exp(0.5 * (low + high));
        }
    }
}
