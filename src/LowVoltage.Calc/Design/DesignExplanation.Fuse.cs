using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Design;

/// <content>The fuse and the short circuit.</content>
internal sealed partial class DesignExplanation
{
    private FusePractice Practice => design.Rules.FusePractice;

    private void Fuse(FuseRating fuse, SupplyRange range, Symbol? rated)
    {
        if (range.MostCurrent is { } most)
        {
            Symbol load = board.LookUp("largest current of the load", "I_b", most.Amperes, "A", null, "The largest of the three operating points.");
            Symbol share = board.LookUp("share of its rating that a fuse may carry for good", "k", Practice.Loading, "", Practice.LoadingReference);
            board.Step("least rating of the fuse", "I_min", load / share, load.Value / Practice.Loading, "A", Practice.LoadingReference, "", RoundingDirection.Up);
        }

        if (rated is not null && Practice.ShareOfAmpacity != 1)
        {
            Symbol share = board.LookUp("largest fuse as a share of the wire's current", "k_z", Practice.ShareOfAmpacity, "", Practice.ShareReference);
            board.Step("most that the wire allows", "I_w", rated * share, rated.Value * Practice.ShareOfAmpacity, "A", Practice.ShareReference, "", RoundingDirection.Down);
        }

        board.LookUp("rating chosen", "I_n", fuse.Amperes, "A", fuse.Series.Reference, $"{fuse}: the smallest of the series that passes every check with this wire, or the one that was verified.");
        Checks(CheckKind.FuseCarriesLoad, CheckKind.FuseProtectsWire, CheckKind.FuseVoltage, CheckKind.InrushHeld, CheckKind.FuseDistance);
    }

    private void Short(FuseRating fuse, CircuitPath path)
    {
        SourceNumbers source = asked.Source.Numbers;
        double upstream = asked.UpstreamOhms ?? 0, atFuse = ProspectiveCurrent.GreatestAt(source, upstream);
        if (!double.IsInfinity(atFuse))
        {
            Symbol volts = board.LookUp("greatest voltage of the source", "V_max", source.MaximumVolts, "V", asked.Source.Reference);
            Symbol inner = board.LookUp("least resistance inside the source", "R_s", source.LeastOhms, "Ω", asked.Source.Reference, "New and warm.");
            Symbol lead = board.LookUp("supply lead to the fuse, out and back", "R_u", upstream, "Ω", null, asked.UpstreamOhms is null ? "Not stated, counted as nothing: on the safe side here." : "As stated.");
            Current("greatest short-circuit current at the fuse", "I_k", volts, inner, lead, atFuse, RoundingDirection.Up);
        }

        Checks(CheckKind.BreakingCapacity);
        FarEnd(fuse, path, atFuse);
        Checks(CheckKind.FaultOpensFuse, CheckKind.ShortCircuitTemperature, CheckKind.OverloadTemperature);
    }

    private void FarEnd(FuseRating fuse, CircuitPath path, double atFuse)
    {
        SourceNumbers source = asked.Source.Numbers;
        double hot = asked.Insulation.ContinuousCelsius;
        CircuitEvaluator evaluator = Evaluator();
        double driving = evaluator.Weakest.MinimumVolts;
        Symbol volts = board.LookUp(
            "least voltage of the source", "V_min", driving, "V", asked.Source.Reference, driving < source.MinimumVolts ? "What the other circuits drop in the shared return is taken off." : "Empty or cold.");
        Symbol inner = board.LookUp("greatest resistance inside the source", "R_s", source.GreatestOhms, "Ω", asked.Source.Reference, "Aged and cold.");
        PathSteps steps = new(board);
        steps.All(path, hot);
        Symbol wires = steps.Sum("R_p", path.OhmsAt(hot), "resistance of the path, as warm as the insulation allows");
        double farEnd = ProspectiveCurrent.LeastAt(evaluator.Weakest, wires.Value);
        if (double.IsInfinity(farEnd) || farEnd <= 0)
        {
            board.State("least short-circuit current at the far end", "Nothing bounds it, or nothing is left to drive it.");
            return;
        }

        Current("least short-circuit current at the far end", "I_f", volts, inner, wires, farEnd, RoundingDirection.Down);
        board.Include(fuse.ExplainOperatingTime(ElectricCurrent.FromAmperes(farEnd)), onlyNew: true);
        if (fuse.Curve is not { } curve || !evaluator.TryClear(curve, out double fallen))
        {
            return;
        }

        if (fallen < farEnd)
        {
            board.LookUp(
                "current by the moment the fuse has opened for sure", "I_o", fallen, "A", AdiabaticHeating.Reference,
                "The wire heats during the fault and its resistance rises: the current falls, and the fuse takes a little longer than at a constant current.");
        }

        if (design.Check(CheckKind.ShortCircuitTemperature) is { Outcome: not CheckOutcome.Open } check)
        {
            Heat(check, path, curve, fallen, atFuse);
        }
    }

    private CircuitEvaluator Evaluator()
    {
        if (design.Existing is { } path)
        {
            return new CircuitEvaluator(asked, design.Rules, design.At, path);
        }

        CircuitEvaluator evaluator = new(asked, design.Rules, design.At);
        evaluator.Try(design.Wire!);
        return evaluator;
    }

    private void Current(string sought, string name, Symbol volts, Symbol inner, Symbol outer, double amperes, RoundingDirection rounding)
    {
        SourceNumbers source = asked.Source.Numbers;
        Formula free = volts / (inner + outer);
        if (double.IsInfinity(source.HeldAmperes))
        {
            board.Step(sought, name, free, amperes, "A", OhmsLaw.Reference, "Nothing but these resistances bounds it.", rounding);
        }
        else if (inner.Value + outer.Value > 0)
        {
            Symbol limit = board.LookUp("current limit that the source holds", "I_lim", source.LimitAmperes, "A", asked.Source.Reference);
            board.Step(sought, name, Formula.Least(free, limit), amperes, "A", OhmsLaw.Reference, "The smaller of the two.", rounding);
        }
        else
        {
            board.LookUp(sought, name, amperes, "A", asked.Source.Reference, "The source holds its limit.");
        }
    }

    // The stretch that the check is about is the one whose temperature it shows.
    private void Heat(in DesignCheck check, CircuitPath path, TimeCurrentCurve curve, double least, double greatest)
    {
        double joules = curve.GreatestLongestJouleIntegral(least, Math.Min(greatest, Accept.MostAmperes), out double worst);
        bool standIn = !asked.Insulation.HasShortCircuitRoom;
        double start = standIn && design.Check(CheckKind.ConductorTemperature) is { Outcome: not CheckOutcome.Open } service ? service.Value : asked.Insulation.ContinuousCelsius;
        double shown = check.Value;
        Segment? found = Array.Find([.. path.FeedArray, .. path.BackArray], segment => Math.Abs(After(segment, joules, start) - shown) <= 1e-9 * Math.Abs(shown));
        if (found is null)
        {
            return;
        }

        Symbol energy = board.LookUp(
            $"greatest Joule integral that the fuse lets through, at {Accept.Short(worst)} A", "I²t", joules, "A²·s", null, "From its longest times, at every current between the far end's and the one at the fuse.");
        Symbol from = board.LookUp("temperature at the start", "θ_i", start, "°C", asked.Insulation.Reference, standIn ? "As hot as the load makes it." : "As hot as the insulation allows for good.");
        Symbol s = board.LookUp($"effective section of {found.Conductor.Name}", "S", found.Conductor.EffectiveAreaSquareMillimeters * found.Parallel, "mm²", found.Conductor.Reference, "That of a solid bar of its resistance.");
        AdiabaticHeating.WriteFinal(board, found.Conductor.Material, s, energy, from, After(found, joules, start));
    }

    private static double After(Segment segment, double joules, double start)
    {
        ConductorMaterial metal = segment.Conductor.Material;
        double final = AdiabaticKernel.FinalCelsius(
            AdiabaticKernel.ConstantSquared(metal), segment.Conductor.EffectiveAreaSquareMillimeters * segment.Parallel, joules, start, -metal.InferredZeroCelsius);
        return Math.Min(final, metal.MeltingPointCelsius);
    }
}
