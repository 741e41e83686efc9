using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Proof.Simulation;
using LowVoltage.Calc.Tests.Proof.Trees;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>That the referee of trees notices what it is there for: each of these was once passed or not asked.</summary>
public class TreeRefereeTests
{
    private const int Main = 0;

    /// <summary>A motor of 3 A that takes 28 A for 2 s: a 10 A main fuse carries it and opens at its start; the 30 A fuse of the branch holds.</summary>
    [Fact]
    public void MainFuse_TooSmallForAStart_IsRefused()
    {
        TreeTrial trial = TreeTrial.Verify(Van(10, new LoadGiven(LoadType.Motor, 3, 28, 28, 2) { CutsOut = true }));
        Assert.Equal(Say.MustFail, Ruling(trial, "InrushHeld", "main fuse"));
        Assert.NotEqual(Say.MustFail, Ruling(trial, "InrushHeld", "fuse 0"));
        Assert.Equal("Fail", trial.Answer.Outcome("InrushHeld", "main fuse"));
    }

    [Fact]
    public void MainFuse_WhoseStartWasNotAsked_IsNoticed()
    {
        TreeTrial trial = TreeTrial.Verify(Van(10, new LoadGiven(LoadType.Motor, 3, 28, 28, 2) { CutsOut = true }));
        Assert.Empty(trial.NotAsked);
        trial.Answer.Forget("InrushHeld", "main fuse");
        Assert.Contains(trial.NotAsked, ruling => ruling is { Kind: "InrushHeld", Place: "main fuse" });
    }

    [Fact]
    public void MainFuse_LargeEnough_IsNotRefused()
    {
        TreeTrial trial = TreeTrial.Verify(Van(40, new LoadGiven(LoadType.Motor, 3, 28, 28, 2) { CutsOut = true }));
        Assert.DoesNotContain(trial.Rulings, ruling => ruling.Refuses && ruling.Place == "main fuse");
    }

    /// <summary>Two motors that start together pass the main fuse together: either alone it would hold.</summary>
    [Fact]
    public void MainFuse_TooSmallForTwoStartsTogether_IsRefused()
    {
        TreeGiven van = Van(30, new LoadGiven(LoadType.Motor, 3, 25, 25, 3) { CutsOut = true });
        Assert.NotEqual(Say.MustFail, Ruling(TreeTrial.Verify(van), "InrushHeld", "main fuse"));
        TreeTrial together = TreeTrial.Verify(van with { Together = [[0, 1]] });
        Assert.Equal(Say.MustFail, Ruling(together, "InrushHeld", "main fuse"));
        Assert.NotEqual("Pass", together.Answer.Outcome("InrushHeld", "main fuse"));
    }

    [Fact]
    public void MainFuse_TooSmallForTheSum_IsRefused()
    {
        TreeTrial trial = TreeTrial.Verify(Van(10, new LoadGiven(LoadType.Current, 5)));
        Assert.Equal(Say.MustFail, Ruling(trial, "FuseCarriesLoad", "main fuse"));
        Assert.Equal(Say.MustPass, Ruling(trial, "FuseCarriesLoad", "fuse 0"));
        Assert.Equal("Fail", trial.Answer.Outcome("FuseCarriesLoad", "main fuse"));
    }

    [Fact]
    public void FuseThatAFarFaultDoesNotOpen_IsRefused()
    {
        TreeGiven van = Van(40, new LoadGiven(LoadType.Current, 3));
        PartGiven far = van.Parts[2] with { Wire = van.Parts[2].Wire! with { Meters = 60 } };
        TreeTrial trial = TreeTrial.Verify(van with { Parts = [.. van.Parts.Select((part, k) => k == 2 ? far : part)] });
        Assert.Equal(Say.MustFail, Ruling(trial, "FaultOpensFuse", "fuse 0"));
        Assert.Equal("Fail", trial.Answer.Outcome("FaultOpensFuse", "fuse 0"));
    }

    // Two like circuits of 30 A blade fuses and 4 mm² behind a main fuse that is screwed to the busbar; a chassis back.
    private static TreeGiven Van(double main, LoadGiven load)
    {
        List<PartGiven> parts = [new("main fuse", -1) { Fuse = Blade(main), FuseAmbient = 30, IsBus = true }];
        for (int k = 0; k < 2; k++)
        {
            parts.Add(new($"fuse {k}", Main) { Fuse = Blade(30), FuseAmbient = 30 });
            parts.Add(new($"wire {k}", parts.Count - 1)
            {
                Wire = new(Sizes.Of(0).First(size => size.Value.Area.SquareMillimeters >= 4), 2) { Place = new PlaceGiven(30) },
                Insulation = new("PVC", InsulationMaterial.PolyvinylChloride),
            });
        }

        parts.Add(new("chassis", -1, true) { Ohms = 0.001, IsBus = true });
        TreeLoadGiven[] loads = [new("load 0", load, 2, 5) { DropPercent = 20 }, new("load 1", load, 4, 5) { DropPercent = 20 }];
        return new("van", new SourceGiven(SourceType.Range, 11.8, 12, 14.4, 0.016, 0.03), new RulesGiven(0), [.. parts], loads);
    }

    private static Named<FuseRating> Blade(double amperes)
    {
        FuseRating rating = FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(amperes));
        return new($"blade {amperes} A", rating);
    }

    private static Say Ruling(TreeTrial trial, string kind, string place) => trial.Rulings.Single(ruling => ruling.Kind == kind && ruling.Place == place).Ruling.Say;
}
