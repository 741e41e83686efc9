using System.Text.Json.Nodes;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Tests.Documents;

public class HarnessDesignDocumentTests
{
    [Fact]
    public void Write_AndRead_GivesTheSameNumbersAndVerification()
    {
        HarnessDesign design = HarnessDesigner.Design(HarnessDocument.Read(HarnessPieces.ToBeSized).Harness);
        HarnessSolution solution = design.Harness.Solve();
        HarnessDesignDocument document = HarnessDesignDocument.Create(design, solution), back = HarnessDesignDocument.Read(document.Write());
        Assert.Equal(document.Write(), back.Write());
        Same(design, back);
        Assert.Equal(HarnessResultDocument.Create(design.Verification, solution).Write(), back.Verification.Write());
        Assert.Equal(design.Verification.Checks.Select(check => check.Outcome), back.Verification.Verify().Checks.Select(check => check.Outcome));
    }

    [Fact]
    public void Write_AndRead_AtACallersPrice_KeepsEveryWireAndWhatHoldsItUp()
    {
        Harness asked = HarnessDocument.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "two-lamps.json"))).Harness;
        HarnessDesign design = HarnessDesigner.Design(asked, conductor => 0.3 + (7.1 * conductor.MassPerLength.KilogramsPerMeter));
        HarnessDesignDocument back = HarnessDesignDocument.Read(HarnessDesignDocument.Create(design).Write());
        Same(design, back);
        Assert.Equal(3, back.HeldBy.Count);
        Assert.Empty(back.Verification.Solutions);
    }

    [Fact]
    public void TryRead_OfAnUnknownMember_NamesItWithItsPlace()
    {
        JsonNode document = JsonNode.Parse(HarnessPieces.Design())!;
        document["verification"]!["colour"] = "red";
        Assert.False(HarnessDesignDocument.TryRead(document.ToJsonString(), out _, out IReadOnlyList<DocumentFault> faults));
        Assert.Equal("$.verification.colour", Assert.Single(faults).Path);
    }

    [Theory]
    [InlineData("W1", "\"W1\" is sized twice.")]
    [InlineData("F1", "\"F1\" is no wire of the harness.")]
    public void TryRead_OfASizedWireThatIsThereTwiceOrIsNone_IsRefused(string wire, string said)
    {
        JsonNode document = JsonNode.Parse(HarnessPieces.Design())!;
        document["sized_wires"]!.AsArray().Add(new JsonObject { ["wire"] = wire, ["held_by"] = "" });
        Assert.False(HarnessDesignDocument.TryRead(document.ToJsonString(), out _, out IReadOnlyList<DocumentFault> faults));
        DocumentFault fault = Assert.Single(faults);
        Assert.Equal(("$.sized_wires[1]", said, false), (fault.Path, fault.Message, fault.IsOfShape));
    }

    [Fact]
    public void Create_OfASolutionOfAnotherHarness_IsRefused()
    {
        Harness asked = HarnessDocument.Read(HarnessPieces.ToBeSized).Harness;
        HarnessDesign one = HarnessDesigner.Design(asked), other = HarnessDesigner.Design(asked);
        Assert.Equal("solutions", Assert.Throws<ArgumentException>(() => HarnessDesignDocument.Create(one, other.Harness.Solve())).ParamName);
        Assert.Equal("design", Assert.Throws<ArgumentNullException>(() => HarnessDesignDocument.Create(null!)).ParamName);
    }

    private static void Same(HarnessDesign design, HarnessDesignDocument back)
    {
        Assert.Equal(design.ConductorMass, back.ConductorMass);
        Assert.Equal((design.Cost, design.LowerBound, design.IsTree, design.IsProvenLeast), (back.Cost, back.LowerBound, back.IsTree, back.IsProvenLeast));
        Assert.Equal(design.CostDividedByLength, back.CostDividedByLength);
        Assert.Equal(design.CostCircuitByCircuit, back.CostCircuitByCircuit);
        Assert.NotEmpty(design.AllowanceCosts);
        Assert.Equal(design.AllowanceCosts.Select(c => (c.More, c.Cost)), back.AllowanceCosts.Select(c => (c.More, c.Cost)));
        Assert.Equal(design.Gap.Percent, back.Gap.Percent);
        Assert.Equal(design.Rounds, back.Rounds);
        Assert.Equal(design.HeldBy, back.HeldBy);
        Assert.Equal(design.Verification.Verdict, back.Verification.Verdict);
        Assert.Equal(design.Harness.Branches.Select(branch => branch.ToString()), back.Harness.Harness.Branches.Select(branch => branch.ToString()));
    }
}
