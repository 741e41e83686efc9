using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>The letters of a source in a worked solution. A supply that does not change has one voltage and one resistance.</summary>
internal sealed class SourceSymbols
{
    private readonly SolutionBuilder board;
    private readonly Source source;

    /// <summary>Writes what is given of a source.</summary>
    internal SourceSymbols(SolutionBuilder board, Source source)
    {
        this.board = board;
        this.source = source;
        SourceNumbers n = source.Numbers;
        IsConstant = n.MinimumVolts.Equals(n.MaximumVolts) && n.LeastOhms.Equals(n.GreatestOhms);
        board.Given("source", source.Name);
        if (source.Basis is { } basis)
        {
            basis.Give(board);
        }
        else
        {
            Give(n);
        }

        if (n.Action != LimitAction.None)
        {
            board.Given(n.Action == LimitAction.Holds ? "current limit that the source holds" : "current at which the source disconnects", "I_lim", n.LimitAmperes, "A");
        }
    }

    /// <summary>Whether all three supply levels are the same.</summary>
    internal bool IsConstant { get; }

    internal Symbol Volts(SupplyLevel level) => board.Find(IsConstant ? "V_s" : "V_" + Mark(level, "min", "max"))!;

    /// <summary>Resistance inside the source at a level: the greatest at the least voltage.</summary>
    internal Symbol Ohms(SupplyLevel level) => board.Find(IsConstant ? "R_s" : "R_" + Mark(level, "max", "min"))!;

    internal Symbol Limit => board.Find("I_lim")!;

    /// <summary>What is weak about the source at its least voltage, in a sentence.</summary>
    internal string Weakest => source.Basis is null ? "The weakest that the source was stated to be." : "The battery empty, aged and cold.";

    internal string Strongest => source.Basis is null ? "The strongest that the source was stated to be." : "The battery on charge, new and warm.";

    /// <summary>The part of a battery: how its numbers follow from its data; nothing for a source that was stated.</summary>
    internal void Write() => source.Basis?.Write(board, source.Numbers);

    private static string Mark(SupplyLevel level, string least, string greatest) => level switch
    {
        SupplyLevel.Minimum => least,
        SupplyLevel.Maximum => greatest,
        _ => "nom",
    };

    private void Give(in SourceNumbers n)
    {
        if (IsConstant)
        {
            board.Given("voltage of the source with no current", "V_s", n.NominalVolts, "V");
            board.Given("resistance inside the source", "R_s", n.NominalOhms, "Ω");
            return;
        }

        board.Given("least voltage of the source", "V_min", n.MinimumVolts, "V");
        board.Given("nominal voltage of the source", "V_nom", n.NominalVolts, "V");
        board.Given("greatest voltage of the source", "V_max", n.MaximumVolts, "V");
        board.Given("greatest resistance inside the source, with the least voltage", "R_max", n.GreatestOhms, "Ω");
        board.Given("nominal resistance inside the source", "R_nom", n.NominalOhms, "Ω");
        board.Given("least resistance inside the source, with the greatest voltage", "R_min", n.LeastOhms, "Ω");
    }
}
