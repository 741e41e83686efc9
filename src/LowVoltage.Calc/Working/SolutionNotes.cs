namespace LowVoltage.Calc.Working;

/// <summary>Lines under a heading that go with a worked solution: assumptions, open points, advice.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class SolutionNotes
{
    internal SolutionNotes(string heading, IReadOnlyList<string> lines)
    {
        Heading = heading;
        Lines = lines;
    }

    /// <summary>The heading.</summary>
    public string Heading { get; }

    /// <summary>The lines.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>The heading.</summary>
    public override string ToString() => Heading;
}
