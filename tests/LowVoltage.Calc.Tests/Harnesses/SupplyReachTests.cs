using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A supply that holds its limit does not hold its voltage: the loads that only such sources reach fail.</summary>
public class SupplyReachTests
{
    /// <summary>0.254 A of the 0.271 A that the load asks for: it was counted as running, and the harness passed.</summary>
    [Fact]
    public void ConstantCurrent_JustAboveTheLimit_Fails()
    {
        HarnessVerification verified = HarnessDesigner.Verify(One(Source.CurrentLimited(V(12), A(0.254)), Load.ConstantCurrent(A(0.271))));
        HarnessCheck power = verified.Checks.Single(check => check.Kind == CheckKind.PowerDelivery);
        Assert.Equal((CheckOutcome.Fail, Verdict.Fail), (power.Outcome, verified.Verdict));

        // 0.271 A at 12 V.
        Near(3.252, power.Result.Limit, 1e-12);
        Assert.Equal("the load takes more than the source's limit of 0.254 A", power.Result.Note);
    }

    /// <summary>1 Ω on 12 V that hold 5 A: 5 V and 25 W where 144 W are wanted.</summary>
    [Fact]
    public void Resistance_BeyondTheLimit_Fails()
    {
        HarnessVerification verified = HarnessDesigner.Verify(One(Source.CurrentLimited(V(12), A(5)), Load.Resistance(ElectricResistance.FromOhms(1))));
        CheckResult power = verified.Checks.Single(check => check.Kind == CheckKind.PowerDelivery).Result;
        Near(25, power.Value, 1e-9);
        Near(144, power.Limit, 1e-12);
        Assert.Equal(Verdict.Fail, verified.Verdict);
    }

    [Fact]
    public void LoadWithinTheLimit_IsNotAsked()
    {
        HarnessVerification verified = HarnessDesigner.Verify(One(Source.CurrentLimited(V(12), A(5)), Load.Resistance(ElectricResistance.FromOhms(3))));
        Assert.DoesNotContain(verified.Checks, check => check.Kind == CheckKind.PowerDelivery);
    }

    /// <summary>A charger at its limit beside a battery: the battery gives the rest, and holds the voltage.</summary>
    [Fact]
    public void AnotherSourceHoldsTheVoltage_IsNotAsked()
    {
        Harness harness = Builder(Source.CurrentLimited(V(14), A(5)), Load.Resistance(ElectricResistance.FromOhms(1)))
            .Source("battery", "+", "−", Source.BehindResistance(V(12.6), MilliOhm(20))).Build();
        Assert.DoesNotContain(HarnessDesigner.Verify(harness).Checks, check => check.Kind == CheckKind.PowerDelivery);
    }

    /// <summary>The battery of another net, which shares only the ground, does not help.</summary>
    [Fact]
    public void SourceOfAnotherNet_DoesNotCount()
    {
        Harness harness = Builder(Source.CurrentLimited(V(12), A(5)), Load.Resistance(ElectricResistance.FromOhms(1)))
            .Terminals("other +", "other load")
            .Source("battery", "other +", "−", Source.BehindResistance(V(12.6), MilliOhm(20)))
            .Add(HarnessFuse.Create("other fuse", "other +", "other fused", Blade(5))).Terminals("other fused")
            .Add(Wire("other wire", "other fused", "other load"))
            .Add(HarnessLoad.Create("other lamp", "other load", "load −", Load.ConstantCurrent(A(2)))).Build();
        HarnessCheck power = Assert.Single(HarnessDesigner.Verify(harness).Checks, check => check.Kind == CheckKind.PowerDelivery);
        Assert.Equal(("load", CheckOutcome.Fail), (power.Place, power.Outcome));
    }

    private static Harness One(Source source, Load load) => Builder(source, load).Build();

    private static HarnessBuilder Builder(Source source, Load load) => new HarnessBuilder("a supply at its limit", DesignRules.Bench)
        .Terminals("+", "−", "fused", "load +", "load −")
        .Source("supply", "+", "−", source)
        .Add(HarnessFuse.Create("fuse", "+", "fused", Blade(15)))
        .Add(Wire("feed", "fused", "load +"))
        .Add(Wire("return", "load −", "−"))
        .Add(HarnessLoad.Create("load", "load +", "load −", load));

    private static HarnessWire Wire(string id, string from, string to) =>
        HarnessWire.Create(id, from, to, Class5(6), M(0.5), new Place { Ambient = C(30) }, InsulationMaterial.PolyvinylChloride);
}
