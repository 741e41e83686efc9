namespace CircuitSchedule;

/// <summary>What is wrong with one cell, or with a row as a whole when no column is named.</summary>
internal sealed record Problem(int Line, string Column, string Message)
{
    public override string ToString() => Column.Length > 0 ? $"line {Line}, {Column}: {Message}" : $"line {Line}: {Message}";
}

/// <summary>Something that the file does not say, and what is assumed instead.</summary>
internal sealed record Assumption(string What, string Value);

/// <summary>The file as a whole cannot be used: it is not there, its bytes are no text, or its header is wrong.</summary>
internal sealed class ScheduleFileException(string message) : Exception(message);
