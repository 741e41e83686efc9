using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>What a sheet has beside its problems.</summary>
/// <remarks>Immutable and thread-safe. Working space and page numbers are for the HTML page; page numbers need a browser that prints CSS margin boxes, others leave them out.</remarks>
public sealed class SheetLayout
{
    private const double MostSpaceMillimeters = 250;

    /// <summary>A layout.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="nameLine">Whether there is a line for name, class and date.</param>
    /// <param name="points">Whether the points of each problem and of the sheet are shown: 2 for one step, 4 for several steps, 8 for a design.</param>
    /// <param name="pageNumbers">Whether printed pages are numbered.</param>
    /// <param name="workingSpace">Height of the empty space below each problem, 0 to 250 mm; none when null.</param>
    /// <param name="diagrams">Whether circuits are drawn (in Markdown: described).</param>
    /// <exception cref="ArgumentOutOfRangeException">The paper is none of its values, or the space is outside its range.</exception>
    public SheetLayout(SheetPaper paper = SheetPaper.Any, bool nameLine = true, bool points = false, bool pageNumbers = false, Length? workingSpace = null, bool diagrams = true)
    {
        Paper = paper is >= SheetPaper.Any and <= SheetPaper.Letter
            ? paper
            : throw new ArgumentOutOfRangeException(nameof(paper), paper, $"paper must be one of its named values; it was {paper}.");
        NameLine = nameLine;
        Points = points;
        PageNumbers = pageNumbers;
        Diagrams = diagrams;
        if (workingSpace is { } space)
        {
            double millimeters = space.Millimeters;
            SpaceMillimeters = millimeters is >= 0 and <= MostSpaceMillimeters
                ? millimeters
                : throw new ArgumentOutOfRangeException(nameof(workingSpace), workingSpace, $"workingSpace must be 0 to 250 mm; it was {Accept.Text(millimeters)} mm.");
        }
    }

    /// <summary>The usual one: a line for the name, diagrams, and nothing else.</summary>
    public static SheetLayout Usual { get; } = new();

    /// <summary>The paper.</summary>
    public SheetPaper Paper { get; }

    /// <summary>Whether there is a line for name, class and date.</summary>
    public bool NameLine { get; }

    /// <summary>Whether points are shown.</summary>
    public bool Points { get; }

    /// <summary>Whether printed pages are numbered.</summary>
    public bool PageNumbers { get; }

    /// <summary>Height of the empty space below each problem.</summary>
    public Length WorkingSpace => Length.FromMillimeters(SpaceMillimeters);

    /// <summary>Whether circuits are drawn.</summary>
    public bool Diagrams { get; }

    internal double SpaceMillimeters { get; }

    internal static int PointsOf(Difficulty difficulty) => difficulty switch
    {
        Difficulty.OneStep => 2,
        Difficulty.SeveralSteps => 4,
        _ => 8,
    };
}
