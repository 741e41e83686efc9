using System.Globalization;
using System.Text.Json;

namespace CircuitPage;

/// <summary>The members of a circuit document under the keys of the fields; what has no field is left out, and the caller compares.</summary>
internal static class DocumentCells
{
    // Path of a member, key of the field, factor between their units.
    private static readonly (string Path, string Key, double Factor)[] Numbers =
    [
        ("source.cold_cranking_A", "cold_cranking_A", 1), ("source.blocks_in_series", "blocks_in_series", 1), ("source.strings_in_parallel", "strings_in_parallel", 1),
        ("source.temperature_C", "battery_degC", 1), ("source.cells_in_series", "cells_in_series", 1), ("source.capacity_Ah", "capacity_Ah", 1),
        ("source.protection_limit_A", "protection_A", 1), ("source.voltage_V", "supply_V", 1), ("source.regulated_V", "supply_V", 1), ("source.nominal_V", "supply_V", 1),
        ("source.minimum_V", "supply_min_V", 1), ("source.maximum_V", "supply_max_V", 1), ("source.least_resistance_ohm", "source_min_mOhm", 1e3),
        ("source.greatest_resistance_ohm", "source_max_mOhm", 1e3), ("source.limit_A", "limit_A", 1), ("source.rated_A", "limit_A", 1),
        ("load.resistance_ohm", "load_Ohm", 1), ("load.current_A", "load_A", 1), ("load.running_A", "load_A", 1), ("load.power_W", "load_W", 1), ("load.rated_W", "load_W", 1),
        ("load.rated_V", "load_rated_V", 1), ("load.efficiency", "efficiency_percent", 100), ("load.peak_A", "start_A", 1), ("load.locked_rotor_A", "locked_A", 1),
        ("load.start_duration_s", "start_s", 1), ("load.minimum_V", "load_min_V", 1), ("load.duty_fraction", "duty_percent", 100), ("load.input_capacitance_F", "input_uF", 1e6),
        ("feed_m", "feed_m", 1), ("return.length_m", "return_m", 1), ("return.other_current_A", "shared_other_A", 1), ("supply_lead_ohm", "supply_lead_mOhm", 1e3),
        ("fuse_distance_m", "fuse_distance_m", 1), ("fuse_ambient_C", "fuse_degC", 1), ("starts", "starts", 1), ("place.ambient_C", "ambient_degC", 1),
        ("place.loaded_conductors", "loaded_conductors", 1), ("place.bundle_loading", "bundle_loading_percent", 100), ("place.altitude_m", "altitude_m", 1),
        ("drop_limit.percent", "drop_limit_percent", 1), ("drop_limit.drop_V", "drop_limit_V", 1),
    ];

    private static readonly (string Path, string Key)[] Ticks =
    [
        ("load.thermal_cut_out", "thermal_cut_out"), ("intermittent", "intermittent"), ("sheathed_to_fuse", "fuse_lead_sheathed"), ("place.engine_space", "engine_space"),
    ];

    private static readonly Dictionary<string, string> Kinds = new(StringComparer.Ordinal)
    {
        ["lead-acid battery"] = "lead-acid", ["lithium iron phosphate pack"] = "LiFePO4", ["current-limited supply"] = "current-limited", ["alternator"] = "alternator",
        ["voltage"] = "voltage", ["voltage range"] = "voltage", ["resistance"] = "resistance", ["constant current"] = "current", ["constant power"] = "power", ["lamp"] = "lamp",
        ["motor"] = "motor",
    };

    public static Dictionary<string, string> Of(JsonElement circuit)
    {
        Dictionary<string, string> texts = new(StringComparer.Ordinal);
        foreach ((string path, string key, double factor) in Numbers)
        {
            if (At(circuit, path) is { ValueKind: JsonValueKind.Number } number)
            {
                texts[key] = (factor == 1 ? number.GetDouble() : Math.Round(number.GetDouble() * factor, 12)).ToString("R", CultureInfo.InvariantCulture);
            }
        }

        foreach ((string path, string key) in Ticks.Where(tick => At(circuit, tick.Path) is { ValueKind: JsonValueKind.True }))
        {
            texts[key] = "yes";
        }

        Put(texts, "circuit", Word(circuit, "name"));
        Put(texts, "practice", Word(circuit, "rules"));
        Put(texts, "supply", Kinds.GetValueOrDefault(Word(circuit, "source.kind"), ""));
        Put(texts, "load", Kinds.GetValueOrDefault(Word(circuit, "load.kind"), ""));
        Put(texts, "cold_cranking_test", Fields.Find("cold_cranking_test")!.Choices.FirstOrDefault(choice => Word(circuit, "source.test").StartsWith(choice.Value, StringComparison.Ordinal))?.Value ?? "");
        PutReturn(circuit, texts);
        PutInsulation(circuit, texts);
        PutJoints(circuit, texts);
        return texts;
    }

    private static void PutReturn(JsonElement circuit, Dictionary<string, string> texts)
    {
        string kind = Word(circuit, "return.kind");
        texts["return"] = kind == "chassis" ? WayFields.Chassis : kind == "shared resistance" ? WayFields.Shared : WayFields.Wire;
        if (At(circuit, "return.resistance_ohm") is { ValueKind: JsonValueKind.Number } ohms)
        {
            texts[kind == "chassis" ? "chassis_mOhm" : "shared_mOhm"] = Math.Round(ohms.GetDouble() * 1e3, 12).ToString("R", CultureInfo.InvariantCulture);
        }
    }

    private static void PutInsulation(JsonElement circuit, Dictionary<string, string> texts)
    {
        string name = Word(circuit, "insulation");
        Put(texts, "insulation", CircuitSchedule.Words.Insulations.FirstOrDefault(pair => pair.Value.Name == name).Key ?? "");
    }

    // One joint by the page's own name; others have names that no field can hold.
    private static void PutJoints(JsonElement circuit, Dictionary<string, string> texts)
    {
        if (At(circuit, "joints") is { ValueKind: JsonValueKind.Array } joints && joints.GetArrayLength() == 1 && At(joints[0], "resistance_ohm") is { ValueKind: JsonValueKind.Number } ohms)
        {
            texts["joints_mOhm"] = Math.Round(ohms.GetDouble() * 1e3, 12).ToString("R", CultureInfo.InvariantCulture);
        }
    }

    private static void Put(Dictionary<string, string> texts, string key, string text)
    {
        if (text.Length > 0)
        {
            texts[key] = text;
        }
    }

    private static string Word(JsonElement circuit, string path) => At(circuit, path) is { ValueKind: JsonValueKind.String } word ? word.GetString()! : "";

    private static JsonElement? At(JsonElement element, string path)
    {
        foreach (string name in path.Split('.'))
        {
            if (element.ValueKind != JsonValueKind.Object || !element.TryGetProperty(name, out element))
            {
                return null;
            }
        }

        return element;
    }
}
