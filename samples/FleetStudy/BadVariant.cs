namespace FleetStudy;

/// <summary>A variant that could not be studied, and why.</summary>
[GenerateSerializer, Immutable, Alias("FleetStudy.BadVariant")]
internal sealed record BadVariant([property: Id(0)] long Variant, [property: Id(1)] string Reason);
