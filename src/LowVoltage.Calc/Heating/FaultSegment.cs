using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>One length of conductor in the loop of a fault, with the temperature it has when the fault starts.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class FaultSegment
{
    private const int MostParallel = 1000;

    private FaultSegment(Conductor conductor, double meters, double initial, int parallel)
    {
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
            Accept.Count(parallel, 1, MostParallel, nameof(parallel)));
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Accept.Text(Meters)} m {Conductor}";
}
