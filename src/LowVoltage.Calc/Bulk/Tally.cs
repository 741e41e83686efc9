using System.Numerics;
using System.Runtime.InteropServices;

namespace LowVoltage.Calc.Bulk;

/// <summary>Counts the results that stand for "there is none".</summary>
internal static class Tally
{
    /// <summary>How many values equal one value.</summary>
    internal static int Of(ReadOnlySpan<double> values, double sought)
    {
        ReadOnlySpan<Vector<double>> whole = MemoryMarshal.Cast<double, Vector<double>>(values);
        Vector<double> wanted = new(sought);
        Vector<long> found = Vector<long>.Zero;
        foreach (Vector<double> lanes in whole)
        {
            // A true comparison is −1 in its lane.
            found -= Vector.Equals(lanes, wanted);
        }

        long count = Vector.Dot(found, Vector<long>.One);
        for (int i = whole.Length * Vector<double>.Count; i < values.Length; i++)
        {
            count += values[i] == sought ? 1 : 0;
        }

        return (int)count;
    }
}
