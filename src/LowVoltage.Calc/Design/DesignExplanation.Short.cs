using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <content>Short circuits: what the fuse must break, and what the wire is at when it has.</content>
internal sealed partial class DesignExplanation
{
    private double AtFuse(FuseRating chosen)
    {
        SourceNumbers numbers = asked.Source.Numbers;
        double upstream = asked.UpstreamOhms ?? 0, amperes = ProspectiveCurrent.GreatestAt(numbers, upstream);
        if (double.IsInfinity(amperes) || (!Has(CheckKind.BreakingCapacity) && !Has(CheckKind.OverloadTemperature)))
        {
            Checks(CheckKind.BreakingCapacity);
            return amperes;
        }

        Symbol lead = board.LookUp("supply lead to the fuse, out and back", "R_u", upstream, "Ω", null, asked.UpstreamOhms is null ? "Not stated, counted as nothing: on the safe side here." : "As stated.");
        Value(CheckKind.BreakingCapacity, Current("greatest short-circuit current at the fuse", "I_k", source.Volts(SupplyLevel.Maximum), source.Ohms(SupplyLevel.Maximum), lead, amperes, source.Strongest));
        if (chosen.BreakingAmperes is { } capacity)
        {
            Limit(CheckKind.BreakingCapacity, board.LookUp("breaking capacity of the fuse", "I_c", capacity, "A", chosen.Series.BreakingCapacityReference));
        }

        Checks(CheckKind.BreakingCapacity);
        return amperes;
    }

    private void FarEnd(FuseRating chosen, double atFuse)
    {
        if (!Has(CheckKind.FaultOpensFuse))
        {
            return;
        }

        SourceNumbers numbers = asked.Source.Numbers;
        double driving = evaluator.Weakest.MinimumVolts;
        Symbol volts = driving < numbers.MinimumVolts
            ? board.LookUp("voltage that is left for the fault", "V_left", driving, "V", null, "The other circuits keep feeding their current into the shared return: what they drop there is taken off.")
            : source.Volts(SupplyLevel.Minimum);
        PathSteps steps = new(board, marks);
        steps.All(path, continuous.Value, continuous, "hot");
        Symbol wires = steps.Sum("R_phot", path.OhmsAt(continuous.Value), "resistance of the path, as hot as the insulation allows");
        double farEnd = ProspectiveCurrent.LeastAt(evaluator.Weakest, wires.Value);
        if (double.IsInfinity(farEnd) || farEnd <= 0)
        {
            board.State("least short-circuit current at the far end", "Nothing bounds it, or nothing is left to drive it.");
            return;
        }

        Symbol first = Current("least short-circuit current at the far end", "I_f", volts, source.Ohms(SupplyLevel.Minimum), wires, farEnd, $"{source.Weakest} The path is as hot as its insulation allows.");
        if (design.Check(CheckKind.FaultOpensFuse) is not { Outcome: not CheckOutcome.Undetermined } check || chosen.Curve is not { } curve || atFuse <= evaluator.WeakestAmperes())
        {
            return;
        }

        Limit(check.Kind, board.LookUp("longest that a fault may last", "t_lim", Practice.FaultSeconds, "s", Practice.FaultReference));
        CircuitEvaluator.Clearing clearing = evaluator.ClearAtFarEnd(curve);
        Symbol last = first;
        if (clearing.Never != NoteKind.Plain)
        {
            board.Compare("must the fuse open", first, Relation.AtLeast, curve.Fusing(board, chosen.Series.Reference), chosen.Series.Reference, SolutionText.Sentence(check.Note) + ".", farEnd >= curve.FusingAmperes);
            return;
        }

        if (clearing.Joules > 0)
        {
            last = Falling(chosen, curve, clearing, volts, first, steps);
        }
        else
        {
            Value(check.Kind, curve.WriteLongest(board, first, chosen.Series.Reference, "t_c", "f"));
        }

        Checks(CheckKind.FaultOpensFuse);
        if (design.Check(CheckKind.ShortCircuitTemperature) is { Outcome: not CheckOutcome.Undetermined } hot)
        {
            Heat(hot, curve, clearing.Amperes, atFuse);
        }
    }

    private Symbol Current(string sought, string name, Symbol volts, Symbol inner, Symbol outer, double amperes, string why)
    {
        SourceNumbers numbers = asked.Source.Numbers;
        Formula free = volts / (inner.Value > 0 ? inner + outer : outer);
        return double.IsInfinity(numbers.HeldAmperes)
            ? board.Step(sought, name, free, amperes, "A", OhmsLaw.Reference, why)
            : inner.Value + outer.Value > 0
            ? board.Step(sought, name, Formula.Least(free, source.Limit), amperes, "A", OhmsLaw.Reference, "The source holds its limit: the smaller of the two.")
            : board.LookUp(sought, name, amperes, "A", asked.Source.Reference, "The source holds its limit.");
    }

    // The stretch that the check is about is the one whose temperature it shows.
    private void Heat(in CheckResult check, TimeCurrentCurve curve, double least, double greatest)
    {
        double joules = curve.GreatestLongestJouleIntegral(least, Math.Min(greatest, Accept.MostAmperes), out double worst);
        double begin = evaluator.StartCelsius, shown = check.Value, bound = check.Limit;
        List<ChainLink> stretches = [.. evaluator.Stretches.Select(s => s.Link)];
        int place = stretches.FindIndex(link => Math.Abs(After(link, joules, begin) - shown) <= 1e-9 * Math.Abs(shown) && asked.Insulation.ShortCircuitCelsiusFor(link.Conductor.AreaSquareMillimeters).Equals(bound));
        if (place < 0)
        {
            return;
        }

        ChainLink found = stretches[place];
        Tightest(place, "stretch that a short circuit is hardest on");
        Symbol energy = board.LookUp(
            $"greatest Joule integral that the fuse lets through, at {Accept.Short(worst)} A", "I²t", joules, "A²·s", null, "From its longest times, at every current between the far end's and the one at the fuse.");
        Symbol from = StartOf();
        Symbol one = EffectiveSection(found.Conductor);
        Symbol s = found.Parallel == 1 ? one : board.Step("effective section of all of them", "S_n", (double)found.Parallel * one, one.Value * found.Parallel, "mm²", null);
        Value(check.Kind, AdiabaticHeating.WriteFinal(board, found.Conductor.Material, s, energy, from, After(found, joules, begin)));
        Limit(check.Kind, board.LookUp("limit of the insulation in a short circuit", "θ_sc", check.Limit, "°C", asked.Insulation.Reference, "For at most 5 s."));
    }

    // How hot an overload or a fault finds the wire.
    private Symbol StartOf() => evaluator.StartCelsius.Equals(continuous.Value)
        ? continuous
        : board.LookUp("conductor temperature at the start", "θ_i", evaluator.StartCelsius, "°C", null, StartWords);

    private const string StartWords = "As hot as the load makes the hottest conductor: the insulation has no limit for short circuits above its continuous one.";

    private static double After(in ChainLink link, double joules, double start)
    {
        ConductorMaterial metal = link.Conductor.Material;
        double final = AdiabaticKernel.FinalCelsius(
            AdiabaticKernel.ConstantSquared(metal), link.Conductor.EffectiveAreaSquareMillimeters * link.Parallel, joules, start, -metal.InferredZeroCelsius);
        return Math.Min(final, metal.MeltingPointCelsius);
    }
}
