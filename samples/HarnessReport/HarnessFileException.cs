namespace HarnessReport;

/// <summary>The file is no harness; the message says why, in as many lines as there are mistakes.</summary>
internal sealed class HarnessFileException(string message) : Exception(message);
