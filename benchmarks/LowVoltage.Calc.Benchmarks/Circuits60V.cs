using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>The circuits that the benchmarks design: a typical one, and as many like it as wanted, all different.</summary>
internal static class Circuits60V
{
    internal static CircuitRequirements Typical(double ambientCelsius) => Make(60, 5.5, ambientCelsius, 6, InsulationMaterial.CrossLinkedPolyethylene);

    /// <summary>The same circuit where the aircraft table can rate a wire.</summary>
    internal static CircuitRequirements Aircraft() => Make(60, 5.5, 50, 2, InsulationMaterial.Etfe, Load.ConstantPower(Power.FromWatts(60)));

    /// <summary>Circuits of a vehicle: 5 W to 300 W of every kind of load, 0.5 m to 9 m, two to eight loaded conductors.</summary>
    internal static CircuitRequirements[] Varied(int count)
    {
        Random random = new(1);
        CircuitRequirements[] circuits = new CircuitRequirements[count];
        for (int i = 0; i < count; i++)
        {
            double watts = 5 * Math.Pow(60, random.NextDouble()), meters = 0.5 * Math.Pow(18, random.NextDouble());
            InsulationMaterial insulation = i % 2 == 0 ? InsulationMaterial.CrossLinkedPolyethylene : InsulationMaterial.PolyvinylChloride;
            circuits[i] = Make(watts, meters, 20 + (30 * random.NextDouble()), random.Next(2, 9), insulation, LoadOf(i, watts));
        }

        return circuits;
    }

    internal static Load LoadOf(int kind, double watts) => (kind % 5) switch
    {
        0 => Load.ConstantPower(Power.FromWatts(watts)),
        1 => Load.ConstantCurrent(ElectricCurrent.FromAmperes(watts / 12)),
        2 => Load.Resistance(ElectricResistance.FromOhms(144 / watts)),
        3 => Load.Lamp(Power.FromWatts(watts), ElectricPotential.FromVolts(12)),
        _ => Load.Motor(
            ElectricCurrent.FromAmperes(watts / 12), ElectricCurrent.FromAmperes(watts / 4), ElectricCurrent.FromAmperes(watts / 3), Duration.FromSeconds(0.2)),
    };

    private static CircuitRequirements Make(
        double watts, double meters, double ambientCelsius, int loaded, InsulationMaterial insulation, Load? load = null) => new()
        {
            Source = Battery.LeadAcid(coldCranking: ElectricCurrent.FromAmperes(600)),
            Load = load ?? Load.ConstantPower(Power.FromWatts(watts)),
            Feed = Length.FromMeters(meters),
            Return = ReturnPath.Wire(Length.FromMeters(meters)),
            Place = new Place { Ambient = Temperature.FromDegreesCelsius(ambientCelsius), LoadedConductors = loaded },
            Insulation = insulation,
        };
}
