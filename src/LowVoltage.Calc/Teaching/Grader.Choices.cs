namespace LowVoltage.Calc.Teaching;

/// <content>Answers by their letter, or by the name of the mistake.</content>
internal static partial class Grader
{
    private static bool TryChoose(Problem problem, string? answer, out ProblemChoice choice)
    {
        choice = null!;
        if (answer is null || answer.Length > 100)
        {
            return false;
        }

        string name = AnswerSpelling.Simplify(answer).Trim('(', ')', '.', ':', ' ');
        string letter = AnswerWords.Strip(name.Substring(name.LastIndexOfAny([':', '=']) + 1), out _).Trim('(', ')', '.', ' ');
        foreach (ProblemChoice offered in problem.Choices)
        {
            bool byLetter = letter.Length == 1 && char.ToUpperInvariant(letter[0]) == offered.Letter;
            bool byName = problem.Form == ProblemForm.FindTheMistake && string.Equals(name, offered.Text, StringComparison.OrdinalIgnoreCase);
            if (byLetter || byName)
            {
                choice = offered;
                return true;
            }
        }

        return false;
    }

    private static GradingResult Chosen(Problem problem, ProblemChoice choice)
    {
        bool find = problem.Form == ProblemForm.FindTheMistake;
        if (choice.IsRight)
        {
            return new GradingResult(GradingOutcome.Correct, find ? $"Right: {choice.Mistake!.Explanation}" : "Right.") { LikelyMistake = find ? choice.Mistake : null };
        }

        return find
            ? new GradingResult(GradingOutcome.WrongValue, "No: work that mistake through, it gives another number.")
            : new GradingResult(GradingOutcome.KnownMistake, $"Not right: {choice.Mistake!.Name}. {choice.Mistake.Explanation}") { LikelyMistake = choice.Mistake };
    }
}
