namespace FleetStudy.Tests;

/// <summary>Tallies add up to the same in any order, and say what a list of all the values says.</summary>
public sealed class TallyTests : TestFolder
{
    [Fact]
    public void Merge_AnyOrderAndPieceSize_SameDigest()
    {
        string whole = Piece.Calculate(Harness(60, 60), 0, default).Digest();
        Random random = new(7);
        foreach (int size in new[] { 1, 7, 25 })
        {
            StudySpec spec = Harness(60, size);
            int[] order = [.. Enumerable.Range(0, spec.Pieces)];
            random.Shuffle(order);
            List<Tally> parts = [.. order.Select(p => Piece.Calculate(spec, p, default))];

            // Not one after the other but two by two, as in a tree.
            while (parts.Count > 1)
            {
                Tally first = parts[0];
                first.Merge(parts[1]);
                parts.RemoveRange(0, 2);
                parts.Add(first);
            }

            Assert.Equal(60, parts[0].Variants);
            Assert.Equal(whole, parts[0].Digest());
        }
    }

    [Fact]
    public void Digest_AnotherSeedOrVariant_IsAnother()
    {
        string first = Piece.Calculate(Harness(60, 60), 0, default).Digest();
        Assert.NotEqual(first, Piece.Calculate(Harness(61, 61), 0, default).Digest());
        Assert.NotEqual(first, Piece.Calculate(Harness(60, 60, draws: 8) with { Seed = 2 }, 0, default).Digest());
    }

    [Fact]
    public void Histogram_Percentiles_AreThoseOfTheSortedValues()
    {
        Random random = new(3);
        double[] values = [.. Enumerable.Range(0, 997).Select(_ => (3 * random.NextDouble()) - 1.5)];
        Histogram one = new(-2, 0.01), two = new(-2, 0.01);
        for (int k = 0; k < values.Length; k++)
        {
            (k % 3 == 0 ? one : two).Add(values[k]);
        }

        two.Merge(one);
        Array.Sort(values);
        foreach (double percent in new[] { 0.1, 1, 5, 50, 99, 100 })
        {
            // The smallest value that so many per cent do not exceed, rounded down to a step.
            double exact = values[(int)Math.Ceiling(percent / 100 * values.Length) - 1];
            Assert.InRange(two.Percentile(percent)!.Value, exact - 0.01, exact + 1e-12);
        }

        Assert.Null(new Histogram(0, 1).Percentile(50));
        Assert.Equal(values.Length, two.Count);
    }

    [Fact]
    public void Histogram_BeyondItsEnds_CountsInTheEnds()
    {
        Histogram ends = new(-2, 0.01);
        ends.Add(-500);
        ends.Add(500);
        ends.Add(double.PositiveInfinity);
        Assert.Equal((1, 2, 3), (ends.Counts[0], ends.Counts[^1], ends.Count));
        Assert.Throws<ArgumentException>("other", () => ends.Merge(new Histogram(0, 1)));
    }

    [Fact]
    public void Worst_AreTheFirstOfAllSorted_TiesByLowerNumber()
    {
        Random random = new(5);
        (double Margin, long Variant)[] all = [.. Enumerable.Range(0, 500).Select(k => (-random.Next(1, 20) / 10.0, (long)k))];
        CheckTally left = new(-2, 0.01), right = new(-2, 0.01);
        random.Shuffle(all);
        foreach ((double margin, long variant) in all)
        {
            (random.Next(2) == 0 ? left : right).Count(true, false, margin, variant, "");
        }

        right.Merge(left);
        Assert.Equal(all.OrderBy(a => a.Margin).ThenBy(a => a.Variant).Take(CheckTally.Kept).Select(a => a.Variant), right.Worst.Select(w => w.Variant));
        Assert.Equal((500, 500), (right.Asked, right.Failed));
    }

    [Fact]
    public void Bad_AreTheLowestNumbers_WhateverTheOrder()
    {
        long[] numbers = [.. Enumerable.Range(1, 40).Select(k => (long)k * 11)];
        new Random(1).Shuffle(numbers);
        Tally left = new(), right = new();
        foreach (long number in numbers)
        {
            (number % 2 == 0 ? left : right).CountBad(number, "refused");
        }

        left.Merge(right);
        Assert.Equal(40, left.BadCount);
        Assert.Equal(Enumerable.Range(1, Tally.BadKept).Select(k => (long)k * 11), left.Bad.Select(b => b.Variant));
    }
}
