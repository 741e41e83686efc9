namespace FleetStudy;

/// <summary>An argument that cannot be used; the message names it, its value and what is accepted.</summary>
internal sealed class UsageException(string message) : Exception(message);
