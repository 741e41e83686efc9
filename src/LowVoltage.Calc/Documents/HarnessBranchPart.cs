using System.Text.Json;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A branch of a harness in a document; what the harness's rules and usual place add is settled when the harness is made.</summary>
internal static class HarnessBranchPart
{
    private const string Wire = "wire";
    private const string Fuse = "fuse";
    internal const string Switch = "switch";
    private const string Chassis = "chassis";
    private const string Resistance = "resistance";

    private static readonly EitherForm ConductorForm = new("harness_conductor", "A conductor: a size of the rules' series, a size of another series, or its values.", SizeForm.Any, [.. ConductorPart.Form.Forms]);

    private static readonly Member<object> Metal = Member.Optional<object>("conductor", ConductorForm, "The conductor; left out: to be sized. A size alone is one of the rules' series.");
    private static readonly Member<double> Meters = Member.Needed<double>("length_m", Ranges.Meters, "Length from node to node, m.");
    private static readonly Member<int> Parallel = Member.Optional<int>("parallel", new CountForm(1, 100), "Equal wires side by side; left out: 1.");
    private static readonly Member<Place> Place = Member.Optional<Place>("place", PlacePart.Form, "Where it runs; left out: the usual place of the harness.");
    private static readonly Member<InsulationMaterial> Insulation = Member.Optional<InsulationMaterial>("insulation", InsulationPart.Form, "Its insulation; left out: the usual one of the harness.");
    private static readonly Member<double> Wall = Member.Optional<double>("wall_mm", new NumberForm(0, 20, "mm"), "Wall of its insulation, mm; left out: the usual one for the size.");
    private static readonly Member<Joint[]> Joints = Member.Optional<Joint[]>("joints", JointPart.List, "Joints on it; left out: none.");
    private static readonly Member<FuseRating> Rating = Member.Optional<FuseRating>("fuse", FusePart.Form, "The rating; left out: to be chosen.");
    private static readonly Member<double> Amperes = Member.Optional<double>("rating_A", Ranges.Amperes, "The rating as one of the rules' fuses, A.");
    private static readonly Member<double> FuseOhms = Member.Optional<double>("resistance_ohm", Ranges.OhmsOrZero, "Resistance of fuse and holder, Ω; left out: 0.");
    private static readonly Member<double> Ambient = Member.Optional<double>("ambient_C", Ranges.Ambient, "Air around it, °C; left out: that of the wires beside it.");
    private static readonly Member<double> Ohms = Member.Needed<double>("resistance_ohm", Ranges.OhmsOrZero, "Its resistance, Ω.");
    private static readonly Member<double> StatedMeters = Member.Optional<double>("length_m", Ranges.MetersOrZero, "How much conductor it stands for, m; left out: not known.");
    private static readonly Member<bool> Closed = Member.Optional<bool>("is_closed", FlagForm.Any, "Whether it is closed where a load case does not say otherwise; left out: true.");

    internal static Member<string> Id { get; } = Member.Needed<string>("id", TextForm.Name, "Its name, of its own among branches, sources and loads.");

    internal static Member<string> From { get; } = Member.Needed<string>("from", TextForm.Name, "The node that its current is counted from.");

    internal static Member<string> To { get; } = Member.Needed<string>("to", TextForm.Name, "The other node.");

    internal static KindForm Form { get; } = new(
        "branch",
        "What lies between two nodes.",
        (Wire, new("branch_wire", "A wire.", MakeWire, [KindForm.Of(Wire), Id, From, To, Metal, Meters, Parallel, Place, Insulation, Wall, Joints])),
        (Fuse, new("branch_fuse", "A fuse.", MakeFuse, [KindForm.Of(Fuse), Id, From, To, Rating, Amperes, FuseOhms, Ambient], MemberRule.NotBoth(Rating, Amperes))),
        (Switch, new("branch_switch", "A switch or a relay's contact.", at => Raw(HarnessSwitch.Create(at.Get(Id), at.Get(From), at.Get(To), Resisting(at), at.Or(Closed, true))), [KindForm.Of(Switch), Id, From, To, Ohms, Closed])),
        (Chassis, new("branch_chassis", "A chassis between two of its points.", at => Raw(HarnessResistance.Chassis(at.Get(Id), at.Get(From), at.Get(To), Resisting(at)).WithLength(Stated(at))), [KindForm.Of(Chassis), Id, From, To, Ohms, StatedMeters])),
        (Resistance, new("branch_resistance", "A stated resistance.", at => Raw(HarnessResistance.Create(at.Get(Id), at.Get(From), at.Get(To), Resisting(at)).WithLength(Stated(at))), [KindForm.Of(Resistance), Id, From, To, Ohms, StatedMeters])));

    internal static void Write(Utf8JsonWriter json, HarnessBranch branch, DesignRules rules)
    {
        json.WriteStartObject();
        json.PutKind(branch switch { HarnessWire => Wire, HarnessFuse => Fuse, HarnessSwitch => Switch, HarnessResistance { IsChassis: true } => Chassis, _ => Resistance });
        json.Put(Id, branch.Id);
        json.Put(From, branch.From);
        json.Put(To, branch.To);
        switch (branch)
        {
            case HarnessWire wire:
                WriteWire(json, wire, rules);
                break;
            case HarnessFuse fuse:
                WriteFuse(json, fuse, rules);
                break;
            default:
                json.Put(Ohms, branch.FixedOhms);
                json.PutIf(StatedMeters, (branch as HarnessResistance)?.Meters);
                if (branch is HarnessSwitch { IsClosed: false })
                {
                    json.Put(Closed, false);
                }

                break;
        }

        json.WriteEndObject();
    }

    private static void WriteWire(Utf8JsonWriter json, HarnessWire wire, DesignRules rules)
    {
        if (wire.Conductor is { } conductor)
        {
            json.WritePropertyName(Metal.Encoded);
            if (conductor.Size is { } size && rules.Conductors.TryGet(size, out Conductor? own) && own.Equals(conductor))
            {
                json.WriteStringValue(size.Designation);
            }
            else
            {
                ConductorPart.Write(json, conductor);
            }
        }

        json.Put(Meters, wire.Meters);
        json.PutUnless(Parallel, wire.Parallel, 1);
        json.Put(Place, wire.Place, PlacePart.Write);
        json.Put(Insulation, wire.Insulation, InsulationPart.Write);
        json.PutIf(Wall, wire.WallMillimeters);
        if (wire.Joints.Count > 0)
        {
            json.PutAll(Joints, wire.Joints, JointPart.Write);
        }
    }

    private static void WriteFuse(Utf8JsonWriter json, HarnessFuse fuse, DesignRules rules)
    {
        if (fuse.Rating is { } rating)
        {
            if (ReferenceEquals(OfRules(rules, rating.Amperes), rating))
            {
                json.Put(Amperes, rating.Amperes);
            }
            else
            {
                json.Put(Rating, rating, FusePart.Write);
            }
        }

        json.PutUnless(FuseOhms, fuse.FixedOhms, 0);
        json.PutIf(Ambient, fuse.AmbientCelsius);
    }

    private static RawBranch Raw(HarnessBranch branch) => new(branch.Id, _ => branch);

    // The ends are checked here, where their place is known.
    private static RawBranch MakeFuse(Values at)
    {
        HarnessFuse fuse = HarnessFuse.Create(at.Get(Id), at.Get(From), at.Get(To), at.OrNull(Rating)).WithResistance(ElectricResistance.FromOhms(at.Or(FuseOhms, 0)));
        fuse = at.Maybe(Ambient) is { } celsius ? fuse.WithAmbient(Temperature.FromDegreesCelsius(celsius)) : fuse;
        return at.Maybe(Amperes) is not { } amperes ? Raw(fuse) : new(fuse.Id, usual =>
        {
            if (OfRules(usual.Rules, amperes) is { } rating)
            {
                return fuse.WithRating(rating);
            }

            at.Reading.Judge(at.At(Amperes), $"must be a rating of the rules' fuses, \"{usual.Rules.Fuses.Name}\"; it was {Quantities.Accept.Text(amperes)} A.");
            return null;
        });
    }

    private static RawBranch MakeWire(Values at)
    {
        HarnessWire wire = HarnessWire.Create(
            at.Get(Id), at.Get(From), at.Get(To), at.OrNull(Metal) as Conductor, Length.FromMeters(at.Get(Meters)), at.OrNull(Place) ?? Nowhere, at.OrNull(Insulation) ?? InsulationMaterial.PolyvinylChloride)
            .WithParallel(at.Or(Parallel, 1)).WithJoints(at.Or(Joints, []));
        return new(wire.Id, usual => Settled(at, wire, usual));
    }

    private static HarnessWire? Settled(Values at, HarnessWire wire, HarnessUsual usual)
    {
        Conductor? conductor = wire.Conductor;
        bool fits = true;
        if (at.OrNull(Metal) is ConductorSize size && !usual.Rules.Conductors.TryGet(size, out conductor))
        {
            at.Reading.Judge(at.At(Metal), $"must be a size of the rules' wires, \"{usual.Rules.Conductors.Name}\"; it was {at.At(Metal).Said}.");
            fits = false;
        }

        fits &= Known(at, Place, usual.Place) & Known(at, Insulation, usual.Insulation);
        if (!fits)
        {
            return null;
        }

        return HarnessWire.Create(wire.Id, wire.From, wire.To, conductor, wire.Length, at.OrNull(Place) ?? usual.Place!, at.OrNull(Insulation) ?? usual.Insulation!)
            .WithParallel(wire.Parallel).WithJoints([.. wire.Joints]).WithWallMillimeters(at.Maybe(Wall));
    }

    private static bool Known<T>(Values at, Member<T> member, T? usual)
        where T : class
    {
        if (!at.Has(member) && usual is null)
        {
            at.Reading.Judge(at.Node, $"\"{member.Name}\" is missing; it may be left out only where the harness states a usual one.");
            return false;
        }

        return true;
    }

    private static Place Nowhere { get; } = new() { Ambient = Temperature.FromDegreesCelsius(20) };

    private static FuseRating? OfRules(DesignRules rules, double amperes) => Array.Find(rules.Fuses.RatingsArray, own => own.Amperes.Equals(amperes));

    private static Length? Stated(Values at) => at.Has(StatedMeters) ? Length.FromMeters(at.Get(StatedMeters)) : null;

    private static ElectricResistance Resisting(Values at) => ElectricResistance.FromOhms(at.Get(Ohms));
}
