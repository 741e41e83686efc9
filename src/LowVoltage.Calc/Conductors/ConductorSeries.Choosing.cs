using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <content>The smallest size for a voltage drop, and series of the caller's.</content>
public sealed partial class ConductorSeries
{
    // A drop that exceeds the allowance by less than this share of it counts as within, so that a unit conversion does not cost a size.
    private const double Slack = 1e-9;

    /// <summary>A series of the caller's: a maker's cable, clad or tinned wire, the reels on the shelf.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="conductors">The conductors, smallest first: each has more metal and less resistance than the one before it, and no size occurs twice.</param>
    /// <param name="reference">Where the values come from.</param>
    /// <returns>The series.</returns>
    /// <exception cref="ArgumentNullException">An argument or a conductor is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, there is no conductor, or one does not rise; the message names it and says why.</exception>
    public static ConductorSeries Create(string name, IReadOnlyList<Conductor> conductors, Reference reference)
    {
        _ = name ?? throw new ArgumentNullException(nameof(name));
        _ = conductors ?? throw new ArgumentNullException(nameof(conductors));
        _ = reference ?? throw new ArgumentNullException(nameof(reference));
        if (string.IsNullOrWhiteSpace(name))
        {
            throw new ArgumentException("A name is needed; it was empty.", nameof(name));
        }

        Conductor[] own = new Conductor[conductors.Count];
        for (int i = 0; i < own.Length; i++)
        {
            own[i] = conductors[i] ?? throw new ArgumentNullException(nameof(conductors), $"conductors[{Accept.Text(i)}] is null.");
            if (i > 0 && Fault(own[i - 1], own[i]) is { } fault)
            {
                throw new ArgumentException($"conductors[{Accept.Text(i)}] ({own[i].Name}) {fault} conductors[{Accept.Text(i - 1)}] ({own[i - 1].Name}).", nameof(conductors));
            }
        }

        return own.Length > 0 ? new ConductorSeries(name, reference, own) : throw new ArgumentException("At least one conductor is needed; the list was empty.", nameof(conductors));
    }

    /// <summary>The smallest conductor whose voltage drop stays within an allowance, by its own resistance at its temperature.</summary>
    /// <param name="length">Length of conductor that carries the current, out plus back; nothing is doubled. Positive.</param>
    /// <param name="current">The current. Positive.</param>
    /// <param name="temperature">Conductor temperature, not the ambient; from −100 °C to the metal's melting point.</param>
    /// <param name="allowed">Allowed drop. Positive.</param>
    /// <returns>The conductor; the next smaller one of the series would drop more than is allowed.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or even the largest conductor drops more.</exception>
    /// <remarks>
    /// <code>ΔV = I·R′(θ)·L ≤ allowed</code>
    /// R′ is that of the conductor, for a standard's size the largest that the standard allows. The section ρ·L·I/ΔV looked up by <see cref="SmallestAtLeast"/> is not the same: a standard's
    /// largest resistance is 2 % to 15 % above ρ/S, and the size may drop more than is allowed. Heat, fuse and mechanical strength are other questions: a design asks them too.
    /// A drop that exceeds the allowance by less than 1e-9 of it counts as within.
    /// </remarks>
    public Conductor SmallestFor(Length length, ElectricCurrent current, Temperature temperature, ElectricPotential allowed)
    {
        if (TrySmallestFor(length, current, temperature, allowed, out Conductor? conductor))
        {
            return conductor;
        }

        Conductor largest = conductors[conductors.Length - 1];
        double volts = Accept.Raw(length) * Accept.Raw(current) * largest.OhmsPerMeterAt(Accept.Raw(temperature));
        throw new ArgumentOutOfRangeException(
            nameof(allowed),
            Accept.Raw(allowed),
            $"allowed must be at least {Accept.Text(volts)} V, the drop along {largest.Name}, the largest of {Name}; it was {Accept.Text(Accept.Raw(allowed))} V. Parallel conductors or a shorter run would help.");
    }

    /// <summary>The smallest conductor whose voltage drop stays within an allowance, if the series goes that far; see <see cref="SmallestFor"/>.</summary>
    /// <param name="length">Length of conductor that carries the current, out plus back. Positive.</param>
    /// <param name="current">The current. Positive.</param>
    /// <param name="temperature">Conductor temperature, from −100 °C to the metal's melting point.</param>
    /// <param name="allowed">Allowed drop. Positive.</param>
    /// <param name="conductor">The conductor, or null.</param>
    /// <returns>Whether there is one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public bool TrySmallestFor(Length length, ElectricCurrent current, Temperature temperature, ElectricPotential allowed, [NotNullWhen(true)] out Conductor? conductor)
    {
        double ampereMeters = Accept.Meters(length, nameof(length)) * Accept.Amperes(current, nameof(current));
        double volts = Accept.Volts(allowed, nameof(allowed)) * (1 + Slack);
        foreach (Conductor candidate in conductors)
        {
            if (ampereMeters * candidate.OhmsPerMeterAt(candidate.Material.AcceptCelsius(temperature, nameof(temperature))) <= volts)
            {
                conductor = candidate;
                return true;
            }
        }

        conductor = null;
        return false;
    }

    private static string? Fault(Conductor smaller, Conductor larger)
    {
        if (!(larger.AreaSquareMillimeters > smaller.AreaSquareMillimeters))
        {
            return $"has {Accept.Text(larger.AreaSquareMillimeters)} mm², which is not more than the {Accept.Text(smaller.AreaSquareMillimeters)} mm² of";
        }

        return larger.OhmsPerMeter20 < smaller.OhmsPerMeter20
            ? larger.Size is { } size && smaller.Size is { } other && size == other ? "has the same size as" : null
            : $"has {Accept.Text(larger.OhmsPerMeter20 * 1000)} Ω/km at 20 °C, which is not less than the {Accept.Text(smaller.OhmsPerMeter20 * 1000)} Ω/km of";
    }
}
