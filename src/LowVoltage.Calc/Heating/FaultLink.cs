using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Heating;

/// <summary>One length of conductor in an adiabatic short circuit, on doubles: resistance, and how it and the temperature grow with the Joule integral.</summary>
/// <remarks>
/// Formulas and units: <see cref="FaultKernel"/>. n conductors lie in parallel; the resistance is that of all of them. Where the fault shares it with a
/// constant current of others, every growth is that of the fault's own Joule integral times <see cref="Heat"/>.
/// </remarks>
internal readonly struct FaultLink
{
    private readonly double initialCelsius;
    private readonly double kelvinPerJoule;

    internal FaultLink(Conductor conductor, double meters, double initialCelsius, int parallel, double others = 0)
    {
        double capacity = conductor.Material.HeatCapacityJoulesPerCubicMeterKelvin * conductor.EffectiveAreaSquareMillimeters * 1e-6;
        double shared = capacity * parallel * parallel;
        double perMeter = conductor.OhmsPerMeterAt(initialCelsius);
        this.initialCelsius = initialCelsius;
        MeltingCelsius = conductor.Material.MeltingPointCelsius;
        Ohms = perMeter * meters / parallel;
        PerJoule = conductor.Material.TemperatureCoefficient * conductor.OhmsPerMeter20 / shared;
        Others = others;
        kelvinPerJoule = perMeter / shared;
    }

    /// <summary>R₀.</summary>
    internal double Ohms { get; }

    /// <summary>κ, 1/(A²s).</summary>
    internal double PerJoule { get; }

    /// <summary>Io, A: what other circuits send through it all the while, in the direction of the fault's current.</summary>
    internal double Others { get; }

    internal double MeltingCelsius { get; }

    /// <summary>(exp(κJ) − 1)/κ.</summary>
    internal static double Growth(double perJoule, double joules) => perJoule > 0 ? ExpLog.Expm1(perJoule * joules) / perJoule : joules;

    /// <summary>(1 + Io/I)²: the most by which it heats faster than the fault's current alone heats it, as long as that stays at I or above.</summary>
    internal double Heat(double leastAmperes)
    {
        double more = Others > 0 ? 1 + (Others / leastAmperes) : 1;
        return more * more;
    }

    /// <summary>Temperature after a Joule integral; not limited by melting.</summary>
    internal double CelsiusAt(double joules) => initialCelsius + (kelvinPerJoule * Growth(PerJoule, joules));

    /// <summary>The Joule integral that takes it to a temperature; zero when it is that hot already.</summary>
    internal double JoulesTo(double celsius)
    {
        double rise = (celsius - initialCelsius) / kelvinPerJoule;
        return !(rise > 0) ? 0 : PerJoule > 0 ? ExpLog.Log1p(PerJoule * rise) / PerJoule : rise;
    }
}
