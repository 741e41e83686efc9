namespace LowVoltage.Calc.Teaching;

/// <summary>A marked answer.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class GradingResult
{
    internal GradingResult(GradingOutcome outcome, string message)
    {
        Outcome = outcome;
        Message = message;
    }

    /// <summary>What became of the answer.</summary>
    public GradingOutcome Outcome { get; }

    /// <summary>Whether the answer is right.</summary>
    public bool IsCorrect => Outcome == GradingOutcome.Correct;

    /// <summary>A sentence or two for the student.</summary>
    public string Message { get; }

    /// <summary>The mistakes that give this answer, the nearest first; empty where none is known, several where they give the same number.</summary>
    public IReadOnlyList<Mistake> LikelyMistakes
    {
        get;
        internal init => field = Array.AsReadOnly<Mistake>([.. value]);
    } = [];

    /// <summary>The first of <see cref="LikelyMistakes"/>; null where none is known.</summary>
    public Mistake? LikelyMistake => LikelyMistakes.Count == 0 ? null : LikelyMistakes[0];

    /// <summary>The number as read, in the unit that the problem asks for; null where it could not be read or is of another kind.</summary>
    public double? Value { get; internal init; }

    /// <summary>Significant figures as written, zeros at the end included; 15 for a fraction, which is exact; null where no number was read.</summary>
    public int? SignificantFigures { get; internal init; }

    /// <summary>The outcome and the message.</summary>
    public override string ToString() => $"{Outcome}: {Message}";
}
