using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>The circuit and what varies about it, invented for this sample: a converter of 70 W on 10 mm², out and back through a warm compartment.</summary>
internal static class Circuit
{
    internal const string Caution =
        "CAUTION: an invented circuit with invented tolerances. A real batch is judged\nwith the tolerances of its own parts, and by the rules that hold there.";

    internal static Tolerances Tolerances { get; } = Tolerances.None
        .WithSupply(Ratio.FromPercent(4)).WithLengths(Ratio.FromPercent(9)).WithResistances(Ratio.FromPercent(3), common: true)
        .WithJoints(Ratio.FromPercent(60)).WithLoads(Ratio.FromPercent(15)).WithAmbient(TemperatureDelta.FromKelvins(15));

    internal static CircuitDesign Design() => CircuitDesigner.Verify(
        new CircuitRequirements
        {
            Source = Source.Ideal(ElectricPotential.FromVolts(12.3)),
            Load = Load.ConstantPower(Power.FromWatts(70), minimumVoltage: ElectricPotential.FromVolts(11.4)),
            Feed = Length.FromMeters(3.5),
            Return = ReturnPath.Wire(Length.FromMeters(3.5)),
            Joints = [Joint.Create("crimps and fuse holder", ElectricResistance.FromMilliohms(10))],
            Upstream = ElectricResistance.FromMilliohms(25),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(45), LoadedConductors = 6 },
            Insulation = InsulationMaterial.PolyvinylChloride,
        },
        Conductor.Iso6722(MetricSize.FromSquareMillimeters(10)),
        FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(10)),
        DesignRules.RoadVehicle);
}
