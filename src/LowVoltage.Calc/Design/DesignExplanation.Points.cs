using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <content>The operating points, and what the worst of them does to the voltage.</content>
internal sealed partial class DesignExplanation
{
    private readonly List<(SupplyLevel Level, OperatingPoint Point, OperatingPointSteps Steps)> points = [];

    private Symbol? largest;
    private Symbol? heating;

    private void Points()
    {
        SupplyRange range = SupplyRange.Solve(asked.Source, path, asked.Load, ConductorTemperature.At(asked.Ambient));
        Dictionary<Symbol, string> own = [];
        (OperatingPoint Point, SupplyLevel Level, string Mark)[] all = source.IsConstant
            ? [(range.Nominal, SupplyLevel.Nominal, "")]
            : [(range.Minimum, SupplyLevel.Minimum, "lo"), (range.Nominal, SupplyLevel.Nominal, "nom"), (range.Maximum, SupplyLevel.Maximum, "hi")];
        foreach ((OperatingPoint point, SupplyLevel level, string mark) in all)
        {
            board.Section(mark.Length == 0 ? "Operating point; the supply does not change" : $"Operating point at the {point.LevelText} supply voltage");
            if (!point.Exists)
            {
                Missing(point, level);
                continue;
            }

            if (points.Find(known => IsSame(known.Point, point)) is { Point: { } } same)
            {
                board.State("operating point", $"The same as at the {same.Point.LevelText} supply voltage, number for number.");
                continue;
            }

            OperatingPointSteps steps = new(board, point, new PointLetters
            {
                Open = source.Volts(level),
                Inner = point.SourceOhms > 0 ? source.Ohms(level) : null,
                Nominal = source.Volts(SupplyLevel.Nominal),
                Load = load,
                Conductors = marks,
                IsOneOfSeveral = true,
                Mark = mark,
                Marks = own,
                Ambient = ambient,
                Rated = conductor => ratings.TryGetValue(conductor, out (Symbol, Symbol) known) ? known : null,
                Unrated = continuous,
            });
            steps.Write();
            points.Add((level, point, steps));
        }
    }

    private static bool IsSame(OperatingPoint one, OperatingPoint other) =>
        one.OpenVolts.Equals(other.OpenVolts) && one.SourceOhms.Equals(other.SourceOhms) && one.Amperes.Equals(other.Amperes) && one.LoadVolts.Equals(other.LoadVolts);

    // The most that a matched load could take through the path while it is still as cool as the air: an upper bound that a reader can work out.
    private void Missing(OperatingPoint point, SupplyLevel level)
    {
        if (design.Check(CheckKind.PowerDelivery) is { } delivery && point.LargestWatts is { } most && most.Equals(delivery.Value))
        {
            Value(delivery.Kind, board.LookUp("most power that can reach the load there", "P_del", most, "W", null, SolutionText.Sentence(point.Explanation)));
        }
        else
        {
            board.State("operating point", point.Explanation);
        }

        if (Has(CheckKind.PowerDelivery) && point.Reason == NoOperatingPoint.PowerOutOfReach && evaluator.SharedVolts == 0 && board.Find("P_cap") is null)
        {
            Symbol cool = PathInAir();
            Symbol v = source.Volts(level), inner = source.Ohms(level);
            Formula resistance = inner.Value > 0 ? inner + cool : cool;
            board.Step(
                "most power that could reach any load through wire as cool as the air", "P_cap", Formula.Square(v) / (4 * resistance), v.Value * v.Value / (4 * (inner.Value + cool.Value)), "W", OhmsLaw.Reference,
                "A load takes the most when it drops half the voltage. The current warms the wire, so that less comes through than this.");
            if (LoadSymbols.Only(load.Powers()) is { } wanted)
            {
                Limit(CheckKind.PowerDelivery, wanted);
            }
        }
    }

    // As the checks have it: a shared return, which others heat too, counts as hot as its insulation allows.
    private Symbol PathInAir()
    {
        PathSteps steps = new(board, marks);
        steps.All(path, evaluator.Ambient, ambient, "air", continuous);
        return steps.Sum("R_pair", steps.Parts.Sum(part => part.Evaluate()), "resistance of the path, as cool as the air");
    }

    private void Voltage()
    {
        board.Section("Voltage");
        if (points.Count > 0 && duty.Exists)
        {
            largest = Extreme("largest current while the load is on", "I_b", "A", steps => steps.Current, most: true);
            heating = duty.HeatingAmperes.Equals(duty.OnAmperes) || points.TrueForAll(p => p.Steps.Heating is null && p.Point.HeatingAmperes.Equals(p.Point.Amperes))
                ? largest
                : Extreme("largest r.m.s. current", "I_heat", "A", steps => steps.Heating ?? Rms(steps), most: true);
            Symbol drop = Extreme("largest drop of the path", "ΔV_b", "V", steps => steps.Drop, most: true), nominal = source.Volts(SupplyLevel.Nominal);
            board.Step("largest drop as a share of the nominal voltage", "p_b", Formula.FromNumber(100, "%") * drop / nominal, 100 * drop.Value / nominal.Value, "%", null);
            Value(CheckKind.VoltageDrop, drop);
            Value(CheckKind.LoadVoltage, Extreme("lowest voltage at the load", "U_b", "V", steps => steps.LoadVolts, most: false));
            Allowed();
            Start();
        }

        Checks(CheckKind.PowerDelivery, CheckKind.VoltageDrop, CheckKind.LoadVoltage, CheckKind.StartVoltage);
    }

    // A point whose conductors do not warm up never asked for its r.m.s. current.
    private Symbol Rms(OperatingPointSteps steps)
    {
        OperatingPoint point = points.Find(p => ReferenceEquals(p.Steps, steps)).Point;
        return board.LookUp($"r.m.s. current at the {point.LevelText} supply voltage", "I_rms" + (points.Count == 1 ? "" : Mark(point.Level)), point.HeatingAmperes, "A", null, "Heat goes with the square of the current: over many short pulses the mean of the squares counts.");
    }

    private static string Mark(SupplyLevel level) => level switch { SupplyLevel.Minimum => "lo", SupplyLevel.Maximum => "hi", _ => "nom" };

    private Symbol Extreme(string sought, string name, string unit, Func<OperatingPointSteps, Symbol> pick, bool most)
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
            : board.Step(sought, name, most ? Formula.GreatestOf(all) : Formula.LeastOf(all), found, unit, null, $"The {(most ? "largest" : "lowest")} of the operating points.");
    }

    private void Allowed()
    {
        if (design.Check(CheckKind.VoltageDrop) is { Outcome: not CheckOutcome.Undetermined } check)
        {
            Limit(check.Kind, board.Find("p_max") is { } share
                ? board.Step("allowed drop", "ΔV_max", share * source.Volts(SupplyLevel.Nominal) / Formula.FromNumber(100, "%"), check.Limit, "V", check.Reference)
                : board.LookUp("allowed drop", "ΔV_max", check.Limit, "V", check.Reference));
        }

        if (board.Find("U_min") is { } least)
        {
            Limit(CheckKind.LoadVoltage, least);
            Limit(CheckKind.StartVoltage, least);
        }
    }

    // A motor alone at the end: the voltage while it starts, by the level that gives the lowest.
    private void Start()
    {
        if (design.Check(CheckKind.StartVoltage) is not { Outcome: not CheckOutcome.Undetermined } check || check.Value == 0 || load.Motors.Count != 1 || load.Currents.Count != 1
            || load.Lamps + load.Resistances.Count + load.Powers().Count > 0 || evaluator.SharedVolts > 0)
        {
            return;
        }

        Symbol warm = points.OrderByDescending(p => p.Point.HeatingAmperes).First().Steps.PathOhms;
        (Symbol peak, Symbol _, Symbol? rated) = load.Motors[0];
        foreach ((SupplyLevel level, OperatingPoint _, OperatingPointSteps _) in points)
        {
            Symbol v = source.Volts(level), inner = source.Ohms(level);
            double ohms = inner.Value + warm.Value;
            double u = rated is null ? v.Value - (peak.Value * ohms) : v.Value / (1 + (ohms * peak.Value / rated.Value));
            if (Math.Abs(u - check.Value) <= 1e-9 * check.Value)
            {
                Formula all = inner.Value > 0 ? inner + warm : warm;
                Value(check.Kind, board.Step(
                    "lowest voltage at the load while it starts", "U_start", rated is null ? v - (peak * all) : v / (1 + (all * peak / rated)), u, "V", OhmsLaw.Reference,
                    $"The lowest of the supply levels; the start is over before the wire warms up further.{(rated is null ? "" : " At standstill the motor is a resistance.")}"));
                return;
            }
        }
    }
}
