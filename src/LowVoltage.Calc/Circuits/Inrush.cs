using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The current surge of one load at switching on: its peak, its shape and how long it lasts.</summary>
/// <remarks>Immutable. The peak is worked out through the resistance in series, which always lowers it.</remarks>
public sealed class Inrush
{
    private readonly double amperes;
    private readonly double seconds;

    internal Inrush(string load, double amperes, double seconds, InrushWave wave, Reference reference)
    {
        Load = load;
        this.amperes = amperes;
        this.seconds = seconds;
        Wave = wave;
        Reference = reference;
    }

    internal double PeakAmperes => amperes;

    internal double Seconds => seconds;

    internal double AmpereSquaredSeconds => amperes * amperes * seconds * (Wave == InrushWave.Exponential ? 0.5 : 1);

    /// <summary>The load that makes the surge.</summary>
    public string Load { get; }

    /// <summary>The highest current, Ip.</summary>
    public ElectricCurrent Peak => ElectricCurrent.FromAmperes(amperes);

    /// <summary>The shape.</summary>
    public InrushWave Wave { get; }

    /// <summary>Time constant τ of an exponential surge; the whole length of a rectangular one.</summary>
    public Duration Duration => Duration.FromSeconds(seconds);

    /// <summary>Joule integral of the surge: ½·Ip²·τ or Ip²·t.</summary>
    public JouleIntegral JouleIntegral =>
        JouleIntegral.FromAmpereSquaredSeconds(AmpereSquaredSeconds);

    /// <summary>Where the peak and the duration come from.</summary>
    public Reference Reference { get; }
}
