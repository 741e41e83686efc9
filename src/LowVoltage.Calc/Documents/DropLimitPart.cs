using System.Text.Json;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>How much voltage may be lost, in a document.</summary>
internal static class DropLimitPart
{
    private static readonly Reference Own = DropLimit.Percent(1).Reference;

    private static readonly WordForm<DropLimit> Words = new((DropLimit.AircraftTable.ToString(), DropLimit.AircraftTable));

    private static readonly Member<double> Percent = Member.Needed<double>("percent", new NumberForm(1e-3, 99.9, "%"), "Per cent of the nominal supply voltage.");
    private static readonly Member<double> Drop = Member.Needed<double>("drop_V", Ranges.Volts, "The allowance, V.");
    private static readonly Member<Reference> Source = ReferencePart.Optional("reference", "Whose allowance it is; left out: the caller's own.");

    internal static EitherForm Form { get; } = new(
        "drop_limit",
        "How much voltage may be lost between source and load, out and back together.",
        Words,
        new ObjectForm("drop_limit_percent", "A share of the nominal voltage.", at => DropLimit.Percent(at.Get(Percent), at.OrNull(Source)), [Percent, Source]),
        new ObjectForm("drop_limit_volts", "Volts.", at => DropLimit.Volts(ElectricPotential.FromVolts(at.Get(Drop)), at.OrNull(Source)), [Drop, Source]));

    internal static void Write(Utf8JsonWriter json, DropLimit limit)
    {
        if (Words.WordOf(limit) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        if (limit.Share > 0)
        {
            json.Put(Percent, Output.Undone(limit.Share * 100, limit.Share, percent => percent / 100));
        }
        else
        {
            json.Put(Drop, limit.AllowedVolts);
        }

        if (!limit.Reference.Equals(Own))
        {
            json.Put(Source, limit.Reference, ReferencePart.Write);
        }

        json.WriteEndObject();
    }
}
