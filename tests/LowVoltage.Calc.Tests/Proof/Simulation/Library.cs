using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>One check of the library's answer.</summary>
internal readonly record struct LibraryCheck(string Outcome, double? Value, double? Limit);

/// <summary>What the library answered: its verdict, wire and fuse, its checks by kind, and the texts of checks and assumptions.</summary>
internal sealed record LibraryAnswer(
    string Verdict, Conductor? Wire, FuseRating? Fuse, IReadOnlyDictionary<string, LibraryCheck> Checks, Func<string> Text, Func<IReadOnlyList<string>> Assumptions)
{
    public bool Passes => Verdict == "Pass";

    public bool Fails => Verdict == "Fail";
}

/// <summary>The only place that names the library's requirements, rules and verdicts: a plain case goes in, an answer comes out.</summary>
internal static class Library
{
    private static readonly Reference Invented = Reference.CommonPractice("invented for the proof");

    public static FuseSeries Breakers { get; } = FuseSeries.Create(new FuseSeriesDefinition
    {
        Name = "invented breakers",
        Kind = "breaker",
        Reference = Invented,
        Ratings = [.. BreakerAmperes.Select(a => ElectricCurrent.FromAmperes(a))],
        VoltageRating = ElectricPotential.FromVolts(80),
        VoltageBasis = RatingBasis.DirectCurrent,
        BreakingCapacity = ElectricCurrent.FromAmperes(6000),
        BreakingCapacityBasis = RatingBasis.DirectCurrent,
        Curves = [.. BreakerAmperes.Select(BreakerCurve)],
    });

    public static FuseSeries GgDirectCurrent { get; } = FuseSeries.Create(new FuseSeriesDefinition
    {
        Name = "invented gG for direct current",
        Kind = "fuse-link",
        Reference = Invented,
        Ratings = [.. FuseSeries.IndustrialGg.Ratings.Where(r => r.Current.Amperes <= 400).Select(r => r.Current)],
        VoltageRating = ElectricPotential.FromVolts(80),
        VoltageBasis = RatingBasis.DirectCurrent,
        BreakingCapacity = ElectricCurrent.FromAmperes(25_000),
        BreakingCapacityBasis = RatingBasis.DirectCurrent,
        Limits = OperatingTimeLimits.IndustrialGg,
        Rerating = AmbientRerating.IndustrialGg,
    });

    private static double[] BreakerAmperes => [4, 6, 10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125];

    public static LibraryAnswer Answer(CaseGiven given)
    {
        CircuitRequirements requirements = Requirements(given);
        DesignRules rules = Rules(given.Rules);
        return Of(!given.IsVerification ? CircuitDesigner.Design(requirements, rules)
            : given.Laid.Length > 0 ? CircuitDesigner.Verify(requirements, Path(given), given.Fitted?.Value, rules)
            : CircuitDesigner.Verify(requirements, given.Wire!, given.Fitted?.Value, rules));
    }

    /// <summary>The furthest a verified wire and fuse go; null where not even the easiest passes.</summary>
    public static double? Limit(LimitType type, CaseGiven given)
    {
        CircuitRequirements requirements = Requirements(given);
        DesignRules rules = Rules(given.Rules);
        (Conductor wire, FuseRating fuse) = (given.Wire!, given.Fitted!.Value);
        return type switch
        {
            LimitType.Run => CircuitDesigner.LongestRun(requirements, wire, fuse, rules).Value?.Meters,
            LimitType.Current => CircuitDesigner.LargestCurrent(requirements, wire, fuse, rules).Value?.Amperes,
            LimitType.Power => (double?)CircuitDesigner.LargestPower(requirements, wire, fuse, rules).Value?.Watts,
            LimitType.Ambient => CircuitDesigner.HottestAmbient(requirements, wire, fuse, rules).Value?.DegreesCelsius,
            _ => CircuitDesigner.MostLoadedConductors(requirements, wire, fuse, rules).Value,
        };
    }

    private static LibraryAnswer Of(CircuitDesign design)
    {
        Dictionary<string, LibraryCheck> checks = [];
        foreach (CheckResult check in design.Checks)
        {
            checks[check.Kind!.Id] = new(check.Outcome.ToString(), check.Value, check.Limit);
        }

        return new LibraryAnswer(design.Verdict.ToString(), design.Wire, design.Fuse, checks, () => string.Join("\n", design.Checks), () => design.Assumptions);
    }

    public static CircuitRequirements Requirements(CaseGiven given) => new()
    {
        Source = Source(given.Source),
        Load = Load(given.Load),
        Feed = Length.FromMeters(given.Feed),
        Return = Return(given.Back),
        Joints = given.JointOhms > 0 ? [Joint.Create("joints", ElectricResistance.FromOhms(given.JointOhms))] : [],
        Upstream = given.UpstreamOhms is { } ohms ? ElectricResistance.FromOhms(ohms) : null,
        UpstreamProtection = [.. given.Mains.Select(MainFuse)],
        FuseDistance = given.FuseMeters is { } meters ? Length.FromMeters(meters) : null,
        SheathedToFuse = given.Sheathed,
        FuseAmbient = given.FuseAmbient is { } air ? Temperature.FromDegreesCelsius(air) : null,
        Starts = given.Starts,
        Place = Place(given.Place),
        Insulation = given.Insulation.Value,
        Wall = given.WallMillimeters is { } wall ? Length.FromMillimeters(wall) : null,
        Intermittent = given.Intermittent,
        DropLimit = given.DropPercent is { } percent ? DropLimit.Percent(percent) : given.DropVolts is { } volts ? DropLimit.Volts(ElectricPotential.FromVolts(volts)) : null,
    };

    public static TimeCurrentCurve BreakerCurve(double amperes) => TimeCurrentCurve.CreateCircuitBreaker(Points(OwnBreaker.Least, amperes), Points(OwnBreaker.Longest, amperes));

    private static UpstreamProtection MainFuse(MainGiven main) => UpstreamProtection.Fuse(main.Fuse.Value)
        .WithUpstream(main.Before is { } ohms ? ElectricResistance.FromOhms(ohms) : null)
        .WithDistance(main.Meters is { } meters ? Length.FromMeters(meters) : null, main.Sheathed)
        .WithAmbient(main.Ambient is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null)
        .WithLead(main.Feed.Length > 0 ? CircuitPath.Create([.. main.Feed.Select(Segment)], Return(main.Back)) : null)
        .WithLetThrough(Joules(main.LetThrough), Joules(main.Withstood))
        .WithLeastMelting(Joules(main.Melting));

    private static JouleIntegral? Joules(double? value) => value is { } joules ? JouleIntegral.FromAmpereSquaredSeconds(joules) : null;

    public static Place Place(PlaceGiven place) => new()
    {
        Ambient = Temperature.FromDegreesCelsius(place.Ambient),
        LoadedConductors = place.Loaded,
        BundleLoading = place.Loading,
        Altitude = Length.FromMeters(place.Altitude),
        EngineSpace = place.EngineSpace,
    };

    public static DesignRules Rules(RulesGiven given)
    {
        DesignRules preset = DesignRules.Presets[given.Preset];
        return new DesignRules(preset)
        {
            Fuses = given.Fuses switch { FuseType.Gg => GgDirectCurrent, FuseType.Breakers => Breakers, FuseType.Blades => FuseSeries.RoadVehicleBlade, _ => preset.Fuses },
            Ampacity = given.Basis switch
            {
                BasisType.HeatBalance => AmpacityBasis.HeatBalance,
                BasisType.RoadVehicleTable => AmpacityBasis.RoadVehicleTable,
                BasisType.Building => AmpacityBasis.BuildingTable,
                _ => preset.Ampacity,
            },
            FusePractice = new FusePractice
            {
                Loading = given.Loading,
                ShareOfAmpacity = given.Share,
                Overload = given.Allowance is { } allowance
                    ? OverloadAllowance.Create("own", TemperatureDelta.FromKelvins(allowance.Sustained), TemperatureDelta.FromKelvins(allowance.Opened), Invented)
                    : null,
                FaultTime = Duration.FromSeconds(given.FaultSeconds),
                Distance = preset.FusePractice.Distance,
            },
        };
    }

    public static CircuitPath Path(CaseGiven given)
    {
        CircuitPath path = CircuitPath.Create([.. given.Laid.Select(Segment)], Return(given.Back));
        return given.JointOhms > 0 ? path.WithFeedJoints(Joint.Create("joints", ElectricResistance.FromOhms(given.JointOhms))) : path;
    }

    public static Segment Segment(StretchGiven s)
    {
        Segment segment = Calc.Circuits.Segment.Create(s.Conductor.Value, Length.FromMeters(s.Meters), s.Parallel);
        segment = s.Place is { } place ? segment.WithPlace(Place(place)) : segment;
        return s.Celsius is { } celsius ? segment.WithTemperature(ConductorTemperature.At(Temperature.FromDegreesCelsius(celsius))) : segment;
    }

    public static ReturnPath Return(BackGiven back) => back.Type switch
    {
        BackType.Wire => ReturnPath.Wire(Length.FromMeters(back.Meters)),
        BackType.Segments => ReturnPath.Wire([.. back.Stretches.Select(Segment)]),
        BackType.Chassis => ReturnPath.Chassis(ElectricResistance.FromOhms(back.Ohms)),
        BackType.SharedOhms => ReturnPath.Shared(ElectricResistance.FromOhms(back.Ohms), ElectricCurrent.FromAmperes(back.Others)),
        _ => ReturnPath.Shared([.. back.Stretches.Select(Segment)], ElectricCurrent.FromAmperes(back.Others)),
    };

    public static Source Source(SourceGiven s) => s.Type switch
    {
        SourceType.LeadAcid => Battery.LeadAcid(ElectricCurrent.FromAmperes(s.A), blocksInSeries: (int)s.B, stringsInParallel: (int)s.C),
        SourceType.Lithium => Battery.LithiumIronPhosphate((int)s.A, ElectricCharge.FromAmpereHours(s.B), double.IsNaN(s.C) ? null : ElectricCurrent.FromAmperes(s.C)),
        SourceType.Range => Calc.Circuits.Source.BehindResistance(
            ElectricPotential.FromVolts(s.A), ElectricPotential.FromVolts(s.B), ElectricPotential.FromVolts(s.C), ElectricResistance.FromOhms(s.D), ElectricResistance.FromOhms(s.E)),
        SourceType.Limited => Calc.Circuits.Source.CurrentLimited(ElectricPotential.FromVolts(s.A), ElectricCurrent.FromAmperes(s.B)),
        SourceType.Alternator => Calc.Circuits.Source.Alternator(ElectricPotential.FromVolts(s.A), ElectricCurrent.FromAmperes(s.B)),
        SourceType.Series => Calc.Circuits.Source.InSeries([.. s.Parts.Select(Source)]),
        _ => Calc.Circuits.Source.InParallel([.. s.Parts.Select(Source)]),
    };

    public static Load Load(LoadGiven l)
    {
        Load load = l.Type switch
        {
            LoadType.Resistance => Calc.Circuits.Load.Resistance(ElectricResistance.FromOhms(l.A)),
            LoadType.Current => Calc.Circuits.Load.ConstantCurrent(ElectricCurrent.FromAmperes(l.A)),
            LoadType.Power => Calc.Circuits.Load.ConstantPower(Power.FromWatts(l.A), l.B),
            LoadType.Lamp => Calc.Circuits.Load.Lamp(Power.FromWatts(l.A), ElectricPotential.FromVolts(l.B), l.C),
            LoadType.Together => Calc.Circuits.Load.Together([.. l.Parts.Select(Load)]),
            _ when double.IsNaN(l.E) => Calc.Circuits.Load.Motor(A(l.A), A(l.B), A(l.C), Duration.FromSeconds(l.D)),
            _ => Calc.Circuits.Load.Motor(A(l.A), A(l.B), A(l.C), Duration.FromSeconds(l.D), ElectricPotential.FromVolts(l.E)),
        };
        load = l.CutsOut ? load.WithThermalCutOut() : load;
        load = l.Duty is { } duty ? load.WithDutyCycle(DutyCycle.FromFraction(duty)) : load;
        load = l.LeastVolts is { } volts ? load.WithMinimumVoltage(ElectricPotential.FromVolts(volts)) : load;
        return l.CapacitorFarads is { } farads ? load.WithInputCapacitor(ElectricCapacitance.FromFarads(farads)) : load;
    }

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);

    private static TimeCurrentPoint[] Points((double Multiple, double Seconds)[] points, double rating) =>
        [.. points.Select(p => TimeCurrentPoint.Create(ElectricCurrent.FromAmperes(p.Multiple * rating), Duration.FromSeconds(p.Seconds)))];
}
