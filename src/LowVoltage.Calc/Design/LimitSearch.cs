using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Design;

/// <summary>Searches outward for the furthest value at which a circuit still fails nothing.</summary>
internal static class LimitSearch
{
    private const int Strides = 24;
    private const int Halvings = 60;

    /// <summary>Searches from a value that passes towards one that need not.</summary>
    /// <param name="near">The easiest value.</param>
    /// <param name="far">The hardest value.</param>
    /// <param name="tolerance">Width at which to stop.</param>
    /// <param name="design">The circuit at a value.</param>
    /// <param name="make">The value as a quantity.</param>
    /// <param name="what">What is varied, for the words.</param>
    /// <param name="unit">Its unit, for the words.</param>
    /// <param name="own">
    /// The value of the circuit asked about: where it passes, the search starts there, and its answer is never short of it. The easiest value is not the easiest for every
    /// check: a short cold path lets a larger surge through, and a resistance draws more at its end.
    /// </param>
    internal static DesignLimit<T> Find<T>(
        double near, double far, double tolerance, Func<double, CircuitDesign> design, Func<double, T> make, string what, string unit, double? own = null)
        where T : struct
    {
        // A count is shown as the whole number that it stands for.
        string shown(double value) => make(value) is int whole ? whole.ToString(CultureInfo.InvariantCulture) : Accept.Short(value);
        double good = own is { } value && value > near && value < far ? value : near;
        CircuitDesign start = design(good);
        if (!Passes(start) && good > near)
        {
            good = near;
            start = design(good);
        }

        if (!Passes(start))
        {
            return new DesignLimit<T>(null, Stop(start), $"Not even {what} of {shown(good)} {unit} passes: {Stop(start)}.");
        }

        int undetermined = start.Undetermined.Count;
        double bad = Stride(ref good, far, x => Holds(design(x), undetermined));
        if (double.IsNaN(bad))
        {
            return new DesignLimit<T>(make(far), null, $"All of the range searched passes, up to {what} of {shown(far)} {unit}.");
        }

        for (int i = 0; i < Halvings && Math.Abs(bad - good) > tolerance; i++)
        {
            double middle = 0.5 * (good + bad);
            (good, bad) = Holds(design(middle), undetermined) ? (middle, bad) : (good, middle);
        }

        CheckResult stop = Stop(design(bad));
        return new DesignLimit<T>(make(good), stop, $"{Sentence(what)} of {shown(good)} {unit}; beyond it: {stop}.");
    }

    // In growing strides, so that no failure close by is jumped over by looking at the far end only. NaN where all pass.
    private static double Stride(ref double good, double far, Func<double, bool> holds)
    {
        double from = good;
        for (int i = 1; i <= Strides; i++)
        {
            double share = (double)i / Strides, next = i == Strides ? far
                : from > 0 ? from * Math.Exp(Math.Log(far / from) * share)
                : from + ((far - from) * share);
            if (!holds(next))
            {
                return next;
            }

            good = next;
        }

        return double.NaN;
    }

    private static bool Passes(CircuitDesign design) => Holds(design, design.Undetermined.Count);

    // A check that was answered at the start and is undetermined here has left the range of its source: that ends the search too.
    private static bool Holds(CircuitDesign design, int undeterminedAtStart) =>
        design.IsFeasible && design.Undetermined.Count <= undeterminedAtStart && design.Find(CheckKind.ContinuousCurrent) is { Outcome: CheckOutcome.Pass };

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
