using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Design.Search;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>The design of random circuits with short invented lists against the choice among every wire with every fuse, each verified apart.</summary>
public class SearchAgainstEveryPairTests
{
    private const int Circuits = 300;

    public static TheoryData<int> Lots => [.. Enumerable.Range(0, 24)];

    [Theory, MemberData(nameof(Lots))]
    public void Design_RandomCircuits_IsTheChoiceAmongEveryPair(int lot)
    {
        AnyRules any = new(1000 + lot);
        Dictionary<(EveryPair.Rank, bool, bool), int> kinds = [];
        for (int i = 0; i < Circuits; i++)
        {
            (CircuitRequirements asked, DesignRules rules) = any.Next();
            EveryPair pairs = new(asked, rules);
            EveryPair.Choice best = pairs.Best();
            CircuitDesign design = CircuitDesigner.Design(asked, rules);
            string which = $"circuit {i} of lot {lot}: {design}; of every pair {rules.Conductors.Conductors[best.Size]} with {best.Fuse}";
            Assert.True((rules.Conductors.Conductors[best.Size], best.Fuse, best.IsNearest) == (design.Wire, design.Fuse, design.IsNearest), which);
            Assert.Equal(best.Size, design.Rejected.Count);
            for (int k = 0; k < best.Size; k++)
            {
                Assert.True(pairs.WhyNot(k) == design.Rejected[k].Check, $"{which}; {rules.Conductors.Conductors[k]} was not taken because of {pairs.WhyNot(k)}, not {design.Rejected[k].Check}");
            }

            (EveryPair.Rank, bool, bool) kind = (best.Rank, best.IsNearest, best.Fuse is null);
            kinds[kind] = kinds.GetValueOrDefault(kind) + 1;
        }

        // What passes, what is undetermined, what fails and what comes nearest are all among them.
        Assert.All([EveryPair.Rank.Passes, EveryPair.Rank.Undetermined, EveryPair.Rank.FailsWhatNothingCures], rank => Assert.True(kinds.GetValueOrDefault((rank, false, false)) > 2, $"{rank}: {string.Join(", ", kinds)}"));
        Assert.True(kinds.GetValueOrDefault((EveryPair.Rank.None, true, false)) > 2);
    }
}
