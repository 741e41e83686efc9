using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>What is advised where a check failed, and where it is undetermined: two sentences a kind, since what is missing is no fault of the wire.</summary>
public class CheckAdviceTests
{
    private const string FuseData =
        "What is undetermined about the fuse: get its d.c. voltage, breaking capacity and operating times from its manufacturer, or choose a fuse for which they are published.";

    private const string Unrated =
        "The wire has no rating where it runs: a cooler place, fewer loaded conductors together, better insulation, or rules whose source covers it.";

    private static readonly BranchState At = CheckCase.Verify(Load.ConstantCurrent(A(5)), Blade(10)).State();

    public static TheoryData<string, string, string> Sentences { get; } = new()
    {
        { nameof(CheckKind.ContinuousCurrent), "The wire carries too much current where it runs: use a cooler place, fewer loaded conductors together, better insulation, or a larger wire.", Unrated },
        { nameof(CheckKind.ConductorTemperature), "The wire gets too hot: use a cooler place, fewer loaded conductors together, or better insulation.", Unrated },
        { nameof(CheckKind.FuseCarriesLoad), "The fuse is too small for the load: use a larger rating, another series, or two circuits.", "Put the fuse in a cooler place, or get its re-rating with temperature from its manufacturer." },
        {
            nameof(CheckKind.FuseProtectsWire),
            "The fuse is too large for the wire: use a smaller fuse if it still carries the load, a larger wire, a cooler place, fewer conductors together, or a fuse series with finer steps.", Unrated
        },
        {
            nameof(CheckKind.FuseVoltage),
            "Choose fuses rated for the highest voltage of the supply, not its nominal one: a pack of 16 lithium iron phosphate cells reaches 58.4 V on charge, more than a 58 V fuse.", FuseData
        },
        { nameof(CheckKind.InrushHeld), "The fuse may open at start: use a slower type, use a larger rating with a larger wire, limit the starting current, or allow for fewer starts.", FuseData },
        { nameof(CheckKind.FaultOpensFuse), "A short at the far end opens the fuse too late or not at all: use a larger wire, a shorter run, or a smaller fuse.", FuseData },
        { nameof(CheckKind.ShortCircuitTemperature), "The wire overheats before the fuse opens: a larger wire, a faster fuse, or insulation with a higher short-circuit limit.", FuseData },
        {
            nameof(CheckKind.FaultInOneParallelWire),
            "A fault in one of the parallel wires burns it before the common fuse opens: use one thicker wire, fewer and thicker wires, or a fuse for each wire at both ends.", FuseData
        },
        { nameof(CheckKind.StalledMotor), "A stalled motor overheats the wire before the fuse opens: use a larger wire, a smaller fuse, or a thermal cut-out in the motor.", FuseData },
        { nameof(CheckKind.FuseDistance), "Move the fuse nearer to the source, or sheathe the conductor up to it.", "State how much conductor lies between the source and the fuse, and whether it is sheathed." },
        {
            nameof(CheckKind.OverloadTemperature),
            "An overload that the fuse does not interrupt overheats the wire: use a smaller fuse, a larger wire, a cooler place, fewer conductors together, or better insulation.", FuseData
        },
        {
            nameof(CheckKind.MainFuseCarriesLoad),
            "The main fuse is too small for this circuit: a larger one, and a supply lead that it protects.", "Put the main fuse in a cooler place, or get its re-rating with temperature from its maker."
        },
        {
            nameof(CheckKind.MainFuseHoldsStart),
            "The main fuse may open when the load starts: a slower type, a larger one and a supply lead that it protects, or a smaller starting current.", FuseData
        },
        { nameof(CheckKind.MainFuseProtectsLead), "The main fuse is too large for the supply lead: a smaller main fuse where that still carries all circuits, or a larger lead.", Unrated },
        { nameof(CheckKind.MainFuseVoltage), "Choose a main fuse rated for the highest voltage of the supply: for 16 lithium iron phosphate cells more than 58 V.", FuseData },
        {
            nameof(CheckKind.MainFuseBreakingCapacity), "Choose a main fuse that breaks what the source can drive where it sits. No wire size changes this.",
            "Get the d.c. breaking capacity of the main fuse from its maker, and state the resistance of the lead between the source and it."
        },
        { nameof(CheckKind.LeadTemperature), "The supply lead gets too hot when its main fuse carries what it may: a smaller main fuse, a larger lead, a cooler place, or better insulation.", Unrated },
        { nameof(CheckKind.FaultOpensMainFuse), "A short at the end of the supply lead opens the main fuse too late or not at all: a larger lead, a shorter one, or a smaller main fuse.", FuseData },
        {
            nameof(CheckKind.LeadShortCircuitTemperature),
            "The supply lead overheats before the main fuse opens: a larger lead, a faster main fuse, or insulation with a higher short-circuit limit.", FuseData
        },
        { nameof(CheckKind.FaultInOneParallelLeadWire), "One wire of the supply lead does not survive a fault in it: larger wires, one thick wire, or a main fuse for each at both ends.", FuseData },
        {
            nameof(CheckKind.LeadOverloadTemperature),
            "An overload that the main fuse lets pass heats the supply lead too far: a smaller main fuse, a larger lead, a cooler place, or better insulation.", FuseData
        },
        {
            nameof(CheckKind.SelectivityOfFuses),
            "The main fuse opens before the fuse behind it: a larger or slower main fuse, or a smaller fuse behind it. Everything on the main fuse goes dark with this circuit.",
            "Published times do not show that the main fuse stays closed while the fuse behind it clears a fault. Get the melting Joule integral of the main fuse from its maker (UpstreamProtection.WithLeastMelting), or take one with a slower curve."
        },
    };

    [Theory]
    [MemberData(nameof(Sentences))]
    public void Advice_OfAFailureAndOfWhatIsMissing_AreTwoSentences(string id, string failed, string undetermined)
    {
        Assert.Equal(failed, Advice(id, CheckOutcome.Fail));
        Assert.Equal(undetermined, Advice(id, CheckOutcome.Undetermined));
    }

    /// <summary>The kinds whose advice does not hang on the outcome alone, each with tests of its own.</summary>
    [Fact]
    public void Advice_IsTestedForEveryKindWhoseOutcomeDecides()
    {
        CheckKind[] others =
        [
            CheckKind.MechanicalMinimum, CheckKind.PowerDelivery, CheckKind.VoltageDrop, CheckKind.LoadVoltage, CheckKind.StartVoltage, CheckKind.BreakingCapacity,
            CheckKind.OvercurrentProtection,
        ];
        Assert.Equal(CheckKind.All.ToHashSet(), Sentences.Select(row => CheckKind.Find((string)row[0])!).Concat(others).ToHashSet());
        foreach (CheckKind kind in others)
        {
            Assert.EndsWith(".", Advice(kind.Id, CheckOutcome.Fail), StringComparison.Ordinal);
        }
    }

    private static string Advice(string id, CheckOutcome outcome)
    {
        Check check = CheckResultTests.Kind(id);
        CheckResult result = new(check, double.NaN, double.NaN, outcome, Reference.CommonPractice("made up for a test"), default);
        return check.Advice(result, At);
    }
}
