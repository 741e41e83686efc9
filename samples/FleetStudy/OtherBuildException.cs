namespace FleetStudy;

/// <summary>A silo runs another build than the one that the study was started with; what it calculates would not be the same.</summary>
[GenerateSerializer, Alias("FleetStudy.OtherBuildException")]
internal sealed class OtherBuildException(string message) : Exception(message);
