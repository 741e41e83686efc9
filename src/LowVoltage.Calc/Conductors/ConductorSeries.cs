using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>A series of conductors, smallest first, for a designer to walk: one of a standard, some of its sizes (<see cref="Only"/>), or the caller's own (<see cref="Create"/>).</summary>
/// <remarks>
/// <para>A standard's series has sizes that no shop carries: <see cref="AwgStranded"/> goes through every number, 11 and 13 too. Give a design those that are available:
/// <see cref="AwgTrade"/>, or <c>series.Only("on the shelf", AwgSize.Parse("14"), AwgSize.Parse("12"))</c>.</para>
/// Made when first asked for, immutable and thread-safe.
/// </remarks>
public sealed partial class ConductorSeries
{
    private readonly Conductor[] conductors;

    private ConductorSeries(string name, Reference reference, Conductor[] conductors)
    {
        Name = name;
        Reference = reference;
        this.conductors = conductors;
        Conductors = Array.AsReadOnly(conductors);
    }

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
            ? new ConductorSeries(name, Reference, Array.FindAll(conductors, conductor => conductor.Size is { } own && Array.IndexOf(sizes, own) >= 0))
            : throw new ArgumentException("At least one size is needed.", nameof(sizes));
    }

    /// <summary>The smallest conductor of at least a section.</summary>
    /// <param name="area">The section needed, compared with <see cref="Conductor.Area"/> (for a standard's size the nominal one). Positive.</param>
    /// <returns>The conductor.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The area is outside its range, or larger than the largest of the series.</exception>
    /// <remarks>Not for a voltage drop: a standard's largest resistance is not ρ/S. <see cref="SmallestFor"/> goes by the resistance.</remarks>
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
        conductor = Array.Find(conductors, c => c.Size is { } own && own.Equals(needed));
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
