using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>
/// The calculation of one circuit as a document to hand over: page 1 is what whoever signs it reads, verdict, wire, fuse, diagram, every check with its value, limit, margin
/// and place, assumptions, cautions and the lines to sign on; the working follows.
/// </summary>
/// <remarks>The same design and details give the same text on every machine. Immutable and thread-safe.</remarks>
public sealed class CalculationSheet
{
    private CalculationSheet(CircuitDesign design, SheetDetails details)
    {
        Design = design;
        Details = details;
        Diagram = design.Diagram;
        Working = design.Explain();
    }

    /// <summary>The design.</summary>
    public CircuitDesign Design { get; }

    /// <summary>Program, version, date and paper.</summary>
    public SheetDetails Details { get; }

    /// <summary>The circuit drawn.</summary>
    public CircuitDiagram Diagram { get; }

    /// <summary>The working: every step, in engineering units, with its source.</summary>
    public WorkedSolution Working { get; }

    /// <summary>The title: the circuit's name, where it has one.</summary>
    public string Title => Working.Title;

    /// <summary>The sheet of a design or of a verification.</summary>
    /// <param name="design">The design.</param>
    /// <param name="details">Program, version, date and paper; null leaves the lines to be filled in by hand.</param>
    /// <returns>The sheet.</returns>
    /// <exception cref="ArgumentNullException">The design is null.</exception>
    public static CalculationSheet Create(CircuitDesign design, SheetDetails? details = null) =>
        new(design ?? throw new ArgumentNullException(nameof(design)), details ?? SheetDetails.Blank);

    /// <summary>The sheet as one HTML page: to read on light and dark screens and to print on A4 or Letter, with numbered pages. It fetches nothing from a network.</summary>
    /// <remarks>Page numbers need a browser that prints CSS margin boxes; others leave them out.</remarks>
    public string ToHtmlPage() => CalculationSheetHtml.Write(this, new SheetFacts(Design));

    /// <summary>The sheet in Markdown, the math of the working as LaTeX between dollar signs; the diagram is described in a sentence.</summary>
    public string ToMarkdown() => CalculationSheetMarkdown.Write(this, new SheetFacts(Design));

    /// <summary>The title.</summary>
    public override string ToString() => Title;
}
