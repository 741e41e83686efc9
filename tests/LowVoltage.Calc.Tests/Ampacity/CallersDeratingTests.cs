using FsCheck.Xunit;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using LowVoltage.Calc.Tests.Design;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Ampacity;

/// <summary>A design rated by the caller's table with the caller's factors. The maker's sheet is invented: one conductor in air of 30 °C, 1.5 mm² 25 A, 2.5 mm² 34 A, 4 mm² 45 A at 90 °C.</summary>
public class CallersDeratingTests
{
    private static readonly Reference Sheet = new() { Title = "data sheet (invented)", Edition = "2026", Locator = "page 3", Kind = ReferenceKind.Handbook };

    private static readonly Reference Remembered = new() { Title = "bundle note (invented)", Kind = ReferenceKind.FromMemory };

    private static readonly AmbientDerating Air = AmbientDerating.Create("air factors", Sheet, [C(30), C(40), C(50)], [1, 0.91, 0.82]);

    private static readonly GroupingDerating Bundle = GroupingDerating.ByConductors("bundle factors", Remembered, [1, 2, 4], [1, 0.88, 0.75]);

    private static readonly InsulationMaterial Crosslinked = InsulationMaterial.CrossLinkedPolyethylene;

    private static AmpacityTable Table(int conductors = 1, double ambient = 30, params double[] columns) => AmpacityTable.Create(
        "maker's table", C(ambient), conductors, [.. (columns.Length == 0 ? [90] : columns).Select(C)],
        [.. new[] { (1.5, 25.0), (2.5, 34), (4, 45) }.Select(row => AmpacityRow.Create(
            MetricSize.FromSquareMillimeters(row.Item1), [.. Enumerable.Repeat<ElectricCurrent?>(A(row.Item2), Math.Max(columns.Length, 1))]))],
        Sheet);

    private static AmpacityBasis Whole => AmpacityBasis.FromTable(Table(), Air, Bundle);

    private static double Rated(AmpacityBasis basis, double ambient, int conductors, double section = 1.5, InsulationMaterial? insulation = null) =>
        basis.TryRate(RoadVehicle(section), insulation ?? Crosslinked, new Place { Ambient = C(ambient), LoadedConductors = conductors }, out ElectricCurrent current) ? current.Amperes : 0;

    private static DesignRules Rules(AmpacityBasis basis) => new(DesignRules.RoadVehicle) { Ampacity = basis };

    private static CircuitDesign Verified(AmpacityBasis basis, double amperes, double ambient = 45, int conductors = 2, double section = 1.5) => CircuitDesigner.Verify(
        Circuit(Load.ConstantCurrent(A(amperes)), feed: 1, ambient: ambient, conductors: conductors, insulation: Crosslinked), RoadVehicle(section), Blade(15), Rules(basis));

    // 25 A · 0.82 (row of 50 °C) · 0.88 = 18.04 A; cool air and one conductor leave 25 A; three conductors take the row of four.
    [Theory]
    [InlineData(45, 2, 25 * 0.82 * 0.88)]
    [InlineData(-10, 1, 25)]
    [InlineData(30, 1, 25)]
    [InlineData(30, 2, 25 * 0.88)]
    [InlineData(31, 1, 25 * 0.91)]
    [InlineData(50, 3, 25 * 0.82 * 0.75)]
    [InlineData(50.1, 1, 0)]
    [InlineData(30, 5, 0)]
    public void FromTable_WithFactors_MultipliesThem(double ambient, int conductors, double expected)
    {
        Assert.Equal(expected, Rated(Whole, ambient, conductors), 1e-12);
        Assert.Equal(expected * 34 / 25, Rated(Whole, ambient, conductors, 2.5), 1e-12);
    }

    [Fact]
    public void FromTable_OneOfTheTwoAlone_LeavesTheOtherAsTheTableHasIt()
    {
        Assert.Equal(25 * 0.82, Rated(AmpacityBasis.FromTable(Table(), Air, null), 45, 1), 1e-12);
        Assert.Equal(0, Rated(AmpacityBasis.FromTable(Table(), Air, null), 45, 2));
        Assert.Equal(25 * 0.88, Rated(AmpacityBasis.FromTable(Table(), null, Bundle), 30, 2), 1e-12);
        Assert.Equal(0, Rated(AmpacityBasis.FromTable(Table(), null, Bundle), 31, 2));
        Assert.Equal(25, Rated(AmpacityBasis.FromTable(Table(), null, null), 30, 1));
        Assert.Equal(0, Rated(AmpacityBasis.FromTable(Table()), 45, 2));
        Assert.Equal("maker's table", AmpacityBasis.FromTable(Table(), null, null).Name);
    }

    // Two circuits, or an odd third conductor, are the row of two; a table for three conductors begins at one circuit.
    [Theory]
    [InlineData(2, 2, 1)]
    [InlineData(2, 3, 0.8)]
    [InlineData(2, 4, 0.8)]
    [InlineData(2, 5, 0)]
    [InlineData(3, 3, 0.8)]
    public void FromTable_FactorsByCircuits_CountTwoConductorsEach(int table, int conductors, double factor)
    {
        GroupingDerating circuits = GroupingDerating.ByCircuits("loom factors", Sheet, [1, 2], [1, 0.8]);
        Assert.Equal(25 * factor, Rated(AmpacityBasis.FromTable(Table(table), null, circuits), 30, conductors), 1e-12);
    }

    [Fact]
    public void FromTable_NameAndReference_SayTheFactors()
    {
        Assert.Equal("maker's table with air factors and bundle factors", Whole.Name);
        Assert.Equal("data sheet (invented) (2026), page 3, times air factors and bundle factors [from memory]", Whole.Reference.ToString());
        Assert.Equal("Factors: data sheet (invented) (2026), page 3 [handbook]; bundle note (invented) [from memory].", Whole.Reference.Note);
        Assert.Equal("data sheet (invented) (2026), page 3, times air factors [handbook]", AmpacityBasis.FromTable(Table(), Air, null).Reference.ToString());
    }

    [Fact]
    public void FromTable_FactorsThatDoNotFitTheTable_AreRefusedWithTheReason()
    {
        static string Said(string parameter, Func<AmpacityBasis> make) => Assert.Throws<ArgumentException>(parameter, make).Message;
        Assert.StartsWith("ambient must begin with the table's own air, 40 °C for maker's table; air factors begins at 30 °C.", Said("ambient", () => AmpacityBasis.FromTable(Table(ambient: 40), Air, null)), StringComparison.Ordinal);
        Assert.StartsWith("grouping must begin with the table's own number, 2 loaded conductors for maker's table; bundle factors begins at 1 loaded conductor.", Said("grouping", () => AmpacityBasis.FromTable(Table(2), Air, Bundle)), StringComparison.Ordinal);
        GroupingDerating circuits = GroupingDerating.ByCircuits("loom factors", Sheet, [1, 2], [1, 0.8]);
        Assert.Contains("one conductor alone, which is no circuit,", Said("grouping", () => AmpacityBasis.FromTable(Table(), null, circuits)), StringComparison.Ordinal);
        Assert.Contains("2 circuits for maker's table; loom factors begins at 1 circuit.", Said("grouping", () => AmpacityBasis.FromTable(Table(4), null, circuits)), StringComparison.Ordinal);
        Assert.Contains("has its own", Said("table", () => AmpacityBasis.FromTable(NecTable310Dash16.Table, Air, null)), StringComparison.Ordinal);
        Assert.Contains("has its own", Said("table", () => AmpacityBasis.FromTable(NecTable310Dash17.Table, null, Bundle)), StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>("table", () => AmpacityBasis.FromTable(null!, Air, Bundle));
        Assert.Equal(AmpacityBasis.FromTable(NecTable310Dash16.Table).Name, AmpacityBasis.FromTable(NecTable310Dash16.Table, null, null).Name);
    }

    // Rows up to 100 °C belong to better insulation: the 90 °C column has nothing to carry where the row counts 90 °C or more.
    [Fact]
    public void FromTable_RowAsHotAsTheInsulation_RatesNothing()
    {
        AmpacityBasis basis = AmpacityBasis.FromTable(Table(1, 30, 90, 125), AmbientDerating.Create("air factors", Sheet, [C(30), C(80), C(100)], [1, 0.7, 0.5]), null);
        Assert.Equal(25 * 0.7, Rated(basis, 80, 1), 1e-12);
        Assert.Equal(0, Rated(basis, 81, 1));
        Assert.Equal(25 * 0.5, Rated(basis, 81, 1, insulation: InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.C)), 1e-12);
    }

    // Independent of the basis: the best factor of the rows that are not cooler, or not fewer.
    [Property(MaxTest = 300)]
    public void FromTable_HotterOrMore_NeverRatesHigher(int seed)
    {
        Random random = new(seed);
        double[] air = [30, .. Enumerable.Range(0, random.Next(1, 6)).Select(_ => 30.5 + random.Next(0, 100) / 2.0).Distinct().Order()];
        int[] counts = [1, .. Enumerable.Range(0, random.Next(1, 6)).Select(_ => random.Next(2, 30)).Distinct().Order()];
        double[] warm = Falling(random, air.Length), dense = Falling(random, counts.Length);
        AmpacityBasis basis = AmpacityBasis.FromTable(
            Table(), AmbientDerating.Create("a", Sheet, [.. air.Select(C)], warm), GroupingDerating.ByConductors("b", Sheet, counts, dense));
        double cool = -20 + (random.NextDouble() * 100), hot = cool + (random.NextDouble() * 30);
        int few = random.Next(1, 30), many = few + random.Next(0, 10);
        double easy = Rated(basis, cool, few);
        Assert.True(Rated(basis, hot, few) <= easy && Rated(basis, cool, many) <= easy && Rated(basis, hot, many) <= easy);
        Assert.Equal(25 * Best(air, warm, cool) * Best([.. counts.Select(n => (double)n)], dense, few), easy, 1e-9);
    }

    private static double[] Falling(Random random, int rows) => [1, .. Enumerable.Range(1, rows - 1).Select(_ => 0.05 + (0.95 * random.NextDouble())).OrderDescending()];

    private static double Best(double[] rows, double[] factors, double asked) => rows.Zip(factors).Where(row => row.First >= asked).Select(row => row.Second).DefaultIfEmpty(0).Max();

    // 15 A blade on 18.04 A: 12 A passes by the table alone; 17 A is within it, 19 A is not.
    [Fact]
    public void Verify_ByTheCallersBasis_PassesAndFailsAccordingly()
    {
        foreach ((double amperes, CheckOutcome outcome) in new[] { (12.0, CheckOutcome.Pass), (18, CheckOutcome.Pass), (18.1, CheckOutcome.Fail) })
        {
            CircuitDesign design = Verified(Whole, amperes);
            design.Is(CheckKind.ContinuousCurrent, amperes, 18.04, 1e-12);
            Assert.Equal(outcome, design.Of(CheckKind.ContinuousCurrent).Outcome);
            Assert.Equal(Whole.Reference, design.Of(CheckKind.ContinuousCurrent).Reference);
        }

        // The wire gets to 90 °C at its rating, from the air as it is: 45 + 45·(12/18.04)².
        Verified(Whole, 12).Is(CheckKind.ConductorTemperature, 45 + (45 * 12 * 12 / 18.04 / 18.04), 90, 1e-12);
        Verified(Whole, 12).Is(CheckKind.FuseProtectsWire, 15, 18.04);
    }

    [Theory]
    [InlineData(55, 2, "the rows of air factors end at 50 °C, the air is at 55 °C")]
    [InlineData(45, 6, "the rows of bundle factors end at 4 loaded conductors, 6 lie together")]
    public void Verify_BeyondTheRows_IsUndeterminedWithTheReason(double ambient, int conductors, string reason)
    {
        CircuitDesign design = Verified(Whole, 5, ambient, conductors);
        Assert.Equal((CheckOutcome.Undetermined, reason), (design.Of(CheckKind.ContinuousCurrent).Outcome, design.Of(CheckKind.ContinuousCurrent).Note));
        Assert.NotEqual(Verdict.Pass, design.Verdict);
    }

    [Fact]
    public void Design_ByTheCallersBasis_ChoosesAndExplainsBothFactors()
    {
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(16)), feed: 1, ambient: 45, conductors: 2, insulation: Crosslinked, upstreamMilliOhms: 12, drop: DropLimit.Percent(5, Sheet));
        CircuitDesign design = CircuitDesigner.Design(asked, Rules(Whole));

        // 16 A need a 20 A fuse at 80 %: above the 18.04 A of 1.5 mm², below the 24.53 A of 2.5 mm², which an overload that the fuse carries heats too much. The sheet has no 2 mm² and no 3 mm².
        Assert.Equal((Verdict.Pass, 4.0, 20.0), (design.Verdict, design.Wire.Size!.Value.NominalArea.SquareMillimeters, design.Fuse!.Current.Amperes));
        Near(45 * 0.82 * 0.88, design.Ampacity!.Current.Amperes, 1e-12);
        string[] rejected = [.. design.Rejected.Select(size => size.ToString())];
        Assert.Contains(rejected, line => line.StartsWith("2.5 mm² road-vehicle copper: overload temperature", StringComparison.Ordinal));
        Assert.Equal(2, rejected.Count(line => line.Contains("maker's table with air factors and bundle factors does not cover", StringComparison.Ordinal)));
        CircuitDesigner.Verify(asked, RoadVehicle(1.5), Blade(20), Rules(Whole)).Is(CheckKind.FuseProtectsWire, 20, 18.04);
        Assert.Equal([0.82, 0.88], design.Ampacity.Steps.Select(step => step.Factor.Value));
        string factors = "Factors on the currents of maker's table: 0.82 for ambient temperature (ambient 45 °C, row 50 °C): data sheet (invented) (2026), page 3 [handbook]; "
            + "0.88 for number of conductors (2 loaded conductors): bundle note (invented) [from memory].";
        Assert.Contains(factors, design.Assumptions);
        string working = design.Explain().ToMarkdown();
        Assert.Contains("Factor for ambient temperature", working, StringComparison.Ordinal);
        Assert.Contains("ambient 45 °C, row 50 °C", working, StringComparison.Ordinal);
        Assert.Contains("Factor for number of conductors", working, StringComparison.Ordinal);
        Assert.Contains("bundle note (invented)", working, StringComparison.Ordinal);
        Assert.DoesNotContain(CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(5)), feed: 1, ambient: 30, back: ReturnPath.Chassis(MilliOhm(1)), conductors: 1, insulation: Crosslinked), Rules(Whole)).Assumptions, line => line.StartsWith("Factors on", StringComparison.Ordinal));
    }

    // The lower of the two counts; what is too hot for the caller's rows is not rated by the other either.
    [Fact]
    public void LowerOf_WithTheHeatBalance_TakesTheLowerAndKeepsTheEnd()
    {
        AmpacityBasis lower = AmpacityBasis.LowerOf(Whole, AmpacityBasis.HeatBalance);
        Assert.Equal("the lower of maker's table with air factors and bundle factors and " + AmpacityBasis.HeatBalance.Name, lower.Name);
        double physics = Rated(AmpacityBasis.HeatBalance, 45, 2);
        Assert.Equal(Math.Min(physics, 18.04), Rated(lower, 45, 2), 1e-9);
        Assert.Equal(0, Rated(lower, 55, 2));
        Assert.True(Rated(AmpacityBasis.HeatBalance, 55, 2) > 0);

        // Half the currents: the table surely is the lower one, and its factors are said.
        AmpacityTable half = AmpacityTable.Create("half", C(30), 1, [C(90)], [AmpacityRow.Create(MetricSize.FromSquareMillimeters(1.5), A(8))], Sheet);
        CircuitDesign design = Verified(AmpacityBasis.LowerOf(AmpacityBasis.FromTable(half, Air, Bundle), AmpacityBasis.HeatBalance), 5);
        Near(8 * 0.82 * 0.88, design.Of(CheckKind.ContinuousCurrent).Limit, 1e-12);
        Assert.Contains(design.Assumptions, line => line.StartsWith("Factors on the currents of half: 0.82", StringComparison.Ordinal));
    }

    [Fact]
    public void Harness_ByTheCallersBasis_IsRatedWireByWire()
    {
        Place warm = new() { Ambient = C(45), LoadedConductors = 2 }, hot = new() { Ambient = C(60), LoadedConductors = 2 };
        HarnessVerification at = HarnessDesigner.Verify(new HarnessBuilder("own table", Rules(Whole))
            .Terminals("plus", "minus", "fused", "load +", "load −")
            .Source("battery", "plus", "minus", LeadAcid())
            .Fuse("F", "plus", "fused", Blade(15))
            .Wire("feed", "fused", "load +", RoadVehicle(1.5), M(1), warm, Crosslinked)
            .Wire("ground", "load −", "minus", RoadVehicle(2.5), M(1), hot, Crosslinked)
            .Load("heater", "load +", "load −", Load.ConstantCurrent(A(10))).Build());
        Near(18.04, at.Find(CheckKind.ContinuousCurrent, "feed")!.Value.Result.Limit, 1e-12);
        Assert.Equal(CheckOutcome.Pass, at.Find(CheckKind.ContinuousCurrent, "feed")!.Value.Result.Outcome);
        CheckResult ground = at.Find(CheckKind.ContinuousCurrent, "ground")!.Value.Result;
        Assert.Equal((CheckOutcome.Undetermined, "the rows of air factors end at 50 °C, the air is at 60 °C"), (ground.Outcome, ground.Note));
    }
}
