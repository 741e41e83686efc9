using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>What one load draws above its running current while it starts: how much, how long, in which shape.</summary>
/// <remarks>Immutable. All surges of one <see cref="StartWaveform"/> begin at the same moment.</remarks>
public sealed class StartSurge
{
    // How much slower than an exponential a fading surge fades at first: resistance in the way times the conductance that is lost.
    private readonly double softness;

    internal StartSurge(string name, StartSurgeShape shape, double peakAmperes, double seconds, double softness = 0)
    {
        this.softness = softness;
        Name = name;
        Shape = shape;
        PeakAmperes = peakAmperes;
        Seconds = seconds;
    }

    /// <summary>What makes it: <c>motor</c>.</summary>
    public string Name { get; }

    /// <summary>The shape.</summary>
    public StartSurgeShape Shape { get; }

    /// <summary>The highest current above the running current.</summary>
    public ElectricCurrent Peak => ElectricCurrent.FromAmperes(PeakAmperes);

    /// <summary>The whole length of a constant surge; else the time constant.</summary>
    public Duration Duration => Duration.FromSeconds(Seconds);

    internal double PeakAmperes { get; }

    internal double Seconds { get; }

    internal double Softness => softness;

    /// <summary>A surge that stays at its peak and then ends: a motor, on the safe side, since its current falls while it runs up.</summary>
    /// <param name="name">What makes it.</param>
    /// <param name="peak">Current above the running current. Positive.</param>
    /// <param name="duration">How long it lasts. Positive.</param>
    /// <returns>The surge.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static StartSurge Constant(string name, ElectricCurrent peak, Duration duration) => Of(name, StartSurgeShape.Constant, peak, duration, nameof(duration));

    /// <summary>A surge that fades as exp(−t/τ): a cold lamp.</summary>
    /// <param name="name">What makes it.</param>
    /// <param name="peak">Current above the running current at the start. Positive.</param>
    /// <param name="timeConstant">Time constant τ. Positive.</param>
    /// <returns>The surge.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static StartSurge Fading(string name, ElectricCurrent peak, Duration timeConstant) => Of(name, StartSurgeShape.Fading, peak, timeConstant, nameof(timeConstant));

    /// <summary>A capacitor that charges through the resistance of the path: peak V/R, time constant R·C, each as if it were alone.</summary>
    /// <param name="name">What makes it.</param>
    /// <param name="peak">Current at the start, as if it were alone on the path. Positive.</param>
    /// <param name="timeConstant">Time constant R·C, as if it were alone on the path. Positive.</param>
    /// <returns>The surge.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static StartSurge Charging(string name, ElectricCurrent peak, Duration timeConstant) => Of(name, StartSurgeShape.Charging, peak, timeConstant, nameof(timeConstant));

    /// <inheritdoc/>
    public override string ToString() => Shape == StartSurgeShape.Constant
        ? $"{Name}: {Accept.Text(PeakAmperes)} A for {Accept.Text(Seconds)} s"
        : $"{Name}: {Accept.Text(PeakAmperes)} A, time constant {Accept.Text(Seconds)} s";

    /// <summary>The current above running at a time, A; a charging one as if it were alone.</summary>
    internal double AmperesAt(double seconds) =>
        Shape == StartSurgeShape.Constant ? (seconds < Seconds ? PeakAmperes : 0) : Faded(Math.Exp(-seconds / Seconds));

    private double Faded(double left) => PeakAmperes * left * (1 + softness) / (1 + (softness * left));

    private static StartSurge Of(string name, StartSurgeShape shape, in ElectricCurrent peak, in Duration duration, string durationName) => new(
        name ?? throw new ArgumentNullException(nameof(name)), shape, Accept.Amperes(peak, nameof(peak)), Accept.Seconds(duration, durationName));
}
