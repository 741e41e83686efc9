namespace LowVoltage.Calc.Documents;

/// <summary>A smaller size that was tried and not taken, as a document states it.</summary>
/// <param name="Conductor">The conductor that was tried.</param>
/// <param name="StoppedBy">The first check that it failed.</param>
public sealed record DocumentedRejection(string Conductor, DocumentedCheck StoppedBy);
