using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;

namespace HarnessReport;

/// <summary>Writes the report in plain text, for a terminal or a file.</summary>
internal sealed class Report(TextWriter output)
{
    private const int Width = 118;
    private const int MostLines = 40;

    public void Sizing(HarnessDesign design, Harness? before)
    {
        Head("Sizing");
        output.WriteLine(design.IsProvenLeast
            ? $"{N(design.Cost)} kg of metal in the wires that were sized: the least that passes, proven."
            : $"{N(design.Cost)} kg of metal in the wires that were sized, at most {N(design.Gap.Percent)} % above the least; none lighter than {N(design.LowerBound)} kg keeps the drops and each wire's own checks.");
        Compare(design);

        if (before is not null && before.Branches.OfType<HarnessWire>().All(w => w.Conductor is not null))
        {
            output.WriteLine($"The wires in the file have {N(before.Branches.OfType<HarnessWire>().Sum(w => w.Conductor!.MassPerLength.KilogramsPerMeter * w.Length.Meters * w.Parallel))} kg.");
        }

        if (design.AllowanceCosts.Count > 0)
        {
            output.WriteLine($"If each load might lose so many volts more (or less), the drops and each wire's own checks would take: {string.Join(", ", design.AllowanceCosts.Select(c => $"{c.More.Volts.ToString("+0.0;-0.0;0", CultureInfo.InvariantCulture)} V {N(c.Cost)} kg"))}.");
        }

        output.WriteLine();
    }

    // All three keep the same drops and the same checks of each wire by itself, at the same currents: what is compared is how the drop is shared out.
    private void Compare(HarnessDesign design)
    {
        Table table = new([72, 12, 24], output);
        table.Write("drops and each wire's own checks, at these currents", "kg", "above the lower bound");
        table.Rule();
        table.Write($"sized together{(design.IsTree ? "" : ": no choice is below")}", N(design.LowerBound), "");
        Row("circuit by circuit: each load's way alone, of shared wires the largest", design.CostCircuitByCircuit);
        Row("each allowed drop divided by length", design.CostDividedByLength);

        void Row(string how, double? cost) => table.Write(how, cost is null ? "no answer" : N(cost), cost is { } kilograms ? $"{N(100 * ((kilograms / design.LowerBound) - 1))} %" : "");
    }

    public void Verdict(HarnessVerification verified, bool shipped)
    {
        output.WriteLine(verified.Harness);
        if (shipped)
        {
            output.WriteLine("An invented scenario. Give a file of your own, or --help.");
        }

        output.WriteLine($"Rules: {verified.Harness.Rules.Name}. Load cases: {string.Join(", ", verified.Harness.LoadCases)}.");
        output.WriteLine();
        output.WriteLine($"VERDICT: {Word(verified.Verdict)}   {Count(verified, CheckOutcome.Pass)} checks pass, {Count(verified, CheckOutcome.Fail)} fail, {Count(verified, CheckOutcome.Undetermined)} are undetermined");
        output.WriteLine();
    }

    public void Loads(HarnessVerification verified)
    {
        Head("Loads");
        Table table = new([26, 9, 9, 12, 12, 34], output);
        table.Write("load", "V", "A", "drop V", "allowed V", "verdict");
        table.Rule();
        HarnessSolution[] cases = [.. verified.Harness.LoadCases.Select(c => verified.Harness.Solve(SupplyLevel.Minimum, c))];
        foreach (HarnessLoad load in verified.Harness.Loads)
        {
            HarnessSolution? at = Array.Find(cases, c => c.Exists && c.ConditionOf(load.Id) == LoadCondition.Running);
            CheckResult? drop = verified.Find(CheckKind.VoltageDrop, load.Id)?.Result;
            table.Write(
                load.Id, at is null ? "" : N(at.VoltageAt(load.Id).Volts), at is null ? "" : N(at.CurrentAt(load.Id).Amperes), N(drop?.Value), N(drop?.Limit), Worst(verified, c => c.Place == load.Id));
        }

        output.WriteLine("V and A at the lowest supply, in the first load case that has the load on; drop: the largest of all.");
        output.WriteLine();
    }

    public void Wires(HarnessVerification verified)
    {
        Head("Wires");
        Table table = new([26, 16, 7, 9, 9, 8, 36], output);
        table.Write("wire", "size", "m", "A r.m.s.", "rated A", "°C", "verdict");
        table.Rule();
        foreach (HarnessWire wire in verified.Harness.Branches.OfType<HarnessWire>())
        {
            CheckResult? current = verified.Find(CheckKind.ContinuousCurrent, wire.Id)?.Result, hot = verified.Find(CheckKind.ConductorTemperature, wire.Id)?.Result;
            string size = $"{(wire.Parallel > 1 ? $"{wire.Parallel} × " : "")}{wire.Conductor!.Size?.ToString() ?? wire.Conductor.Name}";
            table.Write(wire.Id, size, N(wire.Length.Meters), N(current?.Value), N(current?.Limit), hot?.Value is { } celsius ? N(Math.Round(celsius)) : "", Worst(verified, c => c.Place == wire.Id || c.Wire == wire.Id));
        }

        output.WriteLine();
    }

    public void Fuses(HarnessVerification verified)
    {
        Head("Fuses");
        Table table = new([26, 10, 10, 14, 14, 36], output);
        table.Write("fuse", "rating A", "needed A", "short A", "breaks A", "verdict");
        table.Rule();
        foreach (HarnessFuse fuse in verified.Harness.Branches.OfType<HarnessFuse>())
        {
            CheckResult? carries = verified.Find(CheckKind.FuseCarriesLoad, fuse.Id)?.Result, breaks = verified.Find(CheckKind.BreakingCapacity, fuse.Id)?.Result;
            table.Write(fuse.Id, N(fuse.Rating!.Current.Amperes), N(carries?.Limit), N(breaks?.Value), N(fuse.Rating.BreakingCapacity?.Amperes), Worst(verified, c => c.Place == fuse.Id));
        }

        output.WriteLine();
    }

    public void Problems(HarnessVerification verified)
    {
        HarnessCheck[] wrong = [.. verified.Failed, .. verified.Undetermined];
        if (wrong.Length > 0)
        {
            Head("What fails or is undetermined");
            foreach (HarnessCheck check in wrong.Take(MostLines))
            {
                Item(check.Outcome == CheckOutcome.Fail ? "FAIL  " : "?     ", $"{check} ({check.LoadCase})");
                Item("      → ", check.Advice);
            }

            if (wrong.Length > MostLines)
            {
                output.WriteLine($"… and {wrong.Length - MostLines} more; --csv writes all of them.");
            }

            output.WriteLine();
        }

        if (verified.Findings.Count > 0)
        {
            Head("How it is connected");
            foreach (HarnessFinding finding in verified.Findings.OrderByDescending(f => f.Severity))
            {
                Item("- ", finding.Text);
            }

            output.WriteLine();
        }

        SelectivityPair[] unproven = [.. verified.Selectivity.Where(p => p.Answer.Verdict != LowVoltage.Calc.Protection.Selectivity.Proven)];
        output.WriteLine($"Selectivity: of {verified.Selectivity.Count} fuses behind others {verified.Selectivity.Count - unproven.Length} are proven to open alone, "
            + $"{unproven.Count(p => p.Answer.Verdict == LowVoltage.Calc.Protection.Selectivity.Disproven)} are proven not to.");
        output.WriteLine();
    }

    public void Faults(FaultAudit? audit)
    {
        if (audit is null)
        {
            return;
        }

        Head($"Faults: {audit.Faults.Count} places broken, the ten worst");
        output.WriteLine(audit.ToText());
        output.WriteLine();
    }

    public void Batch(Harness harness, ToleranceSample sample)
    {
        Head($"A batch: {sample.Count} harnesses with {sample.Tolerances}");
        Item("", $"{sample.Whole.Failed} of {sample.Count} fail somewhere: at most {N(100 * (double)sample.Whole.AtMost().DecimalFractions)} % of the batch with 95 % confidence (seed {sample.Seed}).");
        foreach (SampledCheck check in sample.Checks.Where(c => c.Failed > 0).Take(MostLines))
        {
            Item("- ", check.ToString());
        }

        output.WriteLine();
        foreach (LoadCase used in harness.LoadCases)
        {
            Bounds(harness, used, HarnessBounds.Of(harness, sample.Tolerances, used));
        }
    }

    private void Bounds(Harness harness, LoadCase used, HarnessBounds bounds)
    {
        Head($"Bounds over these tolerances: {used}");
        int passes = bounds.Checks.Count(c => c.Verdict == BoxVerdict.PassesEverywhere);
        Item("", $"Of {bounds.Checks.Count} checks of voltage, drop, current and temperature {passes} pass everywhere within the tolerances "
            + $"({bounds.Checks.Count(c => c.Verdict == BoxVerdict.PassesEverywhere && c.Bound == BoundKind.Guaranteed)} by a guaranteed bound, {bounds.Checks.Count(c => c.Verdict == BoxVerdict.PassesEverywhere && c.Bound == BoundKind.Enclosure)} by an enclosure). "
            + "No bound judges fuses, faults or starts.");
        if (bounds.Reason.Length > 0)
        {
            Item("- ", $"Nothing is enclosed: {bounds.Reason}.");
        }

        BoundedCheck[] rest = [.. bounds.Checks.Where(c => c.Verdict != BoxVerdict.PassesEverywhere).OrderBy(c => c.Verdict == BoxVerdict.MayFail ? 0 : 1)];
        foreach (BoundedCheck check in rest.Take(MostLines))
        {
            Item("- ", check.ToString());
        }

        if (rest.Length > MostLines)
        {
            Item("- ", $"… and {rest.Length - MostLines} more.");
        }

        if (bounds.MayCutOut.Count > 0)
        {
            Item("- ", $"May cut out within these tolerances: {string.Join(", ", bounds.MayCutOut)}.");
        }

        if (bounds.MayPassLimit)
        {
            Item("- ", "A source may come to its current limit.");
        }

        Table table = new([26, 24, 16], output);
        table.Write("load", "V, least to most", "bound");
        table.Rule();
        foreach (HarnessLoad load in harness.Loads.Where(l => !used.Off.Contains(l.Id)))
        {
            HarnessBound<ElectricPotential> volts = bounds.VoltageAt(load.Id);
            table.Write(load.Id, volts.Kind == BoundKind.None ? "" : $"{N(volts.Least?.Volts)} to {N(volts.Greatest?.Volts)}", volts.Kind switch { BoundKind.Guaranteed => "guaranteed", BoundKind.Enclosure => "enclosed", _ => "none" });
        }

        output.WriteLine();
    }

    public void Totals(HarnessVerification verified)
    {
        Head("Totals");
        foreach (LoadCase used in verified.Harness.LoadCases)
        {
            HarnessSolution at = verified.Harness.Solve(SupplyLevel.Nominal, used);
            output.WriteLine(at.Exists
                ? $"{used}: {N((double)at.Consumed.Watts)} W in the loads, {N((double)at.Lost.Watts)} W lost in wires, fuses and chassis; {string.Join(", ", verified.Harness.Sources.Select(s => $"{s.Id} {N(at.CurrentFrom(s.Id).Amperes)} A"))}"
                : $"{used}: {at.Explanation}");
        }

        double kilograms = verified.Harness.Branches.OfType<HarnessWire>().Sum(w => w.Conductor!.MassPerLength.KilogramsPerMeter * w.Length.Meters * w.Parallel);
        double meters = verified.Harness.Branches.OfType<HarnessWire>().Sum(w => w.Length.Meters * w.Parallel);
        output.WriteLine($"{N(meters)} m of wire, {N(kilograms)} kg of metal. A source below 0 A is being charged.");
        output.WriteLine();
        Head("Assumptions");
        Lines(verified.Assumptions);
        Head("Cautions");
        Lines(verified.Cautions);
    }

    private void Lines(IReadOnlyList<string> lines)
    {
        foreach (string line in lines)
        {
            Item("- ", line);
        }

        output.WriteLine();
    }

    // The check that says most against a part: its outcome, and by how much.
    private static string Worst(HarnessVerification verified, Func<HarnessCheck, bool> about)
    {
        HarnessCheck? worst = null;
        foreach (HarnessCheck check in verified.Checks.Where(about))
        {
            worst = worst is not { } before || Rank(check) > Rank(before) || (Rank(check) == Rank(before) && (check.Result.Margin ?? 9) < (before.Result.Margin ?? 9)) ? check : worst;
        }

        return worst is not { } found ? "" : found.Outcome switch
        {
            CheckOutcome.Pass => found.Result.Margin is { } margin ? $"pass, {N(Math.Round(100 * margin))} % left: {found.Kind!.Name}" : "pass",
            CheckOutcome.Fail => $"FAIL: {found.Kind!.Name}",
            _ => $"undetermined: {found.Kind!.Name}",
        };
    }

    private static int Rank(HarnessCheck check) => check.Outcome switch { CheckOutcome.Fail => 2, CheckOutcome.Undetermined => 1, _ => 0 };

    private void Head(string text)
    {
        output.WriteLine(text);
        output.WriteLine(new string('=', text.Length));
    }

    private void Item(string mark, string text)
    {
        IReadOnlyList<string> lines = Table.Wrap(text, Width - mark.Length);
        for (int k = 0; k < lines.Count; k++)
        {
            output.WriteLine((k == 0 ? mark : new string(' ', mark.Length)) + lines[k]);
        }
    }

    private static int Count(HarnessVerification verified, CheckOutcome outcome) => verified.Checks.Count(c => c.Outcome == outcome);

    private static string Word(LowVoltage.Calc.Checks.Verdict verdict) => verdict switch
    {
        LowVoltage.Calc.Checks.Verdict.Pass => "PASS",
        LowVoltage.Calc.Checks.Verdict.Fail => "FAIL",
        _ => "UNDETERMINED",
    };

    private static string N(double? value) => value is { } number ? number.ToString("G4", CultureInfo.InvariantCulture) : "";
}
