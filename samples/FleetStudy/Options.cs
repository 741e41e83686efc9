namespace FleetStudy;

/// <summary>What the command line asks for.</summary>
internal sealed record Options
{
    public required StudySpec Spec { get; init; }

    public required Database Database { get; init; }

    /// <summary>How many processes on this machine.</summary>
    public int Silos { get; init; } = 1;

    /// <summary>The name by which silos of several machines find each other.</summary>
    public string Cluster { get; init; } = "fleet-study";

    public string Address { get; init; } = "127.0.0.1";

    /// <summary>Without a cluster, in memory.</summary>
    public bool IsPlain { get; init; }

    /// <summary>Takes part in the studies of others, and starts none.</summary>
    public bool Joins { get; init; }

    /// <summary>A variant to show instead of a study.</summary>
    public long? Show { get; init; }
}
