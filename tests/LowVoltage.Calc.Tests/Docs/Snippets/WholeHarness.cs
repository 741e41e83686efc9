using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class WholeHarness
{
    public static void SolveIt()
    {
        #region solve-it
        Harness boat = Boat();
        HarnessSolution at = boat.Solve(SupplyLevel.Minimum);

        foreach (HarnessLoad load in boat.Loads)
        {
            Console.WriteLine($"{load.Id}: {at.VoltageAt(load.Id).Volts:0.00} V, {at.CurrentAt(load.Id).Amperes:0.00} A, {at.ConditionOf(load.Id)}");
        }

        Console.WriteLine($"the ground lead carries {at.CurrentOf("ground lead").Amperes:0.0} A and is at {at.TemperatureOf("ground lead")!.Value.DegreesCelsius:0} °C");
        #endregion
    }

    public static void CheckIt()
    {
        #region check-it
        HarnessVerification verified = HarnessDesigner.Verify(Boat());

        Console.WriteLine(verified.Verdict);
        foreach (HarnessCheck check in verified.Failed.Concat(verified.Undetermined))
        {
            Console.WriteLine(check);
        }

        foreach (HarnessFinding finding in verified.Findings)
        {
            Console.WriteLine($"{finding.Severity}: {finding}");
        }
        #endregion
    }

    public static void ExplainIt()
    {
        #region explain-it
        Console.WriteLine(Boat().Solve().Explain("switch panel").ToText());
        #endregion
    }

    public static void ChangeIt()
    {
        #region change-it
        Harness before = Boat();
        Harness after = before.WithConductors(new Dictionary<string, Conductor> { ["pump feed"] = Wire(10) });

        foreach (HarnessDifference difference in HarnessComparison.Between(before.Solve(), after.Solve()).Differences.Take(4))
        {
            Console.WriteLine(difference);
        }
        #endregion
    }

    public static void SizeIt()
    {
        #region size-it
        HarnessBuilder builder = Boat().ToBuilder();
        foreach (HarnessWire wire in Boat().Branches.OfType<HarnessWire>())
        {
            builder.Replace(wire.WithConductor(null));
        }

        HarnessDesign design = HarnessDesigner.Design(builder.Build());

        Console.WriteLine($"{design.Cost:0.000} kg, none lighter than {design.LowerBound:0.000} kg; divided by length {design.CostDividedByLength:0.000} kg for the drops alone");
        foreach (HarnessWire wire in design.Harness.Branches.OfType<HarnessWire>())
        {
            Console.WriteLine($"{wire.Id}: {wire.Conductor}, decided by {design.HeldBy[wire.Id]}");
        }

        Console.WriteLine($"a tenth of a volt more would save {design.SavingFor(ElectricPotential.FromVolts(0.1)):0.000} kg");
        #endregion
    }

    public static void BuildABatch()
    {
        #region build-a-batch
        Tolerances tolerances = Tolerances.None
            .WithSupply(Ratio.FromPercent(2)).WithLengths(Ratio.FromPercent(5)).WithJoints(Ratio.FromPercent(50))
            .WithLoads(Ratio.FromPercent(10)).WithAmbient(TemperatureDelta.FromKelvins(5));

        ToleranceSample sample = ToleranceSample.OfHarness(Boat(), tolerances, count: 1000, seed: 1);
        Console.WriteLine(sample);
        foreach (SampledCheck check in sample.Checks.Where(c => c.Failed > 0))
        {
            Console.WriteLine(check);
        }

        HarnessBounds bounds = HarnessBounds.Of(Boat(), tolerances);
        Console.WriteLine($"the pump never sees less than {bounds.VoltageAt("pump").Least!.Value.Volts:0.00} V");
        #endregion
    }

    #region the-boat
    private static Conductor Wire(double squareMillimeters) =>
        DesignRules.Bench.Conductors.SmallestAtLeast(Area.FromSquareMillimeters(squareMillimeters));

    private static Harness Boat()
    {
        Place cabin = Place.Create(Temperature.FromDegreesCelsius(35)).WithLoadedConductors(2);
        InsulationMaterial insulation = InsulationMaterial.CrossLinkedPolyethylene;
        Source supply = Source.BehindResistance(
            ElectricPotential.FromVolts(12.2), ElectricPotential.FromVolts(12.8), ElectricPotential.FromVolts(14.2),
            ElectricResistance.FromMilliohms(16), ElectricResistance.FromMilliohms(30));
        FuseRating Blade(double amperes) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(amperes));

        return new HarnessBuilder("small boat (invented)", DesignRules.Bench)
            .Terminals("plus", "minus", "lamps fused", "pump fused", "pump +", "bow +", "stern +").Busbars("switch panel", "ground bar").Splices("lamp splice")
            .Source("pack", "plus", "minus", supply)
            .Fuse("main fuse", "plus", "main out", Blade(25)).Terminals("main out")
            .Wire("main lead", "main out", "switch panel", Wire(6), Length.FromMeters(2), cabin, insulation)
            .Fuse("lamp fuse", "switch panel", "lamps fused", Blade(5)).Fuse("pump fuse", "switch panel", "pump fused", Blade(15))
            .Wire("lamp feed", "lamps fused", "lamp splice", Wire(1.5), Length.FromMeters(3), cabin, insulation)
            .Wire("bow tail", "lamp splice", "bow +", Wire(1.5), Length.FromMeters(2), cabin, insulation)
            .Wire("stern tail", "lamp splice", "stern +", Wire(1.5), Length.FromMeters(4), cabin, insulation)
            .Wire("pump feed", "pump fused", "pump +", Wire(4), Length.FromMeters(4), cabin, insulation)
            .Wire("ground lead", "ground bar", "minus", Wire(6), Length.FromMeters(2), cabin, insulation)
            .Load("bow light", "bow +", "ground bar", Load.ConstantPower(Power.FromWatts(12), minimumVoltage: ElectricPotential.FromVolts(9)))
            .Load("stern light", "stern +", "ground bar", Load.ConstantPower(Power.FromWatts(8), minimumVoltage: ElectricPotential.FromVolts(9)))
            .Load("pump", "pump +", "ground bar", Load.ConstantCurrent(ElectricCurrent.FromAmperes(8)))
            .Build();
    }
    #endregion
}
