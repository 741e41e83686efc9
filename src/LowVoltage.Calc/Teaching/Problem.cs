using System.Globalization;
using System.Text;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>A problem with its answer, its worked solution and the mistakes that people make with it.</summary>
/// <remarks>
/// The answer is worked out from the givens as they are printed. The world is invented. Immutable and thread-safe. Show the caution where there is one.
/// </remarks>
public sealed class Problem
{
    internal Problem(ProblemRequest request, ProblemDraft draft, IReadOnlyList<WrongAnswer> wrong, IReadOnlyList<ProblemChoice> choices)
    {
        Request = request;
        Seed = request.Seed;
        Topic = request.Topic;
        Difficulty = request.Difficulty;
        Units = request.Units;
        Form = request.Form;
        Setting = draft.World.Setting;
        Givens = draft.Givens;
        Answer = draft.Answer;
        Solution = draft.Solution;
        Caution = draft.Caution;
        Question = draft.Question;
        Defence = draft.Defence;
        WrongAnswers = wrong;
        KnownMistakes = ProblemGenerator.KnownMistakes(draft);
        Diagram = draft.Diagram;
        Standards = draft.Standards;
        Choices = choices;
        Table = draft.Table;
        Story = draft.Story;
    }

    /// <summary>The number that the problem was made from.</summary>
    public long Seed { get; }

    /// <summary>What it is about.</summary>
    public ProblemTopic Topic { get; }

    /// <summary>How much it asks for.</summary>
    public Difficulty Difficulty { get; }

    /// <summary>The units it uses.</summary>
    public ProblemUnits Units { get; }

    /// <summary>How it is to be answered.</summary>
    public ProblemForm Form { get; }

    /// <summary>The invented world that it plays in.</summary>
    public ProblemSetting Setting { get; }

    /// <summary>The problem in plain text: what is given, its table if it has one, the question, what to choose from, and what to defend.</summary>
    public string Statement
    {
        get
        {
            StringBuilder text = new(Story);
            if (Table is not null)
            {
                text.Append("\n\n").Append(Table.ToText());
            }

            text.Append(Table is null ? ' ' : '\n').Append(Question).Append(' ').Append(Instruction);
            foreach (ProblemChoice choice in Choices)
            {
                text.Append('\n').Append(choice);
            }

            text.Append(Defence.Length > 0 ? "\n" : "").Append(Defence);
            return text.ToString();
        }
    }

    /// <summary>What is given, as printed in the statement.</summary>
    public IReadOnlyList<ProblemGiven> Givens { get; }

    /// <summary>The right answer.</summary>
    public ProblemAnswer Answer { get; }

    /// <summary>The working, step by step.</summary>
    public WorkedSolution Solution { get; }

    /// <summary>Three of the <see cref="KnownMistakes"/>, drawn so that their numbers can be told apart: what a choice offers.</summary>
    public IReadOnlyList<WrongAnswer> WrongAnswers { get; }

    /// <summary>Every mistake that is known of this problem and gives a number of its own, with that number; grading tries them all.</summary>
    /// <remarks>Two mistakes can give the same number. A mistake that cannot be told from the right answer, or that leads to no answer, is not among them.</remarks>
    public IReadOnlyList<WrongAnswer> KnownMistakes { get; }

    /// <summary>The circuit as a diagram of what the statement says; null where there is no circuit to draw.</summary>
    public CircuitDiagram? Diagram { get; }

    /// <summary>What to choose from, in the order shown; empty for a problem that asks for a number.</summary>
    public IReadOnlyList<ProblemChoice> Choices { get; }

    /// <summary>A warning, where shorts, batteries or live work occur; empty where nothing can hurt.</summary>
    public string Caution { get; }

    internal ProblemRequest Request { get; }

    internal string Story { get; }

    internal string Question { get; }

    /// <summary>What a design problem asks beside the number: why this choice and not its neighbours. The solution's notes hold the answer.</summary>
    internal string Defence { get; }

    internal ProblemTable? Table { get; }

    /// <summary>The sizes or ratings that the answer is one of, as the statement lists them; empty where it is a number.</summary>
    internal IReadOnlyList<double> Standards { get; }

    /// <summary>What to write down as the answer.</summary>
    internal string Instruction => Form switch
    {
        ProblemForm.MultipleChoice => "Choose one:",
        ProblemForm.FindTheMistake => $"A student answers {WrongAnswers[0].Text}. Which mistake, if any, gives exactly this number?",
        _ when Answer.SignificantFigures == 0 => Answer.Unit == "A" ? "Answer with a rating, in A, from the list." : $"Answer with a size from the {(Table is null ? "list" : "table")}.",
        _ => Answer.Unit.Length == 0
            ? $"Answer to {FigureWords(Answer.SignificantFigures)} significant figures."
            : $"Answer in {Answer.Unit} to {FigureWords(Answer.SignificantFigures)} significant figures.",
    };

    /// <summary>Marks an answer.</summary>
    /// <param name="answer">What the student wrote: a number with its unit, or a letter where there is something to choose from. Anything at all.</param>
    /// <param name="culture">Says which of point and comma is the decimal one; invariant when null.</param>
    /// <returns>The verdict. Never an exception: what cannot be read is a verdict too.</returns>
    public GradingResult Grade(string? answer, CultureInfo? culture = null) => Grader.Grade(this, answer, culture ?? CultureInfo.InvariantCulture);

    /// <summary>The statement.</summary>
    public override string ToString() => Statement;

    private static string FigureWords(int figures) => figures switch
    {
        2 => "two",
        3 => "three",
        4 => "four",
        _ => "five",
    };
}
