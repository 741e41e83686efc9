namespace FleetStudy;

/// <summary>What is kept of a study, in one record: which pieces are done and what they add up to. Both are written at once, so that no piece counts twice or is lost.</summary>
[GenerateSerializer, Alias("FleetStudy.StudyRecord")]
internal sealed class StudyRecord
{
    [Id(0)]
    public StudySpec? Spec { get; set; }

    [Id(1)]
    public bool[] Done { get; set; } = [];

    [Id(2)]
    public Tally Total { get; set; } = new();

    /// <summary>Stopped by a person: nobody but a new start wakes it up.</summary>
    [Id(3)]
    public bool IsStopped { get; set; }

    public int DoneCount => Done.Count(d => d);

    // A copy is what gets written: the grain goes on counting while the storage takes its time.
    public StudyRecord Copy() => new() { Spec = Spec, Done = [.. Done], Total = Total.Copy(), IsStopped = IsStopped };
}
