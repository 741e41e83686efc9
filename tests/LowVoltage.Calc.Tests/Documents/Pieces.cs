using System.Text.Json.Nodes;
using LowVoltage.Calc.Documents;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>Pieces of documents written by hand: every kind of everything, every member at least once. Invented.</summary>
internal static class Pieces
{
    private const string Reference = """{ "title": "a data sheet", "kind": "handbook", "edition": "2026", "locator": "page 3", "note": "invented" }""";

    /// <summary>A circuit with nothing but what is needed.</summary>
    internal const string Least = """
        {
          "lowvoltage_circuit": 1,
          "rules": "road vehicle",
          "source": { "kind": "lead-acid battery", "cold_cranking_A": 600 },
          "load": { "kind": "constant power", "power_W": 60 },
          "feed_m": 5.5,
          "return": { "kind": "wire", "length_m": 5.5 },
          "place": { "ambient_C": 50 },
          "insulation": "XLPE (90 °C)"
        }
        """;

    internal const string Most = """
        {
          "lowvoltage_circuit": 1,
          "$schema": "circuit.json",
          "name": "cooler",
          "parallel_wires": 2,
          "parallel_wires_up_to": 3,
          "rules": "small craft",
          "source": { "kind": "lead-acid battery", "cold_cranking_A": 600, "test": "EN 50342-1", "blocks_in_series": 2, "strings_in_parallel": 2, "temperature_C": 10 },
          "load": { "kind": "constant power", "power_W": 60, "efficiency": 0.9, "minimum_V": 10.5, "duty_fraction": 0.5, "thermal_cut_out": true, "input_capacitance_F": 0.001 },
          "feed_m": 5.5,
          "return": { "kind": "chassis", "resistance_ohm": 0.003 },
          "joints": [ { "name": "fuse and holder", "resistance_ohm": 0.004 }, { "name": "crimp", "resistance_ohm": 0 } ],
          "supply_lead_ohm": 0.012,
          "supply_protection": [
            { "fuse": { "series": "IEC 60269-2 gG, 250 V", "rating_A": 63 }, "supply_lead_ohm": 0.0003, "distance_m": 0.1, "sheathed": true, "ambient_C": 40, "let_through_A2s": 20000,
              "withstand_behind_A2s": 30000, "least_melting_A2s": 9000,
              "lead": { "feed": [ { "conductor": { "series": "road-vehicle plain copper", "size": "25 mm²" }, "length_m": 2 } ], "return": { "kind": "wire", "length_m": 2 },
                "feed_joints": [ { "name": "switch", "resistance_ohm": 0.0002 } ], "return_joints": [ { "name": "lug", "resistance_ohm": 0.0001 } ] } }
          ],
          "fuse_distance_m": 0.15,
          "sheathed_to_fuse": true,
          "fuse_ambient_C": 60,
          "starts": 2000,
          "place": { "ambient_C": 50, "loaded_conductors": 6, "bundle_loading": 0.5, "altitude_m": 1500, "engine_space": true },
          "insulation": "XLPE (90 °C)",
          "wall_mm": 0.7,
          "intermittent": true,
          "drop_limit": { "percent": 3, "reference": REFERENCE }
        }
        """;

    private const string Bare = """{ "series": "road-vehicle plain copper", "size": "4 mm²" }""";

    private const string Stated = """
        { "name": "4 mm² tinned, fine strands", "resistance_ohm_per_m": 0.0072, "area_mm2": 3.9, "diameter_mm": 2.7, "material": MATERIAL, "reference": REFERENCE,
          "size": "4 mm2", "system": "road vehicle", "basis": "stated", "lay_factor": 1.03 }
        """;

    private static readonly string[] Materials =
    [
        "\"copper\"", """{ "tinned_strand_mm": 0.4 }""", """{ "copper_share": 0.15 }""", """{ "conductivity_percent": 98 }""",
        """{ "name": "own metal", "resistivity_ohm_m": 1.75e-8, "temperature_coefficient_per_K": 0.0039, "density_kg_per_m3": 8900, "heat_capacity_J_per_m3_K": 3.4e6, "melting_point_C": 1080, "reference": REFERENCE }""",
    ];

    private const string Fuses = """
        { "ratings_A": [ 5, 10, 20 ], "name": "own fuses", "fuse_kind": "fuse", "reference": REFERENCE, "voltage_V": 58, "voltage_for": "direct current",
          "breaking_capacity_A": 2000, "breaking_capacity_for": "direct current", "breaking_capacity_reference": REFERENCE, "limits": "ISO 8820-3 type C",
          "rerating": { "ambients_C": [ 25, 85 ], "factors": [ 1, 0.8 ], "name": "own", "reference": REFERENCE },
          "curves": [
            { "rating_A": 10, "longest": [ { "current_A": 13.5, "time_s": 600 }, { "current_A": 60, "time_s": 0.1 } ], "least": [ { "current_A": 13.5, "time_s": 1 } ], "non_fusing": { "current_A": 11, "time_s": 360000 } },
            { "rating_A": 20, "longest": [ { "current_A": 29, "time_s": 3600 } ], "circuit_breaker": true }
          ] }
        """;

    private const string Table = """
        { "rows": [ { "size": "2.5 mm²", "currents_A": [ 20, null ] }, { "size": "4 mm²", "currents_A": [ 28, 33 ] } ], "name": "own table", "base_ambient_C": 30, "loaded_conductors": 2,
          "insulation_ratings_C": [ 70, 90 ], "reference": REFERENCE }
        """;

    // What any load may have besides.
    private static readonly string[] CommonOfLoads =
        ["""{ "minimum_V": 9, "duty_fraction": 0.25, "thermal_cut_out": true, "input_capacitance_F": 0.001 }""", """{ "duty_on_s": 1, "duty_period_s": 4 }"""];

    /// <summary>Values that may stand for a member of the least circuit.</summary>
    private static readonly Dictionary<string, string[]> Values = new(StringComparer.Ordinal)
    {
        ["source"] =
        [
            """{ "kind": "lithium iron phosphate pack", "cells_in_series": 4, "capacity_Ah": 100, "protection_limit_A": 150 }""",
            """{ "kind": "voltage", "voltage_V": 12, "resistance_ohm": 0.01 }""",
            """{ "kind": "voltage range", "minimum_V": 11, "nominal_V": 12, "maximum_V": 14.4, "least_resistance_ohm": 0.004, "greatest_resistance_ohm": 0.02 }""",
            """{ "kind": "current-limited supply", "voltage_V": 24, "limit_A": 5 }""",
            """{ "kind": "alternator", "regulated_V": 14.2, "rated_A": 90 }""",
            """{ "kind": "in series", "sources": [ { "kind": "voltage", "voltage_V": 12 }, { "kind": "lead-acid battery", "cold_cranking_A": 300 } ] }""",
            """{ "kind": "in parallel", "sources": [ { "kind": "voltage", "voltage_V": 12, "resistance_ohm": 0.01 }, { "kind": "lead-acid battery", "cold_cranking_A": 300 } ] }""",
        ],
        ["load"] =
        [
            """{ "kind": "resistance", "resistance_ohm": 2.4, "duty_on_s": 5, "duty_period_s": 20 }""",
            """{ "kind": "constant current", "current_A": 4 }""",
            """{ "kind": "constant power", "power_W": 40 }""",
            """{ "kind": "lamp", "power_W": 55, "rated_V": 12, "cold_resistance_ratio": 12 }""",
            """{ "kind": "motor", "running_A": 5, "peak_A": 18, "locked_rotor_A": 20, "start_duration_s": 0.3, "rated_V": 12, "thermal_cut_out": true }""",
            """{ "kind": "measured points", "voltages_V": [ 6, 9, 12 ], "currents_A": [ 1.5, 2, 2.2 ] }""",
            """{ "kind": "together", "loads": [ { "kind": "constant current", "current_A": 1, "input_capacitance_F": 0.002 }, { "kind": "lamp", "power_W": 5, "rated_V": 12 } ], "minimum_V": 9 }""",
        ],
        ["return"] =
        [
            $$"""{ "kind": "segments", "segments": [ { "conductor": {{Bare}}, "length_m": 2, "parallel": 2, "insulation": "PVC (70 °C)", "wall_mm": 0.6, "place": { "ambient_C": 70 }, "temperature": { "conductor_C": 80 } } ] }""",
            """{ "kind": "chassis", "resistance_ohm": 0.002 }""",
            $$"""{ "kind": "shared segments", "segments": [ { "conductor": {{Bare}}, "length_m": 2, "temperature": { "ambient_C": 40, "rated_A": 20, "rated_C": 90 } } ], "other_current_A": 10 }""",
            """{ "kind": "shared resistance", "resistance_ohm": 0.002, "other_current_A": 10 }""",
        ],
        ["insulation"] =
        [
            """{ "name": "125 °C rated", "continuous_C": 125 }""",
            """{ "name": "own", "continuous_C": 105, "short_circuit_C": 200, "short_circuit_above_300_mm2_C": 180, "short_circuit_is_published": false, "thermal_resistivity_K_m_per_W": 4, "heat_capacity_J_per_m3_K": 2e6, "emissivity": 0.9, "reference": REFERENCE, "short_circuit_reference": REFERENCE, "thermal_reference": REFERENCE }""",
        ],
        ["drop_limit"] = ["\"FAA AC 43.13-1B Table 11-6\"", """{ "drop_V": 0.3, "reference": REFERENCE }"""],
        ["rules"] =
        [
            """{ "like": "bench", "drop_limit": { "percent": 5 } }""",
            """{ "like": "bench", "conductors": { "of": "AWG, stranded copper", "name": "on the shelf", "sizes": [ "14 AWG", "10 AWG", "4/0 AWG" ] }, "fuses": { "combined": [ "ISO 8820-3 type C", "ISO 8820-5 type SF 51" ], "name": "two" } }""",
            """{ "like": "bench", "fuses": { "like": "ISO 8820-5 type SF 51", "limits": "ISO 8820-5" } }""",
            $$"""{ "like": "bench", "fuses": {{Fuses}}, "ampacity": { "table": {{Table}} } }""",
            $$"""
            { "like": "bench", "ampacity": { "table": {{Table}}, "ambient": { "ambients_C": [ 30, 45 ], "factors": [ 1, 0.85 ], "name": "air factors", "reference": REFERENCE },
              "grouping": { "counts": "loaded conductors", "together": [ 2, 4, 9 ], "factors": [ 1, 0.8, 0.6 ], "name": "bundle factors", "reference": REFERENCE } } }
            """,
            $$"""{ "like": "bench", "ampacity": { "table": {{Table}}, "grouping": { "counts": "circuits", "together": [ 1, 3 ], "factors": [ 1, 0.7 ], "name": "loom factors", "reference": REFERENCE } } }""",
            """{ "like": "bench", "ampacity": { "lower_of": [ "heat balance in still air", { "table": "IEC 60364-5-52 method F, two loaded conductors, copper" } ] } }""",
            """
            { "name": "own", "conductors": { "conductors": [ { "series": "road-vehicle plain copper", "size": "1.5 mm²" }, { "series": "road-vehicle plain copper", "size": "2.5 mm²" } ], "name": "two", "reference": REFERENCE },
              "fuses": "ISO 8820-3 type C", "ampacity": "heat balance in still air", "drop_limit": { "percent": 5 },
              "fuse_practice": { "loading": 0.75, "loading_reference": REFERENCE, "share_of_ampacity": 1, "share_reference": REFERENCE, "fault_time_s": 1, "fault_reference": REFERENCE,
                "overload": { "sustained_K": 10, "opened_K": 20, "name": "own", "reference": REFERENCE }, "distance": { "open_m": 0.1, "sheathed_m": 1, "name": "own", "reference": REFERENCE } },
              "minimum_section_mm2": 0.5, "minimum_section_reference": REFERENCE }
            """,
            """{ "like": "road vehicle", "fuse_practice": { "overload": "currents only", "distance": "33 CFR 183.455" } }""",
        ],
        ["laid"] =
        [
            $$"""{ "conductor": {{Bare}}, "fuse": { "series": "ISO 8820-3 type C", "rating_A": 15 } }""",
            .. Materials.Select(material => $$"""{ "conductor": {{Stated.Replace("MATERIAL", material, StringComparison.Ordinal)}} }"""),
            $$"""{ "feed": [ { "conductor": {{Bare}}, "length_m": 3 }, { "conductor": {{Bare}}, "length_m": 1 } ], "return": { "kind": "chassis", "resistance_ohm": 0.002 }, "feed_joints": [ { "name": "j", "resistance_ohm": 0.001 } ], "return_joints": [], "fuse": { "series": "ISO 8820-3 type C", "rating_A": 15 } }""",
        ],
    };

    /// <summary>Circuits of every kind, each with the name of the member that is special in it.</summary>
    internal static IEnumerable<(string Special, string Json)> Circuits()
    {
        yield return ("", Least);
        yield return ("", Full(Most));
        foreach ((string member, string[] values) in Values)
        {
            foreach (string value in values)
            {
                JsonObject circuit = JsonNode.Parse(Least)!.AsObject();
                circuit[member] = JsonNode.Parse(Full(value));
                yield return (member, circuit.ToJsonString());
                if (member == "load")
                {
                    foreach (string common in CommonOfLoads)
                    {
                        JsonObject load = circuit["load"]!.AsObject();
                        load.Remove("duty_on_s");
                        load.Remove("duty_period_s");
                        load.Remove("duty_fraction");
                        foreach ((string name, JsonNode? own) in JsonNode.Parse(common)!.AsObject())
                        {
                            load[name] = own!.DeepClone();
                        }

                        yield return (member, circuit.ToJsonString());
                    }
                }
            }
        }
    }

    /// <summary>A design, one that nothing fits, and verifications.</summary>
    internal static IEnumerable<string> Designs()
    {
        foreach (string json in Circuits().Where(piece => piece.Special is "" or "laid").Select(piece => piece.Json).Take(4).Append(Least.Replace("5.5", "400", StringComparison.Ordinal)).Append(VerifiedWithARange()))
        {
            yield return DesignDocument.Create(CircuitDocument.Read(json).Answer()).Write().Replace("\"lowvoltage_design\": 1,", "\"lowvoltage_design\": 1, \"$schema\": \"design.json\",", StringComparison.Ordinal);
        }
    }

    // A design states the number that it found; a verification keeps the range.
    private static string VerifiedWithARange()
    {
        JsonObject circuit = JsonNode.Parse(Least)!.AsObject();
        circuit["parallel_wires_up_to"] = 2;
        circuit["laid"] = JsonNode.Parse(Full(Values["laid"][0]));
        return circuit.ToJsonString();
    }

    private static string Full(string json) => json.Replace("REFERENCE", Reference, StringComparison.Ordinal).Replace("MATERIAL", Materials[0], StringComparison.Ordinal);
}
