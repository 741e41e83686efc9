using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>What drives a fault and everything in its loop but the wire in question, each between two bounds.</summary>
/// <remarks>
/// The least current takes the lowest voltage and the greatest resistance (source cold and aged, conductors hot), the greatest the highest voltage and the
/// least resistance. The resistance is that of the whole rest of the loop: source, joints, fuse, other stretches and the way back. Immutable and thread-safe.
/// </remarks>
public sealed class FaultSupply
{
    private FaultSupply(double leastVolts, double greatestVolts, double leastOhms, double greatestOhms, double heldAmperes)
    {
        LeastVolts = leastVolts;
        GreatestVolts = greatestVolts;
        LeastOhms = leastOhms;
        GreatestOhms = greatestOhms;
        HeldAmperes = MostHeldAmperes = heldAmperes;
    }

    /// <summary>Lowest open-circuit voltage of the source.</summary>
    public ElectricPotential LeastVoltage => ElectricPotential.FromVolts(LeastVolts);

    /// <summary>Highest open-circuit voltage of the source.</summary>
    public ElectricPotential GreatestVoltage => ElectricPotential.FromVolts(GreatestVolts);

    /// <summary>Least resistance of the rest of the loop.</summary>
    public ElectricResistance LeastResistance => ElectricResistance.FromOhms(LeastOhms);

    /// <summary>Greatest resistance of the rest of the loop.</summary>
    public ElectricResistance GreatestResistance => ElectricResistance.FromOhms(GreatestOhms);

    /// <summary>The current that the source holds at most; null when it has no limit.</summary>
    public ElectricCurrent? HeldCurrent => double.IsInfinity(HeldAmperes) ? null : ElectricCurrent.FromAmperes(HeldAmperes);

    internal double LeastVolts { get; }

    internal double GreatestVolts { get; }

    internal double LeastOhms { get; }

    internal double GreatestOhms { get; }

    internal double HeldAmperes { get; }

    /// <summary>What bounds the greatest current: the limit, or more where a supply that holds it lies in series with other sources.</summary>
    internal double MostHeldAmperes { get; init; }

    /// <summary>A supply between two bounds.</summary>
    /// <param name="leastVoltage">Lowest open-circuit voltage. Positive.</param>
    /// <param name="greatestVoltage">Highest open-circuit voltage, at least the former.</param>
    /// <param name="leastResistance">Least resistance of source and rest of the loop. Positive: without any the current has no bound.</param>
    /// <param name="greatestResistance">Greatest resistance of source and rest of the loop, at least the former.</param>
    /// <returns>The supply.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FaultSupply Create(
        ElectricPotential leastVoltage, ElectricPotential greatestVoltage, ElectricResistance leastResistance, ElectricResistance greatestResistance)
    {
        double volts = Accept.Volts(leastVoltage, nameof(leastVoltage)), ohms = Accept.Ohms(leastResistance, nameof(leastResistance));
        return Of(
            volts,
            Accept.Within(Accept.Volts(greatestVoltage, nameof(greatestVoltage)), volts, Accept.MostVolts, "V", nameof(greatestVoltage)),
            ohms,
            Accept.Within(Accept.Ohms(greatestResistance, nameof(greatestResistance)), ohms, Accept.MostOhms, "Ω", nameof(greatestResistance)),
            double.PositiveInfinity);
    }

    /// <summary>The same supply with a current that it holds at most, as an electronic supply does.</summary>
    /// <param name="held">The current. Positive.</param>
    /// <returns>A new object.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    public FaultSupply Holding(ElectricCurrent held) => Of(LeastVolts, GreatestVolts, LeastOhms, GreatestOhms, Accept.Amperes(held, nameof(held)));

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Accept.Text(LeastVolts)} V to {Accept.Text(GreatestVolts)} V behind {Accept.Text(LeastOhms * 1000)} mΩ to {Accept.Text(GreatestOhms * 1000)} mΩ";

    internal static FaultSupply Of(double leastVolts, double greatestVolts, double leastOhms, double greatestOhms, double heldAmperes, double? mostHeld = null) =>
        new(leastVolts, greatestVolts, leastOhms, greatestOhms, heldAmperes) { MostHeldAmperes = mostHeld ?? heldAmperes };

    /// <summary>The least current through a further resistance, A.</summary>
    internal double LeastAmperes(double ohms) => Math.Min(HeldAmperes, LeastVolts / (GreatestOhms + ohms));

    /// <summary>The greatest current through a further resistance, A; at most the largest that is accepted anywhere.</summary>
    internal double GreatestAmperes(double ohms) => Math.Min(Math.Min(MostHeldAmperes, GreatestVolts / (LeastOhms + ohms)), Accept.MostAmperes);
}
