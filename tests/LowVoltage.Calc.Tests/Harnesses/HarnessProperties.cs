using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>The same harness said in another way is the same; currents and energy balance; straight ones agree with dense nodal analysis.</summary>
public class HarnessProperties
{
    private const int Count = 150;

    public static TheoryData<int> Seeds => [4001, 4002, 4003];

    [Theory, MemberData(nameof(Seeds))]
    public void Solve_RandomHarnesses_BalanceCurrentsAndEnergy(int seed)
    {
        Random random = new(seed);
        int solved = 0;
        for (int n = 0; n < Count; n++)
        {
            Harness harness = RandomPublicHarness.Make(random.Next(), 6 + (n % 40));
            foreach (SupplyLevel level in Enum.GetValues<SupplyLevel>())
            {
                HarnessSolution at = harness.Solve(level);
                Assert.True(at.Exists || at.Explanation.Contains("need more", StringComparison.Ordinal), $"seed {seed}, {n}: {at.Explanation}");
                if (!at.Exists)
                {
                    continue;
                }

                solved++;
                foreach (HarnessNode node in harness.Nodes)
                {
                    double sum = harness.Branches.Sum(b => b.From == node.Id ? at.CurrentOf(b.Id).Amperes : b.To == node.Id ? -at.CurrentOf(b.Id).Amperes : 0)
                        + harness.Loads.Sum(l => l.Positive == node.Id ? at.CurrentAt(l.Id).Amperes : l.Negative == node.Id ? -at.CurrentAt(l.Id).Amperes : 0)
                        - harness.Sources.Sum(s => s.Positive == node.Id ? at.CurrentFrom(s.Id).Amperes : s.Negative == node.Id ? -at.CurrentFrom(s.Id).Amperes : 0);
                    Assert.True(Math.Abs(sum) <= 1e-9, $"seed {seed}, {n}, node {node}: {sum} A left");
                }

                double given = (double)at.Given.Watts, taken = (double)(at.Lost + at.Consumed).Watts, scale = harness.Sources.Sum(s => Math.Abs((double)at.CurrentFrom(s.Id).Amperes * at.VoltageOfSource(s.Id).Volts));
                Assert.Equal(given, taken, 1e-9 * Math.Max(1, scale));
            }
        }

        Assert.True(solved > 2 * Count, $"{solved} solved");
    }

    [Fact]
    public void Solve_PartsInAnotherOrder_IsTheSame()
    {
        Random random = new(4011);
        for (int n = 0; n < 60; n++)
        {
            Harness harness = RandomPublicHarness.Make(random.Next(), 8 + (n % 30));
            Harness other = new(harness.Parts with
            {
                Reference = harness.Reference,
                Nodes = Shuffled(harness.Parts.Nodes, random), Branches = Shuffled(harness.Parts.Branches, random), Sources = Shuffled(harness.Parts.Sources, random), Loads = Shuffled(harness.Parts.Loads, random),
            });
            Same(harness, other, harness.Nodes.Select(x => x.Id), $"{n}");
        }
    }

    [Fact]
    public void Solve_WireCutInTwo_IsTheSame()
    {
        Random random = new(4013);
        for (int n = 0; n < 60; n++)
        {
            Harness harness = RandomPublicHarness.Make(random.Next(), 8 + (n % 30));
            HarnessWire[] wires = [.. harness.Branches.OfType<HarnessWire>()];
            if (wires.Length == 0)
            {
                continue;
            }

            HarnessWire cut = wires[random.Next(wires.Length)];
            double share = 0.1 + (0.8 * random.NextDouble());

            // Bundled alike: a cut must not change what the wire is rated for.
            HarnessBuilder builder = harness.ToBuilder();
            foreach (HarnessWire wire in wires)
            {
                _ = builder.Replace(wire.WithPlace(wire.Place.WithLoadedConductors(6)));
            }

            Harness whole = builder.Build();
            HarnessWire own = (HarnessWire)whole.Branches.Single(b => b.Id == cut.Id);
            Harness halves = whole.ToBuilder().Remove(cut.Id).Terminals("cut")
                .Add(HarnessWire.Create("first part", cut.From, "cut", own.Conductor, own.Length * share, own.Place, own.Insulation).WithParallel(own.Parallel).WithWall(own.Wall).WithJoints([.. own.Joints]))
                .Add(HarnessWire.Create("second part", "cut", cut.To, own.Conductor, own.Length * (1 - share), own.Place, own.Insulation).WithParallel(own.Parallel).WithWall(own.Wall)).Build();
            Same(whole, halves, whole.Nodes.Select(x => x.Id), $"{n}, {cut}");
        }
    }

    [Fact]
    public void Solve_LoadSwitchedOff_IsALoadThatIsNotThere()
    {
        Random random = new(4017);
        for (int n = 0; n < 60; n++)
        {
            Harness harness = RandomPublicHarness.Make(random.Next(), 8 + (n % 30));
            string off = harness.Loads[random.Next(harness.Loads.Count)].Id;
            HarnessSolution one = harness.Solve(SupplyLevel.Nominal, LoadCase.Create("off").WithOff(off));
            Harness without = new(harness.Parts with { Reference = harness.Reference, Loads = [.. harness.LoadArray.Where(l => l.Id != off)], Cases = [LoadCase.AllOn] });
            Close(one, without.Solve(), without.Nodes.Select(x => x.Id), $"{n}, {off}");
        }
    }

    // Another route: conductances of fuses, switches, chassis and wires at 20 °C that do not warm up, solved by a dense factorisation.
    [Fact]
    public void Solve_ResistancesOnly_AgreesWithDenseNodalAnalysis()
    {
        Random random = new(4019);
        for (int n = 0; n < 200; n++)
        {
            int nodes = 4 + random.Next(20);
            HarnessBuilder builder = new HarnessBuilder("straight", DesignRules.Bench).Terminals([.. Enumerable.Range(0, nodes).Select(k => $"n{k}")]);
            Matrix<double> siemens = Matrix<double>.Build.Dense(nodes, nodes);
            Vector<double> amperes = Vector<double>.Build.Dense(nodes);
            void stamp(int a, int b, double g)
            {
                siemens[a, a] += g;
                siemens[b, b] += g;
                siemens[a, b] -= g;
                siemens[b, a] -= g;
            }

            for (int k = 1; k < nodes; k++)
            {
                double ohms = 0.001 * Math.Pow(1000, random.NextDouble());
                _ = builder.Resistance($"r{k}", $"n{random.Next(k)}", $"n{k}", ElectricResistance.FromOhms(ohms));
            }

            for (int k = 0; k < nodes / 2; k++)
            {
                int a = random.Next(nodes), b = (a + 1 + random.Next(nodes - 1)) % nodes;
                _ = builder.Resistance($"tie{k}", $"n{a}", $"n{b}", ElectricResistance.FromOhms(0.01 + random.NextDouble()));
                _ = builder.Load($"L{k}", $"n{b}", $"n{a}", Load.Resistance(ElectricResistance.FromOhms(1 + (10 * random.NextDouble()))));
            }

            for (int k = 0; k < 3; k++)
            {
                _ = builder.Source($"S{k}", $"n{1 + random.Next(nodes - 1)}", "n0", Source.BehindResistance(ElectricPotential.FromVolts(11 + (3 * random.NextDouble())), ElectricResistance.FromOhms(0.005 + (0.1 * random.NextDouble()))));
            }

            Harness harness = builder.Build();
            int at(string id) => int.Parse(id[1..], System.Globalization.CultureInfo.InvariantCulture);
            foreach (HarnessResistance r in harness.Branches.Cast<HarnessResistance>())
            {
                stamp(at(r.From), at(r.To), 1 / r.Resistance.Ohms);
            }

            foreach (HarnessLoad l in harness.Loads)
            {
                stamp(at(l.Positive), at(l.Negative), l.Load.CurrentAt(ElectricPotential.FromVolts(1), LoadState.Running).Amperes);
            }

            foreach (HarnessSource s in harness.Sources)
            {
                double g = 1 / s.Source!.NominalResistance.Ohms;
                stamp(at(s.Positive), 0, g);
                amperes[at(s.Positive)] += g * s.Source.NominalVoltage.Volts;
            }

            Vector<double> volts = siemens.SubMatrix(1, nodes - 1, 1, nodes - 1).Solve(amperes.SubVector(1, nodes - 1));
            HarnessSolution solved = harness.Solve();
            for (int k = 1; k < nodes; k++)
            {
                Assert.Equal(volts[k - 1], solved.VoltageOf($"n{k}").Volts, 1e-9 * 14);
            }
        }
    }

    private static void Same(Harness one, Harness other, IEnumerable<string> nodes, string which) => Close(one.Solve(), other.Solve(), nodes, which);

    private static void Close(HarnessSolution a, HarnessSolution b, IEnumerable<string> nodes, string which)
    {
        Assert.Equal(a.Exists, b.Exists);
        if (!a.Exists || a.DroppedOut > 1)
        {
            return;
        }

        // Voltages of a part that floats are counted from its first node, which another order makes another.
        HashSet<string> floating = [.. a.FloatingIslands.SelectMany(i => i)];
        foreach (string node in nodes.Where(id => !floating.Contains(id)))
        {
            double volts = a.VoltageOf(node).Volts, others = b.VoltageOf(node).Volts;
            Assert.True(Math.Abs(volts - others) <= 1e-8, $"{which}, node {node}: {volts} V and {others} V");
        }
    }

    private static T[] Shuffled<T>(T[] parts, Random random)
    {
        T[] copy = [.. parts];
        random.Shuffle(copy);
        return copy;
    }
}
