using System.Globalization;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Design;

/// <summary>Writes the calculation sheet of a design from its own checks and operating points.</summary>
internal sealed partial class DesignExplanation
{
    private readonly CircuitDesign design;
    private readonly CircuitRequirements asked;
    private readonly SolutionBuilder board;
    private readonly List<DesignCheck> left;

    internal DesignExplanation(CircuitDesign design)
    {
        this.design = design;
        asked = design.Requirements;
        board = new SolutionBuilder(asked.Name.Length > 0 ? $"Calculation sheet: {asked.Name}" : "Calculation sheet of one circuit");
        left = [.. design.Checks];
    }

    internal WorkedSolution Write()
    {
        Givens();
        board.Caution([.. design.Cautions]);
        if (design.Path is { } path && design.SupplyRange is { } range)
        {
            OfPath(path, range);
        }
        else
        {
            board.Section("The largest size that was tried");
        }

        Rest();
        Verdict();
        Notes();
        return board.Build(design.ToString());
    }

    private void OfPath(CircuitPath path, SupplyRange range)
    {
        board.Section("The wire");
        Checks(CheckKind.MechanicalMinimum);
        Include("Operating point at the least supply voltage", range.Minimum);
        Include("Operating point at the nominal supply voltage", range.Nominal);
        Include("Operating point at the greatest supply voltage", range.Maximum);
        board.Section("Voltage");
        Checks(CheckKind.PowerDelivery, CheckKind.VoltageDrop, CheckKind.LoadVoltage, CheckKind.StartVoltage);
        board.Section("Continuous current and temperature of the wire");
        Symbol? rated = Rating();
        Checks(CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature);
        if (design.Fuse is { } fuse)
        {
            board.Section("The fuse");
            Fuse(fuse, range, rated);
            board.Section("Short circuit");
            Short(fuse, path);
        }
    }

    private void Include(string section, OperatingPoint point)
    {
        board.Section(section);
        board.Include(point.Explain(), onlyNew: true);
    }

    private Symbol? Rating()
    {
        if (design.Ampacity is { } derated)
        {
            Symbol allowed = derated.Write(board);
            board.Note("Remarks on the rating", derated.Remarks);
            return allowed;
        }

        if (design.Rules.Ampacity.Prepare(design.At).TryAmperes(design.Wire!, out double amperes))
        {
            return board.LookUp(
                $"current that {design.Wire} carries for good where it runs", "I_z", amperes, "A", design.Rules.Ampacity.Reference, $"By {design.Rules.Ampacity.Name}; the source has the equations.");
        }

        board.State("current that the wire carries for good", $"{design.Rules.Ampacity.Name} does not rate {design.Wire} here.", design.Rules.Ampacity.Reference);
        return null;
    }

    // The checks of these kinds, beside the steps they belong to.
    private void Checks(params CheckKind[] kinds)
    {
        foreach (CheckKind kind in kinds)
        {
            foreach (DesignCheck check in left.FindAll(c => c.Kind == kind))
            {
                Check(check);
            }

            left.RemoveAll(c => c.Kind == kind);
        }
    }

    // A kind that has no place of its own is listed all the same.
    private void Rest()
    {
        if (left.Count > 0 && design.Wire is not null)
        {
            board.Section("Further checks");
        }

        foreach (DesignCheck check in left)
        {
            Check(check);
        }

        left.Clear();
    }

    private void Check(in DesignCheck check)
    {
        string note = check.Note.Length == 0 ? "" : SolutionText.Sentence(check.Note) + ".";
        bool pass = check.Outcome == CheckOutcome.Pass;
        bool numbers = !double.IsInfinity(check.Value) && !double.IsInfinity(check.Limit) && !double.IsNaN(check.Value) && !double.IsNaN(check.Limit);
        Relation relation = check.LimitIsLeast ? Relation.AtLeast : Relation.AtMost;
        if (check.Outcome == CheckOutcome.Open || !numbers || IsInWords(check, relation, pass))
        {
            board.State($"check: {check.Name}", check.ToString() + ".", check.Reference);
            return;
        }

        string margin = "Margin " + Accept.Short(100 * check.Margin) + " %.";
        board.Compare(
            $"check: {check.Name}",
            CheckSymbols.Value(check),
            relation,
            CheckSymbols.Limit(check),
            check.Reference,
            note.Length == 0 ? margin : $"{margin} {note}",
            pass,
            check.LimitIsLeast ? RoundingDirection.Up : RoundingDirection.Down);
    }

    // A time that never comes, and a fuse that nothing has to open, carry no number to compare.
    private static bool IsInWords(in DesignCheck check, Relation relation, bool pass) =>
        (check.Value == 0 && check.Kind is CheckKind.FaultOpensFuse or CheckKind.StartVoltage)
        || Math.Abs(check.Value - check.Limit) > 1e-6 * Math.Abs(check.Limit) && RelationWords.Holds(check.Value, relation, check.Limit) != pass;

    private void Verdict()
    {
        board.Section("Verdict");
        // Where a smaller size was tried, what governs is what stopped it, not a failure of this circuit.
        string smaller = design.Wire is not null && design.Verdict != DesignVerdict.Fail && design.Governing.Outcome == CheckOutcome.Fail
            ? $"What stopped a smaller size decides: with it, {design.Governing}." : $"{design.Governing}.";
        board.State("what governs", smaller, design.Governing.Reference);
        board.State("verdict", design.ToString() + ".");
    }

    private void Notes()
    {
        board.Note("Why no smaller size", [.. design.Rejected.Select(size => size.ToString())]);
        board.Note("Open points", [.. design.OpenPoints.Select(check => check.ToString())]);
        board.Note("What would help", design.Advice);
        board.Note("Assumptions, to be confirmed by whoever installs the circuit", design.Assumptions);
        board.Note("Signatures", ["Calculated by, date: ______________________________", "Checked by, date: ______________________________"]);
    }

    private void Givens()
    {
        SourceNumbers source = asked.Source.Numbers;
        board.Given("circuit", asked.Name.Length > 0 ? asked.Name : "not named");
        board.Given("rules", design.Rules.Name);
        board.Given("source", asked.Source.Name);
        board.Given("least voltage of the source, at rest", "V_min", source.MinimumVolts, "V");
        board.Given("nominal voltage", "V_n", source.NominalVolts, "V");
        board.Given("greatest voltage of the source", "V_max", source.MaximumVolts, "V");
        board.Given("least resistance inside the source", "R_min", source.LeastOhms, "Ω");
        board.Given("greatest resistance inside the source", "R_max", source.GreatestOhms, "Ω");
        board.Given("load", asked.Load.Name);
        if (asked.Load.MinimumVolts is { } least)
        {
            board.Given("least voltage at the load", "U_min", least, "V");
        }

        board.Given("feed, one way", "L_f", design.Existing?.FeedArray.Sum(s => s.Meters) ?? asked.FeedMeters, "m");
        board.Given("return", Words(design.Existing?.Return ?? asked.Return));
        board.Given("ambient temperature where the wire runs", "θ_a", asked.AmbientCelsius, "°C");
        board.Given("loaded conductors together", asked.LoadedConductors.ToString(CultureInfo.InvariantCulture));
        board.Given("insulation", $"{asked.Insulation.Name}, {Accept.Short(asked.Insulation.ContinuousCelsius)} °C for good");
        board.Given("allowed drop", (asked.DropLimit ?? design.Rules.DropLimit).ToString());
        board.Given("wire", design.Wire?.ToString() ?? "none of the series fits");
        board.Given("fuse", design.Fuse?.ToString() ?? "none");
    }

    private static string Words(ReturnPath back) => back.Kind switch
    {
        ReturnKind.SameConductor => $"{Accept.Short(back.Meters)} m of the same wire",
        ReturnKind.Chassis => $"chassis, {Accept.Short(back.Ohms)} Ω",
        ReturnKind.SharedResistance => $"shared with other circuits, {Accept.Short(back.Ohms)} Ω",
        ReturnKind.SharedSegments => $"shared with other circuits, {Accept.Short(back.Segments.Sum(s => s.Meters))} m of wire",
        _ => $"{Accept.Short(back.Segments.Sum(s => s.Meters))} m of given wire",
    };
}
