using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using MathNet.Numerics.Distributions;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Samples against closed forms, and the confidence bound against the binomial distribution that it is exact for.</summary>
public class ToleranceSampleTests
{
    private static readonly Harness Two = Vans.Two(Load.ConstantCurrent(ElectricCurrent.FromAmperes(5)), Load.ConstantCurrent(ElectricCurrent.FromAmperes(9))).Build();

    private static readonly Tolerances Some = Tolerances.None.WithSupply(Ratio.FromPercent(2)).WithLengths(Ratio.FromPercent(10)).WithLoads(Ratio.FromPercent(10)).WithAmbient(TemperatureDelta.FromKelvins(5));

    [Fact]
    public void Of_SameSeed_SaysTheSameOnAnyNumberOfThreads()
    {
        string[] one = Lines(ToleranceSample.OfHarness(Two, Some, 300, 7, threads: 1)), four = Lines(ToleranceSample.OfHarness(Two, Some, 300, 7, threads: 4));
        Assert.Equal(one, four);
        Assert.NotEqual(one, Lines(ToleranceSample.OfHarness(Two, Some, 300, 8)));
    }

    [Fact]
    public void Of_FirstSamplesOfALongerRun_AreThoseOfTheShorterOne()
    {
        SampledCheck few = Drop(ToleranceSample.OfHarness(Two, Some, 1, 7)), many = Drop(ToleranceSample.OfHarness(Two, Some, 256, 7));
        Assert.InRange(few.Percentile(50)!.Value, many.Percentile(0)!.Value, many.Percentile(100)!.Value);
    }

    // 5 A through joints of 20 mΩ, uniform within ±50 %: the drop is 0.1 V·(1 + 0.5·u), u from −1 to 1: its 5th percentile lies at u = −0.9.
    [Theory]
    [InlineData(5, -0.9)]
    [InlineData(50, 0)]
    [InlineData(90, 0.8)]
    public void Percentile_UniformJoint_IsTheClosedForm(double percent, double u)
    {
        const int count = 4000;
        SampledCheck drop = Drop(ToleranceSample.OfHarness(OneResistance, Tolerances.None.WithJoints(Ratio.FromPercent(50)), count, 11), "lamp");

        // Five standard errors of an order statistic: √(p·(1 − p)/n) over the density 1/(0.1 V).
        double p = percent / 100, error = 0.1 * Math.Sqrt(p * (1 - p) / count);
        Assert.Equal(0.1 * (1 + (0.5 * u)), drop.Percentile(percent)!.Value, 5 * error);
    }

    [Fact]
    public void Percentile_NormalJoint_IsTheTruncatedNormal()
    {
        const int count = 4000;
        SampledCheck drop = Drop(ToleranceSample.OfHarness(OneResistance, Tolerances.None.WithJoints(Ratio.FromPercent(60)).WithShape(ToleranceShape.Normal), count, 13), "lamp");
        double low = Normal.CDF(0, 1, -3), z = Normal.InvCDF(0, 1, low + (0.9 * (1 - (2 * low))));

        // σ is a third of 60 % of 0.1 V; the density at the 90th percentile is some 0.18/σ.
        Assert.Equal(0.1 * (1 + (0.2 * z)), drop.Percentile(90)!.Value, 5 * Math.Sqrt(0.9 * 0.1 / count) * 0.02 / 0.175);
        Assert.True(drop.Percentile(100) <= 0.1 * 1.6 + 1e-12);
    }

    // Coverage by the binomial probabilities themselves: the bound holds with at least the stated confidence, for every share of the batch.
    [Fact]
    public void AtMost_AnyShareOfTheBatch_HoldsAtLeastAsOftenAsStated()
    {
        foreach (int n in new[] { 10, 60, 300 })
        {
            for (double p = 0.01; p < 1; p += 0.07)
            {
                double above = 0, below = 0;
                for (int k = 0; k <= n; k++)
                {
                    SampledCheck check = new("", "x", "", n, k, 0, []);
                    double weight = Binomial.PMF(p, n, k);
                    above += (double)check.AtMost(0.9).DecimalFractions >= p ? weight : 0;
                    below += (double)check.AtLeast(0.9).DecimalFractions <= p ? weight : 0;
                }

                Assert.True(above >= 0.9 - 1e-9 && below >= 0.9 - 1e-9, $"n {n}, p {p}: {above}, {below}");
            }
        }
    }

    [Fact]
    public void AtMost_ThousandRepetitions_CoversAsStated()
    {
        Random random = new(17);
        int covered = 0;
        for (int n = 0; n < 1000; n++)
        {
            int failed = Enumerable.Range(0, 80).Count(_ => random.NextDouble() < 0.12);
            covered += (double)new SampledCheck("", "x", "", 80, failed, 0, []).AtMost().DecimalFractions >= 0.12 ? 1 : 0;
        }

        // 95 % of 1 000, less four standard errors of 6.9.
        Assert.True(covered >= 950 - 28, $"{covered}");
    }

    // None of 59 failed: at most 5 % with 95 % confidence (0.95^59 = 0.0485), the rule that inspectors know.
    [Fact]
    public void AtMost_NoneOfFiftyNine_IsFivePercent() => Assert.Equal(1 - Math.Pow(0.05, 1.0 / 59), (double)new SampledCheck("", "x", "", 59, 0, 0, []).AtMost().DecimalFractions, 1e-9);

    [Fact]
    public void Of_Circuit_SamplesTheChecksOfItsDesign()
    {
        CircuitRequirements asked = new()
        {
            Source = Vans.Battery600, Load = Load.ConstantCurrent(ElectricCurrent.FromAmperes(6)), Feed = Length.FromMeters(4), Return = ReturnPath.Wire(Length.FromMeters(4)), Place = Vans.Cabin, Insulation = Vans.Vinyl,
            Upstream = ElectricResistance.FromMilliohms(15),
        };
        CircuitDesign design = CircuitDesigner.Design(asked, DesignRules.RoadVehicle);
        ToleranceSample none = ToleranceSample.OfCircuit(design, Tolerances.None, 20, 1), wide = ToleranceSample.OfCircuit(design, Some.WithLengths(Ratio.FromPercent(60)), 400, 1);

        Assert.Equal(0, none.Whole.Failed);
        Assert.True(wide.Whole.Failed > 0);
        Assert.Equal(design.Checks.Select(c => c.Name).Order(StringComparer.Ordinal), none.Checks.Select(c => c.Name).Order(StringComparer.Ordinal));
        Assert.All(none.Checks, c => Assert.Equal(c.Percentile(0), c.Percentile(100)));
    }

    [Fact]
    public void Of_Cancelled_Stops()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => ToleranceSample.OfHarness(Two, Some, 1000, 1, cancellation: source.Token));
    }

    [Fact]
    public void Of_Progress_EndsAtOne()
    {
        List<double> told = [];
        _ = ToleranceSample.OfHarness(Two, Some, 600, 1, progress: new Told(told));
        Assert.Equal([256.0 / 600, 512.0 / 600, 1], told);
    }

    private static Harness OneResistance => new HarnessBuilder("one", DesignRules.RoadVehicle).Terminals("plus", "minus", "at", "near")
        .Source("supply", "plus", "minus", Source.Ideal(ElectricPotential.FromVolts(12))).Resistance("joint", "plus", "at", ElectricResistance.FromMilliohms(20))
        .Load("lamp", "at", "minus", Load.ConstantCurrent(ElectricCurrent.FromAmperes(5))).Build();

    private static SampledCheck Drop(ToleranceSample sample, string load = "left") => sample.Checks.Single(c => c.Place == load && c.Name == "voltage drop");

    private static string[] Lines(ToleranceSample sample) => [.. sample.Checks.Select(c => $"{c.Place} {c.Name} {c.Failed} {c.Undetermined} {c.Percentile(5):R} {c.Percentile(50):R} {c.Percentile(95):R}")];

    private sealed class Told(List<double> told) : IProgress<double>
    {
        public void Report(double value) => told.Add(value);
    }
}
