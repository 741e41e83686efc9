using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Published problems on drop, loss and size (titles and sections stand in the file), each to the digits printed.</summary>
public class WireCircuitProblemsTests
{
    // 1 cmil is the area of a circle of 1 mil: π/4·(25.4 µm)².
    private const double SquareMillimetersPerCircularMil = Math.PI / 4 * 0.0254 * 0.0254;

    private static readonly IReadOnlyDictionary<string, PublishedProblem> Problems = PublishedProblem.Load("wire-problems-circuits.json");

    private static readonly Dictionary<string, Func<PublishedProblem, double>> Solutions = new(StringComparer.Ordinal)
    {
        ["wire-001"] = p => VoltageDrop.GreatestResistance(p.Amperes("I"), p.Volts("V_source") - p.Volts("V_load_min")).Ohms / 2,
        ["wire-003"] = FirstGauge,
        ["wire-010"] = p => OperatingPoint.Solve(
            Source.Ideal(p.Volts("V")), Paths.Of(2 * p["R_wire_each_20C"]), Load.Resistance(p.Ohms("R_load")), Paths.At(20)).Current.Amperes,
        // AWG 0, 42.40 mm² in the text.
        ["wire-074"] = p => (double)VoltageDrop.Lost(p.Amperes("I"), VoltageDrop.ResistanceOf(
            OhmMeters(p["rho"]), Length.FromKilometers(p["length"]), Area.FromSquareMillimeters(42.40))).Watts,
        // AWG 0, 8.252 mm in the text; two conductors.
        ["wire-084"] = p => VoltageDrop.LostShare(
            p.Amperes("I"),
            VoltageDrop.ResistanceOf(OhmMeters(p["rho"]), Length.FromKilometers(2 * p["length_one_way"]), Area.FromSquareMillimeters(Math.PI / 4 * 8.252 * 8.252)),
            p.Volts("V_source")).Percent,
        ["wire-091"] = p => (double)VoltageDrop.Lost(p.Amperes("I"), p.Ohms("R_cord")).Watts,
        ["wire-099"] = MotorPower,
        ["wire-100"] = p => (double)OhmsLaw.FromVoltageAndResistance(AtLoads(p), Bulb(p)).Power.Watts,
        ["wire-105"] = Drop,
        ["wire-108"] = Drop,
        ["wire-109"] = Drop,
        ["wire-114"] = Run,
        ["wire-117"] = Run,
        ["wire-138"] = p => TappedRun.Create(LinearResistance.FromOhmsPerKilometer(p["r_loop"]), default, [.. Taps([500, 500, 600, 400], [100, 150, 200, 50])])
            .FedAtOneEnd(p.Volts("V_feed")).Points[3].Voltage.Volts,
        ["wire-139"] = p => TappedRun.LeastArea(OhmMeters(p["rho"]), p.Volts("dV_max"), [.. FromSectionCurrents([40, 60, 50, 100], [220, 190, 150, 50])]).SquareCentimeters,
        ["wire-144"] = p =>
        {
            LinearResistance wire = LinearResistance.FromOhmsPerMeter(VoltageDrop.ResistanceOf(
                ElectricResistivity.FromOhmsCentimeter(p["rho"]), Length.FromMeters(1), Area.FromSquareCentimeters(p["area"])).Ohms);
            return TappedRun.Create(wire, wire, [.. FromSectionCurrents([75, 100, 50], [47, 35, 20])]).FedAtOneEnd(p.Volts("V_feed")).Lowest.Voltage.Volts;
        },
        ["wire-147"] = p => UniformRun.LeastArea(
            ElectricResistivity.FromOhmsCentimeter(p["rho"]), Length.FromMeters(p["length"]), ElectricCurrent.FromAmperes(p["load"] * p["length"]), p.Volts("dV_max")).SquareCentimeters,
        ["wire-150"] = p => Even(p).VoltageAt(p.Volts("V_feed"), Length.FromMeters(200)).Volts,
        ["wire-151"] = p => (double)Even(p).FedAtOneEnd(p.Volts("V_feed")).Loss.Watts,
        ["wire-162"] = p => SharedNeutral.Solve(p.Volts("V_each_side"), p.Amperes("I_pos"), p.Amperes("I_neg"), p.Ohms("R_outer"), p.Ohms("R_neutral")).NegativeVoltage.Volts,
        ["wire-166"] = p => SharedNeutral.Broken(
            p.Volts("V_each_side"),
            OhmsLaw.FromVoltageAndPower(p.Volts("V_each_side"), Power.FromKilowatts(p["P_pos"])).Resistance,
            OhmsLaw.FromVoltageAndPower(p.Volts("V_each_side"), Power.FromKilowatts(p["P_neg"])).Resistance).NegativeVoltage.Volts,
        ["wire-173"] = p => VoltageDrop.LeastArea(OhmMeters(p["rho"]), Length.FromMeters(p["length"]), p.Ohms("R")).SquareMillimeters,
    };

    public static TheoryData<string> Ids => [.. Problems.Keys];

    [Theory, MemberData(nameof(Ids))]
    public void Solve_EveryPublishedProblem_GivesThePrintedAnswer(string id)
    {
        PublishedProblem problem = Problems[id];
        double answer = Solutions[id](problem), play = problem.Tolerance + (1e-12 * Math.Abs(problem.Answer));
        Assert.InRange(answer, problem.Answer - play, problem.Answer + play);
    }

    [Fact]
    public void File_HasAllProblemsAndNoneSuspect()
    {
        Assert.Equal(22, Problems.Count);
        Assert.DoesNotContain(Problems.Values, p => p.Suspect);
    }

    private static ElectricResistivity OhmMeters(double value) => ElectricResistivity.FromOhmMeters(value);

    private static double Drop(PublishedProblem p) =>
        VoltageDrop.Along(PerFoot(p), Length.FromFeet(p["length"]), p.Amperes("I")).Volts;

    private static double Run(PublishedProblem p) =>
        VoltageDrop.GreatestRun(PerFoot(p), p.Amperes("I"), p.Volts("V_drop_allowed")).Feet;

    private static LinearResistance PerFoot(PublishedProblem p) => LinearResistance.FromOhmsPerThousandFeet(1000 * p["R_per_ft"]);

    // "AWG 1/0 = 105500 cmil, 2/0 = 133100 cmil" in the text.
    private static double FirstGauge(PublishedProblem p)
    {
        ElectricResistivity resistivity = OhmMeters(p["rho"] * SquareMillimetersPerCircularMil * 1e-6 / 0.3048);
        double least = VoltageDrop.LeastArea(
            resistivity, Length.FromFeet(2 * p["length_one_way"]), p.Amperes("I"), p.Volts("V_source") - p.Volts("V_load_min"))
            .SquareMillimeters / SquareMillimetersPerCircularMil;
        // The text prints the size it needs too: 116 035 cmil.
        Assert.Equal(116035, least, 0.5);
        return new double[] { 105500, 133100 }.First(area => area >= least);
    }

    private static ElectricResistance Bulb(PublishedProblem p) =>
        OhmsLaw.FromVoltageAndPower(p.Volts("V_source"), Power.FromWatts(75)).Resistance;

    // The bulb and the motor draw 15 A together through the wires that they share.
    private static ElectricPotential AtLoads(PublishedProblem p) => OperatingPoint.Solve(
        Source.Ideal(p.Volts("V_source")), Paths.Of(p["R_wire"]), Load.ConstantCurrent(p.Amperes("I_total")), Paths.At(20)).VoltageAtLoad;

    private static double MotorPower(PublishedProblem p) =>
        (AtLoads(p).Volts * p["I_total"]) - (double)OhmsLaw.FromVoltageAndResistance(AtLoads(p), Bulb(p)).Power.Watts;

    private static UniformRun Even(PublishedProblem p) => UniformRun.Create(
        LinearResistance.FromOhmsPerMeter(p["r_loop"]), default, Length.FromMeters(p["length"]), ElectricCurrent.FromAmperes(p["load"] * p["length"]));

    private static IEnumerable<Tap> Taps(double[] meters, double[] amperes) =>
        meters.Zip(amperes, (m, a) => Tap.Create(Length.FromMeters(m), ElectricCurrent.FromAmperes(a)));

    private static IEnumerable<Tap> FromSectionCurrents(double[] meters, double[] amperes) =>
        Taps(meters, [.. amperes.Select((a, i) => i + 1 < amperes.Length ? a - amperes[i + 1] : a)]);
}
