using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Design;

/// <summary>One stretch of conductor in the way out and back, on doubles.</summary>
/// <remarks>θ(I) = base + rise·(I/rated)², with the rated current of all parallel wires together; an unrated stretch stays at its base.</remarks>
internal struct ChainLink
{
    internal Conductor Conductor;
    internal double Meters;
    internal int Parallel;
    internal double RatedAmperes;
    internal double RiseKelvins;
    internal double BaseCelsius;

    /// <summary>The conductor that the rating is of: a return of its own keeps its rating while candidates for the feed come and go.</summary>
    internal Conductor? RatedConductor;

    internal readonly bool IsRated => RatedAmperes > 0;

    internal readonly double Ohms20 => Conductor.OhmsPerMeter20 * Meters / Parallel;

    internal readonly double OhmsAt(double celsius) => Conductor.OhmsPerMeterAt(celsius) * Meters / Parallel;

    internal readonly double CelsiusAt(double amperes)
    {
        double load = IsRated ? amperes / RatedAmperes : 0;
        return BaseCelsius + (RiseKelvins * load * load);
    }
}
