using System.Text.Json;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>A load case in a document.</summary>
internal static class LoadCasePart
{
    private static readonly WordForm<SupplyLevel> Levels = new(("minimum", SupplyLevel.Minimum), ("nominal", SupplyLevel.Nominal), ("maximum", SupplyLevel.Maximum));

    private static readonly Member<SupplyLevel> Level = Member.Optional<SupplyLevel>("level", Levels, "Where in its range every source is; left out: at each level.");
    private static readonly Member<double> Ambient = Member.Optional<double>("ambient_C", Ranges.Ambient, "Air everywhere, °C; left out: that of each place.");

    internal static Member<string> Name { get; } = Member.Needed<string>("name", TextForm.Name, "Its name, of its own among the load cases.");

    internal static Member<string[]> Off { get; } = Ids("off", "Loads that are off.");

    internal static Member<string[]> Starting { get; } = Ids("starting", "Loads that start.");

    internal static Member<string[]> Stalled { get; } = Ids("stalled", "Motors whose rotors are locked.");

    internal static Member<string[]> Closed { get; } = Ids("closed", "Switches that are closed.");

    internal static Member<string[]> Open { get; } = Ids("open", "Switches that are open.");

    internal static ObjectForm Form { get; } = new("load_case", "What is on, which switches are closed, at which supply voltage and temperature. What is not named runs, or stands as it is stated.", Make, [Name, Level, Ambient, Off, Starting, Stalled, Closed, Open]);

    internal static void Write(Utf8JsonWriter json, LoadCase used)
    {
        json.WriteStartObject();
        json.Put(Name, used.Name);
        if (used.Level is { } level)
        {
            json.WriteString(Level.Encoded, Levels.WordOf(level));
        }

        json.PutIf(Ambient, used.AmbientCelsius);
        Write(json, Off, used.Off);
        Write(json, Starting, used.Starting);
        Write(json, Stalled, used.Stalled);
        Write(json, Closed, [.. used.Switches.Where(own => own.Value).Select(own => own.Key)]);
        Write(json, Open, [.. used.Switches.Where(own => !own.Value).Select(own => own.Key)]);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Member<string[]> member, IReadOnlyList<string> ids)
    {
        if (ids.Count > 0)
        {
            json.PutAll(member, ids);
        }
    }

    private static LoadCase Make(Values at)
    {
        LoadCase used = LoadCase.Create(at.Get(Name)).WithOff(at.Or(Off, [])).WithStarting(at.Or(Starting, [])).WithStalled(at.Or(Stalled, []));
        foreach (string id in at.Or(Closed, []))
        {
            used = used.WithSwitch(id, true);
        }

        foreach (string id in at.Or(Open, []))
        {
            used = used.WithSwitch(id, false);
        }

        used = at.Maybe(Ambient) is { } celsius ? used.WithAmbient(Temperature.FromDegreesCelsius(celsius)) : used;
        return at.Maybe(Level) is { } level ? used.WithLevel(level) : used;
    }

    private static Member<string[]> Ids(string name, string says) => Member.Optional<string[]>(name, new ListForm<string>(TextForm.Name), says + " Left out: none.");
}
