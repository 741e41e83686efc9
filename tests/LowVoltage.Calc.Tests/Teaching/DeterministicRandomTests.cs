using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

public class DeterministicRandomTests
{
    [Fact]
    public void NextBits_OfSeed1234567_AreThePublishedOnes()
    {
        // The test vector of SplitMix64 that accompanies its public-domain reference code (first five outputs for seed 1234567), from memory.
        DeterministicRandom random = new(1234567);
        ulong[] drawn = [random.NextBits(), random.NextBits(), random.NextBits(), random.NextBits(), random.NextBits()];

        Assert.Equal([6457827717110365317UL, 3203168211198807973UL, 9817491932198370423UL, 4593380528125082431UL, 16408922859458223821UL], drawn);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    [InlineData(1000)]
    public void Next_StaysBelowItsCount_AndReachesBothEnds(int count)
    {
        DeterministicRandom random = new(42);
        int[] drawn = [.. Enumerable.Range(0, 20_000).Select(_ => random.Next(count))];

        Assert.Equal(0, drawn.Min());
        Assert.Equal(count - 1, drawn.Max());
        // Six standard deviations of the mean of fair draws.
        Assert.InRange(drawn.Average(), ((count - 1) / 2.0) - (6 * count / Math.Sqrt(12 * drawn.Length)), ((count - 1) / 2.0) + (6 * count / Math.Sqrt(12 * drawn.Length)));
    }

    [Fact]
    public void OnGrid_ReachesBothEndsAndNothingBetweenSteps()
    {
        DeterministicRandom random = new(1);
        decimal[] drawn = [.. Enumerable.Range(0, 500).Select(_ => random.OnGrid(0.5m, 1.5m, 0.25m)).Distinct().Order()];

        Assert.Equal([0.5m, 0.75m, 1.0m, 1.25m, 1.5m], drawn);
    }

    [Fact]
    public void Shuffle_KeepsEverything_AndEveryOrderOccurs()
    {
        DeterministicRandom random = new(3);
        string[] orders = [.. Enumerable.Range(0, 600).Select(_ => string.Concat(random.Shuffle("abc"))).Distinct().Order()];

        Assert.Equal(["abc", "acb", "bac", "bca", "cab", "cba"], orders);
    }

    [Fact]
    public void Mix_ChangesWithEveryPartAndWithTheirOrder()
    {
        ulong[] mixed = [DeterministicRandom.Mix(1, 2, 3), DeterministicRandom.Mix(1, 2, 4), DeterministicRandom.Mix(1, 3, 2), DeterministicRandom.Mix(2, 2, 3), DeterministicRandom.Mix(1, 2)];

        Assert.Equal(5, mixed.Distinct().Count());
    }
}
