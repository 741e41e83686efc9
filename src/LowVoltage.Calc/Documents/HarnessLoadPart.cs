using System.Text.Json;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Documents;

/// <summary>A load of a harness in a document.</summary>
internal static class HarnessLoadPart
{
    private static readonly Member<Load> Electric = Member.Needed<Load>("load", LoadPart.Form, "What it draws.");
    private static readonly Member<bool> Intermittent = Member.Optional<bool>("intermittent", FlagForm.Any, "Whether it runs for short times only; left out: false.");
    private static readonly Member<DropLimit> Drop = Member.Optional<DropLimit>("drop_limit", DropLimitPart.Form, "An allowance of its own; left out: that of the rules.");
    private static readonly Member<int> Starts = Member.Optional<int>("starts", new CountForm(1, 100_000), "Starts in the life of its fuse; left out: 10 000.");

    internal static ObjectForm Form { get; } = new(
        "harness_load",
        "A load of a harness.",
        at => HarnessLoad.Create(at.Get(HarnessBranchPart.Id), at.Get(HarnessSourcePart.Positive), at.Get(HarnessSourcePart.Negative), at.Get(Electric))
            .WithIntermittent(at.Or(Intermittent, false)).WithDropLimit(at.OrNull(Drop)).WithStarts(at.Maybe(Starts)),
        [HarnessBranchPart.Id, HarnessSourcePart.Positive, HarnessSourcePart.Negative, Electric, Intermittent, Drop, Starts]);

    internal static void Write(Utf8JsonWriter json, HarnessLoad load)
    {
        json.WriteStartObject();
        json.Put(HarnessBranchPart.Id, load.Id);
        json.Put(HarnessSourcePart.Positive, load.Positive);
        json.Put(HarnessSourcePart.Negative, load.Negative);
        json.Put(Electric, load.Load, LoadPart.Write);
        json.PutIf(Intermittent, load.Intermittent);
        if (load.DropLimit is { } drop)
        {
            json.Put(Drop, drop, DropLimitPart.Write);
        }

        json.PutIf(Starts, load.Starts);
        json.WriteEndObject();
    }
}
