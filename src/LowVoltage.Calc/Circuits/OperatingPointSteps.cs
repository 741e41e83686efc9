using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>Writes the steps of an operating point that exists, from the numbers that the solver found.</summary>
/// <remarks>Where a solution has several points, whatever is the point's own carries its mark: I_lo, U_lo … What is equal at two points stands once.</remarks>
internal sealed partial class OperatingPointSteps(SolutionBuilder board, OperatingPoint point, PointLetters letters)
{
    private static readonly Reference Loop = OperatingPoint.LoopReference;

    private readonly PathSteps path = new(board, letters.Conductors);
    private readonly List<Formula> drops = [];
    private readonly List<(Symbol Ohms, Symbol Other)> shared = [];

    /// <summary>The current while the load is on.</summary>
    internal Symbol Current { get; private set; } = null!;

    /// <summary>The r.m.s. current; null where nothing depends on it.</summary>
    internal Symbol? Heating { get; private set; }

    internal Symbol PathOhms { get; private set; } = null!;

    internal Symbol Drop { get; private set; } = null!;

    internal Symbol LoadVolts { get; private set; } = null!;

    private string Level => letters.Mark.Length == 0 ? "" : $" at the {point.LevelText} supply voltage";

    internal void Write()
    {
        // A self-heating conductor's temperature and the current depend on each other, and no formula gives the voltage of a lamp: the solver has found the numbers that agree.
        bool warms = point.State == LoadState.Running && point.Elements.Any(e => e.Segment is { } s && (s.Temperature ?? point.Warmth).DependsOnCurrent);
        Symbol? known = Known(), u = null;
        if (known is null && (warms || !point.Fed.LawAt(point.State).Exact))
        {
            (known, u) = Tried();
        }

        Heating = warms ? Rms(known!) : null;
        foreach (PathElement element in point.Elements)
        {
            Element(element);
        }

        PathOhms = Sum();
        Formula all = PathOhms;
        if (point.SourceOhms > 0)
        {
            all = Own(letters.Inner ?? board.LookUp("internal resistance of the source", "R_s", point.SourceOhms, "Ω", point.Supply.Reference)) + PathOhms;
        }

        Symbol driving = Driving();
        if (known is null)
        {
            (known, u) = Settle(driving, all);
        }

        Current = known;
        Dropped();
        if (point.CurrentLimitReached)
        {
            Limited();
        }
        else
        {
            LoadVolts = Step(
                u is null ? "voltage at the load" : "voltage at the load once more, round the loop",
                "U",
                driving - (Current * all),
                point.LoadVolts,
                "V",
                Loop,
                "Kirchhoff: what the source gives is dropped on the way or reaches the load.");
        }

        Minimum();
    }

    private Symbol Rms(Symbol current)
    {
        if (point.HeatingAmperes.Equals(point.Amperes))
        {
            return current;
        }

        if (!point.CurrentLimitReached && letters.Load.PulsedMotor() is { } square && Math.Abs(Math.Sqrt(square.Evaluate()) - point.HeatingAmperes) <= 1e-9 * point.HeatingAmperes)
        {
            return Step(
                "current that heats the conductors as much", "I_rms", Formula.SquareRoot(square), point.HeatingAmperes, "A", null,
                "The running current at the end of the time on, and the rest of the starting current by its share of the time: a start passes.");
        }

        return LoadSymbols.Only(letters.Load.HeatShares()) is { } share && Math.Abs((current.Value * Math.Sqrt(share.Value)) - point.HeatingAmperes) <= 1e-12 * current.Value
            ? Step(
                "r.m.s. current that heats the conductors", "I_rms", current * Formula.SquareRoot(share), point.HeatingAmperes, "A", null,
                "Heat goes with the square of the current: over many short pulses the mean of the squares counts, over longer ones the end of a pulse.")
            : Own(board.LookUp(
                "r.m.s. current that heats the conductors" + Level, SymbolName.With("I_rms", letters.Mark), point.HeatingAmperes, "A", null,
                letters.Load.Thinned()));
    }

    private void Element(PathElement element)
    {
        string where = element.Kind is PathElementKind.FeedSegment ? "feed" : "return";
        Symbol? ohms = null;
        if (element.Segment is { } segment)
        {
            Symbol? theta = Theta(segment, element);
            string mark = theta is null ? "" : MarkOf(theta);
            Formula own = path.Stretch(segment, element.Celsius!.Value, where, theta, mark);
            foreach (Symbol symbol in Symbols(own).Where(symbol => mark.Length > 0 && symbol.Spec.StartsWith("R′", StringComparison.Ordinal)))
            {
                letters.Marks[symbol] = mark;
            }

            if (element.OtherAmperes > 0)
            {
                ohms = board.Step("resistance of the shared return", "R_sh" + (shared.Count == 0 ? "" : (shared.Count + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)), own, element.Ohms, "Ω", null);
            }
        }
        else
        {
            ohms = path.Stated(element.Name, element.Ohms);
        }

        if (element.OtherAmperes > 0)
        {
            shared.Add((ohms!, board.LookUp("current of the other circuits in the shared return", "I_o", element.OtherAmperes, "A", null, "As stated for the circuit.")));
        }
    }

    private Symbol? Theta(Segment segment, PathElement element)
    {
        ConductorTemperature own = segment.Temperature ?? point.Warmth;
        double celsius = element.Celsius!.Value;
        if (Heating is null || !own.DependsOnCurrent || element.OtherAmperes > 0)
        {
            return letters.Unrated is { } unrated && unrated.Value.Equals(celsius) ? unrated : null;
        }

        string mark = letters.Conductors.Of(segment.Conductor);
        Symbol ambient;
        Formula rise;
        Symbol rated;
        if (letters.Rated(segment) is { } known)
        {
            mark = known.Mark;
            ambient = known.Ambient;
            rated = known.Amperes;
            rise = known.Celsius - known.RatedAmbient;
        }
        else
        {
            ambient = board.LookUp("ambient temperature", "θ_a", own.AmbientCelsius, "°C", null);
            rise = board.LookUp($"rise of {segment.Conductor.Name} at its rated current", "Δθ_z" + mark, own.RiseKelvins, "K", null, "As stated for the circuit.");
            rated = board.LookUp($"rated current of one conductor of {segment.Conductor.Name}", "I_z" + mark, own.RatedAmperes, "A", null, "As stated for the circuit.");
        }

        Formula each = segment.Parallel == 1 ? Heating / rated : Heating / segment.Parallel / rated;
        return Step(
            $"temperature of {segment.Conductor.Name}", "θ" + (mark.Length == 0 ? "" : "_" + mark), ambient + (rise * Formula.Square(each)), celsius, "°C", ConductorTemperature.Reference,
            "The rise goes with the square of the current; the rating fixes it.");
    }

    private Symbol Sum()
    {
        string mark = MarkOf(Formula.Total(path.Parts));
        Symbol sum = path.Sum(SymbolName.With("R_p", mark), point.Elements.Sum(e => e.Ohms), "resistance of the path, out and back");
        if (mark.Length > 0)
        {
            letters.Marks[sum] = mark;
        }

        return sum;
    }

    // What drives this circuit's current once the others' drop in a shared return is taken off.
    private Symbol Driving()
    {
        Symbol open = Own(letters.Open);
        if (shared.Count == 0)
        {
            return open;
        }

        Formula others = Formula.Total([.. shared.Select(s => s.Ohms * s.Other)]);
        double lost = shared.Sum(s => s.Ohms.Value * s.Other.Value);
        return Step("voltage left by the other circuits", "V_x", open - others, open.Value - lost, "V", Loop, "Their current drops voltage in the shared return as well.");
    }

    private void Dropped()
    {
        drops.Add(Current * PathOhms);
        drops.AddRange(shared.Select(s => s.Ohms * s.Other));
        Drop = Step("drop of the path", "ΔV", Formula.Total(drops), point.DropVolts, "V", VoltageDrop.Reference, "Ohm's law for the way out and back.");
        if (!letters.IsOneOfSeveral)
        {
            Step("drop as a share of the nominal voltage", "p", Formula.FromNumber(100, "%") * Drop / letters.Nominal, 100 * (point.DropVolts / point.NominalVolts), "%", null);
        }
    }

    private void Minimum()
    {
        if (!letters.IsOneOfSeveral && point.MinimumVolts is { } least)
        {
            Symbol limit = board.Find("U_min") ?? new("U_min", least, "V", "least voltage at which the load works");
            board.Compare("does the load get its least voltage" + Level, LoadVolts, Relation.AtLeast, limit, null, "A load is judged by the volts it gets, whatever the per cent.", !point.BelowMinimum);
        }
    }
}
