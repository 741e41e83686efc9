using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Protection;

/// <content>The working.</content>
public sealed partial class WireProtection
{
    /// <summary>The working: how the wire is cooled, where it settles at the largest current that the fuse need not open, and at the tightest current the time of the fuse, the time of the wire, and how hot it gets.</summary>
    /// <returns>The steps, temperature against limit last; that nothing was evaluated is an answer too.</returns>
    public WorkedSolution Explain()
    {
        SolutionBuilder board = new("Fuse against the wire, over the whole range of currents") { Once = true };
        board.Caution(SolutionCautions.ShortCircuit, SolutionCautions.Heat, SolutionCautions.Fuse);
        if (asked is null)
        {
            board.State("protection", Reason);
            return board.Build(Reason);
        }

        WireLimits wire = asked.Limits();
        OverloadSteps steps = new(board, Givens(board, asked, wire), curve!, null);
        steps.Write(wire, new TightestPoint(amperes, Verdict == ProtectionVerdict.Protected && TimeRatio < 1 ? 1 : TimeRatio, Regime));
        Symbol? hot = Regime == ProtectionRegime.Sustained ? steps.Settled : steps.Reached;
        Symbol most = Regime == ProtectionRegime.Sustained ? steps.SettledLimit : steps.ReachedLimit ?? steps.SettledLimit;
        if (hot is null)
        {
            board.State("temperature of the wire then", "The metal melts.");
        }
        else
        {
            board.Compare("does the wire stay within its limit", hot, Relation.AtMost, most, FuseAgainstWire.References[1], "", Verdict == ProtectionVerdict.Protected);
        }

        return board.Build(Reason);
    }

    private OverloadLetters Givens(SolutionBuilder board, ProtectedWire given, in WireLimits wire)
    {
        board.Given("device", device);
        board.Given("wire", given.Wire.ToString());
        Symbol ambient = board.Given("temperature of the air, and of the wire without current", "θ_a", wire.Heat.NoLoadCelsius, "°C");
        Symbol continuous = board.Given("continuous limit of the insulation", "θ_c", given.Wire.Insulation.ContinuousCelsius, "°C");
        Symbol? rated = given.ContinuousCurrent is { } current ? board.Given("current that the wire carries continuously where it runs", "I_z", current.Amperes, "A") : null;
        if (given.Initial is { } initial)
        {
            board.Given("conductor temperature at the start, as stated", $"{Quantities.Accept.Text(initial.DegreesCelsius)} °C");
        }

        board.Given("allowance for an overload", given.Allowance.Name);
        board.Given("greatest prospective current", "I_k", prospective, "A");
        return new OverloadLetters
        {
            Wire = given.Wire,
            Allowance = given.Allowance,
            Ambient = ambient,
            Continuous = continuous,
            Rated = rated,
            RatedCelsius = continuous,
            StartsHot = given.Initial is null && wire.StartCelsius.Equals(continuous.Value),
            StartWords = given.Initial is null ? "As hot as its surroundings or the model let it be." : "As stated; not below what the surroundings make of it.",
        };
    }
}
