using LowVoltage.Calc.Teaching;

namespace FleetStudy;

/// <summary>Ten thousand problem sheets of a school district, a sheet for each pupil: are the keys accepted, the usual mistakes named, the problems of a sheet different?</summary>
internal sealed class SheetStudy : Study
{
    public const string Key = "the key is accepted", Mistakes = "a usual mistake is named", Apart = "no problem twice on a sheet", Steps = "steps of the worked solutions";

    /// <summary>How many problems a sheet has.</summary>
    public const int Problems = 8;

    private const int HistogramHalf = 200;
    private const long MostSheets = 1_000_000;

    public override string Name => "sheets";

    public override long Total => MostSheets;

    public override long Usual => 10_000;

    public override int UsualPiece => 100;

    public override long VariantAt(long place) => place;

    /// <summary>A sheet by its number, from 0; the topics go on from sheet to sheet.</summary>
    public static ProblemSheet Sheet(StudySpec spec, long number)
    {
        ProblemTopic[] topics = Enum.GetValues<ProblemTopic>();
        return ProblemSheet.Create((spec.Seed * MostSheets) + number, Problems, [.. Enumerable.Range(0, Problems).Select(k => topics[((number * Problems) + k) % topics.Length])], Level(number));
    }

    /// <summary>A third of the sheets each: one step, several steps, design.</summary>
    public static Difficulty Level(long number) => (Difficulty)(number % 3);

    public override void Count(StudySpec spec, long variant, Tally tally, CancellationToken stop)
    {
        ProblemSheet sheet = Sheet(spec, variant);
        (int refused, int unnamed, int mistakes) = (0, 0, 0);
        string firstRefused = "", firstUnnamed = "";
        foreach ((Problem problem, int number) in sheet.Problems.Select((p, k) => (p, k + 1)))
        {
            stop.ThrowIfCancellationRequested();
            if (!problem.Grade(problem.Answer.Text).IsCorrect)
            {
                refused++;
                firstRefused = firstRefused.Length > 0 ? firstRefused : $"problem {number}";
            }

            foreach (WrongAnswer wrong in problem.WrongAnswers)
            {
                mistakes++;
                if (!problem.Grade(wrong.Text).LikelyMistakes.Contains(wrong.Mistake))
                {
                    unnamed++;
                    firstUnnamed = firstUnnamed.Length > 0 ? firstUnnamed : $"problem {number}, {wrong.Text}";
                }
            }
        }

        int twice = sheet.Problems.Count - sheet.Problems.Select(p => p.Statement).Distinct(StringComparer.Ordinal).Count();
        int steps = sheet.Problems.Sum(p => p.Solution.Steps.Count);
        if (spec.PagesFolder is { } folder)
        {
            SheetPages.Write(folder, variant, sheet);
        }

        // The margin of a check is the number of its failures, below zero.
        tally.Check(Key, -HistogramHalf, 1).Count(refused > 0, false, -refused, variant, firstRefused);
        tally.Check(Mistakes, -HistogramHalf, 1).Count(unnamed > 0, false, -unnamed, variant, firstUnnamed);
        tally.Check(Apart, -HistogramHalf, 1).Count(twice > 0, false, -twice, variant, "");
        tally.Check(Steps, 0, 1).Count(false, false, steps, variant, "");
        tally.Pieces += sheet.Problems.Count + mistakes;
        tally.PiecesFailed += refused + unnamed;
        tally.CountVariant(refused + unnamed + twice > 0, false, sheet.Problems.Select(p => $"01.{(int)p.Topic:00} {p.Topic}").Distinct().Append($"00.{(int)Level(variant):00} {Level(variant)}"));
    }

    public override void Show(StudySpec spec, long variant, TextWriter output) => SheetText.Show(spec, variant, output);

    public override void Report(StudySpec spec, Tally tally, TextWriter output) => SheetText.Report(spec, tally, output);

}
