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
            bool both = name.Length > 2 && char.ToUpperInvariant(name[0]) == offered.Letter && name[1] is ')' or ':' or '.' or ' '
                && string.Equals(name.Substring(2).Trim(), AnswerSpelling.Simplify(offered.Text), StringComparison.OrdinalIgnoreCase);
            bool byName = problem.Form == ProblemForm.FindTheMistake && string.Equals(name, offered.Text, StringComparison.OrdinalIgnoreCase);
            if (byLetter || both || byName)
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

        return find && choice.Mistake is null
            ? new GradingResult(GradingOutcome.WrongValue, "No: that answer is wrong, as the problem says. Work it through and see which mistake gives it.")
            : find
            ? new GradingResult(GradingOutcome.WrongValue, "No: work that mistake through, it gives another number.")
            : new GradingResult(GradingOutcome.KnownMistake, $"Not right: {choice.Mistake!.Name}. {choice.Mistake.Explanation}") { LikelyMistake = choice.Mistake };
    }
}
