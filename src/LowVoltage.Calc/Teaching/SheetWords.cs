namespace LowVoltage.Calc.Teaching;

/// <summary>What a sheet says of a problem, in either of its languages.</summary>
internal static class SheetWords
{
    /// <summary>The topic; a design asks for one quantity of a whole circuit, whatever its topic.</summary>
    internal static string Title(Problem problem) => problem.Difficulty == Difficulty.Design ? "A circuit" : TopicWords.Of(problem.Topic);

    internal static string Heading(Problem problem) => $"{Title(problem)} ({ProblemSheet.DifficultyWords(problem.Difficulty)})";

    /// <summary>The answer, with its letter where there is something to choose from.</summary>
    internal static string Answer(Problem problem)
    {
        ProblemChoice? right = problem.Choices.FirstOrDefault(choice => choice.IsRight);
        return right is null ? problem.Answer.Text : problem.Form == ProblemForm.FindTheMistake
            ? $"{right.Letter}) {right.Text}; right is {problem.Answer.Text}"
            : $"{right.Letter}) {problem.Answer.Text}";
    }

    internal static string Allowed(Problem problem) => problem.Choices.Count > 0 ? "the letter" : problem.Answer.SignificantFigures == 0
        ? "exactly this"
        : $"± {AnswerText.Of(problem.Answer.Tolerance, problem.Answer.Unit, 2)}";
}
