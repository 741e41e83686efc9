using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Teaching;

/// <summary>Why a design problem's wire and fuse and not their neighbours: by the conditions of the statement, and by a complete design of the same circuit.</summary>
internal sealed class DesignDefence(DesignCircuit circuit, ProblemDraft d)
{
    private const int Figures = 3;

    private DesignChoice Right => circuit.Right;

    private double MostVolts => circuit.Share.Value / 100 * circuit.U.Value;

    /// <summary>Writes the defence; false where a complete design does not come to the same, and the problem is not to be set.</summary>
    internal bool Hold()
    {
        if (Complete() is not { } complete)
        {
            return false;
        }

        int at = circuit.IndexOf(Right.Row);
        List<string> lines = [Smaller(circuit.Rows[at - 1]), Larger(circuit.Rows[at + 1])];
        if (FuseSeries.RoadVehicleBlade.NextSmaller(Make.A(Right.Rating)) is { } below)
        {
            lines.Add($"A {Rated(below.Current.Amperes)} fuse would be loaded to {Text(Right.Amperes / below.Current.Amperes)} times its rating; {circuit.Loading} is allowed.");
        }

        if (FuseSeries.RoadVehicleBlade.NextLarger(Make.A(Right.Rating)) is { } above)
        {
            lines.Add(Above(above.Current.Amperes));
        }

        lines.Add(complete);
        d.Note("In defence of the choice", [.. lines]);
        return true;
    }

    private double Volts(DesignRow row) => Right.Amperes * circuit.Ohms(row);

    private double Carries(DesignRow row) => (double)row.Amperes * circuit.Factor.Value;

    private string Smaller(DesignRow row)
    {
        string drop = Volts(row) > MostVolts ? $"loses {Text(Volts(row))} V, and {Text(MostVolts)} V are allowed" : "";
        string current = Carries(row) < Right.Rating ? $"may carry {Text(Carries(row))} A, and the fuse lets {Rated(Right.Rating)} pass" : "";
        return $"{row.Text}, one size thinner, {drop}{(drop.Length > 0 && current.Length > 0 ? "; it " : "")}{current}.";
    }

    private string Larger(DesignRow row) =>
        $"{row.Text}, one size thicker, is unnecessary: {Right.Row.Text} loses {Text(Volts(Right.Row))} V of the {Text(MostVolts)} V allowed and may carry {Text(Carries(Right.Row))} A behind a fuse of {Rated(Right.Rating)}.";

    private string Above(double rating) => Carries(Right.Row) < rating
        ? $"A {Rated(rating)} fuse is more than the wire may carry there: {Text(Carries(Right.Row))} A."
        : $"A {Rated(rating)} fuse is not needed: {Rated(Right.Rating)} is loaded to {Text(Right.Amperes / Right.Rating)} times its rating, and a larger fuse lets a fault do more harm.";

    // A complete design looks at the hot wire, the short circuit and the time of the fuse too.
    private string? Complete()
    {
        CircuitRequirements requirements = Requirements();
        DesignRules rules = Rules();
        if (!circuit.Table.DecidesAlike)
        {
            Conductor wire = rules.Conductors.Conductors.First(size => size.Size == Right.Row.Size);
            CircuitDesign check = CircuitDesigner.Verify(requirements, wire, FuseSeries.RoadVehicleBlade.SmallestAtLeast(Make.A(Right.Rating)), rules);
            return check.IsFeasible
                ? $"A complete check with a heat balance of the bundle, which also looks at the short circuit and the opening time of the fuse, finds nothing against either. The check with the least margin: {check.Governing.Name}."
                : null;
        }

        CircuitDesign design = CircuitDesigner.Design(requirements, rules);
        if (design.IsNearest || design.Wire.Size is not { } chosen || chosen != Right.Row.Size || design.Fuse is not { } fuse || fuse.Current.Amperes != Right.Rating)
        {
            return null;
        }

        RejectedSize last = design.Rejected[design.Rejected.Count - 1];
        return $"A complete design, which also looks at the wire's own heat, the short circuit and the opening time of the fuse, arrives at the same {Right.Row.Text} and the same {Rated(Right.Rating)} fuse. {Deciding(last.Check.Name, design.Governing.Name)}";
    }

    private static string Deciding(string stops, string governs) => stops == governs
        ? $"What rules out the thinner size, and has the least margin here: {stops}."
        : $"What rules out the thinner size: {stops}; the check with the least margin here: {governs}.";

    private CircuitRequirements Requirements() => new()
    {
        Source = Source.BehindResistance(Make.V(circuit.U.Value), Make.Milliohm(8)),
        Load = Load.ConstantCurrent(Make.A(Right.Amperes)),
        Feed = d.LengthOf(circuit.L.Value),
        Return = circuit.Chassis is null ? ReturnPath.Wire(d.LengthOf(circuit.L.Value)) : ReturnPath.Chassis(Make.Milliohm(circuit.Chassis.Value)),
        Place = new Place { Ambient = Make.Celsius(circuit.Place.Celsius), LoadedConductors = circuit.Place.Conductors },
        Insulation = InsulationMaterial.PolyvinylChloride,
    };

    private DesignRules Rules() => new(circuit.Table.Rules)
    {
        Name = "the rules of the statement",
        Conductors = circuit.Table.Rules.Conductors.Only("sizes of the statement", [.. circuit.Rows.Select(row => row.Size)]),
        Fuses = FuseSeries.RoadVehicleBlade,
        Ampacity = circuit.Table.Ampacity,
        DropLimit = DropLimit.Percent(circuit.Share.Value),
        FusePractice = new FusePractice { Loading = circuit.Loading.Value },
    };

    private static string Text(double value) => AnswerText.Digits(value, Figures);

    private static string Rated(double amperes) => AnswerText.Of((decimal)amperes, "A");
}
