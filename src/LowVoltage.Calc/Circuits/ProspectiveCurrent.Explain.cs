using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <content>The working.</content>
public sealed partial class ProspectiveCurrent
{
    private static Reference Reasoning { get; } = new()
    {
        Title = "IEEE 946", Kind = ReferenceKind.FromMemory, Note = "Battery short-circuit current from open-circuit voltage and resistance; peak values added conservatively.",
    };

    /// <summary>The working of the least and the greatest current.</summary>
    /// <returns>The steps, the greatest current last; where nothing bounds it, why.</returns>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new(Path is null ? "Short-circuit current at the source" : "Short-circuit current at the far end");
        SourceNumbers numbers = Source.Numbers;
        board.Given("source", Source.ToString());
        board.Note("Assumptions", Assumptions);
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Battery);
        if (IsBounded)
        {
            board.Section("Least current: must still open the fuse");
            Write(board, HotCelsius, LeastAmperes, numbers.MinimumVolts, numbers.GreatestOhms, "least", "The weakest source, cold or aged, and the warmest wire.", "min");
            board.Section("Greatest current: the fuse must be able to break it");
            Write(board, ColdCelsius, GreatestAmperes, numbers.MaximumVolts, numbers.LeastOhms, "greatest", "The strongest source, new and warm, and the coldest wire.", "max");
            return board.Build($"From {NumberText.WithUnit(LeastAmperes, 4, "A")} to {NumberText.WithUnit(GreatestAmperes, 4, "A")}.");
        }

        board.State("short-circuit current", "The source has no resistance and no limit, and nothing else bounds the current.");
        return board.Build();
    }

    private void Write(SolutionBuilder board, double celsius, double amperes, double volts, double ohms, string which, string why, string mark)
    {
        SourceNumbers numbers = Source.Numbers;
        Symbol v = board.LookUp($"{which} open-circuit voltage", "V_" + mark, volts, "V", Source.Reference);
        Symbol inner = board.LookUp($"internal resistance with it", "R_s", ohms, "Ω", Source.Reference), all = inner;
        if (Path is not null)
        {
            PathSteps steps = new(board);
            steps.All(Path, celsius);
            Symbol wires = steps.Sum("R_p", Path.OhmsAt(celsius), "resistance of the path");
            all = board.Step("all the resistance", "R", inner + wires, ohms + wires.Value, "Ω", null);
        }

        RoundingDirection rounding = mark == "min" ? RoundingDirection.Down : RoundingDirection.Up;
        if (double.IsInfinity(numbers.HeldAmperes))
        {
            board.Step($"{which} short-circuit current", "I_" + mark, v / all, amperes, "A", Reasoning, why, rounding);
            return;
        }

        Symbol limit = board.LookUp("current limit that the source holds", "I_lim", numbers.LimitAmperes, "A", Source.Reference);
        if (all.Value > 0)
        {
            board.Step($"{which} short-circuit current", "I_" + mark, Formula.Least(v / all, limit), amperes, "A", Reasoning, why, rounding);
        }
        else
        {
            board.LookUp($"{which} short-circuit current", "I_" + mark, amperes, "A", Source.Reference, "Nothing but the limit bounds it.");
        }
    }
}
