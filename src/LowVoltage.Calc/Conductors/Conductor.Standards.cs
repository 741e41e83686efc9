using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Conductors;

public sealed partial class Conductor
{
    private const double MetersPerThousandFeet = 304.8;

    /// <summary>A plain copper conductor of IEC 60228 at the largest resistance that the standard allows.</summary>
    /// <param name="size">Nominal size, 0.5 to 400 mm² of the series.</param>
    /// <param name="conductorClass">Class 1, 2, 5 or 6.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard has no such conductor.</exception>
    public static Conductor Iec60228(MetricSize size, Iec60228Class conductorClass) => Iec60228(size, conductorClass, Iec60228Metal.PlainCopper);

    /// <summary>A conductor of IEC 60228 at the largest resistance that the standard allows.</summary>
    /// <param name="size">Nominal size, 0.5 to 400 mm² of the series.</param>
    /// <param name="conductorClass">Class 1, 2, 5 or 6.</param>
    /// <param name="metal">Plain copper, coated copper or aluminium.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The standard has no such conductor, or an enumeration value is not defined.</exception>
    /// <remarks>
    /// The limit contains lay and tolerance, so no lay factor is added. Coated copper and aluminium as far as the tables go: coated class 1 to 16 mm²,
    /// aluminium classes 1 and 2 from 10 mm², class 6 to 300 mm² (from memory). At 50 mm² the class 5 limit (0.386 Ω/km) is below class 2 (0.387 Ω/km):
    /// the standard says so. The diameter follows the nominal section and the number of wires (class 2: the least number; 5 and 6: wires of the largest diameter).
    /// </remarks>
    public static Conductor Iec60228(MetricSize size, Iec60228Class conductorClass, Iec60228Metal metal) =>
        TryIec60228(size, conductorClass, metal, out Conductor? conductor)
            ? conductor
            : throw new ArgumentOutOfRangeException(
                nameof(size),
                size.SquareMillimeters,
                $"IEC 60228 has no class {Accept.Text((int)conductorClass)} conductor of {size} in {Describe(metal)}. Its sizes are 0.5 to 400 mm² (class 6: to 300 mm²; "
                + "coated class 1: to 16 mm²; aluminium: classes 1 and 2 from 10 mm²).");

    /// <summary>A conductor of IEC 60228, if the standard has it.</summary>
    /// <param name="size">Nominal size.</param>
    /// <param name="conductorClass">Class 1, 2, 5 or 6.</param>
    /// <param name="metal">Plain copper, coated copper or aluminium.</param>
    /// <param name="conductor">The conductor, or null.</param>
    /// <returns>Whether the standard has it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An enumeration value is not defined, or the size is a <c>default</c>, which is no size.</exception>
    public static bool TryIec60228(MetricSize size, Iec60228Class conductorClass, Iec60228Metal metal, [NotNullWhen(true)] out Conductor? conductor)
    {
        bool found = Iec60228Table.TryFind(size.Need(nameof(size)), conductorClass, metal, out double ohmsPerKilometer, out int strands);
        conductor = found
            ? Maximum(
                $"{size} class {(int)conductorClass} {Describe(metal)}",
                size,
                SizeSystem.Iec60228,
                metal switch { Iec60228Metal.PlainCopper => ConductorMaterial.Copper, Iec60228Metal.CoatedCopper => ConductorMaterial.CoatedCopper, _ => ConductorMaterial.Aluminium },
                (size.SquareMillimeters, Stranding.Diameter(size.SquareMillimeters, strands), ohmsPerKilometer / 1000),
                Iec60228Table.Reference)
            : null;
        return found;
    }

    /// <summary>A plain copper road-vehicle conductor (ISO 6722, ISO 19642) at the largest resistance allowed. From memory.</summary>
    /// <param name="size">Nominal size, 0.13 to 120 mm² of the road-vehicle series.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is not in the series.</exception>
    public static Conductor Iso6722(MetricSize size) => Iso6722(size, tinned: false);

    /// <summary>A road-vehicle conductor (ISO 6722, ISO 19642) at the largest resistance allowed. From memory.</summary>
    /// <param name="size">Nominal size, 0.13 to 120 mm² of the road-vehicle series.</param>
    /// <param name="tinned">Whether the copper is tinned.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is not in the series, or its tinned limit is not known.</exception>
    /// <remarks>
    /// The limit contains lay and tolerance. The 0.13 mm² row is close to what solid copper of that area would have, and the trade often makes it in an alloy:
    /// confirm it with the maker. Tinned limits are not known for 1.25, 5, 8, 12, 20, 30, 40 and 60 mm².
    /// </remarks>
    public static Conductor Iso6722(MetricSize size, bool tinned) =>
        TryIso6722(size, tinned, out Conductor? conductor)
            ? conductor
            : throw new ArgumentOutOfRangeException(
                nameof(size),
                size.SquareMillimeters,
                $"No {(tinned ? "tinned" : "plain")} road-vehicle conductor of {size} is known. The series runs from 0.13 to 120 mm²; tinned limits are not known for "
                + "1.25, 5, 8, 12, 20, 30, 40 and 60 mm².");

    /// <summary>A road-vehicle conductor (ISO 6722, ISO 19642), if it is known. From memory.</summary>
    /// <param name="size">Nominal size.</param>
    /// <param name="tinned">Whether the copper is tinned.</param>
    /// <param name="conductor">The conductor, or null.</param>
    /// <returns>Whether it is known.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static bool TryIso6722(MetricSize size, bool tinned, [NotNullWhen(true)] out Conductor? conductor)
    {
        bool found = Iso6722Table.TryFind(size.Need(nameof(size)), tinned, out double ohmsPerKilometer, out double diameter);
        ConductorMaterial material = tinned ? ConductorMaterial.CoatedCopper : ConductorMaterial.Copper;
        conductor = found
            ? Maximum($"{size} road-vehicle {material.Name}", size, SizeSystem.RoadVehicle, material, (size.SquareMillimeters, diameter, ohmsPerKilometer / 1000), Iso6722Table.Reference)
            : null;
        return found;
    }

    /// <summary>A vehicle gauge (SAE J1127, J1128) in a metal: the area of the table, bunched lay of 2 %.</summary>
    /// <param name="size">The vehicle gauge.</param>
    /// <param name="material">The metal.</param>
    /// <returns>The conductor: R′20 = ρ20 · 1.02/A.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static Conductor VehicleGauge(VehicleGaugeSize size, ConductorMaterial material) => new()
    {
        Name = $"{size.Need(nameof(size))} {Need(material).Name}",
        Size = size,
        System = SizeSystem.VehicleGauge,
        Basis = ResistanceBasis.StrandedGeometry,
        Material = material,
        LayFactor = Stranding.ConcentricLay,
        AreaSquareMillimeters = size.AreaSquareMillimeters,
        DiameterMillimeters = Stranding.Diameter(size.AreaSquareMillimeters, size.Row.Strands),
        OhmsPerMeter20 = material.OhmMeters20 * 1e6 * Stranding.ConcentricLay / size.AreaSquareMillimeters,
        Reference = VehicleGaugeSize.Reference,
    };

    /// <summary>An aircraft wire of FAA AC 43.13-1B Table 11-9: tin-plated copper at the largest resistance of the table.</summary>
    /// <param name="size">The aircraft wire size.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public static Conductor AircraftWire(AircraftWireSize size) => Maximum(
        $"aircraft wire size {size.Need(nameof(size)).ToString("N", null)}",
        size,
        SizeSystem.AircraftWire,
        ConductorMaterial.CoatedCopper,
        (size.AreaSquareMillimeters, Stranding.Diameter(size.AreaSquareMillimeters, size.Row.Strands), size.Row.OhmsPerThousandFeet / MetersPerThousandFeet),
        AircraftWireSize.Reference);

    private static Conductor Maximum(
        string name, ConductorSize size, SizeSystem system, ConductorMaterial material, (double Area, double Diameter, double OhmsPerMeter) values, Reference reference) => new()
    {
        Name = name,
        Size = size,
        System = system,
        Basis = ResistanceBasis.StandardMaximum,
        Material = material,
        AreaSquareMillimeters = values.Area,
        DiameterMillimeters = values.Diameter,
        OhmsPerMeter20 = values.OhmsPerMeter,
        Reference = reference,
    };

    private static string Describe(Iec60228Metal metal) => metal switch
    {
        Iec60228Metal.PlainCopper => "copper",
        Iec60228Metal.CoatedCopper => "coated copper",
        _ => "aluminium",
    };
}
