using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>The current of a dead short circuit, least and greatest, at the source or at the end of a path.</summary>
/// <remarks>
/// <code>least = Vmin/(Rmax + R(θ hot))    greatest = Vmax/(Rmin + R(θ cold))</code>
/// <para><b>Symbols.</b> Vmin and Vmax range of the open-circuit voltage, Rmax and Rmin range of the internal resistance, R resistance of the path.</para>
/// <para>The least current must still open the fuse; the greatest is what the fuse must be able to break. Resistances only: the rise time set by inductance, and
/// motors or chargers that add current, are not counted. A fault with a resistance or an arc of its own gives less than the least.</para>
/// <para>A source that holds its current limits both. A protection that disconnects is never counted on for the greatest.</para>
/// <para>Source of the reasoning: Ohm's law; IEEE 946 (battery short-circuit current, peak values added conservatively).</para>
/// </remarks>
public sealed partial class ProspectiveCurrent
{
    private ProspectiveCurrent(double least, double greatest, bool limited, IReadOnlyList<string> assumptions)
    {
        LeastAmperes = least;
        GreatestAmperes = greatest;
        CurrentLimitReached = limited;
        Assumptions = assumptions;
    }

    /// <summary>Whether the current is bounded. An ideal source without any resistance has no prospective current.</summary>
    public bool IsBounded => !double.IsInfinity(GreatestAmperes);

    /// <summary>The least current; <c>null</c> when nothing bounds it.</summary>
    public ElectricCurrent? Least => double.IsInfinity(LeastAmperes) ? null : ElectricCurrent.FromAmperes(LeastAmperes);

    /// <summary>The greatest current; <c>null</c> when nothing bounds it.</summary>
    public ElectricCurrent? Greatest => IsBounded ? ElectricCurrent.FromAmperes(GreatestAmperes) : null;

    /// <summary>Whether the source holds the greatest current at its own limit.</summary>
    public bool CurrentLimitReached { get; }

    /// <summary>What was assumed, one sentence each.</summary>
    public IReadOnlyList<string> Assumptions { get; }

    internal double LeastAmperes { get; }

    internal double GreatestAmperes { get; }

    // What was solved, for the working.
    private Source Source { get; init; } = null!;

    private CircuitPath? Path { get; init; }

    private double HotCelsius { get; init; }

    private double ColdCelsius { get; init; }

    /// <summary>A short circuit across the terminals of the source.</summary>
    /// <param name="source">The source.</param>
    /// <returns>Least and greatest current.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="source"/> is null.</exception>
    public static ProspectiveCurrent AtSource(Source source)
    {
        _ = source ?? throw new ArgumentNullException(nameof(source));
        return Make(source, null, 0, 0, "Short circuit across the terminals, without resistance.");
    }

    /// <summary>A short circuit at the far end of a path: the load is bridged.</summary>
    /// <param name="source">The source.</param>
    /// <param name="path">The way out and back, with its joints.</param>
    /// <param name="hot">Conductor temperature for the least current, −100 °C to 1000 °C: the highest that the conductors reach in service.</param>
    /// <param name="cold">Conductor temperature for the greatest current, at most the hot one.</param>
    /// <returns>Least and greatest current. Other circuits' current in a shared return is not counted.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range, or cold is above hot.</exception>
    public static ProspectiveCurrent AtEnd(Source source, CircuitPath path, Temperature hot, Temperature cold)
    {
        _ = source ?? throw new ArgumentNullException(nameof(source));
        _ = path ?? throw new ArgumentNullException(nameof(path));
        double most = ConductorTemperature.Celsius(hot, nameof(hot)), least = ConductorTemperature.Celsius(cold, nameof(cold));
        least = Accept.Within(least, -100, most, "°C", nameof(cold));
        return Make(
            source,
            path,
            most,
            least,
            $"Short circuit at the end of the path, without resistance; conductors at {Accept.Text(most)} °C for the least current and at {Accept.Text(least)} °C for the greatest.");
    }

    /// <summary>Least current in A, from SI doubles.</summary>
    internal static double LeastAt(in SourceNumbers source, double hotOhms) =>
        source.Beyond?.Amperes(false, source.MinimumVolts, source.GreatestOhms + hotOhms) ?? Math.Min(Divide(source.MinimumVolts, source.GreatestOhms + hotOhms), source.HeldAmperes);

    /// <summary>Greatest current in A, from SI doubles.</summary>
    internal static double GreatestAt(in SourceNumbers source, double coldOhms) =>
        source.Beyond?.Amperes(true, source.MaximumVolts, source.LeastOhms + coldOhms) ?? Math.Min(Divide(source.MaximumVolts, source.LeastOhms + coldOhms), source.HeldAmperes);

    private static double Divide(double volts, double ohms) => ohms > 0 ? volts / ohms : double.PositiveInfinity;

    private static ProspectiveCurrent Make(Source source, CircuitPath? path, double hotCelsius, double coldCelsius, string where)
    {
        SourceNumbers numbers = source.Numbers;
        double hotOhms = path?.OhmsAt(hotCelsius) ?? 0, coldOhms = path?.OhmsAt(coldCelsius) ?? 0;
        double least = LeastAt(numbers, hotOhms), greatest = GreatestAt(numbers, coldOhms);
        List<string> lines = [.. source.Assumptions, where];
        lines.Add($"Least: {Accept.Text(numbers.MinimumVolts)} V behind {Accept.Text(numbers.GreatestOhms * 1000)} mΩ in the source. "
            + $"Greatest: {Accept.Text(numbers.MaximumVolts)} V behind {Accept.Text(numbers.LeastOhms * 1000)} mΩ.");
        if (numbers.Action == LimitAction.Disconnects)
        {
            lines.Add($"The protection of the source may disconnect above {Accept.Text(numbers.LimitAmperes)} A before a fuse opens; neither current counts on it.");
        }

        return new ProspectiveCurrent(least, greatest, numbers.Action == LimitAction.Holds && numbers.LimitAmperes.Equals(greatest), lines)
        {
            Source = source,
            Path = path,
            HotCelsius = hotCelsius,
            ColdCelsius = coldCelsius,
        };
    }
}
