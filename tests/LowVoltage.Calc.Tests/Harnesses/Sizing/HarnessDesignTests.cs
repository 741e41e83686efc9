using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses.Sizing;

/// <summary>A harness sized: it passes, it keeps what is given, and no choice of sizes that passes is lighter than the bound.</summary>
public class HarnessDesignTests
{
    private static readonly DesignRules FewSizes = new(DesignRules.RoadVehicle)
    {
        Conductors = DesignRules.RoadVehicle.Conductors.Only("some sizes", [.. new[] { 0.75, 1.5, 2.5, 4, 6, 10 }.Select(mm2 => (ConductorSize)MetricSize.FromSquareMillimeters(mm2))]),
    };

    [Fact]
    public void Design_SmallHarnesses_AreTheLightestThatPassWithinTheStatedGap()
    {
        Random random = new(53);
        int passed = 0, proven = 0;
        for (int n = 0; n < 12; n++)
        {
            Harness asked = Small(random);
            HarnessDesign design = HarnessDesigner.Design(asked);
            double? least = TryEverything(design.Harness);
            if (design.Verification.Failed.Any(c => c.Kind != CheckKind.BreakingCapacity))
            {
                Assert.Null(least);
                continue;
            }

            passed++;
            proven += design.IsProvenLeast ? 1 : 0;
            Assert.NotNull(least);
            Assert.True(design.LowerBound <= least.Value * (1 + 1e-9), $"{n}: bound {design.LowerBound} above {least}");
            Assert.True(design.Cost >= least.Value * (1 - 1e-9));
            Assert.True(design.Cost <= least.Value * 1.1, $"{n}: {design.Cost} kg, the lightest that passes has {least}");
            if (design.IsProvenLeast)
            {
                Assert.Equal(least.Value, design.Cost, 1e-9 * least.Value);
            }
        }

        Assert.True(passed >= 6 && proven >= 3, $"{passed} pass, {proven} proven least");
    }

    [Fact]
    public void Design_GivenWiresAndFuses_AreKept()
    {
        Harness asked = Vans.Two(Amperes(4), Amperes(8)).Replace(Wire("left feed", "left fused", "left +", null, 3)).Build();
        HarnessDesign design = HarnessDesigner.Design(asked);

        foreach (HarnessWire wire in asked.Branches.OfType<HarnessWire>().Where(w => w.Conductor is not null))
        {
            Assert.Equal(wire.Conductor, ((HarnessWire)design.Harness.Branches.Single(b => b.Id == wire.Id)).Conductor);
        }

        Assert.Equal(["left feed"], design.HeldBy.Keys);
    }

    [Fact]
    public void Design_ByPrice_TakesAnotherChoiceThanByMass()
    {
        Harness asked = Small(new Random(59));
        HarnessDesign mass = HarnessDesigner.Design(asked), price = HarnessDesigner.Design(asked, c => 1);

        // Where every size costs the same a metre, any choice costs what the lengths are.
        Assert.Equal(asked.Branches.OfType<HarnessWire>().Sum(w => w.Length.Meters), price.Cost, 1e-9);
        Assert.NotEqual(mass.Cost, price.Cost);
    }

    [Fact]
    public void Design_PriceBelowNothing_IsRefused() => Assert.Throws<ArgumentException>(() => HarnessDesigner.Design(Small(new Random(61)), _ => -1));

    [Fact]
    public void Design_MoreAllowance_CostsNoMore()
    {
        Harness asked = Small(new Random(67));
        HarnessDesign design = HarnessDesigner.Design(asked);
        Assert.True(design.SavingFor(ElectricPotential.FromVolts(0.1)) >= 0);
        Assert.True(design.CostDividedByLength is null || design.CostDividedByLength >= design.LowerBound * (1 - 1e-9));
    }

    [Fact]
    public void Design_Cancelled_Stops()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => HarnessDesigner.Design(Small(new Random(71)), cancellation: source.Token));
    }

    private static Load Amperes(double amperes) => Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));

    private static HarnessWire Wire(string id, string from, string to, Conductor? conductor, double meters) =>
        HarnessWire.Create(id, from, to, conductor, Length.FromMeters(meters), Vans.Cabin, Vans.Vinyl);

    // A feed behind one fuse to a splice, two loads, their common ground: four wires to be sized. The source is soft enough for a blade to break its current.
    private static Harness Small(Random random)
    {
        double some(double low, double high) => Math.Round(low + ((high - low) * random.NextDouble()), 1);
        return new HarnessBuilder("small", FewSizes)
            .Terminals("plus", "minus", "fused", "one +", "other +").Splices("splice").Grounds("stud")
            .Source("supply", "plus", "minus", Source.BehindResistance(ElectricPotential.FromVolts(12.6), ElectricResistance.FromMilliohms(20)))
            .Fuse("F", "plus", "fused", Vans.Blade(15))
            .Add(Wire("feed", "fused", "splice", null, some(1, 5)), Wire("one feed", "splice", "one +", null, some(0.5, 4)), Wire("other feed", "splice", "other +", null, some(0.5, 4)), Wire("ground", "stud", "minus", null, some(0.5, 2)))
            .Load("one", "one +", "stud", Amperes(some(1, 6))).Load("other", "other +", "stud", Amperes(some(1, 5)))
            .Build();
    }

    private static double? TryEverything(Harness sized)
    {
        Conductor[] sizes = [.. FewSizes.Conductors.Conductors];
        string[] wires = [.. sized.Branches.OfType<HarnessWire>().Select(w => w.Id)];
        double? best = null;
        for (int n = 0; n < Math.Pow(sizes.Length, wires.Length); n++)
        {
            Dictionary<string, Conductor> chosen = [];
            int rest = n;
            foreach (string wire in wires)
            {
                (chosen[wire], rest) = (sizes[rest % sizes.Length], rest / sizes.Length);
            }

            double mass = sized.Branches.OfType<HarnessWire>().Sum(w => chosen[w.Id].MassPerLength.KilogramsPerMeter * w.Length.Meters);
            if ((best is null || mass < best) && HarnessDesigner.Verify(sized.WithConductors(chosen)).Checks.All(c => c.Outcome != CheckOutcome.Fail))
            {
                best = mass;
            }
        }

        return best;
    }
}
