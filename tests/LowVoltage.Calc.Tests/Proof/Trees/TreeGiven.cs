using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>One wire, fuse or stretch of chassis of a tree, named by the part that lies before it toward its terminal of the source; −1 is the terminal itself.</summary>
internal sealed record PartGiven(string Id, int Before, bool IsReturn = false)
{
    /// <summary>A wire as it is laid; null for a fuse or a chassis.</summary>
    public StretchGiven? Wire { get; init; }

    public Named<InsulationMaterial>? Insulation { get; init; }

    public Named<FuseRating>? Fuse { get; init; }

    /// <summary>Air around a fuse, °C; null means that of a wire beside it.</summary>
    public double? FuseAmbient { get; init; }

    /// <summary>A chassis, a fuse's contacts, or a wire's joints, Ω.</summary>
    public double Ohms { get; init; }

    /// <summary>Several circuits begin or end behind it: a busbar or a ground point.</summary>
    public bool IsBus { get; init; }

    public bool IsFuse => Fuse is not null;

    public bool IsWire => Wire is not null;
}

/// <summary>A load between the ends of two parts; −1 is the source's terminal.</summary>
internal sealed record TreeLoadGiven(string Id, LoadGiven Load, int Plus, int Minus)
{
    public bool Intermittent { get; init; }

    public double? DropPercent { get; init; }

    public int? Starts { get; init; }
}

/// <summary>One source, what branches from its positive terminal, what joins toward its negative one, and the loads between.</summary>
internal sealed record TreeGiven(string Name, SourceGiven Source, RulesGiven Rules, PartGiven[] Parts, TreeLoadGiven[] Loads)
{
    /// <summary>Sets of loads, by index, that a load case starts together.</summary>
    public int[][] Together { get; init; } = [];
}
