using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Fuses that no wire is checked with: beside a busbar, between sources, in the way back, in a ring. They carry a current and have to break one; they were not asked, and harnesses with them passed.</summary>
public class FusesWithoutAWireTests
{
    // 58 V on charge, 4 mΩ: 14 500 A.
    private static readonly Source Bank = Source.BehindResistance(V(46), V(48), V(58), MilliOhm(4), MilliOhm(8));

    [Fact]
    public void MainFuseBesideTheBusbar_CarriesTheSumOfItsCircuits()
    {
        HarnessVerification found = HarnessDesigner.Verify(Panel().Fuse("main", "plus", "bus", Blade(10)).Build());
        Assert.Equal(Verdict.Fail, found.Verdict);
        Holds(found, CheckKind.FuseCarriesLoad, "main", 10, 24 / 0.8);
        Holds(found, CheckKind.FuseVoltage, "main", 32, 58);
        Holds(found, CheckKind.BreakingCapacity, "main", 58 / 0.004, 1000);
    }

    [Fact]
    public void MainFuseBesideTheBusbar_LargeEnoughAndMadeForIt_Passes() =>
        Assert.Equal(Verdict.Pass, HarnessDesigner.Verify(Panel().Fuse("main", "plus", "bus", Gg(63)).Build()).Verdict);

    /// <summary>With nothing asked of it the smallest rating of the series was chosen: 16 A for 24 A.</summary>
    [Fact]
    public void MainFuseBesideTheBusbar_LeftToTheSizing_CarriesTheSumOfItsCircuits()
    {
        HarnessDesign found = HarnessDesigner.Design(Panel().Fuse("main", "plus", "bus", null).Build());
        FuseRating main = found.Harness.Branches.OfType<HarnessFuse>().Single(fuse => fuse.Id == "main").Rating!;
        Assert.InRange(main.Current.Amperes, 24 / 0.8, 50);
        CheckResult check = found.Verification.Find(CheckKind.FuseCarriesLoad, "main")!.Value.Result;
        Assert.True(check.Outcome == CheckOutcome.Pass, check.ToString());
    }

    [Fact]
    public void FusesOfTwoBatteries_CarryHalfEachAndBreakTheirOwn()
    {
        HarnessVerification found = HarnessDesigner.Verify(
            Panel().Terminals("plus 2").Source("bank 2", "plus 2", "minus", Bank).Fuse("main", "plus", "bus", Blade(3)).Fuse("main 2", "plus 2", "bus", Blade(3)).Build());
        foreach (string main in new[] { "main", "main 2" })
        {
            Holds(found, CheckKind.FuseCarriesLoad, main, 3, 12 / 0.8);
            Holds(found, CheckKind.FuseVoltage, main, 32, 58);
            Holds(found, CheckKind.BreakingCapacity, main, 58 / 0.004, 1000);
        }
    }

    [Fact]
    public void FuseInTheWayBack_CarriesWhatComesBack()
    {
        HarnessBuilder builder = new HarnessBuilder("fuse in the way back", DesignRules.RoadVehicle).Terminals("plus", "minus", "fused", "load +", "load -", "back").Source("bank", "plus", "minus", Bank)
            .Fuse("fuse", "plus", "fused", Gg(16)).Load("load", "load +", "load -", Load.ConstantCurrent(A(10))).Fuse("fuse back", "back", "minus", Blade(3));
        HarnessVerification found = HarnessDesigner.Verify(Wired(Wired(builder, "out", "fused", "load +"), "home", "load -", "back").Build());
        Holds(found, CheckKind.FuseCarriesLoad, "fuse back", 3, 10 / 0.8);
        Holds(found, CheckKind.FuseVoltage, "fuse back", 32, 58);
        Holds(found, CheckKind.BreakingCapacity, "fuse back", 58 / 0.004, 1000);
    }

    [Fact]
    public void FusesOfARing_CarryTheirShares()
    {
        HarnessBuilder builder = new HarnessBuilder("ring", DesignRules.RoadVehicle).Terminals("plus", "minus", "a", "b", "load +", "load -").Source("bank", "plus", "minus", Bank)
            .Fuse("one", "plus", "a", Blade(3)).Fuse("two", "plus", "b", Blade(3)).Load("load", "load +", "load -", Load.ConstantCurrent(A(16)));
        HarnessVerification found = HarnessDesigner.Verify(Wired(Wired(Wired(builder, "w1", "a", "load +"), "w2", "b", "load +"), "home", "load -", "minus").Build());
        foreach (string fuse in new[] { "one", "two" })
        {
            Holds(found, CheckKind.FuseCarriesLoad, fuse, 3, 8 / 0.8);
            Holds(found, CheckKind.FuseVoltage, fuse, 32, 58);
            Holds(found, CheckKind.BreakingCapacity, fuse, 58 / 0.004, 1000);
        }
    }

    private static void Holds(HarnessVerification found, CheckKind kind, string fuse, double value, double limit)
    {
        CheckResult check = found.Find(kind, fuse)!.Value.Result;
        Assert.True(check.Outcome == CheckOutcome.Fail, check.ToString());
        Assert.Equal(1, check.Value!.Value / value, 4);
        Assert.Equal(1, check.Limit!.Value / limit, 4);
    }

    // Three circuits of 8 A on a busbar; what feeds that is left to the test.
    private static HarnessBuilder Panel()
    {
        HarnessBuilder builder = new HarnessBuilder("panel", DesignRules.RoadVehicle).Terminals("plus", "minus").Busbars("bus").Source("bank", "plus", "minus", Bank);
        for (int k = 1; k <= 3; k++)
        {
            builder = builder.Terminals($"fused {k}", $"load {k} +", $"load {k} -").Fuse($"fuse {k}", "bus", $"fused {k}", Gg(16)).Load($"load {k}", $"load {k} +", $"load {k} -", Load.ConstantCurrent(A(8)));
            builder = Wired(Wired(builder, $"out {k}", $"fused {k}", $"load {k} +"), $"home {k}", $"load {k} -", "minus");
        }

        return builder;
    }

    private static HarnessBuilder Wired(HarnessBuilder builder, string id, string from, string to) =>
        builder.Wire(id, from, to, RoadVehicle(4), M(1), Place.Create(C(30)), InsulationMaterial.PolyvinylChloride);

    private static FuseRating Gg(double amperes) => FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(A(amperes));
}
