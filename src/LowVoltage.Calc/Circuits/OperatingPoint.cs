using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>Where a source, a path and a load settle: current, voltage at the load, drop, losses, temperatures. Or the reason why they cannot.</summary>
/// <remarks>
/// <code>U = V − I·R(θ(I))    I = load(U)</code>
/// <para><b>Symbols.</b> V open-circuit voltage, R resistance of source and path at the conductors' own temperature θ, U voltage at the load.</para>
/// <para>Solved to consistency within a bracket, to about 1e-15 of the voltage. Where a constant-power load has two points the stable one, with the higher
/// voltage, is given. Where there is none <see cref="Exists"/> is false, <see cref="Explanation"/> says why and <see cref="LargestPower"/>
/// what could be delivered; the members of the point itself then throw <see cref="InvalidOperationException"/>.</para>
/// <para>Immutable and thread-safe.</para>
/// </remarks>
public sealed partial class OperatingPoint
{
    // Both written when somebody reads them, the same whoever asks first.
    private IReadOnlyList<PathElement>? elements;
    private IReadOnlyList<string>? assumptions;

    internal OperatingPoint()
    {
    }

    /// <summary>W; NaN where there is a point, or a conductor melts.</summary>
    internal double LargestWatts { get; init; } = double.NaN;

    internal double OpenVolts { get; init; }

    internal double NominalVolts => Supply.Numbers.NominalVolts;

    internal double SourceOhms => Supply.Numbers.OhmsAt(Level);

    internal double Amperes { get => There(field); init; }

    internal double HeatingAmperes { get => There(field); init; }

    internal double LoadVolts { get => There(field); init; }

    internal double DropVolts { get => There(field); init; }

    internal double? MinimumVolts => Exists ? Fed.MinimumVolts : null;

    /// <summary>The r.m.s. current by which the conductors stay as warm as they are, A; NaN where they follow their own.</summary>
    internal double FrozenAmperes { get; init; }

    // What was solved, for the working.
    internal Source Supply { get; init; } = null!;

    internal CircuitPath Path { get; init; } = null!;

    internal Load Fed { get; init; } = null!;

    internal ConductorTemperature Warmth { get; init; } = null!;

    /// <summary>Whether there is such a point.</summary>
    public bool Exists => Reason == NoOperatingPoint.None;

    /// <summary>Why there is none.</summary>
    public NoOperatingPoint Reason { get; internal init; }

    /// <summary>Why there is none, in words; empty when there is one.</summary>
    public required string Explanation { get; init; }

    /// <summary>When there is no point: the largest power that could reach a load here; <c>null</c> when there is one, or when the conductor melts.</summary>
    public Power? LargestPower => double.IsNaN(LargestWatts) ? null : Power.FromWatts(LargestWatts);

    /// <summary>Where in its range the supply was taken.</summary>
    public SupplyLevel Level { get; internal init; }

    /// <summary>What the load was doing.</summary>
    public LoadState State { get; internal init; }

    /// <summary>Voltage of the source with no current at that level.</summary>
    public ElectricPotential OpenCircuitVoltage => ElectricPotential.FromVolts(OpenVolts);

    /// <summary>Current while the load is on.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>The current that heats the conductor, by the duty cycle (<see cref="DutyCycle"/>): its r.m.s. current, or the end of a pulse of stated length; the same as <see cref="Current"/> without one.</summary>
    public ElectricCurrent HeatingCurrent => ElectricCurrent.FromAmperes(HeatingAmperes);

    /// <summary>Voltage at the load's terminals.</summary>
    public ElectricPotential VoltageAtLoad => ElectricPotential.FromVolts(LoadVolts);

    /// <summary>Voltage at the source's terminals, its internal drop taken off.</summary>
    public ElectricPotential VoltageAtSource => ElectricPotential.FromVolts(LoadVolts + DropVolts);

    /// <summary>The drop of the path: voltage at the source's terminals less voltage at the load's. The drop inside the source is not in it.</summary>
    public ElectricPotential Drop => ElectricPotential.FromVolts(DropVolts);

    /// <summary>The drop of the path as a share of the nominal voltage of the source.</summary>
    public Ratio DropOfNominal => Ratio.FromDecimalFractions(DropVolts / NominalVolts);

    /// <summary>Nominal voltage that <see cref="DropOfNominal"/> is counted on.</summary>
    public ElectricPotential NominalVoltage => ElectricPotential.FromVolts(There(NominalVolts));

    /// <summary>Power at the load.</summary>
    public Power LoadPower => Power.FromWatts(LoadVolts * Amperes);

    /// <summary>Power that the path turns into heat at this circuit's expense.</summary>
    public Power PathLoss => Power.FromWatts(DropVolts * Amperes);

    /// <summary>Power turned into heat inside the source. At a held limit it includes what the regulator takes off.</summary>
    public Power SourceLoss => Power.FromWatts((OpenVolts - LoadVolts - DropVolts) * Amperes);

    /// <summary>Power given by the source at its open-circuit voltage: load, path and source losses together.</summary>
    public Power SourcePower => Power.FromWatts(OpenVolts * Amperes);

    /// <summary>Whether the source holds its current limit, so that its voltage is below the open-circuit one.</summary>
    public bool CurrentLimitReached { get; internal init; }

    /// <summary>Whether the voltage at the load is below the load's own minimum; false when it has none.</summary>
    public bool BelowMinimum => MinimumVolts is { } least && LoadVolts < least;

    /// <summary>Every part of the path, in order from the source to the load and back.</summary>
    public IReadOnlyList<PathElement> Elements
    {
        get
        {
            _ = There(0);
            return elements ??= Array.AsReadOnly(OperatingPointSolver.Elements(this));
        }
    }

    /// <summary>The hottest conductor's temperature.</summary>
    /// <exception cref="InvalidOperationException">The path has no conductor: its resistance was stated whole.</exception>
    public Temperature HottestConductor => Elements.Max(e => e.Celsius) is { } celsius
        ? Temperature.FromDegreesCelsius(celsius)
        : throw new InvalidOperationException("The resistance of the path was stated whole: no conductor is known.");

    /// <summary>The weakest segment: the one whose single conductor makes the most heat per metre; the stated resistance where the path has no other part.</summary>
    public PathElement Weakest
    {
        get
        {
            PathElement weakest = Elements[0];
            foreach (PathElement element in Elements)
            {
                weakest = element.WattsPerMeter > weakest.WattsPerMeter ? element : weakest;
            }

            return weakest;
        }
    }

    /// <summary>What was assumed, one sentence each, remarks on the load's validity included.</summary>
    public IReadOnlyList<string> Assumptions =>
        assumptions ??= OperatingPointSolver.Assumed(Supply, Path, Warmth, State, Exists ? Fed.RemarkAt(LoadVolts, State) : null);

    /// <summary>Solves a circuit at the nominal voltage with the load running.</summary>
    /// <param name="source">The source.</param>
    /// <param name="path">The way out and back.</param>
    /// <param name="load">The load.</param>
    /// <param name="temperature">How warm the conductors are.</param>
    /// <returns>The operating point, or the reason why there is none.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public static OperatingPoint Solve(Source source, CircuitPath path, Load load, ConductorTemperature temperature) =>
        Solve(source, path, load, temperature, SupplyLevel.Nominal, LoadState.Running);

    /// <summary>Solves a circuit.</summary>
    /// <param name="source">The source.</param>
    /// <param name="path">The way out and back.</param>
    /// <param name="load">The load.</param>
    /// <param name="temperature">How warm the conductors are. A peak finds them as steady running leaves them.</param>
    /// <param name="level">Where in its range the supply is.</param>
    /// <param name="state">What the load is doing.</param>
    /// <returns>The operating point, or the reason why there is none.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Level or state is not one of its enumeration.</exception>
    public static OperatingPoint Solve(
        Source source, CircuitPath path, Load load, ConductorTemperature temperature, SupplyLevel level, LoadState state) =>
        OperatingPointSolver.Solve(
            source ?? throw new ArgumentNullException(nameof(source)),
            path ?? throw new ArgumentNullException(nameof(path)),
            load ?? throw new ArgumentNullException(nameof(load)),
            temperature ?? throw new ArgumentNullException(nameof(temperature)),
            SourceNumbers.Check(level, nameof(level)),
            Load.Check(state, nameof(state)));

    /// <inheritdoc/>
    public override string ToString() => Exists
        ? $"{Accept.Text(Amperes)} A, {Accept.Text(LoadVolts)} V at the load, drop {Accept.Text(DropVolts)} V ({Accept.Text(100 * DropVolts / NominalVolts)} % of {Accept.Text(NominalVolts)} V)"
        : Explanation;

    private double There(double value) => Exists
        ? value
        : throw new InvalidOperationException($"There is no operating point to read: {Explanation} Ask {nameof(Exists)} first.");
}
