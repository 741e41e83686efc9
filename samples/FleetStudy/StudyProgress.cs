namespace FleetStudy;

/// <summary>How far a study is.</summary>
/// <param name="Kept">Pieces that are kept: no crash takes them away.</param>
/// <param name="Pieces">All pieces.</param>
/// <param name="Redone">Pieces that were handed out again, because their silo was lost or failed.</param>
/// <param name="Failure">Why the study cannot go on; null while it can.</param>
/// <param name="Silos">Silos that take part.</param>
[GenerateSerializer, Immutable, Alias("FleetStudy.StudyProgress")]
internal sealed record StudyProgress([property: Id(0)] int Kept, [property: Id(1)] int Pieces, [property: Id(2)] int Redone, [property: Id(3)] string? Failure, [property: Id(4)] int Silos)
{
    public bool IsFinished => Kept == Pieces && Pieces > 0;
}
