namespace FleetStudy;

/// <summary>One of the worst variants in a check: how far beyond the limit, and where.</summary>
/// <param name="Margin">Share of the limit that is left; the least is the worst.</param>
/// <param name="Variant">Its number.</param>
/// <param name="Place">The wire, fuse, load or problem.</param>
[GenerateSerializer, Immutable, Alias("FleetStudy.WorstCase")]
internal sealed record WorstCase([property: Id(0)] double Margin, [property: Id(1)] long Variant, [property: Id(2)] string Place) : IComparable<WorstCase>
{
    // The margin first, then the lower number, and no two of a check have the same number: one order, whoever was first.
    public int CompareTo(WorstCase? other) => other is null ? -1 : Margin != other.Margin ? Margin.CompareTo(other.Margin) : Variant.CompareTo(other.Variant);
}
