using System.Text.Json;
using LowVoltage.Calc.Ampacity;

namespace LowVoltage.Calc.Documents;

/// <summary>Where continuous currents come from, in a document: the name of a carried basis, a table, or the lower of two.</summary>
internal static class AmpacityPart
{
    private static readonly WordForm<AmpacityBasis> Words = new([.. new[]
    {
        AmpacityBasis.HeatBalance, AmpacityBasis.RoadVehicleTable, AmpacityBasis.SmallCraftTable, AmpacityBasis.AircraftTable, AmpacityBasis.BuildingTable,
    }.Select(basis => (basis.Name, basis))]);

    private static readonly Member<AmpacityBasis[]> Lower = Member.Needed<AmpacityBasis[]>("lower_of", new ListForm<AmpacityBasis>(new LaterForm(() => Form!), 2, 2), "Two of them, the lower of which counts.");
    private static readonly Member<AmpacityTable> Table = Member.Needed<AmpacityTable>("table", AmpacityTablePart.Form, "A table with the factors that belong to it.");
    private static readonly Member<AmbientDerating> Ambient = Member.Optional<AmbientDerating>("ambient", DeratingPart.Ambient, "Factors for air above that of a stated table; left out: the table ends there.");
    private static readonly Member<GroupingDerating> Grouping = Member.Optional<GroupingDerating>("grouping", DeratingPart.Grouping, "Factors for more wires than a stated table holds for; left out: the table ends there.");

    internal static EitherForm Form { get; } = new(
        "ampacity",
        "Where the continuous current of a wire comes from.",
        Words,
        new ObjectForm("ampacity_lower", "The lower of two.", at => AmpacityBasis.LowerOf(at.Get(Lower)[0], at.Get(Lower)[1]), [Lower]),
        new ObjectForm("ampacity_of_table", "A table.", at => AmpacityBasis.FromTable(at.Get(Table), at.OrNull(Ambient), at.OrNull(Grouping)), [Table, Ambient, Grouping]));

    internal static void Write(Utf8JsonWriter json, AmpacityBasis basis)
    {
        if (Words.WordOf(basis) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        switch (basis)
        {
            case LowerAmpacity lower:
                json.PutAll(Lower, [lower.First, lower.Second], Write);
                break;
            case TableAmpacity own:
                json.Put(Table, own.Table, AmpacityTablePart.Write);
                if (own.Ambient is { } ambient)
                {
                    json.Put(Ambient, ambient, DeratingPart.Write);
                }

                if (own.Grouping is { } grouping)
                {
                    json.Put(Grouping, grouping, DeratingPart.Write);
                }

                break;
            default:
                throw new NotSupportedException($"An ampacity basis \"{basis.Name}\" has no form in a document.");
        }

        json.WriteEndObject();
    }
}
