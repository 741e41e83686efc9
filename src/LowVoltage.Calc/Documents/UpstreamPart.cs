using System.Text.Json;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A main fuse or breaker in a document.</summary>
internal static class UpstreamPart
{
    private static readonly Member<FuseRating> Fuse = Member.Needed<FuseRating>("fuse", FusePart.Form, "The device: a rating of a series, or of a series of the caller's with this one rating.");
    private static readonly Member<double> Upstream = Member.Optional<double>("supply_lead_ohm", Ranges.OhmsOrZero, "Resistance of the supply lead between source and device, out and back, Ω; left out: not known.");
    private static readonly Member<double> Distance = Member.Optional<double>("distance_m", Ranges.MetersOrZero, "Conductor between source and device, m; left out: not known.");
    private static readonly Member<bool> Sheathed = Member.Optional<bool>("sheathed", FlagForm.Any, "Whether that conductor is sheathed over its whole length; left out: false.");
    private static readonly Member<double> Ambient = Member.Optional<double>("ambient_C", Ranges.Ambient, "Air around the device, °C; left out: that of the circuit's place.");
    private static readonly Member<double> Through = Member.Optional<double>("let_through_A2s", Ranges.JouleIntegrals, "Greatest Joule integral that it lets through, A²·s; left out: by its curve.");
    private static readonly Member<double> Behind = Member.Optional<double>("withstand_behind_A2s", Ranges.JouleIntegrals, "Joule integral that a device behind it withstands beyond its own breaking capacity, A²·s; left out: not known.");
    private static readonly Member<double> Melting = Member.Optional<double>("least_melting_A2s", Ranges.JouleIntegrals, "Least Joule integral that opens it at any current, A²·s; left out: by its curve.");

    private static readonly Member<Segment[]> Feed = Member.Needed<Segment[]>("feed", SegmentPart.List, "The stretches of the way out.");
    private static readonly Member<ReturnPath> Return = Member.Needed<ReturnPath>("return", ReturnPart.Form, "The way back.");
    private static readonly Member<Joint[]> FeedJoints = Member.Optional<Joint[]>("feed_joints", JointPart.List, "Joints on the way out; left out: none.");
    private static readonly Member<Joint[]> ReturnJoints = Member.Optional<Joint[]>("return_joints", JointPart.List, "Joints on the way back; left out: none.");

    private static readonly ObjectForm LeadForm = new(
        "supply_lead",
        "A part of the supply lead: its wire out and back.",
        at => CircuitPath.Create(at.Get(Feed), at.Get(Return)).WithFeedJoints(at.Or(FeedJoints, [])).WithReturnJoints(at.Or(ReturnJoints, [])),
        [Feed, Return, FeedJoints, ReturnJoints]);

    private static readonly Member<CircuitPath> Lead = Member.Optional<CircuitPath>("lead", LeadForm, "The lead behind it, up to the next device or the circuit's fuse; left out: not known.");

    internal static ObjectForm Form { get; } = new(
        "supply_protection", "A fuse or breaker before the circuit's own fuse, and the lead behind it.", Make, [Fuse, Upstream, Distance, Sheathed, Ambient, Lead, Through, Behind, Melting]);

    internal static ListForm<UpstreamProtection> List { get; } = new(Form);

    internal static void Write(Utf8JsonWriter json, UpstreamProtection device)
    {
        json.WriteStartObject();
        json.Put(Fuse, device.Rating, FusePart.Write);
        json.PutIf(Upstream, device.UpstreamOhms);
        json.PutIf(Distance, device.DistanceMeters);
        json.PutIf(Sheathed, device.Sheathed);
        json.PutIf(Ambient, device.AmbientCelsius);
        if (device.Lead is { } lead)
        {
            json.Put(Lead, lead, WriteLead);
        }

        json.PutIf(Through, device.LetThrough?.AmpereSquaredSeconds);
        json.PutIf(Behind, device.WithstandBehind?.AmpereSquaredSeconds);
        json.PutIf(Melting, device.LeastMelting?.AmpereSquaredSeconds);
        json.WriteEndObject();
    }

    private static void WriteLead(Utf8JsonWriter json, CircuitPath lead)
    {
        json.WriteStartObject();
        json.PutAll(Feed, lead.FeedArray, SegmentPart.Write);
        json.Put(Return, lead.Return, ReturnPart.Write);
        json.PutAll(FeedJoints, lead.FeedJoints, JointPart.Write);
        json.PutAll(ReturnJoints, lead.ReturnJoints, JointPart.Write);
        json.WriteEndObject();
    }

    private static UpstreamProtection Make(Values at) => UpstreamProtection.Fuse(at.Get(Fuse))
        .WithUpstream(at.Maybe(Upstream) is { } ohms ? ElectricResistance.FromOhms(ohms) : null)
        .WithDistance(at.Maybe(Distance) is { } meters ? Length.FromMeters(meters) : null, at.Or(Sheathed, false))
        .WithAmbient(at.Maybe(Ambient) is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null)
        .WithLead(at.OrNull(Lead))
        .WithLetThrough(Joules(at.Maybe(Through)), Joules(at.Maybe(Behind)))
        .WithLeastMelting(Joules(at.Maybe(Melting)));

    private static JouleIntegral? Joules(double? value) => value is { } joules ? JouleIntegral.FromAmpereSquaredSeconds(joules) : null;
}
