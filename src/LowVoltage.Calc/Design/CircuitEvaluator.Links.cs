using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Design;

/// <content>The way out and back as a chain of stretches.</content>
internal sealed partial class CircuitEvaluator
{
    /// <summary>Every stretch of conductor with the current of other circuits in it, A.</summary>
    internal IEnumerable<(ChainLink Link, double OtherAmperes)> Stretches =>
        links.Select(link => (link, 0.0)).Concat(shared.Select(link => (link, othersAmperes)));

    internal PreparedRating Rating => rating;

    /// <summary>The voltage that other circuits take in a shared return, V.</summary>
    internal double SharedVolts => sharedVolts;

    private static double SharedOhms(ReturnPath back, double celsius) => back.Kind switch
    {
        ReturnKind.SharedResistance => back.Ohms,
        ReturnKind.SharedSegments => back.Segments.Sum(segment => segment.OhmsAt(celsius)),
        _ => 0,
    };

    private static double OhmsOf(IReadOnlyList<Joint> joints)
    {
        double ohms = 0;
        for (int i = 0; i < joints.Count; i++)
        {
            ohms += joints[i].Ohms;
        }

        return ohms;
    }

    private static ChainLink[] CandidateLinks(CircuitRequirements requirements)
    {
        ReturnPath back = requirements.Return;
        Segment[] own = back.Kind == ReturnKind.Segments ? [.. back.Segments] : [];
        ChainLink[] links = new ChainLink[own.Length + 1];
        links[0] = new ChainLink { Meters = requirements.FeedMeters, Parallel = 1 };
        for (int i = 0; i < own.Length; i++)
        {
            links[i + 1] = Link(own[i]);
        }

        return links;
    }

    private static ChainLink[] PathLinks(CircuitPath path) =>
        [.. path.FeedArray.Select(Link), .. path.Return.IsShared ? [] : path.BackArray.Select(Link)];

    private static ChainLink Link(Segment segment) => new() { Conductor = segment.Conductor, Meters = segment.Meters, Parallel = segment.Parallel };
}
