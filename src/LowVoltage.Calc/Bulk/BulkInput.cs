using System.Numerics;
using System.Runtime.InteropServices;

namespace LowVoltage.Calc.Bulk;

/// <summary>One input of a bulk call: its values, the name of its parameter, and the range of each value.</summary>
internal readonly ref struct BulkInput(ReadOnlySpan<double> values, string name, BulkRange range)
{
    internal ReadOnlySpan<double> Values { get; } = values;

    internal BulkRange Range { get; } = range;

    /// <summary>Refuses another length than that of the results, and memory that partly overlaps theirs.</summary>
    /// <returns>Whether the results are to stand where the input stands.</returns>
    internal bool IsResult(ReadOnlySpan<double> results, string resultsName)
    {
        if (Values.Length != results.Length)
        {
            throw new ArgumentException($"{name} must hold as many values as {resultsName}, {results.Length}; it holds {Values.Length}.", name);
        }

        if (!Values.Overlaps(results, out int offset))
        {
            return false;
        }

        return offset == 0
            ? true
            : throw new ArgumentException($"{resultsName} must be apart from {name} or the very same memory; it overlaps a part of it.", resultsName);
    }

    /// <summary>Refuses the first value outside the range, if there is one.</summary>
    internal void Require()
    {
        int start = 0;
        foreach (Vector<double> values in MemoryMarshal.Cast<double, Vector<double>>(Values))
        {
            if (!Range.HoldsAll(values))
            {
                Require(start, start + Vector<double>.Count);
            }

            start += Vector<double>.Count;
        }

        Require(start, Values.Length);
    }

    private void Require(int start, int end)
    {
        for (int i = start; i < end; i++)
        {
            if (!Range.Holds(Values[i]))
            {
                throw Range.Refusal(name, i, Values[i]);
            }
        }
    }
}
