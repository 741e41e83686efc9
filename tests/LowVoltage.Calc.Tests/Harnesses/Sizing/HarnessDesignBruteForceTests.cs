using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using UnitsNet;
using Xunit.Abstractions;

namespace LowVoltage.Calc.Tests.Harnesses.Sizing;

/// <summary>Random small harnesses with given wires, load cases and rings, sized, against every choice of sizes.</summary>
public class HarnessDesignBruteForceTests(ITestOutputHelper output)
{
    private static readonly double[] Sizes = [0.75, 1.5, 2.5, 6];

    private static readonly DesignRules FewSizes = new(DesignRules.RoadVehicle)
    {
        Conductors = DesignRules.RoadVehicle.Conductors.Only("some sizes", [.. Sizes.Select(mm2 => (ConductorSize)MetricSize.FromSquareMillimeters(mm2))]),
    };

    // Harnesses tried; LOWVOLTAGE_SIZING=200 dotnet test --filter HarnessDesignBruteForceTests asks for more, offline.
    private static readonly int Count = int.Parse(Environment.GetEnvironmentVariable("LOWVOLTAGE_SIZING") ?? "10", System.Globalization.CultureInfo.InvariantCulture);

    [Fact]
    public void Design_GivenWiresLoadCasesAndRings_IsNeverBelowTheLeastAndItsBoundNeverAbove()
    {
        Random random = new(89);
        int passed = 0, proven = 0, none = 0;
        double worst = 0;
        for (int n = 0; n < Count; n++)
        {
            Harness asked = Make(random, ring: n % 3 == 2);
            string[] open = [.. asked.Branches.OfType<HarnessWire>().Where(w => w.Conductor is null).Select(w => w.Id)];
            HarnessDesign design = HarnessDesigner.Design(asked);
            double? least = TryEverything(design.Harness, open);
            if (least is null)
            {
                Assert.NotEmpty(design.Verification.Failed);
                none++;
                continue;
            }

            passed++;
            Assert.True(design.LowerBound <= least.Value * (1 + 1e-9), $"{n}: bound {design.LowerBound} above the least {least}");
            Assert.True(design.Verification.Failed.Count > 0 || design.Cost >= least.Value * (1 - 1e-9), $"{n}: {design.Cost} below the least {least}");
            Assert.True(design.Verification.Failed.Count == 0, $"{n}: a choice passes at {least} kg; the design fails: {string.Join("; ", design.Verification.Failed)}");
            Assert.True(!design.IsProvenLeast || design.Cost <= least.Value * (1 + 1e-9), $"{n}: said to be proven, {design.Cost}, the least is {least}");
            Assert.True(design.CostCircuitByCircuit is null || design.CostCircuitByCircuit >= design.LowerBound * (1 - 1e-9), $"{n}: circuit by circuit {design.CostCircuitByCircuit} below the bound {design.LowerBound}");
            proven += design.IsProvenLeast ? 1 : 0;
            worst = Math.Max(worst, (design.Cost - least.Value) / least.Value);
        }

        output.WriteLine($"{passed} have an answer, {proven} proven least, {none} have none; at most {100 * worst:0.0} % above the least");
        Assert.True(passed >= Count / 2 && proven > 0, $"{passed} pass, {proven} proven");
        Assert.True(worst <= 0.15, $"{worst} above the least");
    }

    private static Harness Make(Random random, bool ring)
    {
        double some(double low, double high) => Math.Round(low + ((high - low) * random.NextDouble()), 1);
        // 1.5 mm² is too thin for 15 A in the hot case; behind a ring it is asked that too.
        Conductor stock(int pick) => FewSizes.Conductors.Conductors[ring ? 2 : pick];
        HarnessWire wire(string id, string from, string to, bool given, double meters) => HarnessWire.Create(
            id, from, to, given ? stock(1 + random.Next(2)) : null, Length.FromMeters(meters), Vans.Cabin, Vans.Vinyl);
        HarnessBuilder builder = new HarnessBuilder("small", FewSizes)
            .Terminals("plus", "minus", "fused", "one +", "two +", "three +").Splices("splice", "far").Grounds("stud")
            .Source("supply", "plus", "minus", Source.BehindResistance(ElectricPotential.FromVolts(12.6), ElectricResistance.FromMilliohms(20)))
            .Fuse("F", "plus", "fused", Vans.Blade(15))
            .Add(wire("feed", "fused", "splice", false, some(1, 3)), wire("tail", "splice", "far", false, some(0.5, 3)), wire("one feed", "splice", "one +", random.Next(2) == 0, some(0.5, 4)),
                wire("two feed", "far", "two +", random.Next(2) == 0, some(0.5, 3)), wire("three feed", "far", "three +", true, some(0.5, 2)), wire("ground", "stud", "minus", false, some(0.5, 2)))
            .Load("one", "one +", "stud", Load.ConstantCurrent(ElectricCurrent.FromAmperes(some(1, 5))))
            .Load("two", "two +", "stud", Load.Resistance(ElectricResistance.FromOhms(some(4, 12))))
            .Load("three", "three +", "stud", Load.ConstantPower(Power.FromWatts(some(5, 25)), 1, ElectricPotential.FromVolts(10)))
            .Add(LoadCase.Create("all"), LoadCase.Create("without one").WithOff("one"), LoadCase.Create("hot, without two").WithOff("two").WithAmbient(Temperature.FromDegreesCelsius(50)));
        return (ring ? builder.Add(wire("ring", "splice", "two +", true, some(0.5, 3))) : builder).Build();
    }

    private static double? TryEverything(Harness sized, string[] wires)
    {
        Conductor[] sizes = [.. FewSizes.Conductors.Conductors];
        double? best = null;
        for (int n = 0; n < Math.Pow(sizes.Length, wires.Length); n++)
        {
            Dictionary<string, Conductor> chosen = [];
            int rest = n;
            foreach (string wire in wires)
            {
                (chosen[wire], rest) = (sizes[rest % sizes.Length], rest / sizes.Length);
            }

            double mass = sized.Branches.OfType<HarnessWire>().Where(w => chosen.ContainsKey(w.Id)).Sum(w => chosen[w.Id].MassPerLength.KilogramsPerMeter * w.Length.Meters);
            if ((best is null || mass < best) && HarnessDesigner.Verify(sized.WithConductors(chosen)).Failed.Count == 0)
            {
                best = mass;
            }
        }

        return best;
    }
}
