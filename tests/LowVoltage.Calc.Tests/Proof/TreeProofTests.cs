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

    [Fact]
    public void Checks_RandomTrees_NoPassThatTheRefereeRefuses()
    {
        TreeRun run = Run.Value;
        string report = run.Report();
        output.WriteLine(report);
        if (Environment.GetEnvironmentVariable("LOWVOLTAGE_TREES_FILE") is { Length: > 0 } file)
        {
            File.WriteAllText(file, report + run.Examples("false pass") + run.Examples("not asked") + run.Examples("false verdict") + run.Examples("false fail"));
        }

        Assert.True(run.Count("false pass: ") == 0, report + run.Examples("false pass: "));
        Assert.True(run.Count("false verdict: ") == 0, report + run.Examples("false verdict: "));
        Assert.True(run.Count("not asked: ") == 0, report + run.Examples("not asked: "));
    }

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.Integer, CultureInfo.InvariantCulture, out int value) ? value : otherwise;
}
