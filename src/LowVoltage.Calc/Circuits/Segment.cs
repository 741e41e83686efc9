using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>A length of one conductor, or of several equal ones side by side, on the way out or on the way back.</summary>
/// <remarks>Immutable. The length is that of this way only: nothing is doubled.</remarks>
public sealed class Segment
{
    private Segment(Conductor conductor, double meters, int parallel)
    {
        Conductor = conductor;
        Meters = meters;
        Parallel = parallel;
    }

    private Segment(Segment other)
    {
        Conductor = other.Conductor;
        Meters = other.Meters;
        Parallel = other.Parallel;
        Temperature = other.Temperature;
        Place = other.Place;
        Wire = other.Wire;
    }

    /// <summary>The conductor.</summary>
    public Conductor Conductor { get; }

    /// <summary>Its length.</summary>
    public Length Length => Length.FromMeters(Meters);

    /// <summary>How many of them share the current, each an equal part.</summary>
    public int Parallel { get; }

    /// <summary>How warm this segment is, where it differs from the rest of the circuit; else <c>null</c>.</summary>
    public ConductorTemperature? Temperature { get; private init; }

    /// <summary>Where this segment runs, where that differs from the rest of the circuit; else <c>null</c>.</summary>
    public Place? Place { get; private init; }

    /// <summary>The conductor in its own insulation, where that was stated; <c>null</c> means the circuit's insulation.</summary>
    public Wire? Wire { get; private init; }

    internal double Meters { get; }

    /// <summary>A segment of one conductor.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="length">Length of this way, positive.</param>
    /// <returns>The segment.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="conductor"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public static Segment Create(Conductor conductor, Length length) => Create(conductor, length, 1);

    /// <summary>A segment of equal conductors side by side.</summary>
    /// <param name="conductor">The conductor.</param>
    /// <param name="length">Length of this way, positive.</param>
    /// <param name="parallel">Equal conductors side by side, 1 to 1000.</param>
    /// <returns>The segment.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="conductor"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length or the number is outside its range.</exception>
    public static Segment Create(Conductor conductor, Length length, int parallel) => new(
        conductor ?? throw new ArgumentNullException(nameof(conductor)),
        Accept.Meters(length, nameof(length)),
        Accept.Count(parallel, 1, 1000, nameof(parallel)));

    /// <summary>A segment of one wire in an insulation of its own.</summary>
    /// <param name="wire">The insulated wire.</param>
    /// <param name="length">Length of this way, positive.</param>
    /// <returns>The segment.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is outside its range.</exception>
    public static Segment Create(Wire wire, Length length) => Create(wire, length, 1);

    /// <summary>A segment of wires in an insulation of their own.</summary>
    /// <param name="wire">The insulated wire.</param>
    /// <param name="length">Length of this way, positive.</param>
    /// <param name="parallel">Equal wires side by side, 1 to 1000.</param>
    /// <returns>The segment.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length or the number is outside its range.</exception>
    public static Segment Create(Wire wire, Length length, int parallel) =>
        new(Create((wire ?? throw new ArgumentNullException(nameof(wire))).Conductor, length, parallel)) { Wire = wire };

    /// <summary>The same segment at a temperature of its own, such as a pigtail in an engine space.</summary>
    /// <param name="temperature">How warm it is; a self-heating model counts the current of one of the parallel conductors.</param>
    /// <returns>A copy with that temperature; drop, heat and faults are then judged with it.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="temperature"/> is null.</exception>
    public Segment WithTemperature(ConductorTemperature temperature) =>
        new(this) { Temperature = temperature ?? throw new ArgumentNullException(nameof(temperature)) };

    /// <summary>The same segment in a place of its own.</summary>
    /// <param name="place">Where it runs.</param>
    /// <returns>A copy with that place.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="place"/> is null.</exception>
    public Segment WithPlace(Place place) => new(this) { Place = place ?? throw new ArgumentNullException(nameof(place)) };

    /// <summary>Resistance of the segment at a conductor temperature.</summary>
    /// <param name="temperature">Conductor temperature, −100 °C to 1000 °C.</param>
    /// <returns>R′·L/n.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public ElectricResistance ResistanceAt(Temperature temperature) =>
        ElectricResistance.FromOhms(OhmsAt(ConductorTemperature.Celsius(temperature, nameof(temperature))));

    /// <inheritdoc/>
    public override string ToString() => Parallel == 1
        ? $"{Accept.Text(Meters)} m of {Conductor.Name}"
        : $"{Accept.Text(Meters)} m of {Parallel} × {Conductor.Name}";

    /// <summary>A return of the same wire; what holds for a feed of one segment holds for it too.</summary>
    internal Segment Like(double meters, bool sameTemperature)
    {
        Segment back = new(Conductor, meters, Parallel);
        return new(back) { Wire = Wire, Place = sameTemperature ? Place : null, Temperature = sameTemperature ? Temperature : null };
    }

    internal double OhmsAt(double celsius) => Conductor.OhmsPerMeterAt(celsius) * Meters / Parallel;
}
