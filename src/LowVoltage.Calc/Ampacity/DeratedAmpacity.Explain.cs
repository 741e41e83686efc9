using System.Globalization;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Ampacity;

/// <content>The working.</content>
public sealed partial class DeratedAmpacity
{
    /// <summary>The working: the table current, and each factor with its source.</summary>
    /// <returns>The steps, the allowed current last.</returns>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new($"Allowed current of {Rating.Size}");
        board.Given("size", Rating.Size);
        board.Given("insulation rating", NumberText.WithUnit(Rating.InsulationCelsius, 6, "°C"));
        Write(board);
        board.Note("Remarks", Remarks);
        board.Caution(SolutionCautions.Paper);
        return board.Build($"At most {NumberText.WithUnit(NumberText.Round(Amperes, 4, RoundingDirection.Down), 16, "A")} continuously.");
    }

    /// <summary>Writes the steps; the allowed current comes back.</summary>
    /// <param name="board">Where to.</param>
    /// <param name="name">The letter of the result.</param>
    /// <param name="apart">What tells the letters from those of another conductor.</param>
    /// <param name="family">What tells them from those of another table.</param>
    internal Symbol Write(SolutionBuilder board, string name = "I_z", string apart = "", string family = "")
    {
        Symbol allowed = board.LookUp(
            $"current of {Rating.Size} in the {NumberText.WithUnit(Rating.ColumnCelsius, 6, "°C")} column of {Rating.Table.Name}",
            steps.Length == 0 ? name : "I_t0" + family + apart,
            Rating.Amperes,
            "A",
            Rating.Reference,
            "Holds for: " + Rating.Table.Conditions + ".");
        for (int i = 0; i < steps.Length; i++)
        {
            DeratingStep step = steps[i];
            string mark = (i + 1).ToString(CultureInfo.InvariantCulture), effect = DeratingEffect.Describe(step.Factor.Kind);
            Symbol factor = board.LookUp($"factor for {effect}", "f_" + mark + family, step.Factor.Value, "", step.Reference, step.Factor.Condition);
            bool last = i == steps.Length - 1;
            allowed = board.Step(
                last ? "allowed current where the wire runs" : $"current after the factor for {effect}",
                last ? name : "I_t" + mark + family + apart,
                allowed * factor,
                step.AfterAmperes,
                "A",
                step.Reference,
                step.IsForeign ? "The factor belongs to other rules than the table; see the remarks." : "Each effect is counted once.",
                RoundingDirection.Down);
        }

        return allowed;
    }
}
