namespace LowVoltage.Calc.Working;

/// <summary>An answer unfolded into the steps that a teacher would write on the board: data first, then plain text, Markdown or HTML.</summary>
/// <remarks>The same input gives the same text on every machine, whatever its culture. Immutable and thread-safe. Show the cautions.</remarks>
public sealed class WorkedSolution
{
    internal WorkedSolution(
        string title,
        IReadOnlyList<SolutionGiven> givens,
        IReadOnlyList<SolutionStep> steps,
        string answer,
        IReadOnlyList<SolutionNotes> notes,
        IReadOnlyList<string> cautions)
    {
        Title = title;
        Givens = givens;
        Steps = steps;
        Answer = answer;
        Notes = notes;
        Cautions = cautions;
    }

    /// <summary>What is worked out.</summary>
    public string Title { get; }

    /// <summary>What is given.</summary>
    public IReadOnlyList<SolutionGiven> Givens { get; }

    /// <summary>The steps, in order.</summary>
    public IReadOnlyList<SolutionStep> Steps { get; }

    /// <summary>The answer in words, with its number and unit.</summary>
    public string Answer { get; }

    /// <summary>Assumptions, open points, advice; empty when there are none.</summary>
    public IReadOnlyList<SolutionNotes> Notes { get; }

    /// <summary>What can hurt somebody here; empty when nothing can.</summary>
    public IReadOnlyList<string> Cautions { get; }

    /// <summary>As plain text for a console, at most about a hundred columns wide.</summary>
    public string ToText() => SolutionText.Write(this);

    /// <summary>As Markdown, the math as LaTeX between dollar signs.</summary>
    public string ToMarkdown() => SolutionMarkdown.Write(this);

    /// <summary>As an HTML element to put into a page, the math as MathML. It fetches nothing from a network.</summary>
    public string ToHtml() => SolutionHtml.Write(this);

    /// <summary>As an HTML page of its own, styled for screen and print. It fetches nothing from a network.</summary>
    public string ToHtmlPage() => SolutionHtml.Page(this);

    /// <summary>As plain text: <see cref="ToText"/>.</summary>
    public override string ToString() => ToText();
}
