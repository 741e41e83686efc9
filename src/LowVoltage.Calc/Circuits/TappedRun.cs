using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Loads tapped along a run, such as lights or sockets on one pair of wires (a daisy chain), fed at one end or at both.</summary>
/// <remarks>
/// <code>one end ΔV = Σ(Ik·rk·Lk)    both ends I1 = [V1 − V2 + Σ(tapk·R beyond k)]/ΣR</code>
/// <para><b>Symbols.</b> Ik current in section k, rk resistance of feed and return of that section per metre, Lk its length, one way.</para>
/// <para><b>Assumes</b> currents that do not change with voltage, and taps whose current returns along the same run.</para>
/// <para><b>Source.</b> Principles of Power System, chapter on direct-current distribution.</para>
/// </remarks>
public sealed class TappedRun
{
    private readonly Tap[] taps;
    private readonly double ohmsPerMeter;

    private TappedRun(Tap[] taps, double ohmsPerMeter)
    {
        this.taps = taps;
        this.ohmsPerMeter = ohmsPerMeter;
    }

    /// <summary>A run.</summary>
    /// <param name="feed">Resistance per length of the feed wire.</param>
    /// <param name="back">Resistance per length of the return wire; zero when the return is counted elsewhere.</param>
    /// <param name="taps">Sections and taps from the near feed on, at least one. With a second feed it stands at the end of the last section.</param>
    /// <returns>The run.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    /// <exception cref="ArgumentException">There is no tap.</exception>
    public static TappedRun Create(LinearResistance feed, LinearResistance back, params Tap[] taps) =>
        new(Require(taps), feed.OhmsPerMeter + back.OhmsPerMeter);

    /// <summary>The smallest cross-section of two equal wires whose drop to the last tap stays within an allowance.</summary>
    /// <param name="resistivity">Resistivity of the wires at their temperature, positive.</param>
    /// <param name="allowed">Allowed drop from the feed to the last tap, out and back together, positive.</param>
    /// <param name="taps">Sections and taps, at least one; sections of other conductors are not allowed here.</param>
    /// <returns>Cross-section of each wire: 2·ρ·Σ(Ik·Lk)/ΔV.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    /// <exception cref="ArgumentException">There is no tap, or one has conductors of its own.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Resistivity or drop is outside its range.</exception>
    public static Area LeastArea(ElectricResistivity resistivity, ElectricPotential allowed, params Tap[] taps)
    {
        double ohmMeters = VoltageDrop.OhmMeters(resistivity, nameof(resistivity)), drop = Accept.Volts(allowed, nameof(allowed));
        double current = Require(taps).Sum(t => t.Amperes), moment = 0;
        foreach (Tap tap in taps)
        {
            if (tap.OhmsPerMeter is not null)
            {
                throw new ArgumentException("A section with conductors of its own has no cross-section to find.", nameof(taps));
            }

            moment += current * tap.Meters;
            current -= tap.Amperes;
        }

        return Area.FromSquareMillimeters(2 * ohmMeters * moment / drop * 1e6);
    }

    /// <summary>Solves the run fed at its near end only.</summary>
    /// <param name="near">Voltage at the feed, positive.</param>
    /// <returns>Voltages, currents and losses.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive or is absurdly large.</exception>
    public RunSolution FedAtOneEnd(ElectricPotential near)
    {
        double volts = Accept.Volts(near, nameof(near)), amperes = taps.Sum(t => t.Amperes);
        return Walk(volts, amperes, 0, volts, null);
    }

    /// <summary>Solves the run fed at both ends.</summary>
    /// <param name="near">Voltage at the near end, positive.</param>
    /// <param name="far">Voltage at the far end, that of the last tap, positive; the two may differ.</param>
    /// <returns>Voltages, currents and losses.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The run has no resistance, so that the two feeds cannot be told apart.</exception>
    public RunSolution FedAtBothEnds(ElectricPotential near, ElectricPotential far)
    {
        double v1 = Accept.Volts(near, nameof(near)), v2 = Accept.Volts(far, nameof(far)), all = taps.Sum(Ohms);
        if (!(all > 0))
        {
            throw new InvalidOperationException("A run without resistance has no division of current between two feeds.");
        }

        double beyond = all, sum = v1 - v2, total = 0;
        foreach (Tap tap in taps)
        {
            beyond -= Ohms(tap);
            sum += tap.Amperes * beyond;
            total += tap.Amperes;
        }

        double amperes = sum / all;
        return Walk(v1, amperes, total - amperes, Math.Max(v1, v2), v2);
    }

    private RunSolution Walk(double volts, double amperes, double farAmperes, double highest, double? farVolts)
    {
        RunPoint[] points = new RunPoint[taps.Length];
        RunPoint lowest = new(0, volts, amperes);
        double meters = 0, current = amperes, loss = 0;
        for (int k = 0; k < taps.Length; k++)
        {
            double ohms = Ohms(taps[k]);
            meters += taps[k].Meters;
            // The far feed fixes its own point; the walk would come to the same but for rounding.
            volts = k == taps.Length - 1 && farVolts is { } stated ? stated : volts - (current * ohms);
            loss += current * current * ohms;
            points[k] = new RunPoint(meters, volts, current);
            lowest = volts < lowest.Volts ? points[k] : lowest;
            current -= taps[k].Amperes;
        }

        return new RunSolution
        {
            Points = points, Lowest = lowest, NearAmperes = amperes, FarAmperes = farAmperes, LossWatts = loss, HighestFeedVolts = highest,
        };
    }

    private double Ohms(Tap tap) => (tap.OhmsPerMeter ?? ohmsPerMeter) * tap.Meters;

    private static Tap[] Require(Tap[] taps)
    {
        _ = taps ?? throw new ArgumentNullException(nameof(taps));
        if (taps.Length == 0)
        {
            throw new ArgumentException("At least one tap is needed.", nameof(taps));
        }

        foreach (Tap tap in taps)
        {
            _ = tap ?? throw new ArgumentNullException(nameof(taps));
        }

        return [.. taps];
    }
}
