using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Design;

/// <summary>The words of a design: written only when asked for.</summary>
internal static class DesignText
{
    internal static string Summary(CircuitDesign design)
    {
        string governed = $"governed by {design.Governing.Name}";
        return design.Verdict switch
        {
            Verdict.Pass => $"{design.Wire} with {design.Fuse}: pass, {governed}",
            Verdict.Undetermined => $"{design.Wire} with {design.Fuse}: no check fails, {design.Undetermined.Count} open, {governed}",
            _ => design.Wire is null ? $"no {(design.Governing.Kind is CheckKind.FuseCarriesLoad or CheckKind.FuseVoltage or CheckKind.BreakingCapacity ? "fuse of the series passes every check" : "wire of the series fits")}: {design.Governing}" : $"{design.Wire} with {design.Fuse}: {design.Governing}",
        };
    }

    internal static IReadOnlyList<string> Assumptions(CircuitDesign design)
    {
        CircuitRequirements asked = design.Requirements;
        List<string> lines = [.. asked.Source.Assumptions];
        lines.Add($"Air at {Accept.Text(asked.AmbientCelsius)} °C, {Conductors(design.At.LoadedConductors)}{(asked.EngineSpace ? Engine(design) : "")}.");
        if (design.Existing is { } parallel && parallel.FeedArray.Concat(parallel.BackArray).Any(segment => segment.Parallel > 1))
        {
            lines.Add("Wires in parallel are taken to share the current equally. One fuse over them does not protect a single one when its partner opens.");
        }

        IReadOnlyList<Joint> joints = design.Existing is { } laid ? [.. laid.FeedJoints, .. laid.ReturnJoints] : asked.Joints;
        double feed = design.Existing?.FeedArray.Sum(segment => segment.Meters) ?? asked.FeedMeters;
        lines.Add($"Feed {Accept.Text(feed)} m one way; {Return(design.Existing?.Return ?? asked.Return)}.");
        lines.Add(joints.Count == 0
            ? "No joints were stated: crimps, connectors, switches and the fuse itself add to the drop."
            : $"Joints {Accept.Text(joints.Sum(joint => joint.Ohms) * 1000)} mΩ in all.");
        lines.Add(asked.UpstreamOhms is { } ohms
            ? $"Supply lead to the fuse {Accept.Text(ohms * 1000)} mΩ, out and back."
            : "The supply lead to the fuse was not stated; it is counted as nothing for the drop.");
        lines.Add($"Conductors rated by {design.Rules.Ampacity.Name}; for the drop, the rise of their temperature goes with the square of the current.");
        if (design.Wire is { } wire)
        {
            lines.Add($"{wire}: {wire.Reference}.");
            lines.AddRange(design.Rules.Ampacity.Prepare(design.At).Remarks(wire));
        }

        if (asked.Load.DutyCycle.Fraction < 1)
        {
            lines.Add("The duty cycle heats by its r.m.s. current only when its pulses are short, a second or two; a longer pulse is counted as continuous where its length is known.");
        }

        lines.AddRange(LoadRemarks(design));
        return lines;
    }

    private static string Conductors(int count) => count == 1 ? "one loaded conductor alone" : $"{count} loaded conductors together";

    // Only the boat table knows engine spaces as such.
    private static string Engine(CircuitDesign design) => design.Rules.Ampacity is SmallCraftAmpacity
        ? ", in an engine space"
        : ", in an engine space: this rating knows no such thing and counts the stated air temperature only";

    // A lamp far from its rated voltage, for example.
    private static IEnumerable<string> LoadRemarks(CircuitDesign design) => design.SupplyRange is not { } range
        ? []
        : new[] { range.Minimum, range.Nominal, range.Maximum }
            .Where(point => point.Exists)
            .Select(point => design.Requirements.Load.RemarkAt(point.LoadVolts, LoadState.Running))
            .OfType<string>();

    internal static IReadOnlyList<string> Cautions(CircuitDesign design)
    {
        List<string> lines = [.. Design.Cautions.General];
        if (design.SupplyRange is { } range && AtLimit(range) is { } limited)
        {
            lines.Insert(0, $"The source is at its current limit: the load gets {Accept.Text(limited.LoadVolts)} V at {Accept.Text(limited.Amperes)} A, not what it asks for.");
        }

        if (design.Verdict != Verdict.Pass)
        {
            lines.Insert(0, design.Verdict == Verdict.Fail
                ? "This circuit fails a check. Do not build it as it stands."
                : "Some checks could not be made from what was stated. They are open, not passed: settle them before building.");
        }

        return lines;
    }

    internal static IReadOnlyList<string> Advice(CircuitDesign design)
    {
        if (design.Verdict != Verdict.Fail)
        {
            return [];
        }

        List<string> lines = [.. design.Checks.Where(check => check.Outcome != CheckOutcome.Pass).Select(check => check.Outcome == CheckOutcome.Undetermined && IsOfFuse(check.Kind, design) ? FuseDataMissing : For(check.Kind, design)).Distinct()];

        // A design only fails without a wire: this is wiring that somebody chose, and the rules have a choice of their own.
        if (design.Wire is not null && CircuitDesigner.Design(design.Requirements, design.Rules) is { IsFeasible: true } own)
        {
            lines.Add($"For this duty the rules would take {own.Wire} with {own.Fuse}.");
        }
        else if (design.Wire is null && NoFuseFor(design) is { } needed)
        {
            lines.Add(needed);
        }

        return lines;
    }

    // Open, not failed: nothing says that the wire or the fuse is wrong.
    private const string FuseDataMissing = "What is open about the fuse: get its d.c. voltage, breaking capacity and operating times from its maker, or choose a fuse for which they are published.";

    private static bool IsOfFuse(CheckKind kind, CircuitDesign design) =>
        kind is CheckKind.FuseVoltage or CheckKind.InrushHeld or CheckKind.FaultOpensFuse or CheckKind.ShortCircuitTemperature or CheckKind.OverloadTemperature
        || (kind == CheckKind.BreakingCapacity && design.Fuse is { } fuse && (fuse.BreakingAmperes is null || fuse.BreakingCapacityBasis != RatingBasis.DirectCurrent));

    // Which of fuse and wire failed, and what size would help.
    private static string? NoFuseFor(CircuitDesign design)
    {
        if (CircuitDesigner.FuseSpan(design.Requirements, design.Rules) is not { } span)
        {
            return null;
        }

        double volts = design.Requirements.Source.Numbers.MaximumVolts;
        string needed = $"The load needs a fuse of {Accept.Short(span.Least)} A or more";
        return span.Next is not { } next ? $"{needed}, and the series has none for {Accept.Short(volts)} V."
            : next.Amperes > span.Most * (1 + 1e-9) ? $"{needed}, the largest wire of the series carries {Accept.Short(span.Most)} A where it runs: one that carries {Accept.Short(next.Amperes)} A would take the {next}."
            : null;
    }

    private static OperatingPoint? AtLimit(SupplyRange range) =>
        Array.Find([range.Minimum, range.Nominal, range.Maximum], point => point.Exists && point.CurrentLimitReached);

    private static string Return(ReturnPath back) => back.Kind switch
    {
        ReturnKind.SameConductor => $"return {Accept.Text(back.Meters)} m of the same wire",
        ReturnKind.Segments => $"return {Accept.Text(back.Segments.Sum(segment => segment.Meters))} m of given wire",
        ReturnKind.Chassis => $"return through a chassis of {Accept.Text(back.Ohms * 1000)} mΩ, whose own rating is not checked",
        ReturnKind.SharedResistance => $"return shared with {Accept.Text(back.OtherAmperes)} A of other loads, {Accept.Text(back.Ohms * 1000)} mΩ, whose own rating is not checked",
        _ => $"return shared with {Accept.Text(back.OtherAmperes)} A of other loads, {Accept.Text(back.Segments.Sum(segment => segment.Meters))} m of given wire",
    };

    // Where the largest wire of the series was tried there is no larger one to advise.
    private static string For(CheckKind kind, CircuitDesign design) =>
        kind is CheckKind.LoadVoltage or CheckKind.StartVoltage && design.Requirements.Load.MinimumVolts >= design.Requirements.Source.Numbers.MinimumVolts
            ? $"The source itself falls to {Accept.Short(design.Requirements.Source.Numbers.MinimumVolts)} V, no wire can help: another source, or a load that works on less."
        : kind == CheckKind.BreakingCapacity && design.Requirements.UpstreamOhms is not null
            ? "Choose a fuse that breaks more, or put a main fuse that does so at the source. No wire size changes this."
        : kind == CheckKind.FuseProtectsWire && design.Wire is not null
            ? "The fuse is too large for the wire: a smaller fuse where that still carries the load, or a larger wire, a cooler place, or fewer conductors together."
        : design.Wire is null ? For(kind).Replace("a larger wire", "two wires in parallel or another series") : For(kind);

    private static string For(CheckKind kind) => kind switch
    {
        CheckKind.PowerDelivery => "The load cannot get its power this way: a shorter run, a larger wire, a higher supply voltage, fewer or better joints, a source that gives more, or a smaller load.",
        CheckKind.MechanicalMinimum => "Use a larger size, or state why the mechanical minimum does not apply.",
        CheckKind.VoltageDrop => "Shorten the run, use a larger wire, better joints and a better supply lead, a higher supply voltage, or allow more drop.",
        CheckKind.LoadVoltage => "The load sees too little at the lowest supply voltage: a larger wire, a shorter run, better joints, or a load that works on less.",
        CheckKind.StartVoltage => "The load gets too little, or nothing, while it starts: a stronger source, a larger wire, a shorter run, or limit the starting current.",
        CheckKind.ContinuousCurrent => "The wire gets too hot where it runs, or its rating is not published there: a cooler place, fewer loaded conductors together, better insulation, or a larger wire.",
        CheckKind.ConductorTemperature => "The wire gets too hot: a cooler place, fewer loaded conductors together, or better insulation.",
        CheckKind.FuseCarriesLoad => "The fuse is too small for the load: a larger rating, another series, or two circuits.",
        CheckKind.FuseProtectsWire => "The fuse that carries the load is too large for the wire: a larger wire, a cooler place, fewer conductors together, or a finer series of fuses.",
        CheckKind.FuseVoltage => "Choose fuses rated for the highest voltage of the supply, not its nominal one: a pack of 16 lithium iron phosphate cells reaches 58.4 V on charge, more than a 58 V fuse.",
        CheckKind.BreakingCapacity => "Choose a fuse that breaks more, put a main fuse that does so at the source, or count the resistance of the supply lead.",
        CheckKind.InrushHeld => "The fuse may open at start: a slower type or a larger rating with a larger wire, or limit the starting current.",
        CheckKind.OverloadTemperature => "An overload that the fuse lets pass heats the wire too far: a smaller fuse, a larger wire, a cooler place, fewer conductors together, or better insulation.",
        CheckKind.FaultOpensFuse => "A short at the far end opens the fuse too late or not at all: a larger wire, a shorter run, or a smaller fuse.",
        CheckKind.ShortCircuitTemperature => "The wire overheats before the fuse opens: a larger wire, a faster fuse, or insulation with a higher short-circuit limit.",
        _ => "Move the fuse nearer to the source, or sheathe the conductor up to it.",
    };
}
