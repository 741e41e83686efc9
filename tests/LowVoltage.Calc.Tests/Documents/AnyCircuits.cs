using FsCheck;
using FsCheck.Fluent;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>Random circuits of every kind of source, load and return, on carried and stated rules.</summary>
internal static class AnyCircuits
{
    private static readonly Reference Sheet = Reference.Create("a data sheet, \"invented\" ü °", ReferenceKind.Handbook).WithLocator("§ 3");

    internal static Gen<Source> Sources { get; } = Gen.OneOf(
        from amperes in Log(50, 2000) from test in Gen.Elements(Enum.GetValues<ColdCrankingStandard>()) from blocks in Gen.Choose(1, 2) from strings in Gen.Choose(1, 3) from celsius in Maybe(Even(-18, 25))
        select Battery.LeadAcid(A(amperes), test, blocks, strings, celsius is { } known ? C(known) : null),
        from cells in Gen.Choose(3, 16) from hours in Log(1, 900) from limit in Maybe(Log(20, 500))
        select Battery.LithiumIronPhosphate(cells, ElectricCharge.FromAmpereHours(hours), limit is { } known ? A(known) : null),
        Log(5, 48).Select(Source (volts) => Source.Ideal(V(volts))),
        Log(5, 40).Select(Source (volts) => Source.Ideal(V(volts * 0.9), V(volts), V(volts * 1.2))),
        Log(5, 48).Zip(Log(1e-4, 0.3), Source (volts, ohms) => Source.BehindResistance(V(volts), R(ohms))),
        Log(5, 40).Zip(Log(1e-4, 0.3), Source (volts, ohms) => Source.BehindResistance(V(volts * 0.9), V(volts), V(volts * 1.2), R(ohms / 3), R(ohms))),
        Log(5, 48).Zip(Log(1, 100), Source (volts, amperes) => Source.CurrentLimited(V(volts), A(amperes))),
        Log(12, 29).Zip(Log(20, 200), Source (volts, amperes) => Source.Alternator(V(volts), A(amperes))),
        Log(5, 20).Zip(Log(1, 60), Source (volts, amperes) => Source.InSeries(Source.BehindResistance(V(volts), R(0.01)), Battery.LeadAcid(A(amperes * 10)), Source.CurrentLimited(V(5), A(amperes)))),
        Log(100, 900).Select(Source (amperes) => Source.InParallel(Battery.LeadAcid(A(amperes)), Source.BehindResistance(V(12), R(0.02)))));

    private static Gen<Load> OneLoad { get; } = Gen.OneOf(
        Log(0.2, 100).Select(ohms => Load.Resistance(R(ohms))),
        Log(0.01, 60).Select(amperes => Load.ConstantCurrent(A(amperes))),
        Log(0.1, 600).Zip(Even(0.3, 1), (watts, share) => Load.ConstantPower(Power.FromWatts(watts), share)),
        Log(1, 200).Zip(Even(1, 25), Load (watts, ratio) => Load.Lamp(Power.FromKilowatts(watts / 1000), V(12 + (watts / 999)), ratio)),
        Log(0.5, 20).Zip(Log(0.01, 3), (amperes, seconds) => Load.Motor(A(amperes), A(amperes * 3), A(amperes * 4.4), S(seconds))),
        Log(0.5, 20).Zip(Log(0.01, 3), (amperes, seconds) => Load.Motor(A(amperes), A(amperes), A(amperes * 4.4), S(seconds), V(12))));

    private static Gen<Load> Varied { get; } =
        from load in OneLoad
        from minimum in Maybe(Log(1, 11))
        from duty in Maybe(Log(1e-3, 1))
        from period in Log(0.1, 1000)
        from cutOut in Gen.Choose(0, 3)
        from farads in Maybe(Log(1e-6, 0.1))
        select Vary(load, minimum, duty, period, cutOut == 0, farads);

    internal static Gen<Load> Loads { get; } = Gen.Frequency<Load>(
        (4, Varied),
        (1, from one in Varied from other in Varied from third in OneLoad select Load.Together(one, Load.Together(other, third))));

    private static Gen<InsulationMaterial> Insulation { get; } = Gen.OneOf(
        Gen.Elements(InsulationMaterial.PolyvinylChloride, InsulationMaterial.CrossLinkedPolyethylene, InsulationMaterial.Etfe, InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C)),
        Even(50, 200).Select(celsius => InsulationMaterial.Rated("rated", C(celsius))),
        Even(50, 200).Select(celsius => InsulationMaterial.Rated("rated", C(celsius), C(celsius * 1.3))),
        Even(50, 200).Zip(Even(0.1, 0.4), (celsius, conductivity) => InsulationMaterial.Create("own", C(celsius), C(celsius), ThermalConductivity.FromWattsPerMeterKelvin(conductivity), VolumetricHeatCapacity.FromKilojoulesPerCubicMeterKelvin(1700 + celsius), conductivity * 2, Sheet)),
        Even(0.1, 0.4).Select(conductivity => InsulationMaterial.PolyvinylChloride.WithThermal(ThermalConductivity.FromWattsPerMeterKelvin(conductivity), VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(2e6), 0.9, Sheet)));

    private static Gen<Conductor> Metals { get; } = Gen.OneOf(
        Gen.Elements(ConductorSeries.RoadVehicle.Conductors.ToArray()),
        Gen.Elements(ConductorSeries.AwgStranded.Conductors.ToArray()),
        Gen.Elements(ConductorSeries.AircraftWire.Conductors.ToArray()),
        Gen.Elements(ConductorSeries.VehicleGauge.Conductors.ToArray()),
        Gen.Elements(MetricSize.Iec60228Series.Where(size => size.SquareMillimeters is > 10 and < 300).ToArray()).Select(size => Conductor.Iec60228(size, Iec60228Class.Stranded, Iec60228Metal.Aluminium)),
        Gen.Elements(-3, 4, 14, 22).Zip(Even(0.05, 0.4), (number, share) => Conductor.Solid(AwgSize.FromNumber(number), ConductorMaterial.CopperCladAluminium(share))),
        Gen.Elements(0.2, 0.4, 1, 3).Select(strand => Conductor.Stranded(AwgSize.FromNumber(10), ConductorMaterial.TinnedCopperOfStrand(Length.FromMillimeters(strand)))),
        Log(0.5, 90).Select(area => Conductor.OfArea(Area.FromSquareMillimeters(area), ConductorMaterial.MildSteel)),
        Gen.Choose(7, 300).Zip(Log(0.1, 0.8), (strands, diameter) => Conductor.StrandedFrom(strands, Length.FromInches(diameter / 25.4), ConductorMaterial.FromConductivity(97.3))),
        Even(0.0016, 0.005).Select(ohms => Conductor.Create("own", MetricSize.FromSquareMillimeters(10), PerMeter(ohms), Area.FromSquareMillimeters(11.1), Length.FromMillimeters(4.4), ConductorMaterial.HardDrawnCopper, Sheet)));

    private static Gen<Place> Places { get; } =
        from ambient in Even(-40, 85) from loaded in Maybe(Even(1, 40)) from share in Even(0.01, 1) from altitude in Even(0, 9000) from engine in Gen.Elements(true, false)
        select new Place { Ambient = C(ambient), LoadedConductors = (int?)loaded, BundleLoading = share, Altitude = Length.FromMeters(altitude), EngineSpace = engine };

    private static Gen<Segment> Stretches { get; } =
        from conductor in Metals
        from meters in Log(0.05, 50)
        from parallel in Gen.Choose(1, 3)
        from insulation in Gen.OneOf(Gen.Constant((InsulationMaterial?)null), Insulation.Select(own => (InsulationMaterial?)own))
        from wall in Maybe(Log(0.2, 2))
        from place in Gen.OneOf(Gen.Constant((Place?)null), Places.Select(own => (Place?)own))
        from celsius in Maybe(Even(20, 120))
        from rising in Gen.Elements(true, false)
        select Vary(
            insulation is null ? Segment.Create(conductor, Length.FromMeters(meters), parallel)
            : Segment.Create(wall is { } mm ? Wire.Create(conductor, insulation, Length.FromInches(mm / 25.4)) : Wire.Create(conductor, insulation), Length.FromMeters(meters), parallel),
            place,
            celsius is not { } warm ? null : rising ? ConductorTemperature.SelfHeated(C(warm), A(30 + meters), C(warm + (meters * 1.7))) : ConductorTemperature.At(C(warm)));

    private static Gen<ReturnPath> Return { get; } = Gen.OneOf(
        Log(0.05, 60).Select(meters => ReturnPath.Wire(Length.FromMeters(meters))),
        Log(1e-4, 0.1).Select(ohms => ReturnPath.Chassis(R(ohms))),
        Log(1e-4, 0.1).Zip(Log(0.1, 50), (ohms, amperes) => ReturnPath.Shared(R(ohms), A(amperes))),
        Stretches.ArrayOf(2).Select(segments => ReturnPath.Wire(segments)),
        Stretches.ArrayOf(2).Zip(Log(0.1, 50), (segments, amperes) => ReturnPath.Shared(segments, A(amperes))));

    internal static Gen<DesignRules> Rules { get; } = Gen.Frequency(
        (3, Gen.Elements(DesignRules.Presets.ToArray())),
        (1, from preset in Gen.Elements(DesignRules.Presets.ToArray()) from percent in Log(0.5, 20) from loading in Even(0.5, 1) select new DesignRules(preset)
        {
            DropLimit = DropLimit.Percent(percent), FusePractice = new FusePractice(preset.FusePractice) { Loading = loading, Overload = loading > 0.8 ? null : OverloadAllowance.Ageing6Hours, Distance = SourceDistance.Iso13590 },
        }),
        (1, Gen.Elements(OwnRules())));

    internal static Gen<CircuitRequirements> Requirements { get; } =
        from source in Sources
        from load in Loads
        from feed in Log(0.05, 60)
        from back in Return
        from joint in Log(1e-4, 0.1)
        from upstream in Maybe(Log(1e-4, 0.1))
        from distance in Maybe(Log(0.01, 3))
        from place in Places
        from insulation in Insulation
        from wall in Maybe(Log(0.2, 3))
        from starts in Maybe(Even(1, 90_000))
        from fuseAir in Maybe(Even(-20, 80))
        from drop in Maybe(Log(0.05, 3))
        from flag in Gen.Elements(true, false)
        from wires in Gen.Choose(1, 4)
        select new CircuitRequirements
        {
            Name = flag ? "any \"ü\" 😀\n²" : "",
            Source = source,
            Load = load,
            Feed = Length.FromMeters(feed),
            Return = back,
            Joints = flag ? [] : [Joint.Create("joint", R(joint)), Joint.Create("", R(joint / 7))],
            Upstream = upstream is { } ohms ? R(ohms) : null,
            UpstreamProtection = flag ? [] :
            [
                UpstreamProtection.Device("main breaker", ElectricCurrent.FromAmperes(63), null, ElectricCurrent.FromAmperes(6000)).WithUpstream(ElectricResistance.Zero),
                UpstreamProtection.Fuse(FuseSeries.IndustrialGgBladeContacts.Ratings[3]).WithDistance(Length.FromMeters(1), sheathed: true).WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(1800)),
            ],
            FuseDistance = distance is { } meters ? Length.FromMeters(meters) : null,
            SheathedToFuse = flag,
            FuseAmbient = fuseAir is { } celsius ? C(celsius) : null,
            Starts = (int?)starts,
            Place = place,
            Insulation = insulation,
            Wall = wall is { } mm ? Length.FromMillimeters(mm) : null,
            Intermittent = !flag,
            ParallelWires = ParallelWires.Between(wires, flag ? wires : wires + 2),
            DropLimit = drop is { } volts ? DropLimit.Volts(V(volts), flag ? Sheet : null) : null,
        };

    internal static Gen<CircuitPath> Path { get; } =
        from feed in Stretches.ArrayOf(3)
        from back in Return
        from joint in Log(1e-4, 0.1)
        select CircuitPath.Create(back.Kind == ReturnKind.SameConductor ? feed.Take(1).ToArray() : feed, back).WithFeedJoints(Joint.Create("plug", R(joint))).WithReturnJoints(Joint.Create("lug", R(joint / 3)));

    internal static Gen<double> Log(double least, double most) => Gen.Choose(0, 1_000_000).Select(i => least * Math.Pow(most / least, i / 1e6));

    internal static Gen<double> Even(double least, double most) => Gen.Choose(0, 1_000_000).Select(i => least + ((most - least) * i / 1e6));

    internal static Gen<double?> Maybe(Gen<double> gen) => Gen.OneOf(Gen.Constant((double?)null), gen.Select(x => (double?)x));

    private static Load Vary(Load load, double? minimum, double? duty, double period, bool cutOut, double? farads)
    {
        load = minimum is { } volts ? load.WithMinimumVoltage(V(volts)) : load;
        load = duty is { } share ? load.WithDutyCycle(period > 500 ? DutyCycle.FromFraction(share) : DutyCycle.FromTimes(S(share * period), S(period))) : load;
        load = cutOut ? load.WithThermalCutOut() : load;
        return farads is { } capacitance ? load.WithInputCapacitor(ElectricCapacitance.FromFarads(capacitance)) : load;
    }

    private static Segment Vary(Segment segment, Place? place, ConductorTemperature? warmth)
    {
        segment = place is null ? segment : segment.WithPlace(place);
        return warmth is null ? segment : segment.WithTemperature(warmth);
    }

    private static DesignRules[] OwnRules()
    {
        FuseSeries own = FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = "own", Kind = "fuse", Reference = Sheet, Ratings = [A(5), A(10), A(25.5), A(60)], VoltageRating = V(58), VoltageBasis = RatingBasis.DirectCurrent, BreakingCapacity = A(2000),
            BreakingCapacityBasis = RatingBasis.DirectCurrent, BreakingCapacityReference = Sheet, Rerating = AmbientRerating.Create("own", Sheet, [C(20), C(85)], [1.1, 0.7]),
            Curves =
            [
                null, TimeCurrentCurve.Create([Point(13.5, 1)], [Point(13.5, 600), Point(60, 0.1)], Point(11, 36000)), TimeCurrentCurve.CreateCircuitBreaker([], [Point(40, 3600), Point(300, 0.01)]),
                TimeCurrentCurve.Create([Point(81, 1), Point(360, 0.02)], [Point(81, 600)]),
            ],
        });
        AmpacityTable table = AmpacityTable.Create(
            "own table", C(30), 2, [C(70), C(90)], [AmpacityRow.Create(AwgSize.Parse("12"), A(20), null), AmpacityRow.Create(AwgSize.Parse("4/0"), A(200), A(230)), AmpacityRow.Create(KcmilSize.FromKcmil(250), A(240), A(250))], Sheet);
        DesignRules bench = DesignRules.Bench;
        return
        [
            new(bench) { Name = "own fuses", Fuses = own, FusePractice = new FusePractice(bench.FusePractice) { Overload = OverloadAllowance.Create("own", TemperatureDelta.FromKelvins(10), TemperatureDelta.FromKelvins(20), Sheet), Distance = SourceDistance.Create("own", Length.FromInches(7), Length.FromMeters(1), Sheet) } },
            new(bench) { Fuses = FuseSeries.Combine("mine", own, FuseSeries.RoadVehicleBlade, FuseSeries.Combine("inner", FuseSeries.RoadVehicleSmallBlade, FuseSeries.RoadVehicleGlass)) },
            new(bench) { Fuses = FuseSeries.RoadVehicleStrip51.WithLimits(OperatingTimeLimits.RoadVehicleStrip), Ampacity = AmpacityBasis.LowerOf(AmpacityBasis.HeatBalance, AmpacityBasis.FromTable(Iec60364MethodF.Table)) },
            new(bench) { Conductors = ConductorSeries.AwgStranded.Only("shelf", AwgSize.Parse("14"), AwgSize.Parse("4/0")), Ampacity = AmpacityBasis.FromTable(table, AmbientDerating.Create("air factors", Sheet, [C(30), C(44.5)], [1, 0.85]), GroupingDerating.ByCircuits("loom factors", Sheet, [1, 3], [1, 0.7])), MinimumSection = Area.FromSquareInches(0.001), MinimumSectionReference = Sheet },
            new(bench) { Conductors = ConductorSeries.Create("drum", [Conductor.OfArea(Area.FromSquareMillimeters(2), ConductorMaterial.Copper), Conductor.Solid(AwgSize.Parse("8"), ConductorMaterial.Copper)], Sheet), DropLimit = DropLimit.AircraftTable },
        ];
    }

    private static Calc.Quantities.LinearResistance PerMeter(double ohmsPerMeter) => Calc.Quantities.LinearResistance.FromOhmsPerMeter(ohmsPerMeter);

    private static TimeCurrentPoint Point(double amperes, double seconds) => TimeCurrentPoint.Create(A(amperes), S(seconds));

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static ElectricPotential V(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance R(double ohms) => ElectricResistance.FromOhms(ohms);

    private static Temperature C(double celsius) => Temperature.FromDegreesCelsius(celsius);

    private static Duration S(double seconds) => Duration.FromSeconds(seconds);
}
