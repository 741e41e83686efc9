namespace FleetStudy;

/// <summary>The study could not be brought to its end; what was kept stays, and another run goes on from there.</summary>
internal sealed class UnfinishedException(string message) : Exception(message);
