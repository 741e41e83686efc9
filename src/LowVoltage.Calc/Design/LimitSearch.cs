using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Design;

/// <summary>Searches outward for the furthest value at which a circuit still fails nothing.</summary>
internal static class LimitSearch
{
    private const int Strides = 24;

    // The width at which the search for a whole number stops: its margins go by steps.
    private const double ACount = 0.5;

    // Of the width at which to stop.
    private const double Nearer = 0.25;

    /// <summary>Searches from a value that passes towards one that need not.</summary>
    /// <param name="near">The easiest value.</param>
    /// <param name="far">The hardest value, above it.</param>
    /// <param name="tolerance">Width at which to stop, far above the rounding of the values.</param>
    /// <param name="lay">The circuit at a value, laid out for the checks; it may be the same object each time.</param>
    /// <param name="design">The same with every answer written down.</param>
    /// <param name="make">The value as a quantity.</param>
    /// <param name="what">What is varied, for the words.</param>
    /// <param name="unit">Its unit, for the words.</param>
    /// <param name="own">
    /// The value of the circuit asked about: where it passes, the search starts there, and its answer is never short of it. The easiest value is not the easiest for every
    /// check: a short cold path lets a larger surge through, and a resistance draws more at its end.
    /// </param>
    internal static DesignLimit<T> Find<T>(
        double near, double far, double tolerance, Func<double, BranchState> lay, Func<double, CircuitDesign> design, Func<double, T> make, string what, string unit, double? own = null)
        where T : struct
    {
        // A count is shown as the whole number that it stands for.
        string shown(double value) => make(value) is int whole ? whole.ToString(CultureInfo.InvariantCulture) : Accept.Short(value);
        double good = own is { } value && value > near && value < far ? value : near;
        LimitProbe start = LimitProbe.Ask(lay(good), int.MaxValue);
        if (!start.Holds && good > near)
        {
            good = near;
            start = LimitProbe.Ask(lay(good), int.MaxValue);
        }

        if (!start.Holds)
        {
            CheckResult first = Stop(design(good));
            return new DesignLimit<T>(null, first, $"Not even {what} of {shown(good)} {unit} passes: {first}.");
        }

        double bad = Stride(ref good, far, lay, start.Undetermined, out LimitProbe failed);
        if (double.IsNaN(bad))
        {
            return new DesignLimit<T>(make(far), null, $"All of the range searched passes, up to {what} of {shown(far)} {unit}.");
        }

        Halve(ref good, ref bad, tolerance, lay, start.Undetermined, failed);
        CheckResult stop = Stop(design(bad));
        return new DesignLimit<T>(make(good), stop, $"{Sentence(what)} of {shown(good)} {unit}; beyond it: {stop}.");
    }

    // In growing strides, so that no failure close by is jumped over by looking at the far end only. NaN where all pass.
    private static double Stride(ref double good, double far, Func<double, BranchState> lay, int undetermined, out LimitProbe failed)
    {
        double from = good;
        failed = default;
        for (int i = 1; i <= Strides; i++)
        {
            double share = (double)i / Strides, next = i == Strides ? far
                : from > 0 ? from * Math.Exp(Math.Log(far / from) * share)
                : from + ((far - from) * share);
            LimitProbe probe = LimitProbe.Ask(lay(next), undetermined);
            if (!probe.Holds)
            {
                failed = probe;
                return next;
            }

            good = next;
        }

        return double.NaN;
    }

    // Halving, which needs no shape of what it halves. Nearly all of its questions are answered beforehand: what lies below a value that holds holds, what lies above one that does not does not.
    private static void Halve(ref double good, ref double bad, double tolerance, Func<double, BranchState> lay, int undetermined, in LimitProbe failed)
    {
        (double holds, double fails) = (good, bad);
        if (tolerance < ACount)
        {
            Narrow(ref holds, ref fails, tolerance, lay, undetermined, failed);
        }

        while (bad - good > tolerance)
        {
            double middle = 0.5 * (good + bad);
            bool passes = middle <= holds || (middle < fails && LimitProbe.Ask(lay(middle), undetermined).Holds);
            (good, bad) = passes ? (middle, bad) : (good, middle);
        }
    }

    // Two values about the end that lie close together: where the margin of the check that fails is nothing if it is straight, by the rule of false position, and the middle
    // every third time or where there is no margin.
    private static void Narrow(ref double good, ref double bad, double tolerance, Func<double, BranchState> lay, int undetermined, in LimitProbe failed)
    {
        Check? failing = failed.Failing;
        double below = failed.Margin, above = LimitProbe.MarginOf(lay(good), failing), near = Nearer * tolerance;
        for (int i = 0; bad - good > near; i++)
        {
            double width = bad - good, share = above / (above - below);
            bool straight = above >= 0 && below < 0 && i % 3 != 2;

            // Not nearer to an end than half the width at which to stop: beyond the root the next closes the bracket.
            double least = 0.45 * near / width;
            double next = good + (width * (straight ? Math.Max(least, Math.Min(1 - least, share)) : 0.5));
            BranchState at = lay(next);
            LimitProbe probe = LimitProbe.Ask(at, undetermined);
            if (probe.Holds)
            {
                good = next;
                above = LimitProbe.MarginOf(at, failing);
                continue;
            }

            bad = next;
            below = probe.Margin;
            if (!ReferenceEquals(probe.Failing, failing))
            {
                failing = probe.Failing;
                above = LimitProbe.MarginOf(lay(good), failing);
            }
        }
    }

    private static CheckResult Stop(CircuitDesign design)
    {
        // Beyond the range of the rating's source everything after it is only an estimate: name the rating.
        CheckResult? rating = design.Find(CheckKind.ContinuousCurrent);
        return rating is { Outcome: CheckOutcome.Undetermined } unrated ? unrated
            : design.Verdict == Verdict.Fail || design.Undetermined.Count == 0 ? design.Governing
            : design.Undetermined[0];
    }

    private static string Sentence(string what) => char.ToUpperInvariant(what[0]) + what.Substring(1);
}
