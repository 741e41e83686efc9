using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Networks;

/// <summary>Solves one network: Newton on the node voltages, wire temperature inside the step. Allocates when made, never when it solves. One owner: not thread-safe.</summary>
/// <remarks>
/// <code>at every node Σ I(U) = 0    J·Δx = −F    step halved while F(x + t·Δx)·Δx &gt; 0</code>
/// <para>J, the slopes of all elements, is symmetric; where every load draws more at more voltage it is positive definite, the voltages are the least of one convex
/// function and the method always arrives. A power draws less at more voltage: from above, its loads counted as resistances at first, the method comes down
/// to the solution of the highest voltages, which is the one that stands. A pivot below zero on the way means that it may not exist.</para>
/// <para><b>Source.</b> The idea of the co-content: W. Millar, "Some general theorems for non-linear systems possessing resistance" (1951), from memory. That the
/// solution of high voltage is the one that stands: arXiv 2010.01076, 2011.09333, 2203.03108.</para>
/// </remarks>
internal sealed partial class NetworkSolver
{
    private const double Rounding = 2.2e-16;

    private readonly NetworkShape shape;
    private readonly SymmetricFactor factor;
    private readonly Tie[] ties;
    private readonly int[] positive;
    private readonly int[] negative;
    private readonly int[] entry;
    private readonly double[] across;
    private readonly double[] offset;
    private readonly double[] slope;
    private readonly double[] held;
    private readonly double[] wanted;
    private readonly double[] x;
    private readonly double[] f;
    private readonly double[] step;
    private readonly double[] highest;
    private readonly double[] kept;
    private readonly bool[] disconnected;
    private readonly double[] outflow;
    private double scale;

    // Part of the matrix only, never of the balance: keeps tied what a load that is off or a source at its limit would leave loose.
    private double leastSiemens;
    private double floor;

    /// <param name="shape">What hangs on what.</param>
    /// <param name="elements">The elements that the shape was made of; their numbers may be changed between two solves, not their nodes.</param>
    /// <param name="ties">The ties that the shape was made of.</param>
    internal NetworkSolver(NetworkShape shape, Element[] elements, Tie[] ties)
    {
        this.shape = shape;
        this.ties = [.. ties];
        Elements = [.. elements];
        factor = new SymmetricFactor(shape.Pattern);
        int count = elements.Length, unknowns = shape.Pattern.Count;
        (positive, negative, entry) = (new int[count], new int[count], shape.Entries);
        (across, slope, held, wanted, Amperes) = (new double[count], new double[count], new double[count], new double[count], new double[count]);
        (x, f, step) = (new double[unknowns + 1], new double[unknowns + 1], new double[unknowns + 1]);
        (highest, kept, rest) = (new double[unknowns + 1], new double[unknowns + 1], new double[unknowns + 1]);
        (offset, outflow, Volts) = (new double[shape.Nodes], new double[shape.Nodes], new double[shape.Nodes]);
        TieAmperes = new double[ties.Length];
        Powers = new PowerState[count];
        disconnected = new bool[count];
        for (int k = 0; k < count; k++)
        {
            positive[k] = shape.Slots[elements[k].Positive];
            negative[k] = shape.Slots[elements[k].Negative];
        }
    }

    internal Element[] Elements { get; }

    /// <summary>The node that the island of each node is counted from.</summary>
    internal int[] Grounds => shape.Grounds;

    /// <summary>Voltage of every node over the reference of its island, V.</summary>
    internal double[] Volts { get; }

    /// <summary>Current through every element from its positive to its negative end, A; a source that gives has a negative one.</summary>
    internal double[] Amperes { get; }

    /// <summary>Current through every tie from its positive to its negative end inside it, A; one that gives has a negative one.</summary>
    internal double[] TieAmperes { get; }

    /// <summary>What every <see cref="ElementLaw.Power"/> does; <see cref="PowerState.On"/> for the rest.</summary>
    internal PowerState[] Powers { get; }

    /// <summary>The largest sum of currents left at a node, A.</summary>
    internal double Balance { get; private set; }

    /// <summary>Steps of Newton's method in all, the linear first one included.</summary>
    internal int Steps { get; private set; }

    /// <summary>The ties with their voltages of now.</summary>
    internal Tie[] TiesNow => [.. ties];

    /// <summary>Sets the voltage of a tie.</summary>
    internal void SetTie(int tie, double volts) => ties[tie] = ties[tie] with { Volts = volts };

    private double Across(int k) => x[positive[k]] - x[negative[k]] + across[k];

    private bool IsOut(int k) => Elements[k].Off || disconnected[k] || Powers[k] is PowerState.CutOut or PowerState.Restartable;

    // Ties give their nodes fixed steps over their root; the largest voltage about is the measure of what is small.
    private void Prepare()
    {
        Array.Clear(offset, 0, offset.Length);
        (scale, leastSiemens) = (0, 1e-7);
        foreach (int tie in shape.Forest.Order)
        {
            (int plus, int minus, double volts) = ties[tie];
            int outer = shape.Forest.Outer(tie);
            offset[outer] = outer == plus ? offset[minus] + volts : offset[plus] - volts;
            scale = Math.Max(scale, Math.Abs(offset[outer]));
        }

        for (int k = 0; k < Elements.Length; k++)
        {
            ref readonly Element element = ref Elements[k];
            wanted[k] = element.A;
            across[k] = offset[element.Positive] - offset[element.Negative];
            leastSiemens = element.Law == ElementLaw.Line ? Math.Min(leastSiemens, 1e-6 * element.B) : leastSiemens;
            scale = element.Off ? scale : Math.Max(scale, Math.Abs(ElementCurrent.OpenVolts(element)));
        }

        scale = scale > 0 ? scale : 1;
        floor = 1e-3 * scale;
    }

    // The first step: every element a straight line, loads as resistances at the highest voltage.
    private void StartLinear()
    {
        factor.Clear();
        Array.Clear(step, 0, step.Length);
        Array.Clear(held, 0, held.Length);
        for (int k = 0; k < Elements.Length; k++)
        {
            if (IsOut(k))
            {
                Add(k, leastSiemens);
                continue;
            }

            (double amperes, double siemens) = ElementCurrent.Start(Elements[k], scale);
            double through = amperes + (siemens * across[k]);
            step[positive[k]] -= through;
            step[negative[k]] += through;
            Add(k, Math.Max(siemens, leastSiemens));
        }

        factor.Factor();
        step[step.Length - 1] = 0;
        factor.Solve(step);
        Array.Copy(step, x, x.Length);
        Steps++;
    }

    private void Evaluate()
    {
        Array.Clear(f, 0, f.Length);
        for (int k = 0; k < Elements.Length; k++)
        {
            double amperes = 0;
            if (IsOut(k))
            {
                slope[k] = 0;
            }
            else
            {
                amperes = ElementCurrent.At(Elements[k], Across(k), held[k], floor, out slope[k]);
                f[positive[k]] += amperes;
                f[negative[k]] -= amperes;
            }

            Amperes[k] = amperes;
        }

        f[f.Length - 1] = 0;
    }

    // Returns the largest diagonal. Where clipped, no load counts as drawing less at more voltage.
    private double Fill(bool clipped)
    {
        factor.Clear();
        for (int k = 0; k < slope.Length; k++)
        {
            double siemens = slope[k];
            Add(k, siemens > leastSiemens || (siemens < 0 && !clipped) ? siemens : leastSiemens);
        }

        double most = 0;
        for (int k = 0; k < factor.Diagonal.Length - 1; k++)
        {
            most = Math.Max(most, factor.Diagonal[k]);
        }

        return most;
    }

    private void Add(int k, double siemens)
    {
        if (positive[k] == negative[k])
        {
            return;
        }

        factor.Diagonal[positive[k]] += siemens;
        factor.Diagonal[negative[k]] += siemens;
        factor.Lower[entry[k]] -= siemens;
    }
}
