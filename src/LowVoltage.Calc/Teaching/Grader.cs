using System.Globalization;

namespace LowVoltage.Calc.Teaching;

/// <summary>Marks what students write.</summary>
internal static partial class Grader
{
    internal const int MostPowersOfTen = 9;

    // So many figures more than asked for are let pass without a word: 2400 mA has four, 2.40 A has three.
    private const int MoreFigures = 2;

    internal static GradingResult Grade(Problem problem, string? answer, CultureInfo culture)
    {
        if (problem.Choices.Count > 0 && TryChoose(problem, answer, out ProblemChoice choice))
        {
            return Chosen(problem, choice);
        }

        AnswerMeasure measure = new(problem.Answer);
        if (!AnswerReader.TryRead(answer, culture, out AnswerReading reading))
        {
            return NotRead(problem, reading.Flaw);
        }

        // C alone is degrees Celsius or coulombs: the question says which.
        if (measure.Dimension == AnswerDimension.Charge && reading.Unit == AnswerUnits.Find("C"))
        {
            reading = reading with { Unit = AnswerUnits.Find("As") };
        }

        return Judge(problem, measure, reading, culture);
    }

    private static GradingResult NotRead(Problem problem, AnswerFlaw flaw) => flaw switch
    {
        AnswerFlaw.Empty => new GradingResult(GradingOutcome.NoAnswer, $"No answer was given. {Example(problem)}"),
        AnswerFlaw.NoSuchGauge => new GradingResult(GradingOutcome.NoSuchSize, "There is no such gauge. Gauges are whole numbers up to 40 AWG, and above them 1/0, 2/0, 3/0 and 4/0."),
        _ => new GradingResult(GradingOutcome.Unreadable, $"This could not be read as an answer. {Example(problem)}"),
    };

    private static GradingResult Judge(Problem problem, AnswerMeasure measure, AnswerReading reading, CultureInfo culture)
    {
        bool unitMissing = problem.Answer.Unit.Length > 0 && reading.Unit is null && !(reading.SaysSize && measure.Dimension == AnswerDimension.Section);
        if (reading.Unit is { } unit && unit.Dimension != measure.Dimension)
        {
            return new GradingResult(
                GradingOutcome.WrongQuantity,
                $"That is {AnswerUnit.Words(unit.Dimension)}, but {AnswerUnit.Words(measure.Dimension)} is asked for. {Example(problem)}")
            {
                SignificantFigures = reading.Figures,
            };
        }

        if (!(reading.Unit ?? measure.Unit).IsPossible(reading.Value))
        {
            return NotRead(problem, AnswerFlaw.NoSuchGauge);
        }

        double Base(double value) => reading.Unit?.ToBase(value) ?? measure.Base(value);
        double inBase = Base(reading.Value);
        GradingResult verdict = !measure.IsRight(inBase) && reading.WithDecimalMark is { } meant && measure.IsRight(Base(meant))
            ? WrongMark(reading.Value, meant, culture)
            : ByValue(problem, measure, inBase, reading.Figures, unitMissing);
        return new GradingResult(verdict.Outcome, verdict.Message)
        {
            LikelyMistakes = verdict.LikelyMistakes,
            SignificantFigures = reading.Figures,
            Value = Finite(reading.Unit is null || reading.Unit == measure.Unit ? reading.Value : measure.Shown(inBase)),
        };
    }

    // The digits tell no mistake of thought: the number is right, written for another country.
    private static GradingResult WrongMark(double read, double meant, CultureInfo culture)
    {
        bool comma = culture.NumberFormat.NumberDecimalSeparator == ",";
        string wanted = meant.ToString("R", CultureInfo.InvariantCulture);
        return new GradingResult(
            GradingOutcome.WrongDecimalMark,
            $"The {(comma ? "point" : "comma")} was read as the separator of thousands: {read.ToString("R", CultureInfo.InvariantCulture)}. If you mean the decimal {(comma ? "comma" : "point")}, write {(comma ? wanted.Replace('.', ',') : wanted)}.");
    }

    private static GradingResult ByValue(Problem problem, AnswerMeasure measure, double inBase, int figures, bool unitMissing)
    {
        if (measure.IsRight(inBase))
        {
            return Right(problem, figures, unitMissing);
        }

        if (Mistakes(problem, measure, inBase) is { Length: > 0 } mistakes)
        {
            return new GradingResult(GradingOutcome.KnownMistake, Diagnosis(mistakes) + UnitToo(problem, unitMissing)) { LikelyMistakes = mistakes };
        }

        if (figures < problem.Answer.SignificantFigures && RoundsTo(problem.Answer.Value, measure.Shown(inBase), figures))
        {
            return new GradingResult(
                GradingOutcome.TooFewFigures,
                $"That may be right, but it is rounded too much to tell. Give {problem.Answer.SignificantFigures.ToString(CultureInfo.InvariantCulture)} significant figures.{UnitToo(problem, unitMissing)}");
        }

        return new GradingResult(
            GradingOutcome.WrongValue,
            $"Not right: too {(inBase > measure.Right ? "large" : "small")}, and none of the usual mistakes gives this number. Compare your steps with the solution.{UnitToo(problem, unitMissing)}");
    }

    private static GradingResult Right(Problem problem, int figures, bool unitMissing)
    {
        if (unitMissing)
        {
            return new GradingResult(GradingOutcome.MissingUnit, $"The number is right; a value needs its unit. {Example(problem)}");
        }

        if (problem.Form == ProblemForm.FindTheMistake)
        {
            return new GradingResult(GradingOutcome.MistakeNotNamed, "That is the right value. Now name the mistake: A, B, C or D.");
        }

        int asked = problem.Answer.SignificantFigures;
        bool fewer = figures < asked && !RoundsTo(problem.Answer.Value, Rounded(problem.Answer.Value, figures), asked);
        if (figures is > 0 and < FractionReader.Exact && asked > 0 && figures > asked + MoreFigures)
        {
            return new GradingResult(GradingOutcome.Correct, $"Right. So many figures say more than is known; {asked.ToString(CultureInfo.InvariantCulture)} are enough.");
        }

        return new GradingResult(
            GradingOutcome.Correct,
            fewer ? $"Right. Write {asked.ToString(CultureInfo.InvariantCulture)} significant figures, so that it shows." : "Right.");
    }

    /// <summary>What the mistakes behind an answer are called, and how it is done right; all of them, since nobody can tell which it was.</summary>
    internal static string Diagnosis(IReadOnlyList<Mistake> mistakes) => mistakes.Count == 1
        ? $"Not right: {mistakes[0].Name}. {mistakes[0].Explanation}"
        : $"Not right; {CountWords.Of(mistakes.Count)} mistakes give this number. {string.Join(" Or ", mistakes.Select(mistake => $"{mistake.Name}: {mistake.Explanation}"))}";

    /// <summary>The mistakes that give a value in the base unit, the nearest first.</summary>
    private static Mistake[] Mistakes(Problem problem, AnswerMeasure measure, double inBase)
    {
        Mistake[] known = [.. problem.KnownMistakes
            .Where(wrong => measure.IsNear(inBase, measure.Base(wrong.Value)))
            .OrderBy(wrong => Math.Abs(inBase - measure.Base(wrong.Value)))
            .Select(wrong => wrong.Mistake)
            .Distinct()];
        return known.Length > 0 ? known : OfWriting(problem, measure, inBase) is { } slip ? [slip] : [];
    }

    /// <summary>Whether a sign or a decimal point can be misplaced: not in what is not linear, and not in what has a table to stand in.</summary>
    internal static bool HasSlips(Problem problem, AnswerMeasure measure) => problem.Answer.SignificantFigures > 0 && !measure.IsTemperature;

    // A lost sign, or a decimal point out of place.
    private static Mistake? OfWriting(Problem problem, AnswerMeasure measure, double inBase)
    {
        if (!HasSlips(problem, measure))
        {
            return null;
        }

        if (measure.IsNear(-inBase, measure.Right))
        {
            return Mistake.SignLost;
        }

        double power = 1;
        for (int i = 0; i < MostPowersOfTen; i++)
        {
            power *= 10;
            if (measure.IsNear(inBase * power, measure.Right) || measure.IsNear(inBase / power, measure.Right))
            {
                return Mistake.PowerOfTen;
            }
        }

        return null;
    }

    private static string UnitToo(Problem problem, bool unitMissing) => unitMissing ? $" And the unit is missing. {Example(problem)}" : "";

    private static string Example(Problem problem)
    {
        string letters = problem.Choices.Count > 0 ? "a letter, such as B" : "";
        if (problem.Form == ProblemForm.FindTheMistake)
        {
            return $"Accepted is {letters}.";
        }

        string unit = problem.Answer.Unit, number = unit switch
        {
            AnswerUnit.Gauge => "a gauge, such as 14 AWG or 1/0",
            "mm²" when problem.Answer.SignificantFigures == 0 => "a size, such as 2.5 mm²",
            "" => "a number, such as 1.23",
            _ => $"a number with its unit, such as 1.23 {unit}",
        };
        return letters.Length == 0 ? $"Accepted is {number}." : $"Accepted is {letters}, or {number}.";
    }

    private static bool RoundsTo(double value, double written, int figures) =>
        figures is > 0 and <= 15 && AnswerText.Digits(value, figures) == AnswerText.Digits(written, figures);

    private static double Rounded(double value, int figures) => Working.NumberText.Round(value, figures);

    private static double? Finite(double value) => double.IsNaN(value) || double.IsInfinity(value) ? null : value;
}
