using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Protection;

/// <content>Yes or no, for a search over many wires and fuses.</content>
internal static partial class FuseAgainstWireKernel
{
    /// <summary>Whether the least ratio is at least 1: what <see cref="Verdict"/> says, without finding it.</summary>
    internal static bool Protects(in WireLimits wire, TimeCurrentCurve curve, double prospective)
    {
        if (!(wire.Heat.Conductance > 0))
        {
            return Verdict(wire, curve, prospective).Ratio >= 1;
        }

        if (TryWithoutLoss(wire, curve, prospective, out TightestPoint _))
        {
            return true;
        }

        LogLogLine longest = curve.LongestLine;
        if (IsLost(wire, longest, 0, prospective))
        {
            return false;
        }

        Span<double> room = stackalloc double[2 * OverloadTable.DoublesFor(1)];
        OverloadTable overload = new(room.Slice(0, room.Length / 2), wire.Heat, wire.Capacity, wire.StartCelsius, wire.OverloadCelsius);
        OverloadTable fault = new(room.Slice(room.Length / 2), wire.Heat, wire.Capacity, wire.StartCelsius, wire.ShortCircuitCelsius);
        Search search = new(longest, 0, prospective, false, FineAccuracy);
        for (int i = 0; i < longest.Count && longest.X(i) <= prospective; i++)
        {
            if (!search.Protects(i, ProtectionRegime.Overload, overload) || !search.Protects(i, ProtectionRegime.ShortCircuit, fault))
            {
                return false;
            }
        }

        return true;
    }

    // A wire that starts too hot, or that does not stand what the fuse need not open.
    private static bool IsLost(in WireLimits wire, LogLogLine longest, double least, double prospective) => wire.StartCelsius > wire.SustainedCelsius
        || (least < longest.FirstX && wire.Heat.AmperesFor(wire.SustainedCelsius) < Math.Min(longest.FirstX, prospective) * (1 - 1e-12));

    private readonly partial struct Piece
    {
        /// <summary>Whether the least ratio of the piece is at least 1.</summary>
        internal bool Protects(in OverloadTable wire, ProtectionRegime regime)
        {
            // The wire is quickest at the end, the fuse slowest at the beginning: where that end beats that beginning the rest does.
            double quickest = wire.Seconds(to) * (1 - FineAccuracy);
            if (!wire.IsThere && quickest >= seconds)
            {
                return true;
            }

            if (quickest < SecondsAt(to))
            {
                return false;
            }

            TightestPoint best = new(0, double.PositiveInfinity, regime);
            Least(wire, regime, FineAccuracy, ref best);
            return best.Ratio * (1 - FineAccuracy) >= 1;
        }
    }
}
