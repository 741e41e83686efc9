using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Working;

/// <summary>Every explanation of the library on random numbers, with the answer of the typed call that it explains.</summary>
internal sealed class Explained
{
    private readonly Random random;
    private readonly List<(string Name, WorkedSolution Solution, double? Answer)> made = [];

    private Explained(int seed) => random = new Random(seed);

    public static List<(string Name, WorkedSolution Solution, double? Answer)> All(int seed)
    {
        Explained one = new(seed);
        one.Conductors();
        one.OhmsAndNetworks();
        one.Drops();
        one.Points();
        one.Shorts();
        one.Fuses();
        return one.made;
    }

    private double Log(double least, double most) => least * Math.Pow(most / least, random.NextDouble());

    private ElectricCurrent A(double least = 0.1, double most = 200) => ElectricCurrent.FromAmperes(Log(least, most));

    private ElectricPotential V(double least = 1, double most = 60) => ElectricPotential.FromVolts(Log(least, most));

    private ElectricResistance R(double least = 1e-3, double most = 1e4) => ElectricResistance.FromOhms(Log(least, most));

    private Temperature T(double least, double most) => Temperature.FromDegreesCelsius(least + ((most - least) * random.NextDouble()));

    private Length L() => Length.FromMeters(Log(0.1, 100));

    private Area S() => Area.FromSquareMillimeters(Log(0.1, 100));

    private ElectricResistivity Rho() => ElectricResistivity.FromOhmMeters(Log(1.5e-8, 2e-7));

    private LinearResistance PerMeter() => LinearResistance.FromOhmsPerMeter(Log(1e-4, 0.2));

    private ConductorMaterial Metal() => random.Next(3) switch
    {
        0 => ConductorMaterial.Copper,
        1 => ConductorMaterial.Aluminium,
        _ => ConductorMaterial.MildSteel,
    };

    private Conductor Wire() => random.Next(5) switch
    {
        0 => Conductor.Solid(AwgSize.FromNumber(random.Next(-3, 41)), Metal()),
        1 => Conductor.Stranded(AwgSize.FromNumber(random.Next(-3, 25)), ConductorMaterial.Copper),
        2 => ConductorSeries.RoadVehicle.Conductors[random.Next(ConductorSeries.RoadVehicle.Conductors.Count)],
        3 => Conductor.AircraftWire(AircraftWireSize.FromNumber(2 * random.Next(1, 12))),
        _ => Conductor.OfArea(S(), Metal()),
    };

    private void Add(string name, WorkedSolution solution, double? answer = null) => made.Add((name, solution, answer));

    private void Conductors()
    {
        (ElectricResistivity rho, Length l, Area s, ElectricResistance r, ElectricCurrent i) = (Rho(), L(), S(), R(), A());
        Add("bar R", BarResistance.ExplainResistance(rho, l, s), BarResistance.Resistance(rho, l, s).Ohms);
        Add("bar ρ", BarResistance.ExplainResistivity(r, l, s), BarResistance.Resistivity(r, l, s).OhmMeters * 1e6);
        Add("bar A", BarResistance.ExplainAreaFor(rho, l, r), BarResistance.AreaFor(rho, l, r).SquareMeters * 1e6);
        Add("bar L", BarResistance.ExplainLengthFor(rho, s, r), BarResistance.LengthFor(rho, s, r).Meters);
        Add("bar E", BarResistance.ExplainFieldStrength(rho, i, s), BarResistance.FieldStrength(rho, i, s).VoltsPerMeter);

        (Temperature t1, Temperature t2, Temperature tr) = (T(-40, 60), T(-40, 250), T(0, 30));
        double alpha = 0.001 + (0.005 * random.NextDouble());
        Add("R(θ)", TemperatureCorrection.ExplainResistanceAt(r, t1, t2, alpha, tr), TemperatureCorrection.ResistanceAt(r, t1, t2, alpha, tr).Ohms);
        ConductorMaterial metal = Metal();
        Add("R(θ) metal", TemperatureCorrection.ExplainResistanceAt(r, t1, t2, metal), TemperatureCorrection.ResistanceAt(r, t1, t2, metal).Ohms);
        ElectricResistance hot = TemperatureCorrection.ResistanceAt(r, t1, t2, alpha, tr);
        Add("θ(R)", TemperatureCorrection.ExplainTemperatureFrom(r, t1, hot, alpha, tr), TemperatureCorrection.TemperatureFrom(r, t1, hot, alpha, tr).DegreesCelsius);
        Add("α(θ)", TemperatureCorrection.ExplainCoefficientAt(alpha, tr, t2), TemperatureCorrection.CoefficientAt(alpha, tr, t2));
        Add("NEC", TemperatureCorrection.ExplainNecResistanceAt(r, t2, TemperatureCorrection.NecCopperAt75), TemperatureCorrection.NecResistanceAt(r, t2, TemperatureCorrection.NecCopperAt75).Ohms);
        Temperature? equal = TemperatureCorrection.TemperatureOfEqualResistance(r, alpha, r * 1.05, alpha / 2, tr);
        Add("equal", TemperatureCorrection.ExplainTemperatureOfEqualResistance(r, alpha, r * 1.05, alpha / 2, tr), equal?.DegreesCelsius);

        Conductor wire = Wire();
        AwgSize awg = AwgSize.FromNumber(random.Next(-3, 41));
        Add("wire R", wire.ExplainResistance(l, t2), wire.Resistance(l, t2).Ohms);
        Add("wire mass", wire.ExplainMass(l), wire.Mass(l).Kilograms);
        Add("wire J", wire.ExplainCurrentDensity(i), wire.CurrentDensity(i).AmperesPerSquareMeter * 1e-6);
        Add("AWG", awg.Explain(), awg.CircularMils);
        Add("cmil of area", CircularMil.ExplainFromArea(s), CircularMil.FromArea(s));
        Add("cmil of diameter", CircularMil.ExplainFromDiameter(Length.FromMillimeters(Log(0.1, 20))));
        Add("area of cmil", CircularMil.ExplainToArea(Log(10, 1e6)));
        Add("square mils", CircularMil.ExplainSquareMilsOf(s), CircularMil.SquareMilsOf(s));
    }

    private void OhmsAndNetworks()
    {
        (ElectricPotential v, ElectricCurrent i, ElectricResistance r, Power p) = (V(), A(), R(), Power.FromWatts(Log(0.1, 1000)));
        foreach ((string name, OhmsLawPoint point) in new[]
        {
            ("V I", OhmsLaw.FromVoltageAndCurrent(v, i)), ("V R", OhmsLaw.FromVoltageAndResistance(v, r)), ("V P", OhmsLaw.FromVoltageAndPower(v, p)),
            ("I R", OhmsLaw.FromCurrentAndResistance(i, r)), ("I P", OhmsLaw.FromCurrentAndPower(i, p)), ("R P", OhmsLaw.FromResistanceAndPower(r, p)),
        })
        {
            Add("ohm " + name, point.Explain());
            Assert.Equal(2, made[^1].Solution.Steps.Count);
            AddSought(name, point);
        }

        ElectricResistance[] several = [R(), R(), R()];
        Add("series", ResistorNetwork.ExplainSeries(several), ResistorNetwork.Series(several).Ohms);
        Add("parallel", ResistorNetwork.ExplainParallel(several), ResistorNetwork.Parallel(several).Ohms);
        Add("V divider", ResistorNetwork.ExplainDividedVoltage(v, r, several), ResistorNetwork.DividedVoltage(v, r, several).Volts);
        Add("I divider", ResistorNetwork.ExplainDividedCurrent(i, r, several), ResistorNetwork.DividedCurrent(i, r, several).Amperes);
        ElectricResistance total = ElectricResistance.FromOhms(several.Sum(x => x.Ohms) * 1.5);
        Add("missing", ResistorNetwork.ExplainUnknownSeriesPart(total, several), ResistorNetwork.UnknownSeriesPart(total, several).Ohms);
        Add("shunt", ResistorNetwork.ExplainShunt(r, i, i * 3), ResistorNetwork.Shunt(r, i, i * 3).Ohms);

        ElectricPotential low = v * 0.9;
        Add("discharge", InternalResistance.ExplainFromDischarge(v, low, i), InternalResistance.FromDischarge(v, low, i).Ohms);
        Add("charge", InternalResistance.ExplainFromCharge(low, v, i), InternalResistance.FromCharge(low, v, i).Ohms);
        Add("two points", InternalResistance.ExplainFromTwoPoints(v, i, low, i * 2), InternalResistance.FromTwoPoints(v, i, low, i * 2).Ohms);
        ElectricResistance inner = R(1e-3, 0.01);
        Add("terminal", InternalResistance.ExplainTerminalVoltage(v, inner, i), InternalResistance.TerminalVoltage(v, inner, i).Volts);
        Add("charging", InternalResistance.ExplainChargingVoltage(v, inner, i), InternalResistance.ChargingVoltage(v, inner, i).Volts);
        OpposingSources opposing = OpposingSources.Solve(v, low, r);
        Add("opposing", opposing.Explain(), (double)opposing.TakenBySecond.Watts);

        ElectricCharge charge = ElectricCharge.FromAmpereHours(Log(1, 300));
        Duration time = Duration.FromSeconds(Log(1, 1e5));
        Add("energy", ElectricalEnergy.ExplainFromPower(p, time), ElectricalEnergy.FromPower(p, time).WattHours);
        Add("hours", ElectricalEnergy.ExplainRunningTime(charge, i), ElectricalEnergy.RunningTime(charge, i).Hours);
        Add("hours P", ElectricalEnergy.ExplainRunningTime(charge, v, p), ElectricalEnergy.RunningTime(charge, v, p).Hours);
    }

    private void AddSought(string given, OhmsLawPoint point)
    {
        foreach ((OhmsLawQuantity sought, string letter, double answer) in new[]
        {
            (OhmsLawQuantity.Voltage, "V", point.Voltage.Volts), (OhmsLawQuantity.Current, "I", point.Current.Amperes),
            (OhmsLawQuantity.Resistance, "R", point.Resistance.Ohms), (OhmsLawQuantity.Power, "P", (double)point.Power.Watts),
        })
        {
            bool isGiven = given.Contains(letter, StringComparison.Ordinal);
            Add($"ohm {given} for {letter}", point.Explain(sought), isGiven ? null : answer);
            Assert.Equal(isGiven ? StepKind.Statement : StepKind.Calculation, Assert.Single(made[^1].Solution.Steps).Kind);
        }
    }

    private void Drops()
    {
        (LinearResistance r, Length l, ElectricCurrent i, ElectricPotential v) = (PerMeter(), L(), A(), V(0.1, 2));
        (ElectricResistivity rho, Area s, ElectricResistance ohms) = (Rho(), S(), R(1e-3, 1));
        Add("drop", VoltageDrop.ExplainAlong(r, l, i), VoltageDrop.Along(r, l, i).Volts);
        Add("run", VoltageDrop.ExplainGreatestRun(r, i, v), VoltageDrop.GreatestRun(r, i, v).Meters);
        Add("greatest R", VoltageDrop.ExplainGreatestResistance(i, v), VoltageDrop.GreatestResistance(i, v).Ohms);
        Add("least area", VoltageDrop.ExplainLeastArea(rho, l, i, v), VoltageDrop.LeastArea(rho, l, i, v).SquareMillimeters);
        Add("area for R", VoltageDrop.ExplainLeastArea(rho, l, ohms), VoltageDrop.LeastArea(rho, l, ohms).SquareMillimeters);
        Add("R of", VoltageDrop.ExplainResistanceOf(rho, l, s), VoltageDrop.ResistanceOf(rho, l, s).Ohms);
        Add("out and back", VoltageDrop.ExplainOutAndBack(r, l, PerMeter(), L()));
        Add("lost", VoltageDrop.ExplainLost(i, ohms), (double)VoltageDrop.Lost(i, ohms).Watts);
        Add("lost share", VoltageDrop.ExplainLostShare(i, ohms, V()), null);
    }

    private Load AnyLoad(double volts) => random.Next(7) switch
    {
        0 => Load.Resistance(ElectricResistance.FromOhms(Log(1, 100))),
        1 => Load.ConstantCurrent(A(0.1, 10)),
        2 => Load.ConstantPower(Power.FromWatts(Log(1, 60)), 0.9, ElectricPotential.FromVolts(0.8 * volts)),
        3 => Load.Lamp(Power.FromWatts(Log(1, 60)), ElectricPotential.FromVolts(volts)),
        4 => Load.Together(Load.ConstantCurrent(A(0.1, 3)), Load.Resistance(ElectricResistance.FromOhms(Log(5, 100))), Load.ConstantPower(Power.FromWatts(Log(1, 20)))),
        5 => Load.Together(Load.Lamp(Power.FromWatts(20), ElectricPotential.FromVolts(volts)), Load.ConstantCurrent(A(0.1, 3))),
        _ => Load.Motor(A(1, 5), A(10, 20), A(20, 30), Duration.FromSeconds(0.2)),
    };

    private void Points()
    {
        double volts = random.Next(2) == 0 ? 12 : 24;
        Source source = random.Next(4) switch
        {
            0 => Source.Ideal(ElectricPotential.FromVolts(volts)),
            1 => Source.CurrentLimited(ElectricPotential.FromVolts(volts), A(1, 10)),
            2 => Battery.LeadAcid(A(200, 900), blocksInSeries: (int)volts / 12),
            _ => Source.BehindResistance(ElectricPotential.FromVolts(volts), R(1e-3, 0.1)),
        };
        Conductor wire = Conductor.Solid(AwgSize.FromNumber(random.Next(4, 19)), ConductorMaterial.Copper);
        Segment feed = Segment.Create(wire, Length.FromMeters(Log(0.5, 10)), random.Next(1, 3));
        ReturnPath back = random.Next(4) switch
        {
            0 => ReturnPath.Wire(Length.FromMeters(Log(0.5, 10))),
            1 => ReturnPath.Chassis(R(1e-3, 0.01)),
            2 => ReturnPath.Shared(R(1e-3, 0.01), A(1, 20)),
            _ => ReturnPath.Shared([Segment.Create(Conductor.Solid(AwgSize.FromNumber(8), ConductorMaterial.Copper), Length.FromMeters(2))], A(1, 20)),
        };
        CircuitPath path = CircuitPath.Create(feed, back).WithFeedJoints(Joint.Create("fuse holder", R(1e-3, 0.01)));
        ConductorTemperature warmth = random.Next(2) == 0 ? Paths.At(20 + (60 * random.NextDouble())) : Paths.SelfHeated(40, 30, 90);
        OperatingPoint point = OperatingPoint.Solve(source, path, AnyLoad(volts), warmth, (SupplyLevel)random.Next(3), random.Next(4) == 0 ? LoadState.Peak : LoadState.Running);
        Add("point", point.Explain(), point.Exists ? point.VoltageAtLoad.Volts : null);
        ProspectiveCurrent end = ProspectiveCurrent.AtEnd(source, path, T(60, 90), T(-20, 20));
        Add("prospective end", end.Explain(), end.Greatest?.Amperes);
        ProspectiveCurrent near = ProspectiveCurrent.AtSource(source);
        Add("prospective", near.Explain(), near.Greatest?.Amperes);
        ElectricCurrent cranking = A(100, 1000);
        Temperature? battery = random.Next(2) == 0 ? null : T(-18, 25);
        ColdCrankingStandard standard = (ColdCrankingStandard)random.Next(5);
        Add("cranking", Battery.ExplainLeadAcid(cranking, standard, 2, 3, battery), Battery.LeadAcid(cranking, standard, 2, 3, battery).GreatestResistance.Ohms);
    }

    private void Shorts()
    {
        (ConductorMaterial metal, Area s, Temperature start, Temperature limit) = (Metal(), S(), T(20, 90), T(140, 250));
        Duration time = Duration.FromSeconds(Log(0.01, 5));
        double k = AdiabaticHeating.KFactor(metal, start, limit);
        ElectricCurrent i = ElectricCurrent.FromAmperes(k * s.SquareMillimeters / Math.Sqrt(time.Seconds) * Log(0.3, 3));
        Add("k", AdiabaticHeating.ExplainKFactor(metal, start, limit), k);
        Add("short area", AdiabaticHeating.ExplainAreaFor(metal, i, time, start, limit), AdiabaticHeating.AreaFor(metal, i, time, start, limit).SquareMillimeters);
        bool holds = AdiabaticHeating.TryFinalTemperature(metal, s, i, time, start, out Temperature final);
        Add("final", AdiabaticHeating.ExplainFinalTemperature(metal, s, i, time, start), holds ? final.DegreesCelsius : null);
        Add("time to", AdiabaticHeating.ExplainTimeToReach(metal, s, i, start, limit), AdiabaticHeating.TimeToReach(metal, s, i, start, limit).Seconds);
        Conductor wire = Wire();
        Add("time wire", AdiabaticHeating.ExplainTimeToReach(wire, i, start, limit), AdiabaticHeating.TimeToReach(wire, i, start, limit).Seconds);
        bool stays = AdiabaticHeating.TryFinalTemperature(wire, i, time, start, out final);
        Add("final wire", AdiabaticHeating.ExplainFinalTemperature(wire, i, time, start), stays ? final.DegreesCelsius : null);
    }

    private void Fuses()
    {
        FuseSeries series = random.Next(4) switch
        {
            0 => FuseSeries.RoadVehicleBlade,
            1 => FuseSeries.IndustrialGg,
            2 => FuseSeries.Iec60127Sheet1,
            _ => FuseSeries.NationalElectricalCodeFuses,
        };
        ElectricCurrent load = A(0.05, 60);
        LoadingRule rule = random.Next(2) == 0 ? LoadingRule.RoadVehicle : LoadingRule.SpaceHardware;
        bool found = FuseLoading.TrySmallestFor(series, load, rule, out FuseRating? smallest);
        Add("smallest fuse", FuseLoading.ExplainSmallestFor(series, load, rule), found ? smallest!.Current.Amperes : null);
        FuseRating fuse = series.Ratings[random.Next(series.Ratings.Count)];
        ElectricCurrent current = fuse.Current * Log(0.8, 40);
        bool opens = fuse.TryOperatingTime(current, out _, out Duration longest);
        Add("fuse time", fuse.ExplainOperatingTime(current), opens ? longest.Seconds : null);
        Add("coordination", OverloadCoordination.ExplainCheck(fuse, load, A(1, 100)));
        AmpacityTable table = NecTable310Dash16.Table;
        DeratedAmpacity derated = DeratedAmpacity.From(table.Rating(AwgSize.FromNumber(2 * random.Next(1, 8)), Temperature.FromDegreesCelsius(75)));
        Add("table", derated.Explain(), derated.Current.Amperes);
        derated = derated.With(NecAmbient.Factor(T(31, 60), Temperature.FromDegreesCelsius(75))).With(NecConductorCount.Factor(random.Next(4, 30)));
        Add("derated", derated.Explain(), derated.Current.Amperes);
    }
}
