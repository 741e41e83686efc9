using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A battery, alternator, charger, supply or solar panel between two nodes of a harness.</summary>
/// <remarks>
/// A battery gives and takes: one at a lower voltage is charged. A supply that holds its current at a limit (an alternator, a charger) never takes any. Immutable.
/// </remarks>
public sealed class HarnessSource
{
    private HarnessSource(string id, string positive, string negative, Source? source, SolarPanel? panel)
    {
        Id = HarnessName.Check(id, nameof(id));
        Positive = HarnessName.Check(positive, nameof(positive));
        Negative = HarnessName.Check(negative, nameof(negative));
        HarnessName.CheckEnds(id, positive, negative, nameof(negative));
        Source = source;
        Panel = panel;
    }

    /// <summary>Its name, which no branch, load or other source has.</summary>
    public string Id { get; }

    /// <summary>Name of the node at its positive terminal.</summary>
    public string Positive { get; }

    /// <summary>Name of the node at its negative terminal.</summary>
    public string Negative { get; }

    /// <summary>What it is electrically; <c>null</c> for a solar panel.</summary>
    public Source? Source { get; }

    /// <summary>The solar panel; <c>null</c> for all others.</summary>
    public SolarPanel? Panel { get; }

    /// <summary>A battery, alternator, charger or supply.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="positive">Name of the node at its positive terminal.</param>
    /// <param name="negative">Name of the node at its negative terminal.</param>
    /// <param name="source">What it is electrically.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    public static HarnessSource Create(string id, string positive, string negative, Source source) =>
        new(id, positive, negative, source ?? throw new ArgumentNullException(nameof(source)), null);

    /// <summary>A solar panel without a controller of its own.</summary>
    /// <param name="id">Its name.</param>
    /// <param name="positive">Name of the node at its positive terminal.</param>
    /// <param name="negative">Name of the node at its negative terminal.</param>
    /// <param name="panel">The panel.</param>
    /// <returns>The source.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">A name is empty, or both nodes are the same.</exception>
    public static HarnessSource Create(string id, string positive, string negative, SolarPanel panel) =>
        new(id, positive, negative, null, panel ?? throw new ArgumentNullException(nameof(panel)));

    /// <inheritdoc/>
    public override string ToString() => $"source {Id}, {Source?.ToString() ?? Panel!.ToString()}";
}
