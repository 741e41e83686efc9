using System.Text.RegularExpressions;
using LowVoltage.Calc.Tests.Proof;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Design.Verdicts;

/// <summary>A circuit that passes is within its own limits, and a limit does not contradict itself in words.</summary>
public partial class LimitsOfPassingCircuitsTests
{
    private const int Cases = 1500;

    [Theory]
    [InlineData("Ambient")]
    [InlineData("Conductors")]
    [InlineData("Run")]
    public void Limit_OfACircuitThatPasses_IsNotBelowTheCircuit(string what)
    {
        LimitType type = Enum.Parse<LimitType>(what);
        int asked = 0;
        MetamorphicTests.ForEach(Cases, MetamorphicTests.Single, given =>
        {
            if (given.Wire is null || !Library.Answer(given).Passes)
            {
                return;
            }

            asked++;
            double own = type switch { LimitType.Ambient => given.Place.Ambient, LimitType.Run => given.Feed, _ => given.Place.Loaded ?? 1 };
            Assert.True(Library.Limit(type, given) is { } limit && limit >= own - 1e-3, $"{what} at least {own}, answered {Library.Limit(type, given)}");
        });
        Assert.True(asked > Cases / 20, $"{asked} passed");
    }

    [Fact]
    public void LongestRun_InWords_NamesTwoNumbersThatDiffer() => MetamorphicTests.ForEach(200, MetamorphicTests.Single, given =>
    {
        if (given is { Wire: { } wire, Fitted.Value: { } fuse })
        {
            string said = CircuitDesigner.LongestRun(Library.Requirements(given), wire, fuse, Library.Rules(given.Rules)).Explanation;
            Assert.DoesNotMatch(SameTwice(), said);
        }
    });

    [GeneratedRegex(@" (\S+) (\S+), at (most|least) \1 \2: fail")]
    private static partial Regex SameTwice();
}
