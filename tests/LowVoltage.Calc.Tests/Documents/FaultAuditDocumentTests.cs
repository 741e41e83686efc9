using System.Text.Json.Nodes;
using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Harnesses.FaultParts;

namespace LowVoltage.Calc.Tests.Documents;

public class FaultAuditDocumentTests
{
    private static Harness Van => HarnessDocument.Read(HarnessPieces.Van).Harness;

    // The main fuse in 55 °C air has no times there: it may open at once, and then only the roof panel feeds the short. At its beginning it is whole.
    [Fact]
    public void Run_AFuseWithoutTimesOnTheWay_CountsAsWholeAtTheBeginning()
    {
        FaultAudit audit = FaultAudit.Run(HarnessDocument.Read(HarnessPieces.Van).Harness);
        HarnessFault[] shorts = [.. audit.Faults.Where(f => f.Place == "lamp +" && f.Openings.Any(o => o.Fuse == "lamp fuse"))];
        Assert.NotEmpty(shorts);
        Assert.All(shorts, fault => Assert.True(fault.LeastCurrent >= fault.Openings.Single(o => o.Fuse == "lamp fuse").LeastCurrent, fault.ToString()));
        Assert.All(shorts, fault => Assert.True(fault.LeastCurrent > ElectricCurrent.FromAmperes(100)));
    }

    [Fact]
    public void Write_AndRead_GivesTheSameFaultsAndNumbers()
    {
        FaultAudit audit = FaultAudit.Run(Van);
        FaultAuditDocument document = FaultAuditDocument.Create(audit), back = FaultAuditDocument.Read(document.Write());
        Assert.Equal(document.Write(), back.Write());
        Same(audit, back);
    }

    // Every kind of consequence that the invented camper has: wires too hot, currents that stay, dead loads.
    [Fact]
    public void Write_AndRead_OfAWholeVehicle_LosesNothing()
    {
        Harness harness = HarnessDocument.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "scenario-with-faults.json"))).Harness;
        FaultAudit audit = FaultAudit.Run(harness);
        string written = FaultAuditDocument.Create(audit).Write();
        FaultAuditDocument back = FaultAuditDocument.Read(written);
        Assert.Equal(written, back.Write());
        Assert.True(back.Faults.Count > 100);
        Assert.Contains(back.Faults, fault => fault.Wires.Any(wire => wire.IsTooHot));
        Assert.Contains(back.Faults, fault => fault.RemainingCurrent is not null);
        Assert.Contains(back.Faults, fault => fault.Loads.Count > 0);
        Same(audit, back);
    }

    // A main fuse as small as the two behind it: it may open first, and the other lamp goes dark.
    [Fact]
    public void Write_AndRead_OfAWrongFuse_KeepsItAndWhatIsLost()
    {
        Harness harness = new HarnessBuilder("two lamps", DesignRules.RoadVehicle)
            .Terminals("plus", "minus", "left +", "right +").Busbars("bar")
            .Source("battery", "plus", "minus", Battery(12, 0.05))
            .Fuse("main", "plus", "bar", Blade(10)).Fuse("left fuse", "bar", "left +", Blade(10)).Fuse("right fuse", "bar", "right +", Blade(10))
            .Load("left", "left +", "minus", Lamp(6)).Load("right", "right +", "minus", Lamp(6)).Build();
        FaultAudit audit = FaultAudit.Run(harness);
        FaultAuditDocument back = FaultAuditDocument.Read(FaultAuditDocument.Create(audit).Write());
        HarnessFault fault = back.Faults.First(f => f.Place == "left +");
        Assert.Equal((HarnessFaultKind.ShortToReturn, FaultRank.WrongFuseFirst, FaultEnding.Cleared), (fault.Kind, fault.Rank, fault.Ending));
        Assert.Equal(["main"], fault.WrongFuses);
        Assert.Equal(["right"], fault.LostLoads);
        Same(audit, back);
    }

    [Fact]
    public void Write_OfADocumentByHand_HasEveryMemberAgain()
    {
        JsonNode document = JsonNode.Parse(HarnessPieces.Audit())!;
        JsonNode written = JsonNode.Parse(FaultAuditDocument.Read(document.ToJsonString()).Write())!;
        Assert.True(JsonNode.DeepEquals(document["faults"], written["faults"]));
        Assert.True(JsonNode.DeepEquals(document["load_cases"], written["load_cases"]));
    }

    [Fact]
    public void Run_OfWhatWasRead_GivesTheSameAudit()
    {
        LoadCase lit = LoadCase.Create("lit").WithSwitch("pump switch", true).WithOff("pump");
        FaultAudit audit = FaultAudit.Run(Van, [lit]);
        FaultAuditDocument back = FaultAuditDocument.Read(FaultAuditDocument.Create(audit).Write());
        FaultAudit again = back.Run();
        Assert.Equal("lit", Assert.Single(back.LoadCases).Name);
        Assert.Equal(audit.Faults.Select(fault => (fault.Kind, fault.Place, fault.To, fault.LoadCase, fault.Rank, fault.Text)), again.Faults.Select(fault => (fault.Kind, fault.Place, fault.To, fault.LoadCase, fault.Rank, fault.Text)));
        Assert.Equal(FaultAuditDocument.Create(audit).Write(), FaultAuditDocument.Create(again).Write());
    }

    [Fact]
    public void Run_OfTheHarnesssOwnCases_GivesTheSameAudit()
    {
        string written = FaultAuditDocument.Create(FaultAudit.Run(Van)).Write();
        Assert.Equal(written, FaultAuditDocument.Create(FaultAuditDocument.Read(written).Run()).Write());
    }

    [Fact]
    public void TryRead_OfAnUnknownMember_NamesItWithItsPlace()
    {
        JsonNode document = JsonNode.Parse(HarnessPieces.Audit())!;
        document["faults"]![1]!["colour"] = "red";
        Assert.False(FaultAuditDocument.TryRead(document.ToJsonString(), out FaultAuditDocument? read, out IReadOnlyList<DocumentFault> faults));
        Assert.Null(read);
        Assert.Equal("$.faults[1].colour", Assert.Single(faults).Path);
    }

    [Theory]
    [InlineData("lowvoltage_fault_audit", "2")]
    [InlineData("lowvoltage_fault_audit", "0")]
    [InlineData("load_cases", "[]")]
    public void TryRead_OfAnotherVersionOrNoLoadCase_IsRefused(string member, string value)
    {
        JsonNode document = JsonNode.Parse(HarnessPieces.Audit())!;
        document[member] = JsonNode.Parse(value);
        Assert.False(FaultAuditDocument.TryRead(document.ToJsonString(), out _, out IReadOnlyList<DocumentFault> faults));
        Assert.Equal("$." + member, Assert.Single(faults).Path);
    }

    [Fact]
    public void TryRead_OfALoadCaseThatNamesWhatIsNotThere_IsRefused()
    {
        JsonNode document = JsonNode.Parse(HarnessPieces.Audit())!;
        document["load_cases"] = JsonNode.Parse("""[ { "name": "dark", "off": [ "horn" ] } ]""");
        Assert.False(FaultAuditDocument.TryRead(document.ToJsonString(), out _, out IReadOnlyList<DocumentFault> faults));
        DocumentFault fault = Assert.Single(faults);
        Assert.Equal("$.load_cases", fault.Path);
        Assert.False(fault.IsOfShape);
        Assert.Contains("horn", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_OfNothing_IsRefused() => Assert.Equal("audit", Assert.Throws<ArgumentNullException>(() => FaultAuditDocument.Create(null!)).ParamName);

    private static void Same(FaultAudit audit, FaultAuditDocument back)
    {
        Assert.Equal(audit.Assumptions, back.Assumptions);
        Assert.Equal(audit.Cautions, back.Cautions);
        Assert.Equal(audit.LoadCases.Select(used => used.Name), back.LoadCases.Select(used => used.Name));
        Assert.Equal(audit.Faults.Count, back.Faults.Count);
        foreach ((HarnessFault own, HarnessFault read) in audit.Faults.Zip(back.Faults))
        {
            Assert.Equal(
                (own.Kind, own.Place, own.To, own.LoadCase, own.Rank, own.Ending, own.LiveThrough, own.Reason, own.Text),
                (read.Kind, read.Place, read.To, read.LoadCase, read.Rank, read.Ending, read.LiveThrough, read.Reason, read.Text));
            Assert.Equal((own.LeastCurrent, own.GreatestCurrent, own.RemainingCurrent), (read.LeastCurrent, read.GreatestCurrent, read.RemainingCurrent));
            Assert.Equal(own.Places, read.Places);
            Assert.Equal(own.WrongFuses, read.WrongFuses);
            Assert.Equal(own.LostLoads, read.LostLoads);
            Assert.Equal(own.ToString(), read.ToString());
            Assert.Equal(own.Openings.Select(o => (o.Fuse, o.Least, o.Longest, o.LeastCurrent, o.GreatestCurrent)), read.Openings.Select(o => (o.Fuse, o.Least, o.Longest, o.LeastCurrent, o.GreatestCurrent)));
            Assert.Equal(own.Wires.Select(w => (w.Wire, w.Temperature, w.Limit, w.Current, w.Melts, w.Stays)), read.Wires.Select(w => (w.Wire, w.Temperature, w.Limit, w.Current, w.Melts, w.Stays)));
            Assert.Equal(own.Loads.Select(l => (l.Load, l.Effect, l.Before, l.After, l.Current, l.Through)), read.Loads.Select(l => (l.Load, l.Effect, l.Before, l.After, l.Current, l.Through)));
        }
    }
}
