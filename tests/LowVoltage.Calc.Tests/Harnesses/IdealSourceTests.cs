using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A source without internal resistance: its short-circuit current is not known, whatever lies behind the fuse.</summary>
public class IdealSourceTests
{
    /// <summary>With two wires side by side behind a fuse without resistance this threw "Ties close a loop".</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Verify_WiresSideBySideBehindAFuse_LeavesTheBreakingCapacityUndetermined(int wires)
    {
        HarnessVerification found = HarnessDesigner.Verify(Fed(Source.Ideal(V(12)), wires));
        CheckResult check = Assert.Single(found.Checks, c => c.Kind == CheckKind.BreakingCapacity).Result;
        Assert.Equal((CheckOutcome.Undetermined, null), (check.Outcome, check.Value));
        Assert.StartsWith("the source is given without internal resistance", check.Note, StringComparison.Ordinal);
        Assert.Equal(Verdict.Undetermined, found.Verdict);
        Assert.All(found.Checks.Where(c => c.Kind != CheckKind.BreakingCapacity), c => Assert.True(c.Result.Outcome == CheckOutcome.Pass, c.ToString()));
    }

    [Fact]
    public void Verify_WiresSideBySideBehindAFuse_OfASourceWithLittleResistance_KnowsItsShortCircuit()
    {
        CheckResult check = Assert.Single(HarnessDesigner.Verify(Fed(Source.BehindResistance(V(12), MilliOhm(0.1)), 2)).Checks, c => c.Kind == CheckKind.BreakingCapacity).Result;
        Near(120_000, check.Value, 1e-3);
        Assert.Equal(CheckOutcome.Fail, check.Outcome);
    }

    private static Harness Fed(Source source, int wires)
    {
        HarnessBuilder harness = new HarnessBuilder("side by side", DesignRules.Bench).Terminals("plus", "fused", "load").Grounds("minus")
            .Source("source", "plus", "minus", source).Fuse("fuse", "plus", "fused", Blade(10)).Load("lamp", "load", "minus", Load.ConstantCurrent(A(5)));
        for (int n = 1; n <= wires; n++)
        {
            harness.Wire($"wire {n}", "fused", "load", RoadVehicle(2.5), M(1), Place.Create(C(25)), InsulationMaterial.PolyvinylChloride);
        }

        return harness.Build();
    }
}
