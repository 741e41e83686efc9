using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>How far from its source a fuse may sit, measured along the conductor, by a law or a standard.</summary>
/// <remarks>Up to the fuse nothing protects the conductor: as near as it can be is the rule behind every number here. Immutable.</remarks>
public sealed class SourceDistance
{
    private readonly double openMeters;
    private readonly double? sheathedMeters;
    private readonly double? batteryMeters;

    private SourceDistance(string name, double open, double? sheathed, double? battery, Reference reference, string condition)
    {
        Name = name;
        openMeters = open;
        sheathedMeters = sheathed;
        batteryMeters = battery;
        Reference = reference;
        Condition = condition;
    }

    /// <summary>33 CFR 183.455(b): 7 in; 40 in when sheathed or enclosed over the whole length.</summary>
    public static SourceDistance Cfr33 { get; } = new(
        "33 CFR 183.455", 7 * 0.0254, 40 * 0.0254, null,
        new() { Title = "33 CFR 183.455", Edition = "Code of Federal Regulations", Locator = "(b)", Kind = ReferenceKind.Law },
        "at the source where that is practical");

    /// <summary>ISO 13590, personal watercraft: 180 mm; 500 mm if protected throughout; within 900 mm of the battery.</summary>
    public static SourceDistance Iso13590 { get; } = new(
        "ISO 13590", 0.180, 0.500, 0.900,
        new() { Title = "ISO 13590", Kind = ReferenceKind.Standard, Note = "As its abstract states it." },
        "the 900 mm are read as those of the battery's own conductor");

    /// <summary>ISO 10133, small craft: 200 mm, or any distance sheathed over the whole length. From memory; the edition was withdrawn in 2020 for ISO 13297.</summary>
    public static SourceDistance Iso10133 { get; } = new(
        "ISO 10133", 0.200, double.PositiveInfinity, null, Memory("ISO 10133", Editions.Iso10133, ""), "sheathed over the whole length");

    /// <summary>ABYC E-11, small craft: 7 in; 40 in when sheathed; 72 in when sheathed and connected at the battery post. From memory.</summary>
    public static SourceDistance AbycE11 { get; } = new(
        "ABYC E-11", 7 * 0.0254, 40 * 0.0254, 72 * 0.0254, Memory("ABYC E-11", "", ""), "sheathed or enclosed over the whole length");

    /// <summary>IEC 60364-4-43, 434.2.1: 3 m where the danger of a short circuit and of fire is kept least. From memory.</summary>
    public static SourceDistance Iec60364 { get; } = new(
        "IEC 60364-4-43", 0, 3, null, Memory("IEC 60364-4-43", Editions.Iec60364Part443, "434.2.1"), "short circuit and fire unlikely by the way it is laid, and no combustible material near");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<SourceDistance> All { get; } = Array.AsReadOnly([Cfr33, Iso13590, Iso10133, AbycE11, Iec60364]);

    /// <summary>Name: <c>33 CFR 183.455</c>.</summary>
    public string Name { get; }

    /// <summary>Largest distance of an open conductor; zero where the rule gives none.</summary>
    public Length Open => Length.FromMeters(openMeters);

    /// <summary>Largest distance of a conductor in a sheath or enclosure over its whole length; null when any.</summary>
    public Length? Sheathed => sheathedMeters is double meters && !double.IsInfinity(meters) ? Length.FromMeters(meters) : null;

    /// <summary>Largest distance of a sheathed conductor that is connected at the battery itself; null where the rule has no such case.</summary>
    public Length? SheathedFromBattery => batteryMeters is double meters ? Length.FromMeters(meters) : null;

    /// <summary>What else the rule asks for.</summary>
    public string Condition { get; }

    /// <summary>Whose rule it is.</summary>
    public Reference Reference { get; }

    /// <summary>A rule of the caller's.</summary>
    /// <param name="name">Name.</param>
    /// <param name="open">Largest distance of an open conductor. Zero or greater.</param>
    /// <param name="sheathed">Largest distance of a sheathed conductor, at least the former.</param>
    /// <param name="reference">Whose rule it is.</param>
    /// <returns>The rule.</returns>
    /// <exception cref="ArgumentNullException">The name or the reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A distance is outside its range.</exception>
    public static SourceDistance Create(string name, Length open, Length sheathed, Reference reference)
    {
        double first = Accept.MetersOrZero(open, nameof(open));
        return new SourceDistance(
            name ?? throw new ArgumentNullException(nameof(name)),
            first,
            Accept.Within(Accept.MetersOrZero(sheathed, nameof(sheathed)), first, Accept.MostMeters, "m", nameof(sheathed)),
            null,
            reference ?? throw new ArgumentNullException(nameof(reference)),
            "as stated by the caller");
    }

    /// <summary>A fuse's distance against the rule.</summary>
    /// <param name="distance">Length of conductor between the source and the fuse. Zero or greater.</param>
    /// <param name="sheathed">Whether the conductor is in a sheath or enclosure over that whole length.</param>
    /// <param name="atBattery">Whether it is connected at the battery itself.</param>
    /// <returns>The verdict; <see cref="Condition"/> is for the reader to judge.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The distance is outside its range.</exception>
    public RatingCheck Check(Length distance, bool sheathed, bool atBattery)
    {
        double meters = Accept.MetersOrZero(distance, nameof(distance)), most = Most(sheathed, atBattery);

        // 7 in and 0.1778 m are one length, whatever their last digits.
        bool within = meters <= most * (1 + 1e-12);
        string limit = double.IsInfinity(most) ? "any length" : $"{Accept.Text(most)} m";
        double? share = meters == 0 ? 0 : most > 0 ? meters / most : null;
        return new RatingCheck(
            within ? RatingVerdict.Within : RatingVerdict.Exceeded, share,
            $"{Name} allows {limit} {(sheathed ? "sheathed" : "open")} ({Condition}); the fuse sits {Accept.Text(meters)} m from the source.");
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    /// <summary>Largest distance, m; infinite where the rule allows any.</summary>
    internal double Most(bool sheathed, bool atBattery) =>
        !sheathed ? openMeters : atBattery && batteryMeters is double battery ? battery : sheathedMeters ?? openMeters;

    private static Reference Memory(string title, string edition, string note) =>
        new() { Title = title, Edition = edition, Kind = ReferenceKind.FromMemory, Note = note };
}
