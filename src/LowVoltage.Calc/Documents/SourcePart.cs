using System.Text.Json;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A source in a document: what it was made from, not the numbers that follow.</summary>
internal static class SourcePart
{
    private const string LeadAcid = "lead-acid battery";
    private const string Lithium = "lithium iron phosphate pack";
    private const string OneVoltage = "voltage";
    private const string VoltageRange = "voltage range";
    private const string Limited = "current-limited supply";
    private const string Alternator = "alternator";
    private const string Series = "in series";
    private const string Parallel = "in parallel";

    private static readonly WordForm<ColdCrankingStandard> Tests = new(
        ("SAE J537", ColdCrankingStandard.SaeJ537), ("EN 50342-1", ColdCrankingStandard.En50342), ("DIN 43539-2", ColdCrankingStandard.Din43539),
        ("IEC 95-1", ColdCrankingStandard.Iec95), ("marine cranking", ColdCrankingStandard.MarineCranking));

    private static readonly CountForm UpToThousand = new(1, 1000);

    private static readonly Member<double> ColdCranking = Member.Needed<double>("cold_cranking_A", Ranges.Amperes, "Cold-cranking current of one 12 V block, A.");
    private static readonly Member<ColdCrankingStandard> Test = Member.Optional<ColdCrankingStandard>("test", Tests, "The test behind that current; left out: SAE J537.");
    private static readonly Member<int> Blocks = Member.Optional<int>("blocks_in_series", UpToThousand, "12 V blocks in series; left out: 1.");
    private static readonly Member<int> Strings = Member.Optional<int>("strings_in_parallel", UpToThousand, "Strings side by side; left out: 1.");
    private static readonly Member<double> BatteryCelsius = Member.Optional<double>("temperature_C", new NumberForm(-18, 25, "°C"), "Battery temperature, °C; left out: anywhere from −18 to 25 °C.");
    private static readonly Member<int> Cells = Member.Needed<int>("cells_in_series", UpToThousand, "Cells in series.");
    private static readonly Member<double> Capacity = Member.Needed<double>("capacity_Ah", new NumberForm(1e-9, 1e9, "Ah"), "Capacity of the pack, Ah.");
    private static readonly Member<double> Protection = Member.Optional<double>("protection_limit_A", Ranges.Amperes, "Current at which the pack's protection disconnects, A; left out: none, or not known.");
    private static readonly Member<double> Voltage = Member.Needed<double>("voltage_V", Ranges.Volts, "Open-circuit voltage, V.");
    private static readonly Member<double> Resistance = Member.Optional<double>("resistance_ohm", Ranges.OhmsOrZero, "Internal resistance, Ω; left out: none.");
    private static readonly Member<double> Minimum = Member.Needed<double>("minimum_V", Ranges.Volts, "Least open-circuit voltage, V.");
    private static readonly Member<double> Nominal = Member.Needed<double>("nominal_V", Ranges.Volts, "Nominal voltage, V.");
    private static readonly Member<double> Maximum = Member.Needed<double>("maximum_V", Ranges.Volts, "Greatest open-circuit voltage, V.");
    private static readonly Member<double> LeastOhms = Member.Optional<double>("least_resistance_ohm", Ranges.OhmsOrZero, "Least internal resistance, Ω; left out: none.");
    private static readonly Member<double> GreatestOhms = Member.Optional<double>("greatest_resistance_ohm", Ranges.OhmsOrZero, "Greatest internal resistance, Ω; left out: none.");
    private static readonly Member<double> Limit = Member.Needed<double>("limit_A", Ranges.Amperes, "The current limit, A.");
    private static readonly Member<double> Regulated = Member.Needed<double>("regulated_V", Ranges.Volts, "Regulated voltage, V.");
    private static readonly Member<double> Rated = Member.Needed<double>("rated_A", Ranges.Amperes, "Rated current, A.");
    private static readonly Member<Source[]> Sources = Member.Needed<Source[]>("sources", new ListForm<Source>(new LaterForm(() => Form!), 1), "The sources.");

    internal static KindForm Form { get; } = new(
        "source",
        "What feeds a circuit.",
        (LeadAcid, new("source_lead_acid", "A lead-acid battery by its cold-cranking current.", MakeLeadAcid, [KindForm.Of(LeadAcid), ColdCranking, Test, Blocks, Strings, BatteryCelsius])),
        (Lithium, new("source_lithium", "A pack of lithium iron phosphate cells.", MakeLithium, [KindForm.Of(Lithium), Cells, Capacity, Protection])),
        (OneVoltage, new("source_voltage", "One voltage, ideal or behind one resistance.", MakeOne, [KindForm.Of(OneVoltage), Voltage, Resistance])),
        (VoltageRange, new(
            "source_range", "A range of voltages, ideal or behind a range of resistances.", MakeRange, [KindForm.Of(VoltageRange), Minimum, Nominal, Maximum, LeastOhms, GreatestOhms],
            MemberRule.Needs(LeastOhms, GreatestOhms), MemberRule.Needs(GreatestOhms, LeastOhms))),
        (Limited, new("source_limited", "A regulated supply that holds its current at a limit.", at => Source.CurrentLimited(Volts(at, Voltage), Amperes(at, Limit)), [KindForm.Of(Limited), Voltage, Limit])),
        (Alternator, new("source_alternator", "An alternator or generator without a battery beside it.", at => Source.Alternator(Volts(at, Regulated), Amperes(at, Rated)), [KindForm.Of(Alternator), Regulated, Rated])),
        (Series, new("source_series", "Sources in series.", at => Source.InSeries(at.Get(Sources)), [KindForm.Of(Series), Sources])),
        (Parallel, new("source_parallel", "Sources side by side.", at => Source.InParallel(at.Get(Sources)), [KindForm.Of(Parallel), Sources])));

    internal static void Write(Utf8JsonWriter json, Source source)
    {
        json.WriteStartObject();
        if (source.Parts.Count > 0)
        {
            json.PutKind(source.IsParallel ? Parallel : Series);
            json.PutAll(Sources, source.Parts, Write);
        }
        else if (source.Basis is Battery.LeadAcidBasis lead)
        {
            json.PutKind(LeadAcid);
            json.Put(ColdCranking, lead.ColdCrankingAmperes);
            json.WriteString(Test.Encoded, Tests.WordOf(lead.Standard));
            json.PutUnless(Blocks, lead.BlocksInSeries, 1);
            json.PutUnless(Strings, lead.StringsInParallel, 1);
            json.PutIf(BatteryCelsius, lead.Celsius);
        }
        else if (source.Basis is Battery.LithiumBasis pack)
        {
            json.PutKind(Lithium);
            json.Put(Cells, pack.Cells);
            json.Put(Capacity, Output.Undone(pack.Coulombs / 3600, pack.Coulombs, hours => hours * 3600));
            json.PutIf(Protection, source.CurrentLimit?.Amperes);
        }
        else
        {
            WriteStated(json, source);
        }

        json.WriteEndObject();
    }

    // A source described by numbers is known by its name.
    private static void WriteStated(Utf8JsonWriter json, Source source)
    {
        SourceNumbers numbers = source.Numbers;
        switch (source.Name)
        {
            case Alternator:
                json.PutKind(Alternator);
                json.Put(Regulated, numbers.NominalVolts);
                json.Put(Rated, numbers.LimitAmperes);
                break;
            case Limited:
                json.PutKind(Limited);
                json.Put(Voltage, numbers.NominalVolts);
                json.Put(Limit, numbers.LimitAmperes);
                break;
            case "ideal voltage":
                json.PutKind(OneVoltage);
                json.Put(Voltage, numbers.NominalVolts);
                break;
            case "voltage behind a resistance" when numbers.MinimumVolts.Equals(numbers.MaximumVolts) && numbers.LeastOhms.Equals(numbers.GreatestOhms):
                json.PutKind(OneVoltage);
                json.Put(Voltage, numbers.NominalVolts);
                json.Put(Resistance, numbers.NominalOhms);
                break;
            default:
                json.PutKind(VoltageRange);
                json.Put(Minimum, numbers.MinimumVolts);
                json.Put(Nominal, numbers.NominalVolts);
                json.Put(Maximum, numbers.MaximumVolts);
                if (source.Name != "voltage range")
                {
                    json.Put(LeastOhms, numbers.LeastOhms);
                    json.Put(GreatestOhms, numbers.GreatestOhms);
                }

                break;
        }
    }

    private static Source MakeLeadAcid(Values at) => Battery.LeadAcid(
        Amperes(at, ColdCranking), at.Or(Test, ColdCrankingStandard.SaeJ537), at.Or(Blocks, 1), at.Or(Strings, 1), at.Maybe(BatteryCelsius) is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null);

    private static Source MakeLithium(Values at) => Battery.LithiumIronPhosphate(
        at.Get(Cells), ElectricCharge.FromAmpereHours(at.Get(Capacity)), at.Maybe(Protection) is { } limit ? ElectricCurrent.FromAmperes(limit) : null);

    private static Source MakeOne(Values at) =>
        at.Maybe(Resistance) is { } ohms ? Source.BehindResistance(Volts(at, Voltage), ElectricResistance.FromOhms(ohms)) : Source.Ideal(Volts(at, Voltage));

    private static Source MakeRange(Values at) => at.Has(LeastOhms)
        ? Source.BehindResistance(Volts(at, Minimum), Volts(at, Nominal), Volts(at, Maximum), ElectricResistance.FromOhms(at.Get(LeastOhms)), ElectricResistance.FromOhms(at.Get(GreatestOhms)))
        : Source.Ideal(Volts(at, Minimum), Volts(at, Nominal), Volts(at, Maximum));

    private static ElectricPotential Volts(Values at, Member<double> member) => ElectricPotential.FromVolts(at.Get(member));

    private static ElectricCurrent Amperes(Values at, Member<double> member) => ElectricCurrent.FromAmperes(at.Get(member));
}
