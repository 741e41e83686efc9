using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>The words of a design: written only when asked for.</summary>
internal static class DesignText
{
    // A load that states no least voltage and gets less than this share of the nominal one gets a caution. Common practice, no published source.
    private const double WeakShare = 0.8;

    internal static string Summary(CircuitDesign design)
    {
        string wire = WireInWords(design);
        string chosen = design.Fuse is { } fuse ? $"{wire} with {fuse}" : $"{wire} without a fuse";
        return design.Verdict switch
        {
            Verdict.Pass => $"{chosen}: pass, governed by {design.Governing.Name}",
            Verdict.Undetermined => design.IsNearest
                ? $"nothing passes; nearest {chosen}: {design.Undetermined[0]}"
                : $"{chosen}: no check fails, {design.Undetermined.Count} undetermined, governed by {design.Governing.Name}",
            _ => design.IsNearest ? $"nothing passes; nearest {chosen}: {design.Governing}" : $"{chosen}: {design.Governing}",
        };
    }

    /// <summary>The wire, with how many of it lie side by side.</summary>
    internal static string WireInWords(CircuitDesign design) =>
        design.Existing is null && design.Requirements.ParallelWires.Least is > 1 and int wires ? $"{Accept.Text(wires)} × {design.Wire}" : design.Wire.ToString();

    internal static IReadOnlyList<string> Assumptions(CircuitDesign design)
    {
        CircuitRequirements asked = design.Requirements;
        BranchState at = design.State();
        List<string> lines = [.. asked.Source.Assumptions];
        lines.Add($"Air at {Accept.Text(asked.Place.AmbientCelsius)} °C, {Conductors(at.Site.LoadedConductors)}{(asked.Place.EngineSpace ? Engine(design) : "")}.");
        if (Array.Exists(at.Stretches, s => s.Parallel > 1))
        {
            lines.Add("Wires in parallel are taken to share the current equally. One fuse over them does not protect a single one when its partner opens.");
        }

        lines.AddRange(Places(at));
        lines.AddRange(Way(design, at));
        if (at.SharedVolts > 0 && asked.Load.LawAt(LoadState.Running) is { Siemens: > 0 } or { Exact: false })
        {
            lines.Add($"The others' {Accept.Text(asked.Return.OtherAmperes)} A in the shared return are counted as flowing: while they do not, the load has up to {Accept.Short(at.SharedVolts)} V more, and a resistance or a lamp draws more in proportion.");
        }

        lines.AddRange(SupplyAssumptions(at));
        lines.Add($"Conductors rated by {design.Rules.Ampacity.Name}; for the drop, the rise of their temperature goes with the square of the current.");
        if (design.Existing is null)
        {
            lines.Add($"{design.Wire}: {design.Wire.Reference}.");
        }

        lines.AddRange(at.Site.Rating.Remarks(design.Wire));
        lines.AddRange(FuseAssumptions(design, at));
        lines.AddRange(DutyText.Of(asked.Load));
        lines.AddRange(LoadRemarks(design));
        return Array.AsReadOnly([.. lines]);
    }

    // Stretches that run elsewhere than the rest.
    private static IEnumerable<string> Places(BranchState at) => at.Stretches
        .Where(s => !ReferenceEquals(s.Site, at.Site))
        .Select(s => $"{char.ToUpperInvariant(s.Name.ToString()[0])}{s.Name.ToString().Substring(1)}: {s.Site.Place}, {s.Site.Insulation.Name}.")
        .Distinct();

    /// <summary>Feed and return in one clause.</summary>
    internal static string WayInWords(CircuitDesign design, bool remarks)
    {
        double feed = design.Existing?.FeedArray.Sum(segment => segment.Meters) ?? design.Requirements.FeedMeters;
        return $"feed {Accept.Text(feed)} m one way; {Return(design.Existing?.Return ?? design.Requirements.Return, remarks ? ", whose own rating is not checked" : "")}";
    }

    private static IEnumerable<string> Way(CircuitDesign design, BranchState at)
    {
        CircuitRequirements asked = design.Requirements;
        IReadOnlyList<Joint> joints = design.Existing is { } laid ? [.. laid.FeedJoints, .. laid.ReturnJoints] : asked.Joints;
        yield return SolutionText.Sentence(WayInWords(design, remarks: true)) + ".";
        yield return joints.Count == 0
            ? "No joints were stated: crimps, connectors, switches and the fuse itself add to the drop."
            : $"Joints {Accept.Text(joints.Sum(joint => joint.Ohms) * 1000)} mΩ in all.";
        yield return Lead(asked, at);
        if (at.Supply.Length > 0 && at.Load.HasSurge)
        {
            yield return "The main fuse is asked whether it holds while this load starts alone; what other circuits take of it then comes on top.";
        }
    }

    private static string Lead(CircuitRequirements asked, BranchState at)
    {
        string protects = at.Supply.Length == 0 ? "This fuse does not protect it." : "What stands before it protects it.", counted = Accept.Short(asked.CountedLeadOhms * 1000);
        return asked.UpstreamOhms is not { } ohms
            ? asked.CountedLeadOhms > 0
                ? $"The supply lead to the fuse was not stated as a whole; what is stated of it has {counted} mΩ, its wires as hot as their insulation allows, which counts for the drop and for the short circuit at the far end. {protects}"
                : "The supply lead to the fuse was not stated; it is counted as nothing, for the drop and for the short circuit at the far end."
            : asked.CountedLeadOhms > ohms * (1 + BranchState.Rounding)
                ? $"Supply lead to the fuse {Accept.Text(ohms * 1000)} mΩ, out and back; its wires have {counted} mΩ as hot as their insulation allows, which counts for the drop and for the short circuit at the far end. {protects}"
                : $"Supply lead to the fuse {Accept.Text(ohms * 1000)} mΩ, out and back. {protects}";
    }

    private static IEnumerable<string> SupplyAssumptions(BranchState at)
    {
        foreach (SupplyStage stage in at.Supply)
        {
            yield return $"The supply lead behind the {stage.Device} carries at most {Accept.Short(stage.Device.Amperes * at.Practice.Loading)} A continuously, with all that hangs on it.";
        }

        if (at.Supply.Length > 0)
        {
            yield return at.IsProtectedUpstream
                ? $"The circuit has no fuse of its own: the {at.Fuse} protects its wire too."
                : "Selectivity counts this circuit's fault alone: what the main fuse carries for other circuits at that moment comes on top.";
        }
    }

    private static IEnumerable<string> FuseAssumptions(CircuitDesign design, BranchState at)
    {
        if (design.Fuse is not { } fuse)
        {
            yield break;
        }

        string air = $"The air around the fuse is counted at {Accept.Text(at.FuseAmbientCelsius)} °C{(design.Requirements.FuseAmbient is null ? ", that of the wire: it was not stated" : "")}.";
        yield return fuse.Series.Rerating is { } rerating
            ? $"{air} Its rating is lowered with that by: {rerating}."
            : $"{air} No re-rating with temperature is published for the {fuse}: its rating counts in full.";
        if (design.Find(CheckKind.InrushHeld) is not null)
        {
            yield return $"All loads of the circuit are switched on together, {Accept.Text(at.Starts)} times in the life of the fuse{(design.Requirements.Starts is null ? " (not stated)" : "")}, at least 10 s apart.";
        }
    }

    private static string Conductors(int count) => count == 1 ? "one loaded conductor alone" : $"{count} loaded conductors together";

    // Only the boat table knows engine spaces as such.
    private static string Engine(CircuitDesign design) => design.Rules.Ampacity.KnowsEngineSpaces
        ? ", in an engine space"
        : ", in an engine space: this rating knows no such thing and counts the stated air temperature only";

    // A lamp far from its rated voltage, for example.
    private static IEnumerable<string> LoadRemarks(CircuitDesign design) => new[] { design.SupplyRange.Minimum, design.SupplyRange.Nominal, design.SupplyRange.Maximum }
        .Where(point => point.Exists)
        .Select(point => design.Requirements.Load.RemarkAt(point.LoadVolts, LoadState.Running))
        .OfType<string>()
        .Distinct();

    // A source that is too weak for its load is no fault of the wiring: the drop counts what is lost in the path alone.
    private static string? WeakSource(CircuitDesign design)
    {
        double nominal = design.Requirements.Source.Numbers.NominalVolts;
        return design.SupplyRange.Minimum is { Exists: true } least && least.LoadVolts < WeakShare * nominal && design.Find(CheckKind.LoadVoltage) is null
            ? $"At the lowest supply voltage the load gets {Accept.Short(least.LoadVolts)} V of {Accept.Text(nominal)} V, mostly because of the source. Whether it works with that was not asked: state the least voltage that it needs."
            : null;
    }

    internal static IReadOnlyList<string> Cautions(CircuitDesign design)
    {
        List<string> lines = [.. Design.Cautions.General];
        if (AtLimit(design.SupplyRange) is { } limited)
        {
            lines.Insert(0, $"The source is at its current limit: the load gets {Accept.Text(limited.LoadVolts)} V at {Accept.Text(limited.Amperes)} A, not what it asks for.");
        }

        if (WeakSource(design) is { } weak)
        {
            lines.Insert(0, weak);
        }

        if (design.Verdict != Verdict.Pass)
        {
            lines.Insert(0, design.Verdict == Verdict.Fail
                ? "This circuit fails a check. Do not build it as it stands."
                : "Some checks could not be made from what was stated. They are undetermined, not passed: settle them before building.");
        }

        return Array.AsReadOnly([.. lines]);
    }

    internal static IReadOnlyList<string> Advice(CircuitDesign design)
    {
        if (design.Verdict == Verdict.Pass)
        {
            return [];
        }

        BranchState at = design.State();
        List<string> lines = [.. design.Checks
            .Where(result => result.Outcome != CheckOutcome.Pass && result.Kind is not null)
            .Select(result => Named(result, ((Check)result.Kind!).Advice(result, at)))
            .Distinct()];
        if (design.IsVerified && design.Verdict == Verdict.Fail && CircuitDesigner.Design(design.Requirements, design.Rules) is { IsFeasible: true } own)
        {
            lines.Add($"For this duty the rules would choose {WireInWords(own)} with {own.Fuse}.");
        }
        else if (design.IsNearest && design.Find(CheckKind.FuseCarriesLoad) is { Outcome: CheckOutcome.Fail })
        {
            lines.Add($"The load needs a fuse of {Accept.Short(at.LeastFuseAmperes)} A or more, and the series has none for {Accept.Short(at.Source.MaximumVolts)} V.");
        }

        return Array.AsReadOnly([.. lines]);
    }

    private static string Named(in CheckResult result, string advice) => result.Where.Length > 0 && result.IsOfSeveral ? $"{advice} This concerns {Place(result.Where)}." : advice;

    // Of several devices in a row each is told by what lies behind it.
    private static string Place(string where) => where.StartsWith("behind ", StringComparison.Ordinal) ? $"the supply lead {where}" : $"the {where}";

    private static OperatingPoint? AtLimit(SupplyRange range) =>
        Array.Find([range.Minimum, range.Nominal, range.Maximum], point => point.Exists && point.CurrentLimitReached);

    private static string Return(ReturnPath back, string remark) => back.Kind switch
    {
        ReturnKind.SameConductor => $"return {Accept.Text(back.Meters)} m of the same wire",
        ReturnKind.Segments => $"return {Accept.Text(back.Segments.Sum(segment => segment.Meters))} m of given wire",
        ReturnKind.Chassis => $"return through a chassis of {Accept.Text(back.Ohms * 1000)} mΩ{remark}",
        ReturnKind.SharedResistance => $"return shared with {Accept.Text(back.OtherAmperes)} A of other loads, {Accept.Text(back.Ohms * 1000)} mΩ{remark}",
        _ => $"return shared with {Accept.Text(back.OtherAmperes)} A of other loads, {Accept.Text(back.Segments.Sum(segment => segment.Meters))} m of given wire",
    };
}
