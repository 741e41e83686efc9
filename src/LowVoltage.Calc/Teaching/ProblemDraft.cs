using System.Text;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>A problem while it is written: draws, givens, sentences, steps, answer and the mistakes that are possible.</summary>
/// <remarks>A recipe writes one; when what it drew is not plausible it says so, and the next attempt draws on from the same generator.</remarks>
internal sealed partial class ProblemDraft
{
    internal const double UsualTolerance = 0.01;

    /// <summary>The number π, shown as its letter.</summary>
    internal static readonly Symbol Pi = new("π", Math.PI, "", "the circle's number");

    private readonly List<ProblemGiven> givens = [];
    private readonly List<(Mistake Mistake, double Value)> wrong = [];
    private readonly StringBuilder story = new();
    private readonly SolutionBuilder working;
    private WorkedSolution? solution;
    private ProblemAnswer? answer;

    internal ProblemDraft(ProblemRequest request, DeterministicRandom random)
    {
        Random = random;
        // Drawn even when the setting is asked for, so that the other numbers stay what they are.
        ProblemWorld drawn = random.Pick(ProblemWorld.All);
        World = request.Setting is { } setting ? ProblemWorld.Of(setting) : drawn;
        bool us = request.Units == ProblemUnits.UsCustomary, mixed = request.Units == ProblemUnits.Mixed;
        Gauges = mixed ? random.Next(2) == 0 : us;
        Feet = mixed ? random.Next(2) == 0 : us;
        // Of a mixture in which everything came out alike, the temperature makes a mixture.
        Fahrenheit = mixed ? !(Gauges && Feet) && ((!Gauges && !Feet) || random.Next(2) == 0) : us;
        Place = random.Pick(World.Places);
        Opening = random.Next(Openings);
        working = new SolutionBuilder(TopicWords.Of(request.Topic));
    }

    internal DeterministicRandom Random { get; }

    internal ProblemWorld World { get; }

    /// <summary>Whether wires are sized in AWG.</summary>
    internal bool Gauges { get; }

    /// <summary>Whether lengths are in feet.</summary>
    internal bool Feet { get; }

    /// <summary>Whether temperatures are in °F.</summary>
    internal bool Fahrenheit { get; }

    internal IReadOnlyList<ProblemGiven> Givens => givens.AsReadOnly();

    /// <summary>Every mistake that is possible with it, and what it gives; not a number where it gives nothing.</summary>
    internal IReadOnlyList<(Mistake Mistake, double Value)> Wrongs => wrong;

    internal string Story => story.ToString();

    internal string Question { get; private set; } = "";

    internal string Caution { get; private set; } = "";

    /// <summary>What is to be defended beside the number; empty where nothing is.</summary>
    internal string Defence { get; private set; } = "";

    internal ProblemTable? Table { get; private set; }

    /// <summary>The sizes or ratings that the answer is one of; empty where it is a number.</summary>
    internal IReadOnlyList<double> Standards { get; private set; } = [];

    internal ProblemAnswer Answer => answer!;

    /// <summary>The working, as far as it is written; for the finished problem.</summary>
    internal WorkedSolution Solution => solution ??= working.Build($"{answer!.Quantity}: {answer.Text}");

    /// <summary>A value to be printed in the statement.</summary>
    internal DrawnGiven Give(string meaning, string name, decimal value, string unit)
    {
        givens.Add(new ProblemGiven(name, meaning, value, unit));
        return new DrawnGiven(givens[givens.Count - 1], working.Given(meaning, name, (double)value, unit));
    }

    internal DrawnGiven Give(string meaning, string name, double value, int figures, string unit) => Give(meaning, name, Rounding.Figures(value, figures), unit);

    /// <summary>A gauge number to be printed in the statement.</summary>
    internal DrawnGiven GiveGauge(string meaning, string name, int number)
    {
        givens.Add(new ProblemGiven(name, meaning, number));
        return new DrawnGiven(givens[givens.Count - 1], working.Given(meaning, name, number, ""));
    }

    /// <summary>A list that the statement prints in a sentence.</summary>
    internal void GiveWords(string meaning, string words) => working.Given(meaning, words);

    // "20 °C" and "k = 115" in a sentence stay together at the end of a line, as a printed given does.
    internal void Say(string sentence) => story.Append(story.Length == 0 ? "" : " ")
        .Append(sentence.Replace(" °C", NumberText.Thin + "°C").Replace(" °F", NumberText.Thin + "°F").Replace(" mm.", NumberText.Thin + "mm.").Replace("k = ", $"k{NumberText.Thin}={NumberText.Thin}"));

    internal void Show(ProblemTable table) => Table = table;

    internal void AskDefence(string request) => Defence = request;

    internal void Warn(string caution)
    {
        Caution = caution;
        working.Caution(caution);
    }

    internal Symbol Step(string sought, string name, Formula formula, double result, string unit, Reference? source = null, string reason = "") =>
        working.Step(sought, name, formula, result, unit, source, reason);

    /// <summary>A step that is plain arithmetic: the formula itself is the calculation.</summary>
    internal Symbol Step(string sought, string name, Formula formula, string unit, Reference? source = null, string reason = "") =>
        working.Step(sought, name, formula, formula.Evaluate(), unit, source, reason);

    internal Symbol Choose(string sought, string name, double value, string unit, Reference? source, string reason) =>
        working.LookUp(sought, name, value, unit, source, reason);

    internal void Compare(string sought, Symbol left, Relation relation, Symbol right, string reason) =>
        working.Compare(sought, left, relation, right, null, reason);

    internal void Note(string heading, params string[] lines) => working.Note(heading, lines);

    internal void Wrong(Mistake mistake, double value) => wrong.Add((mistake, value));

    /// <summary>The question and its answer, the result of the last step.</summary>
    internal void Ask(string question, Symbol result, int figures = 3, double? tolerance = null)
    {
        Question = question;
        answer = new ProblemAnswer(result.Meaning, result.Value, result.Unit, tolerance ?? UsualTolerance * Math.Abs(result.Value), figures);
    }

    /// <summary>As <see cref="Ask"/>, for a standard size or rating, which is right or wrong.</summary>
    internal void AskStandard(string question, Symbol result, IEnumerable<double> standards)
    {
        Ask(question, result, 0, 0);
        Standards = [.. standards];
    }
}
