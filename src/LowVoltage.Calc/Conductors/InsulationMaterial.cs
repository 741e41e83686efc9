using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>An insulation: the conductor temperature it stands for years, and the one it stands for a short circuit of up to 5 s.</summary>
public sealed class InsulationMaterial
{
    internal double ContinuousCelsius { get; init; }

    internal double ShortCircuitCelsius { get; init; }

    internal double ThermalResistivityKelvinMetersPerWatt { get; init; }

    internal double HeatCapacityJoulesPerCubicMeterKelvin { get; init; }

    /// <summary>Name of the insulation: <c>PVC (70 °C)</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Highest conductor temperature in continuous service.</summary>
    public Temperature ContinuousLimit => Temperature.FromDegreesCelsius(ContinuousCelsius);

    /// <summary>Highest conductor temperature at the end of a short circuit (at most 5 s).</summary>
    public Temperature ShortCircuitLimit => Temperature.FromDegreesCelsius(ShortCircuitCelsius);

    /// <summary>Source of the continuous limit.</summary>
    public required Reference Reference { get; init; }

    /// <summary>Source of the short-circuit limit.</summary>
    public required Reference ShortCircuitReference { get; init; }

    /// <summary>General-purpose plasticised PVC: 70 °C continuous, 160 °C at the end of a short circuit (conductors up to 300 mm²).</summary>
    public static InsulationMaterial PolyvinylChloride { get; } = new()
    {
        Name = "PVC (70 °C)",
        ContinuousCelsius = 70,
        ShortCircuitCelsius = 160,
        ThermalResistivityKelvinMetersPerWatt = 5.0,
        HeatCapacityJoulesPerCubicMeterKelvin = 1.7e6,
        Reference = new Reference { Title = "IEC 60364-5-52", Edition = "2009", Locator = "Table 52.1", Kind = ReferenceKind.Standard },
        ShortCircuitReference = new Reference { Title = "IEC 60364-5-54", Edition = "2011", Locator = "Table A.54.4", Kind = ReferenceKind.Standard },
    };

    /// <summary>Cross-linked polyethylene: 90 °C continuous, 250 °C at the end of a short circuit.</summary>
    public static InsulationMaterial CrossLinkedPolyethylene { get; } = new()
    {
        Name = "XLPE (90 °C)",
        ContinuousCelsius = 90,
        ShortCircuitCelsius = 250,
        ThermalResistivityKelvinMetersPerWatt = 3.5,
        HeatCapacityJoulesPerCubicMeterKelvin = 2.4e6,
        Reference = new Reference { Title = "IEC 60364-5-52", Edition = "2009", Locator = "Table 52.1", Kind = ReferenceKind.Standard },
        ShortCircuitReference = new Reference { Title = "IEC 60364-5-54", Edition = "2011", Locator = "Table A.54.4", Kind = ReferenceKind.Standard },
    };

    /// <inheritdoc/>
    public override string ToString() => Name;
}
