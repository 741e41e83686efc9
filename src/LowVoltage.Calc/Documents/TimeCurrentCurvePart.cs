using System.Text.Json;
using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A maker's time-current curve in a document.</summary>
internal static class TimeCurrentCurvePart
{
    private static readonly Member<double> Amperes = Member.Needed<double>("current_A", Ranges.Amperes, "Constant current, A.");
    private static readonly Member<double> Seconds = Member.Needed<double>("time_s", Ranges.Seconds, "Operating time at that current, s.");

    private static readonly ObjectForm Point = new(
        "time_current_point",
        "An operating time at a constant current.",
        at => TimeCurrentPoint.Create(ElectricCurrent.FromAmperes(at.Get(Amperes)), Duration.FromSeconds(at.Get(Seconds))),
        [Amperes, Seconds]);

    private static readonly Member<double> Rating = Member.Needed<double>("rating_A", Ranges.Amperes, "The rating that the curve is of, A; one of the series.");
    private static readonly Member<TimeCurrentPoint[]> Longest = Member.Needed<TimeCurrentPoint[]>("longest", new ListForm<TimeCurrentPoint>(Point, 1), "Longest (total) times by rising current, from the conventional fusing current.");
    private static readonly Member<TimeCurrentPoint[]> Least = Member.Optional<TimeCurrentPoint[]>("least", new ListForm<TimeCurrentPoint>(Point), "Least (pre-arcing) times by rising current; left out: not known.");
    private static readonly Member<object> NonFusing = Member.Optional<object>("non_fusing", Point, "The current that is carried, and for how long at least.");
    private static readonly Member<bool> Breaker = Member.Optional<bool>("circuit_breaker", FlagForm.Any, "Whether it is a circuit-breaker's: beyond the last point its longest time stays; left out: a fuse's.");

    internal static ObjectForm Form { get; } = new(
        "time_current_curve",
        "The band in which one rating opens.",
        at => new RatedCurve(at.Get(Rating), Make(at)),
        [Rating, Longest, Least, NonFusing, Breaker],
        MemberRule.NotBoth(NonFusing, Breaker));

    internal static void Write(Utf8JsonWriter json, RatedCurve rated)
    {
        json.WriteStartObject();
        json.Put(Rating, rated.Amperes);
        json.PutAll(Longest, Points(rated.Curve.LongestLine), WritePoint);
        if (rated.Curve.LeastLine is { } least)
        {
            json.PutAll(Least, Points(least), WritePoint);
        }

        if (rated.Curve.NonFusing is { } carried)
        {
            json.WritePropertyName(NonFusing.Encoded);
            WritePoint(json, carried);
        }

        json.PutIf(Breaker, rated.Curve.IsBreaker);
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, TimeCurrentPoint point)
    {
        json.WriteStartObject();
        json.Put(Amperes, point.Amperes);
        json.Put(Seconds, point.Seconds);
        json.WriteEndObject();
    }

    private static IEnumerable<TimeCurrentPoint> Points(LogLogLine line) => Enumerable.Range(0, line.Count).Select(i => new TimeCurrentPoint(line.X(i), line.Y(i)));

    private static TimeCurrentCurve Make(Values at)
    {
        TimeCurrentPoint[] least = at.Or(Least, []), longest = at.Get(Longest);
        return at.Or(Breaker, false) ? TimeCurrentCurve.CreateCircuitBreaker(least, longest)
            : at.OrNull(NonFusing) is { } carried ? TimeCurrentCurve.Create(least, longest, (TimeCurrentPoint)carried)
            : TimeCurrentCurve.Create(least, longest);
    }

    /// <summary>A curve and the rating that it is of.</summary>
    internal sealed record RatedCurve(double Amperes, TimeCurrentCurve Curve);
}
