using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class HotBundle
{
    public static void TemperatureOfABundle()
    {
        #region temperature-of-a-bundle
        Conductor conductor = Conductor.Iso6722(MetricSize.Parse("1.5 mm²"));
        Wire wire = Wire.Create(conductor, InsulationMaterial.CrossLinkedPolyethylene, wall: Length.FromMillimeters(0.3));
        Surroundings air = new() { Ambient = Temperature.FromDegreesCelsius(50) };
        ElectricCurrent current = ElectricCurrent.FromAmperes(10);

        foreach ((int wires, int loaded) in new[] { (1, 1), (7, 7), (20, 7), (20, 20) })
        {
            WireBundle bundle = WireBundle.Create(wire, wires, loaded);
            Temperature hottest = BundleHeat.TemperatureAt(bundle, air, current);
            ElectricCurrent most = BundleHeat.CurrentFor(bundle, air, Temperature.FromDegreesCelsius(90));
            Console.WriteLine(
                $"{loaded} of {wires} wires loaded: {hottest.DegreesCelsius:0} °C "
                + $"at 10 A each, {most.Amperes:0.0} A each for 90 °C");
        }
        #endregion
    }
}
