using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Design;

/// <summary>A size that the designer tried and did not take, with the check that stopped it.</summary>
public sealed class RejectedSize
{
    internal RejectedSize(Conductor conductor, CheckResult check)
    {
        Conductor = conductor;
        Check = check;
    }

    /// <summary>The conductor tried.</summary>
    public Conductor Conductor { get; }

    /// <summary>The first check that it failed.</summary>
    public CheckResult Check { get; }

    /// <summary>The size and the reason in one line.</summary>
    public override string ToString() => $"{Conductor}: {Check}";
}
