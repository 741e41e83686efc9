using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <content>The working.</content>
public static partial class FuseLoading
{
    /// <summary>The working of <see cref="TrySmallestFor"/>: load, loading rule, next standard rating.</summary>
    /// <param name="series">The series.</param>
    /// <param name="load">Continuous load current. Positive.</param>
    /// <param name="rule">The rule; ratings that it does not cover are passed over.</param>
    /// <returns>The steps, the rating chosen last; that no fuse of the series does is an answer too.</returns>
    /// <exception cref="ArgumentNullException">The series or the rule is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The load is outside its range.</exception>
    public static WorkedSolution ExplainSmallestFor(FuseSeries series, ElectricCurrent load, LoadingRule rule)
    {
        bool found = TrySmallestFor(series, load, rule, out FuseRating? fuse);
        double amperes = Accept.Amperes(load, nameof(load));
        SolutionBuilder board = new("Fuse for a continuous load");
        board.Given("fuses", series.Name);
        board.Given("loading rule", rule.Name);
        Symbol i = board.Given("continuous load", "I_b", amperes, "A");
        board.Caution(SolutionCautions.Fuse);
        if (!found)
        {
            FuseRating largest = series.Ratings[series.Ratings.Count - 1];
            board.State("fuse", $"No rating of {series.Name} carries the load by this rule; the largest is {NumberText.WithUnit(largest.Amperes, 6, "A")}.", series.Reference);
            return board.Build();
        }

        _ = rule.TryFactorFor(fuse!.Amperes, out double factor);
        Symbol share = board.LookUp("share of its rating that the fuse may carry continuously", "k", factor, "", rule.Reference, "A fuse run at its rating for long ages and opens without cause.");
        Symbol least = board.Step("least rating", "I_min", i / share, amperes / factor, "A", rule.Reference, "", RoundingDirection.Up);
        Symbol rating = new("I_n", fuse.Amperes, "A", "rating chosen");
        board.Compare("next standard rating", rating, Relation.AtLeast, least, fuse.Series.Reference, $"The smallest of {series.Name} that is large enough.", verdict: true);
        return board.Build(fuse.ToString());
    }
}
