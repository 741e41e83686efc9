using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Protection;

/// <content>The latest clearing on doubles.</content>
public static partial class FaultClearing
{
    private const int MostSteps = 200;
    private const double RootAccuracy = 1e-13;

    // How often the bound on others' current is drawn closer; the first time wins nearly all of it.
    private const int Refinements = 4;

    /// <summary>The latest clearing on doubles: what happens, and the Joule integral by then, A²s. Does not allocate.</summary>
    /// <param name="fault">The loop; where others' current flows in it, on return the bound that proves the answer.</param>
    /// <param name="curve">The device's curve.</param>
    /// <param name="joules">The Joule integral.</param>
    internal static FaultOutcome Latest(ref FaultKernel fault, TimeCurrentCurve curve, out double joules)
    {
        fault = fault.DownTo(curve.FusingAmperes);
        FaultOutcome outcome = Find(fault, curve, out joules);
        for (int i = 0; i < Refinements && fault.HasOthers && outcome == FaultOutcome.Opens; i++)
        {
            // The true current is at least this one up to there, so the closer bound holds up to there as well.
            FaultKernel closer = fault.DownTo(fault.AmperesAt(joules));
            if (Find(closer, curve, out double sooner) != FaultOutcome.Opens || sooner > joules)
            {
                break;
            }

            (fault, joules) = (closer, sooner);
        }

        return outcome;
    }

    private static FaultOutcome Find(in FaultKernel fault, TimeCurrentCurve curve, out double joules)
    {
        joules = 0;
        return !curve.TryLongestSeconds(fault.AmperesAt(0), out _) ? FaultOutcome.NeedNotOpen
            : TryOpen(fault, curve, out joules) ? FaultOutcome.Opens
            : curve.TryLongestSeconds(fault.AmperesAt(fault.MeltingJoules), out _) ? FaultOutcome.ConductorMelts
            : FaultOutcome.NeedNotOpen;
    }

    private static bool TryOpen(in FaultKernel fault, TimeCurrentCurve curve, out double joules)
    {
        LogLogLine longest = curve.LongestLine;
        joules = longest.LastX * longest.LastX * longest.LastY;
        if (!curve.IsBreaker && joules <= fault.MeltingJoules && fault.AmperesAt(joules) >= longest.LastX)
        {
            // It ends while the Joule integral of the curve is still constant: that is the one it needs.
            return true;
        }

        double from = 0, first = fault.AmperesAt(0);
        for (int i = longest.Count - 1; i >= 0; i--)
        {
            double to = longest.X(i) < first ? JoulesAt(fault, longest.X(i)) : 0;
            if (to > from && TryPiece(new Surplus(fault, longest, i, curve.IsBreaker), from, to, out joules))
            {
                return true;
            }

            from = Math.Max(from, to);
        }

        joules = fault.MeltingJoules;
        return false;
    }

    /// <summary>The first Joule integral of a piece at which the device has opened.</summary>
    private static bool TryPiece(in Surplus surplus, double from, double to, out double joules)
    {
        joules = from;
        if (surplus.Evaluate(from) >= 0)
        {
            return true;
        }

        if (surplus.Growth > 0)
        {
            return TryConvex(surplus, from, to, out joules);
        }

        // The need only falls: one root, or none.
        joules = to;
        if (surplus.Evaluate(to) < 0)
        {
            return false;
        }

        if (Brent.TryFindRoot(surplus, from, to, 0, out double root))
        {
            // Of the bracket the end that has opened, so that the rule holds at the answer.
            joules = surplus.Evaluate(root) >= 0 ? root : Math.Min(to, root * (1 + RootAccuracy));
        }

        return true;
    }

    private static bool TryConvex(in Surplus surplus, double from, double to, out double joules)
    {
        joules = from;
        for (int i = 0; i < MostSteps; i++)
        {
            double needed = surplus.Needed(joules, out double neededSlope), value = surplus.Had(joules) - needed;
            if (value >= 0)
            {
                return true;
            }

            // The slope of what it has had grows: that at the end of the step bounds it all along.
            double slope = surplus.HadSlope(joules) - neededSlope;
            double reach = slope > 0 ? Math.Min(to, joules - (2 * value / slope)) : to;
            double bound = surplus.HadSlope(reach) - neededSlope;
            double next = bound > 0 ? Math.Min(reach, joules - (value / bound)) : reach;

            // As near to the root as this: past it.
            joules = Math.Min(to, Math.Max(next, joules * (1 + RootAccuracy)));
            if (joules >= to)
            {
                return surplus.Evaluate(to) >= 0;
            }
        }

        // A need that is grazed without end: not met, which makes the answer later, never sooner.
        joules = to;
        return false;
    }

    /// <summary>The Joule integral at which the current has fallen to a value, or that of melting when it has not by then.</summary>
    private static double JoulesAt(in FaultKernel fault, double amperes) =>
        fault.AmperesAt(fault.MeltingJoules) >= amperes
        || !Brent.TryFindRoot(new Fall(fault, amperes), 0, fault.MeltingJoules, 1e-13 * fault.MeltingJoules, out double root)
            ? fault.MeltingJoules
            : root;

    /// <summary>How far the rule of the latest clearing is met on one piece of the curve; at least zero when the device has opened.</summary>
    private readonly struct Surplus(FaultKernel fault, LogLogLine longest, int piece, bool breaker) : IScalarFunction
    {
        /// <summary>Power of 1/I by which the need grows.</summary>
        internal double Growth { get; } = -longest.Slope(piece) - (breaker ? 0 : 2);

        public double Evaluate(double x) => Had(x) - Needed(x, out _);

        /// <summary>Joule integral, or seconds, that the device has had.</summary>
        internal double Had(double joules) => breaker ? fault.SecondsTo(joules) : joules;

        internal double HadSlope(double joules)
        {
            double amperes = breaker ? fault.AmperesAt(joules) : 1;
            return 1 / (amperes * amperes);
        }

        internal double Needed(double joules, out double slope)
        {
            double amperes = fault.AmperesAt(joules, out double fall);
            double seconds = longest.Y(piece) * Math.Exp(longest.Slope(piece) * Math.Log(amperes / longest.X(piece)));
            double needed = breaker ? seconds : amperes * amperes * seconds;
            slope = Growth * fall * needed;
            return needed;
        }
    }

    private readonly struct Fall(FaultKernel fault, double amperes) : IScalarFunction
    {
        public double Evaluate(double x) => fault.AmperesAt(x) - amperes;
    }
}
