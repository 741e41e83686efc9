using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <content>The working.</content>
public static partial class CircularMil
{
    private static Reference Definition { get; } = new()
    {
        Title = "NBS Handbook 100", Edition = "1966", Kind = ReferenceKind.Handbook, Note = "One circular mil is the area of a circle of one mil; 1 mil = 0.0254 mm.",
    };

    /// <summary>The working of <see cref="FromArea"/>.</summary>
    /// <inheritdoc cref="FromArea"/>
    /// <returns>The steps, circular mils last.</returns>
    public static WorkedSolution ExplainFromArea(Area area)
    {
        double result = FromArea(area);
        SolutionBuilder board = new("Circular mils of a section");
        Symbol a = board.Given("section", "A", Accept.SquareMillimeters(area, nameof(area)), "mm²");
        board.Step("section in circular mils", "A_cmil", a / One(board), result, "cmil", Definition, "How many circles of one mil fill the section.");
        return board.Build();
    }

    /// <summary>The working of <see cref="FromDiameter"/>.</summary>
    /// <inheritdoc cref="FromDiameter"/>
    /// <returns>The steps, circular mils last.</returns>
    public static WorkedSolution ExplainFromDiameter(Length diameter)
    {
        double result = FromDiameter(diameter);
        SolutionBuilder board = new("Circular mils of a round wire");
        Symbol d = board.Given("diameter", "d", Accept.Meters(diameter, nameof(diameter)) * 1000, "mm");
        Symbol mils = board.Step("diameter in mils", "d_mil", d / Formula.FromNumber(MillimetersPerMil, "mm/mil"), MilsOf(diameter), "mil", Definition, "One mil is a thousandth of an inch.");
        board.Step("section in circular mils", "A_cmil", Formula.Square(mils), result, "cmil", Definition, "The square of the diameter in mils; π is in the unit.");
        return board.Build();
    }

    /// <summary>The working of <see cref="ToArea"/>.</summary>
    /// <inheritdoc cref="ToArea"/>
    /// <returns>The steps, the section last.</returns>
    public static WorkedSolution ExplainToArea(double circularMils)
    {
        double result = Accept.SquareMillimeters(ToArea(circularMils), nameof(circularMils));
        SolutionBuilder board = new("Section of a number of circular mils");
        Symbol c = board.Given("circular mils", "A_cmil", circularMils, "cmil");
        board.Step("section", "A", c * One(board), result, "mm²", Definition, "So many circles of one mil.");
        return board.Build();
    }

    /// <summary>The working of <see cref="SquareMilsOf"/>.</summary>
    /// <inheritdoc cref="SquareMilsOf"/>
    /// <returns>The steps, square mils last.</returns>
    public static WorkedSolution ExplainSquareMilsOf(Area area)
    {
        double result = SquareMilsOf(area);
        SolutionBuilder board = new("Square mils of a section");
        Symbol a = board.Given("section", "A", Accept.SquareMillimeters(area, nameof(area)), "mm²");
        board.Step(
            "section in square mils", "A_sq", a / Formula.Square(Formula.FromNumber(MillimetersPerMil, "mm/mil")), result, "mil²", Definition, "A square mil is a square of 0.0254 mm; a circle of one mil covers π/4 of it.");
        return board.Build();
    }

    private static Symbol One(SolutionBuilder board) =>
        board.LookUp("section of one circular mil", "c", SquareMillimeters, "mm²/cmil", Definition, "π/4·(0.0254 mm)², the area of a circle of one mil.");
}
