using System.Globalization;
using LowVoltage.Calc.Tests.Proof.Simulation;
using Xunit.Abstractions;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>Random designs and verifications against an independent simulator; <c>bash .ci/proof</c> runs as many as wanted with any seed.</summary>
public class SimulatorTests(ITestOutputHelper output)
{
    private const int QuickDesigns = 2000;
    private const int QuickVerifications = 500;

    internal static readonly Lazy<ProofRun> Run = new(() =>
    {
        int designs = Setting("LOWVOLTAGE_PROOF", QuickDesigns);
        return ProofRun.Of(Setting("LOWVOLTAGE_PROOF_SEED", 20_261_129), designs, designs == QuickDesigns ? QuickVerifications : Setting("LOWVOLTAGE_PROOF_VERIFICATIONS", designs / 5));
    });

    /// <summary>A referee that never rules proves nothing: each check must have been ruled both ways.</summary>
    [Theory]
    [InlineData("VoltageDrop")]
    [InlineData("LoadVoltage")]
    [InlineData("ContinuousCurrent")]
    [InlineData("FuseCarriesLoad")]
    [InlineData("FuseProtectsWire")]
    [InlineData("FuseVoltage")]
    [InlineData("BreakingCapacity")]
    [InlineData("InrushHeld")]
    [InlineData("OverloadTemperature")]
    [InlineData("FaultOpensFuse")]
    [InlineData("ShortCircuitTemperature")]
    [InlineData("MainFuseCarriesLoad")]
    [InlineData("MainFuseHoldsStart")]
    [InlineData("MainFuseProtectsLead")]
    [InlineData("MainFuseVoltage")]
    [InlineData("MainFuseBreakingCapacity")]
    [InlineData("FaultOpensMainFuse")]
    [InlineData("LeadShortCircuitTemperature")]
    [InlineData("LeadOverloadTemperature")]
    public void Referee_RandomCircuits_RulesBothWays(string check)
    {
        ProofRun run = Run.Value;
        int passes = run.Ruled(check, Say.MustPass), fails = run.Ruled(check, Say.MustFail);
        int least = Math.Max(1, run.Cases / 1000);
        Assert.True(passes >= least && fails >= least, $"{check}: {passes} must pass, {fails} must fail of {run.Cases}");
    }

    [Fact]
    public void Verdicts_RandomCircuits_CountedByCheck()
    {
        ProofRun run = Run.Value;
        string report = run.Report();
        output.WriteLine(report);
        if (Environment.GetEnvironmentVariable("LOWVOLTAGE_PROOF_FILE") is { Length: > 0 } file)
        {
            File.WriteAllText(file, report + run.Examples("false pass") + run.Examples("pass in"));
        }

        // A run in which nothing passes would find no false pass.
        Assert.InRange(run["verdict Pass"], run.Cases / 10, run.Cases);
    }

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.Integer, CultureInfo.InvariantCulture, out int value) ? value : otherwise;
}
