using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A network of elements that are known between limits: every voltage and current as a straight line in what is left of each element's law.</summary>
/// <remarks>
/// <code>A·(I₀ + S₀·(Aᵀx − U₀) + r) = 0    ⇒    x = x₀ − (A·S₀·Aᵀ)⁻¹·A·(r + S₀·d)</code>
/// <para>A joins elements to nodes, r is what is left of their laws (<see cref="EnclosureElement.Rest"/>), d what the stated voltages of ideal sources differ by. The matrix in the middle is one of plain numbers, so
/// that each uncertainty stands in a result once, with its sign: nothing is lost to the first order. One owner: not thread-safe.</para>
/// </remarks>
internal sealed partial class EnclosureSystem
{
    // What rounding may leave of a voltage or current, as a share of the largest about.
    private const double Rounding = 1e-10;

    private readonly NetworkShape shape;
    private readonly SymmetricFactor factor;
    private readonly Tie[] ties;
    private readonly double[] tieRadius;
    private readonly int nodes;
    private readonly double[][] across;
    private readonly double[][] steps;
    private readonly double[] shift;
    private readonly double[] middle;
    private readonly double[] radius;

    internal EnclosureSystem(int nodes, int reference, EnclosureElement[] elements, Tie[] ties, double[] tieRadius, double[] volts)
    {
        this.nodes = nodes;
        this.ties = ties;
        this.tieRadius = tieRadius;
        Elements = elements;
        Volts = volts;
        Element[] plain = [.. elements.Select(e => e is EnclosureDraw ? Element.Drawn(e.Positive, e.Negative, 0) : Element.Resistance(e.Positive, e.Negative, 1))];
        shape = NetworkShape.Create(nodes, reference, plain, ties);
        factor = new SymmetricFactor(shape.Pattern);
        across = new double[elements.Length][];
        steps = new double[nodes][];
        shift = new double[nodes];
        (middle, radius) = (new double[elements.Length + ties.Length], new double[elements.Length + ties.Length]);
        (NewVolts, NewAmperes) = (new Interval[elements.Length], new Interval[elements.Length]);
    }

    internal EnclosureElement[] Elements { get; }

    /// <summary>Voltages of the middle.</summary>
    internal double[] Volts { get; }

    internal int Columns => middle.Length;

    internal Interval[] NewVolts { get; }

    internal Interval[] NewAmperes { get; }

    internal double LargestVolts { get; private set; }

    internal double LargestAmperes { get; private set; }

    /// <summary>Finds how every voltage follows what is left; false where the middle's matrix is not positive definite or a node hangs loose.</summary>
    internal bool Prepare()
    {
        if (!TryFactor(e => e.Siemens0))
        {
            return false;
        }

        LargestVolts = Volts.Length == 0 ? 0 : Volts.Max(Math.Abs);
        LargestAmperes = Elements.Length == 0 ? 0 : Elements.Max(e => Math.Abs(e.Amperes0));
        for (int node = 0; node < nodes; node++)
        {
            steps[node] = new double[Columns];
        }

        for (int f = 0; f < Elements.Length; f++)
        {
            Column(f, e => e == f ? 1 : 0);
        }

        for (int t = 0; t < ties.Length; t++)
        {
            Tied(t);
        }

        Centre();
        for (int e = 0; e < Elements.Length; e++)
        {
            double[] plus = steps[Elements[e].Positive], minus = steps[Elements[e].Negative];
            across[e] = [.. plus.Select((value, k) => value - minus[k])];
        }

        return true;
    }

    /// <summary>Whether the matrix is positive definite with the least slopes that the intervals allow: then it is at every point of them.</summary>
    internal bool StaysDefinite() => TryFactor(e => e.LeastSiemens());

    /// <summary>Voltages and currents that follow from the intervals of now.</summary>
    /// <returns>False where nothing bounds them.</returns>
    internal bool Image()
    {
        for (int f = 0; f < Elements.Length; f++)
        {
            Interval rest = Elements[f].Rest();
            (middle[f], radius[f]) = (rest.Middle, rest.Radius);
            if (!(radius[f] < double.PositiveInfinity) || double.IsNaN(middle[f]))
            {
                return false;
            }
        }

        for (int t = 0; t < ties.Length; t++)
        {
            radius[Elements.Length + t] = tieRadius[t];
        }

        for (int e = 0; e < Elements.Length; e++)
        {
            EnclosureElement at = Elements[e];
            (double move, double spread) = Along(across[e]);
            double own = across[e][e], moved = shift[at.Positive] - shift[at.Negative] + move, slope = at.Siemens0;
            double volts = Volts[at.Positive] - Volts[at.Negative] + moved;
            NewVolts[e] = new Interval(volts - spread, volts + spread).Wider(Rounding * LargestVolts);

            // The element's own rest counts directly and through the voltage that it makes.
            double amperes = at.Amperes0 + (slope * (volts - at.Volts0)) + middle[e];
            double through = (Math.Abs(slope) * Math.Max(0, spread - (Math.Abs(own) * radius[e]))) + (Math.Abs((slope * own) + 1) * radius[e]);
            NewAmperes[e] = new Interval(amperes - through, amperes + through).Wider((Rounding * LargestAmperes) + (1e-13 * Math.Abs(slope) * LargestVolts));
        }

        return true;
    }

    /// <summary>Voltage of one node over another.</summary>
    internal Interval Between(int node, int over) => Between([(node, 1), (over, -1)]);

    /// <summary>A sum of node voltages, each times a number.</summary>
    internal Interval Between(params (int Node, double Times)[] terms)
    {
        double[] row = new double[Columns];
        double value = 0;
        foreach ((int node, double times) in terms)
        {
            value += times * (Volts[node] + shift[node]);
            for (int k = 0; k < row.Length; k++)
            {
                row[k] += times * steps[node][k];
            }
        }

        (double move, double spread) = Along(row);
        return new Interval(value + move - spread, value + move + spread).Wider(Rounding * LargestVolts);
    }

    private (double Move, double Spread) Along(double[] row)
    {
        double move = 0, spread = 0;
        for (int k = 0; k < row.Length; k++)
        {
            move += row[k] * middle[k];
            spread += Math.Abs(row[k]) * radius[k];
        }

        return (move, spread);
    }
}
