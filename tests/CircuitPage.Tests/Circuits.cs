using LowVoltage.Calc;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;

namespace CircuitPage.Tests;

/// <summary>Twenty invented circuits of several kinds.</summary>
internal static class Circuits
{
    private static readonly InsulationMaterial Pvc = InsulationMaterial.PolyvinylChloride;
    private static readonly InsulationMaterial Xlpe = InsulationMaterial.CrossLinkedPolyethylene;
    private static readonly InsulationMaterial ClassB = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B);

    public static IReadOnlyList<TypedCircuit> All { get; } =
    [
        new("lamp", "supply=lead-acid|cold_cranking_A=600|load=lamp|load_W=21|load_rated_V=12|feed_m=4|joints_mOhm=6|ambient_degC=35|loaded_conductors=4|supply_lead_mOhm=12", DesignRules.RoadVehicle,
            Circuit(Lead(600), Load.Lamp(Power.FromWatts(21), Volts(12)), 4, 4, 35, 4, Pvc, 12, 6)),
        new("heater on the chassis", "supply=lead-acid|cold_cranking_A=600|load=resistance|load_W=90|load_rated_V=12|feed_m=4|return=chassis|chassis_mOhm=1.5|joints_mOhm=4|ambient_degC=40|loaded_conductors=4|insulation=class B|supply_lead_mOhm=12|load_min_V=9|drop_limit_percent=6", DesignRules.RoadVehicle,
            new(Circuit(Lead(600), Load.Resistance(ElectricResistance.FromOhms(1.6)).WithMinimumVoltage(Volts(9)), 4, 4, 40, 4, ClassB, 12, 4)) { Return = ReturnPath.Chassis(MilliOhms(1.5)), DropLimit = DropLimit.Percent(6) }),
        new("converter in a bundle", "supply=lead-acid|cold_cranking_A=600|load=power|load_W=60|efficiency_percent=90|load_min_V=10.5|feed_m=5.5|joints_mOhm=8|ambient_degC=50|loaded_conductors=6|insulation=XLPE|supply_lead_mOhm=12", DesignRules.RoadVehicle,
            Circuit(Lead(600), Load.ConstantPower(Power.FromWatts(60), 0.9).WithMinimumVoltage(Volts(10.5)), 5.5, 5.5, 50, 6, Xlpe, 12, 8)),
        new("two batteries in series", "supply=lead-acid|cold_cranking_A=250|blocks_in_series=2|load=power|load_W=70|efficiency_percent=88|load_min_V=21|feed_m=5|return_m=6|joints_mOhm=5|ambient_degC=45|loaded_conductors=4|insulation=class B|supply_lead_mOhm=14", DesignRules.RoadVehicle,
            Circuit(Battery.LeadAcid(Amperes(250), ColdCrankingStandard.SaeJ537, 2), Load.ConstantPower(Power.FromWatts(70), 0.88).WithMinimumVoltage(Volts(21)), 5, 6, 45, 4, ClassB, 14, 5)),
        new("motor that starts", "supply=lead-acid|cold_cranking_A=600|load=motor|load_A=6.5|load_rated_V=12|start_A=26|locked_A=32|start_s=0.4|feed_m=3|return=chassis|chassis_mOhm=1.5|joints_mOhm=4|ambient_degC=60|loaded_conductors=6|insulation=class B|supply_lead_mOhm=12|drop_limit_percent=6", DesignRules.RoadVehicle,
            new(Circuit(Lead(600), Load.Motor(Amperes(6.5), Amperes(26), Amperes(32), Duration.FromSeconds(0.4), Volts(12)), 3, 3, 60, 6, ClassB, 12, 4)) { Return = ReturnPath.Chassis(MilliOhms(1.5)), DropLimit = DropLimit.Percent(6) }),
        new("too much, too far", "supply=LiFePO4|cells_in_series=4|capacity_Ah=200|load=power|load_W=1800|efficiency_percent=90|feed_m=6|joints_mOhm=2|ambient_degC=35|insulation=XLPE|supply_lead_mOhm=8", DesignRules.RoadVehicle,
            Circuit(Lithium(4, 200), Load.ConstantPower(Power.FromWatts(1800), 0.9), 6, 6, 35, 2, Xlpe, 8, 2)),
        new("supply lead not known", "supply=lead-acid|cold_cranking_A=600|load=current|load_A=6|feed_m=2|joints_mOhm=4|ambient_degC=40|insulation=class B", DesignRules.RoadVehicle,
            Circuit(Lead(600), Current(6), 2, 2, 40, 2, ClassB, null, 4)),
        new("pump in a boat", "supply=lead-acid|cold_cranking_A=400|cold_cranking_test=EN 50342|load=motor|load_A=5|start_A=14|locked_A=18|start_s=0.3|thermal_cut_out=yes|feed_m=10|joints_mOhm=6|ambient_degC=122|loaded_conductors=4|insulation=rated|rated_degC=221|short_circuit_degC=320|supply_lead_mOhm=11|engine_space=yes|fuse_distance_m=2.5|fuse_lead_sheathed=yes|drop_limit_percent=5", DesignRules.SmallCraft,
            new(Circuit(Battery.LeadAcid(Amperes(400), ColdCrankingStandard.En50342), Load.Motor(Amperes(5), Amperes(14), Amperes(18), Duration.FromSeconds(0.3)).WithThermalCutOut(), 3.048, 3.048, 50, 4, InsulationMaterial.Rated("105 °C rated", Celsius(105), Celsius(160)), 11, 6))
            {
                Place = new Place { Ambient = Celsius(50), LoadedConductors = 4, EngineSpace = true }, FuseDistance = Length.FromMeters(0.762), SheathedToFuse = true, DropLimit = DropLimit.Percent(5),
            }, IsUs: true),
        new("rack on a known supply", "supply=voltage|supply_V=13.8|supply_min_V=13.2|supply_max_V=14.2|source_min_mOhm=20|source_max_mOhm=45|load=current|load_A=23.5|feed_m=3|joints_mOhm=2|ambient_degC=104|loaded_conductors=3|insulation=PVC 90|supply_lead_mOhm=2|fuse_distance_m=0.25", DesignRules.SmallCraft,
            new(Circuit(Source.BehindResistance(Volts(13.2), Volts(13.8), Volts(14.2), MilliOhms(20), MilliOhms(45)), Current(23.5), 0.9144, 0.9144, 40, 3, InsulationMaterial.HeatResistantPolyvinylChloride, 2, 2)) { FuseDistance = Length.FromMeters(0.0762) }, IsUs: true),
        new("light with a shared return", "supply=lead-acid|cold_cranking_A=400|load=lamp|load_W=25|load_rated_V=12|load_min_V=9|feed_m=9|return=shared|shared_mOhm=4|shared_other_A=3|joints_mOhm=5|ambient_degC=30|loaded_conductors=3|insulation=PVC 90|supply_lead_mOhm=11|fuse_distance_m=0.15|drop_limit_percent=5", DesignRules.SmallCraft,
            new(Circuit(Lead(400), Load.Lamp(Power.FromWatts(25), Volts(12)).WithMinimumVoltage(Volts(9)), 9, 9, 30, 3, InsulationMaterial.HeatResistantPolyvinylChloride, 11, 5)) { Return = ReturnPath.Shared(MilliOhms(4), Amperes(3)), FuseDistance = Length.FromMeters(0.15), DropLimit = DropLimit.Percent(5) }),
        new("radio high up", "supply=LiFePO4|cells_in_series=4|capacity_Ah=7|load=current|load_A=2.2|load_min_V=9|feed_m=1.5|joints_mOhm=6|ambient_degC=50|loaded_conductors=12|bundle_loading_percent=20|insulation=rated|rated_degC=150|short_circuit_degC=200|altitude_m=4000|supply_lead_mOhm=4", DesignRules.LightAircraft,
            new(Circuit(Lithium(4, 7), Current(2.2).WithMinimumVoltage(Volts(9)), 1.5, 1.5, 50, 12, InsulationMaterial.Rated("150 °C rated", Celsius(150), Celsius(200)), 4, 6))
            {
                Place = new Place { Ambient = Celsius(50), LoadedConductors = 12, BundleLoading = 0.2, Altitude = Length.FromMeters(4000) },
            }),
        new("short use in the air", "supply=lead-acid|cold_cranking_A=250|load=current|load_A=4|intermittent=yes|feed_m=3|joints_mOhm=6|ambient_degC=40|loaded_conductors=6|insulation=ETFE|supply_lead_mOhm=9", DesignRules.LightAircraft,
            new(Circuit(Lead(250), Current(4), 3, 3, 40, 6, InsulationMaterial.Etfe, 9, 6)) { Intermittent = true }),
        new("bench resistor", "supply=current-limited|supply_V=12|limit_A=5|load=resistance|load_Ohm=4|feed_m=1.5|joints_mOhm=6|ambient_degC=25|supply_lead_mOhm=5", DesignRules.Bench,
            Circuit(Source.CurrentLimited(Volts(12), Amperes(5)), Load.Resistance(ElectricResistance.FromOhms(4)), 1.5, 1.5, 25, 2, Pvc, 5, 6)),
        new("siren far away", "supply=voltage|supply_V=24|supply_min_V=23.5|supply_max_V=24.5|source_min_mOhm=50|source_max_mOhm=900|load=current|load_A=5|load_min_V=14|feed_m=20|joints_mOhm=8|ambient_degC=25|supply_lead_mOhm=5|drop_limit_V=5", DesignRules.Bench,
            new(Circuit(Source.BehindResistance(Volts(23.5), Volts(24), Volts(24.5), MilliOhms(50), MilliOhms(900)), Current(5).WithMinimumVoltage(Volts(14)), 20, 20, 25, 2, Pvc, 5, 8)) { DropLimit = DropLimit.Volts(Volts(5)) }),
        new("pack of 48 V with a main fuse", "supply=LiFePO4|cells_in_series=16|capacity_Ah=100|load=power|load_W=400|efficiency_percent=92|feed_m=3|joints_mOhm=4|ambient_degC=30|insulation=XLPE|supply_lead_mOhm=2.34|fuses=IEC 60269-2 gG, 250 V|main_fuse=IEC 60269-2 gG, 250 V|main_fuse_A=63|main_fuse_lead_mOhm=0|main_lead_size=25|main_lead_m=1.5|main_fuse_melts_A2s=9000",
            DesignRules.Bench.WithFuses(FuseSeries.IndustrialGgBladeContacts),
            new(Circuit(Lithium(16, 100), Load.ConstantPower(Power.FromWatts(400), 0.92), 3, 3, 30, 2, Xlpe, 2.34, 4))
            {
                UpstreamProtection =
                [
                    UpstreamProtection.Fuse(FuseSeries.IndustrialGgBladeContacts.SmallestAtLeast(Amperes(63))).WithUpstream(ElectricResistance.Zero)
                        .WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(9000)).WithLead(CircuitPath.TwoWire(Conductor.Iec60228(MetricSize.FromSquareMillimeters(25), Iec60228Class.Flexible), Length.FromMeters(1.5))),
                ],
            }),
        new("stiff pack without a main fuse", "supply=LiFePO4|cells_in_series=4|capacity_Ah=300|load=current|load_A=8|feed_m=2.5|joints_mOhm=5|ambient_degC=30|insulation=XLPE|supply_lead_mOhm=0.5", DesignRules.RoadVehicle,
            Circuit(Lithium(4, 300), Current(8), 2.5, 2.5, 30, 2, Xlpe, 0.5, 5)),
        new("main breaker as marked", "supply=lead-acid|cold_cranking_A=700|load=current|load_A=10|feed_m=3|joints_mOhm=5|ambient_degC=30|insulation=XLPE|supply_lead_mOhm=10|main_fuse=as marked|main_fuse_A=80|main_fuse_V=32|main_fuse_breaks_A=2500", DesignRules.RoadVehicle,
            new(Circuit(Lead(700), Current(10), 3, 3, 30, 2, Xlpe, 10, 5)) { UpstreamProtection = [UpstreamProtection.Device("main fuse", Amperes(80), Volts(32), Amperes(2500))] }),
        new("sizes in stock", "supply=alternator|supply_V=14.2|limit_A=60|load=current|load_A=7|feed_m=4|joints_mOhm=5|ambient_degC=40|insulation=XLPE|supply_lead_mOhm=10|sizes=1.5; 4; 10 mm²", DesignRules.RoadVehicle.WithConductors(ConductorSeries.RoadVehicle.Only("road-vehicle plain copper, sizes in stock", [.. new[] { 1.5, 4, 10 }.Select(size => (ConductorSize)MetricSize.FromSquareMillimeters(size))])),
            Circuit(Source.Alternator(Volts(14.2), Amperes(60)), Current(7), 4, 4, 40, 2, Xlpe, 10, 5)),
        new("AWG in a car, pulsed", "supply=lead-acid|cold_cranking_A=500|load=current|load_A=12|duty_percent=40|input_uF=470|starts=20000|feed_m=13|joints_mOhm=5|ambient_degC=86|insulation=XLPE|supply_lead_mOhm=12|fuse_degC=140|wires=AWG, stranded copper, sizes of the trade|drop_limit_percent=4", DesignRules.RoadVehicle.WithConductors(ConductorSeries.AwgTrade),
            new(Circuit(Lead(500), Current(12).WithDutyCycle(DutyCycle.FromFraction(0.4)).WithInputCapacitor(ElectricCapacitance.FromMicrofarads(470)), 3.9624, 3.9624, 30, 2, Xlpe, 12, 5)) { Starts = 20_000, FuseAmbient = Celsius(60), DropLimit = DropLimit.Percent(4) }, IsUs: true),
        new("hot corner", "supply=lead-acid|cold_cranking_A=600|load=current|load_A=5|feed_m=3|joints_mOhm=4|ambient_degC=95|loaded_conductors=8|insulation=PVC|supply_lead_mOhm=12", DesignRules.RoadVehicle,
            Circuit(Lead(600), Current(5), 3, 3, 95, 8, Pvc, 12, 4)),
    ];

    private static CircuitRequirements Circuit(Source source, Load load, double feed, double back, double celsius, int conductors, InsulationMaterial insulation, double? leadMilliohms, double jointMilliohms) => new()
    {
        Source = source, Load = load, Feed = Length.FromMeters(feed), Return = ReturnPath.Wire(Length.FromMeters(back)), Joints = [Joint.Create("joints", MilliOhms(jointMilliohms))],
        Upstream = leadMilliohms is { } lead ? MilliOhms(lead) : null, Place = new Place { Ambient = Celsius(celsius), LoadedConductors = conductors }, Insulation = insulation,
    };

    private static Source Lead(double amperes) => Battery.LeadAcid(Amperes(amperes));

    private static Source Lithium(int cells, double hours) => Battery.LithiumIronPhosphate(cells, ElectricCharge.FromAmpereHours(hours));

    private static Load Current(double amperes) => Load.ConstantCurrent(Amperes(amperes));

    private static ElectricCurrent Amperes(double value) => ElectricCurrent.FromAmperes(value);

    private static ElectricPotential Volts(double value) => ElectricPotential.FromVolts(value);

    private static ElectricResistance MilliOhms(double value) => ElectricResistance.FromMilliohms(value);

    private static Temperature Celsius(double value) => Temperature.FromDegreesCelsius(value);
}
