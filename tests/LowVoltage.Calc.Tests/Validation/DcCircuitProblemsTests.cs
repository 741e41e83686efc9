using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Worked examples and exercises of open textbooks (titles and sections stand in the file), each to the digits printed.</summary>
public class DcCircuitProblemsTests
{
    private static readonly IReadOnlyDictionary<string, PublishedProblem> Problems = PublishedProblem.Load("dc-circuits-problems.json");

    private static readonly Dictionary<string, Func<PublishedProblem, double>> Solutions = new(StringComparer.Ordinal)
    {
        ["dc-003"] = p => OhmsLaw.FromCurrentAndResistance(p.Amperes("I"), p.Ohms("R")).Voltage.Volts,
        ["dc-008"] = p => Watts(p.Volts("V"), p.Ohms("R")),
        ["dc-009"] = p => Amperes(p.Volts("V"), Series(p, "R1", "R2", "R3")),
        ["dc-012"] = p => Amperes(p.Volts("V"), Parallel(p, "R1", "R2", "R3")),
        ["dc-018"] = p => ResistorNetwork.DividedVoltage(p.Volts("V"), p.Ohms("R2"), p.Ohms("R1"), p.Ohms("R3")).Volts,
        ["dc-019"] = p => ResistorNetwork.DividedVoltage(p.Volts("V"), p.Ohms("R3"), p.Ohms("R1"), p.Ohms("R2")).Volts,
        ["dc-020"] = p => Amperes(p.Volts("V"), Parallel(p, "R1", "R2", "R3")),
        ["dc-024"] = p => ResistorNetwork.Series(Parallel(p, "R1", "R2"), Parallel(p, "R3", "R4")).Ohms,
        ["dc-026"] = p => ResistorNetwork.DividedVoltage(p.Volts("V"), Parallel(p, "R1", "R2"), Parallel(p, "R3", "R4")).Volts,
        ["dc-033"] = p => Behind(p.Volts("E"), p.Ohms("r"), p.Ohms("Rload")).Amperes,
        ["dc-038"] = p => OhmsLaw.FromVoltageAndCurrent(p.Volts("V"), p.Amperes("I")).Resistance.Ohms,
        ["dc-040"] = p => Amperes(p.Volts("V"), p.Ohms("R")),
        ["dc-043"] = p => Watts(p.Volts("V"), p.Ohms("R_cold")),
        ["dc-044"] = p => Amperes(p.Volts("V"), p.Ohms("R_cold")),
        ["dc-045"] = p => ElectricalEnergy.RunningTime(ElectricCharge.FromAmpereHours(p["capacity"]), p.Volts("V"), Power.FromWatts(p["P"])).Hours,
        ["dc-048"] = p => ResistorNetwork.DividedVoltage(p.Volts("V"), p.Ohms("R3"), p.Ohms("R1"), p.Ohms("R2")).Volts,
        ["dc-050"] = p => Watts(p.Volts("V"), Series(p, "R1", "R2", "R3")),
        ["dc-051"] = p => Parallel(p, "R1", "R2", "R3").Ohms,
        ["dc-057"] = p => (double)OhmsLaw.FromVoltageAndResistance(
            ResistorNetwork.DividedVoltage(p.Volts("V"), Parallel(p, "R2", "R3"), p.Ohms("R1")), p.Ohms("R2")).Power.Watts,
        ["dc-059"] = p => (double)OhmsLaw.FromVoltageAndResistance(
            ResistorNetwork.DividedVoltage(p.Volts("V"), p.Ohms("Rs"), Parallel(p, "Ra", "Rb", "Rc")), p.Ohms("Rs")).Power.Watts,
        ["dc-061"] = p => Watts(p.Volts("V"), ResistorNetwork.Series(Parallel(p, "Ra", "Rb", "Rc"), p.Ohms("Rs"))),
        ["dc-062"] = p => ResistorNetwork.Parallel([.. Enumerable.Repeat(p.Ohms("R"), (int)p["n"])]).Ohms,
        ["dc-064"] = p => Watts(p.Volts("V"), ResistorNetwork.Series(
            OhmsLaw.FromVoltageAndPower(p.Volts("V"), Power.FromWatts(p["P_lamp"])).Resistance,
            OhmsLaw.FromVoltageAndPower(p.Volts("V"), Power.FromWatts(p["P_starter"])).Resistance)),
        ["dc-066"] = p => Watts(p.Volts("V"), ResistorNetwork.Parallel(p.Ohms("R"), p.Ohms("R"))),
        ["dc-072"] = p => InternalResistance.FromCharge(p.Volts("E"), p.Volts("V_terminal"), p.Amperes("I_charge")).Ohms,
        ["dc-076"] = p => Behind(p.Volts("E"), p.Ohms("r"), p.Ohms("R_motor")).Volts,
        ["dc-079"] = p => Behind(p.Volts("E"), ResistorNetwork.Series(p.Ohms("r"), p.Ohms("R_connections")), p.Ohms("R_motor")).Volts,
        ["dc-086"] = p => OhmsLaw.FromVoltageAndCurrent(p.Volts("V"), p.Amperes("I")).Resistance.Ohms,
        ["dc-088"] = p => Amperes(p.Volts("V"), p.Ohms("R_nominal") * (1 + (p["tolerance"] / 100))),
        ["dc-089"] = p => (double)OhmsLaw.FromVoltageAndCurrent(p.Volts("V"), p.Amperes("I")).Power.Watts,
        ["dc-094"] = p => ElectricalEnergy.FromPower(
            OhmsLaw.FromVoltageAndCurrent(p.Volts("V"), p.Amperes("I")).Power, Duration.FromSeconds(p["t"])).Joules,
        // "four 20 ohm and one 10 ohm in series"
        ["dc-099"] = p => Watts(p.Volts("V"), ResistorNetwork.Series([.. new double[] { 20, 20, 20, 20, 10 }.Select(r => ElectricResistance.FromOhms(r))])),
        ["dc-101"] = p => Watts(p.Volts("V"), Parallel(p, "R1", "R2", "R3")),
        ["dc-103"] = p => (double)OhmsLaw.FromVoltageAndResistance(
            ResistorNetwork.DividedVoltage(p.Volts("V"), p.Ohms("R1"), p.Ohms("R2"), p.Ohms("R3")), p.Ohms("R1")).Power.Watts,
        ["dc-105"] = p => ResistorNetwork.DividedCurrent(Ladder(p).Current, p.Ohms("R2"), p.Ohms("R1")).Amperes,
        ["dc-106"] = p => (double)OhmsLaw.FromCurrentAndResistance(
            ResistorNetwork.DividedCurrent(Ladder(p).Current, p.Ohms("R3"), p.Ohms("R4")), p.Ohms("R3")).Power.Watts,
        ["dc-107"] = p => (double)Ladder(p).Power.Watts,
        ["dc-112"] = p => OpposingSources.Solve(p.Volts("V2"), p.Volts("V1_opposing"), Series(p, "R1", "R2", "R3")).Current.Amperes,
        ["dc-113"] = p => (double)OpposingSources.Solve(p.Volts("V2"), p.Volts("V1_opposing"), Series(p, "R1", "R2", "R3")).TakenBySecond.Watts,
        // Three cells of 1.58 V, 0.0200 ohm and one of 1.53 V (stated as text in the file).
        ["dc-116"] = p => ResistorNetwork.UnknownSeriesPart(
            OhmsLaw.FromVoltageAndCurrent(
                ElectricPotential.FromVolts((3 * 1.58) + 1.53),
                OhmsLaw.FromResistanceAndPower(p.Ohms("Rload"), Power.FromWatts(p["P_load"])).Current).Resistance,
            p.Ohms("Rload"),
            ElectricResistance.FromOhms(3 * 0.02)).Ohms,
        ["dc-121"] = p => ResistorNetwork.Shunt(p.Ohms("R_meter"), p.Amperes("I_fs"), p.Amperes("I_range")).Ohms,
        ["dc-124"] = p => ResistorNetwork.Series(
            p.Ohms("R1"),
            ResistorNetwork.Parallel(Series(p, "R2", "R3"), ResistorNetwork.Series(Parallel(p, "R4", "R5"), p.Ohms("R6")))).Ohms,
        // (10||10 + 10) || (10 + 10), all 10 ohm
        ["dc-126"] = _ => ResistorNetwork.Parallel(
            ResistorNetwork.Series(ResistorNetwork.Parallel(Ten, Ten), Ten), ResistorNetwork.Series(Ten, Ten)).Ohms,
        ["dc-129"] = p => Watts(p.Volts("V"), p.Ohms("R")),
        ["dc-130"] = p => ResistorNetwork.UnknownSeriesPart(p.Ohms("Rt"), p.Ohms("R1"), p.Ohms("R2"), p.Ohms("R4")).Ohms,
        ["dc-141"] = p => 100 * ((Behind(p.Volts("E"), p.Ohms("r"), p.Ohms("R_to")).Volts / Behind(p.Volts("E"), p.Ohms("r"), p.Ohms("R_from")).Volts) - 1),
    };

    public static TheoryData<string> Ids => [.. Problems.Keys];

    private static ElectricResistance Ten => ElectricResistance.FromOhms(10);

    [Theory, MemberData(nameof(Ids))]
    public void Solve_EveryPublishedProblem_GivesThePrintedAnswer(string id)
    {
        PublishedProblem problem = Problems[id];
        double answer = Solutions[id](problem);
        // Binary rounding of exact data: a part in 1e12 beside the printed digits.
        Assert.InRange(answer, problem.Answer - problem.Tolerance - (1e-12 * Math.Abs(problem.Answer)), problem.Answer + problem.Tolerance + (1e-12 * Math.Abs(problem.Answer)));
    }

    [Fact]
    public void File_HasAllProblemsAndNoneSuspect()
    {
        Assert.Equal(46, Problems.Count);
        Assert.DoesNotContain(Problems.Values, p => p.Suspect);
    }

    private static double Amperes(ElectricPotential voltage, ElectricResistance resistance) =>
        OhmsLaw.FromVoltageAndResistance(voltage, resistance).Current.Amperes;

    private static double Watts(ElectricPotential voltage, ElectricResistance resistance) =>
        (double)OhmsLaw.FromVoltageAndResistance(voltage, resistance).Power.Watts;

    private static ElectricResistance Series(PublishedProblem p, params string[] names) => ResistorNetwork.Series([.. names.Select(p.Ohms)]);

    private static ElectricResistance Parallel(PublishedProblem p, params string[] names) => ResistorNetwork.Parallel([.. names.Select(p.Ohms)]);

    private static OhmsLawPoint Ladder(PublishedProblem p) => OhmsLaw.FromVoltageAndResistance(p.Volts("E"), ResistorNetwork.Series(
        p.Ohms("r"), Parallel(p, "R1", "R2"), Parallel(p, "R3", "R4"), p.Ohms("R5")));

    // A source behind its resistance into a load, through the operating point: a path of no resistance stands between them.
    private static (double Amperes, double Volts) Behind(ElectricPotential open, ElectricResistance inner, ElectricResistance load)
    {
        OperatingPoint point = OperatingPoint.Solve(
            Source.BehindResistance(open, inner), Paths.Negligible, Load.Resistance(load), ConductorTemperature.At(Temperature.FromDegreesCelsius(20)));
        return (point.Current.Amperes, point.VoltageAtLoad.Volts);
    }
}
