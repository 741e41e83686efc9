using System.Numerics;

namespace LowVoltage.Calc.Bulk;

/// <summary>A formula on a vector of values of each input. A struct, so that the loop around it is compiled for it.</summary>
/// <remarks>The operations stand in the order of the typed calls' kernels, which gives the same bits.</remarks>
internal interface IBulkKernel
{
    /// <summary>How many inputs it has, 2 to 5; the others are not read.</summary>
    int Inputs { get; }

    /// <summary>Whether the least value of every input is zero.</summary>
    bool FromZero { get; }

    /// <summary>Whether results that equal <see cref="None"/> are counted.</summary>
    bool Counts { get; }

    /// <summary>The result that stands for "there is none".</summary>
    double None { get; }

    Vector<double> Evaluate(Vector<double> a, Vector<double> b, Vector<double> c, Vector<double> d, Vector<double> e);
}
