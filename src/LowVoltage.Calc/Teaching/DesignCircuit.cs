using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>The circuit of a design problem: its givens, its table, and the steps that choose wire and fuse.</summary>
internal sealed class DesignCircuit
{
    private readonly ProblemDraft d;
    private readonly IReadOnlyList<DesignRow> rows;
    private readonly DrawnGiven? chassis;
    private readonly DrawnGiven share;
    private readonly DrawnGiven loading;
    private readonly DrawnGiven factor;
    private readonly int ambient;
    private readonly int bundle;

    private DesignCircuit(ProblemDraft draft, bool throughChassis)
    {
        d = draft;
        rows = DesignRow.Sizes(d.Gauges);
        LoadDraw load = d.DrawLoad();
        P = d.Give("power of the load", "P", load.Watts, "W");
        U = d.Give("voltage", "U", load.Volts, "V");
        L = d.Give(throughChassis ? "length of the wire out" : "distance, one way", "L", d.DrawDistance(), d.LengthUnit);
        chassis = throughChassis ? d.Give("resistance of the frame, the way back", "R_2", (decimal)(2 + d.Random.Next(12)), "mΩ") : null;
        share = d.Give("allowed drop, of the voltage", "p", (decimal)(2 + d.Random.Next(4)), "%");
        loading = d.Give("share of its rating that a fuse carries without end", "k", 0.8m, "");
        (ambient, bundle, string place, double value) = Place();
        factor = d.Give("factor for the place", "f", (decimal)value, "");
        string back = chassis is null ? $"stands {L} away (one way)" : $"is fed by {L} of wire. {d.World.Frame} is the way back, with {chassis}";
        d.Say($"{d.World.InAtStart}, {load.One} of {P} at {U} {back}. Choose wire and fuse, and defend your choice. No more than {share} of the voltage may be lost, out and back, with copper at 20 °C and the current at {U}. The fuse is the smallest of {FuseProblems.RatingList()} that is loaded with at most {loading} of its rating. The wire must carry what the fuse is rated for; {place}, it may carry {factor} of the table's current. Take the smallest size that meets both conditions.");
        d.GiveWords("ratings at hand", FuseProblems.RatingList());
        d.Show(new ProblemTable(
            ["size", "section, mm²", d.PerLengthUnit, "table, A"],
            [.. rows.Select(row => (IReadOnlyList<string>)[row.Text, AnswerText.Of(row.Section, ""), AnswerText.Of(PerLength(row), ""), AnswerText.Of(row.Amperes, "")])]));
    }

    internal DrawnGiven P { get; }

    internal DrawnGiven U { get; }

    internal DrawnGiven L { get; }

    internal IReadOnlyList<DesignRow> Rows => rows;

    internal DesignChoice Right { get; private set; } = null!;

    internal Symbol Current { get; private set; } = null!;

    internal Symbol Per { get; private set; } = null!;

    internal Symbol Rating { get; private set; } = null!;

    internal Symbol TableAmperes { get; private set; } = null!;

    internal Symbol Resistance { get; private set; } = null!;

    internal DrawnGiven Factor => factor;

    /// <summary>Draws and solves one; null when nothing plausible came out, or the designer disagrees.</summary>
    internal static DesignCircuit? Draw(ProblemDraft d, bool throughChassis)
    {
        DesignCircuit circuit = new(d, throughChassis);
        return circuit.Solve() && circuit.DesignerAgrees() ? circuit : null;
    }

    internal decimal PerLength(DesignRow row) => d.Feet ? row.PerThousandFeet : row.PerKilometer;

    /// <summary>The resistance out and back that a row gives.</summary>
    internal double Ohms(DesignRow row) =>
        ((d.PerLength((double)PerLength(row)) * d.LengthOf(Ways * L.Value)).Ohms) + (chassis is null ? 0 : chassis.Value / 1000);

    /// <summary>The choices that mistakes lead to.</summary>
    internal IEnumerable<(Mistake Mistake, DesignChoice Choice)> WrongChoices()
    {
        double i = Right.Amperes, allowed = Allowed(i), needed = Right.Rating / factor.Value;
        DesignRow? drop = ByDrop(allowed), current = ByCurrent(needed);
        double watts = FuseProblems.Rating(P.Value / loading.Value);
        int at = IndexOf(Right.Row);
        (Mistake, DesignRow?, double)[] all =
        [
            (Mistake.AmpacityForgotten, drop, Right.Rating),
            (Mistake.DropForgotten, current, Right.Rating),
            (Mistake.OneWayTakenForLoop, chassis is null ? Larger(ByDrop(2 * allowed), current) : null, Right.Rating),
            (Mistake.ReturnTakenAsWire, chassis is null ? null : Larger(ByDrop(allowed / 2), current), Right.Rating),
            (Mistake.DeratingForgotten, Larger(drop, ByCurrent(Right.Rating)), Right.Rating),
            (Mistake.DeratingTwice, Larger(drop, ByCurrent(needed / factor.Value)), Right.Rating),
            (Mistake.FuseForLoadNotWire, Larger(drop, ByCurrent(i / factor.Value)), Right.Rating),
            (Mistake.WattsForAmperes, double.IsNaN(watts) ? null : Larger(ByDrop(allowed * i / P.Value), ByCurrent(watts / factor.Value)), watts),
            (Mistake.RoundedDown, at > 0 ? rows[at - 1] : null, Right.Rating),
            (Mistake.TooThick, at + 1 < rows.Count ? rows[at + 1] : null, Right.Rating),
        ];
        return all.Where(wrong => wrong.Item2 is not null && wrong.Item2 != Right.Row)
            .Select(wrong => (wrong.Item1, new DesignChoice(wrong.Item2!, wrong.Item3, Ohms(wrong.Item2!), i)));
    }

    private int Ways => chassis is null ? 2 : 1;

    private (int Ambient, int Bundle, string Place, double Factor) Place()
    {
        if (d.Gauges)
        {
            int conductors = 4 + d.Random.Next(20);
            return (30, conductors, $"as one of {CountWords.Of(conductors)} loaded conductors in a bundle", Cfr33Part183ConductorCount.Factor(conductors, Make.V(50)).Value);
        }

        int celsius = 35 + (5 * d.Random.Next(6));
        double exact = RoadVehicleAmbient.Factor(Make.Celsius(celsius), DesignRow.Metrics.BaseAmbient).Value;
        return (celsius, 2, $"at {d.PrintedCelsius(celsius)}", (double)Rounding.Figures(exact, 2));
    }

    private bool Solve()
    {
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(U.Value), Make.W(P.Value)).Current.Amperes;
        Current = d.Step("the current", "I", P.Symbol / U.Symbol, amperes, "A", OhmsLaw.Reference, "Power over voltage.");
        Symbol drop = d.Step("the allowed drop in volts", "ΔU_m", share.Symbol / 100 * U.Symbol, "V", null, "The share of the voltage.");
        double ohms = VoltageDrop.GreatestResistance(Make.A(amperes), Make.V(drop.Value)).Ohms;
        Symbol allowed = d.Step("the resistance allowed out and back", "R_m", drop / Current, ohms, "Ω", OhmsLaw.Reference, "Ohm's law for the way.");
        Formula left = chassis is null ? allowed : allowed - (chassis.Symbol / 1000);
        Symbol per = d.Step("the resistance per length allowed", "R′_m", left / (Ways == 2 ? 2 * L.Symbol : L.Symbol) * 1000, d.PerLengthUnit, null,
            chassis is null ? "Over twice the distance, out and back." : "What the frame leaves, over the wire out.");
        double least = FuseLoading.LeastRatingFor(Make.A(amperes), loading.Value).Amperes, rating = FuseProblems.Rating(least);
        if (ByDrop(per.Value) is not { } byDrop || double.IsNaN(rating) || ByCurrent(rating / factor.Value) is not { } byCurrent)
        {
            return false;
        }

        d.Step("the least rating of the fuse", "I_m", Current / loading.Symbol, least, "A", null, "The load may be at most that share of the rating.");
        Rating = d.Choose("the fuse", "I_n", rating, "A", FuseSeries.RoadVehicleBlade.Reference, "The smallest rating that is not below it.");
        Symbol table = d.Step("the current that the table must give", "I_t", Rating / factor.Symbol, "A", null, "Derated, the wire must still carry what the fuse lets pass.");
        DesignRow row = Larger(byDrop, byCurrent)!;
        TableAmperes = d.Choose("the table's current of the size chosen", "I_a", (double)row.Amperes, "A", (d.Gauges ? DesignRow.Gauges : DesignRow.Metrics).Reference, $"The drop asks for {byDrop.Text}, the fuse for {byCurrent.Text}: {row.Text} meets both.");
        Per = d.Choose("its resistance per length", "R′", (double)PerLength(row), d.PerLengthUnit, null, "From the same row.");
        d.Compare("whether the drop is kept", Per, Relation.AtMost, per, "The wire keeps the drop within its limit.");
        d.Compare("whether the wire carries what the fuse lets pass", TableAmperes, Relation.AtLeast, table, "The fuse protects the wire.");
        Right = new DesignChoice(row, rating, Ohms(row), amperes);
        return per.Value > 0 && IndexOf(row) > 0 && !FuseProblems.IsTooNear(least)
            && !rows.Any(other => Rounding.IsTooNear(per.Value, (double)PerLength(other)) || Rounding.IsTooNear(table.Value, (double)other.Amperes));
    }

    /// <summary>A step for the resistance out and back of the size chosen.</summary>
    internal Symbol StepResistance()
    {
        Formula wire = chassis is null ? Per * 2 * L.Symbol / 1000 : (Per * L.Symbol / 1000) + (chassis.Symbol / 1000);
        return Resistance = d.Step("the resistance out and back", "R", wire, Right.Ohms, "Ω", OhmsLaw.Reference, "Of the size chosen.");
    }

    // The designer looks at the hot wire, the short circuit and the time of the fuse too; only where it comes to the same wire and fuse is the problem taken.
    private bool DesignerAgrees()
    {
        CircuitRequirements requirements = new()
        {
            Source = Source.BehindResistance(Make.V(U.Value), Make.Milliohm(8)),
            Load = Load.ConstantCurrent(Make.A(Right.Amperes)),
            Feed = d.LengthOf(L.Value),
            Return = chassis is null ? ReturnPath.Wire(d.LengthOf(L.Value)) : ReturnPath.Chassis(Make.Milliohm(chassis.Value)),
            Ambient = Make.Celsius(ambient),
            LoadedConductors = bundle,
            Insulation = InsulationMaterial.PolyvinylChloride,
        };
        DesignRules basis = d.Gauges ? DesignRules.SmallCraft : DesignRules.RoadVehicle;
        DesignRules rules = new(basis)
        {
            Name = "the rules of the statement",
            Conductors = basis.Conductors.Only("sizes of the statement", [.. rows.Select(row => row.Size)]),
            Fuses = FuseSeries.RoadVehicleBlade,
            Ampacity = d.Gauges ? AmpacityBasis.SmallCraftTable : AmpacityBasis.RoadVehicleTable,
            DropLimit = DropLimit.Percent(share.Value),
            FusePractice = new FusePractice { Loading = loading.Value },
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, rules);
        if (design.Wire?.Size is not { } size || size != Right.Row.Size || design.Fuse is not { } fuse || fuse.Current.Amperes != Right.Rating)
        {
            return false;
        }

        d.Note("In defence of the choice", $"A complete design, which also looks at the wire's own warmth, the short circuit and the opening time of the fuse, comes to the same {Right.Row.Text} with the same {AnswerText.Of((decimal)Right.Rating, "A")} fuse. What decides is: {design.Governing.Name}.");
        return true;
    }

    private double Allowed(double amperes) =>
        ((share.Value / 100 * U.Value / amperes) - (chassis is null ? 0 : chassis.Value / 1000)) / (Ways * L.Value) * 1000;

    private DesignRow? ByDrop(double most) => rows.FirstOrDefault(row => (double)PerLength(row) <= most);

    private DesignRow? ByCurrent(double amperes) => FuseProblems.Fit(rows, amperes);

    private DesignRow? Larger(DesignRow? one, DesignRow? other) => one is null || other is null ? null : IndexOf(one) >= IndexOf(other) ? one : other;

    private int IndexOf(DesignRow row)
    {
        int at = 0;
        while (rows[at] != row)
        {
            at++;
        }

        return at;
    }
}
