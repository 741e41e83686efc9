namespace FleetStudy;

/// <summary>One piece of a study, done on whichever silo it was placed. Its key is the study and the number of the piece.</summary>
[Alias("FleetStudy.IPieceGrain")]
internal interface IPieceGrain : IGrainWithStringKey
{
    /// <summary>Calculates the piece.</summary>
    // Far longer than a piece takes: a time-out below that would do every piece again and again. That a silo has died is told much sooner.
    [Alias("Calculate"), ResponseTimeout("00:10:00")]
    Task<Tally> Calculate(StudySpec spec, int piece, CancellationToken stop);
}
