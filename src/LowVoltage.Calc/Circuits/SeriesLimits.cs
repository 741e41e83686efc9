namespace LowVoltage.Calc.Circuits;

/// <summary>Sources in series of which some hold a current limit: what they drive into a short circuit together.</summary>
/// <remarks>
/// <code>I = greatest of least(V/R, L1), least((V − V1)/R, L2), …    L1 ≤ L2 ≤ …</code>
/// <para>A supply at its limit L1 gives up its voltage V1; driven backwards by the others it conducts, through its output stage or a diode, whose small drop is not counted. So the
/// limit of one bounds the current only as far as the others cannot push more through it.</para>
/// </remarks>
internal sealed class SeriesLimits
{
    private readonly Part[] parts;

    private SeriesLimits(IEnumerable<Part> parts) => this.parts = [.. parts.OrderBy(p => p.Limit)];

    /// <summary>The parts in series, those with the lowest limit first.</summary>
    internal IReadOnlyList<Part> Parts => parts;

    /// <summary>What two sources in series are made of; null where none holds a limit or there is only one part.</summary>
    internal static SeriesLimits? Of(in SourceNumbers one, in SourceNumbers other)
    {
        Part[] all = [.. PartsOf(one), .. PartsOf(other)];
        return Array.Exists(all, p => !double.IsInfinity(p.Limit)) ? new SeriesLimits(all) : null;
    }

    /// <summary>Current of a short circuit, A.</summary>
    /// <param name="greatest">At the greatest voltages, else at the least.</param>
    /// <param name="volts">Voltage of all together; less than the sum of the parts where something else drops some of it.</param>
    /// <param name="ohms">All the resistance in the way, the sources' own included.</param>
    internal double Amperes(bool greatest, double volts, double ohms)
    {
        double most = 0;
        foreach (Part part in parts)
        {
            most = Math.Max(most, Math.Min(ohms > 0 ? volts / ohms : volts > 0 ? double.PositiveInfinity : 0, part.Limit));
            volts = Math.Max(0, volts - part.Volts(greatest));
        }

        return most;
    }

    private static Part[] PartsOf(in SourceNumbers numbers) =>
        numbers.Beyond?.parts ?? [new Part(numbers.MinimumVolts, numbers.MaximumVolts, numbers.HeldAmperes)];

    /// <summary>One of the sources: its voltages, and the limit that it holds or +∞.</summary>
    internal readonly record struct Part(double MinimumVolts, double MaximumVolts, double Limit)
    {
        internal double Volts(bool greatest) => greatest ? MaximumVolts : MinimumVolts;
    }
}
