using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Checks;
using LowVoltage.Calc.Tests.Design.Upstream;
using LowVoltage.Calc.Working;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>What a calculation sheet takes from the caller, and in which words: what was not stated is said not to be.</summary>
public class SheetGivensTests
{
    private static readonly Load Two = Load.ConstantCurrent(A(2));

    [Fact]
    public void WireAndFuse_AreThoseOfTheDesign_TheNearestOrNone()
    {
        CircuitDesign chosen = CircuitDesigner.Design(CheckCase.Asked(Two), CheckCase.Table);
        Assert.Equal((chosen.Wire.ToString(), chosen.Fuse!.ToString()), (Given(chosen, "wire"), Given(chosen, "fuse")));
        CircuitDesign nearest = CircuitDesigner.Design(CheckCase.Asked(Load.ConstantCurrent(A(30)), feed: 300), CheckCase.Table);
        Assert.True(nearest.IsNearest);
        Assert.Equal(($"{nearest.Wire}, the nearest: none passes", $"{nearest.Fuse}, the nearest: none passes"), (Given(nearest, "wire"), Given(nearest, "fuse")));
        CircuitDesign bare = CheckCase.Verify(Two, null);
        Assert.Equal(("2.5 mm² road-vehicle copper", "none"), (Given(bare, "wire"), Given(bare, "fuse")));
        CircuitRequirements asked = CheckCase.Asked(Two);
        CircuitPath two = CircuitPath.Create([Segment.Create(RoadVehicle(2.5), M(2)), Segment.Create(RoadVehicle(1.5), M(1))], asked.Return);
        Assert.Equal("as it is laid, the parts above", Given(CircuitDesigner.Verify(asked, two, Blade(5), CheckCase.Table), "wire"));
    }

    [Fact]
    public void Fuse_IsTheChosenTheVerifiedOrTheOneTried()
    {
        Assert.Equal(("Rating chosen", "the smallest of the series that serves load and wire"), Why(CircuitDesigner.Design(CheckCase.Asked(Two), CheckCase.Table)));
        Assert.Equal(("Rating of the fuse", "the one that was verified"), Why(CheckCase.Verify(Two, Blade(5))));
        Assert.Equal(
            ("Rating tried", "the one that comes nearest; no wire and fuse of the rules pass"), Why(CircuitDesigner.Design(CheckCase.Asked(Load.ConstantCurrent(A(30)), feed: 300), CheckCase.Table)));
    }

    [Fact]
    public void WithoutAFuse_ItsSectionSaysSo() =>
        Assert.Equal("Without a fuse", CheckCase.Verify(Two, null).Explain().Steps.Single(step => step.Sought == "check: " + CheckKind.OvercurrentProtection.Name).Section);

    [Fact]
    public void SupplyLead_NotStated_CountsAsNothing()
    {
        Assert.Equal("not stated, counted as nothing", Given(CircuitDesigner.Design(CheckCase.Asked(Two, upstreamMilliOhms: null), CheckCase.Table), "supply lead from the source to the fuse"));
        Assert.DoesNotContain(CircuitDesigner.Design(CheckCase.Asked(Two), CheckCase.Table).Explain().Givens, given => given.Value.Contains("counted as nothing", StringComparison.Ordinal));
    }

    [Fact]
    public void ConductorToTheFuse_IsSheathedOrNot()
    {
        Assert.Equal("0.1 m", Given(CircuitDesigner.Design(CheckCase.Asked(Two), CheckCase.Table), "conductor between source and fuse, not sheathed"));
        CircuitRequirements sheathed = new(CheckCase.Asked(Two)) { SheathedToFuse = true };
        Assert.Equal("0.1 m", Given(CircuitDesigner.Design(sheathed, CheckCase.Table), "conductor between source and fuse, sheathed"));
    }

    [Fact]
    public void Starts_NotStated_AreSaidToBe()
    {
        CircuitRequirements lamp = CheckCase.Asked(Load.Lamp(W(24), V(12)));
        CircuitDesign assumed = CircuitDesigner.Design(lamp, CheckCase.Table);
        Assert.Equal($"{assumed.Requirements.CountedStarts}, not stated", Given(assumed, "starts in the life of the fuse"));
        Assert.Equal("250", Given(CircuitDesigner.Design(new CircuitRequirements(lamp) { Starts = 250 }, CheckCase.Table), "starts in the life of the fuse"));
    }

    [Fact]
    public void WayBack_IsNamedByItsKind()
    {
        Segment wire = Segment.Create(RoadVehicle(10), M(2));
        (ReturnPath Back, string Words)[] ways =
        [
            (ReturnPath.Wire(M(3)), "a wire like the feed"), (ReturnPath.Wire(wire), "wire of its own"), (ReturnPath.Chassis(MilliOhm(1)), "the chassis"),
            (ReturnPath.Shared(MilliOhm(1), A(3)), "a resistance shared with other circuits"), (ReturnPath.Shared([wire], A(3)), "wire shared with other circuits"),
        ];
        Assert.All(ways, way => Assert.Equal(way.Words, Given(CircuitDesigner.Design(Circuit(Two, back: way.Back), DesignRules.RoadVehicle), "way back")));

        // Of wiring that exists, its own way back counts, not the one asked for.
        CircuitPath laid = CircuitPath.Create(Segment.Create(RoadVehicle(2.5), M(3)), ReturnPath.Wire(M(3)));
        Assert.Equal("a wire like the feed", Given(CircuitDesigner.Verify(CheckCase.Asked(Two), laid, Blade(5), CheckCase.Table), "way back"));
    }

    [Fact]
    public void CircuitInsulationAndDrop_AreAsAsked()
    {
        CircuitRequirements asked = CheckCase.Asked(Two, insulation: InsulationMaterial.CrossLinkedPolyethylene);
        CircuitDesign unnamed = CheckCase.Verify(asked, Blade(5)), named = CheckCase.Verify(new CircuitRequirements(asked) { Name = "Deck lamp", Intermittent = true }, Blade(5), CheckCase.Table.WithDropLimit(DropLimit.AircraftTable));
        Assert.Equal(("not named", InsulationMaterial.CrossLinkedPolyethylene.Name, "3 %"), (Given(unnamed, "circuit"), Given(unnamed, "insulation"), Given(unnamed, "allowed drop, of the nominal voltage")));
        Assert.Equal(CheckCase.Table.Name, Given(unnamed, "rules"));
        Assert.Equal(("Deck lamp", "FAA AC 43.13-1B Table 11-6, intermittent load"), (Given(named, "circuit"), Given(named, "allowed drop")));
        Assert.Equal("0.3 V", Given(CheckCase.Verify(asked, Blade(5), CheckCase.Table.WithDropLimit(DropLimit.Volts(V(0.3)))), "allowed drop"));
    }

    [Fact]
    public void Conclusion_SaysWhatGoverns_AndWhereItIsWhatStoppedASmallerSize()
    {
        static string governs(CircuitDesign design) => design.Explain().Steps.Single(step => step.Sought == "what governs").Reason;
        CircuitDesign chosen = CircuitDesigner.Design(CheckCase.Asked(Load.ConstantCurrent(A(5))), CheckCase.Table);
        Assert.Equal((Verdict.Pass, CheckOutcome.Fail, CheckKind.VoltageDrop), (chosen.Verdict, chosen.Governing.Outcome, chosen.Governing.Kind));
        Assert.Equal($"What stopped a smaller size decides: with it, {chosen.Governing}.", governs(chosen));
        CircuitDesign passes = CheckCase.Verify(Two, Blade(5)), fails = CheckCase.Verify(CheckCase.Asked(Load.ConstantCurrent(A(9)), feed: 1), Blade(10));
        static string verdict(CircuitDesign design) => design.Explain().Steps.Single(step => step.Sought == "verdict").Reason;
        Assert.Equal(($"{passes}.", $"{fails}."), (verdict(passes), verdict(fails)));
        Assert.Equal((Verdict.Pass, CheckOutcome.Pass, Verdict.Fail, CheckOutcome.Fail), (passes.Verdict, passes.Governing.Outcome, fails.Verdict, fails.Governing.Outcome));
        Assert.Equal(($"{passes.Governing}.", $"{fails.Governing}."), (governs(passes), governs(fails)));
    }

    [Fact]
    public void Sections_OfTheNearest_NameItsWireAndFuse()
    {
        CircuitDesign nearest = CircuitDesigner.Design(CheckCase.Asked(Load.ConstantCurrent(A(30)), feed: 300), CheckCase.Table);
        string[] sections = [.. nearest.Explain().Steps.Select(step => step.Section).Distinct()];
        Assert.Contains($"The wire that comes nearest: {nearest.Wire}", sections);
        Assert.Contains($"The fuse that comes nearest: {nearest.Fuse}", sections);
    }

    [Fact]
    public void SupplyProtectedInARow_HasOneSectionForAll()
    {
        UpstreamProtection first = UpstreamProtection.Fuse(Mains.Gg(125)).WithUpstream(ElectricResistance.Zero).WithLead(Mains.Lead(50, 1));
        UpstreamProtection second = UpstreamProtection.Fuse(Mains.Gg(63)).WithUpstream(MilliOhm(1)).WithLead(Mains.Lead(35, 4));
        string[] sections(params UpstreamProtection[] row) =>
            [.. CircuitDesigner.Design(Mains.Fan(12).WithUpstreamProtection(row), DesignRules.RoadVehicle).Explain().Steps.Select(step => step.Section).Distinct().Where(section => section.Contains("supply lead", StringComparison.Ordinal))];
        Assert.Equal(["The supply lead and what protects it"], sections(first, second));
        Assert.Equal(["The supply lead and its main fuse"], sections(second));
        Assert.Empty(sections());
    }

    [Fact]
    public void SheetDetails_HoldUpTo120Characters()
    {
        string longest = new('x', 120);
        Assert.Equal(longest, new Calc.Design.SheetDetails(project: longest).Project);
        Assert.StartsWith("project must be at most 120 characters; it was 121.", Assert.Throws<ArgumentException>(() => new Calc.Design.SheetDetails(project: longest + "x")).Message, StringComparison.Ordinal);
        Assert.StartsWith(
            "paper must be one of its named values; it was 9.", Assert.Throws<ArgumentOutOfRangeException>(() => new Calc.Design.SheetDetails(paper: (SheetPaper)9)).Message, StringComparison.Ordinal);
    }

    private static string Given(CircuitDesign design, string meaning) => design.Explain().Givens.Single(given => given.Meaning == meaning).Value.Replace('\u00A0', ' ');

    private static (string, string) Why(CircuitDesign design)
    {
        SolutionStep rating = design.Explain().Steps.Single(step => step.Symbol?.Spec == "I_n" && step.Kind != StepKind.Comparison);
        return (SolutionText.Sentence(rating.Sought), rating.Reason[(rating.Reason.IndexOf(": ", StringComparison.Ordinal) + 2)..^1]);
    }
}
