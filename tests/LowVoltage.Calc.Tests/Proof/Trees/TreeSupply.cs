using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>What one way through a tree sees of the source while others draw: an open voltage, a resistance, and a most where the supply holds its current.</summary>
internal readonly record struct TreeSupply(double Volts, double Ohms, double Most)
{
    /// <summary>The source with others' current through it and a voltage that they take on the way.</summary>
    public static TreeSupply Of(OwnTree tree, SupplyLevel level, double others, double taken)
    {
        double open = tree.Source.Volts(level, 0), ohms = (open - tree.Source.Volts(level, 1e-3)) / 1e-3;
        return new(open - (others * ohms) - taken, ohms, Math.Max(0, tree.Source.HeldAmperes - others));
    }

    /// <summary>A through a resistance against a voltage.</summary>
    public double Flow(double resistance, double opposing) => Math.Min(Most, Math.Max(0, Volts - opposing) / Math.Max(1e-12, Ohms + resistance));
}
