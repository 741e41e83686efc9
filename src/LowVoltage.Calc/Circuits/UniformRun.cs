using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>A run loaded evenly along its length, such as a light (LED) strip, fed at one end or at both.</summary>
/// <remarks>
/// <code>one end V(x) = V − r·i·(L·x − x²/2)    loss = i²·r·L³/3    both ends I1 = i·L/2 + (V1 − V2)/(r·L)</code>
/// <para><b>Symbols.</b> r resistance of feed and return per metre, i current taken per metre, L length, x distance from the near feed.</para>
/// <para><b>Assumes</b> that the current taken per metre does not change with voltage.</para>
/// <para><b>Source.</b> Principles of Power System, chapter on direct-current distribution.</para>
/// </remarks>
public sealed class UniformRun
{
    private readonly double ohmsPerMeter;
    private readonly double meters;
    private readonly double amperesPerMeter;

    private UniformRun(double ohmsPerMeter, double meters, double amperesPerMeter)
    {
        this.ohmsPerMeter = ohmsPerMeter;
        this.meters = meters;
        this.amperesPerMeter = amperesPerMeter;
    }

    /// <summary>A run.</summary>
    /// <param name="feed">Resistance per length of the feed conductor.</param>
    /// <param name="back">Resistance per length of the return conductor; zero when the return is counted elsewhere.</param>
    /// <param name="length">Length of the run, one way, positive.</param>
    /// <param name="total">Current of the whole run, positive.</param>
    /// <returns>The run.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static UniformRun Create(LinearResistance feed, LinearResistance back, Length length, ElectricCurrent total)
    {
        double l = Accept.Meters(length, nameof(length));
        return new UniformRun(feed.OhmsPerMeter + back.OhmsPerMeter, l, Accept.Amperes(total, nameof(total)) / l);
    }

    /// <summary>The smallest cross-section of two equal conductors whose drop to the far end stays within an allowance, fed at one end.</summary>
    /// <param name="resistivity">Resistivity of the conductors at their temperature, positive.</param>
    /// <param name="length">Length of the run, one way, positive.</param>
    /// <param name="total">Current of the whole run, positive.</param>
    /// <param name="allowed">Allowed drop from the feed to the far end, out and back together, positive.</param>
    /// <returns>Cross-section of each conductor: ρ·I·L/ΔV, half of what the same current at the far end would need.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Area LeastArea(ElectricResistivity resistivity, Length length, ElectricCurrent total, ElectricPotential allowed) =>
        Area.FromSquareMillimeters(VoltageDrop.OhmMeters(resistivity, nameof(resistivity)) * 1e6
            * Accept.Amperes(total, nameof(total)) * Accept.Meters(length, nameof(length)) / Accept.Volts(allowed, nameof(allowed)));

    /// <summary>Solves the run fed at its near end only.</summary>
    /// <param name="near">Voltage at the feed, positive.</param>
    /// <returns>Voltages, currents and losses.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive or is absurdly large.</exception>
    public RunSolution FedAtOneEnd(ElectricPotential near)
    {
        double volts = Accept.Volts(near, nameof(near));
        return Solution(volts, amperesPerMeter * meters, volts);
    }

    /// <summary>Solves the run fed at both ends.</summary>
    /// <param name="near">Voltage at the near end, positive.</param>
    /// <param name="far">Voltage at the far end, positive; the two may differ.</param>
    /// <returns>Voltages, currents and losses.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A voltage is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The run has no resistance, so that the two feeds cannot be told apart.</exception>
    public RunSolution FedAtBothEnds(ElectricPotential near, ElectricPotential far)
    {
        double v1 = Accept.Volts(near, nameof(near)), v2 = Accept.Volts(far, nameof(far));
        return Solution(v1, NearAmperes(v1, v2), Math.Max(v1, v2));
    }

    /// <summary>The voltage at a distance, fed at the near end only.</summary>
    /// <param name="near">Voltage at the feed, positive.</param>
    /// <param name="distance">Distance from it, zero to the length of the run.</param>
    /// <returns>The voltage; zero or less means that the current cannot flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public ElectricPotential VoltageAt(ElectricPotential near, Length distance) =>
        ElectricPotential.FromVolts(VoltsAt(Accept.Volts(near, nameof(near)), amperesPerMeter * meters, Distance(distance)));

    /// <summary>The voltage at a distance, fed at both ends.</summary>
    /// <param name="near">Voltage at the near end, positive.</param>
    /// <param name="far">Voltage at the far end, positive.</param>
    /// <param name="distance">Distance from the near end, zero to the length of the run.</param>
    /// <returns>The voltage; zero or less means that the current cannot flow.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    /// <exception cref="InvalidOperationException">The run has no resistance.</exception>
    public ElectricPotential VoltageAt(ElectricPotential near, ElectricPotential far, Length distance)
    {
        double v1 = Accept.Volts(near, nameof(near)), v2 = Accept.Volts(far, nameof(far));
        return ElectricPotential.FromVolts(VoltsAt(v1, NearAmperes(v1, v2), Distance(distance)));
    }

    private double Distance(in Length distance) =>
        Accept.Within(Accept.MetersOrZero(distance, nameof(distance)), 0, meters, "m", nameof(distance));

    private double NearAmperes(double v1, double v2) => ohmsPerMeter > 0
        ? (0.5 * amperesPerMeter * meters) + ((v1 - v2) / (ohmsPerMeter * meters))
        : throw new InvalidOperationException("A run without resistance has no division of current between two feeds.");

    private double VoltsAt(double volts, double nearAmperes, double x) =>
        volts - (ohmsPerMeter * x * (nearAmperes - (0.5 * amperesPerMeter * x)));

    private RunSolution Solution(double volts, double nearAmperes, double highest)
    {
        // The current from the near feed has run out here: the lowest point, if it lies on the run.
        double x = Math.Min(Math.Max(nearAmperes / amperesPerMeter, 0), meters);
        double i = amperesPerMeter, a = nearAmperes, b = nearAmperes - (i * meters);
        return new RunSolution
        {
            Points = [new RunPoint(0, volts, a), new RunPoint(meters, VoltsAt(volts, a, meters), b)],
            Lowest = new RunPoint(x, VoltsAt(volts, a, x), a - (i * x)),
            NearAmperes = a,
            FarAmperes = -b == 0 ? 0 : -b,
            LossWatts = ohmsPerMeter * meters * ((a * a) + (a * b) + (b * b)) / 3,
            HighestFeedVolts = highest,
        };
    }
}
