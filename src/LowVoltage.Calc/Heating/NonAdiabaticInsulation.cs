using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>What surrounds the conductor in the non-adiabatic formula of IEC 60949: thermal constants, contact, and the published coefficients.</summary>
/// <remarks>The constants and the rounded coefficients are from memory; all 14 pairs of coefficients follow from the constants to the printed digits.</remarks>
public sealed class NonAdiabaticInsulation
{
    internal NonAdiabaticInsulation()
    {
    }

    internal double HeatCapacityJoulesPerCubicMeterKelvin { get; private init; }

    /// <summary>What the insulation is: <c>PVC, cables up to 3 kV</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Volumetric heat capacity of the insulation, σi.</summary>
    public VolumetricHeatCapacity VolumetricHeatCapacity =>
        VolumetricHeatCapacity.FromJoulesPerCubicMeterKelvin(HeatCapacityJoulesPerCubicMeterKelvin);

    /// <summary>Thermal resistivity of the insulation, ρi, in K·m/W.</summary>
    public double ThermalResistivity { get; private init; }

    /// <summary>F, for the thermal contact between conductor and insulation: 0.7, or 1.0 where a fluid fills the gap.</summary>
    public double ContactFactor { get; private init; }

    /// <summary>The published coefficients for a copper conductor.</summary>
    public NonAdiabaticCoefficients Copper { get; private init; }

    /// <summary>The published coefficients for an aluminium conductor.</summary>
    public NonAdiabaticCoefficients Aluminium { get; private init; }

    /// <summary>The source.</summary>
    public Reference Reference { get; } = NonAdiabaticFactor.Reference;

    /// <summary>PVC, cables up to and including 3 kV: the row for extra-low-voltage wire.</summary>
    public static NonAdiabaticInsulation PolyvinylChloride { get; } = Row("PVC, cables up to 3 kV", 1.7e6, 5.0, 0.7, 0.29, 0.06, 0.40, 0.08);

    /// <summary>PVC, cables above 3 kV.</summary>
    public static NonAdiabaticInsulation PolyvinylChlorideAbove3Kilovolts { get; } = Row("PVC, cables above 3 kV", 1.7e6, 6.0, 0.7, 0.27, 0.05, 0.37, 0.07);

    /// <summary>Cross-linked polyethylene.</summary>
    public static NonAdiabaticInsulation CrossLinkedPolyethylene { get; } = Row("XLPE", 2.4e6, 3.5, 0.7, 0.41, 0.12, 0.57, 0.16);

    /// <summary>Ethylene-propylene rubber, cables up to and including 3 kV.</summary>
    public static NonAdiabaticInsulation EthylenePropyleneRubber { get; } = Row("EPR, cables up to 3 kV", 2.0e6, 3.5, 0.7, 0.38, 0.10, 0.52, 0.14);

    /// <summary>Ethylene-propylene rubber, cables above 3 kV.</summary>
    public static NonAdiabaticInsulation EthylenePropyleneRubberAbove3Kilovolts { get; } = Row("EPR, cables above 3 kV", 2.0e6, 5.0, 0.7, 0.32, 0.07, 0.44, 0.10);

    /// <summary>Paper, fluid-filled cables.</summary>
    public static NonAdiabaticInsulation PaperFluidFilled { get; } = Row("paper, fluid filled", 2.0e6, 5.0, 1.0, 0.45, 0.14, 0.62, 0.20);

    /// <summary>Paper, other cables.</summary>
    public static NonAdiabaticInsulation PaperOther { get; } = Row("paper, other", 2.0e6, 6.0, 0.7, 0.29, 0.06, 0.40, 0.08);

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static NonAdiabaticInsulation Row(
        string name, double heatCapacity, double resistivity, double contact, double copperX, double copperY, double aluminiumX, double aluminiumY) => new()
        {
            Name = name,
            HeatCapacityJoulesPerCubicMeterKelvin = heatCapacity,
            ThermalResistivity = resistivity,
            ContactFactor = contact,
            Copper = new NonAdiabaticCoefficients(copperX, copperY),
            Aluminium = new NonAdiabaticCoefficients(aluminiumX, aluminiumY),
        };
}
