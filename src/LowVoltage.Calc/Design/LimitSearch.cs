using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Design;

/// <summary>Bisects for the furthest value at which a circuit still fails nothing.</summary>
internal static class LimitSearch
{
    private const int Steps = 60;

    /// <summary>Searches between a value that should pass and one that need not.</summary>
    /// <param name="near">The easiest value.</param>
    /// <param name="far">The hardest value.</param>
    /// <param name="tolerance">Width at which to stop.</param>
    /// <param name="design">The circuit at a value.</param>
    /// <param name="make">The value as a quantity.</param>
    /// <param name="what">What is varied, for the words.</param>
    /// <param name="unit">Its unit, for the words.</param>
    /// <param name="own">
    /// The value of the circuit asked about, for where the easiest value is not the easiest after all: a short cold path lets a larger surge through, and a
    /// resistance draws more at its end.
    /// </param>
    internal static DesignLimit<T> Find<T>(
        double near, double far, double tolerance, Func<double, CircuitDesign> design, Func<double, T> make, string what, string unit, double? own = null)
        where T : struct
    {
        // A count is shown as the whole number that it stands for.
        string shown(double value) => make(value) is int whole ? whole.ToString(CultureInfo.InvariantCulture) : Accept.Short(value);
        CircuitDesign start = design(near);
        int open = start.Undetermined.Count;
        if (!Holds(start, open) && own is { } value && value > near && value < far)
        {
            CircuitDesign asked = design(value);
            if (Holds(asked, asked.Undetermined.Count))
            {
                (near, start, open) = (value, asked, asked.Undetermined.Count);
            }
        }

        if (!Holds(start, open))
        {
            return new DesignLimit<T>(null, Stop(start), $"Not even {what} of {shown(near)} {unit} passes: {Stop(start)}.");
        }

        CircuitDesign end = design(far);
        if (Holds(end, open))
        {
            return new DesignLimit<T>(make(far), null, $"All of the range searched passes, up to {what} of {shown(far)} {unit}.");
        }

        double good = near, bad = far;
        for (int i = 0; i < Steps && Math.Abs(bad - good) > tolerance; i++)
        {
            double middle = 0.5 * (good + bad);
            CircuitDesign tried = design(middle);
            if (Holds(tried, open))
            {
                good = middle;
            }
            else
            {
                bad = middle;
                end = tried;
            }
        }

        return new DesignLimit<T>(make(good), Stop(end), $"{Sentence(what)} of {shown(good)} {unit}; beyond it: {Stop(end)}.");
    }

    // A check that was answered at the start and is open here has left the range of its source: that ends the search too.
    private static bool Holds(CircuitDesign design, int openAtStart) =>
        design.IsFeasible && design.Undetermined.Count <= openAtStart && design.Check(CheckKind.ContinuousCurrent) is { Outcome: CheckOutcome.Pass };

    private static CheckResult Stop(CircuitDesign design)
    {
        // Beyond the range of the rating's source everything after it is only an estimate: name the rating.
        CheckResult? rating = design.Check(CheckKind.ContinuousCurrent);
        bool unrated = rating is { Outcome: CheckOutcome.Undetermined };
        return unrated ? rating!.Value : design.Verdict == Verdict.Fail || design.Undetermined.Count == 0 ? design.Governing : design.Undetermined[0];
    }

    private static string Sentence(string what) => char.ToUpperInvariant(what[0]) + what.Substring(1);
}
