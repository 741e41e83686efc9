using LowVoltage.Calc.References;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Circuits;

/// <summary>What the numbers of a source were worked out from: the data of a battery.</summary>
internal abstract class SourceBasis
{
    /// <summary>Writes the caller's data into the givens.</summary>
    internal abstract void Give(SolutionBuilder board);

    /// <summary>Writes how voltages and resistances follow: V_min, V_nom, V_max, R_min, R_nom, R_max.</summary>
    internal abstract void Write(SolutionBuilder board, in SourceNumbers numbers);

    /// <summary>Voltages of equal cells or blocks in series.</summary>
    private protected static void Volts(SolutionBuilder board, Symbol series, string each, (double Least, double Nominal, double Greatest) one, in SourceNumbers numbers, (Reference Least, Reference Others) sources)
    {
        foreach ((string which, string mark, double volts, double all) in new[]
        {
            ("least", "min", one.Least, numbers.MinimumVolts), ("nominal", "nom", one.Nominal, numbers.NominalVolts), ("greatest", "max", one.Greatest, numbers.MaximumVolts),
        })
        {
            Reference source = mark == "min" ? sources.Least : sources.Others;
            if (series.Value.Equals(1))
            {
                board.LookUp($"{which} voltage of the source", "V_" + mark, all, "V", source);
                continue;
            }

            Symbol single = board.LookUp($"{which} voltage of {each}", "V_1" + mark, volts, "V", source);
            board.Step($"{which} voltage of the source", "V_" + mark, series * single, all, "V", source);
        }
    }
}
