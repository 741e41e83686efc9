using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Checks;

/// <summary>What every kind of check says of itself: its letters, where it stands, whether its margin is compared with the others', whether copper or another rating cures it.</summary>
public class CheckTraitsTests
{
    // What no size of wire and no rating of the fuse changes: what the fuse's type breaks and is rated for, where it sits, and all about the lead before it.
    private static readonly CheckKind[] NeverCured =
    [
        CheckKind.FuseVoltage, CheckKind.BreakingCapacity, CheckKind.FuseDistance, CheckKind.MainFuseCarriesLoad, CheckKind.MainFuseHoldsStart, CheckKind.MainFuseProtectsLead, CheckKind.MainFuseVoltage,
        CheckKind.MainFuseBreakingCapacity, CheckKind.LeadTemperature, CheckKind.FaultOpensMainFuse, CheckKind.LeadShortCircuitTemperature, CheckKind.FaultInOneParallelLeadWire,
        CheckKind.LeadOverloadTemperature, CheckKind.SelectivityOfFuses,
    ];

    public static TheoryData<string, string> Places { get; } = new()
    {
        { nameof(CheckKind.MechanicalMinimum), "wire" },
        { nameof(CheckKind.PowerDelivery), "load" },
        { nameof(CheckKind.VoltageDrop), "way out and back" },
        { nameof(CheckKind.LoadVoltage), "load" },
        { nameof(CheckKind.StartVoltage), "load" },
        { nameof(CheckKind.ContinuousCurrent), "wire" },
        { nameof(CheckKind.ConductorTemperature), "wire" },
        { nameof(CheckKind.FuseCarriesLoad), "fuse" },
        { nameof(CheckKind.FuseProtectsWire), "wire" },
        { nameof(CheckKind.FuseVoltage), "fuse" },
        { nameof(CheckKind.BreakingCapacity), "fuse" },
        { nameof(CheckKind.InrushHeld), "fuse" },
        { nameof(CheckKind.FaultOpensFuse), "far end" },
        { nameof(CheckKind.ShortCircuitTemperature), "wire" },
        { nameof(CheckKind.FaultInOneParallelWire), "wire" },
        { nameof(CheckKind.StalledMotor), "wire" },
        { nameof(CheckKind.FuseDistance), "fuse" },
        { nameof(CheckKind.OverloadTemperature), "wire" },
        { nameof(CheckKind.OvercurrentProtection), "wire" },
        { nameof(CheckKind.MainFuseCarriesLoad), "main fuse" },
        { nameof(CheckKind.MainFuseHoldsStart), "main fuse" },
        { nameof(CheckKind.MainFuseProtectsLead), "supply lead" },
        { nameof(CheckKind.MainFuseVoltage), "main fuse" },
        { nameof(CheckKind.MainFuseBreakingCapacity), "main fuse" },
        { nameof(CheckKind.LeadTemperature), "supply lead" },
        { nameof(CheckKind.FaultOpensMainFuse), "supply lead" },
        { nameof(CheckKind.LeadShortCircuitTemperature), "supply lead" },
        { nameof(CheckKind.FaultInOneParallelLeadWire), "supply lead" },
        { nameof(CheckKind.LeadOverloadTemperature), "supply lead" },
        { nameof(CheckKind.SelectivityOfFuses), "main fuse" },
    };

    [Theory]
    [MemberData(nameof(Places))]
    public void Where_OfAnAnswerAboutNoStretch_IsThePlaceOfItsKind(string id, string where) => Assert.Equal(where, CheckResultTests.Of(id, 1, 2, true).Where);

    [Fact]
    public void Where_IsTestedForEveryKind() => Assert.Equal(CheckKind.All.Select(kind => kind.Id), Places.Select(row => (string)row[0]));

    /// <summary>In a sheet one letter means one thing: each kind has two of its own.</summary>
    [Fact]
    public void Letters_OfAllKinds_AreThereAndNoTwoAlike()
    {
        string[] letters = [.. CheckKind.Catalogue.SelectMany(check => new[] { check.Letters.Value, check.Letters.Limit })];
        Assert.Equal(2 * CheckKind.All.Count, letters.Length);
        Assert.DoesNotContain("", letters);
        Assert.Equal(letters.Length, letters.Distinct(StringComparer.Ordinal).Count());
    }

    /// <summary>The temperature in service repeats the current; what is asked of the lead and of fuse against fuse says nothing about how much the wire and its fuse have to spare.</summary>
    [Fact]
    public void Governs_IsEveryKindButTheTemperatureInServiceAndTheSupply() => Assert.Equal(
        [CheckKind.ConductorTemperature, .. CheckKind.OfSupply], Kinds(check => !check.Governs));

    [Fact]
    public void IsOfStart_IsWhatAnotherMotorOnTheFuseAsksAgain() =>
        Assert.Equal([CheckKind.InrushHeld, CheckKind.StalledMotor], Kinds(check => check.IsOfStart));

    [Fact]
    public void IsCuredBySize_OnAPlainCircuit_IsAllButWhatNoSizeChanges()
    {
        BranchState at = CheckCase.Verify(Load.ConstantCurrent(A(5)).WithMinimumVoltage(V(9)), Blade(10)).State();
        Assert.Equal(NeverCured.ToHashSet(), Kinds(check => !check.IsCuredBySize(at)).ToHashSet());
    }

    /// <summary>Every kind is asked of the wire, of the fuse or of the supply, and of one of them only; of the fuse's the quick ones first.</summary>
    [Fact]
    public void Groups_TogetherAreAllKinds()
    {
        CheckKind[] grouped = [.. CheckKind.OfWire, .. CheckKind.OfFuse, .. CheckKind.OfSupply];
        Assert.Equal(CheckKind.All, grouped);
        Assert.Equal((7, 12, 11), (CheckKind.OfWire.Length, CheckKind.OfFuse.Length, CheckKind.OfSupply.Length));
        Assert.Equal(CheckKind.OfFuse.ToHashSet(), CheckKind.QuickOfFuse.Concat(CheckKind.RestOfFuse).ToHashSet());
        CheckKind[] quick = [.. CheckKind.QuickOfFuse];
        Assert.Equal(
            [CheckKind.FuseCarriesLoad, CheckKind.FuseProtectsWire, CheckKind.FuseVoltage, CheckKind.BreakingCapacity, CheckKind.FuseDistance], quick);
    }

    private static CheckKind[] Kinds(Func<Check, bool> those) => [.. CheckKind.Catalogue.Where(those)];
}
