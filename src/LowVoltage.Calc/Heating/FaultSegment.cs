using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>One length of conductor in the loop of a fault, with the temperature it has when the fault starts.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class FaultSegment
{
    private const int MostParallel = 1000;

    private FaultSegment(Conductor conductor, double meters, double initial, int parallel, double others)
    {
        OtherAmperes = others;
        Conductor = conductor;
        Meters = meters;
        InitialCelsius = initial;
        Parallel = parallel;
    }

    /// <summary>The conductor.</summary>
    public Conductor Conductor { get; }

    /// <summary>Length of conductor in the loop: a wire out and an equal one back are two segments, or one of twice the length.</summary>
    public Length Length => Length.FromMeters(Meters);

    /// <summary>Conductor temperature when the fault starts.</summary>
    public Temperature Initial => Temperature.FromDegreesCelsius(InitialCelsius);

    /// <summary>How many of them lie in parallel and share the current evenly.</summary>
    public int Parallel { get; }

    /// <summary>Constant current of other circuits that flows in it all the while; zero unless <see cref="Sharing"/> said so.</summary>
    public ElectricCurrent OtherCurrent => ElectricCurrent.FromAmperes(OtherAmperes);

    internal double OtherAmperes { get; }

    internal double Meters { get; }

    internal double InitialCelsius { get; }

    /// <summary>A segment.</summary>
    /// <param name="conductor">The conductor; its effective section takes up the heat.</param>
    /// <param name="length">Length of conductor in the loop. Positive; nothing is doubled here.</param>
    /// <param name="initial">Conductor temperature at the start, from −100 °C to the melting point.</param>
    /// <param name="parallel">How many share the current, 1 to 1000.</param>
    /// <returns>The segment.</returns>
    /// <exception cref="ArgumentNullException">The conductor is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static FaultSegment Create(Conductor conductor, Length length, Temperature initial, int parallel = 1)
    {
        _ = conductor ?? throw new ArgumentNullException(nameof(conductor));
        return new(
            conductor,
            Accept.Meters(length, nameof(length)),
            conductor.Material.AcceptCelsius(initial, nameof(initial)),
            Accept.Count(parallel, 1, MostParallel, nameof(parallel)),
            0);
    }

    /// <summary>The same segment as a conductor that other circuits use too, a shared return for example.</summary>
    /// <param name="others">What they send through it all the while, in the direction of the fault's current. Zero or greater.</param>
    /// <returns>A new segment.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The current is outside its range.</exception>
    /// <remarks>
    /// Their voltage in it is taken from what drives the fault, and it is heated by both currents together. <c>FaultClearing</c> answers for such
    /// a loop by a bound on the safe side; <see cref="FaultTransient"/>, which states the course itself, refuses it.
    /// </remarks>
    public FaultSegment Sharing(ElectricCurrent others) => new(Conductor, Meters, InitialCelsius, Parallel, Accept.AmperesOrZero(others, nameof(others)));

    /// <inheritdoc/>
    public override string ToString() => $"{Accept.Text(Meters)} m {Conductor}";
}
