using System.Text.Json;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A fault of a harness in a document.</summary>
internal static class HarnessFaultPart
{
    private static readonly WordForm<HarnessFaultKind> Kinds = new(
        ("short to return", HarnessFaultKind.ShortToReturn), ("short to ground", HarnessFaultKind.ShortToGround), ("interruption", HarnessFaultKind.Interruption));

    private static readonly WordForm<FaultRank> Ranks = new(
        ("burns on", FaultRank.BurnsOn), ("not cleared", FaultRank.NotCleared), ("wire too hot", FaultRank.WireTooHot), ("undetermined", FaultRank.Undetermined), ("wrong fuse first", FaultRank.WrongFuseFirst),
        ("fed back", FaultRank.FedBack), ("load dead", FaultRank.LoadDead), ("load dim", FaultRank.LoadDim), ("harmless", FaultRank.Harmless));

    private static readonly WordForm<FaultEnding> Endings = new(
        ("undetermined", FaultEnding.Undetermined), ("cleared", FaultEnding.Cleared), ("not cleared", FaultEnding.NotCleared), ("no current", FaultEnding.NoCurrent));

    private static readonly WordForm<LoadEffect> Effects = new(
        ("reversed", LoadEffect.Reversed), ("fed back", LoadEffect.FedBack), ("dead", LoadEffect.Dead), ("drops out", LoadEffect.DropsOut), ("rises", LoadEffect.Rises), ("dims", LoadEffect.Dims));

    private static readonly Member<string> Fuse = Member.Needed<string>("fuse", TextForm.Name, "The fuse.");
    private static readonly Member<double> Least = Member.Optional<double>("least_s", Ranges.Any, "It opens no sooner than this, s; left out: no least time is stated.");
    private static readonly Member<double> Longest = Member.Optional<double>("longest_s", Ranges.Any, "It has opened by then, s; left out: it may open but need not.");
    private static readonly Member<double> FuseLeast = Member.Needed<double>("least_current_A", Ranges.Any, "The least current through it at the beginning of its last stage, A.");
    private static readonly Member<double> FuseGreatest = Member.Needed<double>("greatest_current_A", Ranges.Any, "The greatest current through it, A.");

    private static readonly ObjectForm OpeningForm = new(
        "fuse_opening",
        "A fuse that opens, or may.",
        at => new FuseOpening(at.Get(Fuse), at.Maybe(Least), at.Maybe(Longest), at.Get(FuseLeast), at.Get(FuseGreatest)),
        [Fuse, Least, Longest, FuseLeast, FuseGreatest]);

    private static readonly Member<string> Wire = Member.Needed<string>("wire", TextForm.Name, "The wire.");
    private static readonly Member<double> Celsius = Member.Needed<double>("temperature_C", Ranges.Any, "The highest temperature that its conductor reaches, an upper bound, °C.");
    private static readonly Member<double> Limit = Member.Needed<double>("limit_C", Ranges.Any, "What its insulation withstands: in a short circuit, or continuously where the current stays, °C.");
    private static readonly Member<double> WireAmperes = Member.Needed<double>("current_A", Ranges.Any, "The current that takes it there, A.");
    private static readonly Member<bool> Melts = Member.Optional<bool>("melts", FlagForm.Any, "Whether its metal may melt; left out: false.");
    private static readonly Member<bool> Stays = Member.Optional<bool>("stays", FlagForm.Any, "Whether the current stays, so that the continuous limit counts; left out: false.");

    private static readonly ObjectForm WireForm = new(
        "faulted_wire",
        "How hot a wire gets.",
        at => new FaultedWire(at.Get(Wire), at.Get(Celsius), at.Get(Limit), at.Get(WireAmperes), at.Or(Melts, false), at.Or(Stays, false)),
        [Wire, Celsius, Limit, WireAmperes, Melts, Stays]);

    private static readonly Member<string> Load = Member.Needed<string>("load", TextForm.Name, "The load.");
    private static readonly Member<LoadEffect> Effect = Member.Needed<LoadEffect>("effect", Effects, "What becomes of it.");
    private static readonly Member<double> Before = Member.Needed<double>("before_V", Ranges.Any, "Its voltage before, V.");
    private static readonly Member<double> After = Member.Needed<double>("after_V", Ranges.Any, "Its voltage with the fault, V; negative: it is fed backwards.");
    private static readonly Member<double> LoadAmperes = Member.Needed<double>("current_A", Ranges.Any, "Its current with the fault, A; negative: it is fed backwards.");
    private static readonly Member<string> Through = Member.Optional<string>("through", TextForm.Name, "The branch or load that brings it what it should not get; left out: it is not fed back.");

    private static readonly ObjectForm LoadForm = new(
        "faulted_load",
        "A load that an interruption changes.",
        at => new FaultedLoad(at.Get(Load), at.Get(Effect), at.Get(Before), at.Get(After), at.Get(LoadAmperes), at.OrNull(Through)),
        [Load, Effect, Before, After, LoadAmperes, Through]);

    private static readonly Member<HarnessFaultKind> Kind = Member.Needed<HarnessFaultKind>(KindForm.Kind, Kinds, "What it is.");
    private static readonly Member<string> Place = Member.Needed<string>("place", TextForm.Name, "The node that is shorted, or the branch that is interrupted.");
    private static readonly Member<string> To = Member.Optional<string>("to", TextForm.Name, "The node that a short touches; left out: it is an interruption.");
    private static readonly Member<string> Case = Member.Needed<string>("load_case", TextForm.Name, "The load case in which it is worst.");
    private static readonly Member<FaultRank> Rank = Member.Needed<FaultRank>("rank", Ranks, "How bad it is.");
    private static readonly Member<FaultEnding> Ending = Member.Needed<FaultEnding>("ending", Endings, "How a short ends.");
    private static readonly Member<double> LeastAmperes = Member.Optional<double>("least_current_A", Ranges.Any, "The least current of a short at its beginning, A; left out: there is none, or it is not known.");
    private static readonly Member<double> GreatestAmperes = Member.Optional<double>("greatest_current_A", Ranges.Any, "The greatest current of a short at its beginning, A; left out: there is none, or nothing bounds it.");
    private static readonly Member<double> RemainingAmperes = Member.Optional<double>("remaining_current_A", Ranges.Any, "The current that keeps flowing in a short that is not cleared, at most, A.");
    private static readonly Member<FuseOpening[]> Openings = Member.Needed<FuseOpening[]>("openings", new ListForm<FuseOpening>(OpeningForm), "The fuses that open, in the order of time.");
    private static readonly Member<FaultedWire[]> Wires = Member.Needed<FaultedWire[]>("wires", new ListForm<FaultedWire>(WireForm), "The wires that carry a short, the one nearest to or farthest beyond its limit first.");
    private static readonly Member<string[]> WrongFuses = Names("wrong_fuses", "Fuses that may open before the nearest one has, or do.");
    private static readonly Member<FaultedLoad[]> Loads = Member.Needed<FaultedLoad[]>("loads", new ListForm<FaultedLoad>(LoadForm), "The loads that an interruption changes.");
    private static readonly Member<string[]> LostLoads = Names("lost_loads", "The loads that go dead with a fuse that is not the nearest to a short.");
    private static readonly Member<string> LiveThrough = Member.Optional<string>("live_through", TextForm.Name, "The branch through which the far end of a pulled fuse stays live; left out: none.");
    private static readonly Member<string> Reason = Member.Optional<string>("reason", TextForm.Any, "Why something could not be told; left out: everything could.");
    private static readonly Member<string[]> Places = Names("places", "Every place that it is about.");
    private static readonly Member<string> Text = Member.Needed<string>("text", TextForm.Any, "What happens.");

    internal static ObjectForm Form { get; } = new(
        "harness_fault",
        "One fault and what follows from it.",
        Make,
        [Kind, Place, To, Case, Rank, Ending, LeastAmperes, GreatestAmperes, RemainingAmperes, Openings, Wires, WrongFuses, Loads, LostLoads, LiveThrough, Reason, Places, Text]);

    internal static void Write(Utf8JsonWriter json, HarnessFault fault)
    {
        json.WriteStartObject();
        json.WriteString(Kind.Encoded, Kinds.WordOf(fault.Kind));
        json.Put(Place, fault.Place);
        json.PutIf(To, fault.To ?? "");
        json.Put(Case, fault.LoadCase);
        json.WriteString(Rank.Encoded, Ranks.WordOf(fault.Rank));
        json.WriteString(Ending.Encoded, Endings.WordOf(fault.Ending));
        json.PutIf(LeastAmperes, fault.LeastAmperes);
        json.PutIf(GreatestAmperes, fault.GreatestAmperes);
        json.PutIf(RemainingAmperes, fault.RemainingAmperes);
        json.PutAll(Openings, fault.Openings, WriteOpening);
        json.PutAll(Wires, fault.Wires, WriteWire);
        json.PutAll(WrongFuses, fault.WrongFuses);
        json.PutAll(Loads, fault.Loads, WriteLoad);
        json.PutAll(LostLoads, fault.LostLoads);
        json.PutIf(LiveThrough, fault.LiveThrough ?? "");
        json.PutIf(Reason, fault.Reason);
        json.PutAll(Places, fault.Places);
        json.Put(Text, fault.Text);
        json.WriteEndObject();
    }

    private static void WriteOpening(Utf8JsonWriter json, FuseOpening opening)
    {
        json.WriteStartObject();
        json.Put(Fuse, opening.Fuse);
        json.PutIf(Least, opening.LeastSeconds);
        json.PutIf(Longest, opening.LongestSeconds);
        json.Put(FuseLeast, opening.LeastAmperes);
        json.Put(FuseGreatest, opening.GreatestAmperes);
        json.WriteEndObject();
    }

    private static void WriteWire(Utf8JsonWriter json, FaultedWire wire)
    {
        json.WriteStartObject();
        json.Put(Wire, wire.Wire);
        json.Put(Celsius, wire.Celsius);
        json.Put(Limit, wire.LimitCelsius);
        json.Put(WireAmperes, wire.Amperes);
        json.PutIf(Melts, wire.Melts);
        json.PutIf(Stays, wire.Stays);
        json.WriteEndObject();
    }

    private static void WriteLoad(Utf8JsonWriter json, FaultedLoad load)
    {
        json.WriteStartObject();
        json.Put(Load, load.Load);
        json.WriteString(Effect.Encoded, Effects.WordOf(load.Effect));
        json.Put(Before, load.BeforeVolts);
        json.Put(After, load.AfterVolts);
        json.Put(LoadAmperes, load.Amperes);
        json.PutIf(Through, load.Through ?? "");
        json.WriteEndObject();
    }

    private static Member<string[]> Names(string name, string says) => Member.Needed<string[]>(name, new ListForm<string>(TextForm.Name), says);

    private static HarnessFault Make(Values at) => new(at.Get(Kind), at.Get(Place), at.OrNull(To), at.Get(Case))
    {
        Rank = at.Get(Rank),
        Ending = at.Get(Ending),
        LeastAmperes = at.Maybe(LeastAmperes),
        GreatestAmperes = at.Maybe(GreatestAmperes),
        RemainingAmperes = at.Maybe(RemainingAmperes),
        Openings = Array.AsReadOnly(at.Get(Openings)),
        Wires = Array.AsReadOnly(at.Get(Wires)),
        WrongFuses = Array.AsReadOnly(at.Get(WrongFuses)),
        Loads = Array.AsReadOnly(at.Get(Loads)),
        LostLoads = Array.AsReadOnly(at.Get(LostLoads)),
        LiveThrough = at.OrNull(LiveThrough),
        Reason = at.Or(Reason, ""),
        Places = Array.AsReadOnly(at.Get(Places)),
        Text = at.Get(Text),
    };
}
