namespace FleetStudy;

/// <summary>Leads one study: hands out its pieces, adds up their tallies, keeps both. Its key is the study.</summary>
[Alias("FleetStudy.ICoordinator")]
internal interface ICoordinator : IGrainWithStringKey
{
    /// <summary>Starts the study, or goes on with it.</summary>
    [Alias("Start"), ResponseTimeout("00:00:10")]
    Task Start(StudySpec spec);

    /// <summary>How far it is. Whoever asks wakes the study up after a crash: it goes on with what was kept.</summary>
    [Alias("Progress"), ResponseTimeout("00:00:03")]
    Task<StudyProgress> Progress();

    /// <summary>What was found so far.</summary>
    [Alias("Result"), ResponseTimeout("00:00:10")]
    Task<Tally> Result();

    /// <summary>Stops the pieces that are being done and keeps those that are.</summary>
    [Alias("Stop"), ResponseTimeout("00:00:10")]
    Task<StudyProgress> Stop();
}
