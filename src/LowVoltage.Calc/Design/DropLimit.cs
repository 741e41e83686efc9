using System.Globalization;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Design;

/// <summary>How much voltage a circuit may lose between the source and the load, out and back together.</summary>
/// <remarks>A share of the nominal supply voltage, or volts: a charging lead is judged in tenths of a volt. Immutable.</remarks>
public sealed class DropLimit
{
    private readonly double share;
    private readonly double volts;

    private DropLimit(double share, double volts, Reference reference)
    {
        this.share = share;
        this.volts = volts;
        Reference = reference;
    }

    /// <summary>Whose allowance it is.</summary>
    public Reference Reference { get; }

    /// <summary>An allowance in per cent of the nominal supply voltage.</summary>
    /// <param name="percent">Per cent, above 0 and below 100.</param>
    /// <param name="reference">Whose allowance; <c>null</c> means the caller's own.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not above 0 and below 100.</exception>
    public static DropLimit Percent(double percent, Reference? reference = null) =>
        new(Accept.Within(percent, 1e-3, 99.9, "%", nameof(percent)) / 100, 0, reference ?? Stated);

    /// <summary>An allowance in volts.</summary>
    /// <param name="drop">The allowance, above zero.</param>
    /// <param name="reference">Whose allowance; <c>null</c> means the caller's own.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not above zero.</exception>
    public static DropLimit Volts(ElectricPotential drop, Reference? reference = null) =>
        new(0, Accept.Volts(drop, nameof(drop)), reference ?? Stated);

    /// <summary>The allowance for a supply of a nominal voltage.</summary>
    /// <param name="nominal">Nominal supply voltage.</param>
    /// <returns>The volts that may be lost.</returns>
    public ElectricPotential For(ElectricPotential nominal) =>
        ElectricPotential.FromVolts(VoltsFor(Accept.Volts(nominal, nameof(nominal))));

    /// <summary>The allowance in words: <c>3 %</c>, <c>0.4 V</c>.</summary>
    public override string ToString() => share > 0
        ? (share * 100).ToString("G4", CultureInfo.InvariantCulture) + " %"
        : volts.ToString("G4", CultureInfo.InvariantCulture) + " V";

    internal double VoltsFor(double nominalVolts) => share > 0 ? share * nominalVolts : volts;

    private static Reference Stated { get; } = Reference.CommonPractice("allowance stated by the caller");
}
