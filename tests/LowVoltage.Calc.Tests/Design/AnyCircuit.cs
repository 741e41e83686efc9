using FsCheck;
using FsCheck.Fluent;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>A plausible circuit with log-uniform numbers: 0.1 A to 60 A, 0.2 m to 30 m, 12, 24 or 48 V, all presets, loads, returns and insulations.</summary>
public sealed record AnyCircuit(
    int Preset, int Blocks, int LoadKind, double Amperes, double Feed, double Back, int ReturnKind, double Ambient, int Conductors, int InsulationKind,
    double? UpstreamMilliOhms, bool EngineSpace, double OtherAmperes, double JointMilliOhms)
{
    private static readonly InsulationMaterial[] Insulations =
    [
        InsulationMaterial.PolyvinylChloride, InsulationMaterial.CrossLinkedPolyethylene, InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C),
        InsulationMaterial.Etfe, InsulationMaterial.SiliconeRubber, InsulationMaterial.Rubber60,
    ];

    public DesignRules Rules => Preset switch
    {
        < 4 => DesignRules.Presets[Preset],
        4 => new DesignRules(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable },
        _ => new DesignRules(DesignRules.Bench) { Ampacity = AmpacityBasis.BuildingTable },
    };

    public bool IsTable => Preset is 1 or 2 or 4 or 5;

    public double Volts => 12 * Blocks;

    public Load Load => Make(Amperes);

    public Source Source => LoadKind == 6 ? Source.BehindResistance(V(Volts * 0.95), V(Volts), V(Volts * 1.1), MilliOhm(4), MilliOhm(12)) : LeadAcid(Blocks);

    public InsulationMaterial Insulation => Insulations[InsulationKind];

    public ReturnPath Return => ReturnKind switch
    {
        0 or 1 => ReturnPath.Wire(M(Back)),
        2 => ReturnPath.Chassis(MilliOhm(JointMilliOhms)),
        3 => ReturnPath.Shared(MilliOhm(JointMilliOhms), A(OtherAmperes)),
        4 => ReturnPath.Shared([Segment.Create(ReturnWire, M(Back))], A(OtherAmperes)),
        _ => ReturnPath.Wire(Segment.Create(ReturnWire, M(Back))),
    };

    // A wire that the preset's rating covers.
    private Conductor ReturnWire => Preset switch
    {
        1 => Awg(2),
        2 => Conductor.AircraftWire(AircraftWireSize.FromNumber(2)),
        3 or 5 => Class5(35),
        _ => RoadVehicle(35),
    };

    public static Arbitrary<AnyCircuit> Arbitrary() => Gen.Choose(0, 1_000_000).ArrayOf(14).Select(n => Of([.. n.Select(x => x / 1e6)])).ToArbitrary();

    public CircuitRequirements Requirements(double load = 1, double length = 1, double warmer = 0, int more = 0) => new()
    {
        Source = Source,
        Load = Make(Amperes * load),
        Feed = M(Feed * length),
        Return = ReturnKind <= 1 ? ReturnPath.Wire(M(Back * length)) : Return,
        Place = new Place { Ambient = C(Ambient + warmer), LoadedConductors = Conductors + more, EngineSpace = EngineSpace },
        Insulation = Insulation,
        Upstream = UpstreamMilliOhms is { } ohms ? MilliOhm(ohms) : null,
        FuseDistance = M(0.1),
        Joints = [Joint.Create("joint", MilliOhm(JointMilliOhms))],
        Name = "any",
    };

    private Load Make(double amperes) => LoadKind switch
    {
        0 => Load.ConstantCurrent(A(amperes)),
        1 => Load.ConstantPower(W(amperes * Volts), 0.9, V(0.7 * Volts)),
        2 => Load.Resistance(ElectricResistance.FromOhms(Volts / amperes)),
        3 => Load.Lamp(W(amperes * Volts), V(Volts * 1.1)),
        4 => Load.Motor(A(amperes), A(2.5 * amperes), A(4 * amperes), Duration.FromSeconds(0.3)),
        5 => Load.ConstantCurrent(A(amperes)).WithDutyCycle(DutyCycle.FromFraction(0.2)),
        6 => Load.Together(Load.ConstantCurrent(A(amperes / 2)), Load.Resistance(ElectricResistance.FromOhms(2 * Volts / amperes))).WithMinimumVoltage(V(0.8 * Volts)),
        _ => Load.ConstantPower(W(amperes * Volts)).WithInputCapacitor(ElectricCapacitance.FromMicrofarads(1000)),
    };

    private static AnyCircuit Of(double[] u) => new(
        (int)(u[0] * 5.999), u[1] < 0.5 ? 1 : u[1] < 0.8 ? 2 : 4, (int)(u[2] * 7.999), Log(u[3], 0.1, 60), Log(u[4], 0.2, 30), Log(u[5], 0.2, 30), (int)(u[6] * 5.999),
        -10 + (u[7] * 80), 1 + (int)(u[8] * u[8] * 12), (int)(u[9] * 5.999), u[10] < 0.3 ? null : Log(u[10], 15, 80), u[11] < 0.3, Log(u[12], 0.5, 60), Log(u[13], 0.5, 10));

    private static double Log(double u, double least, double most) => least * Math.Pow(most / least, u);
}
