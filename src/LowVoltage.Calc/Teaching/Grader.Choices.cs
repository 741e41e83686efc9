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
        if (problem.Form == ProblemForm.FindTheMistake)
        {
            return Named(choice);
        }

        if (choice.IsRight)
        {
            return new GradingResult(GradingOutcome.Correct, "Right.");
        }

        AnswerMeasure measure = new(problem.Answer);
        WrongAnswer wrong = problem.WrongAnswers.First(offered => offered.Mistake == choice.Mistake);
        IReadOnlyList<Mistake> mistakes = Mistakes(problem, measure, measure.Base(wrong.Value));
        return new GradingResult(GradingOutcome.KnownMistake, Diagnosis(mistakes)) { LikelyMistakes = mistakes };
    }

    private static GradingResult Named(ProblemChoice choice) => choice.IsRight
        ? new GradingResult(GradingOutcome.Correct, $"Right: {choice.Mistake!.Explanation}") { LikelyMistakes = [choice.Mistake] }
        : new GradingResult(GradingOutcome.WrongValue, choice.Mistake is null
            ? "No: that answer is wrong. Work it through and see which mistake gives it."
            : "No: work that mistake through, and it gives another number.");
}
