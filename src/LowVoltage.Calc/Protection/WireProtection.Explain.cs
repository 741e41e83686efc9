using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Protection;

/// <content>The working.</content>
public sealed partial class WireProtection
{
    /// <summary>The working: at the tightest current, how long the fuse takes, how hot the wire is then, and what it may be.</summary>
    /// <returns>The steps, temperature against limit last; that nothing was evaluated is an answer too.</returns>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new("Fuse against the wire, over the whole range of currents");
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Heat, SolutionCautions.Fuse);
        if (Verdict == ProtectionVerdict.NotEvaluated)
        {
            board.State("protection", Reason);
            return board.Build(Reason);
        }

        board.LookUp("current at which the fuse is closest to failing the wire", "I", amperes, "A", null, "Found among all currents from the fusing current to the prospective one.");
        if (fuseSeconds is double seconds)
        {
            board.LookUp("longest time of the fuse there", "t", seconds, "s", null, "From its stated operating times.");
        }
        else
        {
            board.State("longest time of the fuse there", "None: it need not open, so the wire must stand that current for good.");
        }

        if (reached is double celsius)
        {
            Symbol hot = board.LookUp(
                "temperature of the wire then", "θ", celsius, "°C", OverloadHeating.Reference, "From the heat balance of the wire, integrated over the time that the fuse takes; the reference has the equations.");
            Symbol most = new("θ_max", limit, "°C", "temperature that the insulation stands for that time");
            board.Compare("does the wire stay within its limit", hot, Relation.AtMost, most, FuseAgainstWire.References[1], "", Verdict == ProtectionVerdict.Protected);
        }
        else
        {
            board.State("temperature of the wire then", "The metal melts.");
        }

        return board.Build(Reason);
    }
}
