using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Checks;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>Of an invented series in which the smaller rating has no published times and the larger has: the larger settles what the smaller cannot, up to three times the smaller.</summary>
public class FuseChoiceTests
{
    [Theory]
    [InlineData(20, 20)]
    [InlineData(30, 30)]
    [InlineData(30.5, 10)]
    public void LargerFuseThatSettlesMore_IsTakenUpToThreeTimesTheUntimed(double larger, double chosen)
    {
        FuseSeries series = FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = "own list", Kind = "fuse", Reference = References.Reference.CommonPractice("made up for a test"), Ratings = [A(10), A(larger)],
            VoltageRating = V(58), VoltageBasis = RatingBasis.DirectCurrent, BreakingCapacity = A(2000), BreakingCapacityBasis = RatingBasis.DirectCurrent,
            Curves = [null, TimeCurrentCurve.Create([], [.. Plain.BladeLongest.Select(g => new TimeCurrentPoint(g.Multiple * larger, g.Seconds))])],
        });
        CircuitDesign design = CircuitDesigner.Design(CheckCase.Asked(Load.ConstantCurrent(A(7.9))), CheckCase.Table.WithFuses(series));
        Assert.Equal(chosen, design.Fuse!.Current.Amperes);
        Assert.Equal(chosen > 10 ? Verdict.Pass : Verdict.Undetermined, design.Verdict);
    }
}
