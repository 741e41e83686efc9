using System.Text.Json;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Published problems on heat in wires (open textbooks and their companions), solved through the public interface.</summary>
public class ThermalProblemsTests
{
    private static readonly Lazy<Dictionary<string, JsonElement>> Problems = new(Load);

    // 2581 cmil · √(log10(1058/259 + 1)/(33 · 5)) = 168.9 A by hand; the print took 234 − 25 for 234 + 25 and has 178 A.
    private static readonly Dictionary<string, double> Misprinted = new(StringComparer.Ordinal) { ["th-096"] = 168.9 };

    public static TheoryData<string> Solved() => [.. Problems.Value.Where(p => p.Value.TryGetProperty("solvedAs", out _)).Select(p => p.Key)];

    [Fact]
    public void Problems_AreAllThere_AndSayWhenTheyDoNotApply()
    {
        Assert.Equal(32, Problems.Value.Count);
        Assert.Equal(18, Solved().Count);
        Assert.All(Problems.Value.Values, p => Assert.True(p.TryGetProperty("solvedAs", out _) != p.TryGetProperty("doesNotApply", out _)));
    }

    [Theory]
    [MemberData(nameof(Solved))]
    public void Problem_SolvedThroughTheInterface_GivesThePrintedAnswer(string id)
    {
        JsonElement problem = Problems.Value[id];
        double answer = problem.GetProperty("answer").GetDouble(), tolerance = problem.GetProperty("tolerance").GetDouble();
        double computed = Solve(id, problem.GetProperty("given"));

        if (Misprinted.TryGetValue(id, out double right))
        {
            Assert.Equal(right, computed, tolerance);
            Assert.True(Math.Abs(computed - answer) > tolerance);
            return;
        }

        // Our own rounding (quadrature 1e-8) matters only where the answer is exact by construction.
        Assert.InRange(computed, answer - tolerance - (1e-8 * answer), answer + tolerance + (1e-8 * answer));
    }

    private static double Solve(string id, JsonElement given) => id switch
    {
        "th-040" => SixtyThreePercent(given).Seconds,
        "th-041" => SixtyThreePercent(given).Celsius,
        "th-043" => 1 / CoolingTime(given),
        "th-055" => HotWirePower(given),
        "th-060" => CriticalRadius.Of(Conductivity(given), Coefficient(given)).Millimeters - (Get(given, "d") / 2),
        "th-062" => CriticalGain(given),
        "th-064" => AtCriticalRadius(given),
        "th-065" => RubberWire(given),
        "th-074" => EighthRootWire(given),
        "th-046" => HeatFlux(given),
        "th-090" => FusingEstimates.PreeceCurrent(PreeceMetal.Aluminium, Length.FromInches(Get(given, "d"))).Amperes,
        "th-096" => FusingEstimates.OnderdonkCurrent(CircularMil.ToArea(Get(given, "area")), Duration.FromSeconds(Get(given, "t")), C(Get(given, "Ta"))).Amperes,
        "th-098" => FaaConductorTemperature.Estimate(C(Get(given, "T1")), C(Get(given, "TR")), A(Get(given, "I2")), A(Get(given, "Imax"))).DegreesCelsius,
        "th-101" or "th-104" or "th-112" or "th-114" or "th-116" =>
            NecTable310Dash17.Table.Rating(AwgSize.Parse(given.GetProperty("AWG").GetString()!), C(Get(given, "insulation_class"))).Current.Amperes,
        _ => throw new InvalidOperationException(id),
    };

    // 1000 W at 220 V in a heating wire: the current is 1000/220 A, its resistance does not change.
    private static (double Seconds, double Celsius) SixtyThreePercent(JsonElement given)
    {
        double ohms = Get(given, "R_per_m"), diameter = Get(given, "d");
        Wire wire = Insulated(diameter, ohms, Length.Zero, heatCapacity: Get(given, "density") * Get(given, "c"));
        Surroundings room = Given(Get(given, "T_room"), Get(given, "h"));
        double room0 = Get(given, "T_room");
        ElectricCurrent current = A(Get(given, "P") / Get(given, "V"));
        double limit = room0 + (0.63 * (HeatBalance.TemperatureAt(wire, room, current).DegreesCelsius - room0));
        Duration? time = OverloadHeating.TimeToReach(wire, room, current, C(limit));
        Assert.NotNull(time);
        Temperature there = OverloadHeating.TemperatureAfter(wire, room, current, time.Value);
        return (time.Value.Seconds, there.DegreesCelsius);
    }

    private static double CoolingTime(JsonElement given)
    {
        Wire wire = Insulated(Get(given, "d"), 0.01, Length.Zero, heatCapacity: Get(given, "density") * Get(given, "c"));
        Duration? time = OverloadHeating.TimeConstant(wire, Given(Get(given, "T_inf"), Get(given, "h")), A(0));
        Assert.NotNull(time);
        return time.Value.Seconds;
    }

    private static double HotWirePower(JsonElement given)
    {
        Wire wire = Insulated(Get(given, "d"), 0.01, Length.Zero);
        HeatBalanceState? state = HeatBalance.StateFor(wire, Given(Get(given, "T"), Get(given, "h")), C(Get(given, "Ts")));
        Assert.NotNull(state);
        return state.HeatPerLength.WattsPerMeter * Get(given, "L") * 1e-3;
    }

    // The flux, W/cm², is coefficient times rise, whatever the rise: 10 A of 15 Ω/m are the 1500 W/m of the problem.
    private static double HeatFlux(JsonElement given)
    {
        double wattsPerMeter = Get(given, "P") / (Get(given, "L") * 1e-2);
        Wire wire = Insulated(Get(given, "d") * 10, wattsPerMeter / 100, Length.Zero);
        return HeatBalance.CoefficientFrom(wire, C(20), A(10), C(120)).WattsPerSquareMeterKelvin * 100 * 1e-4;
    }

    private static double CriticalGain(JsonElement given)
    {
        double diameter = Get(given, "d");
        double wall = CriticalRadius.Of(Conductivity(given), Coefficient(given)).Millimeters - (diameter / 2);
        return 100 * ((Current(given, diameter, wall, "Ts") / Current(given, diameter, 0, "Ts")) - 1);
    }

    private static double AtCriticalRadius(JsonElement given)
    {
        double diameter = Get(given, "d");
        double wall = CriticalRadius.Of(Conductivity(given), Coefficient(given)).Millimeters - (diameter / 2);
        return Current(given, diameter, wall, "T_wire", Get(given, "R_per_m"));
    }

    private static double Current(JsonElement given, double diameter, double wall, string temperature, double ohms = 0.01)
    {
        Wire wire = Insulated(diameter, ohms, Length.FromMillimeters(wall), Get(given, "k"));
        return HeatBalance.CurrentFor(wire, Given(Get(given, "T"), Get(given, "h")), C(Get(given, temperature))).Amperes;
    }

    private static double RubberWire(JsonElement given)
    {
        Wire wire = Insulated(2 * Get(given, "r_wire"), Get(given, "R") / 100, Length.FromMillimeters(Get(given, "t_rubber")), Get(given, "k_rubber"));
        return HeatBalance.CurrentFor(wire, Given(Get(given, "T"), Get(given, "h")), C(Get(given, "T_max"))).Amperes;
    }

    // The problem names its own correlation, Nu = 1.18·Ra^(1/8); the balance then takes the coefficient as given.
    private static double EighthRootWire(JsonElement given)
    {
        double diameter = Get(given, "d") * 1e-3, difference = Get(given, "Ts") - Get(given, "T");
        double film = (0.5 * (Get(given, "Ts") + Get(given, "T"))) + 273;
        double rayleigh = 9.81 / film * difference * Math.Pow(diameter, 3) / Math.Pow(Get(given, "nu"), 2) * Get(given, "Pr");
        double coefficient = 1.18 * Math.Pow(rayleigh, 1 / 8.0) * Get(given, "k") / diameter;
        Wire wire = Insulated(Get(given, "d"), Get(given, "R_per_m"), Length.Zero);
        return HeatBalance.CurrentFor(wire, Given(Get(given, "T"), coefficient), C(Get(given, "Ts"))).Amperes;
    }

    // A solid wire of a metal whose resistance does not change, of the resistance per metre that the problem states; all through public members.
    private static Wire Insulated(double diameter, double ohmsPerMeter, Length wall, double conductivity = 0.2, double heatCapacity = 3.4e6)
    {
        Reference stated = Reference.CommonPractice("stated in the problem");
        double squareMeters = Math.PI / 4 * diameter * diameter * 1e-6;
        ConductorMaterial metal = ConductorMaterial.Create(
            "metal of the problem", ElectricResistivity.FromOhmMeters(ohmsPerMeter * squareMeters), 0, Density.FromKilogramsPerCubicMeter(8000),
            VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(heatCapacity), C(1400), stated);
        InsulationMaterial insulation = InsulationMaterial.Create(
            "insulation of the problem", C(200), C(250), ThermalConductivity.FromWattsPerMeterKelvin(conductivity), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(2e6), 0.9, stated);
        return Wire.Create(Conductor.SolidOfDiameter(Length.FromMillimeters(diameter), metal), insulation, wall);
    }

    private static ThermalConductivity Conductivity(JsonElement given) => ThermalConductivity.FromWattsPerMeterKelvin(Get(given, "k"));

    private static HeatTransferCoefficient Coefficient(JsonElement given) => HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Get(given, "h"));

    private static double Get(JsonElement given, string name) => given.GetProperty(name) is { ValueKind: JsonValueKind.Number } plain
        ? plain.GetDouble()
        : given.GetProperty(name).GetProperty("value").GetDouble();

    private static Dictionary<string, JsonElement> Load()
    {
        using Stream stream = PublishedTable.Open("thermal-problems.json");
        using JsonDocument document = JsonDocument.Parse(stream);
        return document.RootElement.GetProperty("problems").EnumerateArray()
            .ToDictionary(p => p.GetProperty("id").GetString()!, p => p.Clone(), StringComparer.Ordinal);
    }
}
