namespace FleetStudy;

/// <summary>One thing in which the variants of a fleet differ, and the values that it takes.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Values">Its values in words.</param>
internal sealed record FleetAxis(string Name, params string[] Values);
