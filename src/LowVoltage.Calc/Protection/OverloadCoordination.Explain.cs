using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <content>The working.</content>
public static partial class OverloadCoordination
{
    /// <summary>The working of <see cref="Check"/>: load, fuse and wire held against each other.</summary>
    /// <inheritdoc cref="Check"/>
    /// <returns>The steps; they end where the rule is broken, or where nothing is published.</returns>
    public static WorkedSolution ExplainCheck(FuseRating fuse, ElectricCurrent load, ElectricCurrent continuous)
    {
        RatingCheck check = Check(fuse, load, continuous);
        SolutionBuilder board = new("Fuse against the wire, by currents");
        board.Given("fuse", fuse.ToString());
        Symbol ib = board.Given("load", "I_b", Accept.AmperesOrZero(load, nameof(load)), "A");
        Symbol iz = board.Given("continuous current of the wire where it runs", "I_z", Accept.Amperes(continuous, nameof(continuous)), "A");
        Symbol rated = board.LookUp("rating of the fuse", "I_n", fuse.Amperes, "A", fuse.Series.Reference);
        board.Caution(SolutionCautions.Fuse);
        if (board.Compare("does the fuse carry the load", ib, Relation.AtMost, rated, Reference, "", ib.Value <= rated.Value * (1 + Rounding))
            && board.Compare("is the fuse within the wire", rated, Relation.AtMost, iz, Reference, "The fuse protects the wire, so it must not be larger than what the wire carries.", rated.Value <= iz.Value * (1 + Rounding)))
        {
            Fusing(board, fuse, iz, check);
        }

        return board.Build(check.Reason);
    }

    private static void Fusing(SolutionBuilder board, FuseRating fuse, Symbol iz, RatingCheck check)
    {
        if (fuse.Curve is not { } curve)
        {
            board.State("fusing current", check.Reason);
            return;
        }

        Symbol fusing = board.LookUp("conventional fusing current", "I_2", curve.FusingAmperes, "A", fuse.Series.Reference, "From here on the fuse opens within its conventional time.");
        Symbol most = board.Step("most that it may be", "I_m", FusingFactor * iz, FusingFactor * iz.Value, "A", Reference, "A wire stands a modest overload for as long as the fuse may take.", RoundingDirection.Down);
        board.Compare("does the fuse open in time", fusing, Relation.AtMost, most, Reference, "", check.Verdict == RatingVerdict.Within);
    }
}
