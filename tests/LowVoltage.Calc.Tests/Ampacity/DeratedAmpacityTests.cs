using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

public class DeratedAmpacityTests
{
    [Fact]
    public void With_OwnFactors_MultipliesAndKeepsEveryStep()
    {
        // 33 CFR 183.425 Table 5: 10 AWG at 105 °C 60 A; engine space 0.85; 7 to 24 conductors 0.50.
        DeratedAmpacity derated = DeratedAmpacity.From(Cfr33Part183Table5.Table.Rating(Awg(10), C(105)))
            .With(Cfr33Part183EngineSpace.Factor(C(105)))
            .With(Cfr33Part183ConductorCount.Factor(7, V(50)));
        Assert.Equal(25.5, derated.Current.Amperes, 12);
        Assert.Equal(0.425, derated.CombinedFactor, 12);
        Assert.Equal(2, derated.Steps.Count);
        Assert.Equal(60, derated.Steps[0].Before.Amperes);
        Assert.Equal(51, derated.Steps[0].After.Amperes, 12);
        Assert.Equal(derated.Steps[0].After, derated.Steps[1].Before);
        Assert.Equal(Cfr33Part183EngineSpace.Reference, derated.Steps[0].Reference);
        Assert.False(derated.Steps[0].IsForeign);
        Assert.Empty(derated.Remarks);
        Assert.StartsWith("60 A × 0.85 = 51 A: 0.85 for engine space", derated.Steps[0].ToString(), StringComparison.Ordinal);
        Assert.Contains("2 factors, together 0.425", derated.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void From_WithoutFactors_IsTheTable()
    {
        DeratedAmpacity derated = DeratedAmpacity.From(Cfr33Part183Table5.Table.Rating(Awg(10), C(105)));
        Assert.Equal(60, derated.Current.Amperes);
        Assert.Equal(1, derated.CombinedFactor);
        Assert.Empty(derated.Steps);
    }

    [Fact]
    public void With_FactorOfOtherRules_IsRefusedUnlessForeign()
    {
        DeratedAmpacity table = DeratedAmpacity.From(RoadVehicleSingleCore.Ambient30.Rating(Mm2(2.5), C(70)));
        DeratingFactor grouping = Iec60364Grouping.Factor(3, Iec60364Arrangement.Bunched);
        FactorRefusedException refused = Assert.Throws<FactorRefusedException>(() => table.With(grouping));
        Assert.Equal(FactorRefusal.OtherRuleSet, refused.Reason);
        Assert.Equal("factor", refused.ParamName);
        Assert.Contains("WithForeignFactor", refused.Message, StringComparison.Ordinal);

        DeratedAmpacity mixed = table.WithForeignFactor(grouping);
        Assert.Equal(32 * 0.70, mixed.Current.Amperes, 12);
        Assert.True(mixed.Steps[0].IsForeign);
        string remark = Assert.Single(mixed.Remarks);
        Assert.StartsWith("Rules are mixed", remark, StringComparison.Ordinal);
        Assert.Contains("IEC 60364-5-52", remark, StringComparison.Ordinal);
        Assert.Contains("circuits or multi-core cables", remark, StringComparison.Ordinal);
        Assert.Contains("one cable alone", remark, StringComparison.Ordinal);
    }

    [Fact]
    public void WithForeignFactor_OfTheSameRules_IsNotReportedAsAMix() =>
        Assert.Empty(DeratedAmpacity.From(NecTable310Dash16.Table.Rating(Awg(12), C(75))).WithForeignFactor(NecConductorCount.Factor(4)).Remarks);

    [Fact]
    public void With_AnyFactorOnTable11Dash9_IsRefusedEvenAsForeign()
    {
        DeratedAmpacity derated = DeratedAmpacity.From(FaaAc43Table11Dash9.Table.Rating(Aircraft(20), C(200)));
        DeratingFactor[] factors =
        [
            FaaBundle.Factor(5, Percent(40)), FaaAltitude.Factor(Feet(20_000)), NecConductorCount.Factor(4), NecAmbient.Factor(C(80), C(200), C(70)),
            Iec60364Grouping.Factor(2, Iec60364Arrangement.Bunched), Cfr33Part183EngineSpace.Factor(C(200)),
        ];
        Assert.All(factors, factor => Assert.Equal(
            FactorRefusal.SettledByTable, Assert.Throws<FactorRefusedException>(() => derated.WithForeignFactor(factor)).Reason));
        Assert.Equal(3, FaaAc43Table11Dash9.Table.SettledFactors.Count);
        Assert.False(FaaAc43Table11Dash9.Table.Settles(DeratingKind.Insulation));
    }

    [Fact]
    public void With_ASecondFactorForTheSameEffect_IsRefused()
    {
        DeratedAmpacity hot = DeratedAmpacity.From(Cfr33Part183Table5.Table.Rating(Awg(10), C(75))).With(Cfr33Part183EngineSpace.Factor(C(75)));
        Assert.Equal(FactorRefusal.CountedTwice, Assert.Throws<FactorRefusedException>(() => hot.With(Cfr33Part183EngineSpace.Factor(C(75)))).Reason);
        Assert.Equal(FactorRefusal.CountedTwice, Assert.Throws<FactorRefusedException>(() => hot.WithForeignFactor(NecAmbient.Factor(C(40), C(75)))).Reason);
    }

    [Fact]
    public void With_AmbientFactorOfAnotherInsulation_IsRefused()
    {
        DeratedAmpacity nec = DeratedAmpacity.From(NecTable310Dash16.Table.Rating(Awg(10), C(75)));
        Assert.Equal(FactorRefusal.OtherInsulation, Assert.Throws<FactorRefusedException>(() => nec.With(NecAmbient.Factor(C(40), C(90)))).Reason);
        Assert.Equal(FactorRefusal.OtherInsulation, Assert.Throws<FactorRefusedException>(() => nec.With(NecAmbient.Factor(C(40), C(60)))).Reason);

        // A foreign factor read for a lower rating gives less current, a higher one more.
        Assert.Equal(35 * 0.87, nec.WithForeignFactor(Iec60364Ambient.Factor(C(40), C(70))).Current.Amperes, 12);
        Assert.Equal(FactorRefusal.OtherInsulation, Assert.Throws<FactorRefusedException>(() => nec.WithForeignFactor(Iec60364Ambient.Factor(C(40), C(90)))).Reason);
        Assert.Equal(
            FactorRefusal.OtherInsulation,
            Assert.Throws<FactorRefusedException>(() => nec.WithForeignFactor(Iec60364Ambient.Factor(C(20), C(70)), allowAboveOne: true)).Reason);
    }

    [Fact]
    public void With_AmbientFactorOfAnotherBase_IsRefusedUnlessForeignAndLower()
    {
        DeratedAmpacity nec = DeratedAmpacity.From(NecTable310Dash16.Table.Rating(Awg(10), C(75)));
        Assert.Equal(FactorRefusal.OtherBaseAmbient, Assert.Throws<FactorRefusedException>(() => nec.With(NecAmbient.Factor(C(50), C(75), C(40)))).Reason);

        DeratedAmpacity vehicle = DeratedAmpacity.From(RoadVehicleSingleCore.Ambient50.Rating(Mm2(4), C(70)));
        Assert.Equal(29.8 * 0.61, vehicle.WithForeignFactor(Iec60364Ambient.Factor(C(55), C(70))).Current.Amperes, 12);
        DeratedAmpacity cool = DeratedAmpacity.From(RoadVehicleSingleCore.Ambient30.Rating(Mm2(4), C(70)));
        Assert.Equal(
            FactorRefusal.OtherBaseAmbient,
            Assert.Throws<FactorRefusedException>(() => cool.WithForeignFactor(NecAmbient.Factor(C(50), C(70), C(40)))).Reason);
    }

    [Fact]
    public void With_FactorAboveOne_IsRefusedUnlessAskedForAndThenReported()
    {
        DeratedAmpacity nec = DeratedAmpacity.From(NecTable310Dash16.Table.Rating(Awg(10), C(75)));
        DeratingFactor cool = NecAmbient.Factor(C(20), C(75));
        Assert.Equal(FactorRefusal.AboveOne, Assert.Throws<FactorRefusedException>(() => nec.With(cool)).Reason);
        Assert.Equal(FactorRefusal.AboveOne, Assert.Throws<FactorRefusedException>(() => nec.WithForeignFactor(cool)).Reason);
        DeratedAmpacity raised = nec.With(cool, allowAboveOne: true);
        Assert.Equal(35 * Math.Sqrt(55 / 45.0), raised.Current.Amperes, 12);
        Assert.Contains("raises the current above the table", Assert.Single(raised.Remarks), StringComparison.Ordinal);
        Assert.Empty(nec.With(NecAmbient.Factor(C(30), C(75))).Remarks);
    }

    [Fact]
    public void With_ConductorCountBelow50Volts_IsReportedAsAPractice()
    {
        DeratedAmpacity derated = DeratedAmpacity.From(Cfr33Part183Table5.Table.Rating(Awg(16), C(105))).With(Cfr33Part183ConductorCount.Factor(3, V(12)));
        Assert.Equal(17.5, derated.Current.Amperes, 12);
        Assert.Contains("applied as a practice", Assert.Single(derated.Remarks), StringComparison.Ordinal);
    }

    [Fact]
    public void Nasa_FormulaAndBundledColumn_AreNeverCombined()
    {
        DeratingFactor formula = NasaBundle.Factor(15);
        DeratedAmpacity single = DeratedAmpacity.From(NasaEeeInst002.SingleWire.Rating(Awg(20), C(200)));
        Assert.Equal(FactorRefusal.OtherRuleSet, Assert.Throws<FactorRefusedException>(() => single.With(formula)).Reason);
        Assert.Equal(3.25, single.WithForeignFactor(formula).Current.Amperes, 12);
        DeratedAmpacity bundled = DeratedAmpacity.From(NasaEeeInst002.BundledWire.Rating(Awg(20), C(200)));
        Assert.Equal(FactorRefusal.SettledByTable, Assert.Throws<FactorRefusedException>(() => bundled.WithForeignFactor(formula)).Reason);
        Assert.Equal(3.7 * 0.80, bundled.With(NasaInsulation.Factor(C(150))).Current.Amperes, 12);
    }

    [Fact]
    public void Nec310Dash17_CountFactor_IsRefusedBecauseTheTableIsForOneConductor() =>
        Assert.Equal(
            FactorRefusal.SettledByTable,
            Assert.Throws<FactorRefusedException>(
                () => DeratedAmpacity.From(NecTable310Dash17.Table.Rating(Awg(10), C(75))).With(NecConductorCount.Factor(3))).Reason);

    [Fact]
    public void NullArguments_AreRefused()
    {
        Assert.Throws<ArgumentNullException>("rating", () => DeratedAmpacity.From(null!));
        DeratedAmpacity derated = DeratedAmpacity.From(Cfr33Part183Table5.Table.Rating(Awg(16), C(105)));
        Assert.Throws<ArgumentNullException>("factor", () => derated.With(null!));
        Assert.Throws<ArgumentNullException>("factor", () => derated.WithForeignFactor(null!));
    }
}
