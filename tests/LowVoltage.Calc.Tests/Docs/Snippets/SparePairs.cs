using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class SparePairs
{
    public static void PowerOverSparePairs()
    {
        #region power-over-spare-pairs
        // Two spare pairs, 24 AWG solid: both wires of one pair out, both of the other back.
        Conductor strand = Conductor.Solid(AwgSize.Parse("24 AWG"), ConductorMaterial.Copper);
        Segment pair = Segment.Create(strand, Length.FromMeters(40), parallel: 2);
        CircuitPath path = CircuitPath.Create(pair, ReturnPath.Wire(pair));
        Load camera = Load.ConstantPower(Power.FromWatts(10), efficiency: 0.85)
            .WithMinimumVoltage(ElectricPotential.FromVolts(9));
        ConductorTemperature warm = ConductorTemperature.At(Temperature.FromDegreesCelsius(50));

        foreach (double volts in new[] { 12.0, 24, 48 })
        {
            Source supply = Source.CurrentLimited(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(2));
            OperatingPoint point = OperatingPoint.Solve(supply, path, camera, warm);
            Console.WriteLine(point.Exists
                ? $"{volts:0} V: {point.VoltageAtLoad.Volts:0.0} V at the camera, {point.Current.Amperes:0.00} A, "
                    + $"{(double)point.PathLoss.Watts:0.0} W lost, below its minimum: {point.BelowMinimum}"
                : $"{volts:0} V: no operating point, at most {(double)point.LargestPower!.Value.Watts:0.0} W can arrive");
        }
        #endregion
    }
}
