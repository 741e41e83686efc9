namespace FleetStudy;

/// <summary>How many variants have one value of an option, and how many of them fail.</summary>
[GenerateSerializer, Alias("FleetStudy.OptionTally")]
internal sealed class OptionTally
{
    [Id(0)]
    public long Variants { get; set; }

    [Id(1)]
    public long Failed { get; set; }
}
