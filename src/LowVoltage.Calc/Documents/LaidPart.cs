using System.Text.Json;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Documents;

/// <summary>The existing wiring, in a document: one size, or stretches.</summary>
internal static class LaidPart
{
    private static readonly Member<Conductor> Wire = Member.Needed<Conductor>("conductor", ConductorPart.Form, "The conductor of the feed, and of a way back that is a wire like it.");
    private static readonly Member<Segment[]> Feed = Member.Needed<Segment[]>("feed", SegmentPart.List, "The stretches of the way out.");
    private static readonly Member<ReturnPath> Return = Member.Needed<ReturnPath>("return", ReturnPart.Form, "The way back.");
    private static readonly Member<Joint[]> FeedJoints = Member.Optional<Joint[]>("feed_joints", JointPart.List, "Joints on the way out; left out: none.");
    private static readonly Member<Joint[]> ReturnJoints = Member.Optional<Joint[]>("return_joints", JointPart.List, "Joints on the way back; left out: none.");
    private static readonly Member<FuseRating> Fuse = Member.Optional<FuseRating>("fuse", FusePart.Form, "The fuse; left out: there is none.");

    internal static EitherForm Form { get; } = new(
        "laid",
        "The existing wiring: one size, or stretches.",
        null,
        new ObjectForm("laid_size", "One size, feed and wire return alike.", at => new LaidWiring(at.Get(Wire), null, at.OrNull(Fuse)), [Wire, Fuse]),
        new ObjectForm("laid_path", "Stretches of wire out and back, with their joints. They stand for the circuit's feed, return and joints.", Make, [Feed, Return, FeedJoints, ReturnJoints, Fuse]));

    internal static void Write(Utf8JsonWriter json, LaidWiring laid)
    {
        json.WriteStartObject();
        if (laid.Path is { } path)
        {
            json.PutAll(Feed, path.FeedArray, SegmentPart.Write);
            json.Put(Return, path.Return, ReturnPart.Write);
            json.PutAll(FeedJoints, path.FeedJoints, JointPart.Write);
            json.PutAll(ReturnJoints, path.ReturnJoints, JointPart.Write);
        }
        else
        {
            json.Put(Wire, laid.Wire!, ConductorPart.Write);
        }

        if (laid.Fuse is { } fuse)
        {
            json.Put(Fuse, fuse, FusePart.Write);
        }

        json.WriteEndObject();
    }

    private static LaidWiring Make(Values at)
    {
        CircuitPath path = CircuitPath.Create(at.Get(Feed), at.Get(Return)).WithFeedJoints(at.Or(FeedJoints, [])).WithReturnJoints(at.Or(ReturnJoints, []));
        return new LaidWiring(null, path, at.OrNull(Fuse));
    }
}
