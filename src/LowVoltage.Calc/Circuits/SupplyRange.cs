namespace LowVoltage.Calc.Circuits;

/// <summary>A circuit at the least, the nominal and the greatest voltage of its supply.</summary>
/// <remarks>A lamp draws most at the highest voltage, a converter at the lowest: neither end alone tells the whole.</remarks>
public sealed class SupplyRange
{
    private SupplyRange(OperatingPoint minimum, OperatingPoint nominal, OperatingPoint maximum)
    {
        Minimum = minimum;
        Nominal = nominal;
        Maximum = maximum;
    }

    /// <summary>At the least voltage, behind the greatest resistance.</summary>
    public OperatingPoint Minimum { get; }

    /// <summary>At the nominal voltage.</summary>
    public OperatingPoint Nominal { get; }

    /// <summary>At the greatest voltage, behind the least resistance.</summary>
    public OperatingPoint Maximum { get; }

    /// <summary>Whether there is a point at all three.</summary>
    public bool Exists => Minimum.Exists && Nominal.Exists && Maximum.Exists;

    /// <summary>Whether the load gets its own minimum voltage, and has an operating point, at all three.</summary>
    public bool LoadWorks => Exists && !Minimum.BelowMinimum && !Nominal.BelowMinimum && !Maximum.BelowMinimum;

    /// <summary>The point with the largest current; <c>null</c> when one of the three does not exist, since the largest is then not known.</summary>
    public OperatingPoint? MostCurrent => Exists ? Pick((a, b) => a.Amperes > b.Amperes) : null;

    /// <summary>The point with the largest drop in the path; <c>null</c> when one of the three does not exist.</summary>
    public OperatingPoint? MostDrop => Exists ? Pick((a, b) => a.DropVolts > b.DropVolts) : null;

    /// <summary>The point with the lowest voltage at the load; <c>null</c> when one of the three does not exist.</summary>
    public OperatingPoint? LeastVoltageAtLoad => Exists ? Pick((a, b) => a.LoadVolts < b.LoadVolts) : null;

    /// <summary>Solves a circuit at the three voltages.</summary>
    /// <param name="source">The source.</param>
    /// <param name="path">The way out and back.</param>
    /// <param name="load">The load.</param>
    /// <param name="temperature">How warm the conductors are.</param>
    /// <param name="state">What the load is doing.</param>
    /// <returns>The three points.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The state is not one of the enumeration.</exception>
    public static SupplyRange Solve(
        Source source, CircuitPath path, Load load, ConductorTemperature temperature, LoadState state = LoadState.Running) => new(
        OperatingPoint.Solve(source, path, load, temperature, SupplyLevel.Minimum, state),
        OperatingPoint.Solve(source, path, load, temperature, SupplyLevel.Nominal, state),
        OperatingPoint.Solve(source, path, load, temperature, SupplyLevel.Maximum, state));

    private OperatingPoint Pick(Func<OperatingPoint, OperatingPoint, bool> better)
    {
        OperatingPoint best = better(Nominal, Minimum) ? Nominal : Minimum;
        return better(Maximum, best) ? Maximum : best;
    }
}
