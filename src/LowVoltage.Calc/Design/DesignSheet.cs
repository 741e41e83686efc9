using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>Writes the calculation sheet of a design: what was stated, source, ratings and operating points, then every check with its own working.</summary>
internal sealed class DesignSheet
{
    /// <summary>Notes that belong to the working; the others stand on page 1 of a calculation sheet.</summary>
    internal const string HowToRead = "How to read the numbers";
    internal const string WhyNoSmaller = "Why no smaller size";

    private readonly CircuitDesign design;
    private readonly CircuitRequirements asked;
    private readonly BranchState at;
    private readonly SolutionBuilder board;
    private readonly CircuitPath path;

    internal DesignSheet(CircuitDesign design)
    {
        this.design = design;
        asked = design.Requirements;
        at = design.State();
        path = design.Path;
        board = new SolutionBuilder(asked.Name.Length > 0 ? $"Calculation sheet: {asked.Name}" : "Calculation sheet of one circuit") { Once = true, Rounding = RoundingDirection.Nearest, Engineering = true };
    }

    internal WorkedSolution Write()
    {
        Sheet sheet = Givens();
        board.Caution([.. design.Cautions]);
        board.Section("The source");
        sheet.Source.Write();
        board.Section(design.IsNearest ? $"The wire that comes nearest: {DesignText.WireInWords(design)}" : "The wire");
        sheet.Write(SheetSection.Wire);
        board.Section("What the wire carries continuously");
        sheet.WriteRatings(design.Existing is null ? design.Wire : null, design.Rules.Ampacity);
        sheet.WritePoints();
        board.Section("Voltage");
        sheet.WriteCurrents();
        sheet.Write(SheetSection.Delivery);
        board.Section("Current and temperature of the wire in service");
        sheet.Write(SheetSection.Service);
        Fused(sheet);
        Conclusion();
        Notes();
        return board.Build(design.ToString());
    }

    private void Fused(Sheet sheet)
    {
        board.Section(design.Fuse is not { } fuse ? "Without a fuse" : design.IsNearest ? $"The fuse that comes nearest: {fuse}" : "The fuse");
        sheet.Write(SheetSection.Fuse);
        board.Section("The fuse while the load starts");
        sheet.Write(SheetSection.Start);
        board.Section("Short circuit at the fuse");
        sheet.Write(SheetSection.FuseShort);
        board.Section("Short circuit at the far end");
        sheet.Write(SheetSection.FarEnd);
        board.Section("Overload");
        sheet.Write(SheetSection.Overload);
        board.Section(at.Supply.Length == 1 ? "The supply lead and its main fuse" : "The supply lead and what protects it");
        sheet.Write(SheetSection.Supply);
    }

    private Sheet Givens()
    {
        board.Given("circuit", asked.Name.Length > 0 ? asked.Name : "not named");
        board.Given("rules", design.Rules.Name);
        SourceSymbols source = new(board, asked.Source);
        LoadSymbols load = LoadGivens();
        PathSteps.Givens(board, path);
        board.Given("way back", Words((design.Existing?.Return ?? asked.Return).Kind));
        if (asked.UpstreamOhms is null && asked.CountedLeadOhms <= 0)
        {
            board.Given("supply lead from the source to the fuse", "not stated, counted as nothing");
        }

        Symbol ambient = board.Given("temperature of the air where the wire runs", "θ_a", asked.Place.AmbientCelsius, "°C");
        Symbol continuous = PlaceGivens();
        Demands();
        return new Sheet(board, at, asked.Source, path, design.Checks) { Source = source, Load = load, Ambient = ambient, Continuous = continuous, FuseWords = FuseWords() };
    }

    private LoadSymbols LoadGivens()
    {
        board.Given("load", asked.Load.Name);
        LoadSymbols load = new(board);
        asked.Load.Describe(load);
        load.Thin(asked.Load);
        if (asked.Load.MinimumVolts is { } least)
        {
            board.Given("least voltage at which the load works", "U_min", least, "V");
        }

        if (asked.Load.HasSurge)
        {
            board.Given("starts in the life of the fuse", Accept.Text(asked.CountedStarts) + (asked.Starts is null ? ", not stated" : ""));
        }

        return load;
    }

    private Symbol PlaceGivens()
    {
        if (asked.Place.AltitudeMeters > 0)
        {
            board.Given("altitude above sea level", "H", asked.Place.AltitudeMeters, "m");
        }

        board.Given("loaded conductors together", at.Site.LoadedConductors.ToString(CultureInfo.InvariantCulture));
        if (asked.Place.BundleLoading < 1)
        {
            board.Given("share of the bundle's capacity in use", Accept.Short(100 * asked.Place.BundleLoading) + " %");
        }

        if (asked.Place.EngineSpace)
        {
            board.Given("place", "engine space");
        }

        board.Given("insulation", asked.Insulation.Name);
        Symbol continuous = board.Given("temperature that the insulation stands continuously", "θ_c", asked.Insulation.ContinuousCelsius, "°C");
        if (asked.WallMillimeters is { } wall)
        {
            board.Given("wall of the insulation", Accept.Short(wall) + " mm");
        }

        return continuous;
    }

    private void Demands()
    {
        if (at.DropLimit.Share > 0)
        {
            board.Given("allowed drop, of the nominal voltage", "p_max", at.DropLimit.Share * 100, "%");
        }
        else
        {
            board.Given("allowed drop", at.DropLimit + (asked.Intermittent ? ", intermittent load" : ""));
        }

        if (asked.FuseDistanceMeters is { } meters)
        {
            board.Given($"conductor between source and fuse, {(asked.SheathedToFuse ? "sheathed" : "not sheathed")}", "l_f", meters, "m");
        }

        foreach (UpstreamProtection device in asked.ProtectionArray)
        {
            board.Given("supply lead protected by", SupplyWords.Of(device));
        }

        board.Given("wire", design.Existing is not null && at.Several ? "as it is laid, the parts above" : DesignText.WireInWords(design) + (design.IsNearest ? ", the nearest: none passes" : ""));
        board.Given("fuse", design.Fuse is not { } fuse ? "none" : fuse + (design.IsNearest ? ", the nearest: none passes" : ""));
    }

    private (string Label, string Why) FuseWords() =>
        design.IsNearest ? ("rating tried", "the one that comes nearest; no wire and fuse of the rules pass")
        : design.IsVerified ? ("rating of the fuse", "the one that was verified")
        : ("rating chosen", "the smallest of the series that serves load and wire");

    private static string Words(ReturnKind kind) => kind switch
    {
        ReturnKind.SameConductor => "a wire like the feed",
        ReturnKind.Chassis => "the chassis",
        ReturnKind.SharedResistance => "a resistance shared with other circuits",
        ReturnKind.SharedSegments => "wire shared with other circuits",
        _ => "wire of its own",
    };

    private void Conclusion()
    {
        board.Section("Verdict");

        // Where a smaller size was tried, what governs is what stopped it, not a failure of this circuit.
        string smaller = design.Verdict != Verdict.Fail && design.Governing.Outcome == CheckOutcome.Fail
            ? $"What stopped a smaller size decides: with it, {design.Governing}." : $"{design.Governing}.";
        board.State("what governs", smaller, design.Governing.Reference);
        string[] failed = [.. design.Checks.Where(check => check.Outcome == CheckOutcome.Fail).Select(check => check.Name)];
        board.State("verdict", design.ToString() + (failed.Length > 1 ? $". {failed.Length.ToString(CultureInfo.InvariantCulture)} checks fail: {string.Join(", ", failed)}." : "."));
    }

    private void Notes()
    {
        board.Note(HowToRead, ["Results are shown to four digits, rounded to the nearest, and what is looked up to five; nothing is rounded in between. A limit is met by the unrounded number."]);
        board.Note(WhyNoSmaller, [.. design.Rejected.Select(size => size.ToString())]);
        board.Note("Undetermined: not passed, to be settled before building", [.. design.Undetermined.Select(check => check.ToString())]);
        board.Note("What would help", design.Advice);
        board.Note("Assumptions, to be confirmed by whoever installs the circuit", design.Assumptions);
    }
}
