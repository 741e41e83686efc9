namespace LowVoltage.Calc.Checks;

/// <summary>A question to the supply lead and what protects it: one that is asked of a circuit, put to each part of the lead with the device before it; the worst answer counts.</summary>
/// <param name="order">Place among all checks.</param>
/// <param name="id">The property of <see cref="CheckKind"/> that gives it.</param>
/// <param name="name">In plain words.</param>
/// <param name="unit">Of value and limit.</param>
/// <param name="limitIsLeast">Whether the limit is the least allowed.</param>
/// <param name="letters">Of value and limit in a sheet.</param>
internal abstract class SupplyCheck(int order, string id, string name, string unit, bool limitIsLeast, (string Value, string Limit) letters)
    : Check(order, id, name, unit, limitIsLeast, SheetSection.Supply, letters)
{
    /// <summary>The same question as a circuit is asked it.</summary>
    private protected abstract CheckKind Asked { get; }

    /// <summary>Whether it is about the wire behind the device, and cannot be asked where that is not stated.</summary>
    private protected virtual bool NeedsLead => true;

    /// <summary>The verdict is of the whole; what decides about a circuit's wire and fuse are its own checks.</summary>
    internal sealed override bool Governs => false;

    internal sealed override bool IsCuredBySize(BranchState at) => false;

    internal override string Where => NeedsLead ? "supply lead" : "main fuse";

    internal override bool TryAsk(BranchState at, out CheckResult result)
    {
        result = default;
        foreach (SupplyStage stage in at.Supply)
        {
            if (TryAsk(at, stage, out CheckResult own))
            {
                result = result.Kind is null || IsWorse(own, result) ? own : result;
            }
        }

        return result.Kind is not null;
    }

    /// <summary>The answer for one device and the lead behind it.</summary>
    private protected virtual bool TryAsk(BranchState at, SupplyStage stage, out CheckResult result)
    {
        result = default;
        if ((NeedsLead && !stage.HasLead) || !((Check)Asked).TryAsk(stage.At, out CheckResult own))
        {
            return false;
        }

        result = own.As(this, NameOf(at, stage));
        return true;
    }

    /// <summary>What tells one device from others; null where there is one.</summary>
    private protected static StretchName? NameOf(BranchState at, SupplyStage stage) => at.Supply.Length > 1 ? stage.Name : null;

    internal override string Note(in CheckResult result) => ((Check)Asked).Note(result);

    private static bool IsWorse(in CheckResult one, in CheckResult other) =>
        Rank(one.Outcome) != Rank(other.Outcome) ? Rank(one.Outcome) > Rank(other.Outcome) : one.Tightness < other.Tightness;

    private static int Rank(CheckOutcome outcome) => outcome switch { CheckOutcome.Fail => 2, CheckOutcome.Undetermined => 1, _ => 0 };
}
