using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Tests.Validation;

namespace LowVoltage.Calc.Tests.Protection;

public class ProtectionReferenceTests
{
    [Fact]
    public void Tables_NameTheirSourceAndHowItIsKnown()
    {
        Assert.Equal("IEC 60949 (1988), clause 3 [from memory]", AdiabaticHeating.Reference.ToString());
        Assert.Equal("ICEA P-32-382 (2007) [from memory]", IceaShortCircuit.Reference.ToString());
        Assert.Equal(ReferenceKind.Paper, FusingEstimates.OnderdonkReference.Kind);
        Assert.Equal("ABYC E-11, Table V-A [standard]", SmallCraftInterrupting.Reference.ToString());
        Assert.Equal(ReferenceKind.Handbook, PulseShape.Reference.Kind);
        Assert.Equal(ReferenceKind.Handbook, PulseWithstand.Reference.Kind);
        Assert.Equal(ReferenceKind.FromMemory, PreferredNumbers.Reference.Kind);
        Assert.Equal("Fuse re-rating note", AmbientRerating.UlSmallFuse.Reference.Title);
        Assert.Equal(ReferenceKind.FromMemory, FuseSeries.RoadVehicleBoltInContacts.Reference.Kind);
        Assert.Equal("ISO 8820-3 (2010; the fourth edition, 2015, was not compared), type C [standard]", FuseSeries.RoadVehicleBlade.Reference.ToString());
    }

    [Fact]
    public void EverySeriesWithABreakingCapacity_NamesItsSourceAndBasis()
    {
        foreach (FuseSeries series in FuseSeriesTablesTests.Series.Values)
        {
            Assert.NotEmpty(series.Reference.Title);
            Assert.NotEmpty(series.Kind);
            Assert.Equal(series.BreakingCapacity is null, series.BreakingCapacityReference is null);
            Assert.Equal(series.BreakingCapacity is null, series.BreakingCapacityBasis == RatingBasis.NotStated);
        }
    }
}
