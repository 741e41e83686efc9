using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc;

/// <summary>What one circuit must do and where it runs: the designer's input.</summary>
/// <remarks>
/// Lengths of the way out and the way back are given apart; nothing is doubled or halved.
/// Every value is checked when it is set; the exception names the property, the value, its unit and what is accepted. Immutable.
/// </remarks>
public sealed class CircuitRequirements
{
    private readonly double feedMeters;
    private readonly double ambientCelsius;
    private readonly int loadedConductors = 2;
    private readonly double bundleLoading = 1;
    private readonly double altitudeMeters;
    private readonly double? upstreamOhms;
    private readonly double? fuseDistanceMeters;
    private readonly double? wallMillimeters;
    private readonly IReadOnlyList<Joint> joints = [];

    /// <summary>Requirements to be filled in.</summary>
    public CircuitRequirements()
    {
    }

    [System.Diagnostics.CodeAnalysis.SetsRequiredMembers]
    private CircuitRequirements(CircuitRequirements other, double feedMeters, ReturnPath back)
    {
        this.feedMeters = feedMeters;
        ambientCelsius = other.ambientCelsius;
        loadedConductors = other.loadedConductors;
        bundleLoading = other.bundleLoading;
        altitudeMeters = other.altitudeMeters;
        upstreamOhms = other.upstreamOhms;
        fuseDistanceMeters = other.fuseDistanceMeters;
        wallMillimeters = other.wallMillimeters;
        joints = other.joints;
        Name = other.Name;
        Source = other.Source;
        Load = other.Load;
        Return = back;
        SheathedToFuse = other.SheathedToFuse;
        EngineSpace = other.EngineSpace;
        Insulation = other.Insulation;
        Intermittent = other.Intermittent;
        DropLimit = other.DropLimit;
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
    /// sits on the terminal; <c>null</c> says that it is not known, and leaves the breaking capacity open where it matters.
    /// </summary>
    public ElectricResistance? Upstream
    {
        get => upstreamOhms is { } ohms ? ElectricResistance.FromOhms(ohms) : null;
        init => upstreamOhms = value is { } given ? Accept.OhmsOrZero(given, nameof(Upstream)) : null;
    }

    /// <summary>Length of conductor between the source and the fuse; <c>null</c> when not known.</summary>
    public Length? FuseDistance
    {
        get => fuseDistanceMeters is { } meters ? Length.FromMeters(meters) : null;
        init => fuseDistanceMeters = value is { } given ? Accept.MetersOrZero(given, nameof(FuseDistance)) : null;
    }

    /// <summary>Whether the conductor between source and fuse is sheathed or enclosed over its whole length.</summary>
    public bool SheathedToFuse { get; init; }

    /// <summary>Temperature of the air around the wire where it is hottest, −60 °C to 250 °C.</summary>
    public required Temperature Ambient
    {
        get => Temperature.FromDegreesCelsius(ambientCelsius);
        init => ambientCelsius = Accept.Within(Accept.Celsius(value, nameof(Ambient)), -60, 250, "°C", nameof(Ambient));
    }

    /// <summary>Current-carrying conductors that run together in the bundle, this circuit's own included, 1 to 1000. Two if not stated: out and back.</summary>
    public int LoadedConductors
    {
        get => loadedConductors;
        init => loadedConductors = Accept.Count(value, 1, 1000, nameof(LoadedConductors));
    }

    /// <summary>
    /// Share of the bundle's total capacity that is in use, above 0 to 1; used by the aircraft bundle curves only. 1 if not stated: every
    /// conductor at its full current, the safest reading.
    /// </summary>
    public double BundleLoading
    {
        get => bundleLoading;
        init => bundleLoading = Accept.Within(value, 0.01, 1, "", nameof(BundleLoading));
    }

    /// <summary>Altitude above sea level, 0 to 20 000 m.</summary>
    public Length Altitude
    {
        get => Length.FromMeters(altitudeMeters);
        init => altitudeMeters = Accept.Within(Accept.MetersOrZero(value, nameof(Altitude)), 0, 20_000, "m", nameof(Altitude));
    }

    /// <summary>Whether the wire runs in an engine space; the small-craft rules treat that as a case of its own.</summary>
    public bool EngineSpace { get; init; }

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

    /// <summary>An allowance for this circuit that replaces the one of the rules; <c>null</c> means the rules'.</summary>
    public DropLimit? DropLimit { get; init; }

    internal double FeedMeters => feedMeters;

    /// <summary>The same circuit with another length of feed, m; a wire return grows in proportion.</summary>
    internal CircuitRequirements WithFeed(double meters)
    {
        ReturnPath back = Return.Kind == ReturnKind.SameConductor
            ? ReturnPath.Wire(Length.FromMeters(Return.Meters * meters / feedMeters))
            : Return;
        return new CircuitRequirements(this, meters, back);
    }

    internal double AmbientCelsius => ambientCelsius;

    internal double AltitudeMeters => altitudeMeters;

    internal double? UpstreamOhms => upstreamOhms;

    internal double? FuseDistanceMeters => fuseDistanceMeters;

    internal double? WallMillimeters => wallMillimeters;
}
