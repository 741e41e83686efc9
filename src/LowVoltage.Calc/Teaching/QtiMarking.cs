namespace LowVoltage.Calc.Teaching;

/// <summary>How the number of a problem is marked: a range that is right, and ranges with the mistakes that give them, none over another.</summary>
internal sealed class QtiMarking
{
    private QtiMarking(QtiRange right, IReadOnlyList<(QtiRange Range, IReadOnlyList<Mistake> Mistakes)> wrong, QtiRange? sign, IReadOnlyList<QtiRange> powers)
    {
        Right = right;
        Wrong = wrong;
        Sign = sign;
        Powers = powers;
    }

    internal QtiRange Right { get; }

    /// <summary>Where a mistake, or several that give the same number, were made.</summary>
    internal IReadOnlyList<(QtiRange Range, IReadOnlyList<Mistake> Mistakes)> Wrong { get; }

    /// <summary>The right number with the other sign; null where a sign tells nothing. Looked at after the mistakes.</summary>
    internal QtiRange? Sign { get; }

    /// <summary>The right number with its decimal point elsewhere. Looked at last.</summary>
    internal IReadOnlyList<QtiRange> Powers { get; }

    internal static QtiMarking Of(Problem problem)
    {
        AnswerMeasure measure = new(problem.Answer);
        double tolerance = problem.Answer.Tolerance, share = tolerance / Math.Abs(problem.Answer.Value);
        QtiRange Around(double value) => QtiRange.Around(value, measure.IsTemperature ? tolerance : share * Math.Abs(value));
        QtiRange right = Around(problem.Answer.Value);
        bool slips = Grader.HasSlips(problem, measure);
        return new QtiMarking(
            right,
            Apart([.. problem.KnownMistakes.Select(wrong => (Around(wrong.Value), wrong.Mistake))]),
            slips ? right.Times(-1) : null,
            slips ? [.. Powers10(right)] : []);
    }

    // Between two neighbouring ends of ranges always the same mistakes are possible; neighbours with the same ones are one range.
    private static List<(QtiRange Range, IReadOnlyList<Mistake> Mistakes)> Apart(IReadOnlyList<(QtiRange Range, Mistake Mistake)> all)
    {
        decimal[] ends = [.. all.SelectMany(wrong => (decimal[])[wrong.Range.Least, wrong.Range.Most]).Distinct().OrderBy(end => end)];
        List<(QtiRange Range, IReadOnlyList<Mistake> Mistakes)> apart = [];
        for (int i = 1; i < ends.Length; i++)
        {
            Mistake[] mistakes = [.. all.Where(wrong => wrong.Range.Least <= ends[i - 1] && wrong.Range.Most >= ends[i]).Select(wrong => wrong.Mistake).Distinct()];
            if (mistakes.Length == 0)
            {
                continue;
            }

            int last = apart.Count - 1;
            if (last >= 0 && apart[last].Range.Most == ends[i - 1] && apart[last].Mistakes.SequenceEqual(mistakes))
            {
                apart[last] = (new QtiRange(apart[last].Range.Least, ends[i]), mistakes);
            }
            else
            {
                apart.Add((new QtiRange(ends[i - 1], ends[i]), mistakes));
            }
        }

        return apart;
    }

    private static IEnumerable<QtiRange> Powers10(QtiRange right)
    {
        decimal power = 1;
        for (int i = 0; i < Grader.MostPowersOfTen; i++)
        {
            power *= 10;
            yield return right.Times(1 / power);
            yield return right.Times(power);
        }
    }
}
