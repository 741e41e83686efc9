using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

/// <summary>The circuit, invented for this sample: a converter of some 120 W on 2.5 mm², a few metres out and back through a warm compartment.</summary>
internal sealed class Circuit
{
    internal const string Caution =
        "CAUTION: an invented circuit with invented spreads. A real wire is judged with the spreads of its own site,\nits fuse, and the rules that hold there.";

    internal Circuit()
    {
        ElectricCurrent rated = HeatBalance.CurrentFor(
            Wire, new Surroundings { Ambient = Temperature.FromDegreesCelsius(BaseCelsius) }, Temperature.FromDegreesCelsius(MostCelsius));
        RatedAmperes = rated.Amperes;
        OhmsPerMeter20 = Wire.Conductor.ResistancePerLength(Temperature.FromDegreesCelsius(20)).OhmsPerMeter;
    }

    internal Wire Wire { get; } = Wire.Create(
        Conductor.Iso6722(MetricSize.FromSquareMillimeters(2.5)), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.7));

    internal ConductorMaterial Metal => Wire.Conductor.Material;

    internal double OhmsPerMeter20 { get; }

    /// <summary>Ambient for which the wire is rated, °C: where the spread has its middle.</summary>
    internal double BaseCelsius { get; } = 45;

    /// <summary>The current that brings the wire from there to its limit in still air, A: the square law hangs on it.</summary>
    internal double RatedAmperes { get; }

    /// <summary>Least voltage at which the load works.</summary>
    internal double LeastVolts { get; } = 10.5;

    /// <summary>Highest conductor temperature for the insulation, °C.</summary>
    internal double MostCelsius { get; } = 70;
}
