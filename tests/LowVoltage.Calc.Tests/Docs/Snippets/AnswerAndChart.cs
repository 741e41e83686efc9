using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class AnswerAndChart
{
    

    public static void DropStepByStep()
    {
        #region drop-step-by-step
        // An invented case: 10 A, 5 m out and 5 m back, 12 V. A chart for 3 % (0.36 V) says 5 mm².
        Length outAndBack = Length.FromMeters(10);
        ElectricCurrent current = ElectricCurrent.FromAmperes(10);
        Temperature cool = Temperature.FromDegreesCelsius(20), warm = Temperature.FromDegreesCelsius(60);
        Conductor named = Conductor.OfArea(Area.FromSquareMillimeters(5), ConductorMaterial.Copper);
        Conductor sold = Conductor.Iso6722(MetricSize.Parse("5 mm²"));

        double half = VoltageDrop.Along(named, outAndBack / 2, current, cool).Volts;
        double chart = VoltageDrop.Along(named, outAndBack, current, cool).Volts;
        double temperature = VoltageDrop.Along(named, outAndBack, current, warm).Volts;
        double lay = VoltageDrop.Along(sold, outAndBack, current, warm).Volts;
        double whole = lay + (current.Amperes * 0.016); // fuse, holder and supply lead: 16 mΩ

        Console.WriteLine($"{half:0.00} V  with 5 m put in for the 10 m");
        Console.WriteLine($"{chart:0.00} V  by the chart: copper at 20 °C");
        Console.WriteLine($"{temperature:0.00} V  1. at 60 °C ({(temperature / chart) - 1:+0 %})");
        Console.WriteLine($"{lay:0.00} V  2. as cable is sold ({(lay / temperature) - 1:+0 %})");
        Console.WriteLine($"{whole:0.00} V  3. from the battery's terminals ({(whole / lay) - 1:+0 %})");
        #endregion
    }

    public static void CurrentStepByStep()
    {
        #region current-step-by-step
        // What the same 5 mm² in PVC of 70 °C may carry.
        Conductor cable = Conductor.Iso6722(MetricSize.Parse("5 mm²"));
        InsulationMaterial pvc = InsulationMaterial.PolyvinylChloride;
        Wire wire = Wire.Create(cable, pvc, InsulationWall.UsualFor(cable));
        foreach ((string place, int wires, double ambient) in new[]
        {
            ("one wire alone in air at 30 °C, as in many charts", 1, 30.0),
            ("4. a pair, out and back side by side", 2, 30),
            ("the pair in air at 50 °C", 2, 50),
            ("six loaded wires in air at 50 °C", 6, 50),
        })
        {
            WireBundle bundle = WireBundle.Create(wire, wires, wires);
            Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(ambient) };
            ElectricCurrent most = BundleHeat.CurrentFor(bundle, air, pvc.ContinuousLimit);
            Console.WriteLine($"{most.Amperes * (1 - HeatBalance.Margin):0} A  {place}");
        }
        #endregion
    }

    public static void WhatTheDesignerTakes()
    {
        #region what-the-designer-takes
        var requirements = new CircuitRequirements
        {
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(10)),
            Feed = Length.FromMeters(5),
            Return = ReturnPath.Wire(Length.FromMeters(5)),
            Joints = [Joint.Create("fuse and holder", ElectricResistance.FromMilliohms(4))],
            Upstream = ElectricResistance.FromMilliohms(12),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(50), LoadedConductors = 6 },
            Insulation = InsulationMaterial.PolyvinylChloride,
        };
        CircuitDesign design = CircuitDesigner.Design(requirements, DesignRules.RoadVehicle);
        Console.WriteLine(design);
        Console.WriteLine(design.Find(CheckKind.VoltageDrop));
        Console.WriteLine(design.Find(CheckKind.ContinuousCurrent));
        Console.WriteLine(design.Find(CheckKind.ConductorTemperature));
        #endregion
    }
}
