using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A batch sampled: every check over harnesses or circuits whose parts lie anywhere within their tolerances.</summary>
/// <remarks>The same seed gives the same answer to the last bit, on any number of threads. Immutable. What is sampled is never a guarantee: <see cref="HarnessBounds"/> gives one.</remarks>
public sealed class ToleranceSample
{
    private ToleranceSample(Tolerances tolerances, int seed, int count, int failing, IReadOnlyList<SampledCheck> checks)
    {
        (Tolerances, Seed, Count, Checks) = (tolerances, seed, count, checks);
        Whole = new SampledCheck("", "anything", "", count, failing, 0, []);
    }

    /// <summary>What was varied.</summary>
    public Tolerances Tolerances { get; }

    /// <summary>The seed.</summary>
    public int Seed { get; }

    /// <summary>How many were sampled.</summary>
    public int Count { get; }

    /// <summary>How many fail in any check, as a check of its own.</summary>
    public SampledCheck Whole { get; }

    /// <summary>Every check, those that fail most often first.</summary>
    public IReadOnlyList<SampledCheck> Checks { get; }

    /// <summary>Samples a harness.</summary>
    /// <param name="harness">The harness; every wire with its conductor, every fuse with its rating.</param>
    /// <param name="tolerances">What varies.</param>
    /// <param name="count">How many samples, 1 to 10 000 000.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="threads">At most so many at a time; 0 for one a processor.</param>
    /// <param name="progress">Is told the share that is done.</param>
    /// <param name="cancellation">Ends a long call.</param>
    /// <returns>The sample.</returns>
    /// <exception cref="ArgumentNullException">The harness or the tolerances are null.</exception>
    /// <exception cref="ArgumentException">A source can exceed 60 V even at its nominal.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="InvalidOperationException">A wire has no conductor, or a fuse no rating.</exception>
    /// <exception cref="OperationCanceledException">The call was ended.</exception>
    public static ToleranceSample OfHarness(
        Harness harness, Tolerances tolerances, int count, int seed, int threads = 0, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        _ = harness ?? throw new ArgumentNullException(nameof(harness));
        HarnessDesigner.Refuse(harness);
        harness.RequireSized();
        harness.RequireFused();
        return Run(tolerances, count, seed, threads, progress, draw =>
        {
            Harness drawn = DrawnHarness.Of(harness, draw);
            return [.. new HarnessVerifier(drawn).Run(cancellation).Select(c => (c.Place + (c.Wire is null || c.Wire == c.Place ? "" : ", wire " + c.Wire), c.Result))];
        }, cancellation);
    }

    /// <summary>Samples a circuit: the wire and fuse of a design, in parts as they come.</summary>
    /// <param name="design">The design or verification.</param>
    /// <param name="tolerances">What varies. The way back varies with the way out; a shared way back stays.</param>
    /// <param name="count">How many samples, 1 to 10 000 000.</param>
    /// <param name="seed">The seed.</param>
    /// <param name="threads">At most so many at a time; 0 for one a processor.</param>
    /// <param name="progress">Is told the share that is done.</param>
    /// <param name="cancellation">Ends a long call.</param>
    /// <returns>The sample.</returns>
    /// <exception cref="ArgumentNullException">The design or the tolerances are null.</exception>
    /// <exception cref="ArgumentException">The design verified wiring of several stretches: say that as a harness.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The call was ended.</exception>
    public static ToleranceSample OfCircuit(
        CircuitDesign design, Tolerances tolerances, int count, int seed, int threads = 0, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        _ = design ?? throw new ArgumentNullException(nameof(design));
        if (design.Existing is not null)
        {
            throw new ArgumentException("Wiring of several stretches is sampled as a harness.", nameof(design));
        }

        return Run(tolerances, count, seed, threads, progress, draw =>
            [.. CircuitDesigner.Verify(DrawnCircuit.Of(design.Requirements, draw), design.Wire, design.Fuse, design.Rules).Checks.Select(c => ("", c))], cancellation);
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Accept.Text(Count)} samples: {Accept.Text(Whole.Failed)} fail, at most {Accept.Short(100 * (double)Whole.AtMost().DecimalFractions)} % of the batch with 95 % confidence";

    private static ToleranceSample Run(
        Tolerances tolerances, int count, int seed, int threads, IProgress<double>? progress, Func<ToleranceDraw, List<(string Place, CheckResult Result)>> ask, CancellationToken cancellation)
    {
        _ = tolerances ?? throw new ArgumentNullException(nameof(tolerances));
        _ = Accept.Count(count, 1, 10_000_000, nameof(count));
        _ = Accept.Count(threads, 0, 1024, nameof(threads));
        Tally tally = new();
        const int chunk = 256;
        ParallelOptions options = new() { CancellationToken = cancellation, MaxDegreeOfParallelism = threads == 0 ? -1 : threads };
        for (int start = 0; start < count; start += chunk)
        {
            // In pieces that are counted in order: which thread was first never shows.
            List<(string Place, CheckResult Result)>[] piece = new List<(string, CheckResult)>[Math.Min(chunk, count - start)];
            int first = start;
            _ = Parallel.For(0, piece.Length, options, k => piece[k] = ask(new ToleranceDraw(tolerances, seed, first + k)));
            foreach (List<(string Place, CheckResult Result)> sample in piece)
            {
                tally.Add(sample);
            }

            progress?.Report((double)(start + piece.Length) / count);
        }

        return new ToleranceSample(tolerances, seed, count, tally.Failing, tally.Checks(count));
    }

    private sealed class Tally
    {
        private readonly Dictionary<(string Place, string Id), Entry> entries = [];

        internal int Failing { get; private set; }

        internal void Add(List<(string Place, CheckResult Result)> sample)
        {
            // A kind may stand at one place more than once, a main fuse after another: a sample counts once, by the worst of them.
            foreach (IGrouping<(string Place, string Id), (string Place, CheckResult Result)> group in sample.GroupBy(s => (s.Place, s.Result.Kind!.Id)))
            {
                if (!entries.TryGetValue(group.Key, out Entry? entry))
                {
                    entries.Add(group.Key, entry = new Entry(group.Key.Place, group.First().Result.Kind!));
                }

                bool fails = group.Any(s => s.Result.Outcome == CheckOutcome.Fail);
                entry.Failed += fails ? 1 : 0;
                entry.Undetermined += !fails && group.Any(s => s.Result.Outcome == CheckOutcome.Undetermined) ? 1 : 0;
                entry.Values.AddRange(group.Select(s => s.Result.Value).OfType<double>());
            }

            Failing += sample.Any(s => s.Result.Outcome == CheckOutcome.Fail) ? 1 : 0;
        }

        internal System.Collections.ObjectModel.ReadOnlyCollection<SampledCheck> Checks(int count) => Array.AsReadOnly([.. entries.Values
            .OrderByDescending(e => e.Failed).ThenBy(e => e.Place, StringComparer.Ordinal).ThenBy(e => e.Kind.Id, StringComparer.Ordinal)
            .Select(e => new SampledCheck(e.Place, e.Kind.Name, e.Kind.Unit, count, e.Failed, e.Undetermined, Sorted(e.Values)))]);

        private static double[] Sorted(List<double> values)
        {
            double[] sorted = [.. values];
            Array.Sort(sorted);
            return sorted;
        }
    }

    private sealed class Entry(string place, CheckKind kind)
    {
        internal string Place => place;

        internal CheckKind Kind => kind;

        internal int Failed { get; set; }

        internal int Undetermined { get; set; }

        internal List<double> Values { get; } = [];
    }
}
