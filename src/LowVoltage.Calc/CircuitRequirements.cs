using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc;

/// <summary>What one circuit must do and where it runs: the designer's input.</summary>
/// <remarks>
/// Lengths of the way out and the way back are given apart; nothing is doubled or halved.
/// Every value is checked when it is set; the exception names the property, the value, its unit and what is accepted. Immutable. A variation is a copy:
/// <c>new CircuitRequirements(pump) { Feed = … }</c>, or <c>pump.WithFeed(…)</c> in a language without initialisers.
/// </remarks>
public sealed partial class CircuitRequirements
{
    /// <summary>Starts in the life of the fuse that are counted with where none are stated: 10 000, some three a day over ten years (common practice, no published source).</summary>
    public const int UsualStarts = 10_000;

    private readonly double feedMeters;
    private readonly double? upstreamOhms;
    private readonly double? fuseDistanceMeters;
    private readonly double? fuseAmbientCelsius;
    private readonly double? wallMillimeters;
    private readonly int? starts;
    private readonly Joint[] joints = [];
    private readonly UpstreamProtection[] protection = [];

    /// <summary>Requirements to be filled in.</summary>
    public CircuitRequirements()
    {
    }

    /// <summary>A copy of other requirements, to be changed in its initialiser.</summary>
    /// <param name="basis">The requirements to start from.</param>
    /// <exception cref="ArgumentNullException">The requirements are null.</exception>
    [System.Diagnostics.CodeAnalysis.SetsRequiredMembers]
    public CircuitRequirements(CircuitRequirements basis)
    {
        _ = basis ?? throw new ArgumentNullException(nameof(basis));
        feedMeters = basis.feedMeters;
        upstreamOhms = basis.upstreamOhms;
        fuseDistanceMeters = basis.fuseDistanceMeters;
        fuseAmbientCelsius = basis.fuseAmbientCelsius;
        wallMillimeters = basis.wallMillimeters;
        starts = basis.starts;
        joints = basis.joints;
        protection = basis.protection;
        Name = basis.Name;
        Source = basis.Source;
        Load = basis.Load;
        Return = basis.Return;
        SheathedToFuse = basis.SheathedToFuse;
        Place = basis.Place;
        Insulation = basis.Insulation;
        Intermittent = basis.Intermittent;
        DropLimit = basis.DropLimit;
        ParallelWires = basis.ParallelWires;
    }

    /// <summary>What the circuit is called; may be empty.</summary>
    public string Name { get; init => field = value ?? throw new ArgumentNullException(nameof(Name)); } = "";

    /// <summary>The battery or supply.</summary>
    public required Source Source { get; init => field = value ?? throw new ArgumentNullException(nameof(Source)); }

    /// <summary>What is fed.</summary>
    public required Load Load { get; init => field = value ?? throw new ArgumentNullException(nameof(Load)); }

    /// <summary>Length of the feed, one way: from the fuse to the load. Above zero.</summary>
    public required Length Feed
    {
        get => Length.FromMeters(feedMeters);
        init => feedMeters = Accept.Meters(value, nameof(Feed));
    }

    /// <summary>The way back: a wire with its own length, a chassis, or a shared return.</summary>
    public required ReturnPath Return { get; init => field = value ?? throw new ArgumentNullException(nameof(Return)); }

    /// <summary>Joints on the way: crimps, connectors, switches, relay contacts, fuse and holder. None if not stated.</summary>
    public IReadOnlyList<Joint> Joints
    {
        get => joints;
        init => joints = [.. (value ?? throw new ArgumentNullException(nameof(Joints))).Select(joint => joint ?? throw new ArgumentNullException(nameof(Joints), "A joint is null."))];
    }

    /// <summary>
    /// Resistance of the supply lead between the source's terminals and this circuit's fuse, out and back. Zero says that the fuse
    /// sits on the terminal; <c>null</c> says that it is not known, and leaves the breaking capacity undetermined where it matters.
    /// Where <see cref="UpstreamProtection"/> states wires of the lead that have more at 20 °C, theirs counts for the drop and for a fault at the far end.
    /// </summary>
    public ElectricResistance? Upstream
    {
        get => upstreamOhms is { } ohms ? ElectricResistance.FromOhms(ohms) : null;
        init => upstreamOhms = value is { } given ? Accept.OhmsOrZero(given, nameof(Upstream)) : null;
    }

    /// <summary>
    /// What protects the supply lead: a main fuse or breaker, or several in a row, from the source on. None if not stated; then the lead is not judged.
    /// </summary>
    public IReadOnlyList<UpstreamProtection> UpstreamProtection
    {
        get => protection;
        init => protection = Calc.UpstreamProtection.InOrder(value ?? throw new ArgumentNullException(nameof(UpstreamProtection)), nameof(UpstreamProtection));
    }

    /// <summary>Length of conductor between the source and the fuse; <c>null</c> when not known.</summary>
    public Length? FuseDistance
    {
        get => fuseDistanceMeters is { } meters ? Length.FromMeters(meters) : null;
        init => fuseDistanceMeters = value is { } given ? Accept.MetersOrZero(given, nameof(FuseDistance)) : null;
    }

    /// <summary>Whether the conductor between source and fuse is sheathed or enclosed over its whole length.</summary>
    public bool SheathedToFuse { get; init; }

    /// <summary>Temperature of the air around the fuse, −60 °C to 250 °C; <c>null</c>, where not stated, means that of the wire's place.</summary>
    public Temperature? FuseAmbient
    {
        get => fuseAmbientCelsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;
        init => fuseAmbientCelsius = value is { } given ? Accept.Within(Accept.Celsius(given, nameof(FuseAmbient)), -60, 250, "°C", nameof(FuseAmbient)) : null;
    }

    /// <summary>How often the load is started in the life of its fuse, 1 to 100 000; <c>null</c>, where not stated, means <see cref="UsualStarts"/>.</summary>
    public int? Starts
    {
        get => starts;
        init => starts = value is { } count ? Accept.Count(count, 1, 100_000, nameof(Starts)) : null;
    }

    /// <summary>Where the wire runs; a segment of existing wiring may have a place of its own.</summary>
    public required Place Place { get; init => field = value ?? throw new ArgumentNullException(nameof(Place)); }

    /// <summary>The insulation of the wire.</summary>
    public required InsulationMaterial Insulation { get; init => field = value ?? throw new ArgumentNullException(nameof(Insulation)); }

    /// <summary>Wall thickness of the insulation; <c>null</c> means the usual one for the size (see <see cref="InsulationWall"/>).</summary>
    public Length? Wall
    {
        get => wallMillimeters is { } millimeters ? Length.FromMillimeters(millimeters) : null;
        init => wallMillimeters = value is { } given
            ? Accept.Within(Accept.MetersOrZero(given, nameof(Wall)) * 1000, 0, 20, "mm", nameof(Wall))
            : null;
    }

    /// <summary>Whether the load runs for short times only; the aircraft voltage-drop allowances distinguish that.</summary>
    public bool Intermittent { get; init; }

    /// <summary>How many equal wires lie side by side each way; one if not stated. A range lets the designer find the number.</summary>
    /// <remarks>A verification takes the least of a range. A return that is given as wires of its own keeps its own number.</remarks>
    public ParallelWires ParallelWires { get; init => field = value ?? throw new ArgumentNullException(nameof(ParallelWires)); } = ParallelWires.One;

    /// <summary>An allowance for this circuit that replaces the one of the rules; <c>null</c> means the rules'.</summary>
    public DropLimit? DropLimit { get; init; }

    internal double FeedMeters => feedMeters;

    internal double? UpstreamOhms => upstreamOhms;

    /// <summary>Resistance of the supply lead that this circuit's current meets, out and back: what is stated, or what the wires stated behind its devices have, if that is more.</summary>
    internal double CountedLeadOhms => Calc.UpstreamProtection.CountedOhms(upstreamOhms, protection, Insulation);

    internal double? FuseDistanceMeters => fuseDistanceMeters;

    internal double FuseAmbientCelsius => fuseAmbientCelsius ?? Place.AmbientCelsius;

    internal double? WallMillimeters
    {
        get => wallMillimeters;

        // As it stands in a document, without the way by metres.
        init => wallMillimeters = value is { } given ? Accept.Within(given, 0, 20, "mm", nameof(Wall)) : null;
    }

    internal int CountedStarts => starts ?? UsualStarts;

    internal Joint[] JointsArray => joints;

    internal UpstreamProtection[] ProtectionArray => protection;
}
