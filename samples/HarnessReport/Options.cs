namespace HarnessReport;

/// <summary>What the command line asks for.</summary>
internal sealed record Options
{
    public static string ShippedScenario => Path.Combine(AppContext.BaseDirectory, "scenario.json");

    /// <summary>A JSON document, or a folder of CSV tables.</summary>
    public required string InputPath { get; init; }

    /// <summary>Size the wires without a conductor and the fuses without a rating.</summary>
    public bool Size { get; init; }

    /// <summary>Size every wire and fuse anew.</summary>
    public bool SizeAll { get; init; }

    /// <summary>Break the harness in every place.</summary>
    public bool Faults { get; init; }

    /// <summary>How many harnesses of a batch are sampled; 0 for none.</summary>
    public int Samples { get; init; }

    public string? SvgPath { get; init; }

    public string? CsvFolder { get; init; }

    /// <summary>Where the sized harness is written as a JSON document; the sizing and the faults go beside it.</summary>
    public string? JsonPath { get; init; }
}
