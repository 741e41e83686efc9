using System.Text.Json;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A table of continuous currents in a document: the name of a carried one, or its rows.</summary>
internal static class AmpacityTablePart
{
    private static readonly WordForm<AmpacityTable> Words = new([.. new[]
    {
        Cfr33Part183Table5.Table, FaaAc43Table11Dash9.Table, FaaFreeAir.Ambient25, FaaFreeAir.Ambient50, FaaFreeAir.Ambient60, Iec60364MethodC.Table, Iec60364MethodF.Table, NasaEeeInst002.SingleWire,
        NasaEeeInst002.BundledWire, NecTable310Dash16.Table, NecTable310Dash17.Table, RoadVehicleSingleCore.Ambient30, RoadVehicleSingleCore.Ambient50,
    }.Select(table => (table.Name, table))]);

    private static readonly Member<ConductorSize> Size = Member.Needed<ConductorSize>("size", SizeForm.Any, "The size.");
    private static readonly Member<double[]> Currents = Member.Needed<double[]>("currents_A", new ListForm<double>(new CellForm(Ranges.Amperes), 1), "The current of each column, A; null where the source has none.");

    private static readonly ObjectForm Row = new("ampacity_row", "A size and its currents.", MakeRow, [Size, Currents]);

    private static readonly Member<AmpacityRow[]> Rows = Member.Needed<AmpacityRow[]>("rows", new ListForm<AmpacityRow>(Row, 1), "A row a size, smallest first.");
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Name, "What it is called.");
    private static readonly Member<double> Ambient = Member.Needed<double>("base_ambient_C", new NumberForm(-60, 399, "°C"), "The ambient that the currents hold for, °C, below the lowest insulation rating.");
    private static readonly Member<int> Together = Member.Needed<int>("loaded_conductors", new CountForm(1, 1000), "Loaded conductors together that the currents hold for.");
    private static readonly Member<double[]> Columns = Member.Needed<double[]>("insulation_ratings_C", new ListForm<double>(Ranges.RatedCelsius, 1), "A column each, °C, rising: the conductor temperature at these currents.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Where the numbers come from.");

    internal static EitherForm Form { get; } = new(
        "ampacity_table",
        "A table of continuous currents: the name of one that the library carries, or its rows.",
        Words,
        new ObjectForm("ampacity_table_stated", "A table of the caller's.", Make, [Rows, Name, Ambient, Together, Columns, Source]));

    internal static void Write(Utf8JsonWriter json, AmpacityTable table)
    {
        if (Words.WordOf(table) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        json.PutAll(Rows, table.CallersRows(), WriteRow);
        json.Put(Name, table.Name);
        json.Put(Ambient, table.BaseAmbientCelsius);
        json.Put(Together, table.Conductors);
        json.PutAll(Columns, table.Columns.ToArray());
        json.Put(Source, table.Reference, ReferencePart.Write);
        json.WriteEndObject();
    }

    private static void WriteRow(Utf8JsonWriter json, AmpacityRow row)
    {
        json.WriteStartObject();
        json.WriteString(Size.Encoded, row.Size.Designation);
        json.WriteStartArray(Currents.Encoded);
        foreach (double amperes in row.Amperes)
        {
            if (double.IsNaN(amperes))
            {
                json.WriteNullValue();
            }
            else
            {
                json.WriteNumberValue(amperes);
            }
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static AmpacityRow MakeRow(Values at) => AmpacityRow.Create(
        at.Get(Size), [.. at.Get(Currents).Select(amperes => double.IsNaN(amperes) ? (ElectricCurrent?)null : ElectricCurrent.FromAmperes(amperes))]);

    private static AmpacityTable Make(Values at) => AmpacityTable.Create(
        at.Get(Name), Temperature.FromDegreesCelsius(at.Get(Ambient)), at.Get(Together), [.. at.Get(Columns).Select(celsius => Temperature.FromDegreesCelsius(celsius))], at.Get(Rows), at.Get(Source));
}
