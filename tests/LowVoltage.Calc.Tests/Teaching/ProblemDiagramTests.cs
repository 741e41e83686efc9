using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>That the diagram of a problem shows its circuit and nothing that the statement does not say.</summary>
public class ProblemDiagramTests(ManyProblems many) : IClassFixture<ManyProblems>
{
    // A wire by itself, a size in a table: no circuit.
    private static bool HasCircuit(Problem problem) => problem.Difficulty == Difficulty.Design || problem.Topic switch
    {
        ProblemTopic.WireGeometry or ProblemTopic.AmpacityDerating => false,
        ProblemTopic.TemperatureCorrection or ProblemTopic.WireResistance => problem.Difficulty != Difficulty.OneStep,
        _ => true,
    };

    [Fact]
    public void Diagram_StandsBesideEveryCircuit() => Assert.All(many.All, problem => Assert.Equal(HasCircuit(problem), problem.Diagram is not null));

    [Fact]
    public void Diagram_SaysOnlyWhatTheStatementSays()
    {
        string[] wrong = [.. many.All.Where(problem => problem.Diagram is not null).AsParallel().Where(problem =>
        {
            double[] said = [.. PrintedProblem.Numbers(problem.Statement)];
            return PrintedProblem.Numbers(problem.Diagram!.Description).Any(number => !said.Contains(number));
        }).Select(problem => $"{problem.Statement} | {problem.Diagram!.Description}").Take(3)];

        Assert.Empty(wrong);
    }

    [Fact]
    public void Diagram_ShowsEveryGivenOfASource_AndNoAnswer()
    {
        // A diagram that gives the answer away would show it with its unit.
        Problem[] numeric = [.. many.All.Where(problem => problem.Diagram is not null && problem.Answer.SignificantFigures > 0)];
        Assert.All(numeric, problem => Assert.True(
            problem.Givens.Any(given => given.Text == problem.Answer.Text) || !PrintedProblem.Prints(problem.Diagram!.Description, problem.Answer.Text), $"{problem.Statement} | {problem.Diagram!.Description}"));
        Assert.All(numeric.Where(problem => problem.Topic == ProblemTopic.ChassisReturn), problem => Assert.Contains(problem.Diagram!.Back, part => part.Symbol == DiagramSymbol.Chassis));
    }
}
