using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>The current melts the conductor before the time is over, so that there is no final temperature to give.</summary>
/// <remarks>The message names the metal, its melting point and the moment it is reached. Each call that throws it has a Try form that does not.</remarks>
public sealed class ConductorMeltsException : InvalidOperationException
{
    internal ConductorMeltsException(string message, double meltingCelsius, double secondsToMelt)
        : base(message)
    {
        MeltingPoint = Temperature.FromDegreesCelsius(meltingCelsius);
        TimeToMelt = Duration.FromSeconds(secondsToMelt);
    }

    /// <summary>Melting point of the metal.</summary>
    public Temperature MeltingPoint { get; }

    /// <summary>When the conductor reaches its melting point by the model that was asked; where no heat leaves in it, the real one comes later.</summary>
    public Duration TimeToMelt { get; }
}
