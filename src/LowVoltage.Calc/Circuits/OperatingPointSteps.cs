using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>Writes the steps of an operating point that exists, from the numbers that the solver found.</summary>
internal sealed class OperatingPointSteps(SolutionBuilder board, OperatingPoint point, Symbol open)
{
    private static readonly Reference Loop = OperatingPoint.LoopReference;

    private readonly PathSteps path = new(board);
    private readonly List<Formula> drops = [];
    private readonly List<(Symbol Ohms, Symbol Other)> shared = [];

    internal void Write()
    {
        Symbol? heating = Heating();
        foreach (PathElement element in point.Elements)
        {
            Element(element, heating);
        }

        Symbol wires = path.Sum("R_p", point.Elements.Sum(e => e.Ohms), "resistance of the path, out and back");
        Symbol all = wires;
        if (point.SourceOhms > 0)
        {
            Symbol inner = board.LookUp("internal resistance of the source", "R_s", point.SourceOhms, "Ω", point.Supply.Reference);
            all = board.Step("all the resistance before the load", "R", inner + wires, point.SourceOhms + wires.Value, "Ω", null, "The source drops voltage inside as well.");
        }

        Symbol driving = Driving();
        if (point.CurrentLimitReached)
        {
            Limited(wires);
            return;
        }

        (Symbol i, Symbol? u) = Settle(driving, all);
        Drop(i, wires);
        Symbol volts = board.Step(
            u is null ? "voltage at the load" : "voltage at the load once more, round the loop",
            "U",
            driving - (i * all),
            point.LoadVolts,
            "V",
            Loop,
            "Kirchhoff: what the source gives is dropped on the way or reaches the load.",
            RoundingDirection.Nearest);
        Minimum(volts);
    }

    // A self-heating conductor's temperature and current depend on each other: the solver has found the pair.
    private Symbol? Heating()
    {
        bool depends = point.State == LoadState.Running && point.Elements.Any(e => e.Segment is { } s && (s.Temperature ?? point.Warmth).DependsOnCurrent);
        return depends
            ? board.LookUp(
                "r.m.s. current that heats the conductors", "I_rms", point.HeatingAmperes, "A", null, "Found by repeating the steps below until current and temperature agree; shown are the last values.")
            : null;
    }

    private void Element(PathElement element, Symbol? heating)
    {
        string where = element.Kind is PathElementKind.FeedSegment ? "feed" : "return";
        Symbol ohms = element.Segment is { } segment
            ? path.Stretch(segment, element.Celsius!.Value, element.Ohms, where, Theta(segment, element, heating))
            : path.Stated(element.Name, element.Ohms);
        if (element.OtherAmperes > 0)
        {
            shared.Add((ohms, board.LookUp("current of the other circuits there", "I_o", element.OtherAmperes, "A", null, "As stated for the circuit.")));
        }
    }

    private Symbol? Theta(Segment segment, PathElement element, Symbol? heating)
    {
        ConductorTemperature own = segment.Temperature ?? point.Warmth;
        double celsius = element.Celsius!.Value;
        if (heating is null || !own.DependsOnCurrent || element.OtherAmperes > 0)
        {
            return null;
        }

        Symbol ambient = board.LookUp("ambient temperature", "θ_a", own.AmbientCelsius, "°C", null), rise = board.LookUp("rise at the rated current", "Δθ_r", own.RiseKelvins, "K", null);
        Symbol rated = board.LookUp("rated current of one conductor", "I_r", own.RatedAmperes, "A", null);
        Formula each = segment.Parallel == 1 ? heating / rated : heating / segment.Parallel / rated;
        return board.Step(
            $"temperature of {segment.Conductor.Name}", "θ", ambient + (rise * Formula.Square(each)), celsius, "°C", ConductorTemperature.Reference, "The rise goes with the square of the current; the rating fixes it.");
    }

    // What drives this circuit's current once the others' drop in a shared return is taken off.
    private Symbol Driving()
    {
        if (shared.Count == 0)
        {
            return open;
        }

        Formula others = Formula.Total([.. shared.Select(s => s.Ohms * s.Other)]);
        double lost = shared.Sum(s => s.Ohms.Value * s.Other.Value);
        return board.Step("voltage left by the other circuits", "V_e", open - others, open.Value - lost, "V", Loop, "Their current drops voltage in the shared return as well.");
    }

    private (Symbol Current, Symbol? Volts) Settle(Symbol v, Symbol r)
    {
        LoadLaw law = point.Fed.LawAt(point.State);
        double amperes = point.Amperes, volts = point.LoadVolts;
        if (!law.Exact)
        {
            return Tried(volts, amperes);
        }

        if (law.Watts == 0 && law.Siemens == 0)
        {
            return (board.LookUp("current of the load", "I", amperes, "A", null, "This load draws it at any voltage."), null);
        }

        if (law.Watts == 0 && law.Amperes == 0)
        {
            Symbol load = board.LookUp("resistance of the load", "R_L", 1 / law.Siemens, "Ω", null);
            return (board.Step("current", "I", v / (r + load), amperes, "A", OhmsLaw.Reference, "Ohm's law for the whole loop."), null);
        }

        return law.Siemens == 0 && law.Amperes == 0 ? ConstantPower(v, r, law) : Mixed(v, r, law);
    }

    private (Symbol Current, Symbol? Volts) ConstantPower(Symbol v, Symbol r, in LoadLaw law)
    {
        Symbol p = board.LookUp("power that the load draws", "P", law.Watts, "W", null, "Its current rises when its voltage falls.");
        Symbol u = board.Step(
            "voltage at the load",
            "U",
            (v + Formula.SquareRoot(Formula.Square(v) - (4 * r * p))) / 2,
            point.LoadVolts,
            "V",
            Loop,
            "U = V − R·P/U is a quadratic in U. Its higher root is the stable one; the load could not run if the root were of a negative number.");
        return (board.Step("current", "I", p / u, point.Amperes, "A", OhmsLaw.Reference), u);
    }

    private (Symbol Current, Symbol? Volts) Mixed(Symbol v, Symbol r, in LoadLaw law)
    {
        Symbol g = board.LookUp("conductance of the resistances among the loads", "G", law.Siemens, "S", null);
        Symbol j = board.LookUp("constant current among the loads", "J", law.Amperes, "A", null), p = board.LookUp("constant power among the loads", "P", law.Watts, "W", null);
        Formula one = 1 + (r * g), left = v - (r * j);
        Symbol u = board.Step(
            "voltage at the load",
            "U",
            (left + Formula.SquareRoot(Formula.Square(left) - (4 * one * r * p))) / (2 * one),
            point.LoadVolts,
            "V",
            Loop,
            "V − U = R·(G·U + J + P/U) solved for U, the higher root.");
        return (board.Step("current", "I", (g * u) + j + (p / u), point.Amperes, "A", OhmsLaw.Reference, "Each load draws its own current at that voltage."), u);
    }

    // No formula gives the voltage of a lamp: it is tried until both sides agree.
    private (Symbol Current, Symbol? Volts) Tried(double volts, double amperes)
    {
        Symbol u = board.LookUp("voltage at the load", "U", volts, "V", null, "Tried until the load's current at U drops just V − U on the way; the steps below check it.");
        if (point.Fed is not LampLoad lamp)
        {
            return (board.LookUp("current of the loads at that voltage", "I", amperes, "A", null), u);
        }

        Symbol i0 = board.LookUp("current of the lamp at its rated voltage", "I_0", lamp.RatedCurrent.Amperes, "A", null);
        Symbol u0 = board.LookUp("rated voltage of the lamp", "U_0", lamp.RatedVoltage.Volts, "V", null);
        return (board.Step(
            "current", "I", i0 * Formula.Power(u / u0, LampLoad.Exponent), amperes, "A", LampLoad.CurrentReference, "A filament resists more when it is hotter, so the current changes less than the voltage."), u);
    }

    private void Limited(Symbol wires)
    {
        Symbol i = board.LookUp("current limit of the source", "I", point.Amperes, "A", point.Supply.Reference, "The load asks for more than the source gives; the source holds its limit and lets the voltage fall.");
        LoadLaw law = point.Fed.LawAt(point.State);
        Drop(i, wires);
        Symbol u;
        if (law.Exact && law.Watts == 0 && law.Amperes == 0)
        {
            Symbol load = board.LookUp("resistance of the load", "R_L", 1 / law.Siemens, "Ω", null);
            u = board.Step("voltage at the load", "U", i * load, point.LoadVolts, "V", OhmsLaw.Reference);
        }
        else
        {
            u = board.LookUp("voltage at the load", "U", point.LoadVolts, "V", null, "Where the load draws just that current.");
        }

        Minimum(u);
    }

    private void Drop(Symbol i, Symbol wires)
    {
        drops.Add(i * wires);
        drops.AddRange(shared.Select(s => s.Ohms * s.Other));
        Symbol drop = board.Step("drop of the path", "ΔV", Formula.Total(drops), point.DropVolts, "V", VoltageDrop.Reference, "Ohm's law for the way out and back.");
        Symbol nominal = board.LookUp("nominal voltage", "V_n", point.NominalVolts, "V", null);
        board.Step("drop as a share of the nominal voltage", "p", Formula.FromNumber(100, "%") * drop / nominal, 100 * (point.DropVolts / point.NominalVolts), "%", null);
    }

    private void Minimum(Symbol volts)
    {
        if (point.MinimumVolts is { } least)
        {
            Symbol limit = new("U_min", least, "V", "least voltage at which the load works");
            board.Compare("does the load get its least voltage", volts, Relation.AtLeast, limit, null, "A load is judged by the volts it gets, whatever the per cent.", !point.BelowMinimum);
        }
    }
}
