using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>The loop of a short circuit: a voltage behind a fixed resistance, feeding conductors whose resistance rises as they heat.</summary>
/// <remarks>
/// <para><b>Two loops, not one.</b> To show that a fuse opens, take the least current: lowest voltage, source cold and aged (its largest resistance), conductors hot. To
/// show what it must break, and how hot a conductor gets in the first milliseconds, take the greatest: highest voltage, source new and warm, conductors
/// cold. One loop cannot serve both.</para>
/// <para>The fixed resistance is everything that does not heat with the fault: the source, joints, fuse, switches. Inductance is left out: it only
/// delays the rise of the current, by well under a millisecond in a few metres of wire.</para>
/// <para>Immutable and thread-safe.</para>
/// </remarks>
public sealed class FaultPath
{
    private FaultPath(double volts, double fixedOhms, FaultSegment[] segments)
    {
        Volts = volts;
        FixedOhms = fixedOhms;
        Segments = Array.AsReadOnly(segments);
        Kernel = new FaultKernel(volts, fixedOhms, Array.ConvertAll(segments, s => new FaultLink(s.Conductor, s.Meters, s.InitialCelsius, s.Parallel, s.OtherAmperes)));
    }

    /// <summary>Voltage that drives the fault: the open-circuit voltage of the source.</summary>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(Volts);

    /// <summary>Resistance that does not change: source, joints, fuse.</summary>
    public ElectricResistance FixedResistance => ElectricResistance.FromOhms(FixedOhms);

    /// <summary>The conductors of the loop.</summary>
    public IReadOnlyList<FaultSegment> Segments { get; }

    /// <summary>The current at the first moment, before anything heats: the prospective current of this loop.</summary>
    public ElectricCurrent ProspectiveCurrent => ElectricCurrent.FromAmperes(Kernel.AmperesAt(0));

    internal double Volts { get; }

    internal double FixedOhms { get; }

    internal FaultKernel Kernel { get; }

    /// <summary>A loop.</summary>
    /// <param name="voltage">Open-circuit voltage of the source. Positive.</param>
    /// <param name="fixedResistance">Resistance of source, joints and fuse together. Zero or greater.</param>
    /// <param name="segments">The conductors, at least one. A short loop of one wire is one segment.</param>
    /// <returns>The loop.</returns>
    /// <exception cref="ArgumentNullException">The list or a segment is null.</exception>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FaultPath Create(ElectricPotential voltage, ElectricResistance fixedResistance, params FaultSegment[] segments)
    {
        _ = segments ?? throw new ArgumentNullException(nameof(segments));
        if (segments.Length == 0)
        {
            throw new ArgumentException("segments must hold at least one segment; it was empty.", nameof(segments));
        }

        FaultSegment[] copy = [.. segments.Select(s => s ?? throw new ArgumentNullException(nameof(segments)))];
        return new FaultPath(Accept.Volts(voltage, nameof(voltage)), Accept.OhmsOrZero(fixedResistance, nameof(fixedResistance)), copy);
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{Accept.Text(Volts)} V behind {Accept.Text(FixedOhms * 1000)} mΩ into {string.Join(", ", Segments)}";
}
