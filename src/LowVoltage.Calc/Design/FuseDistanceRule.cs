using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Design;

/// <summary>How far from the source a fuse may sit, measured along the conductor: bare, and when the conductor is sheathed or enclosed all the way.</summary>
public sealed class FuseDistanceRule
{
    private FuseDistanceRule(double openMeters, double sheathedMeters, Reference reference)
    {
        OpenMeters = openMeters;
        SheathedMeters = sheathedMeters;
        Reference = reference;
    }

    /// <summary>Largest distance of an open conductor.</summary>
    public Length Open => Length.FromMeters(OpenMeters);

    /// <summary>Largest distance of a conductor in a sheath or enclosure over its whole length.</summary>
    public Length Sheathed => Length.FromMeters(SheathedMeters);

    /// <summary>Whose rule it is.</summary>
    public Reference Reference { get; }

    /// <summary>33 CFR 183.455(b): at the source; if that is impractical within 7 in, or within 40 in when sheathed or enclosed.</summary>
    public static FuseDistanceRule SmallCraft { get; } = new(7 * 0.0254, 40 * 0.0254, new Reference
    {
        Title = "33 CFR 183.455", Edition = "Code of Federal Regulations", Locator = "(b)", Kind = ReferenceKind.Law,
    });

    internal double OpenMeters { get; }

    internal double SheathedMeters { get; }

    /// <summary>A rule of the caller's.</summary>
    /// <param name="open">Largest distance of an open conductor, zero or more.</param>
    /// <param name="sheathed">Largest distance of a sheathed conductor, at least the former.</param>
    /// <param name="reference">Whose rule it is.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A distance is outside its range.</exception>
    /// <exception cref="ArgumentNullException">The reference is null.</exception>
    public static FuseDistanceRule Create(Length open, Length sheathed, Reference reference)
    {
        double first = Accept.MetersOrZero(open, nameof(open));
        return new FuseDistanceRule(
            first,
            Accept.Within(Accept.MetersOrZero(sheathed, nameof(sheathed)), first, Accept.MostMeters, "m", nameof(sheathed)),
            reference ?? throw new ArgumentNullException(nameof(reference)));
    }
}
