namespace FleetStudy;

/// <summary>The calculation of one piece of a study, without anything of the cluster in it.</summary>
internal static class Piece
{
    /// <summary>Studies the variants of a piece. The same specification and number give the same tally, wherever and how often it is done.</summary>
    /// <exception cref="OperationCanceledException">The piece was stopped; nothing of it counts.</exception>
    public static Tally Calculate(StudySpec spec, int piece, CancellationToken stop)
    {
        Study study = Study.Named(spec.Study);
        Tally tally = new();
        long first = (long)piece * spec.PieceSize, end = Math.Min(first + spec.PieceSize, spec.Variants);
        for (long place = first; place < end; place++)
        {
            stop.ThrowIfCancellationRequested();
            long variant = study.VariantAt(place);
            try
            {
                study.Count(spec, variant, tally, stop);
            }
            catch (Exception refused) when (refused is not OperationCanceledException and not OutOfMemoryException and not IOException and not UnauthorizedAccessException)
            {
                // One that cannot be studied is named and stops nothing. A full disk is not the variant's doing.
                tally.CountBad(variant, refused.Message.Split('\n')[0].TrimEnd('\r'));
            }
        }

        return tally;
    }
}
