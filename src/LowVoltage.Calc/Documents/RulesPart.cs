using System.Text.Json;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>Rules in a document: the name of a preset, changes to one, or all of them.</summary>
internal static class RulesPart
{
    private static readonly WordForm<DesignRules> Words = new([.. DesignRules.Presets.Select(preset => (preset.Name, preset))]);

    private static readonly Member<DesignRules> Like = Member.Optional<DesignRules>("like", Words, "The preset to start from; left out: everything but the fuse practice must be stated.");
    private static readonly Member<string> Name = Member.Optional<string>("name", TextForm.Any, "The field.");
    private static readonly Member<ConductorSeries> Conductors = Member.Optional<ConductorSeries>("conductors", ConductorSeriesPart.Form, "The wires to choose from.");
    private static readonly Member<FuseSeries> Fuses = Member.Optional<FuseSeries>("fuses", FuseSeriesPart.Form, "The fuses to choose from.");
    private static readonly Member<AmpacityBasis> Ampacity = Member.Optional<AmpacityBasis>("ampacity", AmpacityPart.Form, "Where the continuous current of a wire comes from.");
    private static readonly Member<DropLimit> Drop = Member.Optional<DropLimit>("drop_limit", DropLimitPart.Form, "The voltage that may be lost.");
    private static readonly Member<FusePractice> Practice = Member.Optional<FusePractice>("fuse_practice", FusePracticePart.Form, "How fuses are chosen.");
    private static readonly Member<double> Section = Member.Optional<double>("minimum_section_mm2", Ranges.SquareMillimeters, "Smallest nominal section on mechanical grounds, mm².");
    private static readonly Member<Reference> SectionSource = ReferencePart.Optional("minimum_section_reference", "Source of that section.");

    internal static EitherForm Form { get; } = new("rules", "The practice of a field: the name of a preset, changes to one, or all of it.", Words, new ObjectForm(
        "rules_stated",
        "Rules, or what differs from a preset.",
        Make,
        [Like, Name, Conductors, Fuses, Ampacity, Drop, Practice, Section, SectionSource],
        MemberRule.Without(Like, Name, Conductors, Fuses, Ampacity, Drop, Section, SectionSource)));

    internal static void Write(Utf8JsonWriter json, DesignRules rules)
    {
        if (Words.WordOf(rules) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        json.Put(Name, rules.Name);
        json.Put(Conductors, rules.Conductors, ConductorSeriesPart.Write);
        json.Put(Fuses, rules.Fuses, FuseSeriesPart.Write);
        json.Put(Ampacity, rules.Ampacity, AmpacityPart.Write);
        json.Put(Drop, rules.DropLimit, DropLimitPart.Write);
        json.Put(Practice, rules.FusePractice, FusePracticePart.Write);
        json.Put(Section, rules.MinimumSquareMillimeters);
        json.Put(SectionSource, rules.MinimumSectionReference, ReferencePart.Write);
        json.WriteEndObject();
    }

    private static DesignRules Make(Values at)
    {
        DesignRules? like = at.OrNull(Like);
        return new DesignRules
        {
            Name = at.OrNull(Name) ?? like!.Name,
            Conductors = at.OrNull(Conductors) ?? like!.Conductors,
            Fuses = at.OrNull(Fuses) ?? like!.Fuses,
            Ampacity = at.OrNull(Ampacity) ?? like!.Ampacity,
            DropLimit = at.OrNull(Drop) ?? like!.DropLimit,
            FusePractice = at.OrNull(Practice) ?? like?.FusePractice ?? new FusePractice(),
            MinimumSection = Area.FromSquareMillimeters(at.Maybe(Section) ?? like!.MinimumSquareMillimeters),
            MinimumSectionReference = at.OrNull(SectionSource) ?? like!.MinimumSectionReference,
        };
    }
}
