using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>One fault of a harness and what follows from it, as a document states it.</summary>
/// <remarks>Immutable. Each member means what the one of the same name of <see cref="HarnessFault"/> means.</remarks>
public sealed class DocumentedHarnessFault
{
    internal DocumentedHarnessFault(HarnessFaultKind kind, string place, string loadCase)
    {
        Kind = kind;
        Place = place;
        LoadCase = loadCase;
    }

    /// <summary>What it is.</summary>
    public HarnessFaultKind Kind { get; }

    /// <summary>Name of the node that is shorted, or of the branch that is interrupted.</summary>
    public string Place { get; }

    /// <summary>Name of the node that a short touches; <c>null</c> for an interruption.</summary>
    public string? To { get; internal init; }

    /// <summary>Name of the load case.</summary>
    public string LoadCase { get; }

    /// <summary>How bad it is.</summary>
    public FaultRank Rank { get; internal init; }

    /// <summary>How a short ends.</summary>
    public FaultEnding Ending { get; internal init; }

    /// <summary>The least current of a short at its beginning; <c>null</c> for an interruption, or where it is not known.</summary>
    public ElectricCurrent? LeastCurrent => Of(LeastAmperes);

    /// <summary>The greatest current of a short at its beginning; <c>null</c> for an interruption, or where nothing bounds it.</summary>
    public ElectricCurrent? GreatestCurrent => Of(GreatestAmperes);

    /// <summary>The current that keeps flowing in a short that is not cleared, at most; <c>null</c> for all others.</summary>
    public ElectricCurrent? RemainingCurrent => Of(RemainingAmperes);

    /// <summary>The fuses that open, in the order of time.</summary>
    public IReadOnlyList<FuseOpening> Openings { get; internal init; } = [];

    /// <summary>The wires that carry a short, the one nearest to or farthest beyond its limit first.</summary>
    public IReadOnlyList<FaultedWire> Wires { get; internal init; } = [];

    /// <summary>Fuses that may open before the nearest one has, or do.</summary>
    public IReadOnlyList<string> WrongFuses { get; internal init; } = [];

    /// <summary>The loads that an interruption changes; empty for a short.</summary>
    public IReadOnlyList<FaultedLoad> Loads { get; internal init; } = [];

    /// <summary>Names of the loads that go dead with a fuse that is not the nearest to a short.</summary>
    public IReadOnlyList<string> LostLoads { get; internal init; } = [];

    /// <summary>Where a pulled fuse leaves its far end live: the branch through which; <c>null</c> for all others.</summary>
    public string? LiveThrough { get; internal init; }

    /// <summary>Why something could not be told; empty where everything could.</summary>
    public string Reason { get; internal init; } = "";

    /// <summary>Every place that it is about: nodes, branches and loads.</summary>
    public IReadOnlyList<string> Places { get; internal init; } = [];

    /// <summary>What happens, in a sentence that a person can act on.</summary>
    public string Text { get; internal init; } = "";

    internal double? LeastAmperes { get; init; }

    internal double? GreatestAmperes { get; init; }

    internal double? RemainingAmperes { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Text;

    internal static DocumentedHarnessFault From(HarnessFault fault) => new(fault.Kind, fault.Place, fault.LoadCase)
    {
        To = fault.To,
        Rank = fault.Rank,
        Ending = fault.Ending,
        LeastAmperes = fault.LeastAmperes,
        GreatestAmperes = fault.GreatestAmperes,
        RemainingAmperes = fault.RemainingAmperes,
        Openings = fault.Openings,
        Wires = fault.Wires,
        WrongFuses = fault.WrongFuses,
        Loads = fault.Loads,
        LostLoads = fault.LostLoads,
        LiveThrough = fault.LiveThrough,
        Reason = fault.Reason,
        Places = fault.Places,
        Text = fault.Text,
    };

    private static ElectricCurrent? Of(double? amperes) => amperes is { } known ? ElectricCurrent.FromAmperes(known) : null;
}
