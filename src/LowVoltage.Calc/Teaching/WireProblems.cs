using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <summary>Problems on the resistance of a wire and on its geometry.</summary>
internal static class WireProblems
{
    // Copper at 20 °C as tables print it, in Ω·mm²/m and in Ω·cmil/ft.
    private const decimal MetricResistivity = 0.0172m;
    private const decimal UsResistivity = 10.4m;

    private static readonly int[] StrandCounts = [7, 10, 12, 16, 19, 24, 26, 28, 30, 32, 37, 41, 42, 49, 50, 56, 65, 70, 80, 84, 96, 105, 133];

    internal static bool ResistanceOneStep(ProblemDraft d)
    {
        DrawnGiven rho = Resistivity(d);
        WireRow row = d.Random.Pick(WireRow.Sizes(d.Feet));
        DrawnGiven s = d.Feet
            ? d.Give("cross-section", "S", row.SquareMillimeters / CircularMil.SquareMillimeters, 3, "cmil")
            : d.Give("cross-section", "S", (decimal)row.Value, "mm²");
        DrawnGiven l = d.Give("length of the wire", "L", Rounding.Trimmed(2 * d.DrawDistance()), d.LengthUnit);
        d.Say($"{ProblemDraft.Upper(ProblemDraft.Article(l.ToString()))} {l} length of copper wire is cut from a reel for {d.DrawLoad().One} {d.In}. Its cross-section is {s}; the resistivity of copper is {rho} at {d.At20}.");
        double ohms = Of(d, rho.Value, l.Value, s.Value);
        d.Ask("What is the resistance of this length of wire?", d.Step("the resistance of the wire", "R", rho.Symbol * l.Symbol / s.Symbol, ohms, "Ω", BarReference, "Longer means more, thicker means less."));
        d.Wrong(Mistake.Inverted, rho.Value * s.Value / l.Value);
        d.Wrong(Mistake.PieceDoubled, 2 * ohms);
        d.Wrong(d.Feet ? Mistake.PiAdded : Mistake.AreaForDiameter, d.Feet ? Of(d, rho.Value, l.Value, s.Value * Math.PI / 4) : Of(d, rho.Value, l.Value, Math.PI / 4 * s.Value * s.Value));
        d.Wrong(Mistake.ThousandTooMuch, ohms * 1000);
        return ohms is > 0.002 and < 2;
    }

    internal static bool ResistanceSeveralSteps(ProblemDraft d)
    {
        DrawnGiven rho = Resistivity(d);
        DrawnGiven diameter = Diameter(d, d.Feet);
        DrawnGiven l = d.Give("distance, one way", "L", d.DrawDistance(), d.LengthUnit);
        LoadDraw load = d.DrawLoad();
        d.Say($"{d.Subject(load)} is {l} from the {d.World.Feeder} (one way). Two solid copper wires, each {diameter} in diameter, run out and back; the resistivity of copper is {rho} at {d.At20}.");
        d.Sketch(d.Feeder(), [ProblemDraft.Part(DiagramSymbol.Wire, l, $"diameter {diameter}")], [ProblemDraft.Part(load)], ProblemDraft.Part(DiagramSymbol.Wire, l, $"diameter {diameter}"));
        double s = d.Feet ? CircularMil.FromDiameter(Length.FromMils(diameter.Value)) : Conductor.SolidOfDiameter(Length.FromMillimeters(diameter.Value), ConductorMaterial.Copper).Area.SquareMillimeters;
        Symbol area = d.Feet
            ? d.Step("the cross-section in circular mils", "S", Formula.Square(diameter.Symbol), s, "cmil", null, "Circular mils are the square of the diameter in mils.")
            : d.Step("the cross-section", "S", ProblemDraft.Pi * Formula.Square(diameter.Symbol) / 4, s, "mm²", null, "The area of a circle.");
        Symbol loop = d.Step("the length of conductor", "L_s", 2 * l.Symbol, d.LengthUnit, null, "The current runs out and back.");
        double ohms = Of(d, rho.Value, 2 * l.Value, s);
        d.Ask("What is the resistance of both wires together, out and back?", d.Step("the resistance out and back", "R", rho.Symbol * loop / area, ohms, "Ω", BarReference, "Resistivity times length over section."));
        d.Wrong(Mistake.OneWayTakenForLoop, ohms / 2);
        d.Wrong(d.Feet ? Mistake.DiameterForCircularMils : Mistake.DiameterForArea, Of(d, rho.Value, 2 * l.Value, diameter.Value));
        d.Wrong(d.Feet ? Mistake.PiAdded : Mistake.RadiusForDiameter, d.Feet ? ohms / (Math.PI / 4) : ohms / 4);
        d.Wrong(d.Feet ? Mistake.DoubledTwice : Mistake.PiForgotten, d.Feet ? ohms * 2 : ohms * Math.PI / 4);
        double mm2 = d.Feet ? s * CircularMil.SquareMillimeters : s;
        return ohms is > 0.01 and < 5 && load.Amperes * ohms < 0.1 * load.Volts && load.Amperes / mm2 < 6;
    }

    internal static bool GeometryOneStep(ProblemDraft d)
    {
        if (d.Gauges)
        {
            DrawnGiven mils = Diameter(d, inMils: true);
            d.Say($"The solid wire to {d.DrawLoad().One} {d.In} measures {mils} across.");
            double cmil = CircularMil.FromDiameter(Length.FromMils(mils.Value));
            d.Ask("What is its cross-section in circular mils?", d.Step("the cross-section", "S", Formula.Square(mils.Symbol), cmil, "cmil", null, "Circular mils are the square of the diameter in mils."));
            d.Wrong(Mistake.PiAdded, cmil * Math.PI / 4);
            d.Wrong(Mistake.DiameterNotSquared, mils.Value);
            d.Wrong(Mistake.PiForCircularMils, cmil * Math.PI);
            d.Wrong(Mistake.ThousandTooMuch, cmil / 1000);
            return true;
        }

        DrawnGiven across = Diameter(d, inMils: false);
        d.Say($"The solid wire to {d.DrawLoad().One} {d.In} measures {across} across.");
        double area = Conductor.SolidOfDiameter(Length.FromMillimeters(across.Value), ConductorMaterial.Copper).Area.SquareMillimeters;
        d.Ask("What is its cross-section?", d.Step("the cross-section", "S", ProblemDraft.Pi * Formula.Square(across.Symbol) / 4, area, "mm²", null, "The area of a circle."));
        d.Wrong(Mistake.RadiusForDiameter, 4 * area);
        d.Wrong(Mistake.PiForgotten, across.Value * across.Value);
        d.Wrong(Mistake.DiameterNotSquared, Math.PI * across.Value / 4);
        d.Wrong(Mistake.DiameterForArea, across.Value);
        return true;
    }

    internal static bool GeometrySeveralSteps(ProblemDraft d) => d.Gauges ? Gauge(d) : Strands(d);

    private static bool Gauge(ProblemDraft d)
    {
        DrawnGiven count = d.Give("number of strands", "n", (decimal)d.Random.Pick(StrandCounts), "");
        DrawnGiven number = d.GiveGauge("gauge of a strand", "g", 24 + d.Random.Next(11));
        AwgSize size = AwgSize.FromNumber((int)number.Value);
        DrawnGiven least = d.Give("diameter of 36 AWG", "d_0", 5, "mil");
        d.Say($"The flexible copper wire to {d.DrawLoad().One} {d.In} has {count} strands of {number}. Gauge 36 measures {least} across, and 39 gauge steps are a factor of 92 in diameter, so d = d₀·92^((36 − g)/39).");
        Symbol across = d.Step("the diameter of a strand", "d", least.Symbol * Formula.Power(92, (36 - number.Symbol) / 39), size.Diameter.Mils, "mil", AwgSize.Reference, "The definition of the gauge.");
        Symbol strand = d.Step("the cross-section of a strand", "S_1", Formula.Square(across), size.CircularMils, "cmil", AwgSize.Reference, "Circular mils are the square of the diameter in mils.");
        double all = count.Value * size.CircularMils;
        d.Ask("What is the total cross-section of its copper in circular mils?", d.Step("the cross-section of the wire", "S", count.Symbol * strand, all, "cmil", null, "All strands carry current."));
        d.Wrong(Mistake.PiAdded, all * Math.PI / 4);
        d.Wrong(Mistake.DiameterNotSquared, count.Value * size.Diameter.Mils);
        d.Wrong(Mistake.PiForCircularMils, all * Math.PI);
        d.Wrong(Mistake.StrandsForgotten, size.CircularMils);
        d.Wrong(Mistake.StrandsSquared, count.Value * all);
        return all * CircularMil.SquareMillimeters is > 0.2 and < 20;
    }

    private static bool Strands(ProblemDraft d)
    {
        DrawnGiven count = d.Give("number of strands", "n", (decimal)d.Random.Pick(StrandCounts), "");
        DrawnGiven across = d.Feet ? d.Give("diameter of a strand", "d", d.Random.OnGrid(6m, 20m, 0.1m), "mil") : d.Give("diameter of a strand", "d", d.Random.OnGrid(0.1m, 0.5m, 0.01m), "mm");
        d.Say($"The flexible copper wire to {d.DrawLoad().One} {d.In} has {count} strands, each {across} across.{(d.Feet ? " (1 mil is 0.0254 mm.)" : "")}");
        Symbol thin = across.Symbol;
        double millimeters = across.Value;
        if (d.Feet)
        {
            millimeters = Length.FromMils(across.Value).Millimeters;
            thin = d.Step("the diameter in mm", "d_m", across.Symbol * 0.0254, millimeters, "mm", null, "A mil is a thousandth of an inch.");
        }

        double one = Conductor.SolidOfDiameter(Length.FromMillimeters(millimeters), ConductorMaterial.Copper).Area.SquareMillimeters;
        Symbol strand = d.Step("the cross-section of a strand", "S_1", ProblemDraft.Pi * Formula.Square(thin) / 4, one, "mm²", null, "The area of a circle.");
        Symbol all = d.Step("the cross-section of the wire", "S", count.Symbol * strand, "mm²", null, "All strands carry current.");
        d.Ask("What is the total cross-section of its copper?", all);
        d.Wrong(Mistake.StrandsForgotten, one);
        d.Wrong(Mistake.RadiusForDiameter, 4 * all.Value);
        d.Wrong(Mistake.PiForgotten, count.Value * millimeters * millimeters);
        d.Wrong(Mistake.StrandsSquared, count.Value * all.Value);
        return all.Value is > 0.2 and < 20;
    }

    private static References.Reference BarReference { get; } = new()
    {
        Title = "OpenStax University Physics, volume 2", Edition = "2016", Locator = "section 9.3, R = ρ·L/A", Kind = References.ReferenceKind.Handbook,
    };

    // As a micrometer shows it.
    private static DrawnGiven Diameter(ProblemDraft d, bool inMils) => inMils
        ? d.Give("diameter", "d", d.Random.OnGrid(20m, 130m, 0.1m), "mil")
        : d.Give("diameter", "d", d.Random.OnGrid(0.4m, 3.3m, 0.01m), "mm");

    private static DrawnGiven Resistivity(ProblemDraft d) => d.Feet
        ? d.Give("resistivity of copper at 20 °C", "ρ", UsResistivity, "Ω·cmil/ft")
        : d.Give("resistivity of copper at 20 °C", "ρ", MetricResistivity, "Ω·mm²/m");

    // Ω·cmil/ft is Ω times the area of a circular mil over a foot.
    private static double Of(ProblemDraft d, double rho, double length, double section)
    {
        Area area = d.Feet ? CircularMil.ToArea(section) : Make.Mm2(section);
        double ohmMm2PerMeter = d.Feet ? rho * CircularMil.SquareMillimeters / 0.3048 : rho;
        return VoltageDrop.ResistanceOf(Make.OhmMm2PerMeter(ohmMm2PerMeter), d.LengthOf(length), area).Ohms;
    }
}
