using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>One insulated wire on doubles: published data read through the public surface, everything else worked out here. SI units, sections in mm².</summary>
internal sealed class OwnWire
{
    public OwnWire(Conductor conductor, InsulationMaterial insulation, double? wallMillimeters)
    {
        Conductor = conductor;
        Ohms20 = conductor.ResistancePerLength(Temperature.FromDegreesCelsius(20)).OhmsPerMeter;
        Area = conductor.Area.SquareMillimeters;
        ConductorMaterial metal = conductor.Material;
        Alpha = metal.TemperatureCoefficient;
        Beta = -metal.InferredZero.DegreesCelsius;
        Melting = metal.MeltingPoint.DegreesCelsius;
        double resistivity = metal.Resistivity.OhmMeters, heat = metal.VolumetricHeatCapacity.JoulesPerCubicMeterKelvin;

        // The metal that carries: a standard's largest resistance stands for less copper than the nominal section.
        EffectiveArea = Math.Min(resistivity / Ohms20 * 1e6, Area);
        HeatPerKelvin = heat * EffectiveArea * 1e-6;
        // IEC 60949: K² = σc·(β + 20)/ρ20.
        KSquared = heat * (Beta + 20) / resistivity * 1e-12;
        Diameter = conductor.Diameter.Meters;
        double wall = (wallMillimeters ?? InsulationWall.UsualFor(conductor).Millimeters) * 1e-3;
        Outer = Diameter + (2 * wall);
        Insulation = insulation;
        Continuous = insulation.ContinuousLimit.DegreesCelsius;
        ShortCircuit = insulation.ShortCircuitLimitFor(conductor).DegreesCelsius;
        HasRoom = insulation.ShortCircuitLimit.DegreesCelsius > Continuous;
        InnerResistance = insulation.ThermalResistivity * Math.Log(Outer / Diameter) / (2 * Math.PI);
    }

    public Conductor Conductor { get; }

    public InsulationMaterial Insulation { get; }

    public double Ohms20 { get; }

    public double Area { get; }

    public double EffectiveArea { get; }

    public double Alpha { get; }

    public double Beta { get; }

    public double Melting { get; }

    public double HeatPerKelvin { get; }

    public double KSquared { get; }

    public double Diameter { get; }

    public double Outer { get; }

    public double Continuous { get; }

    public double ShortCircuit { get; }

    /// <summary>Whether the insulation has a short-circuit limit above its continuous one.</summary>
    public bool HasRoom { get; }

    /// <summary>K·m/W of the insulation.</summary>
    public double InnerResistance { get; }

    public double OhmsAt(double celsius) => Ohms20 * (1 + (Alpha * (celsius - 20)));

    /// <summary>W/m that leave one wire free in still air with its conductor at a temperature.</summary>
    public double LossAlone(double celsius, double ambient, double altitude) => OwnBundle.HeatOfOne(this, 1, celsius, ambient, altitude);
}
