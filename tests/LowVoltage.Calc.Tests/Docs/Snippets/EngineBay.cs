using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Tests.Docs.Snippets;

internal static class EngineBay
{
    public static void WireInAnEngineBay()
    {
        #region wire-in-an-engine-bay
        Conductor conductor = Conductor.Iso6722(MetricSize.Parse("2.5 mm²"));
        InsulationMaterial[] insulations =
        [
            InsulationMaterial.PolyvinylChloride,
            InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B),
            InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C),
            InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.D),
        ];
        foreach (InsulationMaterial insulation in insulations)
        {
            Wire wire = Wire.Create(conductor, insulation, InsulationWall.UsualFor(conductor));
            Surroundings bay = new() { Ambient = Temperature.FromDegreesCelsius(90), Emissivity = insulation.Emissivity };
            ElectricCurrent most = HeatBalance.CurrentFor(wire, bay, insulation.ContinuousLimit) * (1 - HeatBalance.Margin);
            Console.WriteLine(
                $"{insulation.Name}, {insulation.ContinuousLimit.DegreesCelsius:0} °C: "
                + $"{most.Amperes:0.0} A alone in still air of 90 °C");
        }
        #endregion
    }

    public static void WireInABoatsEngineSpace()
    {
        #region wire-in-a-boats-engine-space
        Temperature insulation = Temperature.FromDegreesCelsius(105);
        TableRating rating = Cfr33Part183Table5.Table.Rating(AwgSize.Parse("10 AWG"), insulation);
        DeratedAmpacity allowed = DeratedAmpacity.From(rating).With(Cfr33Part183EngineSpace.Factor(insulation));

        Console.WriteLine(
            $"10 AWG, 105 °C: {rating.Current.Amperes:0} A in the table, "
            + $"{allowed.Current.Amperes:0.0} A in an engine space (factor {allowed.CombinedFactor:0.00})");
        #endregion
    }
}
