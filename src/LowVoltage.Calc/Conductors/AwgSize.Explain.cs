using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Conductors;

/// <content>The working.</content>
public readonly partial struct AwgSize
{
    /// <summary>The working of the diameter.</summary>
    /// <returns>One step, in mm.</returns>
    public WorkedSolution ExplainDiameter()
    {
        SolutionBuilder board = new($"Diameter of {this}");
        _ = Thickness(board);
        return board.Build();
    }

    /// <summary>The working of diameter, section and circular mils.</summary>
    /// <returns>The steps, circular mils last.</returns>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new($"Diameter and section of {this}");
        Symbol d = Thickness(board);
        board.Step("section", "A", new Symbol("π", Math.PI, "", "circle over diameter") * Formula.Square(d) / 4, AreaSquareMillimeters, "mm²", Reference, "The area of the circle.");
        board.Step(
            "section in circular mils", "A_cmil", Formula.Square(d / Formula.FromNumber(CircularMil.MillimetersPerMil, "mm/mil")), CircularMils, "cmil", Reference,
            "The square of the diameter in mils.");
        return board.Build();
    }

    private Symbol Thickness(SolutionBuilder board)
    {
        Symbol n = board.Given("gauge number (4/0 is -3, 1/0 is 0)", "n", Number, "");
        return board.Step(
            "diameter", "d", Formula.FromNumber(0.127, "mm") * Formula.Power(92, (36 - n) / 39), DiameterMillimeters, "mm", Reference,
            "39 equal ratios lie between 36 gauge, 0.127 mm, and 4/0, 92 times as thick.");
    }
}
