using System.Text.Json;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A circuit in a document: requirements, rules and the existing wiring.</summary>
internal static class CircuitPart
{
    private static readonly Member<string> Name = Member.Optional<string>("name", TextForm.Any, "What the circuit is called.");
    private static readonly Member<DesignRules> Rules = Member.Needed<DesignRules>("rules", RulesPart.Form, "The rules to follow.");
    private static readonly Member<Source> Source = Member.Needed<Source>("source", SourcePart.Form, "The battery or supply.");
    private static readonly Member<Load> Load = Member.Needed<Load>("load", LoadPart.Form, "What is fed.");
    private static readonly Member<double> Feed = Member.Needed<double>("feed_m", Ranges.Meters, "Length of the feed, one way, from the fuse to the load, m.");
    private static readonly Member<ReturnPath> Return = Member.Needed<ReturnPath>("return", ReturnPart.Form, "The way back.");
    private static readonly Member<Joint[]> Joints = Member.Optional<Joint[]>("joints", JointPart.List, "Joints on the way; left out: none.");
    private static readonly Member<double> Upstream = Member.Optional<double>("supply_lead_ohm", Ranges.OhmsOrZero, "Resistance of the supply lead between source and fuse, out and back, Ω; left out: not known.");
    private static readonly Member<UpstreamProtection[]> Protection = Member.Optional<UpstreamProtection[]>("supply_protection", UpstreamPart.List, "What protects the supply lead, from the source on; left out: not stated, and the lead is not judged.");
    private static readonly Member<double> Distance = Member.Optional<double>("fuse_distance_m", Ranges.MetersOrZero, "Conductor between source and fuse, m; left out: not known.");
    private static readonly Member<bool> Sheathed = Member.Optional<bool>("sheathed_to_fuse", FlagForm.Any, "Whether that conductor is sheathed over its whole length; left out: false.");
    private static readonly Member<double> FuseAmbient = Member.Optional<double>("fuse_ambient_C", Ranges.Ambient, "Air around the fuse, °C; left out: that of the wire's place.");
    private static readonly Member<int> Starts = Member.Optional<int>("starts", new CountForm(1, 100_000), "Starts of the load in the life of its fuse; left out: 10 000.");
    private static readonly Member<Place> Place = Member.Needed<Place>("place", PlacePart.Form, "Where the wire runs.");
    private static readonly Member<InsulationMaterial> Insulation = Member.Needed<InsulationMaterial>("insulation", InsulationPart.Form, "The insulation of the wire.");
    private static readonly Member<double> Wall = Member.Optional<double>("wall_mm", new NumberForm(0, 20, "mm"), "Wall of the insulation, mm; left out: the usual one for the size.");
    private static readonly Member<bool> Intermittent = Member.Optional<bool>("intermittent", FlagForm.Any, "Whether the load runs for short times only; left out: false.");
    private static readonly Member<int> Wires = Member.Optional<int>("parallel_wires", new CountForm(1, 20), "Equal wires side by side each way, at least; left out: 1.");
    private static readonly Member<int> MostWires = Member.Optional<int>("parallel_wires_up_to", new CountForm(1, 20), "The same at most, where the number is to be found; left out: no more than at least.");
    private static readonly Member<DropLimit> Drop = Member.Optional<DropLimit>("drop_limit", DropLimitPart.Form, "An allowance of its own; left out: that of the rules.");
    private static readonly Member<LaidWiring> Laid = Member.Optional<LaidWiring>("laid", LaidPart.Form, "The existing wiring, to be checked; left out: to be designed.");

    internal static Member[] Members { get; } = [Name, Rules, Source, Load, Feed, Return, Joints, Upstream, Protection, Distance, Sheathed, FuseAmbient, Starts, Place, Insulation, Wall, Intermittent, Wires, MostWires, Drop, Laid];

    internal static ObjectForm Form { get; } = new("circuit", "One circuit: what it must do, where it runs, by which rules.", Make, Members);

    internal static void Write(Utf8JsonWriter json, CircuitDocument circuit)
    {
        json.WriteStartObject();
        WriteMembers(json, circuit);
        json.WriteEndObject();
    }

    internal static void WriteMembers(Utf8JsonWriter json, CircuitDocument circuit)
    {
        CircuitRequirements asked = circuit.Requirements;
        json.PutIf(Name, asked.Name);
        json.Put(Rules, circuit.Rules, RulesPart.Write);
        json.Put(Source, asked.Source, SourcePart.Write);
        json.Put(Load, asked.Load, LoadPart.Write);
        json.Put(Feed, asked.FeedMeters);
        json.Put(Return, asked.Return, ReturnPart.Write);
        if (asked.JointsArray.Length > 0)
        {
            json.PutAll(Joints, asked.JointsArray, JointPart.Write);
        }

        json.PutIf(Upstream, asked.UpstreamOhms);
        if (asked.ProtectionArray.Length > 0)
        {
            json.PutAll(Protection, asked.ProtectionArray, UpstreamPart.Write);
        }

        json.PutIf(Distance, asked.FuseDistanceMeters);
        json.PutIf(Sheathed, asked.SheathedToFuse);
        json.PutIf(FuseAmbient, asked.FuseAmbient?.DegreesCelsius);
        json.PutIf(Starts, asked.Starts);
        json.Put(Place, asked.Place, PlacePart.Write);
        json.Put(Insulation, asked.Insulation, InsulationPart.Write);
        json.PutIf(Wall, asked.WallMillimeters);
        json.PutIf(Intermittent, asked.Intermittent);
        json.PutUnless(Wires, asked.ParallelWires.Least, 1);
        json.PutUnless(MostWires, asked.ParallelWires.Most, asked.ParallelWires.Least);
        if (asked.DropLimit is { } drop)
        {
            json.Put(Drop, drop, DropLimitPart.Write);
        }

        if (circuit.Laid is { } laid)
        {
            json.Put(Laid, laid, LaidPart.Write);
        }
    }

    private static ParallelWires Parallel(int least, int? parallelWiresUpTo) => !(parallelWiresUpTo < least)
        ? ParallelWires.Between(least, parallelWiresUpTo ?? least)
        : throw new ArgumentOutOfRangeException(
            nameof(parallelWiresUpTo), parallelWiresUpTo, $"{MostWires.Name} must be at least {Wires.Name}, {Quantities.Accept.Text(least)}; it was {Quantities.Accept.Text(parallelWiresUpTo.Value)}.");

    // The designers would refuse the circuit: what is wrong is where it was written.
    private static double? Whole(double? supplyLead, UpstreamProtection[] row) => row.Length == 0 || !(row[row.Length - 1].UpstreamOhms > supplyLead)
        ? supplyLead
        : throw new ArgumentOutOfRangeException(
            nameof(supplyLead), supplyLead,
            $"{Upstream.Name} must be at least the {Upstream.Name} of the last device in {Protection.Name}, {Quantities.Accept.Text(row[row.Length - 1].UpstreamOhms!.Value)} Ω; it was {Quantities.Accept.Text(supplyLead!.Value)} Ω.");

    internal static CircuitDocument Make(Values at) => new(
        new CircuitRequirements
        {
            Name = at.Or(Name, ""),
            Source = at.Get(Source),
            Load = at.Get(Load),
            Feed = Length.FromMeters(at.Get(Feed)),
            Return = at.Get(Return),
            Joints = at.Or(Joints, []),
            Upstream = Whole(at.Maybe(Upstream), at.Or(Protection, [])) is { } ohms ? ElectricResistance.FromOhms(ohms) : null,
            UpstreamProtection = at.Or(Protection, []),
            FuseDistance = at.Maybe(Distance) is { } meters ? Length.FromMeters(meters) : null,
            SheathedToFuse = at.Or(Sheathed, false),
            FuseAmbient = at.Maybe(FuseAmbient) is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null,
            Starts = at.Maybe(Starts),
            Place = at.Get(Place),
            Insulation = at.Get(Insulation),
            WallMillimeters = at.Maybe(Wall),
            Intermittent = at.Or(Intermittent, false),
            ParallelWires = Parallel(at.Or(Wires, 1), at.Maybe(MostWires)),
            DropLimit = at.OrNull(Drop),
        },
        at.Get(Rules),
        at.OrNull(Laid));
}
