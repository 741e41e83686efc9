using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A standard series of ready-made conductors, smallest first, for a designer to walk.</summary>
/// <remarks>Built once, immutable and thread-safe.</remarks>
public sealed class ConductorSeries
{
    private readonly Conductor[] conductors;

    private ConductorSeries(string name, Reference reference, IEnumerable<Conductor> conductors)
    {
        Name = name;
        Reference = reference;
        this.conductors = [.. conductors];
        Conductors = Array.AsReadOnly(this.conductors);
    }

    /// <summary>Stranded annealed copper, 30 AWG to 4/0 AWG, concentric lay of 2 %.</summary>
    public static ConductorSeries AwgStranded { get; } = new(
        "AWG, stranded copper", AwgSize.Reference, AwgSize.All.Where(size => size.Number <= 30).Select(size => Conductor.Stranded(size, ConductorMaterial.Copper)));

    /// <summary>Solid annealed copper, 40 AWG to 4/0 AWG.</summary>
    public static ConductorSeries AwgSolid { get; } = new(
        "AWG, solid copper", AwgSize.Reference, AwgSize.All.Select(size => Conductor.Solid(size, ConductorMaterial.Copper)));

    /// <summary>Plain copper road-vehicle conductors, 0.13 to 120 mm², largest resistance of ISO 6722. From memory.</summary>
    public static ConductorSeries RoadVehicle { get; } = new(
        "road-vehicle plain copper", Iso6722Table.Reference, MetricSize.RoadVehicleSeries.Select(Conductor.Iso6722));

    /// <summary>Flexible plain copper conductors of IEC 60228 class 5, 0.5 to 400 mm², largest resistance.</summary>
    public static ConductorSeries Iec60228Class5 { get; } = new(
        "IEC 60228 class 5 plain copper", Iec60228Table.Reference, MetricSize.Iec60228Series.Select(size => Conductor.Iec60228(size, Iec60228Class.Flexible)));

    /// <summary>Stranded plain copper conductors of IEC 60228 class 2, 0.5 to 400 mm², largest resistance.</summary>
    public static ConductorSeries Iec60228Class2 { get; } = new(
        "IEC 60228 class 2 plain copper", Iec60228Table.Reference, MetricSize.Iec60228Series.Select(size => Conductor.Iec60228(size, Iec60228Class.Stranded)));

    /// <summary>Annealed copper in vehicle gauges, 20 to 4/0 (SAE J1127, J1128); least areas from memory.</summary>
    public static ConductorSeries VehicleGauge { get; } = new(
        "vehicle gauge, copper", VehicleGaugeSize.Reference, VehicleGaugeSize.All.Select(size => Conductor.VehicleGauge(size, ConductorMaterial.Copper)));

    /// <summary>Tin-plated copper aircraft wire, 24 to 4/0, largest resistance of FAA AC 43.13-1B Table 11-9.</summary>
    public static ConductorSeries AircraftWire { get; } = new(
        "aircraft wire, tinned copper", AircraftWireSize.Reference, AircraftWireSize.All.Select(Conductor.AircraftWire));

    /// <summary>What the series is called.</summary>
    public string Name { get; }

    /// <summary>The source of the series.</summary>
    public Reference Reference { get; }

    /// <summary>The conductors, smallest first.</summary>
    public IReadOnlyList<Conductor> Conductors { get; }

    /// <summary>The same series with some of its sizes only: those on the shelf, or those that a table knows.</summary>
    /// <param name="name">What the selection is called.</param>
    /// <param name="sizes">The sizes to keep, in any order; each must be in the series.</param>
    /// <returns>The selection, small to large; its conductors are the same objects.</returns>
    /// <exception cref="ArgumentNullException">The name or the list is null.</exception>
    /// <exception cref="ArgumentException">The list is empty, or a size is not in the series.</exception>
    public ConductorSeries Only(string name, params ConductorSize[] sizes)
    {
        _ = name ?? throw new ArgumentNullException(nameof(name));
        _ = sizes ?? throw new ArgumentNullException(nameof(sizes));
        foreach (ConductorSize size in sizes)
        {
            if (size.IsNone || !TryGet(size, out _))
            {
                throw new ArgumentException($"{size} is not a size of {Name}.", nameof(sizes));
            }
        }

        return sizes.Length > 0
            ? new ConductorSeries(name, Reference, conductors.Where(conductor => Array.IndexOf(sizes, conductor.Size!.Value) >= 0))
            : throw new ArgumentException("At least one size is needed.", nameof(sizes));
    }

    /// <summary>The smallest conductor of at least a section.</summary>
    /// <param name="area">The section needed, compared with <see cref="Conductor.Area"/> (for a standard's size the nominal one). Positive.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is outside its range, or larger than the largest of the series.</exception>
    public Conductor SmallestAtLeast(Area area) =>
        TrySmallestAtLeast(area, out Conductor? conductor)
            ? conductor
            : throw new ArgumentOutOfRangeException(
                nameof(area),
                area.SquareMillimeters,
                $"area must be at most {Accept.Text(conductors[conductors.Length - 1].AreaSquareMillimeters)} mm², the largest of {Name}; it was {Accept.Text(area.SquareMillimeters)} mm².");

    /// <summary>The smallest conductor of at least a section, if the series goes that far.</summary>
    /// <param name="area">The section needed, compared with <see cref="Conductor.Area"/>. Positive.</param>
    /// <param name="conductor">The conductor, or null.</param>
    /// <returns>Whether there is one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is outside its range.</exception>
    /// <remarks>A section that falls short by less than 1e-9 of itself counts as reached, so that a unit conversion does not cost a size.</remarks>
    public bool TrySmallestAtLeast(Area area, [NotNullWhen(true)] out Conductor? conductor)
    {
        double needed = Accept.SquareMillimeters(area, nameof(area)) * (1 - 1e-9);
        conductor = Array.Find(conductors, c => c.AreaSquareMillimeters >= needed);
        return conductor is not null;
    }

    /// <summary>The conductor of a size, if the series has it.</summary>
    /// <param name="size">The size, of any system; nothing is converted.</param>
    /// <param name="conductor">The conductor, or null.</param>
    /// <returns>Whether the series has it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The size is a <c>default</c>, which is no size.</exception>
    public bool TryGet(ConductorSize size, [NotNullWhen(true)] out Conductor? conductor)
    {
        ConductorSize needed = size.Need(nameof(size));
        conductor = Array.Find(conductors, c => c.Size.GetValueOrDefault().Equals(needed));
        return conductor is not null;
    }

    /// <summary>The next larger conductor of the series.</summary>
    /// <param name="conductor">A conductor of the series: one that equals it by value, wherever it was made.</param>
    /// <returns>The next larger one, or null for the largest.</returns>
    /// <exception cref="ArgumentNullException">The conductor is null.</exception>
    /// <exception cref="ArgumentException">The conductor is not one of the series.</exception>
    public Conductor? NextLarger(Conductor conductor)
    {
        int index = Array.IndexOf(conductors, conductor ?? throw new ArgumentNullException(nameof(conductor)));
        if (index < 0)
        {
            throw new ArgumentException($"{conductor.Name} is not a conductor of {Name}.", nameof(conductor));
        }

        return index + 1 < conductors.Length ? conductors[index + 1] : null;
    }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
