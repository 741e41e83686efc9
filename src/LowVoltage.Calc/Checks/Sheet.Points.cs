using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <content>The operating points, and what the worst of them does to current and voltage.</content>
internal sealed partial class Sheet
{
    private readonly List<(SupplyLevel Level, OperatingPoint Point, OperatingPointSteps Steps)> points = [];

    /// <summary>Whether there are operating points to draw from.</summary>
    internal bool HasPoints => points.Count > 0 && At.Duty.Exists;

    /// <summary>The largest current while the load is on; null without operating points.</summary>
    internal Symbol? Largest { get; private set; }

    /// <summary>The largest r.m.s. current; null without operating points.</summary>
    internal Symbol? Heating { get; private set; }

    internal IEnumerable<SupplyLevel> Levels => points.Select(point => point.Level);

    /// <summary>Writes the operating points at the three supply levels.</summary>
    internal void WritePoints()
    {
        SupplyRange range = SupplyRange.Solve(Supply, Path, At.Load, ConductorTemperature.At(At.Site.Place.Ambient));
        Dictionary<Symbol, string> own = [];
        (OperatingPoint Point, SupplyLevel Level, string Mark)[] all = Source.IsConstant
            ? [(range.Nominal, SupplyLevel.Nominal, "")]
            : [(range.Minimum, SupplyLevel.Minimum, "lo"), (range.Nominal, SupplyLevel.Nominal, "nom"), (range.Maximum, SupplyLevel.Maximum, "hi")];
        foreach ((OperatingPoint point, SupplyLevel level, string mark) in all)
        {
            Board.Section(mark.Length == 0 ? "Operating point; the supply does not change" : $"Operating point at the {point.LevelText} supply voltage");
            if (!point.Exists)
            {
                Missing(point, level);
            }
            else if (points.Find(known => IsSame(known.Point, point)) is { Point: { } } same)
            {
                Board.State("operating point", $"The same as at the {same.Point.LevelText} supply voltage, number for number.");
            }
            else
            {
                OperatingPointSteps steps = new(Board, point, Letters(point, level, mark, own));
                steps.Write();
                points.Add((level, point, steps));
                Fallen(point, level, steps);
            }
        }
    }

    /// <summary>Writes the currents that the checks of wire and fuse start from.</summary>
    internal void WriteCurrents()
    {
        if (!HasPoints)
        {
            return;
        }

        Largest = Extreme("largest current while the load is on", "I_b", "A", steps => steps.Current, most: true);
        Heating = At.Duty.HeatingAmperes.Equals(At.Duty.OnAmperes) || points.TrueForAll(p => p.Steps.Heating is null && p.Point.HeatingAmperes.Equals(p.Point.Amperes))
            ? Largest
            : Extreme("largest r.m.s. current", "I_heat", "A", steps => steps.Heating ?? Rms(steps), most: true);
    }

    internal Symbol Extreme(string sought, string name, string unit, Func<OperatingPointSteps, Symbol> pick, bool most)
    {
        List<Formula> all = [];
        foreach ((SupplyLevel _, OperatingPoint _, OperatingPointSteps steps) in points)
        {
            Symbol symbol = pick(steps);
            if (!all.Exists(known => ((Symbol)known).Spec == symbol.Spec))
            {
                all.Add(symbol);
            }
        }

        double found = most ? all.Max(s => ((Symbol)s).Value) : all.Min(s => ((Symbol)s).Value);
        return all.Count == 1
            ? (Symbol)all[0]
            : Board.Step(sought, name, most ? Formula.GreatestOf(all) : Formula.LeastOf(all), found, unit, null, $"The {(most ? "largest" : "lowest")} of the operating points.");
    }

    /// <summary>The resistance of the path at the level where most heat is made.</summary>
    internal Symbol WarmPath => points.OrderByDescending(p => p.Point.HeatingAmperes).First().Steps.PathOhms;

    /// <summary>Resistance of the path, each stretch at a temperature of its own.</summary>
    /// <param name="name">Letter of the sum.</param>
    /// <param name="mark">What tells its letters from those of the path at other temperatures.</param>
    /// <param name="sought">What it is.</param>
    /// <param name="celsius">The temperature of a stretch, and the symbol that stands for it already.</param>
    internal (PathSteps Steps, Symbol Sum) WritePath(string name, string mark, string sought, Func<int, (double Celsius, Symbol? Symbol)> celsius)
    {
        PathSteps steps = new(Board, Marks);
        int stretch = 0;
        steps.All(Path, (segment, shared) =>
        {
            int at = Math.Min(stretch++, At.Stretches.Length - 1);
            (double degrees, Symbol? symbol) = shared ? (At.Stretches[at].UnratedCelsius, ContinuousIf(at)) : celsius(at);
            return (degrees, symbol, shared ? "hot" : mark);
        });
        return (steps, steps.Sum(name, steps.Parts.Sum(part => part.Evaluate()), sought));
    }

    /// <summary>The path as cool as the air; a shared return, which others heat too, as hot as its insulation allows.</summary>
    internal Symbol PathInAir() => WritePath(
        "R_pair", "air", "resistance of the path, as cool as the air",
        i => (At.Stretches[i].CoolCelsius, At.Stretches[i].Stated is null ? AmbientOf(i) : null)).Sum;

    /// <summary>The symbol of what the insulation of a stretch stands, where that is how hot it counts.</summary>
    internal Symbol? ContinuousIf(int stretch) =>
        ContinuousOf(stretch) is { } limit && limit.Value.Equals(At.Stretches[stretch].HotCelsius(At.HeatingAmperes)) ? limit : null;

    private PointLetters Letters(OperatingPoint point, SupplyLevel level, string mark, Dictionary<Symbol, string> own) => new()
    {
        Open = Source.Volts(level),
        Inner = point.SourceOhms > 0 ? Source.Ohms(level) : null,
        Nominal = Source.Volts(SupplyLevel.Nominal),
        Load = Load,
        Conductors = Marks,
        IsOneOfSeveral = true,
        Mark = mark,
        Marks = own,
        Rated = segment => RatedLetters(segment),
        Unrated = Continuous,
    };

    // The stretches of the path stand in the same order as those of the state.
    private RatedSymbols? RatedLetters(Segment segment)
    {
        int feed = Array.FindIndex(Path.FeedArray, s => ReferenceEquals(s, segment));
        int at = feed >= 0 ? feed : Path.FeedArray.Length + Array.FindIndex(Path.BackArray, s => ReferenceEquals(s, segment));

        // Of a design the first stretch is feed and return together.
        at = Math.Min(at, At.Stretches.Length - 1);
        if (!IsRated(at) || At.Stretches[at].Stated is not null)
        {
            return null;
        }

        (Symbol amperes, Symbol celsius) = ratings[at];
        SegmentState s = At.Stretches[at];
        return new RatedSymbols(amperes, celsius, AmbientOf(at), LettersOf(at).AmbientOfRating("θ_za" + MarkOf(at), s.Site.Rating.RatedAmbientFor(s.Conductor), s.Site.Rating.ReferenceFor(s.Conductor)), MarkOf(at));
    }

    private static bool IsSame(OperatingPoint one, OperatingPoint other) =>
        one.OpenVolts.Equals(other.OpenVolts) && one.SourceOhms.Equals(other.SourceOhms) && one.Amperes.Equals(other.Amperes) && one.LoadVolts.Equals(other.LoadVolts);

    // A point whose conductors do not warm up never asked for its r.m.s. current.
    private Symbol Rms(OperatingPointSteps steps)
    {
        OperatingPoint point = points.Find(p => ReferenceEquals(p.Steps, steps)).Point;
        return Board.LookUp(
            $"r.m.s. current at the {point.LevelText} supply voltage", "I_rms" + (points.Count == 1 ? "" : Mark(point.Level)), point.HeatingAmperes, "A", null,
            "Heat goes with the square of the current: over many short pulses the mean of the squares counts, over longer ones the end of a pulse.");
    }

    private static string Mark(SupplyLevel level) => level switch { SupplyLevel.Minimum => "lo", SupplyLevel.Maximum => "hi", _ => "nom" };

    // A supply at its limit: what the load gets there, against what it takes at the supply's own voltage.
    private void Fallen(OperatingPoint point, SupplyLevel level, OperatingPointSteps steps)
    {
        if (Find(CheckKind.PowerDelivery) is not { HasNumbers: true } delivery || level != At.Duty.Level || !point.CurrentLimitReached)
        {
            return;
        }

        Value(delivery.Kind!, Board.Step("power that the load gets at the supply's limit", "P_del", steps.LoadVolts * steps.Current, delivery.Value!.Value, "W", OhmsLaw.Reference));
        Symbol volts = Source.Volts(level);
        Symbol wanted = Board.LookUp("current that the load takes at the supply's voltage", "I_want", At.Load.AmperesAt(volts.Value, LoadState.Running), "A", null);
        if (volts.Value * wanted.Value is var watts && Math.Abs(watts - delivery.Limit!.Value) <= 1e-12 * watts)
        {
            Limit(delivery.Kind!, Board.Step("power that the load takes there", "P_want", volts * wanted, watts, "W", OhmsLaw.Reference));
        }
    }

    // The most that a matched load could take through the path while it is still as cool as the air: an upper bound that a reader can work out.
    private void Missing(OperatingPoint point, SupplyLevel level)
    {
        if (Find(CheckKind.PowerDelivery) is { Value: { } most } delivery && level == At.Duty.Level)
        {
            // The check counts what the point alone does not: a wire that melts at less, a source that disconnects.
            string why = !double.IsNaN(point.LargestWatts) && Math.Abs(point.LargestWatts - most) > 1e-9 * most && point.Reason != NoOperatingPoint.SourceDisconnects
                ? At.Source.Action == LimitAction.Disconnects ? "The source disconnects before the load has what it takes." : "With every conductor short of melting."
                : point.Explanation;
            Value(delivery.Kind!, Board.LookUp("most power that can reach the load there", "P_del", most, "W", null, SolutionText.Sentence(why)));
        }
        else
        {
            Board.State("operating point", point.Explanation);
        }

        if (Has(CheckKind.PowerDelivery) && point.Reason == NoOperatingPoint.PowerOutOfReach && At.SharedVolts == 0 && Board.Find("P_cap") is null)
        {
            Symbol cool = PathInAir();
            Symbol v = Source.Volts(level), inner = Source.Ohms(level);
            Formula resistance = inner.Value > 0 ? inner + cool : cool;
            Board.Step(
                "most power that could reach any load through wire as cool as the air", "P_cap", Formula.Square(v) / (4 * resistance), v.Value * v.Value / (4 * (inner.Value + cool.Value)), "W", OhmsLaw.Reference,
                "A load takes the most when it drops half the voltage. The current warms the wire, so that less comes through than this.");
            if (LoadSymbols.Only(Load.Powers()) is { } wanted && Find(CheckKind.PowerDelivery) is { Limit: { } asked } && Math.Abs(wanted.Value - asked) <= 1e-9 * asked)
            {
                Limit(CheckKind.PowerDelivery, wanted);
            }
        }
    }
}
