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
        SolutionBuilder board = new(Path is null ? "Short-circuit current at the source" : "Short-circuit current at the far end") { Once = true };
        SourceNumbers numbers = Source.Numbers;
        SourceSymbols source = new(board, Source);
        if (Path is not null)
        {
            PathSteps.Givens(board, Path);
            board.Given("temperature of the conductors for the least current", "θ_hot", HotCelsius, "°C");
            board.Given("temperature of the conductors for the greatest current", "θ_cool", ColdCelsius, "°C");
        }

        board.Note("Assumptions", Assumptions);
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Battery);
        if (IsBounded)
        {
            board.Section("The source");
            source.Write();
            board.Section("Least current: must still open the fuse");
            ConductorMarks marks = new();
            Write(board, source, marks, SupplyLevel.Minimum, "hot", "least", "min");
            board.Section("Greatest current: the fuse must be able to break it");
            Write(board, source, marks, SupplyLevel.Maximum, "cool", "greatest", "max");
            return board.Build($"From {Rounded(LeastAmperes, RoundingDirection.Down)} to {Rounded(GreatestAmperes, RoundingDirection.Up)}.");
        }

        board.State("short-circuit current", "The source has no resistance and no limit, and nothing else bounds the current.");
        return board.Build();
    }

    // As the steps have it.
    private static string Rounded(double amperes, RoundingDirection direction) => NumberText.WithUnit(NumberText.Round(amperes, NumberText.Shown, direction), 16, "A");

    private void Write(SolutionBuilder board, SourceSymbols source, ConductorMarks marks, SupplyLevel level, string warmth, string which, string mark)
    {
        SourceNumbers numbers = Source.Numbers;
        Symbol v = source.Volts(level), inner = source.Ohms(level), all = inner;
        double celsius = level == SupplyLevel.Minimum ? HotCelsius : ColdCelsius, amperes = level == SupplyLevel.Minimum ? LeastAmperes : GreatestAmperes;
        if (Path is not null)
        {
            PathSteps steps = new(board, marks);
            steps.All(Path, celsius, board.Find("θ_" + warmth), warmth);
            Symbol wires = steps.Sum("R_p" + warmth, Path.OhmsAt(celsius), $"resistance of the path, {warmth}");
            all = board.Step($"all the resistance, {warmth}", "R_" + warmth, inner + wires, inner.Value + wires.Value, "Ω", null);
        }

        string why = level == SupplyLevel.Minimum ? source.Weakest : source.Strongest;
        RoundingDirection rounding = mark == "min" ? RoundingDirection.Down : RoundingDirection.Up;
        if (double.IsInfinity(numbers.HeldAmperes))
        {
            board.Step($"{which} short-circuit current", "I_" + mark, v / all, amperes, "A", Reasoning, why, rounding);
            return;
        }

        if (numbers.Beyond is { } series && all.Value > 0)
        {
            board.Step($"{which} short-circuit current", "I_" + mark, Beyond(board, series, mark, all), amperes, "A", Reasoning, why, rounding);
            return;
        }

        Symbol limit = source.Limit;
        if (all.Value > 0)
        {
            board.Step($"{which} short-circuit current", "I_" + mark, Formula.Least(v / all, limit), amperes, "A", Reasoning, why, rounding);
        }
        else
        {
            board.LookUp($"{which} short-circuit current", "I_" + mark, amperes, "A", Source.Reference, "Nothing but the limit bounds it.");
        }
    }

    // The greatest of what all push up to the first limit, the rest up to the second, and so on.
    private static Formula Beyond(SolutionBuilder board, SeriesLimits series, string mark, Symbol all)
    {
        Formula? greatest = null;
        double volts = series.Parts.Sum(p => p.Volts(mark == "max"));
        for (int k = 0; k < series.Parts.Count && volts > 0; k++)
        {
            SeriesLimits.Part part = series.Parts[k];
            string number = Quantities.Accept.Text(k + 1);
            Symbol left = board.LookUp(
                k == 0 ? "voltage of all the sources" : "voltage of the sources that are not at their limit", $"V_{number}{mark}", volts, "V", Reasoning);
            Formula term = left / all;
            if (!double.IsInfinity(part.Limit))
            {
                term = Formula.Least(term, board.LookUp("current limit", $"I_lim{number}", part.Limit, "A", Reasoning));
            }

            greatest = greatest is null ? term : Formula.Greatest(greatest, term);
            volts -= double.IsInfinity(part.Limit) ? volts : part.Volts(mark == "max");
        }

        return greatest!;
    }
}
