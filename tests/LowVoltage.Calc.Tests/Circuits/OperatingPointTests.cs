using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Circuits;

public class OperatingPointTests
{
    [Fact]
    public void Solve_RoundNumbers_GivesHandArithmetic()
    {
        // 12 V, 0.1 Ω in the source, 0.3 Ω of path, 5.6 Ω: 2 A by hand.
        OperatingPoint p = OperatingPoint.Solve(Paths.Battery(12, 0.1), Paths.Of(0.3), Heater(5.6), Paths.At(20));
        Assert.Equal(2, p.Current.Amperes, 1e-12);
        Assert.Equal(11.2, p.VoltageAtLoad.Volts, 1e-12);
        Assert.Equal(11.8, p.VoltageAtSource.Volts, 1e-12);
        Assert.Equal(0.6, p.Drop.Volts, 1e-12);
        Assert.Equal(5, p.DropOfNominal.Percent, 1e-10);
        Assert.Equal(24, (double)p.SourcePower.Watts, 1e-10);
        Assert.Equal(0.4, (double)p.SourceLoss.Watts, 1e-10);
        Assert.Equal(1.2, (double)p.PathLoss.Watts, 1e-10);
        Assert.Equal("2 A, 11.2 V at the load, drop 0.6 V (5 % of 12 V)", p.ToString());
        Assert.Null(p.LargestPower);
        Assert.Equal("", p.Explanation);
    }

    [Fact]
    public void Solve_ConstantPower_GivesTheStablePoint()
    {
        // 12 V behind 0.5 Ω and 40 W: I² − 24·I + 80 = 0, so 4 A (stable, 10 V) or 20 A (2 V).
        OperatingPoint p = OperatingPoint.Solve(Paths.Battery(12, 0.2), Paths.Of(0.3), Load.ConstantPower(Power.FromWatts(40)), Paths.At(20));
        Assert.Equal(4, p.Current.Amperes, 1e-12);
        Assert.Equal(10, p.VoltageAtLoad.Volts, 1e-12);
    }

    [Fact]
    public void Solve_Efficiency_DividesThePower()
    {
        OperatingPoint p = OperatingPoint.Solve(Paths.Battery(12, 0.2), Paths.Of(0.3), Load.ConstantPower(Power.FromWatts(32), 0.8), Paths.At(20));
        Assert.Equal(4, p.Current.Amperes, 1e-12);
    }

    [Fact]
    public void Solve_PowerOutOfReach_IsAnAnswer()
    {
        OperatingPoint p = OperatingPoint.Solve(Paths.Battery(12, 0.2), Paths.Of(0.3), Load.ConstantPower(Power.FromWatts(72.1)), Paths.At(20));
        Assert.False(p.Exists);
        Assert.Equal(NoOperatingPoint.PowerOutOfReach, p.Reason);
        Assert.Equal(72, (double)p.LargestPower!.Value.Watts, 1e-9);
        Assert.Equal("The load needs more power than can come through this resistance: at most 72 W can reach the load.", p.Explanation);
        Assert.Equal(p.Explanation, p.ToString());
        Assert.Contains("Exists", Assert.Throws<InvalidOperationException>(() => p.Current).Message, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => p.Elements);
        Assert.Throws<InvalidOperationException>(() => p.Drop);
        Assert.Throws<InvalidOperationException>(() => p.DropOfNominal);
        Assert.Throws<InvalidOperationException>(() => p.NominalVoltage);
        Assert.False(p.BelowMinimum);
    }

    [Fact]
    public void Solve_CurrentThatDropsAllTheVoltage_IsAnAnswer()
    {
        OperatingPoint p = OperatingPoint.Solve(Paths.Battery(12, 1), Paths.Of(1), Load.ConstantCurrent(Amperes(6)), Paths.At(20));
        Assert.Equal(NoOperatingPoint.CurrentOutOfReach, p.Reason);
        Assert.Equal(18, (double)p.LargestPower!.Value.Watts, 1e-9);
        Assert.True(OperatingPoint.Solve(Paths.Battery(12, 1), Paths.Of(1), Load.ConstantCurrent(Amperes(5.99)), Paths.At(20)).Exists);
    }

    [Fact]
    public void Solve_FeedAndReturn_AreCountedOnceEach()
    {
        // 10 A through 3 m out and 2 m back of 1 Ω/5 m would be 10 V; by size: 14 AWG is 8.282 Ω/km by the gauge's definition and IEC copper.
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), Paths.Wires(14, 3, 2), Load.ConstantCurrent(Amperes(10)), Paths.At(20));
        double perMeter = Paths.Awg(14).ResistancePerLength(Temperature.FromDegreesCelsius(20)).OhmsPerMeter;
        Assert.Equal(10 * 5 * perMeter, p.Drop.Volts, 1e-12);
        Assert.Equal([3 * perMeter * 10, 2 * perMeter * 10], p.Elements.Select(e => e.Drop.Volts), (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Contains("Feed 3 m; return 2 m. Nothing is doubled.", p.Assumptions);
    }

    [Fact]
    public void Solve_SharedReturn_AddsTheOthersDrop()
    {
        // 0.1 Ω shared with 20 A of others: 2 V of theirs and 0.1 Ω of ours.
        CircuitPath path = CircuitPath.Create(Paths.Negligible.Feed, ReturnPath.Shared(ElectricResistance.FromOhms(0.1), Amperes(20)));
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), path, Heater(9.9), Paths.At(20));
        Assert.Equal(1, p.Current.Amperes, 1e-12);
        Assert.Equal(2.1, p.Drop.Volts, 1e-12);
        Assert.Equal(44.1, (double)p.Elements[^1].Heat.Watts, 1e-9);
        Assert.Equal(2.1, (double)p.Elements[^1].Loss.Watts, 1e-12);
        Assert.Equal(21, p.Elements[^1].Current.Amperes, 1e-12);
        Assert.Equal(12, (double)p.SourcePower.Watts, 1e-12);
    }

    [Fact]
    public void Solve_SharedReturnWhoseOthersTakeAllTheVoltage_HasNoPoint()
    {
        CircuitPath path = CircuitPath.Create(Paths.Negligible.Feed, ReturnPath.Shared(ElectricResistance.FromOhms(0.1), Amperes(130)));
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), path, Heater(9.9), Paths.At(20));
        Assert.False(p.Exists);
        Assert.Equal(0, (double)p.LargestPower!.Value.Watts);
    }

    [Fact]
    public void Solve_SharedSegments_AreCountedAtTheirRatedTemperature()
    {
        Segment shared = Segment.Create(Paths.Awg(10), Length.FromMeters(2));
        CircuitPath path = CircuitPath.Create(Paths.Negligible.Feed, ReturnPath.Shared([shared], Amperes(10)));
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), path, Load.ConstantCurrent(Amperes(5)), Paths.SelfHeated(25, 30, 90));
        Assert.Equal(15 * shared.ResistanceAt(Temperature.FromDegreesCelsius(90)).Ohms, p.Drop.Volts, 1e-9);
        Assert.Contains(p.Assumptions, a => a.Contains("rated temperature", StringComparison.Ordinal));
    }

    [Fact]
    public void Solve_CurrentLimitHeld_SettlesWhereTheLoadTakesTheLimit()
    {
        Source supply = Source.CurrentLimited(Volts(12), Amperes(2));
        OperatingPoint p = OperatingPoint.Solve(supply, Paths.Of(0.5), Heater(4), Paths.At(20));
        Assert.True(p.CurrentLimitReached);
        Assert.Equal(2, p.Current.Amperes, 1e-12);
        Assert.Equal(8, p.VoltageAtLoad.Volts, 1e-12);
        Assert.Equal(9, p.VoltageAtSource.Volts, 1e-12);
        OperatingPoint free = OperatingPoint.Solve(supply, Paths.Of(0.5), Heater(6), Paths.At(20));
        Assert.False(free.CurrentLimitReached);
        OperatingPoint lamp = OperatingPoint.Solve(supply, Paths.Of(0.5), Load.Lamp(Power.FromWatts(48), Volts(12)), Paths.At(20));
        // I = 4 A·(U/12 V)^0.55 = 2 A at U = 12 V·0.5^(1/0.55).
        Assert.Equal(12 * Math.Pow(0.5, 1 / 0.55), lamp.VoltageAtLoad.Volts, 1e-9);
    }

    [Fact]
    public void Solve_LoadAboveTheHeldLimit_HasNoPoint()
    {
        Source supply = Source.CurrentLimited(Volts(12), Amperes(2));
        OperatingPoint power = OperatingPoint.Solve(supply, Paths.Of(0.5), Load.ConstantPower(Power.FromWatts(23)), Paths.At(20));
        Assert.Equal(NoOperatingPoint.SourceLimit, power.Reason);
        Assert.Equal(22, (double)power.LargestPower!.Value.Watts, 1e-9);
        Assert.Equal(NoOperatingPoint.SourceLimit, OperatingPoint.Solve(supply, Paths.Of(0.5), Load.ConstantCurrent(Amperes(2.01)), Paths.At(20)).Reason);
        Assert.True(OperatingPoint.Solve(supply, Paths.Of(0.5), Load.ConstantPower(Power.FromWatts(21.9)), Paths.At(20)).Exists);
    }

    [Fact]
    public void Solve_AbovePackProtection_Disconnects()
    {
        Source pack = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), Amperes(50));
        Assert.True(OperatingPoint.Solve(pack, Paths.Of(0.01), Load.ConstantCurrent(Amperes(50)), Paths.At(20)).Exists);
        OperatingPoint p = OperatingPoint.Solve(pack, Paths.Of(0.01), Load.ConstantCurrent(Amperes(51)), Paths.At(20));
        Assert.Equal(NoOperatingPoint.SourceDisconnects, p.Reason);
        // 50 A·(12.8 V − 50 A·(1.6 mΩ + 10 mΩ))
        Assert.Equal(50 * (12.8 - (50 * 0.0116)), (double)p.LargestPower!.Value.Watts, 1e-6);
    }

    [Fact]
    public void Solve_ConductorThatWouldMelt_IsAnAnswer()
    {
        OperatingPoint p = OperatingPoint.Solve(
            Source.Ideal(Volts(12)), Paths.Wires(24, 0.1, 0.1), Load.ConstantCurrent(Amperes(40)), Paths.SelfHeated(25, 5, 90));
        Assert.Equal(NoOperatingPoint.ConductorMelts, p.Reason);
        Assert.Null(p.LargestPower);
        Assert.Contains("melting point", p.Explanation, StringComparison.Ordinal);
    }

    [Fact]
    public void Solve_DutyCycle_HeatsByRmsAndDropsByPeak()
    {
        Load load = Load.ConstantCurrent(Amperes(20)).WithDutyCycle(DutyCycle.FromFraction(0.25));
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), Paths.Wires(14, 1, 1), load, Paths.SelfHeated(20, 20, 100));
        Assert.Equal(20, p.Current.Amperes);
        Assert.Equal(10, p.HeatingCurrent.Amperes, 1e-12);
        Assert.Equal(40, p.HottestConductor.DegreesCelsius, 1e-9);
        Assert.Equal(20 * Paths.Wires(14, 1, 1).ResistanceAt(Temperature.FromDegreesCelsius(40)).Ohms, p.Drop.Volts, 1e-12);
    }

    [Fact]
    public void Solve_DutyCycleOfOneOfTwoLoads_SumsTheirRmsCurrents()
    {
        Load load = Load.Together(
            Load.ConstantCurrent(Amperes(20)).WithDutyCycle(DutyCycle.FromFraction(0.25)), Load.ConstantCurrent(Amperes(10)));
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), Paths.Wires(14, 1, 1), load, Paths.SelfHeated(20, 20, 100));
        Assert.Equal(30, p.Current.Amperes, 1e-9);
        Assert.Equal(20, p.HeatingCurrent.Amperes, 1e-9);
        Assert.Equal(100, p.HottestConductor.DegreesCelsius, 1e-7);
    }

    /// <summary>A sum within a sum once took the factor of its last part for all: 5 A, which let a wire run hotter than was said.</summary>
    [Fact]
    public void Solve_DutyCyclesInASumWithinASum_SumsTheirRmsCurrents()
    {
        DutyCycle quarter = DutyCycle.FromFraction(0.25);
        Load inner = Load.Together(Load.ConstantCurrent(Amperes(4)).WithDutyCycle(quarter), Load.ConstantCurrent(Amperes(2)));
        Load third = Load.ConstantCurrent(Amperes(4)).WithDutyCycle(quarter);

        // √(1/4) of 4 A, 2 A, √(1/4) of 4 A.
        foreach (Load load in new[] { Load.Together(inner, third), Load.Together(third, inner), Load.Together(inner, third).WithInputCapacitor(ElectricCapacitance.FromMillifarads(1)) })
        {
            OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), Paths.Wires(14, 1, 1), load, Paths.SelfHeated(20, 6, 100));
            Assert.Equal(10, p.Current.Amperes, 1e-9);
            Assert.Equal(6, p.HeatingCurrent.Amperes, 1e-9);
            Assert.Equal(100, p.HottestConductor.DegreesCelsius, 1e-7);
        }
    }

    /// <summary>Joints of both ways and the resistance of the return are in the drop: 10 A through 3 + 5 + 2 mΩ.</summary>
    [Fact]
    public void Solve_JointsOnBothWays_AreInTheDrop()
    {
        CircuitPath path = Paths.Negligible
            .WithFeedJoints(Joint.Create("fuse holder", ElectricResistance.FromMilliohms(3)))
            .WithReturnJoints(Joint.Create("ring terminal", ElectricResistance.FromMilliohms(5)), Joint.Create("bar", ElectricResistance.FromMilliohms(2)));
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), path, Load.ConstantCurrent(Amperes(10)), Paths.At(20));
        Assert.Equal(0.1, p.Drop.Volts, 1e-9);
    }

    /// <summary>Every part of the way is listed in its order, with its drop, and the drops add up. 10 A through 3, 5 and 2 mΩ; the chassis or the shared return is named.</summary>
    [Fact]
    public void Solve_Elements_ListTheWholeWayInOrder()
    {
        Joint holder = Joint.Create("fuse holder", ElectricResistance.FromMilliohms(3)), ring = Joint.Create("ring terminal", ElectricResistance.FromMilliohms(5));
        Segment wire = Segment.Create(Paths.Awg(14), Length.FromMeters(2));
        OperatingPoint Through(ReturnPath back) => OperatingPoint.Solve(
            Source.Ideal(Volts(12)), CircuitPath.Create(wire, back).WithFeedJoints(holder).WithReturnJoints(ring), Load.ConstantCurrent(Amperes(10)), Paths.At(20));

        OperatingPoint pair = Through(ReturnPath.Wire(Length.FromMeters(3))), chassis = Through(ReturnPath.Chassis(ElectricResistance.FromMilliohms(2)));
        OperatingPoint shared = Through(ReturnPath.Shared(ElectricResistance.FromMilliohms(2), Amperes(5)));

        Assert.Equal(
            [PathElementKind.FeedSegment, PathElementKind.FeedJoint, PathElementKind.ReturnSegment, PathElementKind.ReturnJoint],
            pair.Elements.Select(element => element.Kind));
        Assert.Equal(["fuse holder", "ring terminal"], pair.Elements.Where(element => element.Segment is null).Select(element => element.Name));
        Assert.Equal([0.03, 0.05], pair.Elements.Where(element => element.Segment is null).Select(element => Math.Round(element.Drop.Volts, 12)));
        Assert.Equal(pair.Drop.Volts, pair.Elements.Sum(element => element.Drop.Volts), 1e-12);
        Assert.Equal(PathElementKind.ReturnResistance, chassis.Elements[^1].Kind);
        Assert.Equal(("chassis return", "shared return"), (chassis.Elements[^1].Name, shared.Elements[^1].Name));
        Assert.Equal(0.02, chassis.Elements[^1].Drop.Volts, 1e-12);

        // The others' 5 A take their part too: (10 + 5) A through 2 mΩ.
        Assert.Equal(0.03, shared.Elements[^1].Drop.Volts, 1e-12);
    }

    /// <summary>What others drop in a shared return is missing at the load: 50 A at the nominal voltage less 20 A × 10 mΩ less 50 A × (own resistance + 10 + 20 mΩ).</summary>
    [Fact]
    public void Solve_AbovePackProtectionOnASharedReturn_NamesThePowerThatIsLeft()
    {
        Source pack = Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), Amperes(50));
        CircuitPath path = CircuitPath.Create(Segment.Create(Paths.Awg(-3), Length.FromMeters(1e-11)), ReturnPath.Shared(ElectricResistance.FromMilliohms(10), Amperes(20)))
            .WithFeedJoints(Joint.Create("lead", ElectricResistance.FromMilliohms(20)));
        OperatingPoint p = OperatingPoint.Solve(pack, path, Load.ConstantCurrent(Amperes(60)), Paths.At(20));
        Assert.Equal(NoOperatingPoint.SourceDisconnects, p.Reason);
        double left = pack.NominalVoltage.Volts - (20 * 0.010) - (50 * (pack.NominalResistance.Ohms + 0.030));
        Assert.Equal(50 * left, (double)p.LargestPower!.Value.Watts, 1e-9);
    }

    /// <summary>The hottest is found wherever it is: in the first or the last segment, out or back.</summary>
    [Theory]
    [InlineData(90, 50, 40)]
    [InlineData(50, 90, 40)]
    [InlineData(50, 40, 90)]
    public void Solve_SegmentsAtTheirOwnTemperatures_NamesTheHottest(double first, double second, double back)
    {
        Segment At(double celsius) => Segment.Create(Paths.Awg(14), Length.FromMeters(2)).WithTemperature(Paths.At(celsius));
        CircuitPath path = CircuitPath.Create([At(first), At(second)], ReturnPath.Wire(At(back)));
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), path, Load.ConstantCurrent(Amperes(5)), Paths.At(20));
        Assert.Equal(90, p.HottestConductor.DegreesCelsius, 1e-9);

        // Resistances at their own temperatures add.
        double ohms = new[] { first, second, back }.Sum(celsius => Segment.Create(Paths.Awg(14), Length.FromMeters(2)).ResistanceAt(Temperature.FromDegreesCelsius(celsius)).Ohms);
        Assert.Equal(5 * ohms, p.Drop.Volts, 1e-12);
    }

    [Fact]
    public void Solve_Peak_FindsTheConductorAsRunningLeavesIt()
    {
        Load motor = Load.Motor(Amperes(10), Amperes(40), Amperes(40), Duration.FromSeconds(0.3));
        ConductorTemperature model = Paths.SelfHeated(20, 20, 100);
        OperatingPoint peak = Solve(LoadState.Peak), locked = Solve(LoadState.LockedRotor);
        Assert.Equal(40, peak.HottestConductor.DegreesCelsius, 1e-9);
        Assert.Equal(340, locked.HottestConductor.DegreesCelsius, 1e-9);
        Assert.Equal(40, peak.Current.Amperes);
        OperatingPoint Solve(LoadState state) =>
            OperatingPoint.Solve(Source.Ideal(Volts(12)), Paths.Wires(14, 1, 1), motor, model, SupplyLevel.Nominal, state);
    }

    [Fact]
    public void Solve_ParallelConductorsAndOwnTemperature_EachCarryTheirPart()
    {
        Segment pair = Segment.Create(Paths.Awg(14), Length.FromMeters(4), 2);
        Segment pigtail = Segment.Create(Paths.Awg(18), Length.FromMeters(0.2)).WithTemperature(Paths.At(105));
        CircuitPath path = CircuitPath.Create([pair, pigtail], ReturnPath.Chassis(ElectricResistance.FromMilliohms(2)));
        OperatingPoint p = OperatingPoint.Solve(Source.Ideal(Volts(12)), path, Load.ConstantCurrent(Amperes(20)), Paths.SelfHeated(20, 20, 100));
        Assert.Equal(40, p.Elements[0].Temperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(105, p.Elements[1].Temperature!.Value.DegreesCelsius, 1e-9);
        Assert.Equal(105, p.HottestConductor.DegreesCelsius, 1e-9);
        Assert.Null(p.Elements[2].Temperature);
        Assert.Same(p.Elements[1], p.Weakest);
        Assert.Equal("4 m of 2 × 14 AWG copper", p.Elements[0].Name);
    }

    [Fact]
    public void Solve_ReturnLikeAFeedOfSeveralSizes_IsRefused() => Assert.Throws<ArgumentException>("returnPath", () => CircuitPath.Create(
        [Segment.Create(Paths.Awg(14), Length.FromMeters(1)), Segment.Create(Paths.Awg(16), Length.FromMeters(1))], ReturnPath.Wire(Length.FromMeters(2))));

    [Fact]
    public void SupplyRange_LampAndConverter_DrawMostAtOppositeEnds()
    {
        Source range = Source.Ideal(Volts(11), Volts(12), Volts(14));
        SupplyRange lamp = SupplyRange.Solve(range, Paths.Of(0.1), Load.Lamp(Power.FromWatts(21), Volts(12)), Paths.At(20));
        SupplyRange converter = SupplyRange.Solve(range, Paths.Of(0.1), Load.ConstantPower(Power.FromWatts(60), 1, Volts(10.5)), Paths.At(20));
        Assert.Same(lamp.Maximum, lamp.MostCurrent);
        Assert.Same(converter.Minimum, converter.MostCurrent);
        Assert.Same(converter.Minimum, converter.MostDrop);
        Assert.Same(converter.Minimum, converter.LeastVoltageAtLoad);
        Assert.True(converter.Minimum.BelowMinimum);
        Assert.False(converter.LoadWorks);
        Assert.True(lamp.LoadWorks);
        Assert.Contains(lamp.Maximum.Assumptions, a => a.Contains("outside 10 %", StringComparison.Ordinal));
        Assert.DoesNotContain(lamp.Nominal.Assumptions, a => a.Contains("outside 10 %", StringComparison.Ordinal));
    }

    [Fact]
    public void SupplyRange_OneEndMissing_DoesNotNameAMost()
    {
        SupplyRange range = SupplyRange.Solve(
            Source.Ideal(Volts(6), Volts(12), Volts(14)), Paths.Of(0.5), Load.ConstantPower(Power.FromWatts(40)), Paths.At(20));
        Assert.False(range.Exists);
        Assert.False(range.LoadWorks);
        Assert.Null(range.MostCurrent);
        Assert.True(range.Nominal.Exists);
    }

    private static Load Heater(double ohms) => Load.Resistance(ElectricResistance.FromOhms(ohms));

    private static ElectricCurrent Amperes(double value) => ElectricCurrent.FromAmperes(value);

    private static ElectricPotential Volts(double value) => ElectricPotential.FromVolts(value);
}
