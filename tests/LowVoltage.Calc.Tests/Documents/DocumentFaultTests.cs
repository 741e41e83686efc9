using System.Globalization;
using LowVoltage.Calc.Documents;

namespace LowVoltage.Calc.Tests.Documents;

public class DocumentFaultTests
{
    // Twenty-four mistakes, each on a line of its own; the comments are taken out before reading.
    private const string Wrong = """
        {
          "lowvoltage_circuit": 2,
          "name": 5,
          "rules": "road vehicles",
          "source": {
            "kind": "lead-acid battery",
            "cold_cranking_A": "600 A",
            "blocks_in_series": 1.5,
            "voltage_V": 12
          },
          "load": {
            "kind": "motor",
            "running_A": 5,
            "peak_A": 30,
            "locked_rotor_A": 20,
            "start_duration_s": 0.3
          },
          "feed_m": -1,
          "feed_m": 2,
          "return": { "kind": "hull", "resistance_ohm": 0.001 },
          "joints": [
            { "name": "crimp", "resistance_ohm": 1e999 },
            { "name": "plug" },
            "fuse"
          ],
          "supply_lead_ohm": null,
          "fuse_ambient_C": 300,
          "starts": 0,
          "place": {
            "ambient": 50,
            "loaded_conductors": 0,
            "engine_space": "no"
          },
          "insulation": { "name": "own", "continuous_C": 90, "emissivity": 0.9 },
          "sheathed_to_fuse": [],
          "drop_limit": { "per_cent": 3 },
          "laid": {
            "conductor": {
              "series": "road-vehicle plain copper",
              "size": "7 mm²"
            },
            "fuse": {
              "series": "ISO 8820-3 type C",
              "rating_A": 16
            }
          }
        }
        """;

    [Fact]
    public void Read_OfManyMistakes_NamesEveryOneWithItsPlace()
    {
        Assert.False(CircuitDocument.TryRead(Wrong.ReplaceLineEndings("\n"), out CircuitDocument? document, out IReadOnlyList<DocumentFault> faults));
        Assert.Null(document);
        string[] expected =
        [
            "2:25 $.lowvoltage_circuit must be 1",
            "3:11 $.name must be a text",
            "4:12 $.rules must be one of",
            "7:24 $.source.cold_cranking_A must be a number, in A",
            "8:25 $.source.blocks_in_series must be a whole number from 1 to 1000; it was 1.5",
            "9:5 $.source.voltage_V \"voltage_V\" is not known here",
            "14:15 $.load.peak_A peak must be from 5 A to 20 A; it was 30 A",
            "18:13 $.feed_m must be from 1E-12 to 1E+07 m; it was -1",
            "19:3 $.feed_m \"feed_m\" is given twice",
            "20:23 $.return.kind must be one of",
            "22:42 $.joints[0].resistance_ohm must be from 0 to 1E+09 Ω",
            "23:5 $.joints[1] \"resistance_ohm\" is missing",
            "24:5 $.joints[2] must be an object",
            "26:22 $.supply_lead_ohm must be a number, in Ω; it was null",
            "27:21 $.fuse_ambient_C must be from -60 to 250 °C",
            "28:13 $.starts must be a whole number from 1",
            "29:12 $.place \"ambient_C\" is missing",
            "30:5 $.place.ambient \"ambient\" is not known here; known are ambient_C",
            "31:26 $.place.loaded_conductors must be a whole number from 1",
            "32:21 $.place.engine_space must be true or false",
            "34:68 $.insulation.emissivity needs \"thermal_resistivity_K_m_per_W\"",
            "34:68 $.insulation.emissivity needs \"heat_capacity_J_per_m3_K\"",
            "35:23 $.sheathed_to_fuse must be true or false; it was a list",
            "36:17 $.drop_limit must have \"percent\" or \"drop_V\"",
            "40:15 $.laid.conductor.size must be a size of \"road-vehicle plain copper\"",
            "44:19 $.laid.fuse.rating_A must be a rating of \"ISO 8820-3 type C\"",
        ];
        Assert.Equal(expected, faults.Select((fault, i) => i < expected.Length && Told(fault).StartsWith(expected[i], StringComparison.Ordinal) ? expected[i] : Told(fault)));
        DocumentException refused = Assert.Throws<DocumentException>(() => CircuitDocument.Read(Wrong));
        Assert.Equal(expected.Length, refused.Faults.Count);
        Assert.StartsWith("The document has 26 mistakes:\n2:25 $.lowvoltage_circuit: must be 1", refused.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "1:1 $ This is no JSON")]
    [InlineData("{\n  \"a\": 1,\n  \"b\" 2\n}", "3:7 $ This is no JSON")]
    [InlineData("{ \"joints\": [ {\n\"name\": ü } ] }", "2:9 $.joints[0] This is no JSON")]
    [InlineData("{} {}", "1:4 $ This is no JSON")]
    [InlineData("[]", "1:1 $ must be an object; it was a list")]
    [InlineData("{ \"odd name\": { \"x\": 1 } }", "1:3 $['odd name'] \"odd name\" is not known here")]
    public void Read_OfNoJson_TellsThePlace(string json, string expected)
    {
        Assert.False(CircuitDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults));
        Assert.Contains(faults, fault => Told(fault).StartsWith(expected, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_CountsColumnsInCharacters()
    {
        string json = Pieces.Least.Replace("\"feed_m\": 5.5", "\"name\": \"äöü²\", \"feed_m\": \"x\"", StringComparison.Ordinal).ReplaceLineEndings("\n");
        Assert.False(CircuitDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults));
        DocumentFault fault = Assert.Single(faults);
        string line = json.Split('\n')[fault.Line - 1];
        Assert.Equal("\"x\"", line.Substring(fault.Column - 1, 3));
        Assert.Equal("$.feed_m", fault.Path);
    }

    [Fact]
    public void Read_OfFewerParallelWiresAtMostThanAtLeast_TellsThePlace()
    {
        string json = Pieces.Least.Replace("\"feed_m\": 5.5", "\"parallel_wires\": 4, \"parallel_wires_up_to\": 2, \"feed_m\": 5.5", StringComparison.Ordinal);
        Assert.False(CircuitDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults));
        DocumentFault fault = Assert.Single(faults);
        Assert.Equal("$.parallel_wires_up_to", fault.Path);
        Assert.Contains("parallel_wires_up_to must be at least parallel_wires, 4; it was 2.", Told(fault), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_OfDeepNesting_IsRefused()
    {
        string json = string.Concat(Enumerable.Repeat("{\"a\":", 5000)) + "1" + new string('}', 5000);
        Assert.Contains("This is no JSON", Assert.Throws<DocumentException>(() => CircuitDocument.Read(json)).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("ar-SA")]
    public void Read_InAnyCulture_IsTheSame(string name)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);
            Assert.Equal(5.5, CircuitDocument.Read(Pieces.Least).Requirements.Feed.Meters);
            Assert.Contains("\"feed_m\": 5.5,", CircuitDocument.Read(Pieces.Least).Write(), StringComparison.Ordinal);
            Assert.Contains("it was -1 m", Assert.Throws<DocumentException>(() => CircuitDocument.Read(Pieces.Least.Replace("5.5,\n", "-1,\n", StringComparison.Ordinal))).Message.Replace("it was -1.", "it was -1 m", StringComparison.Ordinal), StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Read_OfNull_NamesTheParameter()
    {
        Assert.Equal("json", Assert.Throws<ArgumentNullException>(() => CircuitDocument.Read((string)null!)).ParamName);
        Assert.Equal("json", Assert.Throws<ArgumentNullException>(() => DesignDocument.Read((string)null!)).ParamName);
    }

    private static string Told(DocumentFault fault) => $"{fault.Line}:{fault.Column} {fault.Path} {fault.Message}";
}
