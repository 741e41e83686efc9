using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Tests.Docs;

namespace LowVoltage.Calc.Tests.Documents;

/// <summary>The schemas in the docs are those of the library, they are valid, and they refuse what the reader refuses, rule by rule.</summary>
public class SchemaTests
{
    private static readonly JsonSchema Circuit = JsonSchema.FromText(CircuitDocument.Schema);
    private static readonly JsonSchema Design = JsonSchema.FromText(DesignDocument.Schema);
    private static readonly JsonSchema Harness = JsonSchema.FromText(HarnessDocument.Schema);
    private static readonly JsonSchema Result = JsonSchema.FromText(HarnessResultDocument.Schema);
    private static readonly JsonSchema Audit = JsonSchema.FromText(FaultAuditDocument.Schema);
    private static readonly JsonSchema HarnessDesign = JsonSchema.FromText(HarnessDesignDocument.Schema);

    [Theory]
    [InlineData("circuit.json")]
    [InlineData("design.json")]
    [InlineData("harness.json")]
    [InlineData("harness-result.json")]
    [InlineData("fault-audit.json")]
    [InlineData("harness-design.json")]
    public void Docs_HoldTheSchemaOfTheLibrary(string file)
    {
        string own = Own(file) + "\n", path = Path.Combine(DocsFolder.Docs, "schemas", file);
        if (DocsFolder.Rewrites)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, own);
            return;
        }

        Assert.Equal(own, File.ReadAllText(path).ReplaceLineEndings("\n"));
    }

    [Theory]
    [InlineData("circuit.json")]
    [InlineData("design.json")]
    [InlineData("harness.json")]
    [InlineData("harness-result.json")]
    [InlineData("fault-audit.json")]
    [InlineData("harness-design.json")]
    public void Schema_IsAValidSchema(string file)
    {
        string own = Own(file);
        Assert.True(MetaSchemas.Draft202012.Evaluate(JsonDocument.Parse(own).RootElement).IsValid);
    }

    [Fact]
    public void Schema_TakesEveryPieceAsWrittenByHandAndByTheLibrary()
    {
        int circuits = 0;
        foreach ((_, string json) in Pieces.Circuits())
        {
            Assert.True(Valid(Circuit, json), json);
            Assert.True(Valid(Circuit, CircuitDocument.Read(json).Write()), json);
            circuits++;
        }

        Assert.True(circuits > 30);
        Assert.All(Pieces.Designs(), json => Assert.True(Valid(Design, json), json));
        Assert.All([HarnessPieces.Van, HarnessPieces.ToBeSized], json => Assert.True(Valid(Harness, json) && Valid(Harness, HarnessDocument.Read(json).Write()), json));
    }

    /// <summary>Every document is spoilt in every place in every way; schema and reader must agree on each.</summary>
    [Fact]
    public void Schema_RefusesWhatTheReaderRefuses()
    {
        int refused = 0, taken = 0;
        foreach ((string special, string json) in Pieces.Circuits())
        {
            foreach (string spoilt in Mutations.Of(json, special))
            {
                bool read = CircuitDocument.TryRead(spoilt, out _, out IReadOnlyList<DocumentFault> faults);
                bool shape = faults.Any(fault => fault.IsOfShape);
                Assert.True(Valid(Circuit, spoilt) == !shape, $"The schema {(shape ? "takes" : "refuses")} what the reader {(shape ? "refuses" : "takes")}: {spoilt}\n{string.Join('\n', faults)}");
                refused += shape ? 1 : 0;
                taken += read ? 1 : 0;
            }
        }

        Assert.True(refused > 4000, $"{refused} refused");
        Assert.True(taken > 100, $"{taken} taken");
    }

    [Fact]
    public void Schema_OfADesign_RefusesWhatTheReaderRefuses() => Agree(Design, Faults.OfDesign, Mutations.Of(Pieces.Designs().First(), ""), 500);

    [Theory]
    [InlineData(HarnessPieces.Van)]
    [InlineData(HarnessPieces.ToBeSized)]
    public void Schema_OfAHarness_RefusesWhatTheReaderRefuses(string json) => Agree(Harness, Faults.OfHarness, Mutations.Of(json, ""), 400);

    [Fact]
    public void Schema_OfAHarnessResult_RefusesWhatTheReaderRefuses()
    {
        Agree(Result, Faults.OfResult, HarnessPieces.Results().SelectMany(json => Mutations.Of(json, "").Where((_, i) => i % 5 == 0)), 300);
        Assert.All(HarnessPieces.Results(), json => Assert.True(Valid(Result, json), json));
    }

    [Fact]
    public void Schema_OfAFaultAudit_RefusesWhatTheReaderRefuses()
    {
        string json = HarnessPieces.Audit();
        Agree(Audit, Faults.OfAudit, Mutations.Of(json, "").Where((_, i) => i % 3 == 0).Concat(Mutations.Of(json, "faults")), 700);
        Assert.True(Valid(Audit, json));
    }

    [Fact]
    public void Schema_OfASizedHarness_RefusesWhatTheReaderRefuses()
    {
        string json = HarnessPieces.Design();
        Agree(HarnessDesign, Faults.OfHarnessDesign, Mutations.Of(json, "").Where((_, i) => i < 300 || i % 5 == 0), 300);
        Assert.True(Valid(HarnessDesign, json));
    }

    /// <summary>No rule of the reader is without a case: every member of every object is in a piece.</summary>
    [Fact]
    public void Pieces_HoldEveryMemberOfEveryObject()
    {
        HashSet<string> seen = [];
        foreach ((_, string json) in Pieces.Circuits())
        {
            Coverage.Walk(CircuitDocument.Root, JsonNode.Parse(json), seen);
        }

        foreach (string json in Pieces.Designs())
        {
            Coverage.Walk(DesignDocument.Root, JsonNode.Parse(json), seen);
        }

        Coverage.Walk(HarnessDocument.Root, JsonNode.Parse(HarnessPieces.Van), seen);
        foreach (string json in HarnessPieces.Results())
        {
            Coverage.Walk(HarnessResultDocument.Root, JsonNode.Parse(json), seen);
        }

        Coverage.Walk(FaultAuditDocument.Root, JsonNode.Parse(HarnessPieces.Audit()), seen);
        Coverage.Walk(HarnessDesignDocument.Root, JsonNode.Parse(HarnessPieces.Design()), seen);
        Form[] roots = [CircuitDocument.Root, DesignDocument.Root, HarnessDocument.Root, HarnessResultDocument.Root, FaultAuditDocument.Root, HarnessDesignDocument.Root];
        string[] all = [.. roots.SelectMany(Coverage.Members).Distinct()];
        Assert.True(all.Length > 150, $"{all.Length} members");
        Assert.True(!all.Except(seen).Any(), string.Join(", ", all.Except(seen)));
    }

    private static string Own(string file) => file switch
    {
        "circuit.json" => CircuitDocument.Schema,
        "design.json" => DesignDocument.Schema,
        "harness.json" => HarnessDocument.Schema,
        "fault-audit.json" => FaultAuditDocument.Schema,
        "harness-design.json" => HarnessDesignDocument.Schema,
        _ => HarnessResultDocument.Schema,
    };

    [Theory]
    [InlineData("14 AWG", true)]
    [InlineData("4/0 AWG", true)]
    [InlineData("5/0 AWG", false)]
    [InlineData("014 AWG", false)]
    [InlineData("123 AWG", false)]
    [InlineData("14 awg", false)]
    [InlineData("14AWG", false)]
    [InlineData("14", false)]
    [InlineData(" 14 AWG", false)]
    [InlineData("14 AWG ", false)]
    [InlineData("20 aircraft", true)]
    [InlineData("250 kcmil", true)]
    [InlineData("25 kcmil", false)]
    [InlineData("1000 kcmil", true)]
    [InlineData("0.5 mm²", true)]
    [InlineData("0.50 mm²", false)]
    [InlineData(".5 mm²", false)]
    [InlineData("5. mm²", false)]
    [InlineData("0.05 mm2", true)]
    [InlineData("1.5.5 mm²", false)]
    [InlineData("2,5 mm²", false)]
    [InlineData("00 mm²", false)]
    [InlineData("", false)]
    public void Size_IsReadAsTheSchemaSays(string text, bool written)
    {
        string json = Pieces.Circuits().First(piece => piece.Special == "laid").Json;
        string other = json.Replace("\"4 mm\\u00B2\"", JsonSerializer.Serialize(text), StringComparison.Ordinal);
        Assert.NotEqual(json, other);
        Assert.Equal(written, SizeForm.IsWritten(text));
        Assert.Equal(written, Valid(Circuit, other));
    }

    internal static bool Valid(JsonSchema schema, string json)
    {
        using JsonDocument document = JsonDocument.Parse(json);
        return schema.Evaluate(document.RootElement).IsValid;
    }

    // Schema and reader agree on each document, and more than so many of them are refused.
    private static void Agree(JsonSchema schema, Func<string, IReadOnlyList<DocumentFault>> read, IEnumerable<string> spoilt, int least)
    {
        int refused = 0;
        foreach (string json in spoilt)
        {
            IReadOnlyList<DocumentFault> faults = read(json);
            bool shape = faults.Any(fault => fault.IsOfShape);
            Assert.True(Valid(schema, json) == !shape, $"{json}\n{string.Join('\n', faults)}");
            refused += shape ? 1 : 0;
        }

        Assert.True(refused > least, $"{refused} refused");
    }

    /// <summary>What each reader finds wrong.</summary>
    private static class Faults
    {
        internal static IReadOnlyList<DocumentFault> OfDesign(string json)
        {
            _ = DesignDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults);
            return faults;
        }

        internal static IReadOnlyList<DocumentFault> OfHarness(string json)
        {
            _ = HarnessDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults);
            return faults;
        }

        internal static IReadOnlyList<DocumentFault> OfResult(string json)
        {
            _ = HarnessResultDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults);
            return faults;
        }

        internal static IReadOnlyList<DocumentFault> OfAudit(string json)
        {
            _ = FaultAuditDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults);
            return faults;
        }

        internal static IReadOnlyList<DocumentFault> OfHarnessDesign(string json)
        {
            _ = HarnessDesignDocument.TryRead(json, out _, out IReadOnlyList<DocumentFault> faults);
            return faults;
        }
    }
}
