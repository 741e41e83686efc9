using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Tests.Working;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>
/// Published problems put through the explanations: the number that the last step shows is the printed answer to the digits of both. Statements and sources
/// stand in the three files; what leads to the last step is the same as in the tests that solve them.
/// </summary>
public class ExplainedProblemsTests
{
    private const double FeetPerMeter = 1 / 0.3048;

    private static readonly Temperature Twenty = Temperature.FromDegreesCelsius(20), Zero = Temperature.FromDegreesCelsius(0);

    private static readonly Dictionary<string, PublishedProblem> Problems = new[] { "dc-circuits-problems.json", "wire-problems.json", "wire-problems-circuits.json" }
        .SelectMany(PublishedProblem.Load).GroupBy(p => p.Key, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.Last().Value, StringComparer.Ordinal);

    // Factor: from the unit shown to the unit printed.
    private static readonly Dictionary<string, Func<PublishedProblem, (WorkedSolution Solution, double Factor)>> Explanations = new(StringComparer.Ordinal)
    {
        ["dc-003"] = p => One(OhmsLaw.FromCurrentAndResistance(p.Amperes("I"), p.Ohms("R")).Explain(OhmsLawQuantity.Voltage)),
        ["dc-008"] = p => Watts(p.Volts("V"), p.Ohms("R")),
        ["dc-009"] = p => Amperes(p.Volts("V"), Series(p, "R1", "R2", "R3")),
        ["dc-012"] = p => Amperes(p.Volts("V"), Parallel(p, "R1", "R2", "R3")),
        ["dc-018"] = p => One(ResistorNetwork.ExplainDividedVoltage(p.Volts("V"), p.Ohms("R2"), p.Ohms("R1"), p.Ohms("R3"))),
        ["dc-019"] = p => One(ResistorNetwork.ExplainDividedVoltage(p.Volts("V"), p.Ohms("R3"), p.Ohms("R1"), p.Ohms("R2"))),
        ["dc-020"] = p => Amperes(p.Volts("V"), Parallel(p, "R1", "R2", "R3")),
        ["dc-024"] = p => One(ResistorNetwork.ExplainSeries(Parallel(p, "R1", "R2"), Parallel(p, "R3", "R4"))),
        ["dc-026"] = p => One(ResistorNetwork.ExplainDividedVoltage(p.Volts("V"), Parallel(p, "R1", "R2"), Parallel(p, "R3", "R4"))),
        ["dc-033"] = p => Amperes(p.Volts("E"), ResistorNetwork.Series(p.Ohms("r"), p.Ohms("Rload"))),
        ["dc-038"] = p => One(OhmsLaw.FromVoltageAndCurrent(p.Volts("V"), p.Amperes("I")).Explain(OhmsLawQuantity.Resistance)),
        ["dc-040"] = p => Amperes(p.Volts("V"), p.Ohms("R")),
        ["dc-043"] = p => Watts(p.Volts("V"), p.Ohms("R_cold")),
        ["dc-044"] = p => Amperes(p.Volts("V"), p.Ohms("R_cold")),
        ["dc-045"] = p => One(ElectricalEnergy.ExplainRunningTime(ElectricCharge.FromAmpereHours(p["capacity"]), p.Volts("V"), Power.FromWatts(p["P"]))),
        ["dc-048"] = p => One(ResistorNetwork.ExplainDividedVoltage(p.Volts("V"), p.Ohms("R3"), p.Ohms("R1"), p.Ohms("R2"))),
        ["dc-050"] = p => Watts(p.Volts("V"), Series(p, "R1", "R2", "R3")),
        ["dc-051"] = p => One(ResistorNetwork.ExplainParallel(p.Ohms("R1"), p.Ohms("R2"), p.Ohms("R3"))),
        ["dc-057"] = p => Watts(ResistorNetwork.DividedVoltage(p.Volts("V"), Parallel(p, "R2", "R3"), p.Ohms("R1")), p.Ohms("R2")),
        ["dc-059"] = p => Watts(ResistorNetwork.DividedVoltage(p.Volts("V"), p.Ohms("Rs"), Parallel(p, "Ra", "Rb", "Rc")), p.Ohms("Rs")),
        ["dc-061"] = p => Watts(p.Volts("V"), ResistorNetwork.Series(Parallel(p, "Ra", "Rb", "Rc"), p.Ohms("Rs"))),
        ["dc-062"] = p => One(ResistorNetwork.ExplainParallel([.. Enumerable.Repeat(p.Ohms("R"), (int)p["n"])])),
        ["dc-064"] = p => Watts(p.Volts("V"), ResistorNetwork.Series(
            OhmsLaw.FromVoltageAndPower(p.Volts("V"), Power.FromWatts(p["P_lamp"])).Resistance,
            OhmsLaw.FromVoltageAndPower(p.Volts("V"), Power.FromWatts(p["P_starter"])).Resistance)),
        ["dc-066"] = p => Watts(p.Volts("V"), ResistorNetwork.Parallel(p.Ohms("R"), p.Ohms("R"))),
        ["dc-072"] = p => One(InternalResistance.ExplainFromCharge(p.Volts("E"), p.Volts("V_terminal"), p.Amperes("I_charge"))),
        ["dc-076"] = p => Behind(p.Volts("E"), p.Ohms("r"), p.Ohms("R_motor")),
        ["dc-079"] = p => Behind(p.Volts("E"), ResistorNetwork.Series(p.Ohms("r"), p.Ohms("R_connections")), p.Ohms("R_motor")),
        ["dc-086"] = p => One(OhmsLaw.FromVoltageAndCurrent(p.Volts("V"), p.Amperes("I")).Explain(OhmsLawQuantity.Resistance)),
        ["dc-088"] = p => Amperes(p.Volts("V"), p.Ohms("R_nominal") * (1 + (p["tolerance"] / 100))),
        ["dc-089"] = p => One(OhmsLaw.FromVoltageAndCurrent(p.Volts("V"), p.Amperes("I")).Explain(OhmsLawQuantity.Power)),
        // Watt-hours last; the text has joules.
        ["dc-094"] = p => (ElectricalEnergy.ExplainFromPower(
            OhmsLaw.FromVoltageAndCurrent(p.Volts("V"), p.Amperes("I")).Power, Duration.FromSeconds(p["t"])), 3600),
        // "four 20 ohm and one 10 ohm in series"
        ["dc-099"] = p => Watts(p.Volts("V"), ResistorNetwork.Series([.. new double[] { 20, 20, 20, 20, 10 }.Select(r => ElectricResistance.FromOhms(r))])),
        ["dc-101"] = p => Watts(p.Volts("V"), Parallel(p, "R1", "R2", "R3")),
        ["dc-103"] = p => Watts(ResistorNetwork.DividedVoltage(p.Volts("V"), p.Ohms("R1"), p.Ohms("R2"), p.Ohms("R3")), p.Ohms("R1")),
        ["dc-105"] = p => One(ResistorNetwork.ExplainDividedCurrent(Ladder(p).Current, p.Ohms("R2"), p.Ohms("R1"))),
        ["dc-106"] = p => One(OhmsLaw.FromCurrentAndResistance(
            ResistorNetwork.DividedCurrent(Ladder(p).Current, p.Ohms("R3"), p.Ohms("R4")), p.Ohms("R3")).Explain(OhmsLawQuantity.Power)),
        ["dc-107"] = p => One(Ladder(p).Explain(OhmsLawQuantity.Power)),
        ["dc-113"] = p => One(OpposingSources.Solve(p.Volts("V2"), p.Volts("V1_opposing"), Series(p, "R1", "R2", "R3")).Explain()),
        // Three cells of 1.58 V, 0.0200 ohm and one of 1.53 V (stated as text in the file).
        ["dc-116"] = p => One(ResistorNetwork.ExplainUnknownSeriesPart(
            OhmsLaw.FromVoltageAndCurrent(
                ElectricPotential.FromVolts((3 * 1.58) + 1.53),
                OhmsLaw.FromResistanceAndPower(p.Ohms("Rload"), Power.FromWatts(p["P_load"])).Current).Resistance,
            p.Ohms("Rload"),
            ElectricResistance.FromOhms(3 * 0.02))),
        ["dc-121"] = p => One(ResistorNetwork.ExplainShunt(p.Ohms("R_meter"), p.Amperes("I_fs"), p.Amperes("I_range"))),
        ["dc-124"] = p => One(ResistorNetwork.ExplainSeries(
            p.Ohms("R1"),
            ResistorNetwork.Parallel(Series(p, "R2", "R3"), ResistorNetwork.Series(Parallel(p, "R4", "R5"), p.Ohms("R6"))))),
        // (10||10 + 10) || (10 + 10), all 10 ohm
        ["dc-126"] = _ => One(ResistorNetwork.ExplainParallel(ResistorNetwork.Series(ResistorNetwork.Parallel(Ten, Ten), Ten), ResistorNetwork.Series(Ten, Ten))),
        ["dc-129"] = p => Watts(p.Volts("V"), p.Ohms("R")),
        ["dc-130"] = p => One(ResistorNetwork.ExplainUnknownSeriesPart(p.Ohms("Rt"), p.Ohms("R1"), p.Ohms("R2"), p.Ohms("R4"))),

        ["wire-005"] = p => (Bar(CmilFoot(p["rho"]), Length.FromFeet(2 * p["length_one_way"]), CircularMil.ToArea(4107)), 1),
        ["wire-006"] = p => Amperes(ElectricPotential.FromVolts(p["V_source"]), 2 * BarResistance.Resistance(Ohm(CmilFoot(p["rho"])), Length.FromFeet(p["length_one_way"]), CircularMil.ToArea(4107))),
        ["wire-007"] = p => One(Bar(p["rho"] / 100, Length.FromCentimeters(p["length"]), Area.FromSquareCentimeters(p["width"] * p["thickness"]))),
        ["wire-009"] = p => One(Corrected(p, "R_ref", "T_ref")),
        ["wire-015"] = p => One(ResistorNetwork.ExplainDividedVoltage(
            p.Volts("V"), p.Ohms("R_load"), 2 * TemperatureCorrection.ResistanceAt(p.Ohms("R_wire_each_20C"), Twenty, Celsius(p, "T"), p["alpha"], Twenty))),
        ["wire-018"] = p => One(CircularMil.ExplainSquareMilsOf(Conductor.SolidOfDiameter(Length.FromMils(p["diameter"]), ConductorMaterial.Copper).Area)),
        ["wire-022"] = p => One(CircularMil.ExplainSquareMilsOf(Conductor.SolidOfDiameter(Length.FromMils(p["diameter"]), ConductorMaterial.Copper).Area)),
        ["wire-029"] = p => One(Awg(p).Explain()),
        ["wire-032"] = p => (Awg(p).ExplainDiameter(), 1 / 25.4),
        ["wire-036"] = p => (Awg(p).ExplainDiameter(), 1 / 25.4),
        ["wire-038"] = p => (Awg(p).ExplainDiameter(), 1 / 25.4),
        ["wire-035"] = p => One(Awg(p).Explain()),
        ["wire-037"] = p => One(Awg(p).Explain()),
        ["wire-045"] = p => One(Awg(p).Explain()),
        ["wire-047"] = Pounds,
        ["wire-049"] = Pounds,
        ["wire-050"] = Pounds,
        ["wire-053"] = p => One(Bar(p["rho"], Length.FromMeters(p["length"]), AwgSize.Parse("12").Area)),
        ["wire-054"] = p => One(BarResistance.ExplainFieldStrength(Ohm(p["rho"]), p.Amperes("I"), AwgSize.Parse("12").Area)),
        ["wire-055"] = p => One(Bar(p["rho"], Length.FromMeters(p["length"]), AwgSize.Parse("12").Area)),
        ["wire-056"] = p => One(Bar(p["rho"], Length.FromMeters(p["length"]), AwgSize.Parse("12").Area)),
        // A/mm² shown, A/m² in the text.
        ["wire-058"] = p => (Conductor.Solid(AwgSize.Parse("AWG 10"), ConductorMaterial.Copper).ExplainCurrentDensity(p.Amperes("I")), 1e6),
        ["wire-061"] = p => (BarResistance.ExplainAreaFor(Ohm(p["rho"]), Length.FromCentimeters(p["length"]), p.Ohms("R")), 1e-6),
        ["wire-067"] = p => One(Conductor.SolidOfDiameter(Length.FromMillimeters(p["diameter"]), ProblemMetal.Of(p["rho"], p["alpha"])).ExplainResistance(Length.FromMeters(p["length"]), Twenty)),
        ["wire-070"] = p => One(TemperatureCorrection.ExplainTemperatureOfEqualResistance(
            p.Ohms("R_Cu_20C"), p["alpha_Cu"], p.Ohms("R_Fe_20C"), p["alpha_Fe"], Twenty)),
        ["wire-072"] = p => Amperes(p.Volts("V"), TemperatureCorrection.ResistanceAt(p.Ohms("R_ref"), Celsius(p, "T_ref"), Celsius(p, "T"), p["alpha"], Celsius(p, "T_ref"))),
        ["wire-075"] = p => (BarResistance.ExplainResistivity(p.Ohms("R"), Length.FromMeters(p["length"]), AwgSize.Parse("5").Area), 1e-6),
        ["wire-081"] = p => One(Conductor.OfArea(Area.FromSquareMillimeters(p["area"]), ProblemMetal.Of(p["rho_20C"], p["alpha"])).ExplainResistance(Length.FromMillimeters(p["length"]), Celsius(p, "T"))),
        ["wire-082"] = p => One(Bar(p["rho"], Length.FromKilometers(2 * p["length_one_way"]), AwgSize.Parse("0").Area)),
        ["wire-086"] = p => One(BarResistance.ExplainLengthFor(Ohm(p["rho"]), AwgSize.Parse("14").Area, ElectricResistance.FromOhms(p["V"] * p["V"] / p["P"]))),
        ["wire-095"] = p => One(TemperatureCorrection.ExplainTemperatureFrom(
            ElectricResistance.FromOhms(100), Celsius(p, "T_ref"), ElectricResistance.FromOhms(99), p["alpha"], Twenty)),
        ["wire-121"] = p => One(CircularMil.ExplainFromArea(Conductor.StrandedFrom((int)p["strands"], Length.FromMils(p["strand_diameter"]), ConductorMaterial.Copper).Area)),
        ["wire-126"] = p => One(CircularMil.ExplainSquareMilsOf(CircularMil.ToArea(p["area"]))),
        ["wire-127"] = _ => One(CircularMil.ExplainSquareMilsOf(Area.FromSquareInches(1.5 * 0.25))),
        ["wire-128"] = _ => One(CircularMil.ExplainFromArea(Area.FromSquareInches(1.5 * 0.25))),
        ["wire-132"] = p => One(Bar(CmilFoot(p["K"]), Length.FromFeet(2 * p["length_one_way"]), CircularMil.ToArea(p["area"]))),
        ["wire-172"] = p => One(Bar(p["rho"], Length.FromMeters(p["length"]), Area.FromSquareMillimeters(p["area"]))),
        ["wire-177"] = p => One(Bar(p["rho"], Length.FromMeters(p["length"]), Conductor.SolidOfDiameter(Length.FromMillimeters(p["diameter"]), ConductorMaterial.Copper).Area)),
        ["wire-187"] = p => One(TemperatureCorrection.ExplainResistanceAt(p.Ohms("R1"), Celsius(p, "T1"), Celsius(p, "T2"), p["alpha0"], Zero)),
        ["wire-190"] = p => One(TemperatureCorrection.ExplainResistanceAt(p.Ohms("R0"), Zero, Celsius(p, "T2"), p["alpha0"], Zero)),
        ["wire-193"] = p => One(TemperatureCorrection.ExplainTemperatureFrom(
            ElectricResistance.FromOhms(p["V"] / p["I1"]), Celsius(p, "T1"), ElectricResistance.FromOhms(p["V"] / p["I2"]), p["alpha0"], Zero)),

        ["wire-001"] = p => (VoltageDrop.ExplainGreatestResistance(p.Amperes("I"), p.Volts("V_source") - p.Volts("V_load_min")), 0.5),
        ["wire-010"] = p => Amperes(p.Volts("V"), ResistorNetwork.Series(p.Ohms("R_load"), p.Ohms("R_wire_each_20C"), p.Ohms("R_wire_each_20C"))),
        // AWG 0, 42.40 mm² in the text.
        ["wire-074"] = p => One(VoltageDrop.ExplainLost(p.Amperes("I"), VoltageDrop.ResistanceOf(
            Ohm(p["rho"]), Length.FromKilometers(p["length"]), Area.FromSquareMillimeters(42.40)))),
        // AWG 0, 8.252 mm in the text; two conductors.
        ["wire-084"] = p => One(VoltageDrop.ExplainLostShare(
            p.Amperes("I"),
            VoltageDrop.ResistanceOf(Ohm(p["rho"]), Length.FromKilometers(2 * p["length_one_way"]), Area.FromSquareMillimeters(Math.PI / 4 * 8.252 * 8.252)),
            p.Volts("V_source"))),
        ["wire-091"] = p => One(VoltageDrop.ExplainLost(p.Amperes("I"), p.Ohms("R_cord"))),
        ["wire-105"] = Drop,
        ["wire-108"] = Drop,
        ["wire-109"] = Drop,
        ["wire-114"] = Run,
        ["wire-117"] = Run,
        ["wire-173"] = p => One(VoltageDrop.ExplainLeastArea(Ohm(p["rho"]), Length.FromMeters(p["length"]), p.Ohms("R"))),
        ["wire-100"] = p => Watts(
            OperatingPoint.Solve(Source.Ideal(p.Volts("V_source")), Paths.Of(p["R_wire"]), Load.ConstantCurrent(p.Amperes("I_total")), Paths.At(20)).VoltageAtLoad,
            OhmsLaw.FromVoltageAndPower(p.Volts("V_source"), Power.FromWatts(75)).Resistance),
        ["wire-118"] = p => One(VoltageDrop.ExplainGreatestRun(
            Calc.Quantities.LinearResistance.FromOhmsPerMeter(TemperatureCorrection.ResistanceAt(ElectricResistance.FromOhms(1), Twenty, Celsius(p, "T2"), ConductorMaterial.Copper).Ohms),
            ElectricCurrent.FromAmperes(1),
            ElectricPotential.FromVolts(p["L1"]))),
        ["dc-112"] = p => Amperes(p.Volts("V2") - p.Volts("V1_opposing"), Series(p, "R1", "R2", "R3")),
        ["wire-191"] = p => (OhmsLaw.FromVoltageAndResistance(
            ElectricPotential.FromVolts(p["R0"]), TemperatureCorrection.ResistanceAt(p.Ohms("R0"), Zero, Celsius(p, "T2"), p["alpha0"], Zero)).Explain(OhmsLawQuantity.Current), 100),
    };

    // Printed answers that do not reproduce: what the problem's own data give by hand, and why the print differs.
    private static readonly Dictionary<string, double> Misprinted = new(StringComparer.Ordinal)
    {
        // V²/P = 40.33 Ω; the text rounds it to 40 Ω and gets 83 m. By hand: 40.333 Ω · 2.081 mm²/1e-6 Ω·m = 83.9 m.
        ["wire-086"] = 83.9,
        // 250 V/4 A is 62.5 Ω; the print took 62. By hand: (62.5/50 · (1 + 0.0038 · 15) − 1)/0.0038 = 84.54 °C.
        ["wire-193"] = 84.54,
    };

    public static TheoryData<string> Ids => [.. Explanations.Keys];

    [Theory, MemberData(nameof(Ids))]
    public void LastStep_OfEveryExplanation_ShowsThePrintedAnswer(string id)
    {
        PublishedProblem problem = Problems[id];
        (WorkedSolution solution, double factor) = Explanations[id](problem);
        SolutionStep last = solution.Steps[^1];
        double shown = last.Shown!.Value * factor;
        // Half a unit of the last digit shown, and all of it where a limit is rounded to the safe side; the print has its own tolerance.
        double digit = PlainMath.LastOfFour(last.Shown.Value) * factor * (last.Rounding == RoundingDirection.Nearest ? 0.5 : 1);
        if (problem.Suspect)
        {
            Assert.Equal(Misprinted[id], shown, 0.05 + digit);
            Assert.True(Math.Abs(shown - problem.Answer) > problem.Tolerance + digit);
        }
        else
        {
            Assert.Equal(problem.Answer, shown, problem.Tolerance + (digit * (1 + 1e-9)));
        }

        ExplanationProperties.AssertEvaluates(solution, id);
        ExplanationProperties.AssertReadsBack(solution, id);
    }

    [Fact]
    public void Problems_Explained_AreAtLeastAHundred_AndTheMisprintsStayMarked()
    {
        Assert.True(Explanations.Count >= 100, $"{Explanations.Count}");
        Assert.Equal(Misprinted.Keys.Order(StringComparer.Ordinal), Explanations.Keys.Where(id => Problems[id].Suspect).Order(StringComparer.Ordinal));
    }

    private static (WorkedSolution Solution, double Factor) One(WorkedSolution solution) => (solution, 1);

    private static (WorkedSolution Solution, double Factor) Amperes(ElectricPotential voltage, ElectricResistance resistance) =>
        One(OhmsLaw.FromVoltageAndResistance(voltage, resistance).Explain(OhmsLawQuantity.Current));

    private static (WorkedSolution Solution, double Factor) Watts(ElectricPotential voltage, ElectricResistance resistance) =>
        One(OhmsLaw.FromVoltageAndResistance(voltage, resistance).Explain(OhmsLawQuantity.Power));

    private static ElectricResistance Ten => ElectricResistance.FromOhms(10);

    private static ElectricResistance Series(PublishedProblem p, params string[] names) => ResistorNetwork.Series([.. names.Select(p.Ohms)]);

    private static ElectricResistance Parallel(PublishedProblem p, params string[] names) => ResistorNetwork.Parallel([.. names.Select(p.Ohms)]);

    private static OhmsLawPoint Ladder(PublishedProblem p) => OhmsLaw.FromVoltageAndResistance(p.Volts("E"), ResistorNetwork.Series(
        p.Ohms("r"), Parallel(p, "R1", "R2"), Parallel(p, "R3", "R4"), p.Ohms("R5")));

    private static (WorkedSolution Solution, double Factor) Behind(ElectricPotential open, ElectricResistance inner, ElectricResistance load) => One(OperatingPoint.Solve(
        Source.BehindResistance(open, inner), Paths.Negligible, Load.Resistance(load), ConductorTemperature.At(Twenty)).Explain());

    private static (WorkedSolution Solution, double Factor) Drop(PublishedProblem p) =>
        One(VoltageDrop.ExplainAlong(PerFoot(p), Length.FromFeet(p["length"]), p.Amperes("I")));

    private static (WorkedSolution Solution, double Factor) Run(PublishedProblem p) =>
        (VoltageDrop.ExplainGreatestRun(PerFoot(p), p.Amperes("I"), p.Volts("V_drop_allowed")), FeetPerMeter);

    private static Calc.Quantities.LinearResistance PerFoot(PublishedProblem p) => Calc.Quantities.LinearResistance.FromOhmsPerThousandFeet(1000 * p["R_per_ft"]);

    private static (WorkedSolution Solution, double Factor) Pounds(PublishedProblem p) =>
        (Conductor.Solid(Awg(p), ConductorMaterial.Copper).ExplainMass(Length.FromFeet(p["length"])), 1 / 0.45359237);

    private static AwgSize Awg(PublishedProblem p) => AwgSize.Parse(p.Text("AWG"));

    private static Temperature Celsius(PublishedProblem p, string name) => Temperature.FromDegreesCelsius(p[name]);

    private static ElectricResistivity Ohm(double ohmMeters) => ElectricResistivity.FromOhmMeters(ohmMeters);

    // Ω·cmil/ft to Ω·m: one circular mil is π/4 · (25.4 µm)², one foot 0.3048 m.
    private static double CmilFoot(double value) => value * Math.PI / 4 * 25.4e-6 * 25.4e-6 / 0.3048;

    private static WorkedSolution Bar(double ohmMeters, Length length, Area area) => BarResistance.ExplainResistance(Ohm(ohmMeters), length, area);

    private static WorkedSolution Corrected(PublishedProblem p, string resistance, string at) =>
        TemperatureCorrection.ExplainResistanceAt(p.Ohms(resistance), Celsius(p, at), Celsius(p, "T"), p["alpha"], Celsius(p, at));
}
