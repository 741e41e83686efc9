using LowVoltage.Calc.Documents;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The example of the how-to page on JSON.</summary>
internal static class JsonExample
{
    public static void Run(TextWriter output)
    {
        #region use
        CircuitDocument circuit = CircuitDocument.Read(
            """
            {
              "lowvoltage_circuit": 1,
              "name": "cooler",
              "rules": "road vehicle",
              "source": { "kind": "lead-acid battery", "cold_cranking_A": 600 },
              "load": { "kind": "constant power", "power_W": 60, "efficiency": 0.9, "minimum_V": 10.5 },
              "feed_m": 5.5,
              "return": { "kind": "wire", "length_m": 5.5 },
              "joints": [ { "name": "fuse, holder and crimps", "resistance_ohm": 0.008 } ],
              "supply_lead_ohm": 0.012,
              "place": { "ambient_C": 50, "loaded_conductors": 6 },
              "insulation": "XLPE (90 °C)"
            }
            """);
        CircuitDesign design = circuit.Answer();
        string result = DesignDocument.Create(design).Write();
        #endregion

        output.WriteLine(design);
        output.WriteLine($"a result of {result.Split('\n').Length} lines, which reads back and is asked again: {DesignDocument.Read(result).Verify().Verdict}");
    }

    public static void Mistakes(TextWriter output)
    {
        #region mistakes
        const string Spoilt = """
            {
              "lowvoltage_circuit": 1,
              "rules": "road vehicle",
              "source": { "kind": "lead-acid battery", "cold_cranking_A": "600 A" },
              "load": { "kind": "motor", "running_A": 5, "peak_A": 30, "locked_rotor_A": 20, "start_duration_s": 0.3 },
              "feed": 5.5,
              "return": { "kind": "wire", "length_m": 5.5 },
              "place": { "ambient_C": 500 },
              "insulation": "PVC (70 °C)"
            }
            """;
        if (!CircuitDocument.TryRead(Spoilt, out _, out IReadOnlyList<DocumentFault> faults))
        {
            foreach (DocumentFault fault in faults)
            {
                output.WriteLine(fault);
            }
        }

        #endregion
    }
}
