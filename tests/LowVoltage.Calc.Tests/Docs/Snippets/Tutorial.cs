using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class Tutorial
{
    #region pump-requirements
    // An invented van: a water pump under the bench seat, wired from the fuse panel;
    // a second wire is the way back.
    private static CircuitRequirements Pump() => new()
    {
        Name = "water pump",
        Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(640), ColdCrankingStandard.En50342),
        Load = Load.Motor(
            running: ElectricCurrent.FromAmperes(4.2),
            peak: ElectricCurrent.FromAmperes(17),
            lockedRotor: ElectricCurrent.FromAmperes(21),
            startDuration: Duration.FromSeconds(0.2),
            ratedVoltage: ElectricPotential.FromVolts(12))
            .WithThermalCutOut()
            .WithMinimumVoltage(ElectricPotential.FromVolts(10)),
        Feed = Length.FromMeters(6),
        Return = ReturnPath.Wire(Length.FromMeters(6)),
        Joints = [Joint.Create("fuse, holder, switch, four crimps", ElectricResistance.FromMilliohms(14))],
        Place = new Place { Ambient = Temperature.FromDegreesCelsius(45), LoadedConductors = 8 },
        Insulation = InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B),
    };
    #endregion

    public static void WhatTheBatteryCanDo()
    {
        #region what-the-battery-can-do
        Source battery = Pump().Source;
        ProspectiveCurrent shorted = ProspectiveCurrent.AtSource(battery);

        Console.WriteLine(
            $"{battery.MinimumVoltage.Volts:0.00} V empty, {battery.NominalVoltage.Volts:0.0} V "
            + $"nominal, {battery.MaximumVoltage.Volts:0.0} V on charge");
        Console.WriteLine(
            $"{battery.LeastResistance.Milliohms:0.0} mΩ new and warm, "
            + $"{battery.GreatestResistance.Milliohms:0.0} mΩ aged and cold");
        Console.WriteLine(
            $"{shorted.Least!.Value.Amperes:0} A to "
            + $"{shorted.Greatest!.Value.Amperes:0} A into a dead short at its terminals");
        #endregion
    }

    public static void FirstDesign()
    {
        #region first-design
        CircuitDesign design = CircuitDesigner.Design(Pump(), DesignRules.RoadVehicle);

        Console.WriteLine(design);
        foreach (CheckResult open in design.Undetermined)
        {
            Console.WriteLine(open);
        }
        #endregion
    }

    #region pump-with-supply-lead
    // The same pump, and what was measured since: 14 mΩ of supply lead, out and back, from the battery to the panel.
    private static CircuitRequirements PumpWithSupplyLead() =>
        new(Pump()) { Upstream = ElectricResistance.FromMilliohms(14) };
    #endregion

    public static void SecondDesign()
    {
        #region second-design
        CircuitDesign design = CircuitDesigner.Design(PumpWithSupplyLead(), DesignRules.RoadVehicle);

        Console.WriteLine($"{design.Wire} with {design.Fuse}: {design.Verdict}");
        CheckKind[] some =
            [CheckKind.VoltageDrop, CheckKind.StartVoltage, CheckKind.InrushHeld, CheckKind.BreakingCapacity, CheckKind.FaultOpensFuse];
        foreach (CheckKind kind in some)
        {
            Console.WriteLine(design.Find(kind));
        }
        #endregion
    }

    public static void WhyNotSmaller()
    {
        #region why-not-smaller
        CircuitDesign design = CircuitDesigner.Design(PumpWithSupplyLead(), DesignRules.RoadVehicle);

        foreach (RejectedSize smaller in design.Rejected.Skip(design.Rejected.Count - 3))
        {
            Console.WriteLine(smaller);
        }
        #endregion
    }

    public static void OverTheSupplyRange()
    {
        #region over-the-supply-range
        SupplyRange range = CircuitDesigner.Design(PumpWithSupplyLead(), DesignRules.RoadVehicle).SupplyRange!;

        foreach (OperatingPoint point in new[] { range.Minimum, range.Nominal, range.Maximum })
        {
            Console.WriteLine(
                $"{point.OpenCircuitVoltage.Volts:0.00} V battery: {point.VoltageAtLoad.Volts:0.00} V at the "
                + $"pump, {point.Current.Amperes:0.00} A, wire at {point.HottestConductor.DegreesCelsius:0} °C");
        }
        #endregion
    }

    public static void FuseAgainstThePumpsWire()
    {
        #region fuse-against-the-pumps-wire
        CircuitDesign design = CircuitDesigner.Design(PumpWithSupplyLead(), DesignRules.RoadVehicle);
        Conductor conductor = design.Wire!;
        Wire wire = Wire.Create(conductor, design.Requirements.Insulation, InsulationWall.UsualFor(conductor));
        Surroundings air = new() { Ambient = design.Requirements.Place.Ambient };

        WireProtection protection = FuseAgainstWire.Check(
            design.Fuse!, ProtectedWire.Create(wire, air), prospective: ElectricCurrent.FromAmperes(1000));
        Console.WriteLine(
            $"{protection.Verdict}, tightest at {protection.TightestCurrent!.Value.Amperes:0} A: "
            + $"wire {protection.TemperatureReached!.Value.DegreesCelsius:0} °C, "
            + $"limit {protection.Limit!.Value.DegreesCelsius:0} °C");
        #endregion
    }

    public static void HowFarItCanBePushed()
    {
        #region how-far-it-can-be-pushed
        CircuitRequirements pump = PumpWithSupplyLead();
        DesignRules rules = DesignRules.RoadVehicle;
        CircuitDesign design = CircuitDesigner.Design(pump, rules);

        DesignLimit<Length> longest = CircuitDesigner.LongestRun(pump, design.Wire!, design.Fuse!, rules);
        DesignLimit<Temperature> hottest = CircuitDesigner.HottestAmbient(pump, design.Wire!, design.Fuse!, rules);
        DesignLimit<int> fullest = CircuitDesigner.MostLoadedConductors(pump, design.Wire!, design.Fuse!, rules);
        Console.WriteLine($"run up to {longest.Value!.Value.Meters:0.0} m, then {longest.Governing!.Value.Name}");
        Console.WriteLine(
            $"air up to {hottest.Value!.Value.DegreesCelsius:0} °C, then {hottest.Governing!.Value.Name}");
        Console.WriteLine($"up to {fullest.Value} loaded conductors, then {fullest.Governing!.Value.Name}");
        #endregion
    }

    public static void AsLaid()
    {
        #region as-laid
        // Laid and measured: 6.3 m out, 6.2 m back, and the pump came with 30 cm of 0.75 mm² on each pole.
        CircuitRequirements pump = PumpWithSupplyLead();
        CircuitDesign design = CircuitDesigner.Design(pump, DesignRules.RoadVehicle);
        Segment tail = Segment.Create(Conductor.Iso6722(MetricSize.Parse("0.75 mm²")), Length.FromMeters(0.3));
        CircuitPath path = CircuitPath.Create(
            [Segment.Create(design.Wire!, Length.FromMeters(6.3)), tail],
            ReturnPath.Wire(tail, Segment.Create(design.Wire!, Length.FromMeters(6.2))))
            .WithFeedJoints([.. pump.Joints]);

        CircuitDesign asLaid = CircuitDesigner.Verify(pump, path, design.Fuse!, DesignRules.RoadVehicle);
        Console.WriteLine(asLaid.Verdict);
        foreach (CheckResult check in asLaid.Checks.Where(check => check.Outcome != CheckOutcome.Pass))
        {
            Console.WriteLine(check);
        }
        #endregion
    }

    public static void WithoutTheTails()
    {
        #region without-the-tails
        // The tails are cut off, the wires end at the pump's terminals.
        CircuitRequirements pump = PumpWithSupplyLead();
        CircuitDesign design = CircuitDesigner.Design(pump, DesignRules.RoadVehicle);
        CircuitPath path = CircuitPath.Create(
            Segment.Create(design.Wire!, Length.FromMeters(6.3)),
            ReturnPath.Wire(Segment.Create(design.Wire!, Length.FromMeters(6.2))))
            .WithFeedJoints([.. pump.Joints]);

        CircuitDesign corrected = CircuitDesigner.Verify(pump, path, design.Fuse!, DesignRules.RoadVehicle);
        Console.WriteLine(corrected.Verdict);
        Console.WriteLine(corrected.Find(CheckKind.VoltageDrop));
        #endregion
    }
}
