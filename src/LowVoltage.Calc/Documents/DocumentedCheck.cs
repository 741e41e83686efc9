using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Documents;

/// <summary>A check as a document states it: a claim, which the library can make again.</summary>
/// <remarks>Immutable; equal by value.</remarks>
public sealed class DocumentedCheck : IEquatable<DocumentedCheck>
{
    internal DocumentedCheck()
    {
    }

    /// <summary>What was asked.</summary>
    public CheckKind Kind { get; internal init; } = null!;

    /// <summary>Pass, fail, or undetermined.</summary>
    public CheckOutcome Outcome { get; internal init; }

    /// <summary>What the circuit has, in the unit of the kind; <c>null</c> where there is no number.</summary>
    public double? Value { get; internal init; }

    /// <summary>What is allowed, in the unit of the kind; <c>null</c> where there is no number.</summary>
    public double? Limit { get; internal init; }

    /// <summary>Where it stands: the stretch of wire, the fuse, the load.</summary>
    public string Where { get; internal init; } = "";

    /// <summary>At which supply voltage the value was found, where that matters.</summary>
    public SupplyLevel? Level { get; internal init; }

    /// <summary>How the value or limit came about, or what is missing.</summary>
    public string Note { get; internal init; } = "";

    /// <summary>Whose rule the limit is.</summary>
    public Reference Reference { get; internal init; } = null!;

    /// <inheritdoc/>
    public bool Equals(DocumentedCheck? other) =>
        other is not null && ReferenceEquals(Kind, other.Kind) && Outcome == other.Outcome && Nullable.Equals(Value, other.Value) && Nullable.Equals(Limit, other.Limit)
        && Where == other.Where && Level == other.Level && Note == other.Note && Reference.Equals(other.Reference);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as DocumentedCheck);

    /// <inheritdoc/>
    public override int GetHashCode() => (Kind.Id, Outcome, Value, Limit).GetHashCode();

    /// <summary>The check and its outcome: <c>voltage drop: pass</c>.</summary>
    public override string ToString() => $"{Kind.Name}: {CheckPart.Outcomes.WordOf(Outcome)}";

    internal static DocumentedCheck From(CheckResult check) => new()
    {
        Kind = check.Kind!,
        Outcome = check.Outcome,
        Value = check.Value,
        Limit = check.Limit,
        Where = check.Where,
        Level = check.Level,
        Note = check.Note,
        Reference = check.Reference,
    };
}
