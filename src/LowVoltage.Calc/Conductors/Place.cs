using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

/// <summary>Where a stretch of wire runs: air temperature, what it is bundled with, altitude, engine space. The insulation belongs to the wire.</summary>
/// <remarks>
/// Every value is checked when it is set; the exception names the property, the value, its unit and what is accepted. Immutable; two places with the same values are equal.
/// A variation is a copy: <c>new Place(engine) { Ambient = … }</c>, or <c>engine.WithAmbient(…)</c> in a language without initialisers.
/// </remarks>
public sealed class Place : IEquatable<Place>
{
    private readonly double ambientCelsius;
    private readonly int? loadedConductors;
    private readonly double bundleLoading = 1;
    private readonly double altitudeMeters;

    /// <summary>A place to be filled in.</summary>
    public Place()
    {
    }

    /// <summary>A copy of another place, to be changed in its initialiser.</summary>
    /// <param name="basis">The place to start from.</param>
    /// <exception cref="ArgumentNullException">The place is null.</exception>
    [System.Diagnostics.CodeAnalysis.SetsRequiredMembers]
    public Place(Place basis)
    {
        _ = basis ?? throw new ArgumentNullException(nameof(basis));
        ambientCelsius = basis.ambientCelsius;
        loadedConductors = basis.loadedConductors;
        bundleLoading = basis.bundleLoading;
        altitudeMeters = basis.altitudeMeters;
        EngineSpace = basis.EngineSpace;
    }

    /// <summary>Temperature of the air around the wire where it is hottest, −60 °C to 250 °C.</summary>
    public required Temperature Ambient
    {
        get => Temperature.FromDegreesCelsius(ambientCelsius);
        init => ambientCelsius = Accept.Within(Accept.Celsius(value, nameof(Ambient)), -60, 250, "°C", nameof(Ambient));
    }

    /// <summary>
    /// Current-carrying conductors that run together, the circuit's own included, 1 to 1000. <c>null</c>, where not stated, means the circuit's own
    /// alone: one with a chassis as the way back, else out and back. Never counted as fewer than the circuit's own.
    /// </summary>
    public int? LoadedConductors
    {
        get => loadedConductors;
        init => loadedConductors = value is { } count ? Accept.Count(count, 1, 1000, nameof(LoadedConductors)) : null;
    }

    /// <summary>
    /// Share of the bundle's total capacity that is in use, 0.01 to 1; used by the aircraft bundle curves only. 1 if not stated: every
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

    /// <summary>Whether it is an engine space; the small-craft rules treat that as a case of its own.</summary>
    public bool EngineSpace { get; init; }

    internal double AmbientCelsius => ambientCelsius;

    internal double AltitudeMeters => altitudeMeters;

    /// <summary>A place with an air temperature; all else as if not stated.</summary>
    /// <param name="ambient">Temperature of the air around the wire where it is hottest, −60 °C to 250 °C.</param>
    /// <returns>The place.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static Place Create(Temperature ambient) => new() { Ambient = ambient };

    /// <summary>The same place with another air temperature.</summary>
    /// <param name="ambient">See <see cref="Ambient"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Place WithAmbient(Temperature ambient) => new(this) { Ambient = ambient };

    /// <summary>The same place with another number of loaded conductors together.</summary>
    /// <param name="loadedConductors">See <see cref="LoadedConductors"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Place WithLoadedConductors(int? loadedConductors) => new(this) { LoadedConductors = loadedConductors };

    /// <summary>The same place with another share of the bundle's capacity in use.</summary>
    /// <param name="bundleLoading">See <see cref="BundleLoading"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Place WithBundleLoading(double bundleLoading) => new(this) { BundleLoading = bundleLoading };

    /// <summary>The same place at another altitude.</summary>
    /// <param name="altitude">See <see cref="Altitude"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Place WithAltitude(Length altitude) => new(this) { Altitude = altitude };

    /// <summary>The same place as an engine space, or not.</summary>
    /// <param name="engineSpace">See <see cref="EngineSpace"/>.</param>
    /// <returns>A copy.</returns>
    public Place WithEngineSpace(bool engineSpace) => new(this) { EngineSpace = engineSpace };

    /// <inheritdoc/>
    public bool Equals(Place? other) =>
        other is not null && ambientCelsius.Equals(other.ambientCelsius) && loadedConductors == other.loadedConductors
        && bundleLoading.Equals(other.bundleLoading) && altitudeMeters.Equals(other.altitudeMeters) && EngineSpace == other.EngineSpace;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Place);

    /// <inheritdoc/>
    public override int GetHashCode() => (ambientCelsius, loadedConductors, bundleLoading, altitudeMeters, EngineSpace).GetHashCode();

    /// <summary>Whether two places are the same.</summary>
    public static bool operator ==(Place? left, Place? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two places differ.</summary>
    public static bool operator !=(Place? left, Place? right) => !(left == right);

    /// <summary>The place in words: <c>air at 50 °C, 6 loaded conductors together</c>.</summary>
    public override string ToString() =>
        $"air at {Accept.Text(ambientCelsius)} °C"
        + (loadedConductors is { } count ? count == 1 ? ", one loaded conductor alone" : $", {Accept.Text(count)} loaded conductors together" : "")
        + (altitudeMeters > 0 ? $", {Accept.Text(altitudeMeters)} m above sea level" : "")
        + (EngineSpace ? ", engine space" : "");
}
