using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The current of a circuit that is switched on: what runs, and every surge of its loads at the same moment.</summary>
/// <remarks>
/// <code>
/// b(t) = min[ running + Σ constant surges + Σ fading surges, path ]
/// i(t) = b + (top − b)·exp(−t/τ),  top = min[ path, b(0) + Σ charging peaks ],  τ = Σ(peak·τ)/min[ path, Σ charging peaks ]
/// a source that holds a limit: that limit until the same charge has flowed, beside what runs and the constant surges, then i(t) from where it falls below
/// </code>
/// <para><b>What coincides.</b> Everything: the loads of one circuit are switched together, so all surges begin at t = 0 beside what already runs (common practice, no
/// published source; the hardest start that the circuit can see short of a fault).</para>
/// <para><b>Path.</b> The most that can flow is the highest voltage over the resistance of source and path. Capacitors behind one resistance are one larger
/// capacitor: four of 10 mF and one of 40 mF are the same waveform, to the last digit of their sum. Beside other currents a capacitor charges from the path's most down
/// to theirs with the same R·C: exact for constant currents, on the safe side of resistances, which let it charge sooner.</para>
/// <para><b>A cold lamp</b> behind the path fades by its conductance: G = G_hot + (G_cold − G_hot)·exp(−t/τ), i = V/(R + 1/G), which stays higher for longer than an exponential from the
/// same peak. A surge that a caller states as fading fades as exp(−t/τ).</para>
/// <para>The current only falls. Immutable and thread-safe.</para>
/// </remarks>
public sealed partial class StartWaveform
{
    private readonly StartSurge[] surges;
    private readonly double path;
    private readonly double held;
    private readonly double top;
    private readonly double charging;
    private readonly StartPieces? closed;

    // Where an integral by quadrature is divided; found when first needed, the same whoever asks first.
    private double[]? breaks;

    // Where a source that holds a limit lets go of it, on the clock of the waveform without that limit, and by how much later it is.
    private readonly double release;
    private readonly double delay;

    internal StartWaveform(StartSurge[] surges, double running, double path, double held)
    {
        this.surges = surges;
        this.path = path;
        this.held = held;
        RunningAmperes = Math.Min(running, path);
        double peaks = 0, charge = 0;
        foreach (StartSurge surge in surges)
        {
            bool charges = surge.Shape == StartSurgeShape.Charging;
            peaks += charges ? surge.PeakAmperes : 0;
            charge += charges ? surge.PeakAmperes * surge.Seconds : 0;
        }

        top = Math.Min(path, Base(0) + peaks);
        charging = charge > 0 ? charge / Math.Min(path, peaks) : 0;
        closed = Closed();
        double first = Free(0);
        PeakAmperes = Math.Min(first, held);
        if (first > held)
        {
            release = FallsTo(held);
            delay = DelayBy(ChargeAbove(held, release));
        }
    }

    /// <summary>The surges.</summary>
    public IReadOnlyList<StartSurge> Surges => Array.AsReadOnly(surges);

    /// <summary>What flows when every surge is over.</summary>
    public ElectricCurrent Running => ElectricCurrent.FromAmperes(RunningAmperes);

    /// <summary>The highest current.</summary>
    public ElectricCurrent Peak => ElectricCurrent.FromAmperes(PeakAmperes);

    internal double RunningAmperes { get; }

    internal double PeakAmperes { get; }

    /// <summary>A start.</summary>
    /// <param name="surges">What each load draws above its running current; may be empty.</param>
    /// <param name="running">What all of them draw once started, and whatever else runs. Zero or greater.</param>
    /// <param name="pathLimit">The most that can flow: the highest voltage over the least resistance of source and path. Positive.</param>
    /// <param name="sourceLimit">The current that the source holds at most; null when it has no limit.</param>
    /// <returns>The waveform.</returns>
    /// <exception cref="ArgumentNullException">The list or a surge is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static StartWaveform Create(
        IReadOnlyList<StartSurge> surges, ElectricCurrent running, ElectricCurrent pathLimit, ElectricCurrent? sourceLimit = null)
    {
        _ = surges ?? throw new ArgumentNullException(nameof(surges));
        return new StartWaveform(
            [.. surges.Select(surge => surge ?? throw new ArgumentNullException(nameof(surges)))],
            Accept.AmperesOrZero(running, nameof(running)),
            Accept.Amperes(pathLimit, nameof(pathLimit)),
            sourceLimit is { } limit ? Accept.Amperes(limit, nameof(sourceLimit)) : double.PositiveInfinity);
    }

    /// <summary>The current at a moment.</summary>
    /// <param name="time">Time since switching on. Zero or greater.</param>
    /// <returns>The current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is outside its range.</exception>
    public ElectricCurrent CurrentAt(Duration time)
    {
        double seconds = Accept.SecondsOrZero(time, nameof(time));
        return ElectricCurrent.FromAmperes(seconds < release + delay ? held : Free(seconds - delay));
    }

    /// <summary>How long the current stays above a value.</summary>
    /// <param name="current">The value. Positive.</param>
    /// <returns>The time; zero when it never exceeds it, <c>null</c> when the running current does.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public Duration? TimeAbove(ElectricCurrent current)
    {
        double seconds = SecondsAbove(Accept.Amperes(current, nameof(current)));
        return double.IsInfinity(seconds) ? null : Duration.FromSeconds(seconds);
    }

    /// <inheritdoc/>
    public override string ToString() => $"{string.Join(", ", (object[])surges)}{(surges.Length > 0 ? " on " : "")}{Accept.Text(RunningAmperes)} A running";
}
