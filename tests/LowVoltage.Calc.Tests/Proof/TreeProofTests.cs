using System.Globalization;
using LowVoltage.Calc.Tests.Proof.Trees;
using Xunit.Abstractions;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>Random harnesses of one source against an independent referee: no check that the library passes may be one that the referee refuses.</summary>
/// <remarks>LOWVOLTAGE_TREES sets how many harnesses, LOWVOLTAGE_TREES_SEED the seed, LOWVOLTAGE_TREES_FILE where counts and disagreements go.</remarks>
public class TreeProofTests(ITestOutputHelper output)
{
    private const int Quick = 270;

    private static readonly Lazy<TreeRun> Run = new(() =>
    {
        int count = Setting("LOWVOLTAGE_TREES", Quick);
        return TreeRun.Of(Setting("LOWVOLTAGE_TREES_SEED", 20_261_130), count, count / 9);
    });

    [Theory]
    [InlineData("false pass: ")]
    [InlineData("false verdict: ")]
    [InlineData("not asked: ")]
    public void Checks_RandomTrees_NoneThatTheRefereeRefuses(string disagreement)
    {
        TreeRun run = Run.Value;
        Assert.True(run.Count(disagreement) == 0, run.Count(disagreement) == 0 ? "" : run.Report() + run.Examples(disagreement));
    }

    /// <summary>A referee that never rules proves nothing: each kind must have been ruled both ways, and passed and failed by the library.</summary>
    [Theory]
    [InlineData("FuseCarriesLoad", "MustFail")]
    [InlineData("FuseVoltage", "MustFail")]
    [InlineData("BreakingCapacity", "MustFail")]
    [InlineData("FuseProtectsWire", "MustFail")]
    [InlineData("OverloadTemperature", "MustFail")]
    [InlineData("InrushHeld", "MustFail")]
    [InlineData("FaultOpensFuse", "MustFail")]
    [InlineData("ShortCircuitTemperature", "MustFail")]
    [InlineData("ContinuousCurrent", "MustNotPass")]
    [InlineData("ConductorTemperature", "MustFail")]
    [InlineData("VoltageDrop", "MustFail")]
    [InlineData("LoadVoltage", "MustFail")]
    public void Referee_RandomTrees_RulesBothWays(string kind, string refused)
    {
        TreeRun run = Run.Value;
        int passes = run.Ruled(kind, "MustPass"), fails = run.Ruled(kind, refused);
        Assert.True(passes > 0 && fails > 0, $"{kind}: {passes} must pass, {fails} {refused}");
    }

    [Fact]
    public void Verdicts_RandomTrees_CountedByCheck()
    {
        TreeRun run = Run.Value;
        string report = run.Report();
        output.WriteLine(report);
        if (Environment.GetEnvironmentVariable("LOWVOLTAGE_TREES_FILE") is { Length: > 0 } file)
        {
            File.WriteAllText(file, report + run.Examples("false pass") + run.Examples("not asked") + run.Examples("false verdict") + run.Examples("false fail"));
        }

        // A run in which nothing passes would find no false pass.
        Assert.InRange(run["verdict Pass"], run.Harnesses / 20, run.Harnesses);
    }

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.Integer, CultureInfo.InvariantCulture, out int value) ? value : otherwise;
}
