using System.Globalization;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>How much voltage a circuit may lose between the source and the load, out and back together.</summary>
/// <remarks>A share of the nominal supply voltage, or volts: a charging lead is judged in tenths of a volt. Immutable.</remarks>
public sealed class DropLimit
{
    private readonly double share;
    private readonly double volts;
    private readonly bool aircraft;

    private DropLimit(double share, double volts, Reference reference, bool aircraft = false)
    {
        this.share = share;
        this.volts = volts;
        this.aircraft = aircraft;
        Reference = reference;
    }

    /// <summary>FAA AC 43.13-1B Table 11-6: 0.5 V on a 14 V bus, 1 V on a 28 V bus, twice that for intermittent loads; nothing for other voltages.</summary>
    public static DropLimit AircraftTable { get; } = new(0, 0, FaaVoltageDrop.Reference, aircraft: true);

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
    /// <param name="intermittent">Whether the load runs for short times only; the aircraft table distinguishes that.</param>
    /// <param name="limit">The volts that may be lost; zero when the allowance does not cover that voltage.</param>
    /// <returns>Whether the allowance covers that voltage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive.</exception>
    public bool TryFor(ElectricPotential nominal, bool intermittent, out ElectricPotential limit)
    {
        bool covered = TryVolts(Accept.Volts(nominal, nameof(nominal)), intermittent, out double most);
        limit = ElectricPotential.FromVolts(most);
        return covered;
    }

    /// <summary>The allowance in words: <c>3 %</c>, <c>0.4 V</c>.</summary>
    public override string ToString() => aircraft ? "FAA AC 43.13-1B Table 11-6" : share > 0
        ? (share * 100).ToString("G4", CultureInfo.InvariantCulture) + " %"
        : volts.ToString("G4", CultureInfo.InvariantCulture) + " V";

    /// <summary>The share of the nominal voltage; zero where volts are allowed or a table counts.</summary>
    internal double Share => share;

    /// <summary>The volts allowed; zero where a share or a table counts.</summary>
    internal double AllowedVolts => volts;

    internal bool TryVolts(double nominalVolts, bool intermittent, out double most)
    {
        most = share > 0 ? share * nominalVolts : volts;
        if (aircraft)
        {
            // A 12 V battery stands on a 14 V bus, a 24 V one on a 28 V bus.
            VoltageDropAllowance? row = nominalVolts switch
            {
                >= 11 and <= 14.5 => intermittent ? FaaVoltageDrop.Intermittent14 : FaaVoltageDrop.Continuous14,
                >= 22 and <= 29 => intermittent ? FaaVoltageDrop.Intermittent28 : FaaVoltageDrop.Continuous28,
                _ => null,
            };
            most = row?.Value ?? 0;
        }

        return most > 0;
    }

    private static Reference Stated { get; } = Reference.CommonPractice("allowance stated by the caller");
}
