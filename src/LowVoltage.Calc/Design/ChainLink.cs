using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Design;

/// <summary>One stretch of conductor in the way out and back, on doubles.</summary>
/// <remarks>θ(I) = ambient + rise·(I/rated)², with the rated current of all parallel wires together.</remarks>
internal struct ChainLink
{
    internal Conductor Conductor;
    internal double Meters;
    internal int Parallel;
    internal double RatedAmperes;
    internal double RiseKelvins;

    internal readonly double Ohms20 => Conductor.OhmsPerMeter20 * Meters / Parallel;

    internal readonly double OhmsAt(double celsius) => Conductor.OhmsPerMeterAt(celsius) * Meters / Parallel;

    internal readonly double CelsiusAt(double ambient, double amperes)
    {
        double load = amperes / RatedAmperes;
        return ambient + (RiseKelvins * load * load);
    }
}
