using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Protection;

/// <content>The pieces of a curve in the order in which they may hold the least ratio.</content>
internal static partial class FuseAgainstWireKernel
{
    // A curve of more pieces is gone through in a row.
    private const int MostPiecesRanked = 32;

    // A coarse table is a lower bound: a piece that it keeps above the least ratio found needs no fine one. Mostly one or two pieces are left, and one of the two limits.
    private static void Ranked(in Search search, in WireLimits wire, Span<double> room, ref TightestPoint best)
    {
        int half = room.Length / 2, parts = 2 * search.Pieces, coarse = OverloadTable.DoublesFor(Coarse);
        Span<double> bounds = stackalloc double[2 * MostPiecesRanked];
        bounds = bounds.Slice(0, parts);
        Bounds(search, wire, room.Slice(0, coarse), bounds);
        bool hasOverload = false, hasFault = false;
        OverloadTable overload = default, fault = default;
        while (true)
        {
            int next = 0;
            for (int k = 1; k < parts; k++)
            {
                next = bounds[k] < bounds[next] ? k : next;
            }

            if (!(bounds[next] < best.Ratio))
            {
                return;
            }

            bounds[next] = double.PositiveInfinity;
            if (next % 2 == 0)
            {
                overload = hasOverload ? overload : new(room.Slice(0, half), wire.Heat, wire.Capacity, wire.StartCelsius, wire.OverloadCelsius);
                hasOverload = true;
                search.Take(next / 2, ProtectionRegime.Overload, overload, ref best);
            }
            else
            {
                fault = hasFault ? fault : new(room.Slice(half), wire.Heat, wire.Capacity, wire.StartCelsius, wire.ShortCircuitCelsius);
                hasFault = true;
                search.Take(next / 2, ProtectionRegime.ShortCircuit, fault, ref best);
            }
        }
    }

    // Below what each piece can have at least: of an overload at the even places, of a short circuit at the odd ones; infinite where there is nothing to look at.
    private static void Bounds(in Search search, in WireLimits wire, Span<double> room, Span<double> bounds)
    {
        Search rough = search.Within(CoarseAccuracy);
        OverloadTable overload = new(room, wire.Heat, wire.Capacity, wire.StartCelsius, wire.OverloadCelsius);
        for (int i = 0; i < search.Pieces; i++)
        {
            bounds[2 * i] = rough.Bound(i, ProtectionRegime.Overload, overload);
        }

        OverloadTable fault = new(room, wire.Heat, wire.Capacity, wire.StartCelsius, wire.ShortCircuitCelsius);
        for (int i = 0; i < search.Pieces; i++)
        {
            bounds[(2 * i) + 1] = rough.Bound(i, ProtectionRegime.ShortCircuit, fault);
        }
    }

    /// <summary>What is looked through: a fuse's line over a range of currents.</summary>
    private readonly struct Search(LogLogLine longest, double least, double prospective, bool stepped, double accuracy)
    {
        internal int Pieces => longest.Count;

        internal Search Within(double other) => new(longest, least, prospective, stepped, other);

        internal double Bound(int i, ProtectionRegime regime, in OverloadTable wire)
        {
            TightestPoint found = new(0, double.PositiveInfinity, regime);
            Take(i, regime, wire, ref found);
            return found.Ratio * (1 - accuracy);
        }

        /// <summary>The least ratio of one piece, where the fuse opens later than after 5 s, or within them.</summary>
        internal void Take(int i, ProtectionRegime regime, in OverloadTable wire, ref TightestPoint best)
        {
            if (TryPart(i, regime, out Piece part))
            {
                part.Least(wire, regime, accuracy, ref best);
            }
        }

        /// <summary>Whether it is at least 1.</summary>
        internal bool Protects(int i, ProtectionRegime regime, in OverloadTable wire) => !TryPart(i, regime, out Piece part) || part.Protects(wire, regime);

        private bool TryPart(int i, ProtectionRegime regime, out Piece part)
        {
            part = default;
            double end = i + 1 < longest.Count ? Math.Min(longest.X(i + 1), prospective) : prospective;
            if (longest.X(i) > prospective || end < least)
            {
                return false;
            }

            Piece piece = new Piece(longest.X(i), end, longest.Y(i), stepped && i + 1 < longest.Count ? 0 : -longest.Slope(i)).Since(Math.Max(longest.X(i), least));
            double split = piece.CurrentAt(ShortCircuitSeconds);
            part = regime == ProtectionRegime.Overload ? piece.To(Math.Min(split, end)) : piece.Since(Math.Max(split, piece.From));
            return regime == ProtectionRegime.Overload ? split > piece.From : split <= end;
        }
    }
}
