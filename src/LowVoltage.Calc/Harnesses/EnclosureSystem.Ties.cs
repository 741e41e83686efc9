using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <content>What flows where there is no resistance: what leaves the nodes behind it.</content>
internal sealed partial class EnclosureSystem
{
    /// <summary>Currents of the ties from their positive to their negative end inside them.</summary>
    internal Interval[] TieAmperes()
    {
        (double Value, double[] Row)?[] leaves = new (double, double[])?[nodes];
        foreach (Tie tie in ties)
        {
            leaves[tie.Positive] ??= (0, new double[Columns]);
            leaves[tie.Negative] ??= (0, new double[Columns]);
        }

        for (int e = 0; e < Elements.Length; e++)
        {
            AddThrough(leaves, Elements[e].Positive, e, 1);
            AddThrough(leaves, Elements[e].Negative, e, -1);
        }

        Interval[] found = new Interval[ties.Length];
        for (int n = shape.Forest.Order.Count - 1; n >= 0; n--)
        {
            int tie = shape.Forest.Order[n], outer = shape.Forest.Outer(tie), inner = outer == ties[tie].Positive ? ties[tie].Negative : ties[tie].Positive;
            (double value, double[] row) = leaves[outer]!.Value;
            (double move, double spread) = Along(row);
            Interval leaving = new Interval(value + move - spread, value + move + spread).Wider(Rounding * 10 * LargestAmperes);
            found[tie] = outer == ties[tie].Positive ? -1 * leaving : leaving;
            (double before, double[] to) = leaves[inner]!.Value;
            leaves[inner] = (before + value, [.. to.Select((v, k) => v + row[k])]);
        }

        return found;
    }

    private void AddThrough((double Value, double[] Row)?[] leaves, int node, int e, int sign)
    {
        if (leaves[node] is not var (value, row))
        {
            return;
        }

        EnclosureElement at = Elements[e];
        double start = Volts[at.Positive] - Volts[at.Negative] + shift[at.Positive] - shift[at.Negative];
        for (int k = 0; k < row.Length; k++)
        {
            row[k] += sign * at.Siemens0 * across[e][k];
        }

        row[e] += sign;
        leaves[node] = (value + (sign * (at.Amperes0 + (at.Siemens0 * (start - at.Volts0)))), row);
    }
}
