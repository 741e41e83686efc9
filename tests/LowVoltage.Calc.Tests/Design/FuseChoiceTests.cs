using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
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

    /// <summary>Of two of known times the smaller breaks too little: the larger is taken up to twice the smaller.</summary>
    [Theory]
    [InlineData(20, 20)]
    [InlineData(20.5, 10)]
    public void LargerFuseThatSettlesMore_IsTakenUpToTwiceTheTimed(double larger, double chosen)
    {
        // 10 A that break 500 A, which is less than 14.4 V over 23.6 mΩ, and a larger one that breaks 2000 A.
        FuseSeries series = FuseSeries.Combine("own list", Blades(10, 500), Blades(larger, 2000));
        CircuitDesign design = CircuitDesigner.Design(CheckCase.Asked(Load.ConstantCurrent(A(7.9))), CheckCase.Table.WithFuses(series));
        Near(14.4 / (0.0036 + CheckCase.Lead), design.Of(CheckKind.BreakingCapacity).Value, 1e-9);
        Assert.Equal(chosen, design.Fuse!.Current.Amperes);
        Assert.Equal(chosen > 10 ? Verdict.Pass : Verdict.Fail, design.Verdict);
        Assert.False(design.IsNearest);
    }

    /// <summary>8 A on a fuse that may carry 80 % of its rating are 10 A, and 10 A of fuse on a wire for 10 A protect it: a limit that is just met is met.</summary>
    [Fact]
    public void FuseOfExactlyTheLoad_OnAWireOfExactlyTheFuse_IsTaken()
    {
        AmpacityTable ten = AmpacityTable.Create(
            "ten amperes", C(30), 1, [C(70)], [AmpacityRow.Create(ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(2.5)), A(10))], References.Reference.CommonPractice("made up for a test"));
        DesignRules rules = new(CheckCase.Table.WithFuses(FuseSeries.Combine("own list", Blades(9.9, 2000), Blades(10, 2000), Blades(10.1, 2000))))
        {
            Ampacity = AmpacityBasis.FromTable(ten), Conductors = ConductorSeries.RoadVehicle.Only("one", ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(2.5))),
        };
        CircuitDesign design = CircuitDesigner.Design(CheckCase.Asked(Load.ConstantCurrent(A(8)), feed: 1), rules);
        Assert.Equal((Verdict.Pass, 10.0), (design.Verdict, design.Fuse!.Current.Amperes));
    }

    private static FuseSeries Blades(double rating, double breaks) => FuseSeries.Create(new FuseSeriesDefinition
    {
        Name = $"breaks {breaks:0} A", Kind = "fuse", Reference = References.Reference.CommonPractice("made up for a test"), Ratings = [A(rating)],
        VoltageRating = V(58), VoltageBasis = RatingBasis.DirectCurrent, BreakingCapacity = A(breaks), BreakingCapacityBasis = RatingBasis.DirectCurrent,
        Curves = [TimeCurrentCurve.Create([], [.. Plain.BladeLongest.Select(g => new TimeCurrentPoint(g.Multiple * rating, g.Seconds))])],
    });
}
