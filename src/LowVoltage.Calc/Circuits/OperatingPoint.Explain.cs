using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public sealed partial class OperatingPoint
{
    private static Reference Loop { get; } = new()
    {
        Title = "Lessons in Electric Circuits, Volume I - DC", Locator = "chapter 6", Kind = ReferenceKind.Handbook, Note = "Kirchhoff's voltage law.",
    };

    /// <summary>The working: resistance of every part of the path at its own temperature, current, drop, and the voltage at the load.</summary>
    /// <returns>The steps, the voltage at the load last; where there is no point, why.</returns>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new($"Operating point at the {LevelText} supply voltage") { Once = true };
        Symbol v = board.Given($"open-circuit voltage of the source, {LevelText}", "V", OpenVolts, "V");
        Symbol nominal = board.Given("nominal voltage of the source", "V_nom", Supply.Numbers.NominalVolts, "V");
        board.Given("load", Fed.Name);
        LoadSymbols load = new(board);
        Fed.Describe(load);
        load.Thin(Fed);
        PathSteps.Givens(board, Path);
        board.Note("Assumptions", Assumptions);
        board.Caution(SolutionCautions.Paper);
        if (!Exists)
        {
            board.State("operating point", Explanation);
            return board.Build(Explanation);
        }

        new OperatingPointSteps(board, this, new PointLetters { Open = v, Nominal = nominal, Load = load }).Write();
        return board.Build($"{NumberText.WithUnit(Amperes, 4, "A")} flow; the load gets {NumberText.WithUnit(LoadVolts, 4, "V")}; the path drops {NumberText.WithUnit(DropVolts, 4, "V")}.");
    }

    internal string LevelText => Level switch
    {
        SupplyLevel.Minimum => "least",
        SupplyLevel.Maximum => "greatest",
        _ => "nominal",
    };

    internal static Reference LoopReference => Loop;
}
