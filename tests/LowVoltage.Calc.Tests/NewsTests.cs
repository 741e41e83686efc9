namespace LowVoltage.Calc.Tests;

public class NewsTests
{
    [Fact]
    public void Of_LinesThatDifferInNumbersAlone_AreToldOnce()
    {
        News news = new();

        Assert.Equal("I = 2 A\nU = 12.5 V", news.Of("I = 2 A\nU = 12.5 V\nI = -3E-05 A"));
        Assert.Equal("P = 2 W", news.Of("U = 14 V\nI = 2 A\nP = 2 W"));
        Assert.Equal("whole: " + ApprovedText.Digest("U = 15 V") + "\n", news.WithDigest("U = 15 V"));
    }

    /// <summary>A reason that is a string of the library is read in its source; one put together from parts, or written here, is read in the approved text.</summary>
    [Fact]
    public void Of_WhatStandsInTheLibrary_IsNotToldButCounts()
    {
        const string Written = "Twisted strands are longer than the conductor.";

        Assert.Equal("7 wires laid by hand.", new News().Of($"{Written}\n7 wires laid by hand.\nadvice: {Written}"));
        Assert.Equal($"Not so. {Written}", new News().Of($"Not so. {Written}"));
        Assert.StartsWith("whole: " + ApprovedText.Digest(Written), new News().WithDigest(Written), StringComparison.Ordinal);
    }

    [Fact]
    public void WithDigest_ANumberThatChanges_ShowsAllTheSame()
    {
        Assert.NotEqual(new News().WithDigest("U = 15 V").Split('\n')[0], new News().WithDigest("U = 15.1 V").Split('\n')[0]);
    }
}
