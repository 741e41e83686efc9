using System.Text.Json;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>How fuses are chosen, in a document.</summary>
internal static class FusePracticePart
{
    private const string CurrentsOnly = "currents only";

    private static readonly FusePractice Usual = new();

    private static readonly WordForm<Allowance> AllowanceWords = new([
        (CurrentsOnly, new Allowance(null)),
        .. new[] { OverloadAllowance.None, OverloadAllowance.Ageing240Hours, OverloadAllowance.Ageing6Hours }.Select(own => (own.Name, new Allowance(own)))]);

    private static readonly WordForm<SourceDistance> DistanceWords = new([.. SourceDistance.All.Select(own => (own.Name, own))]);

    private static readonly Member<double> Sustained = Member.Needed<double>("sustained_K", new NumberForm(0, 100, "K"), "Allowed above the continuous limit for as long as it lasts, K.");
    private static readonly Member<double> Opened = Member.Needed<double>("opened_K", new NumberForm(0, 100, "K"), "Allowed until the fuse opens, K: at least the former.");
    private static readonly Member<double> Open = Member.Needed<double>("open_m", Ranges.MetersOrZero, "Largest distance of an open conductor, m.");
    private static readonly Member<double> Sheathed = Member.Needed<double>("sheathed_m", Ranges.MetersOrZero, "Largest distance of a sheathed conductor, m: at least the former.");
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Any, "What it is called.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Whose rule it is.");

    private static readonly EitherForm AllowanceForm = new(
        "overload_allowance",
        "How far above its continuous limit an overload may take a wire; \"currents only\" leaves it at the rule on currents.",
        AllowanceWords,
        new ObjectForm("overload_allowance_stated", "An allowance of the caller's.", at => new Allowance(OverloadAllowance.Create(at.Get(Name), TemperatureDelta.FromKelvins(at.Get(Sustained)), TemperatureDelta.FromKelvins(at.Get(Opened)), at.Get(Source))), [Sustained, Opened, Name, Source]));

    private static readonly EitherForm DistanceForm = new(
        "source_distance",
        "How far from its source a fuse may sit.",
        DistanceWords,
        new ObjectForm("source_distance_stated", "A rule of the caller's.", at => SourceDistance.Create(at.Get(Name), Length.FromMeters(at.Get(Open)), Length.FromMeters(at.Get(Sheathed)), at.Get(Source)), [Open, Sheathed, Name, Source]));

    private static readonly Member<double> Loading = Member.Optional<double>("loading", new NumberForm(0.1, 1, ""), "Largest continuous load as a share of the rating; left out: 0.8.");
    private static readonly Member<Reference> LoadingSource = ReferencePart.Optional("loading_reference", "Source of the loading.");
    private static readonly Member<double> Share = Member.Optional<double>("share_of_ampacity", new NumberForm(0.1, 1.5, ""), "Largest rating as a share of the wire's continuous current; left out: 1.");
    private static readonly Member<Reference> ShareSource = ReferencePart.Optional("share_reference", "Source of that share.");
    private static readonly Member<Allowance> Overload = Member.Optional<Allowance>("overload", AllowanceForm, "The overload allowance; left out: 25 K, 240 h ageing.");
    private static readonly Member<double> FaultTime = Member.Optional<double>("fault_time_s", new NumberForm(0.001, 5, "s"), "Longest time for a fault at the far end to open the fuse, s; left out: 5 s.");
    private static readonly Member<Reference> FaultSource = ReferencePart.Optional("fault_reference", "Source of that time.");
    private static readonly Member<SourceDistance> Distance = Member.Optional<SourceDistance>("distance", DistanceForm, "Longest unprotected conductor between source and fuse; left out: no rule.");

    internal static ObjectForm Form { get; } = new("fuse_practice", "How a field chooses fuses.", Make, [Loading, LoadingSource, Share, ShareSource, Overload, FaultTime, FaultSource, Distance]);

    internal static void Write(Utf8JsonWriter json, FusePractice practice)
    {
        json.WriteStartObject();
        json.Put(Loading, practice.Loading);
        json.Put(LoadingSource, practice.LoadingReference, ReferencePart.Write);
        json.Put(Share, practice.ShareOfAmpacity);
        json.Put(ShareSource, practice.ShareReference, ReferencePart.Write);
        json.WritePropertyName(Overload.Encoded);
        WriteAllowance(json, practice.Overload);
        json.Put(FaultTime, practice.FaultSeconds);
        json.Put(FaultSource, practice.FaultReference, ReferencePart.Write);
        if (practice.Distance is { } distance)
        {
            json.Put(Distance, distance, WriteDistance);
        }

        json.WriteEndObject();
    }

    private static void WriteAllowance(Utf8JsonWriter json, OverloadAllowance? allowance)
    {
        if (AllowanceWords.WordOf(new Allowance(allowance)) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        json.Put(Sustained, allowance!.SustainedKelvins);
        json.Put(Opened, allowance.OpenedKelvins);
        json.Put(Name, allowance.Name);
        json.Put(Source, allowance.Reference, ReferencePart.Write);
        json.WriteEndObject();
    }

    private static void WriteDistance(Utf8JsonWriter json, SourceDistance distance)
    {
        if (DistanceWords.WordOf(distance) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        json.Put(Open, distance.Open.Meters);
        json.Put(Sheathed, distance.Sheathed!.Value.Meters);
        json.Put(Name, distance.Name);
        json.Put(Source, distance.Reference, ReferencePart.Write);
        json.WriteEndObject();
    }

    private static FusePractice Make(Values at) => new()
    {
        Loading = at.Or(Loading, Usual.Loading),
        LoadingReference = at.Or(LoadingSource, Usual.LoadingReference),
        ShareOfAmpacity = at.Or(Share, Usual.ShareOfAmpacity),
        ShareReference = at.Or(ShareSource, Usual.ShareReference),
        Overload = at.Has(Overload) ? at.Get(Overload).Value : Usual.Overload,
        FaultTime = Duration.FromSeconds(at.Or(FaultTime, Usual.FaultSeconds)),
        FaultReference = at.Or(FaultSource, Usual.FaultReference),
        Distance = at.OrNull(Distance),
    };

    /// <summary>An allowance or none, which is a statement too.</summary>
    private sealed record Allowance(OverloadAllowance? Value);
}
