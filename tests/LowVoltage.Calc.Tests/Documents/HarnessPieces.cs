using System.Text.Json.Nodes;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>Harness documents written by hand, every member at least once. Invented.</summary>
internal static class HarnessPieces
{
    internal const string Van = """
        {
          "lowvoltage_harness": 1,
          "$schema": "harness.json",
          "name": "van",
          "rules": "road vehicle",
          "place": { "ambient_C": 45 },
          "insulation": "PVC (70 °C)",
          "nodes": [
            { "id": "battery +" }, { "id": "battery −", "kind": "ground" }, { "id": "panel", "kind": "busbar" }, { "id": "roof +", "kind": "terminal" },
            { "id": "S1", "kind": "splice" }, { "id": "lamp +" }, { "id": "pump +" }, { "id": "frame", "kind": "ground" }
          ],
          "reference_node": "battery −",
          "sources": [
            { "id": "battery", "positive": "battery +", "negative": "battery −", "source": { "kind": "lead-acid battery", "cold_cranking_A": 600 } },
            { "id": "roof", "positive": "roof +", "negative": "battery −",
              "solar_panel": { "short_circuit_current_A": 6.1, "open_circuit_voltage_V": 21.6, "voltage_at_maximum_power_V": 17.6, "current_at_maximum_power_A": 5.7 } }
          ],
          "branches": [
            { "kind": "fuse", "id": "main", "from": "battery +", "to": "panel", "fuse": { "series": "ISO 8820-5 type SF 51", "rating_A": 100 }, "resistance_ohm": 0.001, "ambient_C": 55 },
            { "kind": "wire", "id": "roof lead", "from": "roof +", "to": "panel", "conductor": { "series": "IEC 60228 class 5 tinned copper", "size": "4 mm²" }, "length_m": 6, "insulation": "XLPE (90 °C)" },
            { "kind": "wire", "id": "rear", "from": "panel", "to": "S1", "conductor": "4 mm²", "length_m": 4, "parallel": 2, "place": { "ambient_C": 60, "loaded_conductors": 4 }, "wall_mm": 0.5,
              "joints": [ { "name": "plug", "resistance_ohm": 0.002 } ] },
            { "kind": "fuse", "id": "lamp fuse", "from": "S1", "to": "lamp +", "rating_A": 5 },
            { "kind": "switch", "id": "pump switch", "from": "S1", "to": "pump +", "resistance_ohm": 0.005, "is_closed": false },
            { "kind": "chassis", "id": "body", "from": "frame", "to": "battery −", "resistance_ohm": 0.002, "length_m": 3 },
            { "kind": "resistance", "id": "shunt", "from": "panel", "to": "lamp +", "resistance_ohm": 400, "length_m": 0.2 }
          ],
          "loads": [
            { "id": "lamp", "positive": "lamp +", "negative": "frame", "load": { "kind": "lamp", "power_W": 21, "rated_V": 12 } },
            { "id": "pump", "positive": "pump +", "negative": "frame", "load": { "kind": "motor", "running_A": 4, "peak_A": 15, "locked_rotor_A": 16, "start_duration_s": 0.4 }, "intermittent": true,
              "drop_limit": { "percent": 5 }, "starts": 5000 }
          ],
          "load_cases": [
            { "name": "parked", "off": [ "pump" ], "open": [ "pump switch" ] },
            { "name": "pumping", "level": "minimum", "ambient_C": 30, "starting": [ "pump" ], "off": [ "lamp" ], "closed": [ "pump switch" ] },
            { "name": "stuck", "stalled": [ "pump" ], "closed": [ "pump switch" ] }
          ]
        }
        """;

    /// <summary>Wires to be sized and fuses to be chosen.</summary>
    internal const string ToBeSized = """
        {
          "lowvoltage_harness": 1,
          "rules": "bench",
          "nodes": [ { "id": "+" }, { "id": "−" }, { "id": "a" }, { "id": "b" } ],
          "sources": [ { "id": "supply", "positive": "+", "negative": "−", "source": { "kind": "voltage", "voltage_V": 24, "resistance_ohm": 0.05 } } ],
          "branches": [
            { "kind": "fuse", "id": "F1", "from": "+", "to": "a" },
            { "kind": "wire", "id": "W1", "from": "a", "to": "b", "length_m": 3, "place": { "ambient_C": 25 }, "insulation": "PVC (70 °C)" }
          ],
          "loads": [ { "id": "fan", "positive": "b", "negative": "−", "load": { "kind": "constant power", "power_W": 30 } } ]
        }
        """;

    /// <summary>A verification with solutions, and one in a case that has none.</summary>
    internal static IEnumerable<string> Results()
    {
        foreach (string json in new[] { Van, Van.Replace("\"resistance_ohm\": 0.002, \"length_m\": 3 },", "\"resistance_ohm\": 2, \"length_m\": 3 },", StringComparison.Ordinal).Replace("\"power_W\": 21, \"rated_V\": 12", "\"power_W\": 900", StringComparison.Ordinal).Replace("\"lamp\", \"power_W\"", "\"constant power\", \"power_W\"", StringComparison.Ordinal) })
        {
            Harness harness = HarnessDocument.Read(json).Harness;
            string result = HarnessResultDocument.Create(HarnessDesigner.Verify(harness), harness.Solve(), harness.Solve(SupplyLevel.Minimum, harness.LoadCases[1])).Write();
            JsonObject document = JsonNode.Parse(result)!.AsObject();
            document["$schema"] = "harness-result.json";
            document["harness"]!["place"] = new JsonObject { ["ambient_C"] = 40 };
            document["harness"]!["insulation"] = "PVC (70 °C)";
            document["checks"]![0]!["toward"] = "S1";
            yield return document.ToJsonString();
        }
    }

    /// <summary>An audit cut down to a short that stays, one in which a fuse may open, and an interruption, and every member at least once.</summary>
    internal static string Audit()
    {
        JsonObject document = JsonNode.Parse(FaultAuditDocument.Create(FaultAudit.Run(HarnessDocument.Read(Van).Harness)).Write())!.AsObject();
        document["$schema"] = "fault-audit.json";
        JsonObject[] all = [.. document["faults"]!.AsArray().Select(fault => fault!.AsObject())];
        JsonObject[] kept =
        [
            all.First(fault => fault.ContainsKey("remaining_current_A") && fault["wires"]!.AsArray().Count > 0),
            all.First(fault => fault["openings"]!.AsArray().Count > 0),
            all.First(fault => fault["loads"]!.AsArray().Count > 0),
        ];
        kept[0]["wires"]![0]!["melts"] = true;
        kept[0]["wires"]![0]!["stays"] = true;
        kept[0]["reason"] = "The trailer is not there.";
        kept[1]["openings"]![0]!["longest_s"] = 2.5;
        kept[1]["wrong_fuses"] = new JsonArray("main");
        kept[1]["lost_loads"] = new JsonArray("pump");
        kept[2]["loads"]![0]!["through"] = "shunt";
        kept[2]["live_through"] = "shunt";
        document["faults"] = new JsonArray([.. kept.Select(fault => fault.DeepClone())]);
        return document.ToJsonString();
    }

    /// <summary>A sized harness.</summary>
    internal static string Design()
    {
        Harness asked = HarnessDocument.Read(ToBeSized).Harness;
        HarnessDesign design = HarnessDesigner.Design(asked);
        JsonObject document = JsonNode.Parse(HarnessDesignDocument.Create(design, design.Harness.Solve()).Write())!.AsObject();
        document["$schema"] = "harness-design.json";
        return document.ToJsonString();
    }
}
