using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Harnesses;

/// <summary>The greatest voltage between two nodes of a harness with every load off: of sources one on top of the other their sum.</summary>
internal static class OpenVoltage
{
    /// <summary>In one load case, V; at least that of the highest source, and that alone where the network has no answer.</summary>
    internal static double Of(Harness harness, LoadCase used)
    {
        double most = harness.GreatestVolts;
        if (harness.SourceArray.Length < 2)
        {
            return most;
        }

        HarnessState state = new HarnessNetwork(Wired(harness), used, new HarnessChange { LoadsOff = true, SourcesStay = true }).Solve(SupplyLevel.Maximum);
        if (!state.Exists)
        {
            return most;
        }

        foreach (IGrouping<int, int> part in Enumerable.Range(0, state.Volts.Length).GroupBy(node => state.Grounds[node]))
        {
            most = Math.Max(most, part.Max(node => state.Volts[node]) - part.Min(node => state.Volts[node]));
        }

        return most;
    }

    /// <summary>In any load case, V.</summary>
    internal static double Of(Harness harness) => CaseGroup.Of(harness).Max(group => Of(harness, group.Steady));

    // With no load on, a wire to be sized has the same voltage at both ends whatever its size.
    private static Harness Wired(Harness harness)
    {
        if (!Array.Exists(harness.BranchArray, branch => branch is HarnessWire { Conductor: null }))
        {
            return harness;
        }

        Conductor any = harness.Rules.Conductors.Conductors[0];
        return new Harness(harness.Parts with { Branches = [.. harness.BranchArray.Select(branch => branch is HarnessWire { Conductor: null } wire ? wire.WithConductor(any) : branch)] });
    }
}
