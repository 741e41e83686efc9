using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Protection;

/// <content>The waveform on doubles: when it falls to a value, and integrals over it.</content>
public sealed partial class StartWaveform
{
    private const double Tail = 40;
    private const double Accuracy = 1e-9;

    private static readonly double[] Marks = [0.3, 1, 3, 10, Tail];

    /// <summary>Seconds above a current; infinite when the running current is above it, or the source can never give what the start needs.</summary>
    internal double SecondsAbove(double amperes) => PeakAmperes <= amperes ? 0 : RunningAmperes > amperes ? double.PositiveInfinity : FallsTo(amperes) + delay;

    /// <summary>∫i²dt while the current is above a value, A²s.</summary>
    internal double JoulesAbove(double amperes)
    {
        double until = SecondsAbove(amperes);
        return until == 0 || double.IsInfinity(until) ? until
            : (delay > 0 ? held * held * (release + delay) : 0) + Joules(delay > 0 ? release : 0, until - delay);
    }

    /// <summary>∫dt/t_least(i) while the current is above a value: the share of melting by the customary sum; infinite when no least time is stated.</summary>
    internal double MeltingAbove(double amperes, TimeCurrentCurve curve, bool proven)
    {
        double until = SecondsAbove(amperes);
        if (until == 0 || double.IsInfinity(until))
        {
            return until;
        }

        Melting melting = new(this, curve, proven);
        double sum = delay > 0 ? (release + delay) * melting.Rate(held) : 0, from = delay > 0 ? release : 0;

        // The rate jumps or bends at the stated points, which the current passes one after the other.
        for (int i = curve.LeastLine is { } line ? line.Count - 1 : -1; i >= -1; i--)
        {
            double level = i >= 0 ? curve.LeastLine!.X(i) : curve.NonFusingAmperes ?? 0;
            double to = level > amperes && level < PeakAmperes ? Math.Max(from, FallsTo(level)) : from;
            sum += Melted(melting, from, to);
            from = to;
        }

        return sum + Melted(melting, from, until - delay);
    }

    /// <summary>The surge with the greatest share of ∫i²dt above a current, by index; −1 when there is none.</summary>
    internal int DominantAbove(double amperes)
    {
        int dominant = -1;
        double until = PeakAmperes <= amperes ? 0 : FallsTo(amperes), most = double.NegativeInfinity;
        for (int i = 0; i < surges.Length; i++)
        {
            double share = Integrate(new Part(this, i), 0, until);
            (dominant, most) = share > most ? (i, share) : (dominant, most);
        }

        return dominant;
    }

    private double Joules(double from, double to) => closed is not null ? closed.Joules(from, to) : Integrate(new Power(this, 2, 0), from, to);

    private double ChargeAbove(double amperes, double to) => closed is not null ? closed.ChargeAbove(amperes, 0, to) : Integrate(new Power(this, 1, amperes), 0, to);

    // Over a time in which the rate follows one piece of the curve.
    private double Melted(in Melting melting, double from, double to) =>
        from >= to ? 0 : closed is null ? Integrate(melting, from, to) : melting.Over(closed, from, to);

    /// <summary>The current without the source's limit, A.</summary>
    private double Free(double seconds)
    {
        if (closed is not null)
        {
            return closed.At(seconds);
        }

        double least = Base(seconds);
        return charging > 0 ? least + ((top - least) * Math.Exp(-seconds / charging)) : least;
    }

    private double Base(double seconds)
    {
        double sum = RunningAmperes;
        foreach (StartSurge surge in surges)
        {
            sum += surge.Shape == StartSurgeShape.Charging ? 0 : surge.AmperesAt(seconds);
        }

        return Math.Min(sum, path);
    }

    /// <summary>When the current, without the source's limit, has fallen to a value that the running current does not exceed.</summary>
    private double FallsTo(double amperes)
    {
        if (closed is not null)
        {
            return closed.FallsTo(amperes);
        }

        double from = 0;
        foreach (double to in Places)
        {
            // Just before: a constant surge ends there at once.
            if (Free(Before(to)) <= amperes)
            {
                return Brent.TryFindRoot(new Fall(this, amperes), from, Before(to), 0, out double root) ? root : from;
            }

            from = to;
        }

        return from;
    }

    // How long a source at its limit takes to make up for a charge beside what runs, and beside the constant surges while they last.
    private double DelayBy(double charge)
    {
        double from = release;
        foreach (double to in Places)
        {
            if (to <= from)
            {
                continue;
            }

            double spare = held - Constants(from), gives = Math.Max(0, spare) * (to - from);
            if (gives >= charge)
            {
                return from + (charge / spare) - release;
            }

            charge -= gives;
            from = to;
        }

        return RunningAmperes < held ? from + (charge / (held - RunningAmperes)) - release : double.PositiveInfinity;
    }

    // What runs, and the constant surges that still last.
    private double Constants(double seconds)
    {
        double sum = RunningAmperes;
        foreach (StartSurge surge in surges)
        {
            sum += surge.Shape == StartSurgeShape.Constant ? surge.AmperesAt(seconds) : 0;
        }

        return sum;
    }

    private double[] Places => breaks ??= Breaks();

    private double Integrate<TFunction>(in TFunction function, double since, double until)
        where TFunction : struct, IScalarFunction
    {
        double sum = 0, from = since;
        for (int i = 0; i < Places.Length && from < until; i++)
        {
            double to = Math.Min(Places[i], until);
            if (to > from)
            {
                sum += GaussKronrod.Integrate(function, from, to, Accuracy);
                from = to;
            }
        }

        return sum;
    }

    // Constant surges and at most one exponential have a closed form; null for others.
    private StartPieces? Closed()
    {
        int constants = 0, fading = 0;
        StartSurge? fades = null;
        foreach (StartSurge surge in surges)
        {
            constants += surge.Shape == StartSurgeShape.Constant ? 1 : 0;
            fading += surge.Shape == StartSurgeShape.Fading ? 1 : 0;
            fades = surge.Shape == StartSurgeShape.Fading ? surge : fades;
        }

        if (fading > 1 || (fading == 1 && charging > 0))
        {
            return null;
        }

        double constant = charging > 0 ? charging : fades?.Seconds ?? 0;
        double[] ends = new double[constants + (constant > 0 ? 1 : 0)];
        int next = 0;
        foreach (StartSurge surge in surges)
        {
            if (surge.Shape == StartSurgeShape.Constant)
            {
                ends[next++] = surge.Seconds;
            }
        }

        if (constant > 0)
        {
            ends[next] = Tail * constant;
        }

        Array.Sort(ends);
        return ends.Length == 0 ? null : new StartPieces(Pieces(ends, fades), PieceFrom(ends[ends.Length - 1], double.PositiveInfinity, fades), path, constant > 0 ? constant : 1, fades?.Softness ?? 0);
    }

    private StartPieces.Piece[] Pieces(double[] ends, StartSurge? fades)
    {
        StartPieces.Piece[] pieces = new StartPieces.Piece[ends.Length];
        for (int i = 0; i < pieces.Length; i++)
        {
            pieces[i] = PieceFrom(i == 0 ? 0 : ends[i - 1], ends[i], fades);
        }

        return pieces;
    }

    private StartPieces.Piece PieceFrom(double begin, double end, StartSurge? fades)
    {
        double stays = Constants(begin);
        return charging > 0 ? new(end, Math.Min(stays, path), top - Math.Min(stays, path)) : new(end, stays, fades is null ? 0 : fades.PeakAmperes * (1 + fades.Softness));
    }

    // Ends of constant surges, and places by which an exponential of any length is seen.
    private double[] Breaks()
    {
        List<double> found = [];
        foreach (StartSurge surge in surges)
        {
            if (surge.Shape == StartSurgeShape.Constant)
            {
                found.Add(surge.Seconds);
            }
            else
            {
                double constant = surge.Shape == StartSurgeShape.Charging ? charging : surge.Seconds;
                foreach (double mark in Marks)
                {
                    found.Add(mark * constant);
                }
            }
        }

        // An exponential goes on after the last constant surge.
        found.Sort();
        return [.. found];
    }

    private static double Before(double seconds) => seconds * (1 - 1e-15);

    private readonly struct Fall(StartWaveform wave, double amperes) : IScalarFunction
    {
        public double Evaluate(double x) => wave.Free(x) - amperes;
    }

    /// <summary>(i − least)^power.</summary>
    private readonly struct Power(StartWaveform wave, int power, double least) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            double above = wave.Free(x) - least;
            return power == 1 ? above : above * above;
        }
    }

    private readonly struct Melting(StartWaveform wave, TimeCurrentCurve curve, bool proven) : IScalarFunction
    {
        public double Evaluate(double x) => Rate(wave.Free(x));

        /// <summary>Over a time in which the current stays on one piece of the curve.</summary>
        internal double Over(StartPieces pieces, double from, double to)
        {
            double middle = pieces.At(0.5 * (from + to));
            LogLogLine? line = curve.LeastLine;
            if (proven || line is null || !line.Covers(middle) || middle <= curve.NonFusingAmperes)
            {
                return Rate(middle) * (to - from);
            }

            int piece = line.PieceAt(middle);
            return pieces.PowerIntegral(line.X(piece), -line.Slope(piece), from, to) / line.Y(piece);
        }

        internal double Rate(double amperes) =>
            (proven ? curve.TryProvenLeastSeconds(amperes, out double seconds) : curve.TryLeastSeconds(amperes, out seconds)) ? 1 / seconds : double.PositiveInfinity;
    }

    /// <summary>i² by the share of one part in what all ask for.</summary>
    private readonly struct Part(StartWaveform wave, int index) : IScalarFunction
    {
        public double Evaluate(double x)
        {
            double all = wave.RunningAmperes, own = wave.surges[index].AmperesAt(x), amperes = wave.Free(x);
            foreach (StartSurge surge in wave.surges)
            {
                all += surge.AmperesAt(x);
            }

            return all > 0 ? amperes * amperes * own / all : 0;
        }
    }
}
