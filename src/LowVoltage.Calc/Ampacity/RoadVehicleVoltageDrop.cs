using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Road-vehicle handbook allowances for voltage drop at 12 V and 24 V, in volts, on the plus line only.</summary>
/// <remarks>
/// The way back (chassis or wire) has no share in these values; do not compare them with a drop out and back. Guidance. For a solenoid with two windings two copies of the
/// table differ (2.4 V and 2.8 V read, 1.5 V and 2.2 V from memory); the smaller, which asks for the thicker wire, is used.
/// </remarks>
public static class RoadVehicleVoltageDrop
{
    // First: the lists below are made with it.
    /// <summary>Where the numbers come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "Road-vehicle handbook, permitted voltage drop on the plus line", Edition = "as read 2026", Kind = ReferenceKind.Handbook,
        Note = "Guidance, read in a training article that repeats the table.",
    };

    private static readonly Reference TwoWindingsReference = new()
    {
        Title = "Road-vehicle handbook, permitted voltage drop on the plus line", Edition = "from memory", Kind = ReferenceKind.FromMemory,
        Note = "A training article prints 2.4 V and 2.8 V; the smaller values, from memory, are used.",
    };

    private static readonly VoltageDropAllowance[] At12 = List(12, [0.1, 0.5, 0.3, 0.4, 0.1, 0.5, 1.4, 1.5, 0.5]);
    private static readonly VoltageDropAllowance[] At24 = List(24, [0.1, 0.5, 0.3, 0.8, 0.2, 1.0, 2.0, 2.2, 1.0]);

    /// <summary>All allowances, 12 V first.</summary>
    public static IReadOnlyList<VoltageDropAllowance> All => [.. At12, .. At24];

    /// <summary>The allowance for a kind of circuit.</summary>
    /// <param name="circuit">The kind of circuit.</param>
    /// <param name="nominalVoltage">Nominal voltage: 12 V or 24 V.</param>
    /// <param name="allowance">The allowance; null for another voltage.</param>
    /// <returns>Whether the handbooks print one for this voltage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The circuit is not one of the enumeration, or the voltage is not positive.</exception>
    public static bool TryAllowance(RoadVehicleCircuit circuit, ElectricPotential nominalVoltage, [NotNullWhen(true)] out VoltageDropAllowance? allowance)
    {
        double volts = TableKey.Rounded(Accept.Volts(nominalVoltage, nameof(nominalVoltage)));
        int index = (int)circuit;
        if (index < 0 || index >= At12.Length)
        {
            throw new ArgumentOutOfRangeException(nameof(circuit), circuit, $"circuit must be a value of {nameof(RoadVehicleCircuit)}; it was {Accept.Text(index)}.");
        }

        allowance = volts == 12 ? At12[index] : volts == 24 ? At24[index] : null;
        return allowance is not null;
    }

    /// <summary>The allowance for a kind of circuit.</summary>
    /// <param name="circuit">The kind of circuit.</param>
    /// <param name="nominalVoltage">Nominal voltage: 12 V or 24 V.</param>
    /// <returns>The allowance.</returns>
    /// <exception cref="OutsidePublishedRangeException">The handbooks print none for this voltage.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The circuit is not one of the enumeration, or the voltage is not positive.</exception>
    public static VoltageDropAllowance Allowance(RoadVehicleCircuit circuit, ElectricPotential nominalVoltage) =>
        TryAllowance(circuit, nominalVoltage, out VoltageDropAllowance? allowance)
            ? allowance
            : throw OutsidePublishedRangeException.For(
                nameof(nominalVoltage), Accept.Text(Accept.Raw(nominalVoltage)) + " V", Reference.Title, "nominal voltages of 12 V and 24 V");

    private static VoltageDropAllowance[] List(double nominal, double[] volts)
    {
        VoltageDropAllowance[] allowances = new VoltageDropAllowance[volts.Length];
        for (int i = 0; i < volts.Length; i++)
        {
            allowances[i] = At(nominal, (RoadVehicleCircuit)i, volts[i]);
        }

        return allowances;
    }

    private static VoltageDropAllowance At(double nominal, RoadVehicleCircuit circuit, double volts) => new()
    {
        Circuit = Describe(circuit),
        Reference = circuit == RoadVehicleCircuit.StarterControlTwoWindings ? TwoWindingsReference : Reference,
        Status = AllowanceStatus.Guidance,
        Base = AllowanceBase.Volts,
        Path = AllowancePath.PlusLineOnly,
        NominalVolts = nominal,
        Value = volts,
    };

    private static string Describe(RoadVehicleCircuit circuit) => circuit switch
    {
        RoadVehicleCircuit.SmallLamps => "light switch to lamps below 15 W",
        RoadVehicleCircuit.LargeLamps => "light switch to lamps above 15 W",
        RoadVehicleCircuit.Headlamps => "light switch to headlamps",
        RoadVehicleCircuit.Charging => "generator to battery",
        RoadVehicleCircuit.RegulatorControl => "generator to regulator control line",
        RoadVehicleCircuit.StarterMain => "starter main line",
        RoadVehicleCircuit.StarterControlOneWinding => "start switch to a solenoid with one winding",
        RoadVehicleCircuit.StarterControlTwoWindings => "start switch to a solenoid with two windings",
        _ => "other control lines",
    };
}
