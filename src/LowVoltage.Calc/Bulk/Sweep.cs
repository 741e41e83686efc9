using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace LowVoltage.Calc.Bulk;

/// <summary>Runs a formula over whole spans: checks what it is given, then vector by vector.</summary>
/// <remarks>
/// <para>The range check costs one or two instructions an input and vector. The upper half of a double's bits, as an unsigned whole number, rises with the
/// double, and is largest for what is negative, infinite or not a number. So the largest upper half of (value − least) says whether a value may be outside.
/// Only then are the values compared one by one: with the exact limits, in the order of the inputs, to name the first that is outside.</para>
/// <para>The answer of a run is how many results stand for "there is none", for a kernel that has such.</para>
/// <para>Results that stand where an input stands are checked in a pass of their own, before the first is written over.</para>
/// </remarks>
internal static class Sweep
{
    internal static int Run<TKernel>(TKernel kernel, in BulkInput a, in BulkInput b, Span<double> results, string resultsName)
        where TKernel : struct, IBulkKernel => Run(kernel, a, b, default, default, default, results, resultsName);

    internal static int Run<TKernel>(TKernel kernel, in BulkInput a, in BulkInput b, in BulkInput c, Span<double> results, string resultsName)
        where TKernel : struct, IBulkKernel => Run(kernel, a, b, c, default, default, results, resultsName);

    internal static int Run<TKernel>(TKernel kernel, in BulkInput a, in BulkInput b, in BulkInput c, in BulkInput d, Span<double> results, string resultsName)
        where TKernel : struct, IBulkKernel => Run(kernel, a, b, c, d, default, results, resultsName);

    internal static int Run<TKernel>(
        TKernel kernel, in BulkInput a, in BulkInput b, in BulkInput c, in BulkInput d, in BulkInput e, Span<double> results, string resultsName)
        where TKernel : struct, IBulkKernel
    {
        int inputs = kernel.Inputs;
        bool inPlace = a.IsResult(results, resultsName) | b.IsResult(results, resultsName)
            | (inputs > 2 && c.IsResult(results, resultsName)) | (inputs > 3 && d.IsResult(results, resultsName))
            | (inputs > 4 && e.IsResult(results, resultsName));
        if (inPlace || results.Length < Vector<double>.Count)
        {
            Require(inputs, a, b, c, d, e);
        }

        if (results.Length < Vector<double>.Count)
        {
            return Short(kernel, a, b, c, d, e, results);
        }

        if (Doubtful(kernel, a, b, c, d, e, results, out int none) && !inPlace)
        {
            Require(inputs, a, b, c, d, e);
        }

        return none;
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Require(int inputs, in BulkInput a, in BulkInput b, in BulkInput c, in BulkInput d, in BulkInput e)
    {
        a.Require();
        b.Require();
        if (inputs > 2)
        {
            c.Require();
        }

        if (inputs > 3)
        {
            d.Require();
        }

        if (inputs > 4)
        {
            e.Require();
        }
    }

    // Fewer values than a vector has lanes: one vector, filled up with ones that nobody reads.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int Short<TKernel>(
        TKernel kernel, in BulkInput a, in BulkInput b, in BulkInput c, in BulkInput d, in BulkInput e, Span<double> results)
        where TKernel : struct, IBulkKernel
    {
        Span<double> filled = stackalloc double[Vector<double>.Count];
        Vector<double> answers = kernel.Evaluate(Fill(a, filled), Fill(b, filled), Fill(c, filled), Fill(d, filled), Fill(e, filled));
        for (int i = 0; i < results.Length; i++)
        {
            results[i] = answers[i];
        }

        return CountNone(kernel, results);
    }

    private static int CountNone<TKernel>(TKernel kernel, ReadOnlySpan<double> results)
        where TKernel : struct, IBulkKernel
    {
        int none = 0;
        for (int i = 0; kernel.Counts && i < results.Length; i++)
        {
            none += results[i] == kernel.None ? 1 : 0;
        }

        return none;
    }

    private static Vector<double> Fill(in BulkInput input, Span<double> filled)
    {
        filled.Fill(1);
        input.Values.CopyTo(filled);
        return Load(ref MemoryMarshal.GetReference(filled), 0);
    }

    // Computes everything; the answer is whether a value may have been outside its range.
    private static bool Doubtful<TKernel>(
        TKernel kernel, in BulkInput a, in BulkInput b, in BulkInput c, in BulkInput d, in BulkInput e, Span<double> results, out int none)
        where TKernel : struct, IBulkKernel
    {
        int inputs = kernel.Inputs;
        bool shift = !kernel.FromZero;
        ref double a0 = ref First(a), b0 = ref First(b), c0 = ref First(c), d0 = ref First(d), e0 = ref First(e), r0 = ref MemoryMarshal.GetReference(results);
        Vector<double> aLeast = new(a.Range.Least), bLeast = new(b.Range.Least), cLeast = new(c.Range.Least), dLeast = new(d.Range.Least), eLeast = new(e.Range.Least);
        Vector<uint> aSeen = default, bSeen = default, cSeen = default, dSeen = default, eSeen = default;

        // The last vector comes first and is written last: it overlaps the one before it, whose input the results may replace.
        nint count = Vector<double>.Count, last = results.Length - count;
        Vector<double> end = kernel.Evaluate(
            Take(ref a0, last, shift, aLeast, ref aSeen),
            Take(ref b0, last, shift, bLeast, ref bSeen),
            inputs > 2 ? Take(ref c0, last, shift, cLeast, ref cSeen) : default,
            inputs > 3 ? Take(ref d0, last, shift, dLeast, ref dSeen) : default,
            inputs > 4 ? Take(ref e0, last, shift, eLeast, ref eSeen) : default);
        Vector<double> noResult = new(kernel.None);
        Vector<long> found = default;
        nint i = 0;
        for (; i < last; i += count)
        {
            Vector<double> answers = kernel.Evaluate(
                Take(ref a0, i, shift, aLeast, ref aSeen),
                Take(ref b0, i, shift, bLeast, ref bSeen),
                inputs > 2 ? Take(ref c0, i, shift, cLeast, ref cSeen) : default,
                inputs > 3 ? Take(ref d0, i, shift, dLeast, ref dSeen) : default,
                inputs > 4 ? Take(ref e0, i, shift, eLeast, ref eSeen) : default);
            Store(ref r0, i, answers);

            // A true comparison is −1 in its lane.
            found -= kernel.Counts ? Vector.Equals(answers, noResult) : default;
        }

        Store(ref r0, last, end);
        none = (int)Vector.Dot(found, Vector<long>.One) + CountNone(kernel, results.Slice((int)i));
        return Exceeds(aSeen, a.Range) | Exceeds(bSeen, b.Range) | (inputs > 2 && Exceeds(cSeen, c.Range))
            | (inputs > 3 && Exceeds(dSeen, d.Range)) | (inputs > 4 && Exceeds(eSeen, e.Range));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Take(ref double first, nint at, bool shift, Vector<double> least, ref Vector<uint> seen)
    {
        Vector<double> values = Load(ref first, at);
        seen = Vector.Max(seen, Vector.AsVectorUInt32(shift ? values - least : values));
        return values;
    }

    // A value whose upper half equals that of the limit may be either side of it: it counts as doubtful.
    private static bool Exceeds(Vector<uint> seen, BulkRange range)
    {
        ulong upper = (ulong)BitConverter.DoubleToInt64Bits(range.Most - range.Least) >> 32;
        Vector<uint> limit = Vector.AsVectorUInt32(new Vector<ulong>(((upper - 1) << 32) | uint.MaxValue));
        return Vector.GreaterThanAny(seen, limit);
    }

    private static ref double First(in BulkInput input) => ref MemoryMarshal.GetReference(input.Values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Load(ref double first, nint at) =>
        Unsafe.ReadUnaligned<Vector<double>>(ref Unsafe.As<double, byte>(ref Unsafe.Add(ref first, at)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Store(ref double first, nint at, Vector<double> values) =>
        Unsafe.WriteUnaligned(ref Unsafe.As<double, byte>(ref Unsafe.Add(ref first, at)), values);
}
