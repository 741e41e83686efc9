using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Conventions;

/// <summary>The approved texts are few; what must be read at least once is named here.</summary>
public class ApprovedVarietyTests
{
    [Fact]
    public void Designs_HoldEveryCheckOfACircuit()
    {
        string read = ApprovedText.Read("design-");

        Assert.Empty(CheckKind.All.Where(kind => !read.Contains("- " + kind.Name, StringComparison.Ordinal)).Select(kind => kind.Name));
    }

    [Fact]
    public void Explanations_HoldEveryCheckThatIsExplained()
    {
        string read = ApprovedText.Read("explained-");

        Assert.Empty(CheckKind.All.Where(kind => !read.Contains("Check: " + kind.Name, StringComparison.Ordinal)).Select(kind => kind.Name));
    }

    [Fact]
    public void Grades_HaveEveryOutcome()
    {
        string read = ApprovedText.Read("odd-answers") + ApprovedText.Read("problem-");

        // A grade that nobody gave says nothing.
        Assert.All(Enum.GetValues<GradingOutcome>().Where(outcome => outcome != GradingOutcome.NotGraded), outcome => Assert.Contains($"\n{outcome}: ", read, StringComparison.Ordinal));
    }
}
