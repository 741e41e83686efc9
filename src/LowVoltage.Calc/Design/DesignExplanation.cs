using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>Writes the calculation sheet of a design from its own checks, operating points and kernels.</summary>
/// <remarks>One letter stands for one quantity on the whole sheet, and reads the same wherever it is met. Where nothing fits, the largest size that was tried is worked out up to what stopped it.</remarks>
internal sealed partial class DesignExplanation
{
    private readonly CircuitDesign design;
    private readonly CircuitRequirements asked;
    private readonly SolutionBuilder board;
    private readonly List<CheckResult> left;
    private readonly Conductor wire;
    private readonly FuseRating? fuse;
    private readonly CircuitEvaluator evaluator;
    private readonly CircuitPath path;
    private readonly WireDuty duty;
    private readonly ConductorMarks marks = new();

    private SourceSymbols source = null!;
    private LoadSymbols load = null!;
    private Symbol ambient = null!;
    private Symbol continuous = null!;

    internal DesignExplanation(CircuitDesign design)
    {
        this.design = design;
        asked = design.Requirements;
        board = new SolutionBuilder(asked.Name.Length > 0 ? $"Calculation sheet: {asked.Name}" : "Calculation sheet of one circuit") { Once = true, Rounding = RoundingDirection.Nearest };
        left = [.. design.Checks];
        (wire, fuse) = design.Wire is { } chosen ? (chosen, design.Fuse) : CircuitDesigner.LargestTried(asked, design.Rules);
        evaluator = Evaluate(out duty);
        path = design.Existing is { } laid ? evaluator.Rated(laid) : evaluator.PathWith(wire);
    }

    internal WorkedSolution Write()
    {
        Givens();
        board.Caution([.. design.Cautions]);
        board.Section("The source");
        source.Write();
        board.Section(design.Wire is null ? $"The largest size that was tried: {wire}" : "The wire");
        Mechanical();
        board.Section("What the wire carries for good");
        bool rated = Ratings();
        Checks(design.Wire is null && !rated ? [CheckKind.ContinuousCurrent] : []);
        if (Has(CheckKind.VoltageDrop) || Has(CheckKind.PowerDelivery))
        {
            Points();
            Voltage();
            board.Section("Current and temperature of the wire in service");
            Service();
        }

        if (fuse is not null && duty.Exists)
        {
            Fused(fuse);
        }

        Rest();
        Conclusion();
        Notes();
        return board.Build(design.ToString());
    }

    // What was evaluated, once more: the numbers that the checks do not keep.
    private CircuitEvaluator Evaluate(out WireDuty found)
    {
        CircuitEvaluator again = design.Existing is { } laid ? new(asked, design.Rules, design.At, laid) : new(asked, design.Rules, design.At);
        if (design.Existing is null)
        {
            again.Try(wire);
        }

        CheckList list = again.NewList();
        again.CheckWire(ref list, out found, askAll: true);
        if (fuse is not null && found.Exists)
        {
            again.CheckFuse(ref list, found, fuse);
        }

        return again;
    }

    private bool Has(CheckKind kind) => design.Check(kind) is not null;

    private void Mechanical()
    {
        if (design.Check(CheckKind.MechanicalMinimum) is not { } check)
        {
            return;
        }

        Value(check.Kind, board.LookUp(Several ? "section of the thinnest conductor" : $"section of {wire}", "A_w", check.Value, "mm²", wire.Reference));
        Limit(check.Kind, board.LookUp("thinnest that is strong enough", "A_min", design.Rules.MinimumSquareMillimeters, "mm²", design.Rules.MinimumSectionReference));
        Checks(CheckKind.MechanicalMinimum);
    }

    private bool Several => evaluator.Stretches.Count() > 1;

    private void Conclusion()
    {
        board.Section("Verdict");
        // Where a smaller size was tried, what governs is what stopped it, not a failure of this circuit.
        string smaller = design.Wire is not null && design.Verdict != Verdict.Fail && design.Governing.Outcome == CheckOutcome.Fail
            ? $"What stopped a smaller size decides: with it, {design.Governing}." : $"{design.Governing}.";
        board.State("what governs", smaller, design.Governing.Reference);
        string[] failed = [.. design.Checks.Where(check => check.Outcome == CheckOutcome.Fail).Select(check => check.Name)];
        board.State("verdict", design.ToString() + (failed.Length > 1 ? $". {failed.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)} checks fail: {string.Join(", ", failed)}." : "."));
    }

    private void Notes()
    {
        board.Note("How to read the numbers", ["Results are shown to four digits, rounded to the nearest, and what is looked up to five; nothing is rounded in between. A limit is met by the unrounded number."]);
        board.Note(design.Wire is null ? "Why no size fits" : "Why no smaller size", [.. design.Rejected.Select(size => size.ToString())]);
        board.Note("Open points", [.. design.Undetermined.Select(check => check.ToString())]);
        board.Note("What would help", design.Advice);
        board.Note("Assumptions, to be confirmed by whoever installs the circuit", design.Assumptions);
        board.Note("Signatures", ["Calculated by, date: ______________________________", "Checked by, date: ______________________________"]);
    }
}
