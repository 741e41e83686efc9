using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class DimLamp
{
    public static void WhyTheLampIsDim()
    {
        #region why-the-lamp-is-dim
        Source battery = Source.BehindResistance(ElectricPotential.FromVolts(12.4), ElectricResistance.FromMilliohms(15));
        Conductor wire = Conductor.Iso6722(MetricSize.Parse("0.75 mm²"));
        Segment run = Segment.Create(wire, Length.FromMeters(7));
        CircuitPath path = CircuitPath.Create(run, ReturnPath.Wire(run))
            .WithFeedJoints(
                Joint.Create("switch, worn", ElectricResistance.FromMilliohms(60)),
                Joint.Create("fuse and holder", ElectricResistance.FromMilliohms(12)));
        Load lamp = Load.Lamp(Power.FromWatts(55), ElectricPotential.FromVolts(12));

        ConductorTemperature cool = ConductorTemperature.At(Temperature.FromDegreesCelsius(25));
        OperatingPoint point = OperatingPoint.Solve(battery, path, lamp, cool);

        Console.WriteLine(
            $"{point.VoltageAtLoad.Volts:0.00} V at the lamp, "
            + $"{point.Current.Amperes:0.00} A, {(double)point.LoadPower.Watts:0} W of 55 W");
        foreach (PathElement part in point.Elements)
        {
            Console.WriteLine($"{part.Drop.Volts:0.00} V in {part.Name}");
        }
        #endregion
    }
}
