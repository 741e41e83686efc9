using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Teaching;

/// <summary>The circuit of a design problem: its givens, its table, and the steps that choose wire and fuse.</summary>
internal sealed class DesignCircuit
{
    private readonly ProblemDraft d;

    private DesignCircuit(ProblemDraft draft, bool throughChassis)
    {
        d = draft;
        Table = DesignTable.For(d);
        LoadDraw load = throughChassis ? d.DrawChassisLoad() : d.DrawLoad();
        P = d.Give("power of the load", "P", load.Watts, "W");
        U = d.Give("voltage", "U", load.Volts, "V");
        L = d.Give(throughChassis ? "length of the feed wire" : "distance, one way", "L", d.DrawDistance(), d.LengthUnit);
        Chassis = throughChassis ? d.Give("resistance of the return path", "R_2", (decimal)(2 + d.Random.Next(12)), "mΩ") : null;
        Share = d.Give("allowed drop, of the voltage", "p", (decimal)(2 + d.Random.Next(4)), "%");
        Loading = d.Give("share of its rating that a fuse carries continuously", "k", d.Random.Pick((decimal[])[0.75m, 0.8m]), "");
        Place = Table.DrawPlace(d);
        Factor = d.Give("factor for the place", "f", (decimal)Place.Factor, "");
        d.Say(Chassis is null ? DesignStatement.Task(d, load, P, U, L) : DesignStatement.ChassisTask(d, load, P, U, L, Chassis));
        d.Sketch(
            d.Feeder(U),
            [ProblemDraft.Part(DiagramSymbol.Fuse, "? A"), ProblemDraft.Part(DiagramSymbol.Wire, L, "? size")],
            [ProblemDraft.Part(load, P)],
            Chassis is null ? ProblemDraft.Part(DiagramSymbol.Wire, L, "? size") : d.ChassisPart(Chassis));
        d.Say(DesignStatement.Drop(d, Share, U));
        d.Say(DesignStatement.Fuse(d.World, Loading));
        d.Say(DesignStatement.Place(Place, Factor));
        d.Say(DesignStatement.AtHand(d.World));
        d.GiveWords("fuses available", FuseProblems.RatingList());
        d.AskDefence(DesignStatement.Defence(d.World));
        d.Show(new ProblemTable(
            d.Gauges ? ["size", d.SectionUnit, d.PerLengthUnit, "table, A"] : ["size", d.PerLengthUnit, "table, A"],
            [.. Rows.Select(row => (IReadOnlyList<string>)[row.Text, .. d.Gauges ? [AnswerText.Of(row.Section, "")] : Array.Empty<string>(), AnswerText.Digits((double)PerLength(row), 3), AnswerText.Of(row.Amperes, "")])]));
    }

    internal DesignTable Table { get; }

    internal IReadOnlyList<DesignRow> Rows => Table.Rows;

    internal DesignPlace Place { get; }

    internal DrawnGiven P { get; }

    internal DrawnGiven U { get; }

    internal DrawnGiven L { get; }

    /// <summary>The way back, in mΩ; null where a second wire leads back.</summary>
    internal DrawnGiven? Chassis { get; }

    internal DrawnGiven Share { get; }

    internal DrawnGiven Loading { get; }

    internal DrawnGiven Factor { get; }

    internal DesignChoice Right { get; private set; } = null!;

    internal Symbol Current { get; private set; } = null!;

    internal Symbol Per { get; private set; } = null!;

    internal Symbol Rating { get; private set; } = null!;

    internal Symbol TableAmperes { get; private set; } = null!;

    internal int Ways => Chassis is null ? 2 : 1;

    /// <summary>Draws and solves one; null when nothing plausible came out, or a complete design disagrees.</summary>
    internal static DesignCircuit? Draw(ProblemDraft d, bool throughChassis)
    {
        DesignCircuit circuit = new(d, throughChassis);
        return circuit.Solve() && new DesignDefence(circuit, d).Hold() ? circuit : null;
    }

    internal decimal PerLength(DesignRow row) => d.Feet ? row.PerThousandFeet : row.PerKilometer;

    /// <summary>The resistance out and back that a row gives.</summary>
    internal double Ohms(DesignRow row) =>
        ((d.PerLength((double)PerLength(row)) * d.LengthOf(Ways * L.Value)).Ohms) + (Chassis is null ? 0 : Chassis.Value / 1000);

    /// <summary>A step for the resistance out and back of the size chosen.</summary>
    internal Symbol StepResistance()
    {
        Formula wire = Chassis is null ? Per * 2 * L.Symbol / 1000 : (Per * L.Symbol / 1000) + (Chassis.Symbol / 1000);
        return d.Step("the resistance out and back", "R", wire, Right.Ohms, "Ω", OhmsLaw.Reference, "Of the size chosen.");
    }

    internal DesignRow? ByDrop(double most) => Rows.FirstOrDefault(row => (double)PerLength(row) <= most);

    internal DesignRow? ByCurrent(double amperes) => FuseProblems.Fit(Rows, amperes);

    internal DesignRow? Larger(DesignRow? one, DesignRow? other) => one is null || other is null ? null : IndexOf(one) >= IndexOf(other) ? one : other;

    internal int IndexOf(DesignRow row) => Enumerable.Range(0, Rows.Count).First(at => Rows[at] == row);

    private bool Solve()
    {
        double amperes = OhmsLaw.FromVoltageAndPower(Make.V(U.Value), Make.W(P.Value)).Current.Amperes;
        Current = d.Step("the current", "I", P.Symbol / U.Symbol, amperes, "A", OhmsLaw.Reference, "Power over voltage.");
        Symbol drop = d.Step("the allowed drop in volts", "ΔU_m", Share.Symbol / 100 * U.Symbol, "V", null, "The share of the voltage.");
        double ohms = VoltageDrop.GreatestResistance(Make.A(amperes), Make.V(drop.Value)).Ohms;
        Symbol allowed = d.Step("the resistance allowed out and back", "R_m", drop / Current, ohms, "Ω", OhmsLaw.Reference, "Ohm's law for the path.");
        Formula left = Chassis is null ? allowed : allowed - (Chassis.Symbol / 1000);
        Symbol per = d.Step("the resistance per length allowed", "R′_m", left / (Ways == 2 ? 2 * L.Symbol : L.Symbol) * 1000, d.PerLengthUnit, null,
            Chassis is null ? "Over twice the distance, out and back." : "What the return path leaves, over the feed wire.");
        double least = FuseLoading.LeastRatingFor(Make.A(amperes), Loading.Value).Amperes, rating = FuseProblems.Rating(least);
        if (ByDrop(per.Value) is not { } byDrop || double.IsNaN(rating) || ByCurrent(rating / Factor.Value) is not { } byCurrent)
        {
            return false;
        }

        d.Step("the least rating of the fuse", "I_m", Current / Loading.Symbol, least, "A", null, "The load may be at most that share of the rating.");
        Rating = d.Choose("the fuse", "I_n", rating, "A", FuseSeries.RoadVehicleBlade.Reference, "The smallest rating that is not below it.");
        Symbol table = d.Step("the current that the table must give", "I_t", Rating / Factor.Symbol, "A", null, "Derated, the wire must still carry what the fuse lets pass.");
        DesignRow row = Larger(byDrop, byCurrent)!;
        TableAmperes = d.Choose("the table's current of the size chosen", "I_a", (double)row.Amperes, "A", Table.Published.Reference, $"The drop asks for {byDrop.Text}, the fuse for {byCurrent.Text}: {row.Text} meets both.");
        Per = d.Choose("its resistance per length", "R′", (double)PerLength(row), d.PerLengthUnit, null, "From the same row.");
        d.Compare("whether the drop is kept", Per, Relation.AtMost, per, "The wire keeps the drop within its limit.");
        d.Compare("whether the wire carries what the fuse lets pass", TableAmperes, Relation.AtLeast, table, "The fuse protects the wire.");
        Right = new DesignChoice(row, rating, Ohms(row), amperes);
        return per.Value > 0 && IndexOf(row) > 0 && IndexOf(row) < Rows.Count - 1 && !FuseProblems.IsTooNear(least)
            && !Rows.Any(other => Rounding.IsTooNear(per.Value, (double)PerLength(other)) || Rounding.IsTooNear(table.Value, (double)other.Amperes));
    }
}
