using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Checks;

/// <summary>One question to a circuit: how it is answered, what is said of the answer, what would help, and how a teacher would write it down.</summary>
/// <remarks>
/// A check keeps nothing: the numbers on the way to its answer are found again, to the last bit, from the same state when somebody reads the working. All that is known of
/// a kind stands in its own file; to add one is to add a file.
/// </remarks>
/// <param name="order">Place among all checks. Checks of the wire stand below <see cref="FirstOfFuse"/>.</param>
/// <param name="id">The property of <see cref="CheckKind"/> that gives it.</param>
/// <param name="name">In plain words.</param>
/// <param name="unit">Of value and limit.</param>
/// <param name="limitIsLeast">Whether the limit is the least allowed.</param>
/// <param name="section">Where in a calculation sheet it stands.</param>
/// <param name="letters">Of value and limit in a sheet where no step has given the number; no other check has them.</param>
internal abstract class Check(int order, string id, string name, string unit, bool limitIsLeast, SheetSection section, (string Value, string Limit) letters)
    : CheckKind(id, name, unit, limitIsLeast)
{
    /// <summary>Orders from here on ask about the fuse on the wire.</summary>
    internal const int FirstOfFuse = 100;

    /// <summary>Orders from here on ask about the supply lead before the fuse and what protects it: the same for every candidate.</summary>
    internal const int FirstOfSupply = 300;

    internal int Order { get; } = order;

    internal SheetSection Section { get; } = section;

    internal (string Value, string Limit) Letters { get; } = letters;

    internal CheckGroup Group { get; } = order < FirstOfFuse ? CheckGroup.Wire : order < FirstOfSupply ? CheckGroup.Fuse : CheckGroup.Supply;

    /// <summary>Whether more copper, or another rating of fuse, can cure a failure. The search grows no wire for what it cannot.</summary>
    internal virtual bool IsCuredBySize(BranchState at) => true;

    /// <summary>Whether it only compares numbers that are known already: such checks are asked first where a candidate may be out soon.</summary>
    internal virtual bool IsQuick => false;

    /// <summary>Whether its share of the limit says something of its own beside the other checks; one that repeats another on a different scale decides only among its like.</summary>
    internal virtual bool Governs => true;

    /// <summary>Where it stands when it is about no stretch of wire.</summary>
    internal virtual string Where => Group == CheckGroup.Wire ? "wire" : "fuse";

    /// <summary>What it is about in a harness: each wire, each load, or each fuse with what it protects.</summary>
    internal virtual CheckScope Scope => Group switch { CheckGroup.Wire => CheckScope.Wire, CheckGroup.Fuse => CheckScope.Fuse, _ => CheckScope.Supply };

    /// <summary>Whether it is about a load that starts or stalls, and so is asked again for each that may.</summary>
    internal virtual bool IsOfStart => false;

    /// <summary>Answers the question.</summary>
    /// <returns>False when the question does not arise.</returns>
    internal abstract bool TryAsk(BranchState at, out CheckResult result);

    /// <summary>How the value or limit came about, or what is missing; may be empty.</summary>
    internal virtual string Note(in CheckResult result) => "";

    /// <summary>What would help where it failed or is undetermined.</summary>
    internal abstract string Advice(in CheckResult result, BranchState at);

    /// <summary>Writes the steps to its two numbers and tells the sheet which of them those are.</summary>
    internal virtual void Explain(Sheet sheet, in CheckResult result)
    {
    }

    /// <summary>An answer by numbers.</summary>
    private protected CheckResult Judge(double value, double limit, Reference reference, in CheckSubject about = default) =>
        new(this, value, limit, Passes(value, limit) ? CheckOutcome.Pass : CheckOutcome.Fail, reference, about);

    /// <summary>An answer that was judged on other numbers than the two it shows.</summary>
    private protected CheckResult Judged(bool passes, double value, double limit, Reference reference, in CheckSubject about = default) =>
        new(this, value, limit, passes ? CheckOutcome.Pass : CheckOutcome.Fail, reference, about);

    /// <summary>An answer without a number: a fuse that need never open, a fault that nothing has to clear.</summary>
    private protected CheckResult InWords(CheckOutcome outcome, Reference reference, in CheckSubject about) =>
        new(this, double.NaN, double.NaN, outcome, reference, about);

    /// <summary>No answer, because something is missing; the note says what. What the circuit has may be known all the same.</summary>
    private protected CheckResult Unknown(Reference reference, in CheckSubject about, double value = double.NaN) =>
        new(this, value, double.NaN, CheckOutcome.Undetermined, reference, about);

    private bool Passes(double value, double limit) => LimitIsLeast ? value >= limit : value <= limit;
}
