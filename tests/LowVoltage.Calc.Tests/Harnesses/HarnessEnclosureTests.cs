using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;
using Xunit.Abstractions;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>No harness within its tolerances leaves what encloses it, with rings, several sources, limits and cut-outs.</summary>
public class HarnessEnclosureTests(ITestOutputHelper output)
{
    private static readonly Tolerances All = Tolerances.None.WithSupply(Ratio.FromPercent(2)).WithLengths(Ratio.FromPercent(5)).WithResistances(Ratio.FromPercent(4)).WithJoints(Ratio.FromPercent(30))
        .WithLoads(Ratio.FromPercent(10)).WithAmbient(TemperatureDelta.FromKelvins(8));

    // Draws of each of 50 meshes; LOWVOLTAGE_BOUNDS=2000 dotnet test --filter HarnessEnclosureTests asks for 100 000 in all, offline.
    private static readonly int Draws = int.Parse(Environment.GetEnvironmentVariable("LOWVOLTAGE_BOUNDS") ?? "20", System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void Of_RandomMeshes_HoldsEverySampleAndCorner()
    {
        Random random = new(3011), corners = new(3019);
        int enclosed = 0, cutOut = 0, mayCut = 0;
        List<double> ratios = [];
        for (int n = 0; n < 50; n++)
        {
            Harness harness = n % 5 == 4 ? RandomPublicHarness.Make(4000 + n, 20 + n) : RandomMesh.Of(random, 3 + (n % 6));
            HarnessBounds bounds = HarnessBounds.Of(harness, All);
            if (bounds.Reason.Length > 0)
            {
                output.WriteLine($"{n}: {bounds.Reason}");
                continue;
            }

            enclosed++;
            mayCut += bounds.MayCutOut.Count;
            Seen seen = new(harness);
            for (int sample = 0; sample < Draws; sample++)
            {
                Harness drawn = sample % 2 == 0 ? DrawnHarness.Of(harness, new ToleranceDraw(All, n, sample)) : ToleranceCorner.Of(harness, All, corners);
                foreach (SupplyLevel level in new[] { SupplyLevel.Minimum, SupplyLevel.Nominal, SupplyLevel.Maximum })
                {
                    HarnessSolution at = drawn.Solve(level);
                    if (at.Exists)
                    {
                        cutOut += harness.Loads.Count(l => at.ConditionOf(l.Id) is LoadCondition.CutOut or LoadCondition.Restartable);
                        Hold(bounds, at, $"{n}, {sample}, {level}");
                        seen.Take(at);
                    }
                }
            }

            ratios.AddRange(seen.Ratios(bounds));
        }

        ratios.Sort();
        output.WriteLine($"{enclosed} of 50 enclosed; {cutOut} cut-outs seen, {mayCut} named; width of the enclosure over the width seen: median {ratios[ratios.Count / 2]:0.00}, nine tenths {ratios[ratios.Count * 9 / 10]:0.00}");
        Assert.True(enclosed >= 48, $"{enclosed} of 50 enclosed");
        Assert.True(cutOut > 0, "no converter cut out: that part of the test asks nothing");
    }

    private static void Hold(HarnessBounds bounds, HarnessSolution at, string where)
    {
        foreach (HarnessLoad load in at.Harness.Loads)
        {
            Inside(at.VoltageAt(load.Id).Volts, bounds.VoltageAt(load.Id), b => b.Volts, $"{where}: volts of {load.Id}");
            Inside(at.CurrentAt(load.Id).Amperes, bounds.CurrentAt(load.Id), b => b.Amperes, $"{where}: amperes of {load.Id}");
            Assert.True(at.ConditionOf(load.Id) is not (LoadCondition.CutOut or LoadCondition.Restartable) || bounds.MayCutOut.Contains(load.Id), $"{where}: {load.Id} cuts out and is not named");
        }

        foreach (HarnessNode node in at.Harness.Nodes)
        {
            Inside(at.VoltageOf(node.Id).Volts, bounds.VoltageOf(node.Id), b => b.Volts, $"{where}: volts of {node.Id}");
        }

        foreach (HarnessSource source in at.Harness.Sources)
        {
            Inside(at.CurrentFrom(source.Id).Amperes, bounds.CurrentFrom(source.Id), b => b.Amperes, $"{where}: amperes of {source.Id}");
        }

        foreach (HarnessBranch branch in at.Harness.Branches)
        {
            Inside(Math.Abs(at.CurrentOf(branch.Id).Amperes), bounds.CurrentOf(branch.Id), b => b.Amperes, $"{where}: amperes of {branch.Id}");
            if (branch is HarnessWire && at.TemperatureOf(branch.Id) is { } celsius && bounds.TemperatureOf(branch.Id) is { Kind: not BoundKind.None } warm)
            {
                Inside(celsius.DegreesCelsius, warm, b => b.DegreesCelsius, $"{where}: temperature of {branch.Id}");
            }
        }
    }

    private static void Inside<T>(double value, HarnessBound<T> bound, Func<T, double> number, string where)
        where T : struct
    {
        Assert.True(bound.Kind != BoundKind.None, $"{where}: {bound}");
        Assert.True(value <= number(bound.Greatest!.Value) && (bound.Least is not { } least || value >= number(least)), $"{where}: {value} is not between {bound.Least} and {bound.Greatest}");
    }

    /// <summary>What the samples of one harness reach.</summary>
    private sealed class Seen(Harness harness)
    {
        private readonly double[] least = [.. Enumerable.Repeat(double.PositiveInfinity, harness.Loads.Count)];
        private readonly double[] most = [.. Enumerable.Repeat(double.NegativeInfinity, harness.Loads.Count)];

        public void Take(HarnessSolution at)
        {
            for (int k = 0; k < least.Length; k++)
            {
                double volts = at.VoltageAt(harness.Loads[k].Id).Volts;
                (least[k], most[k]) = (Math.Min(least[k], volts), Math.Max(most[k], volts));
            }
        }

        public IEnumerable<double> Ratios(HarnessBounds bounds)
        {
            for (int k = 0; k < least.Length; k++)
            {
                HarnessBound<ElectricPotential> bound = bounds.VoltageAt(harness.Loads[k].Id);
                if (bound.Kind == BoundKind.Enclosure && most[k] > least[k])
                {
                    yield return (bound.Greatest!.Value.Volts - bound.Least!.Value.Volts) / (most[k] - least[k]);
                }
            }
        }
    }
}
