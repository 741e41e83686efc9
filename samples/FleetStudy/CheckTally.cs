namespace FleetStudy;

/// <summary>What the variants of a study say to one check.</summary>
[GenerateSerializer, Alias("FleetStudy.CheckTally")]
internal sealed class CheckTally
{
    /// <summary>So many of the worst are kept.</summary>
    public const int Kept = 3;

    [Id(0)]
    private readonly List<WorstCase> worst = [];

    [Id(1)]
    private readonly Histogram margins;

    public CheckTally(double low, double step) => margins = new Histogram(low, step);

    private CheckTally(CheckTally from)
    {
        (Asked, Failed, Undetermined, PiecesFailed) = (from.Asked, from.Failed, from.Undetermined, from.PiecesFailed);
        worst.AddRange(from.worst);
        margins = from.margins.Copy();
    }

    [Id(2)]
    public long Asked { get; private set; }

    [Id(3)]
    public long Failed { get; private set; }

    [Id(4)]
    public long Undetermined { get; private set; }

    /// <summary>Of the pieces drawn within the tolerances.</summary>
    [Id(5)]
    public long PiecesFailed { get; set; }

    public Histogram Margins => margins;

    public IReadOnlyList<WorstCase> Worst => worst;

    public void Count(bool fails, bool isUndetermined, double? margin, long variant, string place)
    {
        Asked++;
        Failed += fails ? 1 : 0;
        Undetermined += isUndetermined && !fails ? 1 : 0;
        if (margin is { } share)
        {
            margins.Add(share);
        }

        if (fails)
        {
            Keep(new WorstCase(margin ?? -1, variant, place));
        }
    }

    public void Merge(CheckTally other)
    {
        Asked += other.Asked;
        Failed += other.Failed;
        Undetermined += other.Undetermined;
        PiecesFailed += other.PiecesFailed;
        margins.Merge(other.margins);
        foreach (WorstCase one in other.worst)
        {
            Keep(one);
        }
    }

    public CheckTally Copy() => new(this);

    private void Keep(WorstCase one)
    {
        int at = worst.BinarySearch(one);
        if (at < 0 && ~at < Kept)
        {
            worst.Insert(~at, one);
            worst.RemoveRange(Math.Min(Kept, worst.Count), Math.Max(0, worst.Count - Kept));
        }
    }
}
