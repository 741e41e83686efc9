using System.Text.Json;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The example of the how-to page on JSON.</summary>
internal static class JsonExample
{
    public static void Run(TextWriter output)
    {
        #region use
        CircuitDocument circuit = JsonSerializer.Deserialize(
            """
            {
              "name": "cooler",
              "rules": "road vehicle",
              "source": { "kind": "lead-acid battery", "coldCrankingAmperes": 600 },
              "load": { "kind": "constant power", "watts": 60, "efficiency": 0.9, "minimumVolts": 10.5 },
              "feedMeters": 5.5,
              "returnWireMeters": 5.5,
              "joints": [ { "name": "fuse, holder and crimps", "ohms": 0.008 } ],
              "upstreamOhms": 0.012,
              "ambientCelsius": 50,
              "loadedConductors": 6,
              "insulation": "XLPE"
            }
            """,
            CircuitJson.Readable.CircuitDocument)!;

        CircuitDesign design = CircuitDesigner.Design(circuit.ToRequirements(), circuit.ToRules());
        string json = JsonSerializer.Serialize(DesignDocument.From(circuit, design), CircuitJson.Readable.DesignDocument);
        output.WriteLine(json);
        #endregion
    }
}
