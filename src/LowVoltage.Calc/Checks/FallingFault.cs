using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <summary>The working of a fault at the far end whose current falls as the conductors heat: what flows at first, what flows when the fuse has opened for sure, and how long that took.</summary>
internal static class FallingFault
{
    private static readonly Reference Adiabatic = AdiabaticHeating.Reference;

    /// <summary>Writes the steps; the time comes back.</summary>
    internal static Symbol Write(Sheet sheet, FarEndFault fault, TimeCurrentCurve curve, Symbol volts, Symbol first, PathSteps steps)
    {
        SolutionBuilder board = sheet.Board;
        Reference source = sheet.At.Fuse!.Series.Reference;
        Symbol joules = board.LookUp(
            "Joule integral that has passed when the fuse has opened for sure", "J_e", fault.Joules, "A²·s", Adiabatic,
            curve.IsBreaker ? "By iteration: then the time below is what the device needs at the current that flows by then." : "By iteration: it is what the fuse needs at a constant current as small as the one that flows by then; the steps below check it.");
        Formula ohms = Ends(sheet, joules, steps, first, volts);
        Symbol last = board.Step(
            "short-circuit current by then", "I_e", volts / ohms, fault.LastAmperes, "A", Adiabatic, "The wire heats during the fault and its resistance rises: the current falls.");
        Symbol time = curve.WriteLongest(board, last, source, "t_e", "e");
        if (!curve.IsBreaker)
        {
            board.Step(
                "Joule integral that the fuse needs at that current", "J_n", Formula.Square(last) * time, last.Value * last.Value * time.Value, "A²·s", Adiabatic,
                $"The same as {joules.Name}: more current before that only opens it sooner.");
        }

        double least = fault.Joules / (first.Value * first.Value), most = fault.Joules / (last.Value * last.Value);
        return board.LookUp(
            "time by then", "t_c", fault.Seconds, "s", Adiabatic,
            $"t = ∫ dJ/I² from 0 to {joules.Name}, with the current at every J as above. It lies between {joules.Name}/{first.Name}² = {Accept.Short(least)} s and {joules.Name}/{last.Name}² = {Accept.Short(most)} s.");
    }

    /// <summary>The same where others' current flows in a stretch, or supplies in series give up their voltage: a bound by quadrature, stated with what it rests on.</summary>
    internal static Symbol WriteInWords(Sheet sheet, FarEndFault fault, TimeCurrentCurve curve)
    {
        SolutionBuilder board = sheet.Board;
        Symbol joules = board.LookUp("Joule integral that has passed when the fuse has opened for sure", "J_e", fault.Joules, "A²·s", Adiabatic, "By iteration.");
        Symbol last = board.LookUp(
            "short-circuit current by then", "I_e", fault.LastAmperes, "A", Adiabatic,
            sheet.At.Source.Beyond is null ? "V less Iₒ·R of the shared stretches, over all resistance, each conductor as warm as the Joule integral makes it; a shared one is heated by (I + Iₒ)², counted as I²·(1 + Iₒ/I)² with the least I that still opens the fuse."
            : "As at first by the voltage that drives it then, over all resistance, each conductor as warm as the Joule integral makes it.");
        _ = curve.WriteLongest(board, last, sheet.At.Fuse!.Series.Reference, "t_e", "e");
        return board.LookUp("time by then", "t_c", fault.Seconds, "s", Adiabatic, $"t = ∫ dJ/I² from 0 to {joules.Name}, with the current at every J as above.");
    }

    // Source, joints and conductors at the end, by how far each conductor has warmed up.
    private static Formula Ends(Sheet sheet, Symbol joules, PathSteps steps, Symbol first, Symbol volts)
    {
        List<Formula> parts = [];
        CircuitPath path = sheet.Path;
        Symbol inner = sheet.Source.Ohms(SupplyLevel.Minimum);
        int feed = path.FeedArray.Length, back = feed + path.FeedJoints.Count;
        List<Formula> wires = [];
        for (int i = 0; i < steps.Parts.Count; i++)
        {
            Segment? segment = i < feed ? path.FeedArray[i] : i >= back && i < back + path.BackArray.Length ? path.BackArray[i - back] : null;
            parts.Add(segment is null ? steps.Parts[i] : Warmed(sheet, segment, i + 1, steps.Parts[i], joules));
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
        if (first.Value < free * (1 - BranchState.Rounding))
        {
            // The source holds its limit: it counts as one of more resistance, which gives less.
            Symbol rest = sheet.Board.Step(
                "resistance that stands for the source at its limit", "R_x", (volts / first) - Formula.Total(wires), (volts.Value / first.Value) - wires.Sum(w => w.Evaluate()), "Ω", null,
                "It gives the same current at first, and less later.");
            parts.RemoveAll(part => part is Symbol || !Grows(part));
            parts.Insert(0, rest);
        }

        return Formula.Total(parts);
    }

    private static bool Grows(Formula part) => part.Kind == FormulaKind.Exponential || part.Operands.Any(Grows);

    private static Formula Warmed(Sheet sheet, Segment segment, int place, Formula hot, Symbol joules)
    {
        SolutionBuilder board = sheet.Board;
        Conductor conductor = segment.Conductor;
        ConductorMaterial metal = conductor.Material;
        string mark = sheet.Marks.Of(conductor);
        Symbol capacity = AdiabaticHeating.Capacity(board, metal), s = sheet.EffectiveSection(conductor);
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
}
