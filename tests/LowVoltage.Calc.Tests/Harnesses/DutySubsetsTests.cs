using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using Xunit.Abstractions;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>
/// What a branch between two ends that feed carries while loads pause, held to every set of them that may be on at once, each solved as a harness of its own, and to pulses that begin at random.
/// </summary>
public class DutySubsetsTests(ITestOutputHelper output)
{
    private const int Begins = 40;

    private static readonly string[] Places = ["a", "m", "b"];

    private static readonly Place Air = new() { Ambient = C(30) };

    [Theory]
    [InlineData("two batteries", 100)]
    [InlineData("one way", 100)]
    [InlineData("a ring", 100)]
    [InlineData("a charger at its limit", 100)]
    public void BranchesThatFeedFromBothEnds_CountNoLessThanWhatFlowsWithAnyLoadsOn(string kind, int cases)
    {
        (double leastOn, double leastHeat, double mean, int count) = (double.PositiveInfinity, double.PositiveInfinity, 0, 0);
        for (int seed = 0; seed < cases; seed++)
        {
            Random random = new(seed);
            (string Node, Load Load)[] loads = [.. Enumerable.Range(0, 3 + random.Next(5)).Select(_ => (Places[random.Next(3)], LoadOf(random)))];
            Func<int, Harness> build = Builder(kind, random, loads);
            HarnessVerification found = HarnessDesigner.Verify(build((1 << loads.Length) - 1));
            double[] shares = [.. loads.Select(one => one.Load.HeatFactor(LoadState.Running)).Select(factor => factor * factor)];
            int always = Enumerable.Range(0, loads.Length).Where(k => shares[k] == 1).Sum(k => 1 << k);
            HarnessSolution?[] states = [.. Enumerable.Range(0, 1 << loads.Length).Select(set => (set & always) == always ? build(set).Solve() : null)];
            if (!states[^1]!.Exists)
            {
                continue;
            }

            foreach ((string fuse, string wire) in new[] { ("fuse one", "one"), ("fuse two", "two") })
            {
                double[] amperes = [.. states.Select(state => state is { Exists: true } ? Math.Abs(state.CurrentOf(fuse).Amperes) : 0)];
                if (amperes.Max() < 1e-6)
                {
                    // All loads are at the other end.
                    continue;
                }

                CheckResult carries = found.Find(CheckKind.FuseCarriesLoad, fuse)!.Value.Result, heats = found.Find(CheckKind.ContinuousCurrent, wire)!.Value.Result;
                double on = carries.Limit!.Value * DesignRules.Bench.FusePractice.Loading / amperes.Max();
                double heat = heats.Value!.Value / Enumerable.Range(0, Begins).Max(_ => Heating(random, shares, amperes));
                (leastOn, leastHeat, mean, count) = (Math.Min(leastOn, on), Math.Min(leastHeat, heat), mean + on, count + 1);
            }
        }

        output.WriteLine($"{kind}: at least {leastOn:F6} of the most that flows, {leastHeat:F6} of the r.m.s. current, {mean / count:F4} of the most on the average of {count}");
        Assert.InRange(leastOn, 1 - 1e-8, 1.1);
        Assert.InRange(leastHeat, 1 - 1e-8, 1.1);
        Assert.InRange(mean / count, 1, 1.05);
    }

    // R.m.s. of the current where each pulse begins somewhere in one period that all share.
    private static double Heating(Random random, double[] shares, double[] amperes)
    {
        double[] begins = [.. shares.Select(_ => random.NextDouble())];
        double[] changes = [.. begins.Concat(begins.Select((begin, k) => (begin + shares[k]) % 1)).Append(0).Append(1).Order()];
        double sum = 0;
        for (int i = 1; i < changes.Length; i++)
        {
            double at = (changes[i - 1] + changes[i]) / 2;
            int set = Enumerable.Range(0, shares.Length).Where(k => (at - begins[k] + 1) % 1 < shares[k]).Sum(k => 1 << k);
            sum += (changes[i] - changes[i - 1]) * amperes[set] * amperes[set];
        }

        return Math.Sqrt(sum);
    }

    private static Func<int, Harness> Builder(string kind, Random random, (string Node, Load Load)[] loads)
    {
        double first = 10 + (40 * random.NextDouble()), second = 10 + (40 * random.NextDouble()), volts = 12 + random.NextDouble(), length = 0.3 + (3 * random.NextDouble());
        return set =>
        {
            HarnessBuilder builder = new HarnessBuilder(kind, DesignRules.Bench).Busbars("a", "m", "b").Terminals("c", "d").Grounds("ground")
                .Source("first", "a", "ground", Source.BehindResistance(V(12.5), MilliOhm(first)))
                .Fuse("fuse one", "a", "c", Blade(5)).Wire("one", "c", "m", RoadVehicle(4), M(length), Air, InsulationMaterial.PolyvinylChloride)
                .Fuse("fuse two", "b", "d", Blade(5)).Wire("two", "d", "m", RoadVehicle(2.5), M(length), Air, InsulationMaterial.PolyvinylChloride);
            builder = kind switch
            {
                "one way" => builder,
                "a ring" => builder.Wire("three", "a", "b", RoadVehicle(6), M(1), Air, InsulationMaterial.PolyvinylChloride),
                "two batteries" => builder.Source("second", "b", "ground", Source.BehindResistance(V(volts), MilliOhm(second))),
                _ => builder.Source("second", "b", "ground", Source.CurrentLimited(V(14.4), A(second / 2))),
            };
            return loads.Select((one, k) => (one, k)).Where(x => (set >> x.k & 1) == 1).Aggregate(builder, (all, x) => all.Load("load " + x.k, x.one.Node, "ground", x.one.Load)).Build();
        };
    }

    private static Load LoadOf(Random random)
    {
        double amperes = 2 + (25 * random.NextDouble());
        Load load = random.Next(5) switch
        {
            0 => Load.ConstantCurrent(A(amperes)),
            1 => Load.Resistance(UnitsNet.ElectricResistance.FromOhms(12 / amperes)),
            2 => Load.Lamp(UnitsNet.Power.FromWatts(12 * amperes), V(12)),
            _ => Load.ConstantPower(UnitsNet.Power.FromWatts(12 * amperes)),
        };
        return random.Next(4) == 0 ? load : load.WithDutyCycle(DutyCycle.FromFraction(random.Next(3) == 0 ? 0.05 + (0.8 * random.NextDouble()) : 0.3));
    }
}
