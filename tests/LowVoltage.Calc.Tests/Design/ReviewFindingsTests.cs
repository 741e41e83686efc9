using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>Dangerous or untrue answers that a reader once got, each kept as a test.</summary>
public class ReviewFindingsTests
{
    private static readonly Source Starter = Battery.LeadAcid(ElectricCurrent.FromAmperes(600));

    [Fact]
    public void ParallelWires_AreLoadedConductorsOfTheirOwnBundle()
    {
        // Three wires out and three back: six loaded conductors, whatever the requirements say.
        Conductor wire = Conductor.Iso6722(MetricSize.FromSquareMillimeters(4));
        CircuitPath path = CircuitPath.Create(
            Segment.Create(wire, Length.FromMeters(1), 3), ReturnPath.Wire(Segment.Create(wire, Length.FromMeters(1), 3)));
        FuseRating fuse = FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(80));
        CircuitDesign two = CircuitDesigner.Verify(Asked(Load.ConstantCurrent(ElectricCurrent.FromAmperes(60)), conductors: 2), path, fuse, DesignRules.RoadVehicle);
        CircuitDesign six = CircuitDesigner.Verify(Asked(Load.ConstantCurrent(ElectricCurrent.FromAmperes(60)), conductors: 6), path, fuse, DesignRules.RoadVehicle);
        Assert.Equal(six.Find(CheckKind.ContinuousCurrent), two.Find(CheckKind.ContinuousCurrent));
        Assert.Equal(Verdict.Fail, two.Verdict);
        Assert.Contains(two.Assumptions, line => line.Contains("6 loaded conductors together", StringComparison.Ordinal));
        Assert.Contains(two.Assumptions, line => line.Contains("share the current equally", StringComparison.Ordinal));
    }

    [Fact]
    public void Start_ThatDropsBelowTheLoadsMinimum_Fails()
    {
        Load motor = Load.Motor(A(10), A(150), A(150), Duration.FromSeconds(0.2)).WithMinimumVoltage(ElectricPotential.FromVolts(10.5));
        CircuitDesign design = CircuitDesigner.Design(Asked(motor, feed: 6), DesignRules.RoadVehicle);

        // Even without any wire: 11.89 V − 150 A · (18 + 13) mΩ = 7.24 V.
        Assert.Equal(Verdict.Fail, design.Verdict);
        Assert.Equal(CheckKind.StartVoltage, design.Governing.Kind);
        Assert.InRange(design.Governing.Value!.Value, 0, 7.24);

        // Nothing else fails: the nearest is the wire and the fuse that hold the start, not the smallest fuse that carries 10 A.
        Assert.True(design.IsNearest);
        Assert.Equal([CheckKind.StartVoltage], design.Checks.Where(check => check.Outcome == CheckOutcome.Fail).Select(check => check.Kind!));
        Assert.Equal(CheckOutcome.Pass, design.Find(CheckKind.InrushHeld)!.Value.Outcome);
    }

    [Fact]
    public void Start_OnAPackThatDisconnects_Fails()
    {
        Source pack = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(50), A(30));
        Load motor = Load.Motor(A(10), A(100), A(100), Duration.FromSeconds(0.2));
        CircuitDesign design = CircuitDesigner.Design(Asked(motor, source: pack), DesignRules.RoadVehicle);
        Assert.Equal(Verdict.Fail, design.Verdict);
        Assert.True(design.IsNearest);
        Assert.Equal(
            "voltage at the load while it starts: fail, the start takes more than the 30 A at which the source disconnects", design.Find(CheckKind.StartVoltage)!.Value.ToString());

        // 14.6 V behind 1.6 mΩ and 13 mΩ is the 1000 A that a blade fuse breaks, and no rounding makes it more.
        CheckResult breaking = design.Find(CheckKind.BreakingCapacity)!.Value;
        Assert.Equal(CheckOutcome.Pass, breaking.Outcome);
        Assert.Equal(14.6 / 0.0146, breaking.Value!.Value, 1e-6);
    }

    [Fact]
    public void Start_OnASupplyThatHoldsItsCurrent_IsUndetermined()
    {
        Source supply = Source.CurrentLimited(ElectricPotential.FromVolts(12), A(10));
        Load motor = Load.Motor(A(5), A(30), A(30), Duration.FromSeconds(1));
        CircuitDesign design = CircuitDesigner.Design(Asked(motor, source: supply), DesignRules.Bench);
        Assert.Equal(Verdict.Undetermined, design.Verdict);
        Assert.Contains("holds 10 A", Assert.Single(design.Undetermined, check => check.Kind == CheckKind.StartVoltage).Note, StringComparison.Ordinal);
    }

    [Fact]
    public void DutyCycle_OfLongPulses_HeatsAsIfContinuous()
    {
        CircuitDesign hours = Verify(Load.ConstantCurrent(A(20)).WithDutyCycle(DutyCycle.FromTimes(Duration.FromHours(1), Duration.FromHours(10))));
        CircuitDesign seconds = Verify(Load.ConstantCurrent(A(20)).WithDutyCycle(DutyCycle.FromTimes(Duration.FromSeconds(1), Duration.FromSeconds(10))));
        Assert.Equal(20, hours.Find(CheckKind.ContinuousCurrent)!.Value.Value!.Value, 9);

        // The end of a pulse in the thinnest stranded wire, τ = 1.15 s: more than the mean, less than continuous.
        double heat = (1 - Math.Exp(-1 / 1.15)) / (1 - Math.Exp(-10 / 1.15));
        Assert.Equal(20 * Math.Sqrt(heat), seconds.Find(CheckKind.ContinuousCurrent)!.Value.Value!.Value, 9);
    }

    [Fact]
    public void FuseOfAHighFusingCurrent_IsHeldToTheOtherHalfOfTheRule()
    {
        // IEC 60127-2 sheet 3: the fuse may carry 2.1 times its rating for 30 min; IEC 60364-4-43 433.1 allows 1.45 times the wire's current.
        FuseSeries slow = FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = "test series",
            Kind = "time-lag fuse",
            Reference = Reference.CommonPractice("a test"),
            Ratings = [A(4), A(5), A(6.3)],
            VoltageRating = ElectricPotential.FromVolts(58),
            VoltageBasis = RatingBasis.DirectCurrent,
            BreakingCapacity = A(10_000),
            BreakingCapacityBasis = RatingBasis.DirectCurrent,
            Limits = OperatingTimeLimits.Iec60127Sheet3,
        });
        FuseRating fuse = slow.SmallestAtLeast(A(6.3));
        CircuitDesign design = CircuitDesigner.Verify(Asked(Load.ConstantCurrent(A(3))), Conductor.Iso6722(MetricSize.FromSquareMillimeters(1)), fuse, DesignRules.Bench);
        double wire = design.Find(CheckKind.ContinuousCurrent)!.Value.Limit!.Value;
        Assert.Equal(1.45 * wire / (fuse.Curve!.FusingCurrent.Amperes / 6.3), design.Find(CheckKind.FuseProtectsWire)!.Value.Limit!.Value, 6);
    }

    [Fact]
    public void NothingFits_BecauseOfTheBreakingCapacity_SaysSo()
    {
        // 14.4 V/(3.6 + 5) mΩ = 1674 A at the fuse, blade fuses break 1000 A: no wire helps, and no wire is blamed.
        CircuitDesign design = CircuitDesigner.Design(Asked(Load.ConstantCurrent(A(2)), upstreamMilliohms: 5), DesignRules.RoadVehicle);
        Assert.Equal(CheckKind.BreakingCapacity, design.Governing.Kind);
        Assert.Equal(14.4 / 0.0086, design.Governing.Value!.Value, 6);

        // 2 A over 2 m: the thinnest wire that is laid, and the smallest fuse for 2.5 A.
        Assert.False(design.IsNearest);
        Assert.Equal(("0.5 mm² road-vehicle copper", 3.0), (design.Wire.Name, design.Fuse!.Current.Amperes));
        Assert.Contains(design.Advice, line => line.EndsWith("No wire size changes this.", StringComparison.Ordinal));
    }

    [Fact]
    public void SupplyTooWeakToOpenAnything_IsNotSaidToOpenTheFuse()
    {
        Source supply = Source.CurrentLimited(ElectricPotential.FromVolts(12), A(5));
        CircuitDesign design = CircuitDesigner.Design(Asked(Load.ConstantCurrent(A(3)), source: supply), DesignRules.Bench);
        Assert.Equal(
            "fault at the far end opens the fuse: pass, nothing has to open, the supply gives at most 5 A, which the wire carries continuously",
            design.Find(CheckKind.FaultOpensFuse)!.Value.ToString());
    }

    [Fact]
    public void FuseOfUnknownTimes_NeverFollowsASmallerOneThatFailed()
    {
        // A 90 A alternator and a 40 A load: fuses with published times need not open at 90 A; a strip fuse of unknown times is no way out.
        Source alternator = Source.Alternator(ElectricPotential.FromVolts(14.4), A(90));
        CircuitDesign design = CircuitDesigner.Design(Asked(Load.ConstantCurrent(A(40)), source: alternator, feed: 2), DesignRules.RoadVehicle);
        Assert.NotNull(design.Fuse!.Curve);
    }

    [Fact]
    public void Lamp_FarFromItsVoltage_IsRemarked()
    {
        Load lamp = Load.Lamp(Power.FromWatts(55), ElectricPotential.FromVolts(12));
        Source high = Source.BehindResistance(ElectricPotential.FromVolts(24), ElectricResistance.FromMilliohms(30));
        CircuitDesign design = CircuitDesigner.Design(Asked(lamp, source: high), DesignRules.RoadVehicle);
        Assert.Contains(design.Assumptions, line => line.Contains("outside 10 % of its rated 12 V", StringComparison.Ordinal));
    }

    private static CircuitDesign Verify(Load load) => CircuitDesigner.Verify(
        Asked(load), Conductor.Iso6722(MetricSize.FromSquareMillimeters(2.5)), FuseSeries.RoadVehicleBlade.SmallestAtLeast(A(25)), DesignRules.RoadVehicle);

    private static CircuitRequirements Asked(Load load, Source? source = null, double feed = 1, int conductors = 2, double upstreamMilliohms = 13) => new()
    {
        Source = source ?? Starter,
        Load = load,
        Feed = Length.FromMeters(feed),
        Return = ReturnPath.Wire(Length.FromMeters(feed)),
        Upstream = ElectricResistance.FromMilliohms(upstreamMilliohms),
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(30), LoadedConductors = conductors },
        Insulation = InsulationMaterial.PolyvinylChloride,
        DropLimit = DropLimit.Percent(30),
    };

    private static ElectricCurrent A(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
