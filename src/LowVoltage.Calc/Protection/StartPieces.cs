using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Protection;

/// <summary>A start of constant surges and at most one exponential, piece by piece in closed form.</summary>
/// <remarks>
/// <code>
/// between two ends of constant surges:  i(t) = min[ c + A·x/(1 + s·x), path ],  x = exp(−t/τ),  w = i − c
/// t(i)   = −τ·ln[ w/(A − s·w) ]
/// ∫i²dt  = c²·Δt + 2·c·A·τ·∫dx/(1 + s·x) + A²·τ·∫x·dx/(1 + s·x)²
/// ∫dt·iᵖ = τ·∫ (c + w)ᵖ·[1 + s·w/(A − s·w)] d(ln w)
/// </code>
/// <para>c what runs and the constant surges that still last, A; A its rise, A; s softness of a lamp behind the path, zero for a capacitor; τ time constant, s. Only the last integral, of a power that is no
/// whole number, takes a quadrature, over the logarithm of w, where it is smooth.</para>
/// </remarks>
internal sealed class StartPieces
{
    // Above it the closed form of ∫x·dx/(1 + s·x)² loses nothing that matters; below it fifteen points give it to the last digits.
    private const double SoftEnough = 0.5;

    private const double Accuracy = 1e-11;

    private readonly Piece[] pieces;
    private readonly Piece rest;
    private readonly double path;
    private readonly double constant;
    private readonly double softness;

    /// <param name="pieces">By time, the last as long as the exponential is followed.</param>
    /// <param name="rest">What follows them.</param>
    /// <param name="path">The most that can flow, A.</param>
    /// <param name="constant">τ, s; any positive number where nothing fades.</param>
    /// <param name="softness">s.</param>
    internal StartPieces(Piece[] pieces, in Piece rest, double path, double constant, double softness)
    {
        this.pieces = pieces;
        this.rest = rest;
        this.path = path;
        this.constant = constant;
        this.softness = softness;
    }

    /// <summary>The current at a time, A.</summary>
    internal double At(double seconds)
    {
        foreach (Piece piece in pieces)
        {
            if (seconds < piece.End)
            {
                return AmperesIn(piece, Left(seconds));
            }
        }

        return AmperesIn(rest, Left(seconds));
    }

    /// <summary>When the current has fallen to a value below the path's most, s.</summary>
    internal double FallsTo(double amperes)
    {
        double from = 0;
        foreach (Piece piece in pieces)
        {
            if (AmperesIn(piece, Left(piece.End)) <= amperes)
            {
                double w = amperes - piece.Base;
                return w > 0 && piece.Rise > 0 ? Math.Min(piece.End, Math.Max(from, SecondsAt(piece, w))) : from;
            }

            from = piece.End;
        }

        return from;
    }

    /// <summary>∫i²dt, A²s.</summary>
    internal double Joules(double since, double until)
    {
        double sum = 0, from = since;
        for (int i = 0; i < pieces.Length && from < until; i++)
        {
            double to = Math.Min(pieces[i].End, until);
            if (to > from)
            {
                double free = Free(pieces[i], from, to);
                sum += (path * path * (free - from)) + JoulesIn(pieces[i], free, to);
                from = to;
            }
        }

        return sum;
    }

    /// <summary>∫(i − least)dt, A·s.</summary>
    internal double ChargeAbove(double least, double since, double until)
    {
        double sum = 0, from = since;
        for (int i = 0; i < pieces.Length && from < until; i++)
        {
            double to = Math.Min(pieces[i].End, until);
            if (to > from)
            {
                double free = Free(pieces[i], from, to);
                sum += ((path - least) * (free - from)) + ((pieces[i].Base - least) * (to - free)) + (pieces[i].Rise * constant * Reciprocal(Left(free), Left(to)));
                from = to;
            }
        }

        return sum;
    }

    /// <summary>∫(i/x)ᵖ·dt, s.</summary>
    internal double PowerIntegral(double x, double power, double since, double until)
    {
        double sum = 0, from = since;
        for (int i = 0; i < pieces.Length && from < until; i++)
        {
            double to = Math.Min(pieces[i].End, until);
            if (to > from)
            {
                double free = Free(pieces[i], from, to);
                sum += free > from ? Math.Exp(power * Math.Log(path / x)) * (free - from) : 0;
                sum += to > free ? PowerIn(pieces[i], x, power, free, to) : 0;
                from = to;
            }
        }

        return sum;
    }

    private double Left(double seconds) => Math.Exp(-seconds / constant);

    private double AmperesIn(in Piece piece, double left) => Math.Min(path, piece.Base + (piece.Rise * left / (1 + (softness * left))));

    private double SecondsAt(in Piece piece, double above) => -constant * Math.Log(above / (piece.Rise - (softness * above)));

    // Until when, from a time on, the path gives less than is asked for.
    private double Free(in Piece piece, double from, double to)
    {
        double left = Left(from);
        return piece.Base + (piece.Rise * left / (1 + (softness * left))) <= path ? from
            : path <= piece.Base ? to
            : Math.Max(from, Math.Min(to, SecondsAt(piece, path - piece.Base)));
    }

    private double JoulesIn(in Piece piece, double from, double to)
    {
        double sum = piece.Base * piece.Base * (to - from);
        if (piece.Rise > 0 && to > from)
        {
            double first = Left(from), last = Left(to);
            sum += constant * piece.Rise * ((2 * piece.Base * Reciprocal(first, last)) + (piece.Rise * Squared(first, last)));
        }

        return sum;
    }

    private double PowerIn(in Piece piece, double x, double power, double from, double to)
    {
        if (piece.Rise <= 0)
        {
            return Math.Exp(power * Math.Log(piece.Base / x)) * (to - from);
        }

        double first = Left(from), last = Left(to);
        double high = piece.Rise * first / (1 + (softness * first)), low = piece.Rise * last / (1 + (softness * last));
        return low > 0 ? constant * GaussKronrod.Integrate(new Powered(piece.Base, piece.Rise, softness, x, power), Math.Log(low), Math.Log(high), Accuracy) : double.PositiveInfinity;
    }

    /// <summary>∫dx/(1 + s·x) from the smaller x to the larger.</summary>
    private double Reciprocal(double large, double small) =>
        softness == 0 ? large - small : ExpLog.Log1p(softness * (large - small) / (1 + (softness * small))) / softness;

    /// <summary>∫x·dx/(1 + s·x)² from the smaller x to the larger.</summary>
    private double Squared(double large, double small)
    {
        if (softness == 0)
        {
            return 0.5 * (large - small) * (large + small);
        }

        if (softness < SoftEnough)
        {
            return GaussKronrod.Integrate(new Soft(softness), small, large, Accuracy);
        }

        double high = 1 + (softness * large), low = 1 + (softness * small);
        return (ExpLog.Log1p(softness * (large - small) / low) + ((low - high) / (high * low))) / (softness * softness);
    }

    /// <summary>Seconds at which it ends, A that stay in it, A that fade above them.</summary>
    internal readonly struct Piece(double end, double least, double rise)
    {
        internal double End => end;

        internal double Base => least;

        internal double Rise => rise;
    }

    private readonly struct Soft(double softness) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            double one = 1 + (softness * x);
            return x / (one * one);
        }
    }

    private readonly struct Powered(double least, double rise, double softness, double scale, double power) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            double above = Math.Exp(x), bend = softness == 0 ? 1 : 1 + (softness * above / (rise - (softness * above)));
            return bend * Math.Exp(power * Math.Log((least + above) / scale));
        }
    }
}
