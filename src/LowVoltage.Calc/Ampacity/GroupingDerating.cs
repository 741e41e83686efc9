using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>How the currents of a caller's ampacity table fall where more wires lie together: the grouping factors (bundle derating) of a maker's sheet, or of a standard that is not carried.</summary>
/// <remarks>
/// <code>I = I(table) · f, with f of the first row that has not fewer conductors, or circuits, than lie together</code>
/// <para>The first row is the number that the table's currents hold for, with factor 1; fewer count as that row. Nothing is interpolated: a number between two rows takes the larger one, which is the
/// safer. Above the last row there is no factor, and no current.</para>
/// <para>A rule counts loaded conductors, or circuits of two loaded conductors; an odd conductor counts as a circuit. Which of the two the source means decides: two circuits are four conductors.</para>
/// <para>Used in <see cref="AmpacityBasis.FromTable(AmpacityTable, AmbientDerating, GroupingDerating)"/>. Immutable and thread-safe.</para>
/// </remarks>
public sealed class GroupingDerating
{
    private const int Most = 1000;

    private readonly double[] counts;
    private readonly double[] factors;

    private GroupingDerating(string name, Reference reference, bool circuits, double[] counts, double[] factors)
    {
        Name = name;
        Reference = reference;
        CountsCircuits = circuits;
        this.counts = counts;
        this.factors = factors;
    }

    /// <summary>What the factors are called.</summary>
    public string Name { get; }

    /// <summary>Where they come from.</summary>
    public Reference Reference { get; }

    /// <summary>Whether the rows count circuits of two loaded conductors, and not the conductors themselves.</summary>
    public bool CountsCircuits { get; }

    /// <summary>The number of the first row, that of the table.</summary>
    public int BaseCount => (int)counts[0];

    /// <summary>The number of the last row; above it there is no factor.</summary>
    public int LargestCount => (int)counts[counts.Length - 1];

    internal ReadOnlySpan<double> Counts => counts;

    internal ReadOnlySpan<double> Factors => factors;

    /// <summary>Factors by the number of loaded conductors together.</summary>
    /// <param name="name">What they are called.</param>
    /// <param name="reference">Where they come from.</param>
    /// <param name="conductors">Loaded conductors together, those of the circuit itself included, rising; 1 to 1000. The first is the number that the table holds for.</param>
    /// <param name="factors">Factor on the table's current at each: the first is 1, the others above 0 and never rising.</param>
    /// <returns>The factors.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, there is no row, the lists differ in length, a number does not rise, the first factor is not 1 or a factor rises. The message names the row.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number or a factor is outside its range. The message names the row.</exception>
    public static GroupingDerating ByConductors(string name, Reference reference, IReadOnlyList<int> conductors, IReadOnlyList<double> factors) =>
        Create(name, reference, conductors ?? throw new ArgumentNullException(nameof(conductors)), factors, circuits: false, nameof(conductors));

    /// <summary>Factors by the number of circuits together.</summary>
    /// <param name="name">What they are called.</param>
    /// <param name="reference">Where they come from.</param>
    /// <param name="circuits">Circuits of two loaded conductors together, the circuit itself included, rising; 1 to 1000. The first is the number that the table holds for.</param>
    /// <param name="factors">Factor on the table's current at each: the first is 1, the others above 0 and never rising.</param>
    /// <returns>The factors.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">The name is empty, there is no row, the lists differ in length, a number does not rise, the first factor is not 1 or a factor rises. The message names the row.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number or a factor is outside its range. The message names the row.</exception>
    public static GroupingDerating ByCircuits(string name, Reference reference, IReadOnlyList<int> circuits, IReadOnlyList<double> factors) =>
        Create(name, reference, circuits ?? throw new ArgumentNullException(nameof(circuits)), factors, circuits: true, nameof(circuits));

    /// <summary>The factor for a number together, to be used by hand on a rating of the table too (<see cref="DeratedAmpacity.With(DeratingFactor)"/>).</summary>
    /// <param name="count">Loaded conductors, or circuits, as the rows count them: 1 to 1000.</param>
    /// <param name="factor">The factor, at most 1; null above the last row.</param>
    /// <returns>Whether there is one.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside its range.</exception>
    public bool TryFactor(int count, [NotNullWhen(true)] out DeratingFactor? factor) => TryFactorOf(Accept.Count(count, 1, Most, nameof(count)), out factor);

    /// <inheritdoc/>
    public override string ToString() => Name;

    internal bool TryFactorOf(int count, [NotNullWhen(true)] out DeratingFactor? factor)
    {
        int index = Steps.AtLeast(counts, count);
        factor = index < 0 ? null : new DeratingFactor(factors[index], CountsCircuits ? DeratingKind.Grouping : DeratingKind.ConductorCount, RuleSet.Caller, Reference)
        {
            BundleMeaning = CountsCircuits ? "circuits of two loaded conductors" : "loaded conductors together",
            Holds = new LateText(() => Counted(count) + (counts[index] == count ? "" : $", row {Accept.Text(counts[index])}")),
        };
        return factor is not null;
    }

    /// <summary>A number of what is counted, in words.</summary>
    internal string Counted(int count) => Counted(CountsCircuits, count);

    private static string Counted(bool circuits, int count) => Accept.Text(count) + (circuits ? " circuit" : " loaded conductor") + (count == 1 ? "" : "s");

    /// <summary>The number of conductors in a place as the rows count it.</summary>
    internal int CountOf(in TablePlace place) => CountsCircuits ? place.Circuits : place.LoadedConductors;

    /// <summary>The number that a table holds for as the rows count it; rounded down, so that none is counted too few. A wire alone is no circuit: 0.</summary>
    internal int CountOf(AmpacityTable table) => CountsCircuits ? table.Conductors / 2 : table.Conductors;

    private static GroupingDerating Create(string name, Reference reference, IReadOnlyList<int> counts, IReadOnlyList<double> factors, bool circuits, string parameter)
    {
        string own = DeratingRows.Named(name);
        string Text(double count) => Counted(circuits, (int)count);
        _ = reference ?? throw new ArgumentNullException(nameof(reference));
        double[] rows = DeratingRows.Rising([.. counts.Select(n => (double)n)], 1, Most, Text, parameter);
        return new GroupingDerating(own, reference, circuits, rows, DeratingRows.Falling(factors, rows, Text));
    }
}
