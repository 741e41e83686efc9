namespace LowVoltage.Calc.Checks;

/// <summary>Collects the checks of one candidate and remembers the worst failure.</summary>
internal struct CheckList
{
    private const int Most = 16;

    private readonly CheckResult[] checks;

    internal CheckList(CheckResult[] scratch)
    {
        checks = scratch;
        Count = 0;
        Failed = 0;
        LeavesFaultOpen = false;
        Worst = default;
    }

    internal int Count { get; private set; }

    internal int Failed { get; private set; }

    /// <summary>The failed check with the smallest margin; meaningful when there is one.</summary>
    internal CheckResult Worst { get; private set; }

    /// <summary>Whether it is not known if a fault opens the fuse.</summary>
    internal bool LeavesFaultOpen { get; private set; }

    /// <summary>The check added last.</summary>
    internal readonly CheckResult Last => checks[Count - 1];

    internal static CheckResult[] Scratch() => new CheckResult[Most];

    internal void Add(in CheckResult check)
    {
        checks[Count++] = check;
        if (check.Outcome == CheckOutcome.Undetermined)
        {
            LeavesFaultOpen |= check.Kind == CheckKind.FaultOpensFuse;
        }
        else if (check.Outcome == CheckOutcome.Fail)
        {
            Worst = Failed == 0 || check.IsTighterThan(Worst) ? check : Worst;
            Failed++;
        }
    }

    /// <summary>Takes back what was added after a mark: the checks of a fuse that was not taken.</summary>
    internal void Rewind(in CheckList mark) => this = mark;

    internal readonly CheckResult[] ToArray()
    {
        CheckResult[] copy = new CheckResult[Count];
        Array.Copy(checks, copy, Count);
        return copy;
    }
}
