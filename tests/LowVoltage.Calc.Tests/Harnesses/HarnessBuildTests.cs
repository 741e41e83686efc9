using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>What a harness refuses, with the names.</summary>
public class HarnessBuildTests
{
    private static HarnessBuilder Start => new HarnessBuilder("h", DesignRules.RoadVehicle).Terminals("a", "b").Source("battery", "a", "b", Vans.Battery600);

    private static Load Lamp => Load.Resistance(ElectricResistance.FromOhms(6));

    private static string Refused(HarnessBuilder builder) => Assert.Throws<ArgumentException>(builder.Build).Message;

    [Fact]
    public void Build_NoSource_IsRefused() =>
        Assert.Contains("no source", Refused(new HarnessBuilder("h", DesignRules.RoadVehicle).Terminals("a", "b").Load("lamp", "a", "b", Lamp)), StringComparison.Ordinal);

    [Fact]
    public void Build_UnknownNode_NamesItAndThoseThatThereAre()
    {
        string message = Refused(Start.Load("lamp", "a", "c", Lamp));
        Assert.Contains("lamp names node c", message, StringComparison.Ordinal);
        Assert.Contains("a, b", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_NamesCompareLetterByLetter() => Assert.Contains("node A", Refused(Start.Load("lamp", "A", "b", Lamp)), StringComparison.Ordinal);

    [Fact]
    public void Build_RepeatedNames_AreNamed()
    {
        string message = Refused(Start.Terminals("a").Load("battery", "a", "b", Lamp).Load("lamp", "a", "x", Lamp));
        Assert.Contains("3 mistakes", message, StringComparison.Ordinal);
        Assert.Contains("Several nodes are named a", message, StringComparison.Ordinal);
        Assert.Contains("named battery", message, StringComparison.Ordinal);
        Assert.Contains("node x", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_FromANodeToItself_IsRefused() => Assert.Throws<ArgumentException>(() => Start.Chassis("c", "a", "a", ElectricResistance.Zero));

    [Fact]
    public void Build_LoopOfZeroResistance_IsNamed()
    {
        string message = Refused(Start.Resistance("one", "a", "b", ElectricResistance.Zero).Switch("two", "b", "a", ElectricResistance.Zero));
        Assert.Contains("one", message, StringComparison.Ordinal);
        Assert.Contains("two", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_IdealSourcesInParallel_AreNamed()
    {
        Source ideal = Source.Ideal(ElectricPotential.FromVolts(12));
        string message = Refused(new HarnessBuilder("h", DesignRules.RoadVehicle).Terminals("a", "b").Source("one", "a", "b", ideal).Source("other", "a", "b", ideal));
        Assert.Contains("one", message, StringComparison.Ordinal);
        Assert.Contains("other", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_ShortAcrossAnIdealSource_IsNamed() => Assert.Contains("link", Refused(
        new HarnessBuilder("h", DesignRules.RoadVehicle).Terminals("a", "b").Source("one", "a", "b", Source.Ideal(ElectricPotential.FromVolts(12))).Resistance("link", "a", "b", ElectricResistance.Zero)), StringComparison.Ordinal);

    [Fact]
    public void Build_LoadCaseWithUnknownNames_IsRefused()
    {
        string message = Refused(Start.Load("lamp", "a", "b", Lamp).Add(LoadCase.Create("night").WithOff("radio").WithSwitch("S", true)));
        Assert.Contains("load radio", message, StringComparison.Ordinal);
        Assert.Contains("switch S", message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_LengthOfNothing_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => Start.AddWire("w", "a", "b", 1.5, 0));

    // 12.0 V behind the battery's resistance into nothing but that: V/R, by Ohm's law.
    [Fact]
    public void Solve_ShortAcrossABatteryWithResistance_IsAnswered()
    {
        Source battery = Source.BehindResistance(ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(10));
        HarnessSolution at = new HarnessBuilder("h", DesignRules.RoadVehicle).Terminals("a", "b").Source("battery", "a", "b", battery).Resistance("link", "a", "b", ElectricResistance.Zero).Build().Solve();
        Assert.Equal(1200, at.CurrentOf("link").Amperes, 1e-6);
    }

    [Fact]
    public void Solve_IslandsAndReversedBatteries_AreNamed()
    {
        Source battery = Source.BehindResistance(ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(10));
        Harness harness = new HarnessBuilder("h", DesignRules.RoadVehicle).Terminals("a", "b", "alone", "too")
            .Source("one", "a", "b", battery).Source("wrong", "b", "a", battery).Load("lamp", "alone", "too", Lamp).Load("other", "a", "b", Lamp).Build();
        HarnessSolution at = harness.Solve();
        HarnessVerification verified = HarnessDesigner.Verify(harness);

        Assert.Equal(LoadCondition.Dead, at.ConditionOf("lamp"));
        Assert.Contains(at.FloatingIslands, island => island.Contains("alone"));
        Assert.Contains(verified.Findings, f => f.Places.Contains("wrong") && f.Severity == FindingSeverity.Fail);
        Assert.Equal(Calc.Checks.Verdict.Fail, verified.Verdict);
    }

    [Fact]
    public void Solve_WireWithoutConductor_SaysWhich()
    {
        Harness harness = Start.Load("lamp", "c", "b", Lamp).Terminals("c").Wire("feed", "a", "c", null, Length.FromMeters(1), Vans.Cabin, Vans.Vinyl).Build();
        Assert.Contains("feed", Assert.Throws<InvalidOperationException>(() => harness.Solve()).Message, StringComparison.Ordinal);
    }

    /// <summary>Such a name was accepted, and then no drawing could be written.</summary>
    [Theory]
    [InlineData("fan", 0, "", "U+0000 as character 4")]
    [InlineData("", 7, "fan", "U+0007 as character 1")]
    [InlineData("f", 0xFFFE, "n", "U+FFFE as character 2")]
    [InlineData("fan", 0xD83D, "", "U+D83D as character 4")]
    [InlineData("fan ", 0xDE80, "", "U+DE80 as character 5")]
    public void Name_WithWhatNoDrawingCanHold_IsRefused(string before, int odd, string behind, string where)
    {
        string name = before + (char)odd + behind;
        ArgumentException refused = Assert.Throws<ArgumentException>("id", () => HarnessFuse.Create(name, "a", "b", null));
        Assert.StartsWith($"A name must be text without control characters; it had {where}.", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Name_InAnyScript_IsKept() => Assert.Equal("Lüfter 風扇 \U0001F680", HarnessFuse.Create("Lüfter 風扇 \U0001F680", "a", "b", null).Id);
}
