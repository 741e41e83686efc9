using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>The inverses: at the limit the circuit passes, a thousandth beyond it fails.</summary>
public class LimitTests
{
    private const double Beyond = 1.001;

    [Theory]
    [InlineData("Run")]
    [InlineData("Current")]
    [InlineData("Power")]
    [InlineData("Ambient")]
    [InlineData("Conductors")]
    public void Limit_RandomDesign_PassesThereAndFailsBeyond(string what)
    {
        LimitType type = Enum.Parse<LimitType>(what);
        int asked = 0;
        MetamorphicTests.ForEach(60, MetamorphicTests.Single, given =>
        {
            if (given.Wire is null || Library.Answer(given) is not { Fails: false } own || Library.Limit(type, given) is not { } limit)
            {
                return;
            }

            int open = Open(own);
            CaseGiven there = At(given, type, limit), further = At(given, type, type switch { LimitType.Ambient => limit + 0.05, LimitType.Conductors => limit + 1, _ => limit * Beyond });
            Assert.True(Holds(Library.Answer(there)), $"fails at its limit of {limit}: {Library.Answer(there).Text()}");
            if (limit < Most(type))
            {
                asked++;
                LibraryAnswer answer = Library.Answer(further);
                Assert.True(!Holds(answer) || Open(answer) > open, $"still passes beyond its limit of {limit}");
            }
        });
        Assert.True(asked > 10, $"only {asked} had a limit");
    }

    private static int Open(LibraryAnswer answer) => answer.Checks.Values.Count(check => check.Outcome is not ("Pass" or "Fail"));

    private static bool Holds(LibraryAnswer answer) => !answer.Fails && answer.Checks.TryGetValue("ContinuousCurrent", out LibraryCheck rated) && rated.Outcome == "Pass";

    private static double Most(LimitType type) => type switch { LimitType.Run => 9e3, LimitType.Current => 9e3, LimitType.Power => 5e5, LimitType.Ambient => 249, _ => 999 };

    private static CaseGiven At(CaseGiven given, LimitType type, double value) => type switch
    {
        // The return of the same wire keeps its ratio to the feed.
        LimitType.Run => given with { Feed = value, Back = given.Back.Type == BackType.Wire ? given.Back with { Meters = given.Back.Meters * value / given.Feed } : given.Back },
        LimitType.Current => given with { Load = new LoadGiven(LoadType.Current, value) { LeastVolts = Least(given.Load) } },
        LimitType.Power => given with { Load = new LoadGiven(LoadType.Power, value) { LeastVolts = Least(given.Load) } },
        LimitType.Ambient => given with { Place = given.Place with { Ambient = value } },
        _ => given with { Place = given.Place with { Loaded = (int)value } },
    };

    private static double? Least(LoadGiven load) => new OwnLoad(load).LeastVolts is > 0 and double volts ? volts : null;
}
