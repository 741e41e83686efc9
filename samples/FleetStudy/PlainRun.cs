namespace FleetStudy;

/// <summary>The whole study with <see cref="Parallel.For(int, int, Action{int})"/>, in memory: what the cluster is measured against, and held to.</summary>
internal static class PlainRun
{
    public static Tally Go(StudySpec spec, Action<double>? progress, CancellationToken stop)
    {
        Tally total = new();
        int done = 0;
        _ = Parallel.For(0, spec.Pieces, new ParallelOptions { CancellationToken = stop, MaxDegreeOfParallelism = Environment.ProcessorCount }, piece =>
        {
            Tally tally = Piece.Calculate(spec, piece, stop);
            lock (total)
            {
                total.Merge(tally);
                progress?.Invoke((double)++done / spec.Pieces);
            }
        });
        return total;
    }
}
