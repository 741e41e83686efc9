using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <content>The fault at the far end whose current falls as the conductors heat, and the overload.</content>
internal sealed partial class DesignExplanation
{
    private static readonly Reference Adiabatic = AdiabaticHeating.Reference;

    // What flows at first, what flows when the fuse has opened for sure, and how long that took.
    private Symbol Falling(FuseRating chosen, TimeCurrentCurve curve, in CircuitEvaluator.Clearing clearing, Symbol volts, Symbol first, PathSteps steps)
    {
        Symbol joules = board.LookUp(
            "Joule integral that has passed when the fuse has opened for sure", "J_e", clearing.Joules, "A²·s", Adiabatic,
            curve.IsBreaker ? "By iteration: then the time below is what the device needs at the current that flows by then." : "By iteration: it is what the fuse needs at a constant current as small as the one that flows by then; the steps below check it.");
        Formula ohms = Ends(joules, steps, first, volts);
        Symbol last = board.Step(
            "short-circuit current by then", "I_e", volts / ohms, clearing.Amperes, "A", Adiabatic, "The wire heats during the fault and its resistance rises: the current falls.");
        Symbol time = curve.WriteLongest(board, last, chosen.Series.Reference, "t_e", "e");
        if (!curve.IsBreaker)
        {
            board.Step("Joule integral that the fuse needs at that current", "J_n", Formula.Square(last) * time, last.Value * last.Value * time.Value, "A²·s", Adiabatic, $"The same as {joules.Name}: more current before that only opens it sooner.");
        }

        double least = clearing.Joules / (first.Value * first.Value), most = clearing.Joules / (last.Value * last.Value);
        Value(CheckKind.FaultOpensFuse, board.LookUp(
            "time by then", "t_c", clearing.Seconds, "s", Adiabatic,
            $"t = ∫ dJ/I² from 0 to {joules.Name}, with the current at every J as above. It lies between {joules.Name}/{first.Name}² = {Accept.Short(least)} s and {joules.Name}/{last.Name}² = {Accept.Short(most)} s."));
        return last;
    }

    // Source, joints and conductors at the end, by how far each conductor has warmed up.
    private Formula Ends(Symbol joules, PathSteps steps, Symbol first, Symbol volts)
    {
        List<Formula> parts = [];
        Symbol inner = source.Ohms(SupplyLevel.Minimum);
        int feed = path.FeedArray.Length, back = feed + path.FeedJoints.Count;
        List<Formula> wires = [];
        for (int i = 0; i < steps.Parts.Count; i++)
        {
            Segment? segment = i < feed ? path.FeedArray[i] : i >= back && i < back + path.BackArray.Length && !path.Return.IsShared ? path.BackArray[i - back] : null;
            parts.Add(segment is null ? steps.Parts[i] : Warmed(segment, i + 1, steps.Parts[i], joules));
            if (segment is not null)
            {
                wires.Add(steps.Parts[i]);
            }
        }

        if (inner.Value > 0)
        {
            parts.Insert(0, inner);
        }

        double free = volts.Value / (inner.Value + steps.Parts.Sum(part => part.Evaluate()));
        if (first.Value < free * (1 - 1e-9))
        {
            // The source holds its limit: it counts as one of more resistance, which gives less.
            Symbol rest = board.Step(
                "resistance that stands for the source at its limit", "R_x", (volts / first) - Formula.Total(wires), (volts.Value / first.Value) - wires.Sum(w => w.Evaluate()), "Ω", null, "It gives the same current at first, and less later.");
            parts.RemoveAll(part => part is Symbol || !Grows(part));
            parts.Insert(0, rest);
        }

        return Formula.Total(parts);
    }

    private Symbol EffectiveSection(Conductor conductor)
    {
        string mark = marks.Of(conductor);
        return board.LookUp($"effective section of {conductor.Name}", mark.Length == 0 ? "S" : "S_" + mark, conductor.EffectiveAreaSquareMillimeters, "mm²", conductor.Reference, "That of a solid bar of its resistance.");
    }

    private static bool Grows(Formula part) => part.Kind == FormulaKind.Exponential || part.Operands.Any(Grows);

    private Formula Warmed(Segment segment, int place, Formula hot, Symbol joules)
    {
        Conductor conductor = segment.Conductor;
        ConductorMaterial metal = conductor.Material;
        string mark = marks.Of(conductor);
        Symbol capacity = AdiabaticHeating.Capacity(board, metal), s = EffectiveSection(conductor);
        Symbol alpha = board.Find("α_20," + mark) ?? board.Find("α_20")!, cold = board.Find("R′_20" + (mark.Length == 0 ? "" : "," + mark))!;
        double n = segment.Parallel;
        Formula heat = capacity * s * Formula.FromNumber(1e-6, "m²/mm²");
        Symbol x = board.Step(
            $"exponent by which the resistance of {conductor.Name} grows",
            segment.Parallel == 1 ? "x_e" + mark : "x_n" + place,
            alpha * cold * joules / (segment.Parallel == 1 ? heat : heat * Formula.Square(n)),
            metal.TemperatureCoefficient * conductor.OhmsPerMeter20 * joules.Value / (metal.HeatCapacityJoulesPerCubicMeterKelvin * conductor.EffectiveAreaSquareMillimeters * 1e-6 * n * n),
            "",
            Adiabatic,
            "In so short a time the heat stays in the metal: dθ = R′·dJ/(σ·S), and dR′ = α·R′₂₀·dθ.");
        return hot * Formula.Exponential(x);
    }

    private void Overload(FuseRating chosen, double atFuse)
    {
        if (design.Check(CheckKind.OverloadTemperature) is not { Outcome: not CheckOutcome.Undetermined } check || Practice.Overload is not { } allowance || chosen.Curve is not { } curve)
        {
            return;
        }

        CircuitEvaluator.OverloadFinding finding = evaluator.FindOverload(chosen, curve, allowance, atFuse);
        (ChainLink link, double other) = evaluator.Stretches.ElementAt(finding.Stretch);
        Tightest(finding.Stretch, "stretch that an overload is hardest on");
        OverloadSteps steps = new(board, new OverloadLetters
        {
            Wire = design.At.WireOf(link.Conductor),
            Allowance = allowance,
            Ambient = ambient,
            Continuous = continuous,
            Rated = Left(link, other, finding.Stretch),
            RatedCelsius = ratings[link.Conductor].Celsius,
            Parallel = link.Parallel,
            Mark = marks.Of(link.Conductor),
            StartsHot = evaluator.StartCelsius.Equals(continuous.Value),
            StartWords = StartWords,
        }, curve, chosen.Series.Reference);
        steps.Write(finding.Limits, finding.Point);
        Symbol? shown = new[] { steps.Settled, steps.Reached }.FirstOrDefault(s => s is not null && Math.Abs(s.Value - check.Value) <= 1e-9 * Math.Abs(check.Value)) ?? board.Find("θ_m");
        if (shown is not null)
        {
            Value(check.Kind, shown);
        }

        Limit(check.Kind, steps.ReachedLimit is { } most && Math.Abs(most.Value - check.Limit) <= 1e-9 * check.Limit ? most : steps.SettledLimit);
    }
}
