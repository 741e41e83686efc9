using System.Globalization;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Teaching;
using LowVoltage.Calc.Working;
using UnitsNet;

// Prints numbers with all their digits. The script runs this program compiled ahead of time and just in time; every line must be the same.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
Designs();
Heat();
Fuses();
Problems();
Texts();
Documents();

static void Documents()
{
    CircuitDocument read = CircuitDocument.Read(CircuitDocument.Create(Circuit(5.5, 60), DesignRules.RoadVehicle).Write());
    Console.WriteLine(read.Write());
    string answer = DesignDocument.Create(read.Answer()).Write();
    Console.WriteLine(answer);
    Console.WriteLine(DesignDocument.Read(answer).Verify());
    CircuitDocument.TryRead("{ \"lowvoltage_circuit\": 2, \"feed\": 5, \"load\": { \"kind\": \"motor\", \"peak_A\": -1 } }", out _, out IReadOnlyList<DocumentFault> faults);
    Console.WriteLine(string.Join('\n', faults));
    Console.WriteLine(HarnessDocument.Schema.Length);
}

static void Designs()
{
    foreach (DesignRules rules in DesignRules.Presets)
    {
        foreach (double meters in new[] { 0.5, 5.5, 17, 80 })
        {
            foreach (double watts in new[] { 5.0, 60, 700 })
            {
                CircuitDesign design = CircuitDesigner.Design(Circuit(meters, watts), rules);
                Console.WriteLine($"{rules} {meters} m {watts} W: {design}");
                foreach (CheckResult check in design.Checks)
                {
                    Console.WriteLine($"  {check.Kind} {check.Value:R} {check.Limit:R} {check.Margin:R} {check.Outcome}");
                }

                Console.WriteLine($"  {design.ConductorMass.Kilograms:R} kg, {(design.SupplyRange?.Nominal is { Exists: true } point ? point.Current.Amperes : (double?)null):R} A, {string.Join(" | ", design.Advice)}");
                if (meters == 5.5)
                {
                    Explained(design.Explain());
                }
            }
        }
    }
}

static void Explained(WorkedSolution solution)
{
    foreach (SolutionStep step in solution.Steps)
    {
        Console.WriteLine($"    {step.Result:R} {step.Unit}");
    }

    Console.WriteLine(solution.ToText());
    Console.WriteLine(solution.ToMarkdown());
    Console.WriteLine(solution.ToHtmlPage());
}

static CircuitRequirements Circuit(double meters, double watts) => new()
{
    Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
    Load = Load.ConstantPower(Power.FromWatts(watts), efficiency: 0.9, minimumVoltage: ElectricPotential.FromVolts(10.5)),
    Feed = Length.FromMeters(meters),
    Return = ReturnPath.Wire(Length.FromFeet(meters * 3)),
    Joints = [Joint.Create("fuse, holder and crimps", ElectricResistance.FromMilliohms(8))],
    Upstream = ElectricResistance.FromMilliohms(12),
    Place = new Place { Ambient = Temperature.FromDegreesCelsius(50), LoadedConductors = 6 },
    Insulation = InsulationMaterial.CrossLinkedPolyethylene,
};

static void Heat()
{
    Surroundings air = new() { Ambient = Temperature.FromDegreesFahrenheit(104), Emissivity = 0.9 };
    foreach (Conductor conductor in ConductorSeries.RoadVehicle.Conductors)
    {
        Wire wire = Wire.Create(conductor, InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));
        ElectricCurrent most = HeatBalance.CurrentFor(wire, air, Temperature.FromDegreesCelsius(70));
        Temperature warm = HeatBalance.TemperatureAt(wire, air, most * 0.8);
        Duration? survives = OverloadHeating.TimeToReach(wire, air, most * 2, Temperature.FromDegreesCelsius(100));
        Temperature hot = AdiabaticHeating.FinalTemperature(conductor, most * 8, Duration.FromSeconds(0.1), Temperature.FromDegreesCelsius(70));
        Console.WriteLine($"{conductor.Size} {most.Amperes:R} A {warm.DegreesCelsius:R} °C {survives?.Seconds:R} s {hot.DegreesCelsius:R} °C");
    }
}

static void Fuses()
{
    foreach (FuseRating fuse in FuseSeries.RoadVehicleBlade.Ratings)
    {
        foreach (double multiple in new[] { 1.0, 1.4, 2, 3.3, 6 })
        {
            bool stated = fuse.TryOperatingTime(fuse.Current * multiple, out Duration least, out Duration longest);
            Console.WriteLine($"{fuse} at {multiple}: {stated} {least.Seconds:R} s {longest.Seconds:R} s");
        }
    }
}

static void Problems()
{
    foreach (ProblemTopic topic in Enum.GetValues<ProblemTopic>())
    {
        Problem problem = ProblemGenerator.Create(7, topic, Difficulty.SeveralSteps);
        Console.WriteLine(problem.Statement);
        Console.WriteLine(problem.Solution.ToText());
    }
}

static void Texts()
{
    foreach (string text in new[] { "14 AWG", "4/0 AWG", "250 kcmil", "2.5 mm²", "14 SAE", "20 aircraft", "nonsense" })
    {
        Console.WriteLine(ConductorSize.TryParse(text, out ConductorSize size) ? $"{size} {size.NominalArea.SquareMillimeters:R} mm²" : $"\"{text}\" is no size");
    }

    try
    {
        _ = Load.ConstantPower(Power.FromWatts(-1));
    }
    catch (ArgumentOutOfRangeException e)
    {
        Console.WriteLine(e.Message);
    }
}
