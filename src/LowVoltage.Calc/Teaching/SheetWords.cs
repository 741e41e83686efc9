using System.Globalization;

namespace LowVoltage.Calc.Teaching;

/// <summary>What a sheet says of a problem, in either of its languages.</summary>
internal static class SheetWords
{
    /// <summary>The topic; a design asks for one quantity of a whole circuit, whatever its topic.</summary>
    internal static string Title(Problem problem) => problem.Difficulty == Difficulty.Design ? "A circuit" : TopicWords.Of(problem.Topic);

    internal static string Heading(Problem problem, bool points) =>
        $"{Title(problem)} ({ProblemSheet.DifficultyWords(problem.Difficulty)}{(points ? ", " + Points(SheetLayout.PointsOf(problem.Difficulty)) : "")})";

    internal static string Points(int points) => $"{points.ToString(CultureInfo.InvariantCulture)} points";

    internal static int TotalPoints(ProblemSheet sheet) => sheet.Problems.Sum(problem => SheetLayout.PointsOf(problem.Difficulty));

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

    internal static IReadOnlyList<string> KeyHeads(SheetLayout layout) => layout.Points ? ["problem", "answer", "allowed", "points"] : ["problem", "answer", "allowed"];

    internal static IReadOnlyList<string> KeyRow(Problem problem, int number, SheetLayout layout)
    {
        string[] row = [number.ToString(CultureInfo.InvariantCulture), Answer(problem), Allowed(problem)];
        return layout.Points ? [.. row, SheetLayout.PointsOf(problem.Difficulty).ToString(CultureInfo.InvariantCulture)] : row;
    }

    /// <summary>What the mistakes that are known of a problem give; those that give the same number together.</summary>
    internal static IEnumerable<(string Text, string Words)> Mistakes(Problem problem) => problem.KnownMistakes
        .GroupBy(wrong => wrong.Text)
        .Select(group => (group.Key, string.Join(" Or ", group.Select(wrong => wrong.Mistake).Distinct().Select(mistake => $"{mistake.Name}. {mistake.Explanation}"))));
}
