using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Checks;

/// <summary>One check of a circuit: what was found, what is allowed, by how much it passes or fails, where, and on whose authority.</summary>
/// <remarks>
/// The zero value is a check that nobody made: undetermined, without numbers, never a pass. Value and limit are plain numbers in <see cref="Unit"/>, because each
/// kind has its own unit; <see cref="Quantity"/> and <see cref="LimitQuantity"/> give them typed.
/// </remarks>
public readonly struct CheckResult : IEquatable<CheckResult>
{
    private readonly Check? check;
    private readonly double value;
    private readonly double limit;
    private readonly Reference? reference;
    private readonly object? about;
    private readonly double number;
    private readonly StretchName? stretch;
    private readonly CheckOutcome outcome;
    private readonly byte note;

    // The supply level and one; zero for none.
    private readonly byte level;

    internal CheckResult(Check check, double value, double limit, CheckOutcome outcome, Reference reference, in CheckSubject subject)
    {
        this.check = check;
        this.value = value;
        this.limit = limit;
        this.outcome = outcome;
        this.reference = reference;
        about = subject.About;
        number = subject.Number;
        note = subject.Note;
        stretch = subject.Stretch;
        level = subject.Level is { } at ? (byte)((int)at + 1) : (byte)0;
    }

    private CheckResult(in CheckResult from, Check check, StretchName? stretch)
    {
        this = from;
        this.check = check;
        this.stretch = stretch ?? from.stretch;
    }

    /// <summary>What was asked; <c>null</c> for the zero value.</summary>
    public CheckKind? Kind => check;

    /// <summary>Pass, fail, or undetermined.</summary>
    public CheckOutcome Outcome => outcome;

    /// <summary>What the circuit has, in <see cref="Unit"/>; <c>null</c> when there is no number: a fuse that never opens, a wire that is not rated.</summary>
    public double? Value => HasValue ? value : null;

    /// <summary>What is allowed, in <see cref="Unit"/>; <c>null</c> when the check is undetermined or there is no number.</summary>
    public double? Limit => check is not null && !double.IsNaN(limit) ? limit : null;

    /// <summary><see cref="Value"/> as a quantity.</summary>
    public IQuantity? Quantity => HasValue ? CheckUnit.Quantity(Unit, value) : null;

    /// <summary><see cref="Limit"/> as a quantity.</summary>
    public IQuantity? LimitQuantity => HasNumbers ? CheckUnit.Quantity(Unit, limit) : null;

    /// <summary>Whose rule the limit is.</summary>
    public Reference Reference => reference ?? NotMade;

    /// <summary>Where it stands: the stretch of wire, the fuse, the load. <c>feed, 2.3 m of 0.75 mm² copper</c>.</summary>
    public string Where => stretch?.ToString() ?? check?.Where ?? "";

    /// <summary>At which supply voltage the value was found, where that matters.</summary>
    public SupplyLevel? Level => level == 0 ? null : (SupplyLevel)(level - 1);

    /// <summary>How the value or limit came about, or what is missing; may be empty.</summary>
    public string Note => check?.Note(this) ?? "";

    /// <summary>The unit of value and limit.</summary>
    public string Unit => check?.Unit ?? "";

    /// <summary>Whether the limit is the least allowed; otherwise it is the most allowed.</summary>
    public bool LimitIsLeast => check?.LimitIsLeast ?? false;

    /// <summary>Share of the limit that is left: 0.25 means a quarter to spare, negative means beyond the limit, −1 beyond a limit of zero; <c>null</c> without numbers.</summary>
    public double? Margin =>
        !HasNumbers ? null
        : limit == 0 ? outcome == CheckOutcome.Fail ? -1 : 0
        : (LimitIsLeast ? value - limit : limit - value) / Math.Abs(limit);

    /// <summary>The check's name in plain words: <c>voltage drop</c>.</summary>
    public string Name => check?.Name ?? "not evaluated";

    private static Reference NotMade { get; } = Reference.CommonPractice("a check that was not made has no source");

    internal byte NoteKind => note;

    internal object? About => about;

    internal double Number => number;

    internal bool HasValue => check is not null && !double.IsNaN(value);

    internal bool HasNumbers => check is not null && !double.IsNaN(value) && !double.IsNaN(limit);

    internal StretchName? Stretch => stretch;

    /// <summary>Whether it is about one of several stretches.</summary>
    internal bool IsOfSeveral => stretch is not null;

    /// <summary>Share of the limit that is left, for comparing: what failed without a number is as far beyond as can be told.</summary>
    internal double Tightness => Margin ?? (outcome == CheckOutcome.Fail ? -1 : outcome == CheckOutcome.Pass ? double.PositiveInfinity : 0);

    /// <inheritdoc/>
    public bool Equals(CheckResult other) =>
        ReferenceEquals(check, other.check) && outcome == other.outcome && value.Equals(other.value) && limit.Equals(other.limit) && level == other.level
        && Equals(reference, other.reference) && Note == other.Note && Where == other.Where;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CheckResult other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (check?.Id, value, limit).GetHashCode();

    /// <summary>Whether two checks are the same.</summary>
    public static bool operator ==(CheckResult left, CheckResult right) => left.Equals(right);

    /// <summary>Whether two checks differ.</summary>
    public static bool operator !=(CheckResult left, CheckResult right) => !left.Equals(right);

    /// <summary>The check in one line: <c>voltage drop 0.29 V, at most 0.36 V: pass</c>; where the circuit has several stretches it names the one.</summary>
    public override string ToString() => CheckWords.Line(this, IsOfSeveral);

    /// <summary>The same answer to a question that asks this one elsewhere.</summary>
    internal CheckResult As(Check asked, StretchName? where) => new(this, asked, where);

    /// <summary>Whether this check has less to spare. One that repeats another on a scale of its own decides only among its like.</summary>
    internal bool IsTighterThan(in CheckResult other)
    {
        bool governs = check?.Governs ?? false, otherGoverns = other.check?.Governs ?? false;
        return governs == otherGoverns ? Tightness < other.Tightness : governs;
    }
}
