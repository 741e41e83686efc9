using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Docs.Tables;

/// <summary>Twelve invented circuits of the usual kinds: the designer's wire beside the handbooks'.</summary>
internal static class EverydayCircuits
{
    private static readonly Source Starter = Battery.LeadAcid(ElectricCurrent.FromAmperes(300));
    private static readonly Source TwoStarters = Battery.LeadAcid(ElectricCurrent.FromAmperes(300), blocksInSeries: 2);
    private static readonly Source House = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(200));
    private static readonly Handbook Road = new RoadVehicleHandbook(), Boat = new SmallCraftHandbook(), Air = new AircraftHandbook(), Building = new BuildingHandbook();
    private static readonly InsulationMaterial Pvc = InsulationMaterial.PolyvinylChloride, Marine = InsulationMaterial.Rated("boat cable, 105 °C", Temperature.FromDegreesCelsius(105));

    /// <summary>What the same circuits gave before the designer chose the wire for its duty alone: run once, on 2026-11-29, with the build of 2026-11-25 (commit 0627ce0).</summary>
    public static IReadOnlyDictionary<string, string> Before { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["a lamp of 5 A, 4 m, two wires"] = "2.5 mm², 7.5 A, pass",
        ["a heater of 15 A, 3 m, back through the chassis"] = "4 mm², 20 A, pass",
        ["the control of a winch, 40 A, 3 m, two wires, 5 % allowed"] = "16 mm², 50 A, pass",
        ["an inverter that draws 1280 W (100 A at 12.8 V), 2 m, two wires"] = "no wire, fail",
        ["a cooler of 60 W in a van at 40 °C, 5 m, two wires"] = "4 mm², 7.5 A, pass",
        ["a 24 V work lamp of 96 W on a tractor, 10 m, two wires"] = "3 mm², 7.5 A, pass",
        ["a charger for a second battery, 30 A, 5 m, two wires, 5 % allowed"] = "16 mm², 40 A, pass",
        ["an anchor light of 0.5 A on a boat, 12 m, two wires"] = "16 AWG, 3 A, pass",
        ["a bilge pump of 6 A on a boat, 6 m, two wires"] = "10 AWG, 15 A, pass",
        ["a fan of 20 A in an engine space, 2.5 m, two wires"] = "6 AWG, 25 A, pass",
        ["a landing light of 100 W at 24 V, 6 m, back through the airframe"] = "16 aircraft, 7.5 A, pass",
        ["a 24 V controller of 3 A on a bench, 10 m, two wires"] = "2.5 mm², 4 A, pass",
    };

    public static IReadOnlyList<EverydayCircuit> All { get; } =
    [
        Vehicle("a lamp of 5 A, 4 m, two wires", 5, Wire(Starter, Amps(5), 4, 7.5), "2.5 mm²", "2.5 mm²", "They agree."),
        Vehicle("a heater of 15 A, 3 m, back through the chassis", 15, Chassis(Starter, Amps(15), 3, 7.5, 1), "2.5 mm²", "4 mm²",
            "The supply lead takes 0.11 V of the 0.36 V before the run begins, which the book does not count.", Direct, "3 mm²"),
        Vehicle("the control of a winch, 40 A, 3 m, two wires, 5 % allowed", 40, Wire(Starter, Amps(40), 3, 7.3).WithDropLimit(DropLimit.Percent(5)), "8 mm²", "16 mm²",
            "The supply lead takes 0.29 V of the 0.6 V, which the book does not count.", Direct, "12 mm²"),
        Vehicle("an inverter that draws 1280 W (100 A at 12.8 V), 2 m, two wires", 100, Wire(House, Load.ConstantPower(Power.FromWatts(1280)), 2, 1), "25 mm²", "60 mm²",
            "The empty pack gives its power at 135 A, which wants a larger fuse and a wire for it, and the two cables lie together, where the book's table is for one.",
            circuit => circuit.WithLoad(Amps(100)).WithReturn(ReturnPath.Chassis(ElectricResistance.FromMilliohms(0.5))), "25 mm²"),
        Vehicle("a cooler of 60 W in a van at 40 °C, 5 m, two wires", 5, Wire(Starter, Load.ConstantPower(Power.FromWatts(60)), 5, 7.5, 40), "3 mm²", "4 mm²",
            "The supply lead takes 0.04 V of the 0.36 V, and a cooler on a low battery draws more than 5 A.", Direct, "3 mm²"),
        Vehicle("a 24 V work lamp of 96 W on a tractor, 10 m, two wires", 4, Wire(TwoStarters, Load.ConstantPower(Power.FromWatts(96)), 10, 15), "2.5 mm²", "3 mm²",
            "The supply lead takes 0.06 V of the 0.72 V, which the book does not count.", Direct, "2.5 mm²"),
        Vehicle("a charger for a second battery, 30 A, 5 m, two wires, 5 % allowed", 30, Wire(Starter, Amps(30), 5, 7.4).WithDropLimit(DropLimit.Percent(5)), "10 mm²", "16 mm²",
            "The supply lead takes 0.22 V of the 0.6 V, which the book does not count.", Direct, "10 mm²"),
        Boats("an anchor light of 0.5 A on a boat, 12 m, two wires", 0.5, Wire(Starter, Amps(0.5), 12, 7.5), "18 AWG", "16 AWG",
            "The law wants 16 AWG for a wire that is laid singly, whatever it carries; of blade fuses below 3 A no times are published.",
            null, "18 AWG", new DesignRules(DesignRules.SmallCraft) { MinimumSection = Area.FromSquareMillimeters(0.5) }),
        Boats("a bilge pump of 6 A on a boat, 6 m, two wires", 6, Wire(Starter, Pump(), 6, 7.5), "10 AWG", "10 AWG",
            "The wires agree; the fuse is larger, so that it holds the pump's start ten thousand times."),
        Boats("a fan of 20 A in an engine space, 2.5 m, two wires", 20, Wire(Starter, Amps(20), 2.5, 7.5, 50), "10 AWG", "6 AWG",
            "The supply lead takes 0.15 V of the 0.36 V, and copper in an engine space is warmer than the book's formula has it.", Direct, "8 AWG"),
        new()
        {
            Name = "a landing light of 100 W at 24 V, 6 m, back through the airframe", Amperes = 100 / 24.0, Requirements = Chassis(TwoStarters, Load.ConstantPower(Power.FromWatts(100)), 6, 15, 2).WithInsulation(InsulationMaterial.Etfe, null).WithPlace(Place.Create(Temperature.FromDegreesCelsius(40))),
            Rules = DesignRules.LightAircraft, Book = Air, Wires = ("18 aircraft", "16 aircraft"),
            Why = "An overload that the 7.5 A fuse may let pass for half an hour takes size 18 to 153 °C, 3 °C above its insulation; the book does not ask.",
            Without = (Chassis(TwoStarters, Load.ConstantPower(Power.FromWatts(100)), 6, 15, 2).WithInsulation(InsulationMaterial.Etfe, null).WithPlace(Place.Create(Temperature.FromDegreesCelsius(40))), DesignRules.LightAircraft.WithFusePractice(DesignRules.LightAircraft.FusePractice.WithOverload(null)), "18 aircraft"),
        },
        new()
        {
            Name = "a 24 V controller of 3 A on a bench, 10 m, two wires", Amperes = 3, Rules = DesignRules.Bench, Book = Building, Wires = ("2.5 mm²", "2.5 mm²"), Why = "They agree.",
            Requirements = Wire(Source.CurrentLimited(ElectricPotential.FromVolts(24), ElectricCurrent.FromAmperes(20)), Amps(3), 10, 5),
        },
    ];

    public static string Table()
    {
        MarkdownTable table = new("circuit", "handbook", "its wire and fuse, decided by", "the design", "verdict", "what stops the next smaller size", "the difference", "without it", "before");
        foreach (EverydayCircuit circuit in All)
        {
            (Conductor wire, ElectricCurrent fuse, string decides) = circuit.ByTheBook();
            CircuitDesign design = circuit.Design();
            table.Row(
                circuit.Name, circuit.Book.Name, $"{Size(wire)}, {MarkdownTable.Number(fuse.Amperes)} A, {decides}",
                $"{Size(design.Wire)}, {MarkdownTable.Number(design.Fuse!.Current.Amperes)} A", Word(design), design.Rejected[^1].Check.ToString().Replace(": fail", "", StringComparison.Ordinal),
                circuit.Why, circuit.Without is { } without ? Size(CircuitDesigner.Design(without.Requirements, without.Rules).Wire) : "", Before[circuit.Name]);
        }

        return table.ToString();
    }

    public static string Size(Conductor wire) => wire.Size!.Value.ToString();

    // Pass, or what stands in its way.
    private static string Word(CircuitDesign design) => design.Verdict == Verdict.Pass ? "pass"
        : design.Checks.FirstOrDefault(check => check.Outcome == CheckOutcome.Fail) is { Kind: not null } failed ? $"fail: {failed.Name}"
        : $"undetermined: the times of a {MarkdownTable.Number(design.Fuse!.Current.Amperes)} A fuse";

    private static CircuitRequirements Direct(CircuitRequirements circuit) => circuit.WithUpstream(ElectricResistance.Zero);

    private static EverydayCircuit Vehicle(string name, double amperes, CircuitRequirements circuit, string book, string design, string why, Func<CircuitRequirements, CircuitRequirements>? without = null, string left = "") => new()
    {
        Name = name, Amperes = amperes, Requirements = circuit, Rules = DesignRules.RoadVehicle, Book = Road, Wires = (book, design), Why = why,
        Without = without is null ? null : (without(circuit), DesignRules.RoadVehicle, left),
    };

    private static EverydayCircuit Boats(
        string name, double amperes, CircuitRequirements circuit, string book, string design, string why, Func<CircuitRequirements, CircuitRequirements>? without = null, string left = "", DesignRules? rules = null)
    {
        circuit = circuit.WithInsulation(Marine, null);
        return new()
        {
            Name = name, Amperes = amperes, Requirements = circuit, Rules = DesignRules.SmallCraft, Book = Boat, Wires = (book, design), Why = why,
            Without = without is null && rules is null ? null : (without?.Invoke(circuit) ?? circuit, rules ?? DesignRules.SmallCraft, left),
        };
    }

    private static Load Amps(double amperes) => Load.ConstantCurrent(ElectricCurrent.FromAmperes(amperes));

    private static Load Pump() => Load.Motor(
        ElectricCurrent.FromAmperes(6), ElectricCurrent.FromAmperes(18), ElectricCurrent.FromAmperes(24), Duration.FromSeconds(0.2)).WithThermalCutOut();

    private static CircuitRequirements Wire(Source source, Load load, double meters, double upstreamMilliohms, double celsius = 30) =>
        Circuit(source, load, meters, ReturnPath.Wire(Length.FromMeters(meters)), upstreamMilliohms, celsius);

    private static CircuitRequirements Chassis(Source source, Load load, double meters, double upstreamMilliohms, double chassisMilliohms) =>
        Circuit(source, load, meters, ReturnPath.Chassis(ElectricResistance.FromMilliohms(chassisMilliohms)), upstreamMilliohms, 30);

    private static CircuitRequirements Circuit(Source source, Load load, double meters, ReturnPath back, double upstreamMilliohms, double celsius) => CircuitRequirements.Create(
            source, load, Length.FromMeters(meters), back, Place.Create(Temperature.FromDegreesCelsius(celsius)), Pvc)
        .WithUpstream(ElectricResistance.FromMilliohms(upstreamMilliohms))
        .WithFuseDistance(Length.FromCentimeters(15), sheathed: false);
}
