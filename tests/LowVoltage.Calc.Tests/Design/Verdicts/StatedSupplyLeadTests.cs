using LowVoltage.Calc.Tests.Proof;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>To state more never takes the wire out of the answer.</summary>
public class StatedSupplyLeadTests
{
    [Theory]
    [InlineData(0.001)]
    [InlineData(0.003)]
    [InlineData(0.010)]
    public void Design_SupplyLeadStated_StillNamesAWireLikeTheOneBefore(double ohms) => MetamorphicTests.ForEach(300, CaseMaker.Design, given =>
    {
        LibraryAnswer unstated = Library.Answer(given with { UpstreamOhms = null, DropPercent = 15 });
        // A slow device behind a weak source needs the copper for its far-end fault.
        if (unstated.Fails || unstated.Wire is null || given.Rules.Fuses is FuseType.Gg or FuseType.Breakers)
        {
            return;
        }

        // The lead's own loss may take a size or two; not a wire for a fuse of another kind.
        LibraryAnswer stated = Library.Answer(given with { UpstreamOhms = ohms, DropPercent = 15 });
        Assert.NotNull(stated.Wire);
        if (stated.Checks.TryGetValue("FaultOpensFuse", out LibraryCheck fault) && fault.Value > 0.8 * fault.Limit)
        {
            // A weak supply behind the lead opens the same fuse only just in time: there every milliohm of the wire counts.
            return;
        }

        Assert.True(stated.Wire.Area.SquareMillimeters <= 3 * unstated.Wire.Area.SquareMillimeters, $"{unstated.Wire} becomes {stated.Wire} behind {ohms} Ω");
    });
}
