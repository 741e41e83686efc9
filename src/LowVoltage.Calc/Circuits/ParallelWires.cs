using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Circuits;

/// <summary>How many equal wires lie side by side each way of a circuit that is designed: a number, or the range in which it is to be found.</summary>
/// <remarks>
/// Each carries an equal part of the current. All of them count as loaded conductors of the bundle, and a fault in one of them is checked
/// (<see cref="Protection.ParallelWireFault"/>). Immutable; equal by value.
/// </remarks>
public sealed class ParallelWires : IEquatable<ParallelWires>
{
    private const int MostOfAll = 20;

    private ParallelWires(int least, int most)
    {
        Least = least;
        Most = most;
    }

    /// <summary>One wire each way: the usual circuit.</summary>
    public static ParallelWires One { get; } = new(1, 1);

    /// <summary>The least number.</summary>
    public int Least { get; }

    /// <summary>The greatest number.</summary>
    public int Most { get; }

    /// <summary>Whether the number is to be found.</summary>
    public bool IsRange => Most > Least;

    /// <summary>So many wires, no more and no fewer.</summary>
    /// <param name="wires">How many each way, 1 to 20.</param>
    /// <returns>The number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static ParallelWires Exactly(int wires) => new(Accept.Count(wires, 1, MostOfAll, nameof(wires)), wires);

    /// <summary>The fewest wires that serve, from one on.</summary>
    /// <param name="most">The greatest number each way, 1 to 20.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public static ParallelWires UpTo(int most) => Between(1, most);

    /// <summary>The fewest wires of a range that serve.</summary>
    /// <param name="least">The least number each way, 1 to 20.</param>
    /// <param name="most">The greatest number each way, from the least to 20.</param>
    /// <returns>The range.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static ParallelWires Between(int least, int most) => new(Accept.Count(least, 1, MostOfAll, nameof(least)), Accept.Count(most, least, MostOfAll, nameof(most)));

    /// <inheritdoc/>
    public bool Equals(ParallelWires? other) => other is not null && Least == other.Least && Most == other.Most;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ParallelWires);

    /// <inheritdoc/>
    public override int GetHashCode() => (Least * 32) + Most;

    /// <inheritdoc/>
    public override string ToString() => IsRange ? $"{Accept.Text(Least)} to {Accept.Text(Most)}" : Accept.Text(Least);
}
