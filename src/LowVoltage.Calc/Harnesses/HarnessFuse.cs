using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A fuse, or a breaker stated by its curve, between two nodes.</summary>
/// <remarks>Immutable. A breaker is a rating of a series that the caller states with its time-current curve. Without a rating it is to be chosen.</remarks>
public sealed class HarnessFuse : HarnessBranch
{
    private HarnessFuse(string id, string from, string to, FuseRating? rating, double ohms, double? ambientCelsius)
        : base(id, from, to)
    {
        Rating = rating;
        FixedOhms = ohms;
        AmbientCelsius = ambientCelsius;
    }

    /// <summary>The rating; <c>null</c> where it is to be chosen.</summary>
    public FuseRating? Rating { get; }

    /// <summary>Resistance of fuse and holder.</summary>
    public ElectricResistance Resistance => ElectricResistance.FromOhms(FixedOhms);

    /// <summary>Temperature of the air around it; <c>null</c>, where not stated, means that of the wire it protects.</summary>
    public Temperature? Ambient => AmbientCelsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    internal double? AmbientCelsius { get; }

    internal override double FixedOhms { get; }

    internal override string Word => "fuse";

    /// <summary>A fuse.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="from">Name of the node on the source's side; its current is counted from there.</param>
    /// <param name="to">Name of the other node.</param>
    /// <param name="rating">The rating; <c>null</c> where it is to be chosen.</param>
    /// <returns>The fuse, without resistance.</returns>
    /// <exception cref="ArgumentNullException">A name is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    public static HarnessFuse Create(string id, string from, string to, FuseRating? rating) => new(id, from, to, rating, 0, null);

    /// <summary>The same with another rating.</summary>
    /// <param name="rating">The rating; <c>null</c> where it is to be chosen.</param>
    /// <returns>A copy.</returns>
    public HarnessFuse WithRating(FuseRating? rating) => new(Id, From, To, rating, FixedOhms, AmbientCelsius);

    /// <summary>The same with a resistance of fuse and holder.</summary>
    /// <param name="resistance">Zero or greater.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is negative or absurdly large.</exception>
    public HarnessFuse WithResistance(ElectricResistance resistance) => new(Id, From, To, Rating, Accept.OhmsOrZero(resistance, nameof(resistance)), AmbientCelsius);

    /// <summary>The same in air of its own.</summary>
    /// <param name="ambient">Temperature of the air around it, −60 °C to 250 °C; <c>null</c> for that of the wire.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public HarnessFuse WithAmbient(Temperature? ambient) => new(
        Id, From, To, Rating, FixedOhms, ambient is { } given ? Accept.Within(Accept.Celsius(given, nameof(ambient)), -60, 250, "°C", nameof(ambient)) : null);

    /// <inheritdoc/>
    public override string ToString() => $"fuse {Id}, {Rating?.ToString() ?? "a rating to be chosen"}";
}
