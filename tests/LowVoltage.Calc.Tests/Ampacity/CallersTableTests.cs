using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Ampacity.Sample;

namespace LowVoltage.Calc.Tests.Ampacity;

/// <summary>Tables and factors that the caller brings.</summary>
public class CallersTableTests
{
    private static readonly Reference Sheet = new() { Title = "data sheet", Edition = "2026", Kind = ReferenceKind.Handbook };

    private static AmpacityRow Row(ConductorSize size, params double[] amperes) =>
        AmpacityRow.Create(size, [.. amperes.Select(a => double.IsNaN(a) ? (ElectricCurrent?)null : A(a))]);

    private static AmpacityTable Table(params AmpacityRow[] rows) => AmpacityTable.Create("maker's table", C(40), 2, [C(90), C(105)], rows, Sheet);

    private static string Refused(params AmpacityRow[] rows) => Assert.Throws<ArgumentException>(nameof(rows), () => Table(rows)).Message;

    [Fact]
    public void Create_IsReadLikeAPublishedTable()
    {
        AmpacityTable own = Table(Row(Awg(14), 20, 25), Row(Awg(10), 30, double.NaN), Row(KcmilSize.FromKcmil(250), 300, 340));
        Assert.Equal(25, own.Rating(Awg(14), C(105)).Current.Amperes);
        Assert.Equal(20, own.Rating(Awg(14), C(95)).Current.Amperes);
        Assert.Equal(340, own.Rating(KcmilSize.FromKcmil(250), C(105)).Current.Amperes);
        Assert.False(own.TryRating(Awg(10), C(105), out _));
        Assert.False(own.TryRating(Mm2(2.5), C(90), out _));
        Assert.Equal("14 AWG, 10 AWG, 250 kcmil at insulation ratings of 90, 105 °C (some cells are blank)", own.Covers);
        Assert.Equal((RuleSet.Caller, 40.0), (own.RuleSet, own.BaseAmbient.DegreesCelsius));
        Assert.Contains("2 loaded conductors together", own.Conditions, StringComparison.Ordinal);
        Assert.Equal("250 kcmil", own.Rating(KcmilSize.FromKcmil(250), C(90)).Size);
    }

    [Fact]
    public void Create_MetricAndVehicleGaugeAndAircraft_KeepTheirSystems()
    {
        AmpacityTable metric = AmpacityTable.Create("metric", C(30), 1, [C(70)], [Row(Mm2(1.5), 15), Row(Mm2(2.5), 20)], Sheet);
        Assert.True(metric.TryAmperes(SizeSystem.RoadVehicle, 2.5, 70, out _, out _) && metric.TryAmperes(SizeSystem.Iec60228, 2.5, 70, out _, out _) && metric.TryAmperes(SizeSystem.Metric, 2.5, 70, out _, out _));
        AmpacityTable vehicle = AmpacityTable.Create("vehicle", C(30), 1, [C(70)], [Row(VehicleGaugeSize.FromNumber(14), 15)], Sheet);
        Assert.Equal("14 SAE at insulation ratings of 70 °C", vehicle.Covers);
        Assert.False(vehicle.TryRating(Awg(14), C(70), out _));
        Assert.True(vehicle.TryRating(VehicleGaugeSize.FromNumber(14), C(70), out _));
        Assert.Equal("20 aircraft at insulation ratings of 70 °C", AmpacityTable.Create("aircraft", C(30), 1, [C(70)], [Row(Aircraft(20), 5)], Sheet).Covers);
    }

    [Fact]
    public void Create_RowThatDoesNotFit_IsRefusedWithItsReason()
    {
        AmpacityRow first = Row(Awg(14), 20, 25);
        Assert.StartsWith("rows[1] (10 AWG) has 1 currents, but there are 2 insulation ratings.", Refused(first, Row(Awg(10), 30)), StringComparison.Ordinal);
        Assert.StartsWith("rows[1] (16 AWG) has no more metal than 14 AWG, the row before it.", Refused(first, Row(Awg(16), 30, 35)), StringComparison.Ordinal);
        Assert.StartsWith("rows[1] (14 AWG) has no more metal", Refused(first, Row(Awg(14), 30, 35)), StringComparison.Ordinal);
        Assert.StartsWith("rows[1] (4 mm²) is of another system of sizes than 14 AWG.", Refused(first, Row(Mm2(4), 30, 35)), StringComparison.Ordinal);
        Assert.StartsWith("rows[1] (10 AWG) carries 19 A at 90 °C, less than the 20 A of a smaller size.", Refused(first, Row(Awg(10), 19, 30)), StringComparison.Ordinal);
        Assert.StartsWith("rows[0] (14 AWG) carries 19 A at 105 °C, less than the 20 A of a lower insulation rating.", Refused(Row(Awg(14), 20, 19)), StringComparison.Ordinal);
        Assert.StartsWith("rows[2] (8 AWG) carries 24 A at 105 °C, less than the 25 A of a smaller size.", Refused(first, Row(Awg(10), 20, double.NaN), Row(Awg(8), 22, 24)), StringComparison.Ordinal);
        Assert.Contains("none", Refused(), StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("rows", () => Table(first, null!));
        Assert.Throws<ArgumentException>("currents", () => Row(Awg(14), double.NaN, double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>("currents", () => Row(Awg(14), 0));
        Assert.Throws<ArgumentOutOfRangeException>("size", () => Row(default, 5));
    }

    [Fact]
    public void Create_ColumnsAmbientAndCount_AreChecked()
    {
        AmpacityRow[] rows = [Row(Awg(14), 20, 25)];
        Assert.Throws<ArgumentException>("insulationRatings", () => AmpacityTable.Create("x", C(40), 1, [C(105), C(90)], rows, Sheet));
        Assert.Throws<ArgumentException>("insulationRatings", () => AmpacityTable.Create("x", C(40), 1, [], rows, Sheet));
        Assert.Throws<ArgumentOutOfRangeException>("insulationRatings", () => AmpacityTable.Create("x", C(20), 1, [C(30), C(90)], rows, Sheet));
        Assert.Throws<ArgumentOutOfRangeException>("baseAmbient", () => AmpacityTable.Create("x", C(90), 1, [C(90), C(105)], rows, Sheet));
        Assert.Throws<ArgumentOutOfRangeException>("loadedConductors", () => AmpacityTable.Create("x", C(40), 0, [C(90), C(105)], rows, Sheet));
        Assert.Throws<ArgumentException>("name", () => AmpacityTable.Create("", C(40), 1, [C(90), C(105)], rows, Sheet));
        Assert.Throws<ArgumentNullException>("reference", () => AmpacityTable.Create("x", C(40), 1, [C(90), C(105)], rows, null!));
    }

    [Fact]
    public void Factor_OfTheCaller_GoesWithTheCallersTable()
    {
        DeratingFactor warm = DeratingFactor.Create(0.87, DeratingKind.Ambient, RuleSet.Caller, "ambient 50 °C", Sheet, C(40), C(90));
        DeratedAmpacity derated = DeratedAmpacity.From(Table(Row(Awg(14), 20, 25)).Rating(Awg(14), C(90))).With(warm);
        Assert.Equal(17.4, derated.Current.Amperes, 1e-12);
        Assert.Equal((40.0, 90.0), (warm.BaseAmbient!.Value.DegreesCelsius, warm.InsulationRating!.Value.DegreesCelsius));
        Assert.Equal(FactorRefusal.OtherRuleSet, Assert.Throws<FactorRefusedException>(() => DeratedAmpacity.From(NecTable310Dash16.Table.Rating(Awg(14), C(90))).With(warm)).Reason);
        DeratingFactor nec = DeratingFactor.Create(0.9, DeratingKind.Grouping, RuleSet.Nec, "a local amendment", Sheet);
        Assert.Equal(22.5, DeratedAmpacity.From(NecTable310Dash16.Table.Rating(Awg(14), C(90))).With(nec).Current.Amperes, 1e-12);
        Assert.Equal(FactorRefusal.AboveOne, Assert.Throws<FactorRefusedException>(
            () => derated.With(DeratingFactor.Create(1.1, DeratingKind.Altitude, RuleSet.Caller, "dense air", Sheet))).Reason);
    }

    [Fact]
    public void Factor_OutsideItsRange_IsRefusedByName()
    {
        Assert.Throws<ArgumentOutOfRangeException>("value", () => DeratingFactor.Create(0, DeratingKind.Grouping, RuleSet.Caller, "c", Sheet));
        Assert.Throws<ArgumentOutOfRangeException>("value", () => DeratingFactor.Create(2.01, DeratingKind.Grouping, RuleSet.Caller, "c", Sheet));
        Assert.Throws<ArgumentOutOfRangeException>("kind", () => DeratingFactor.Create(0.5, (DeratingKind)99, RuleSet.Caller, "c", Sheet));
        Assert.Throws<ArgumentOutOfRangeException>("ruleSet", () => DeratingFactor.Create(0.5, DeratingKind.Grouping, (RuleSet)99, "c", Sheet));
        Assert.Throws<ArgumentException>("condition", () => DeratingFactor.Create(0.5, DeratingKind.Grouping, RuleSet.Caller, " ", Sheet));
        Assert.Throws<ArgumentException>("baseAmbient", () => DeratingFactor.Create(0.5, DeratingKind.Ambient, RuleSet.Caller, "hot", Sheet));
        Assert.Throws<ArgumentNullException>("reference", () => DeratingFactor.Create(0.5, DeratingKind.Grouping, RuleSet.Caller, "c", null!));
    }
}
