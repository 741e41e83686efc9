using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>Complete circuits worked out by plain arithmetic from the sources' numbers: every check value, the size and the fuse.</summary>
/// <remarks>
/// Sources: wire as named in each test; 33 CFR 183.425 Table 5 and notes; FAA AC 43.13-1B Tables 11-6 and 11-9; road-vehicle table (handbook, PVC 70 °C);
/// IEC 60364-5-52 method C. Fuse loading 80 %: common practice, no published source.
/// </remarks>
public class HandComputedDesignTests
{
    // A 600 A (SAE J537) lead-acid block: (12.6 − 7.2)/600 = 9 mΩ at −18 °C; over 2.5 when new and warm, twice when aged and cold.
    private static readonly double[] LeadVolts = [11.89, 12, 14.4];
    private static readonly double[] LeadOhms = [0.018, 0.009, 0.0036];

    [Fact]
    public void SmallCraft_ConstantCurrent_TwelveGauge()
    {
        // 8 A over 3 m out and 3 m back, 11 mΩ supply lead. Table 5, 90 °C: 14 AWG 30 A, 12 AWG 40 A.
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(Load.ConstantCurrent(A(8)), insulation: InsulationMaterial.CrossLinkedPolyethylene, upstreamMilliOhms: 11), BoatTable());
        double r = Plain.AwgPerKilometer(12), theta = Plain.Warm(30, 90, 8, 40);
        double drop = 8 * ((6 * Plain.PerMeter(r, theta)) + 0.011);
        Chosen(design, "12 AWG stranded copper", 10, "ISO 8820-3 type C", Verdict.Pass);
        design.Is(CheckKind.MechanicalMinimum, Plain.AwgArea(12), Plain.AwgArea(16));
        design.Is(CheckKind.VoltageDrop, drop, 0.36);
        design.Is(CheckKind.ContinuousCurrent, 8, 40);
        design.Is(CheckKind.ConductorTemperature, theta, 90);
        design.Is(CheckKind.FuseCarriesLoad, 10, 10, 1e-8);
        design.Is(CheckKind.FuseProtectsWire, 10, 40, 1e-8);
        design.Is(CheckKind.FuseVoltage, 32, 14.4);
        design.Is(CheckKind.BreakingCapacity, 14.4 / (0.0036 + 0.011), 1000);
        Fault(design, Plain.BladeLongest, 10, new Loop(11.89, 0.018 + 0.011, 6), 14.4 / 0.0146, r, Plain.AwgArea(12), 90, 250);
        design.Is(CheckKind.FuseDistance, 0.1, 7 * 0.0254, 1e-8);

        // 14 AWG drops too much: that governs.
        double small = Plain.AwgPerKilometer(14);
        Near(8 * ((6 * Plain.PerMeter(small, Plain.Warm(30, 90, 8, 30))) + 0.011), design.Governing.Value, 1e-7);
        Assert.Equal(CheckKind.VoltageDrop, design.Governing.Kind);
        Assert.Equal("14 AWG stranded copper", design.Rejected[^1].Conductor.Name);
        Assert.Equal(design.Governing, design.Rejected[^1].Check);
    }

    [Fact]
    public void SmallCraft_Preset_TakesTheLowerOfTableAndHeatBalance()
    {
        // The circuit above by the preset: two wires of 12 AWG that lie together carry less by the heat balance than the 40 A of Table 5, which is for wires in free air.
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(Load.ConstantCurrent(A(8)), insulation: InsulationMaterial.CrossLinkedPolyethylene, upstreamMilliOhms: 11), DesignRules.SmallCraft);
        Chosen(design, "12 AWG stranded copper", 10, "ISO 8820-3 type C", Verdict.Pass);

        // The rating by the heat room's own entrance, less 3 %; the rest by arithmetic.
        InsulationMaterial insulation = InsulationMaterial.CrossLinkedPolyethylene;
        Surroundings air = new() { Ambient = C(30), Emissivity = insulation.Emissivity };
        WireBundle pair = WireBundle.Create(Wire.Create(Awg(12), insulation, Length.FromMillimeters(InsulationWall.UsualMillimeters(Plain.AwgArea(12)))), 2, 2);
        double rated = 0.97 * BundleHeat.CurrentFor(pair, air, C(90)).Amperes, theta = Plain.Warm(30, 90, 8, rated);
        Assert.InRange(rated, 30, 39.9);
        design.Is(CheckKind.ContinuousCurrent, 8, rated);
        design.Is(CheckKind.FuseProtectsWire, 10, rated, 1e-7);
        design.Is(CheckKind.VoltageDrop, 8 * ((6 * Plain.PerMeter(Plain.AwgPerKilometer(12), theta)) + 0.011), 0.36);

        // The hotter of table (32.4 °C) and physics at the current raised by the margin.
        design.Is(CheckKind.ConductorTemperature, Math.Max(Plain.Warm(30, 90, 8, 40), BundleHeat.TemperatureAt(pair, air, A(8 / 0.97)).DegreesCelsius), 90);
        Assert.Equal(AmpacityBasis.HeatBalance.Reference, design.Of(CheckKind.ContinuousCurrent).Reference);
    }

    [Fact]
    public void SmallCraft_MotorInAnEngineSpace_TheStartDecidesTheFuseAndTheFuseTheWire()
    {
        // 6 A, 20 A for 0.5 s at start. Note 1 at 90 °C: 0.82, for air of 50 °C; note 2 for five conductors: 0.60. 14 AWG: 30·0.492 = 14.76 A, 12 AWG: 19.68 A, 10 AWG: 55·0.492 = 27.06 A.
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(
                Load.Motor(A(6), A(20), A(20), Duration.FromSeconds(0.5)).WithThermalCutOut(),
                feed: 1,
                ambient: 45,
                conductors: 5,
                insulation: InsulationMaterial.CrossLinkedPolyethylene,
                engineSpace: true),
            BoatTable());
        double r = Plain.AwgPerKilometer(10), rated = 55 * 0.82 * 0.60;

        // The rating brings the wire from 50 °C to 90 °C; the air is at 45 °C.
        double theta = 45 + ((90 - 50) * 6 * 6 / (rated * rated));
        Chosen(design, "10 AWG stranded copper", 20, "ISO 8820-3 type C", Verdict.Pass);
        design.Is(CheckKind.VoltageDrop, 6 * ((2 * Plain.PerMeter(r, theta)) + 0.020), 0.36);
        design.Is(CheckKind.ContinuousCurrent, 6, rated);
        design.Is(CheckKind.ConductorTemperature, theta, 90);
        design.Is(CheckKind.FuseCarriesLoad, 20, 7.5, 1e-8);
        design.Is(CheckKind.FuseProtectsWire, 20, rated, 1e-8);

        // 20 A never exceeds the rating: there is no start to withstand. Held still the motor draws 20 A, at which 20 A need not open (27 A does): its cut-out must, and the wire bears it,
        // 90 °C and the 25 K of the allowance being its limit.
        Assert.Null(design.Find(CheckKind.InrushHeld));
        design.Is(CheckKind.StalledMotor, Plain.Heated(r, Plain.AwgArea(10), 45, rated, 90, 90, 20, double.PositiveInfinity, ratedAmbient: 50), 115, 1e-6);
        Fault(design, Plain.BladeLongest, 20, new Loop(11.89, 0.038, 2), 14.4 / 0.0236, r, Plain.AwgArea(10), 90, 250);

        // 15 A on 12 AWG: 20 A is 133 %, below 135 % the least time of the first gate, 0.75 s, holds already. One start takes 0.5/0.75 of it; 10 000 starts of 20²·0.5 A²s are
        // more than 29 % of 20²·0.75 A²s: 2.3 times.
        CircuitDesign smaller = CircuitDesigner.Verify(design.Requirements, Awg(12), Blade(15), BoatTable());
        smaller.Is(CheckKind.InrushHeld, 0.5 / (0.29 * 0.75), 1, 1e-9);
        Assert.Equal(CheckOutcome.Fail, smaller.Of(CheckKind.InrushHeld).Outcome);
        Assert.Contains("mostly by the motor: one start takes 66.67 % of what melts it", smaller.Of(CheckKind.InrushHeld).Note, StringComparison.Ordinal);

        // What stopped 12 AWG is the fuse that comes nearest on it, not the smallest that carries the load: 7.5 A withstands far less, and 20 A is above 19.68 A and lets the wire get
        // too hot.
        Assert.Equal(CheckKind.InrushHeld, design.Governing.Kind);
        Near(0.5 / (0.29 * 0.75), design.Governing.Value, 1e-9);
        Assert.Equal(2, CircuitDesigner.Verify(design.Requirements, Awg(12), Blade(20), BoatTable()).Checks.Count(c => c.Outcome == CheckOutcome.Fail));
        Assert.Equal("12 AWG stranded copper", design.Rejected[^1].Conductor.Name);

        // Without a cut-out of its own nothing protects the motor: undetermined, and the advice says what to fit.
        CircuitDesign bare = CircuitDesigner.Verify(
            new CircuitRequirements(design.Requirements) { Load = Load.Motor(A(6), A(20), A(20), Duration.FromSeconds(0.5)) }, Awg(10), Blade(20), BoatTable());
        Assert.Equal(Verdict.Undetermined, bare.Verdict);
        Assert.Equal(CheckKind.StalledMotor, Assert.Single(bare.Undetermined).Kind);
        Assert.Contains("at the 20 A of the stalled motor the 20 A blade fuse (ISO 8820-3 type C) need not open", bare.Undetermined[0].Note, StringComparison.Ordinal);
        Assert.StartsWith("Fit a motor with a thermal cut-out of its own", Assert.Single(bare.Advice), StringComparison.Ordinal);
        Near(rated, design.Ampacity!.Current.Amperes, 1e-12);
        Assert.Contains("applied as a practice", Assert.Single(design.Ampacity.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void LightAircraft_LampThroughTheAirframe_SmallestSize()
    {
        // 50 W at 28 V, 1000 starts; size 22: 16.20 Ω/1000 ft, 755 circular mils, 5 A at 150 °C, in the 70 °C that the table is for: 80 K of rise. Airframe 2 mΩ.
        Source source = Source.BehindResistance(V(24), V(28), V(29), MilliOhm(10), MilliOhm(20));
        CircuitDesign design = CircuitDesigner.Design(
            new CircuitRequirements(Circuit(
                Load.Lamp(W(50), V(28)),
                source,
                feed: 5,
                back: ReturnPath.Chassis(MilliOhm(2)),
                ambient: 20,
                insulation: InsulationMaterial.Etfe)) { Starts = 1000 },
            OnCurrents(DesignRules.LightAircraft));
        double r = 16.20 / 0.3048, area = 755 * Math.PI / 4 * 0.0254 * 0.0254;
        double[] volts = [24, 28, 29], inner = [0.020, 0.015, 0.010];
        double lamp(double u) => 50 / 28.0 * Math.Pow(u / 28, 0.55);
        double chain(double i) => 5 * Plain.PerMeter(r, Plain.Warm(20, 20 + 80, i, 5));
        var points = volts.Zip(inner, (v, ri) => (Point: Plain.Settle(v, ri + 0.022, chain, lamp), Inner: ri)).ToArray();
        double most = points.Max(p => p.Point.Amperes), theta = Plain.Warm(20, 20 + 80, most, 5);
        Chosen(design, "aircraft wire size 22", 5, "ISO 8820-3 type C", Verdict.Pass);
        design.Is(CheckKind.MechanicalMinimum, area, area, 1e-9);
        design.Is(CheckKind.VoltageDrop, points.Max(p => p.Point.Amperes * (p.Point.Ohms - p.Inner)), 1);
        design.Is(CheckKind.ContinuousCurrent, most, 5);
        design.Is(CheckKind.ConductorTemperature, theta, 150);
        design.Is(CheckKind.FuseCarriesLoad, 5, most / 0.8, 1e-7);
        design.Is(CheckKind.FuseProtectsWire, 5, 5, 1e-8);
        design.Is(CheckKind.FuseVoltage, 32, 29);
        design.Is(CheckKind.BreakingCapacity, 29 / 0.030, 1000);

        // Cold filament: 28 V·28 V/50 W/14 = 1.12 Ω; behind source, lead, airframe and the cold wire. It fades with 0.05 s/3 to what runs by then. 1000 starts: 38 % of the least
        // I²·t up to the peak, here that of the gate at 350 %: (3.5·5)²·0.04 = 12.25 A²s. The stated points alone prove 0.02 s at the peak, 8.4 A²s, which is too little.
        double path = 0.010 + 0.022 + (5 * Plain.PerMeter(r, 20)), peak = 29 / (path + 1.12);
        double running = Plain.Settle(29, path, _ => 0, lamp).Amperes;
        (double melting, double joule) = Plain.Fading(Plain.BladeLeast, 5, running, peak, 0.05 / 3, path, 1.12, (29 / running) - path);
        Assert.True(joule > 0.38 * peak * peak * 0.02 && peak < 6 * 5 && peak * peak * Plain.Time(Plain.BladeLeast, 5, peak) > 12.25);
        design.Is(CheckKind.InrushHeld, Math.Max(melting, joule / (0.38 * 12.25)), 1, 1e-3);
        Assert.Equal(CheckOutcome.Pass, design.Of(CheckKind.InrushHeld).Outcome);

        // The next smaller fuse, 4 A, carries the lamp but not its starts: (3.5·4)²·0.04 = 7.84 A²s.
        (_, double onFour) = Plain.Fading(Plain.BladeLeast, 4, running, peak, 0.05 / 3, path, 1.12, (29 / running) - path);
        CircuitDesigner.Verify(design.Requirements, design.Wire, Blade(4), design.Rules).Is(CheckKind.InrushHeld, onFour / (0.38 * 7.84), 1, 1e-3);

        // No short-circuit limit is published for ETFE: the fault finds the wire as the load leaves it, and must not pass 150 °C.
        Fault(design, Plain.BladeLongest, 5, new Loop(24, 0.020 + 0.022, 5), 29 / 0.030, r, area, 150, 150, from: theta);
        Near(5, design.Ampacity!.Current.Amperes, 1e-12);
    }

    [Fact]
    public void Bench_ConverterOnTwentyFourVolts_DrawsMostAtTheLowestVoltage()
    {
        // Two blocks: 23.78, 24, 28.8 V. 100 W out at 90 %, works from 18 V, 2 m out and back, class 5.
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(Load.ConstantPower(W(100), 0.9, V(18)), LeadAcid(2), feed: 2, upstreamMilliOhms: 25), DesignRules.Bench);
        Conductor wire = design.Wire!;
        Chosen(design, "0.75 mm² class 5 copper", 7.5, "ISO 8820-3 type C", Verdict.Pass);

        // The rating by the heat room's own entrance, less 3 %; the rest by arithmetic. IEC 60228 class 5, 0.75 mm²: 26.0 Ω/km.
        Surroundings air = new() { Ambient = C(30), Emissivity = 0.9 };
        WireBundle pair = WireBundle.Create(Wire.Create(wire, InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.30)), 2, 2);
        double rated = 0.97 * BundleHeat.CurrentFor(pair, air, C(70)).Amperes;
        double chain(double i) => 4 * Plain.PerMeter(26.0, Plain.Warm(30, 70, i, rated));
        double watts = 100 / 0.9;
        var low = Plain.Settle(23.78, 0.036 + 0.025, chain, u => watts / u);
        Near(watts, low.Amperes * low.Volts, 1e-12);
        design.Is(CheckKind.VoltageDrop, low.Amperes * (low.Ohms - 0.036), 0.72);
        design.Is(CheckKind.LoadVoltage, low.Volts, 18);
        design.Is(CheckKind.ContinuousCurrent, low.Amperes, rated);
        design.Is(CheckKind.FuseCarriesLoad, 7.5, low.Amperes / 0.8, 1e-7);
        design.Is(CheckKind.FuseProtectsWire, 7.5, rated, 1e-7);
        design.Is(CheckKind.FuseVoltage, 32, 28.8);
        design.Is(CheckKind.BreakingCapacity, 28.8 / (0.0072 + 0.025), 1000);
        Fault(design, Plain.BladeLongest, 7.5, new Loop(23.78, 0.036 + 0.025, 4), 28.8 / 0.0322, 26.0, 0.75, 70, 160);

        // The conductor temperature by physics: the balance at the current raised by the margin.
        double theta = BundleHeat.TemperatureAt(pair, air, A(low.Amperes / 0.97)).DegreesCelsius;
        design.Is(CheckKind.ConductorTemperature, theta, 70);
    }

    [Fact]
    public void RoadVehicle_DutyCycleThroughTheBody_RootMeanSquareHeatsAndPeakDrops()
    {
        // 10 A for a quarter of the time, 4 m, body 3 mΩ, class A (85 °C): no table, so the heat balance alone.
        InsulationMaterial insulation = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.A);
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(
                Load.ConstantCurrent(A(10)).WithDutyCycle(DutyCycle.FromFraction(0.25)),
                feed: 4,
                back: ReturnPath.Chassis(MilliOhm(3)),
                ambient: 60,
                conductors: 1,
                insulation: insulation,
                upstreamMilliOhms: 16,
                joints: [Joint.Create("switch", MilliOhm(4)), Joint.Create("fuse and holder", MilliOhm(3))]),
            DesignRules.RoadVehicle);
        Chosen(design, "10 mm² road-vehicle copper", 15, "ISO 8820-3 type C", Verdict.Pass);

        // ISO 6722, 10 mm²: 1.82 mΩ/m, wall 0.60 mm (both from memory). Emissivity of an unknown compound 0.85.
        Surroundings air = new() { Ambient = C(60), Emissivity = 0.85 };
        double rated = 0.97 * HeatBalance.CurrentFor(Wire.Create(RoadVehicle(10), insulation, Length.FromMillimeters(0.60)), air, C(85)).Amperes;
        double theta = Plain.Warm(60, 85, 5, rated);
        design.Is(CheckKind.VoltageDrop, 10 * ((4 * Plain.PerMeter(1.82, theta)) + 0.003 + 0.007 + 0.016), 0.36);
        design.Is(CheckKind.ContinuousCurrent, 5, rated);
        design.Is(CheckKind.FuseCarriesLoad, 15, 12.5, 1e-8);
        Fault(design, Plain.BladeLongest, 15, new Loop(11.89, 0.018 + 0.026, 4), 14.4 / 0.0196, 1.82, 10, 85, 135);
    }

    [Fact]
    public void RoadVehicleTable_ResistanceOverASharedReturn_OthersDropAndHeatIt()
    {
        // A 1.6 Ω heater, 2 m feed; back over 1 m of 16 mm² that carries 40 A of others. Table at 50 °C: √(20/40); two together 0.825 (FAA AC 43.13-1B figure 11-5, 100 %).
        double warm = Math.Sqrt(20 / 40.0) * 0.825;
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(
                Load.Resistance(ElectricResistance.FromOhms(1.6)),
                feed: 2,
                back: ReturnPath.Shared([Segment.Create(RoadVehicle(16), M(1))], A(40)),
                ambient: 50),
            TableRules());

        // A 15 A fuse: 1.5 mm² carries 24·0.7071·0.825 = 14.0 A, 2 mm² between the rows of 24 A and 32 A, on a straight line of logarithms, 28.2·0.583 = 16.5 A.
        Chosen(design, "2 mm² road-vehicle copper", 15, "ISO 8820-3 type C", Verdict.Pass);
        double rated = 24 * Math.Pow(2 / 1.5, Math.Log(32 / 24.0) / Math.Log(2.5 / 1.5)) * warm, ratedShared = 98 * warm;
        double sharedOhms = Plain.PerMeter(1.16, 70);
        double chain(double i) => 2 * Plain.PerMeter(9.42, Plain.Warm(50, 70, i, rated));
        var points = LeadVolts.Zip(LeadOhms, (v, ri) => (Point: Plain.Settle(v - (40 * sharedOhms), ri + 0.020 + sharedOhms, chain, u => u / 1.6), Inner: ri)).ToArray();
        double most = points.Max(p => p.Point.Amperes);
        design.Is(CheckKind.VoltageDrop, points.Max(p => (p.Point.Amperes * (p.Point.Ohms - p.Inner)) + (40 * sharedOhms)), 0.36 * 2);
        Assert.True(40 + most > 0.5 * ratedShared);

        // The shared wire carries 40 A more: it is the tightest, and the hottest.
        design.Is(CheckKind.ContinuousCurrent, 40 + most, ratedShared);
        design.Is(CheckKind.ConductorTemperature, Plain.Warm(50, 70, 40 + most, ratedShared), 70);
        design.Is(CheckKind.FuseCarriesLoad, 15, most / 0.8, 1e-7);

        // The fuse may be as large as the feed allows, and as what the others leave of the return: 57.2 − 40 = 17.2 A: it is the feed that says so.
        design.Is(CheckKind.FuseProtectsWire, 15, Math.Min(rated, ratedShared - 40), 1e-8);

        Assert.Equal("feed", design.Of(CheckKind.FuseProtectsWire).Where);

        Assert.Equal(CheckKind.FuseProtectsWire, design.Governing.Kind);
        Near(24 * warm, design.Governing.Limit, 1e-8);
        Assert.Equal("feed", design.Governing.Where);

        // In a fault the others' current still takes its part of the voltage, and feed and return heat, the return by both currents. Beyond 90 A the fuse needs 6²·15²·0.1 = 810 A²s.
        // By small steps of time; the library counts the others' heat from above, by the least current of the fault.
        double seconds = 0, joule = 0, feedCelsius = 70, backCelsius = 70, amperes = 0;
        double feedSection = Plain.Rho / 0.00942 * 1e-6, backSection = Plain.Rho / 0.00116 * 1e-6;
        const double Step = 1e-6;
        for (; joule < 810; seconds += Step)
        {
            double feedOhms = Plain.PerMeter(9.42, feedCelsius), backOhms = Plain.PerMeter(1.16, backCelsius);
            amperes = (11.89 - (40 * backOhms)) / (0.018 + 0.020 + (2 * feedOhms) + backOhms);
            joule += amperes * amperes * Step;
            feedCelsius += amperes * amperes * feedOhms * Step / (Plain.HeatCapacity * feedSection);
            backCelsius += (amperes + 40) * (amperes + 40) * backOhms * Step / (Plain.HeatCapacity * backSection);
        }

        Assert.True(amperes > 6 * 15 && Plain.Rho / 0.00942 < 2 && Plain.Rho / 0.00116 < 16);
        CheckResult fault = design.Of(CheckKind.FaultOpensFuse);
        Assert.InRange(fault.Value!.Value, seconds - 2e-6, 1.001 * seconds);
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(9.42, 2.5, 810, 70), 160, 1e-6);
    }

    [Fact]
    public void RoadVehicleTable_FeedAndReturnOfSeveralSizes_EachStretchByItsOwnRating()
    {
        // Existing wiring: 2 m of 4 mm² and 1 m of two 1.5 mm² side by side out; 2.5 mm² and a 1 mm² pigtail back. 7 A.
        CircuitPath path = CircuitPath.Create(
            [Segment.Create(RoadVehicle(4), M(2)), Segment.Create(RoadVehicle(1.5), M(1), 2)],
            ReturnPath.Wire(Segment.Create(RoadVehicle(2.5), M(3)), Segment.Create(RoadVehicle(1), M(0.3))))
            .WithFeedJoints(Joint.Create("connector", MilliOhm(2))).WithReturnJoints(Joint.Create("ring", MilliOhm(1)));
        CircuitDesign design = CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(7)), conductors: 4, drop: DropLimit.Percent(3)), path, Blade(10), TableRules());

        // Four loaded conductors are two circuits: 0.80, on top of 0.825 from one to a pair. Table: 42, 24, 32, 19 A.
        double r4 = 42 * 0.66, r15 = 24 * 0.66, r25 = 32 * 0.66, r1 = 19 * 0.66;
        double ohms = (2 * Plain.PerMeter(4.71, Plain.Warm(30, 70, 7, r4)))
            + (0.5 * Plain.PerMeter(12.7, Plain.Warm(30, 70, 3.5, r15)))
            + (3 * Plain.PerMeter(7.60, Plain.Warm(30, 70, 7, r25)))
            + (0.3 * Plain.PerMeter(18.5, Plain.Warm(30, 70, 7, r1)));
        Assert.Equal(Verdict.Fail, design.Verdict);
        design.Is(CheckKind.MechanicalMinimum, 1, 0.5);
        design.Is(CheckKind.VoltageDrop, 7 * (ohms + 0.003 + 0.020), 0.36);
        Assert.Equal(CheckKind.VoltageDrop, design.Governing.Kind);
        design.Is(CheckKind.ContinuousCurrent, 7, r1);
        design.Is(CheckKind.ConductorTemperature, Plain.Warm(30, 70, 7, r1), 70);
        design.Is(CheckKind.FuseProtectsWire, 10, r1, 1e-8);

        // Each check names the stretch that it is about.
        const string Pigtail = "return, 0.3 m of 1 mm² road-vehicle copper";
        Assert.All(
            new[] { CheckKind.MechanicalMinimum, CheckKind.ContinuousCurrent, CheckKind.ConductorTemperature, CheckKind.FuseProtectsWire, CheckKind.ShortCircuitTemperature },
            kind => Assert.Equal(Pigtail, design.Of(kind).Where));
        Assert.Contains(", " + Pigtail + ": pass", design.Of(CheckKind.ContinuousCurrent).ToString(), StringComparison.Ordinal);
        Assert.Equal("feed, 1 m of 2 × 1.5 mm² road-vehicle copper", design.Of(CheckKind.FaultInOneParallelWire).Where);

        // In a fault the four stretches heat each at its own pace, the last Joule of the fuse (6² · 10² · 0.1 = 360 A²s, beyond 60 A) being the same for all.
        double[] sections = [1 / 58.0 / 4.71e-3, 1 / 58.0 / 12.7e-3, 1 / 58.0 / 7.60e-3, Math.Min(1, 1 / 58.0 / 18.5e-3)];
        double[] perKilometer = [4.71, 12.7, 7.60, 18.5], lengths = [2, 0.5, 3, 0.3], sides = [1, 2, 1, 1], nominal = [4, 1.5, 2.5, 1];
        double seconds = 0, least = 0;
        const int Steps = 4000;
        for (int n = 0; n < Steps; n++)
        {
            double ohmsNow = 0.018 + 0.023;
            for (int k = 0; k < 4; k++)
            {
                double joule = 360.0 * (n + 0.5) / Steps / (sides[k] * sides[k]);
                ohmsNow += lengths[k] * Plain.PerMeter(perKilometer[k], Plain.Adiabatic(perKilometer[k], nominal[k], joule, 70));
            }

            least = 11.89 / ohmsNow;
            seconds += 360.0 / Steps / (least * least);
        }

        Assert.True(sections.Zip(nominal).All(s => s.First < s.Second) && least > 60);
        design.Is(CheckKind.FaultOpensFuse, seconds, 5, 1e-6);
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(18.5, 1, 360, 70), 160);
        Assert.Contains("Feed 3 m one way; return 3.3 m of given wire.", design.Assumptions);
        Assert.Contains("Joints 3 mΩ in all.", design.Assumptions);
    }

    [Fact]
    public void BuildingTable_LithiumPackThatDisconnects_CountsOnTheFuseAlone()
    {
        // Four cells, 100 Ah: 10, 12.8, 14.6 V; 1.6 mΩ nominal, half and twice for least and greatest; disconnects above 60 A. 240 W from 10 V up.
        // Method C, two loaded, 70 °C: 10 mm² 63 A (IEC 60364-5-52); 40 °C: 0.87; two circuits: 0.80.
        DesignRules rules = new(DesignRules.Bench) { Ampacity = AmpacityBasis.BuildingTable, DropLimit = DropLimit.Percent(5) };
        Source source = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), A(60));
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(Load.ConstantPower(W(240)), source, feed: 2, ambient: 40, conductors: 4, upstreamMilliOhms: null), rules);
        double rated = 63 * 0.87 * 0.80;
        Chosen(design, "10 mm² class 5 copper", 35, "ISO 8820-3 type C", Verdict.Undetermined);
        double chain(double i) => 4 * Plain.PerMeter(1.91, Plain.Warm(40, 70, i, rated));
        var low = Plain.Settle(10, 0.0032, chain, u => 240 / u);
        design.Is(CheckKind.VoltageDrop, low.Amperes * (low.Ohms - 0.0032), 0.64);
        design.Is(CheckKind.ContinuousCurrent, low.Amperes, rated);
        design.Is(CheckKind.ConductorTemperature, Plain.Warm(40, 70, low.Amperes, rated), 70);
        design.Is(CheckKind.FuseCarriesLoad, 35, low.Amperes / 0.8, 1e-7);
        design.Is(CheckKind.FuseProtectsWire, 35, rated, 1e-8);

        // 14.6 V over 0.8 mΩ is 18 250 A at the terminals: undetermined until the supply lead is known.
        CheckResult breaking = design.Of(CheckKind.BreakingCapacity);
        Assert.Equal(CheckOutcome.Undetermined, breaking.Outcome);
        Near(14.6 / 0.0008, breaking.Value, 1e-9);
        Assert.Equal((null, null), (breaking.Limit, breaking.Margin));
        Assert.StartsWith("up to 18250 A at the source's terminals, the fuse breaks 1000 A: state the resistance", breaking.Note, StringComparison.Ordinal);
        Fault(design, Plain.BladeLongest, 35, new Loop(10, 0.0032, 4), 14.6 / 0.0008, 1.91, 10, 70, 160);
        Near(rated, design.Ampacity!.Current.Amperes, 1e-12);
    }

    [Fact]
    public void Bench_SupplyHeldBelowTheWire_NothingHasToOpen()
    {
        // 12 V, 5 A limit, 4 A load, 0.5 m: 0.5 mm² carries 5 A in free air continuously.
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(Load.ConstantCurrent(A(4)), Source.CurrentLimited(V(12), A(5)), feed: 0.5, conductors: 1, upstreamMilliOhms: 0), DesignRules.Bench);
        Chosen(design, "0.5 mm² class 5 copper", 5, "ISO 8820-3 type C", Verdict.Pass);
        design.Is(CheckKind.BreakingCapacity, 5, 1000);
        Assert.Equal((CheckOutcome.Pass, null), (design.Of(CheckKind.FaultOpensFuse).Outcome, design.Of(CheckKind.FaultOpensFuse).Value));
        Assert.Contains("carries continuously", design.Of(CheckKind.FaultOpensFuse).Note, StringComparison.Ordinal);
        Assert.Null(design.Find(CheckKind.ShortCircuitTemperature));
        double rated = design.Of(CheckKind.ContinuousCurrent).Limit!.Value;
        design.Is(CheckKind.VoltageDrop, 4 * Plain.PerMeter(39.0, Plain.Warm(30, 70, 4, rated)), 0.36);
    }

    [Fact]
    public void RoadVehicle_FortyEightVoltMotor_HighCurrentBladeOfFiftyEightVolts()
    {
        // Four blocks: 47.56, 48, 57.6 V. 36 A running, 70 A for 1 s; its own two conductors together: 73 A of the road-vehicle table times 0.825.
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(
                Load.Motor(A(36), A(70), A(90), Duration.FromSeconds(1)),
                LeadAcid(4),
                feed: 5,
                conductors: 1,
                upstreamMilliOhms: 60),
            TableRules());
        Chosen(design, "10 mm² road-vehicle copper", 50, "ISO 8820-3 type E, 58 V", Verdict.Pass);
        double rated = 73 * 0.825, theta = Plain.Warm(30, 70, 36, rated);
        design.Is(CheckKind.VoltageDrop, 36 * ((10 * Plain.PerMeter(1.82, theta)) + 0.060), 0.06 * 48);
        design.Is(CheckKind.ContinuousCurrent, 36, rated);
        design.Is(CheckKind.FuseVoltage, 58, 57.6);
        design.Is(CheckKind.FuseProtectsWire, 50, rated, 1e-8);

        // 140 % of 50 A: between 60 s at 135 % and 2 s at 200 %, form E.
        double held = Math.Exp(Math.Log(60) + (Math.Log(1.4 / 1.35) / Math.Log(2 / 1.35) * Math.Log(2.0 / 60)));

        // One start takes 1/held of it; 10 000 starts of 70² A²s against 29 % of the least I²·t up to there, 70²·held (the gate at 135 % has more).
        Assert.True(67.5 * 67.5 * 60 > 70 * 70 * held);
        design.Is(CheckKind.InrushHeld, 1 / (0.29 * held), 1);
        Fault(design, Plain.HighCurrentLongest, 50, new Loop(47.56, 0.072 + 0.060, 10), 57.6 / (0.0144 + 0.060), 1.82, 10, 70, 160);
    }

    private static DesignRules BoatTable() => new(DesignRules.SmallCraft) { Ampacity = AmpacityBasis.SmallCraftTable };

    // The rule on currents alone; overloads over all currents have tests of their own.
    private static DesignRules TableRules() => OnCurrents(new(DesignRules.RoadVehicle) { Ampacity = AmpacityBasis.RoadVehicleTable, DropLimit = DropLimit.Percent(6) });

    private static DesignRules OnCurrents(DesignRules rules) => new(rules) { FusePractice = new FusePractice { Overload = null, Distance = rules.FusePractice.Distance } };

    private static void Chosen(CircuitDesign design, string wire, double fuse, string series, Verdict verdict)
    {
        Assert.True(verdict == design.Verdict, design + ": " + string.Join("; ", design.Checks));
        Assert.Equal(wire, design.Wire!.Name);
        Assert.Equal(fuse, design.Fuse!.Current.Amperes);
        Assert.Equal(series, design.Fuse.Series.Name);
    }

    /// <summary>The fuse's longest time on a fault whose current falls as the wire heats, and the adiabatic temperature after the greatest I²t from there to the greatest current.</summary>
    private static void Fault(
        CircuitDesign design, (double Multiple, double Seconds)[] gates, double fuse, Loop least, double greatest, double ohmsPerKilometer, double area, double hot, double limit, double? from = null)
    {
        (double seconds, double amperes) = Plain.Clear(gates, fuse, least.Volts, least.FixedOhms, least.Meters, ohmsPerKilometer, area, hot);

        // 20 000 steps: the last one is taken in proportion.
        design.Is(CheckKind.FaultOpensFuse, seconds, 5, 1e-6);
        design.Is(CheckKind.ShortCircuitTemperature, Plain.Adiabatic(ohmsPerKilometer, area, Plain.MostJoule(gates, fuse, amperes, greatest), from ?? hot), limit, 1e-6);
    }

    /// <summary>The loop of the least fault: volts, ohms that do not heat, metres of the wire out and back.</summary>
    private readonly record struct Loop(double Volts, double FixedOhms, double Meters);
}
