using FsCheck.Xunit;
using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>The wire is chosen for its duty, then the fuse: no wire grows to house a fuse that breaks more or is made for more volts.</summary>
public class SensibleWireTests
{
    public static TheoryData<string, double> Stiff => new()
    {
        { "lithium 200 Ah", 14.3 }, { "lithium 200 Ah", 14.0 }, { "lithium 200 Ah", 5 }, { "lithium 200 Ah", 1 }, { "lithium 200 Ah", 0 },
        { "lead-acid 600 A", 10 }, { "lead-acid 600 A", 3 }, { "lead-acid 600 A", 0 }, { "two lithium in series", 8 }, { "supply without resistance", 2 },
    };

    [Theory]
    [MemberData(nameof(Stiff))]
    public void Design_OnAStiffSource_TakesTheWireThatAFuseOfAnyBreakingCapacityWouldGet(string name, double milliOhms)
    {
        Source source = name switch
        {
            "lithium 200 Ah" => Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(200)),
            "two lithium in series" => Battery.LithiumIronPhosphate(8, ElectricCharge.FromAmpereHours(200)),
            "supply without resistance" => Source.Ideal(V(12)),
            _ => LeadAcid(),
        };
        (Load Load, double Feed)[] loads =
        [
            (Load.ConstantCurrent(A(3.2)), 4.5), (Load.ConstantPower(W(60)), 3), (Load.Lamp(W(8), V(12)), 6), (Load.ConstantPower(W(45), 0.85, V(9)), 2),
            (Load.Motor(A(5), A(15), A(18), Duration.FromSeconds(0.3)), 3), (Load.ConstantCurrent(A(25)), 1.5),
        ];
        int failed = 0;
        foreach ((Load load, double feed) in loads)
        {
            CircuitRequirements asked = Circuit(load, source, feed: feed, upstreamMilliOhms: milliOhms);
            CircuitDesign few = CircuitDesigner.Design(asked, With(1000)), many = CircuitDesigner.Design(asked, With(1e6));
            Assert.Equal((many.Wire, many.Fuse!.Current.Amperes, many.IsNearest), (few.Wire, few.Fuse!.Current.Amperes, few.IsNearest));
            Assert.All(few.Checks.Zip(many.Checks), pair => Assert.True(pair.First.Kind == CheckKind.BreakingCapacity || pair.First.Outcome == pair.Second.Outcome, pair.First.ToString()));
            Assert.DoesNotContain(few.Rejected, size => size.Check.Kind == CheckKind.BreakingCapacity);
            failed += few.Of(CheckKind.BreakingCapacity).Outcome == CheckOutcome.Fail ? 1 : 0;

            // The presets, whose series hold fuses that break 2000 A and have no times: the same size.
            CircuitDesign preset = CircuitDesigner.Design(asked, DesignRules.Bench);
            Assert.Equal(many.Wire, preset.Wire);
        }

        // 14.6 V over 14.8 mΩ is 986 A, over 14.5 mΩ 1007 A: all but the first are too stiff for 1000 A.
        Assert.Equal(milliOhms > 14.1 ? 0 : loads.Length, failed);
    }

    [Fact]
    public void Design_OnAStiffSource_SaysWhatFailsAndThatNoWireChangesIt()
    {
        // Half of 1.6 mΩ·100 Ah/200 Ah = 0.4 mΩ, 14.6 V: 14.6/0.0144 = 1014 A.
        CircuitDesign design = CircuitDesigner.Design(
            Circuit(Load.ConstantCurrent(A(3.2)), Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(200)), feed: 4.5, upstreamMilliOhms: 14.0), DesignRules.RoadVehicle);
        Assert.Equal((Verdict.Fail, false), (design.Verdict, design.IsNearest));
        design.Is(CheckKind.BreakingCapacity, 14.6 / 0.0144, 1000, 1e-8);
        Assert.Equal([CheckKind.BreakingCapacity], design.Checks.Where(check => check.Outcome == CheckOutcome.Fail).Select(check => check.Kind!));
        Assert.Equal(4, design.Fuse!.Current.Amperes);
        Assert.True(design.Wire.Area.SquareMillimeters <= 2, design.ToString());
        Assert.Equal(["Choose a fuse with a higher breaking capacity, or fit a main fuse that has one at the source. No wire size changes this."], design.Advice);
    }

    [Fact]
    public void Nearest_IsNotAFuseOfUnknownTimesThatFailsNothingForWantOfThem()
    {
        // 15 A for 0.5 m on the one size there is: of blades the 20 A fuse fails, and a strip fuse of 80 A would only look better.
        DesignRules rules = new(DesignRules.Bench)
        {
            Conductors = ConductorSeries.Iec60228Class5.Only("one size", ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(1))),
        };
        CircuitDesign design = CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(15)), feed: 0.2, drop: DropLimit.Percent(20)), rules);
        Assert.True(design.IsNearest);
        Assert.NotNull(design.Fuse!.Curve);
        Assert.Equal(20, design.Fuse.Current.Amperes);
    }

    [Property(Arbitrary = [typeof(AnyCircuit)], MaxTest = 150)]
    public void FailingCheck_NeverPrintsTheSameNumberTwice(AnyCircuit c)
    {
        CircuitDesign design = CircuitDesigner.Design(c.Requirements(), c.Rules);
        CircuitDesign less = CircuitDesigner.Verify(c.Requirements(), design.Wire, Blade(5), c.Rules);
        foreach (CheckResult check in design.Checks.Concat(less.Checks).Concat(design.Rejected.Select(size => size.Check)).Where(check => check.Outcome == CheckOutcome.Fail && check.Value is not null))
        {
            Apart(check);
        }
    }

    [Fact]
    public void FailingCheck_BeyondItsLimitByLess_ThanFourDigitsShow_PrintsMore()
    {
        // A drop of 0.3600144 V: 40 ppm beyond 0.36 V.
        CircuitRequirements asked = Circuit(Load.ConstantCurrent(A(1)), Source.Ideal(V(12)), feed: 0.001, back: ReturnPath.Chassis(MilliOhm(360)), upstreamMilliOhms: 0);
        CircuitDesign design = CircuitDesigner.Verify(asked, RoadVehicle(2.5), Blade(3), DesignRules.RoadVehicle);
        CheckResult drop = design.Of(CheckKind.VoltageDrop);
        Assert.Equal(CheckOutcome.Fail, drop.Outcome);
        Assert.InRange(drop.Value!.Value, 0.36, 0.36002);
        Apart(drop);
        Assert.DoesNotContain("0.36 V, at most 0.36 V", drop.ToString(), StringComparison.Ordinal);
        DesignLimit<Length> run = CircuitDesigner.LongestRun(Circuit(Load.ConstantCurrent(A(10)), feed: 0.5), RoadVehicle(2.5), Blade(15), DesignRules.RoadVehicle);
        Apart(run.Governing!.Value);
        Assert.DoesNotContain("0.36 V, at most 0.36 V", run.Explanation, StringComparison.Ordinal);
    }

    private static void Apart(CheckResult check)
    {
        System.Text.RegularExpressions.Match shown = System.Text.RegularExpressions.Regex.Match(
            check.ToString(), @"^" + System.Text.RegularExpressions.Regex.Escape(check.Name) + @" (?<value>\S+)(?: \S+)?, at (?:least|most) (?<limit>[^\s,:]+)");
        Assert.True(shown.Success, check.ToString());
        double value = Number(shown.Groups["value"].Value.TrimEnd(',')), limit = Number(shown.Groups["limit"].Value);
        Assert.True(check.LimitIsLeast ? value < limit : value > limit, check.ToString());
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    // The blades of every rating, but for what they break.
    private static DesignRules With(double breaks) => new(DesignRules.Bench)
    {
        Fuses = FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = $"invented, breaks {breaks} A",
            Kind = "blade fuse",
            Reference = Reference.CommonPractice("a test"),
            Ratings = [.. new[] { 1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 40 }.Select(A)],
            VoltageRating = V(32),
            VoltageBasis = RatingBasis.DirectCurrent,
            BreakingCapacity = A(breaks),
            BreakingCapacityBasis = RatingBasis.DirectCurrent,
            BreakingCapacityReference = Reference.CommonPractice("a test"),
            Limits = OperatingTimeLimits.RoadVehicleBlade,
        }),
    };
}
