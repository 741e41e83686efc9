using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Protection;

/// <content>The least ratio on one piece of the fuse's curve.</content>
internal static partial class FuseAgainstWireKernel
{
    /// <summary>Currents between which the fuse's time is a power: t = t₀·(I/I₀)^−p.</summary>
    private readonly partial struct Piece(double from, double to, double seconds, double power)
    {
        internal double From => from;

        /// <summary>The current at which the fuse takes a time; infinite when it is slower all along, zero when faster.</summary>
        internal double CurrentAt(double time) =>
            seconds <= time ? 0 : power > 0 ? from * Math.Exp(Math.Log(seconds / time) / power) : double.PositiveInfinity;

        internal Piece To(double end) => new(from, end, seconds, power);

        internal Piece Since(double begin) => new(begin, to, SecondsAt(begin), power);

        internal void Least(in OverloadTable wire, ProtectionRegime regime, double accuracy, ref TightestPoint best)
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
            if (!wire.IsThere && power > 2 && low < to)
            {
                LeastBetween(low, wire, regime, accuracy, ref best);
            }
        }

        /// <summary>The least ratio inside, where the slope turns. Tangents bound a convex function from below: it stops when they cannot lie under the best any more.</summary>
        private void LeastBetween(double begin, in OverloadTable wire, ProtectionRegime regime, double accuracy, ref TightestPoint best)
        {
            Tangent right = TangentAt(Math.Log(to), wire), left = right;
            if (right.Slope <= 0 || right.At(Math.Log(begin)) >= Math.Log(best.Ratio) || (left = TangentAt(Math.Log(begin), wire)).Slope >= 0)
            {
                // A slope that is upward all along has its least value at the beginning.
                if (left.Slope >= 0 && right.Slope > 0)
                {
                    Take(begin, wire, regime, ref best);
                }

                return;
            }

            for (int i = 0; i < MostIterations && left.Bound(right) < Math.Log(best.Ratio) - accuracy && right.X - left.X > 1e-12; i++)
            {
                // Where the slope vanishes if it is straight; the middle every third time and where there is no slope yet.
                double share = double.IsInfinity(left.Slope) || i % 3 == 2 ? 0.5 : -left.Slope / (right.Slope - left.Slope);
                double x = left.X + ((right.X - left.X) * Math.Max(0.001, Math.Min(0.999, share)));
                Tangent next = TangentAt(x, wire);
                if (next.Value < Math.Log(best.Ratio))
                {
                    Take(Math.Exp(x), wire, regime, ref best);
                }

                (left, right) = next.Slope <= 0 ? (next, right) : (left, next);
            }
        }

        private double SecondsAt(double amperes) => seconds * Math.Exp(-power * Math.Log(amperes / from));

        private void Take(double amperes, in OverloadTable wire, ProtectionRegime regime, ref TightestPoint best)
        {
            double ratio = wire.Seconds(amperes) / SecondsAt(amperes);
            if (ratio < best.Ratio)
            {
                best = new TightestPoint(amperes, ratio, regime);
            }
        }

        /// <summary>ln(ratio) and its slope against ln I; infinite next to the current that is carried indefinitely.</summary>
        private Tangent TangentAt(double x, in OverloadTable wire)
        {
            double amperes = Math.Exp(x), before = wire.Seconds(amperes * (1 - HalfStep)), after = wire.Seconds(amperes * (1 + HalfStep));
            return double.IsInfinity(before)
                ? new(x, double.PositiveInfinity, double.NegativeInfinity)
                : new(x, Math.Log(Math.Sqrt(before * after) / SecondsAt(amperes)), (Math.Log(after / before) / (2 * HalfStep)) + power);
        }
    }

    /// <summary>ln(ratio) at a place in ln I, and its slope.</summary>
    private readonly struct Tangent(double x, double value, double slope)
    {
        internal double X => x;

        internal double Value => value;

        internal double Slope => slope;

        internal double At(double other) => value + (slope * (other - x));

        /// <summary>Where two tangents meet, at most: no value between can be less. This one falls, the other rises.</summary>
        internal double Bound(in Tangent right)
        {
            double there = right.At(x);
            if (double.IsInfinity(slope))
            {
                return there;
            }

            // value + slope·d = there + right·d
            double bend = right.Slope - slope;
            return bend > 0 ? value + (slope * ((value - there) / bend)) : Math.Min(value, right.Value);
        }
    }
}
