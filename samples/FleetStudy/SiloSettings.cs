namespace FleetStudy;

/// <summary>What a silo needs to know.</summary>
internal sealed record SiloSettings
{
    public required Database Database { get; init; }

    /// <summary>Silos with the same name find each other.</summary>
    public required string Cluster { get; init; }

    /// <summary>The address under which the other silos reach this one.</summary>
    public string Address { get; init; } = "127.0.0.1";

    /// <summary>How many pieces at a time.</summary>
    public int Cores { get; init; } = Environment.ProcessorCount;

    /// <summary>No other silo is expected: the list of silos is in memory.</summary>
    public bool IsAlone { get; init; }
}
