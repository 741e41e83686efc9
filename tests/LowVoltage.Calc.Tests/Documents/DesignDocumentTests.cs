using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Documents;

namespace LowVoltage.Calc.Tests.Documents;

public class DesignDocumentTests
{
    [Property(MaxTest = 120)]
    public Property Write_AndRead_GivesTheSameAnswerAndTheLibraryAgrees() => Prop.ForAll(
        AnyCircuits.Requirements.Where(asked => asked.Source.MaximumVoltage.Volts <= 60).Zip(AnyCircuits.Rules, CircuitDesigner.Design).ToArbitrary(),
        Held);

    [Fact]
    public void Write_AndRead_OfVerifications_GivesTheSameAnswer() => Assert.All(
        Pieces.Circuits().Where(piece => piece.Special == "laid"),
        piece => Held(CircuitDocument.Read(piece.Json).Answer()));

    [Fact]
    public void Read_OfAClaimThatIsWrong_IsReadAndVerifyTells()
    {
        DesignDocument right = DesignDocument.Create(CircuitDocument.Read(Pieces.Least).Answer());
        string claim = right.Write().Replace($"\"size\": \"{right.Wire.Size!.Value.Designation}\"", "\"size\": \"0.5 mm²\"", StringComparison.Ordinal);
        Assert.NotEqual(right.Write(), claim);
        DesignDocument wrong = DesignDocument.Read(claim);
        Assert.Equal(right.Verdict, wrong.Verdict);
        Assert.Equal(Verdict.Fail, wrong.Verify().Verdict);
    }

    [Fact]
    public void Read_OfAnotherUnit_IsRefusedAtItsPlace()
    {
        string json = DesignDocument.Create(CircuitDocument.Read(Pieces.Least).Answer()).Write();
        int drop = json.IndexOf("\"check\": \"VoltageDrop\"", StringComparison.Ordinal), unit = json.IndexOf("\"unit\": \"V\"", drop, StringComparison.Ordinal);
        Assert.False(DesignDocument.TryRead(json.Remove(unit, 11).Insert(unit, "\"unit\": \"A\""), out _, out IReadOnlyList<DocumentFault> faults));
        Assert.Contains("must be \"V\", that of the check VoltageDrop; it was \"A\"", Assert.Single(faults).Message, StringComparison.Ordinal);
    }

    private static void Held(CircuitDesign design)
    {
        DesignDocument document = DesignDocument.Create(design);
        string json = document.Write();
        DesignDocument back = DesignDocument.Read(json);
        Assert.Equal(json, back.Write());
        Assert.Equal(design.Verdict, back.Verdict);
        Assert.Equal(design.Wire, back.Wire);
        Assert.Equal(design.Fuse?.ToString(), back.Fuse?.ToString());
        Assert.Equal(document.Checks, back.Checks);
        Assert.Equal(document.Rejected.Select(size => (size.Conductor, size.StoppedBy)), back.Rejected.Select(size => (size.Conductor, size.StoppedBy)));
        Assert.Equal(document.Governing, back.Governing);
        Assert.Equal(design.Cautions, back.Cautions);
        Assert.Equal(design.Assumptions, back.Assumptions);
        Assert.Equal(design.Advice, back.Advice);
        Assert.Equal(document.Checks, DesignDocument.Create(back.Circuit.Answer()).Checks);
        if (design.Fuse is not null)
        {
            Assert.Equal(design.Checks, back.Verify().Checks);
        }
    }
}
