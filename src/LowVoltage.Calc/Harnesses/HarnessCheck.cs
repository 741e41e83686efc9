using LowVoltage.Calc.Checks;

namespace LowVoltage.Calc.Harnesses;

/// <summary>One check of a harness: what a circuit's check says, with the wire, fuse or load that it is about and the load case in which it is tightest.</summary>
/// <remarks>The zero value is a check that nobody made: undetermined.</remarks>
public readonly struct HarnessCheck : IEquatable<HarnessCheck>
{
    private readonly string? place;
    private readonly string? loadCase;

    internal HarnessCheck(in CheckResult result, string place, string? wire, string? toward, string loadCase, string advice)
    {
        Result = result;
        this.place = place;
        Wire = wire;
        Toward = toward;
        this.loadCase = loadCase;
        AdviceText = advice;
    }

    /// <summary>What was asked and found, as for a single circuit.</summary>
    public CheckResult Result { get; }

    /// <summary>What was asked; <c>null</c> for the zero value.</summary>
    public CheckKind? Kind => Result.Kind;

    /// <summary>Pass, fail, or undetermined.</summary>
    public CheckOutcome Outcome => Result.Outcome;

    /// <summary>Name of the wire, fuse or load that it is about.</summary>
    public string Place => place ?? "";

    /// <summary>Where it is about a fuse with several wires, the wire that decides; else <c>null</c>.</summary>
    public string? Wire { get; }

    /// <summary>Where it is about a fuse and one of the ways behind it, the load or next fuse at the end of that way; else <c>null</c>.</summary>
    public string? Toward { get; }

    /// <summary>Name of the load case in which it is tightest.</summary>
    public string LoadCase => loadCase ?? "";

    /// <summary>What would help where it failed or is undetermined; empty where it passes.</summary>
    public string Advice => Outcome == CheckOutcome.Pass ? "" : AdviceText ?? "";

    internal string? AdviceText { get; }

    /// <inheritdoc/>
    public bool Equals(HarnessCheck other) => Result.Equals(other.Result) && Place == other.Place && Wire == other.Wire && Toward == other.Toward && LoadCase == other.LoadCase;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is HarnessCheck other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (Result, Place).GetHashCode();

    /// <summary>Whether two checks are the same.</summary>
    public static bool operator ==(HarnessCheck left, HarnessCheck right) => left.Equals(right);

    /// <summary>Whether two checks differ.</summary>
    public static bool operator !=(HarnessCheck left, HarnessCheck right) => !left.Equals(right);

    /// <summary>The check in one line: <c>F3, wire pump feed: fuse protects the wire 15 A, at most 18.2 A: pass</c>.</summary>
    public override string ToString() => $"{Place}{(Wire is null || Wire == Place ? Toward is null ? "" : $", toward {Toward}" : $", wire {Wire}")}: {CheckWords.Line(Result, false)}";

    /// <summary>Whether this one says more against the harness.</summary>
    internal bool IsWorseThan(in HarnessCheck other)
    {
        int rank = Rank(Outcome), otherRank = Rank(other.Outcome);
        return rank != otherRank ? rank > otherRank : Result.Tightness < other.Result.Tightness;
    }

    private static int Rank(CheckOutcome outcome) => outcome switch { CheckOutcome.Fail => 2, CheckOutcome.Undetermined => 1, _ => 0 };
}
