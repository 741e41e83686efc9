using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class ParallelWires
{
    public static void TwoWiresSideBySide()
    {
        #region two-wires-side-by-side
        Source battery = Source.BehindResistance(ElectricPotential.FromVolts(12.4), ElectricResistance.FromMilliohms(10));
        Conductor wire = Conductor.Iso6722(MetricSize.Parse("4 mm²"));
        Load heater = Load.ConstantCurrent(ElectricCurrent.FromAmperes(35));
        ConductorTemperature warm = ConductorTemperature.At(Temperature.FromDegreesCelsius(60));

        foreach (int parallel in new[] { 1, 2 })
        {
            Segment run = Segment.Create(wire, Length.FromMeters(3), parallel);
            CircuitPath path = CircuitPath.Create(run, ReturnPath.Wire(run));
            OperatingPoint point = OperatingPoint.Solve(battery, path, heater, warm);
            Console.WriteLine(
                $"{parallel} × 4 mm²: {point.Drop.Volts:0.00} V lost, "
                + $"{point.Current.Amperes / parallel:0.0} A in each wire");
        }
        #endregion
    }
}
