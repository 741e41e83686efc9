using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>A published allowance for voltage drop: volts, or a share of a voltage, over a stated part of the path.</summary>
/// <remarks>
/// United States boat law (33 CFR 183) sets none. An allowance in volts belongs to one nominal voltage and is not scaled to another.
/// Immutable and thread-safe.
/// </remarks>
public sealed class VoltageDropAllowance
{
    internal VoltageDropAllowance()
    {
    }

    /// <summary>The circuits that it is for.</summary>
    public required string Circuit { get; init; }

    /// <summary>Where it comes from.</summary>
    public required Reference Reference { get; init; }

    /// <summary>How binding it is.</summary>
    public AllowanceStatus Status { get; internal init; }

    /// <summary>What it is a share of; <see cref="AllowanceBase.Volts"/> for an allowance in volts.</summary>
    public AllowanceBase Base { get; internal init; }

    /// <summary>Over which part of the path it counts.</summary>
    public AllowancePath Path { get; internal init; }

    /// <summary>The allowance as a share; null for one in volts.</summary>
    public Ratio? Share => Base == AllowanceBase.Volts ? null : Ratio.FromPercent(Value);

    /// <summary>The allowance in volts; null for a share.</summary>
    public ElectricPotential? Drop => Base == AllowanceBase.Volts ? ElectricPotential.FromVolts(Value) : null;

    /// <summary>The nominal voltage that an allowance in volts belongs to; null for a share.</summary>
    public ElectricPotential? NominalVoltage => NominalVolts is { } volts ? ElectricPotential.FromVolts(volts) : null;

    internal double Value { get; init; }

    internal double? NominalVolts { get; init; }

    /// <summary>An allowance of the caller's in volts, over the way out and the way back.</summary>
    /// <param name="circuit">What it is for: <c>charging lead</c>.</param>
    /// <param name="drop">The drop allowed. Positive.</param>
    /// <param name="reference">Where it comes from.</param>
    /// <returns>The allowance, as guidance.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The drop is outside its range.</exception>
    public static VoltageDropAllowance Create(string circuit, ElectricPotential drop, Reference reference) =>
        Stated(circuit, AllowanceBase.Volts, Accept.Volts(drop, nameof(drop)), reference);

    /// <summary>An allowance of the caller's as a share of the nominal voltage, over the way out and the way back.</summary>
    /// <param name="circuit">What it is for: <c>navigation lights</c>.</param>
    /// <param name="share">The share allowed, above 0 to 100 %.</param>
    /// <param name="reference">Where it comes from.</param>
    /// <returns>The allowance, as guidance.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public static VoltageDropAllowance Create(string circuit, Ratio share, Reference reference) =>
        Stated(circuit, AllowanceBase.NominalVoltage, Accept.Positive(Accept.Raw(share), 100, "%", nameof(share)), reference);

    /// <summary>The allowance in volts for a system.</summary>
    /// <param name="baseVoltage">The voltage that the allowance is a share of (nominal or regulated), or the nominal voltage that an allowance in volts belongs to.</param>
    /// <param name="limit">The largest drop; zero when the allowance does not belong to this voltage.</param>
    /// <returns>False when the allowance is in volts for another nominal voltage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive, or too large.</exception>
    public bool TryLimit(ElectricPotential baseVoltage, out ElectricPotential limit)
    {
        bool found = TryVolts(TableKey.Rounded(Accept.Volts(baseVoltage, nameof(baseVoltage))), out double volts);
        limit = found ? ElectricPotential.FromVolts(volts) : default;
        return found;
    }

    /// <summary>The allowance in volts for a system.</summary>
    /// <param name="baseVoltage">The voltage that the allowance is a share of (nominal or regulated), or the nominal voltage that an allowance in volts belongs to.</param>
    /// <returns>The largest drop.</returns>
    /// <exception cref="OutsidePublishedRangeException">The allowance is in volts for another nominal voltage.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive, or too large.</exception>
    public ElectricPotential Limit(ElectricPotential baseVoltage) => TryLimit(baseVoltage, out ElectricPotential limit)
        ? limit
        : throw OutsidePublishedRangeException.For(
            nameof(baseVoltage), Accept.Text(Accept.Raw(baseVoltage)) + " V", $"the allowance for {Circuit}", $"a nominal voltage of {Accept.Text(NominalVolts ?? 0)} V");

    internal bool TryVolts(double baseVolts, out double volts)
    {
        bool found = NominalVolts is not { } nominal || nominal == baseVolts;
        volts = !found ? 0 : Base == AllowanceBase.Volts ? Value : Value / 100 * baseVolts;
        return found;
    }

    /// <summary>The allowance in one line.</summary>
    public override string ToString() =>
        $"{Circuit}: {Accept.Text(Value)} " + (Base == AllowanceBase.Volts ? $"V at {Accept.Text(NominalVolts ?? 0)} V" : "%") + $": {Reference}";

    private static VoltageDropAllowance Stated(string circuit, AllowanceBase basis, double value, Reference reference) => new()
    {
        Circuit = circuit ?? throw new ArgumentNullException(nameof(circuit)),
        Reference = reference ?? throw new ArgumentNullException(nameof(reference)),
        Status = AllowanceStatus.Guidance,
        Base = basis,
        Path = AllowancePath.OutAndBack,
        Value = value,
    };
}
