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

    [Fact]
    public void OfParagraphs_OnlyTheReasonIsNew_StandsBelowItsFirstLine()
    {
        News news = new();

        Assert.Equal("1. Current\n  I = 2 A\n\n2. Power\n  P = 4 W", news.OfParagraphs("1. Current\n  I = 2 A\n\n2. Power\n  P = 4 W\n\n"));
        Assert.Equal("3. Current\n  Ohm's law.", news.OfParagraphs("3. Current\n  I = 7 A\n  Ohm's law.\n\n4. Power\n  P = 4 W"));
    }

    [Fact]
    public void WithDigest_ANumberThatChanges_ShowsAllTheSame()
    {
        Assert.NotEqual(new News().WithDigest("U = 15 V").Split('\n')[0], new News().WithDigest("U = 15.1 V").Split('\n')[0]);
    }
}
