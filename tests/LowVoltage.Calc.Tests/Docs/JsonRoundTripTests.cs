using System.Text.Json;
using System.Text.RegularExpressions;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The how-to on JSON: its code compiles, its answer is what it prints, and what goes through JSON comes back to the last bit.</summary>
public partial class JsonRoundTripTests
{
    private static readonly JsonSerializerOptions Reflection = CircuitJson.ReadableOptions();

    [Property(MaxTest = 60)]
    public Property Circuit_ThroughJson_IsTheSameToTheLastBit() => Prop.ForAll(AnyCircuit().ToArbitrary(), circuit =>
    {
        CircuitDocument back = JsonSerializer.Deserialize<CircuitDocument>(JsonSerializer.Serialize(circuit, Reflection), Reflection)!;
        CircuitDocument generated = JsonSerializer.Deserialize(JsonSerializer.Serialize(circuit, CircuitJson.Readable.CircuitDocument), CircuitJson.Readable.CircuitDocument)!;
        Assert.Equal(circuit with { Joints = [] }, back with { Joints = [] });
        Assert.Equal(circuit with { Joints = [] }, generated with { Joints = [] });
        Assert.Equal(circuit.Joints, back.Joints);
        Assert.Equal(circuit.Joints, generated.Joints);

        CircuitRequirements requirements = back.ToRequirements();
        Assert.Equal(circuit.FeedMeters, requirements.Feed.Meters);
        Assert.Equal(circuit.AmbientCelsius, requirements.Place.Ambient.DegreesCelsius);
        Assert.Equal(circuit.UpstreamOhms, requirements.Upstream?.Ohms);
        Assert.Equal(circuit.FuseDistanceMeters, requirements.FuseDistance?.Meters);
        Assert.Equal(circuit.AltitudeMeters, requirements.Place.Altitude.Meters);
        Assert.Equal(circuit.Joints.Select(joint => joint.Ohms), requirements.Joints.Select(joint => joint.Resistance.Ohms));
    });

    [Property(MaxTest = 60)]
    public Property Design_ThroughJson_IsTheSameToTheLastBit() => Prop.ForAll(AnyCircuit().ToArbitrary(), circuit =>
    {
        CircuitDesign design = CircuitDesigner.Design(circuit.ToRequirements(), circuit.ToRules());
        DesignDocument document = DesignDocument.From(circuit, design);
        string json = JsonSerializer.Serialize(document, Reflection);
        Assert.Equal(json, JsonSerializer.Serialize(document, CircuitJson.Readable.DesignDocument));

        DesignDocument back = JsonSerializer.Deserialize<DesignDocument>(json, Reflection)!;
        DesignDocument generated = JsonSerializer.Deserialize(json, CircuitJson.Readable.DesignDocument)!;
        Assert.Equal(json, JsonSerializer.Serialize(generated, Reflection));
        Assert.Equal(document.Checks, back.Checks);
        Assert.Equal(design.Checks.Select(check => BitConverter.DoubleToInt64Bits(check.Value ?? -1)), back.Checks.Select(check => BitConverter.DoubleToInt64Bits(check.Value ?? -1)));
        Assert.Equal(design.Checks.Select(check => BitConverter.DoubleToInt64Bits(check.Limit ?? -1)), back.Checks.Select(check => BitConverter.DoubleToInt64Bits(check.Limit ?? -1)));

        // The circuit that comes back is designed the same.
        Assert.Equal(design.Checks, CircuitDesigner.Design(back.Circuit.ToRequirements(), back.Circuit.ToRules()).Checks);
        if (back.FuseAmperes is not null)
        {
            Assert.Equal(document.Checks, back.Verify().Checks.Select(check => CheckDocument.From(check)));
        }
    });

    [Theory]
    [InlineData("\"feedMeters\": 5.5,", "\"feedMetres\": 5.5,", "feedMetres")]
    [InlineData("\"feedMeters\": 5.5,", "", "feedMeters")]
    [InlineData("\"watts\": 60, ", "", "watts")]
    [InlineData("\"watts\": 60", "\"watts\": 60, \"volts\": 12", "volts")]
    [InlineData(", \"ohms\": 0.008", "", "ohms")]
    public void Circuit_MisspeltOrMissing_IsRefusedByName(string right, string wrong, string named)
    {
        string json = Circuit(Region("JsonExample.cs", "use"));
        Assert.Contains(right, json, StringComparison.Ordinal);
        Assert.NotNull(JsonSerializer.Deserialize<CircuitDocument>(json, Reflection));
        json = json.Replace(right, wrong, StringComparison.Ordinal);
        Assert.Contains(named, Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<CircuitDocument>(json, Reflection)).Message, StringComparison.Ordinal);
        Assert.Contains(named, Assert.Throws<JsonException>(() => JsonSerializer.Deserialize(json, CircuitJson.Readable.CircuitDocument)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Circuit_WhatIsLeftOut_HasItsDefaultByReflectionAndSourceGeneration()
    {
        const string Least = """
            { "rules": "bench", "feedMeters": 1, "returnWireMeters": 1, "ambientCelsius": 20, "insulation": "PVC",
              "source": { "kind": "lead-acid battery", "coldCrankingAmperes": 100 }, "load": { "kind": "constant power", "watts": 5 } }
            """;
        foreach (CircuitDocument circuit in new[]
        {
            JsonSerializer.Deserialize<CircuitDocument>(Least, Reflection)!, JsonSerializer.Deserialize(Least, CircuitJson.Readable.CircuitDocument)!,
        })
        {
            Assert.Equal("", circuit.Name);
            Assert.Empty(circuit.Joints);
            Assert.Equal(2, circuit.LoadedConductors);
            Assert.Equal((1, nameof(ColdCrankingStandard.SaeJ537)), (((LeadAcidDocument)circuit.Source).BlocksInSeries, ((LeadAcidDocument)circuit.Source).CrankingTest));
            Assert.Equal((1.0, false, false, false), (circuit.BundleLoading, circuit.SheathedToFuse, circuit.EngineSpace, circuit.Intermittent));
            Assert.Equal(1, ((PowerDocument)circuit.Load).Efficiency);
            Assert.Null(circuit.UpstreamOhms);
            Assert.True(CircuitDesigner.Design(circuit.ToRequirements(), circuit.ToRules()).IsFeasible);
        }
    }

    [Fact]
    public void Library_KnowsNothingOfJson() => Assert.DoesNotContain(
        typeof(CircuitDesign).Assembly.GetReferencedAssemblies(), name => name.Name!.Contains("Json", StringComparison.Ordinal));

    [Fact]
    public void Page_HoldsWhatItsExamplePrints()
    {
        string page = DocsFolder.Read(Path.Combine(DocsFolder.Docs, "howto", "json.md"));
        using StringWriter output = new() { NewLine = "\n" };
        JsonExample.Run(output);
        if (DocsFolder.Rewrites)
        {
            string path = Path.Combine(DocsFolder.Docs, "howto", "json.md");
            File.WriteAllText(path, Printed().Replace(page, _ => "```json\n" + output.ToString().ReplaceLineEndings("\n").TrimEnd() + "\n```"));
            return;
        }

        Assert.Contains(output.ToString().ReplaceLineEndings("\n").TrimEnd(), page, StringComparison.Ordinal);
    }

    [GeneratedRegex("```json\n.*?\n```", RegexOptions.Singleline)]
    private static partial Regex Printed();

    private static Gen<CircuitDocument> AnyCircuit()
    {
        Gen<double> Log(double least, double most) => Gen.Choose(0, 1_000_000).Select(i => least * Math.Pow(most / least, i / 1e6));
        Gen<double?> Maybe(Gen<double> gen) => Gen.OneOf(Gen.Constant((double?)null), gen.Select(x => (double?)x));
        Gen<SourceDocument> source = Gen.OneOf(
            Log(50, 2000).Select(SourceDocument (a) => new LeadAcidDocument { ColdCrankingAmperes = a, CrankingTest = a > 700 ? nameof(ColdCrankingStandard.En50342) : nameof(ColdCrankingStandard.Din43539), BlocksInSeries = a > 300 ? 2 : 1 }),
            Log(10, 40).Zip(Log(1e-3, 0.1), SourceDocument (v, r) => new SupplyDocument { MinimumVolts = v * 0.9, NominalVolts = v, MaximumVolts = v * 1.2, LeastOhms = r / 2, GreatestOhms = r }));
        Gen<LoadDocument> load = Gen.OneOf(
            Log(0.1, 2000).Zip(Log(0.3, 1), LoadDocument (w, e) => new PowerDocument { Watts = w, Efficiency = e, MinimumVolts = w > 20 ? w / 100 : null }),
            Log(0.01, 200).Select(LoadDocument (a) => new CurrentDocument { Amperes = a }),
            Log(1, 200).Select(LoadDocument (w) => new LampDocument { Watts = w, RatedVolts = 12 + (w / 1e3) }));
        return from rules in Gen.Elements(DesignRules.Presets.Select(preset => preset.Name).ToArray())
               from supply in source
               from fed in load
               from feed in Log(0.05, 200)
               from back in Maybe(Log(0.05, 200))
               from joint in Log(1e-4, 0.1)
               from upstream in Maybe(Log(1e-4, 0.1))
               from distance in Maybe(Log(0.01, 3))
               from ambient in Gen.Choose(-400_000, 800_000).Select(i => i / 1e4)
               from count in Gen.Choose(1, 40)
               from altitude in Log(1, 9000)
               from insulation in Gen.Elements("PVC", "PVC 90", "XLPE", "silicone")
               from drop in Maybe(Log(0.5, 20))
               select new CircuitDocument
               {
                   Name = "any \"ü\"",
                   Rules = rules,
                   Source = supply,
                   Load = fed,
                   FeedMeters = feed,
                   ReturnWireMeters = back,
                   ChassisOhms = back is null ? joint / 3 : null,
                   Joints = [new JointDocument { Name = "joint", Ohms = joint }, new JointDocument { Name = "crimp", Ohms = joint / 7 }],
                   UpstreamOhms = upstream,
                   FuseDistanceMeters = distance,
                   AmbientCelsius = ambient,
                   LoadedConductors = count,
                   AltitudeMeters = altitude,
                   Insulation = insulation,
                   DropPercent = drop,
               };
    }

    // The circuit between the triple quotes of the example.
    private static string Circuit(string example) => example.Split("\"\"\"")[1];

    private static string Text(string resource)
    {
        using StreamReader reader = new(PublishedTable.Open(resource));
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    private static string Region(string file, string name)
    {
        string[] lines = Text(file).Split('\n');
        int start = Array.FindIndex(lines, line => line.Trim() == "#region " + name);
        int end = Array.FindIndex(lines, start, line => line.Trim() == "#endregion");
        int indent = lines[start].Length - lines[start].TrimStart().Length;
        return string.Join('\n', lines[(start + 1)..end].Select(line => line.Length > indent ? line[indent..] : ""));
    }
}
