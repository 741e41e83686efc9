using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>The formulas of the circuits' room for runs, three wires, opposing voltages and resistances in a row or side by side, against the same as a network.</summary>
public class SmallSolversTests
{
    private const int Cases = 300;

    [Fact]
    public void TappedRun_RandomRuns_AreTheNetwork()
    {
        Random random = new(1);
        for (int n = 0; n < Cases; n++)
        {
            int count = 1 + random.Next(8);
            double[] ohmsPerMeter = [.. Enumerable.Range(0, count).Select(_ => 0.001 + (0.02 * random.NextDouble()))], amperes = [.. ohmsPerMeter.Select(_ => 3 * random.NextDouble())], meters = [.. ohmsPerMeter.Select(_ => 0.1 + (5 * random.NextDouble()))];
            TappedRun run = TappedRun.Create(LinearResistance.FromOhmsPerMeter(0), LinearResistance.FromOhmsPerMeter(0.01), [.. Enumerable.Range(0, count).Select(k =>
                Tap.Create(Length.FromMeters(meters[k]), ElectricCurrent.FromAmperes(amperes[k])).WithResistance(LinearResistance.FromOhmsPerMeter(ohmsPerMeter[k] / 4), LinearResistance.FromOhmsPerMeter(ohmsPerMeter[k] * 3 / 4)))]);
            double near = 12 + random.NextDouble(), far = 12 + random.NextDouble();
            foreach (bool both in new[] { false, true })
            {
                RunSolution formula = both ? run.FedAtBothEnds(V(near), V(far)) : run.FedAtOneEnd(V(near));
                List<Element> elements = [];
                for (int k = 0; k < count; k++)
                {
                    elements.Add(Element.Resistance(k + 1, k + 2, ohmsPerMeter[k] * meters[k]));
                    elements.Add(Element.Drawn(k + 2, 0, amperes[k]));
                }

                Tie[] feeds = both ? [new(1, 0, near), new(count + 1, 0, far)] : [new(1, 0, near)];
                NetworkSolver network = Solved(count + 2, elements, feeds);
                for (int k = 0; k < count; k++)
                {
                    Assert.Equal(network.Volts[k + 2], formula.Points[k].Voltage.Volts, 1e-11);
                    Assert.Equal(network.Amperes[2 * k], formula.Points[k].CurrentFromNear.Amperes, 1e-9);
                }

                Assert.Equal(-network.TieAmperes[0], formula.NearFeed.Amperes, 1e-9);
                Assert.Equal(both ? -network.TieAmperes[1] : 0, formula.FarFeed.Amperes, 1e-9);
                Assert.Equal(Enumerable.Range(0, count).Sum(k => Math.Pow(network.Amperes[2 * k], 2) * ohmsPerMeter[k] * meters[k]), (double)formula.Loss.Watts, 1e-8);
            }
        }
    }

    /// <summary>An even load in sections with half of each section's current at either end has the even load's voltage at every joint: both are the same parabola there.</summary>
    [Fact]
    public void UniformRun_RandomRuns_AreTheNetworkOfSections()
    {
        Random random = new(2);
        for (int n = 0; n < Cases; n++)
        {
            double r = 0.001 + (0.02 * random.NextDouble()), length = 1 + (20 * random.NextDouble()), total = 0.5 + (5 * random.NextDouble()), near = 12 + random.NextDouble(), far = 12 + random.NextDouble();
            UniformRun run = UniformRun.Create(LinearResistance.FromOhmsPerMeter(r), LinearResistance.FromOhmsPerMeter(r), Length.FromMeters(length), ElectricCurrent.FromAmperes(total));
            const int Sections = 10;
            List<Element> elements = [];
            for (int k = 0; k < Sections; k++)
            {
                elements.Add(Element.Resistance(k + 1, k + 2, 2 * r * length / Sections));
                elements.Add(Element.Drawn(k + 1, 0, total / Sections / 2));
                elements.Add(Element.Drawn(k + 2, 0, total / Sections / 2));
            }

            NetworkSolver one = Solved(Sections + 2, elements, [new(1, 0, near)]), two = Solved(Sections + 2, elements, [new(1, 0, near), new(Sections + 1, 0, far)]);
            for (int k = 0; k <= Sections; k++)
            {
                Length at = Length.FromMeters(Math.Min(length, length * k / Sections));
                Assert.Equal(one.Volts[k + 1], run.VoltageAt(V(near), at).Volts, 1e-11);
                Assert.Equal(two.Volts[k + 1], run.VoltageAt(V(near), V(far), at).Volts, 1e-11);
            }

            Assert.Equal(-two.TieAmperes[0], run.FedAtBothEnds(V(near), V(far)).NearFeed.Amperes, 1e-8);
            Assert.Equal(-two.TieAmperes[1], run.FedAtBothEnds(V(near), V(far)).FarFeed.Amperes, 1e-8);
        }
    }

    [Fact]
    public void SharedNeutral_RandomThreeWires_AreTheNetwork()
    {
        Random random = new(3);
        for (int n = 0; n < Cases; n++)
        {
            double v = 12 + random.NextDouble(), ip = 5 * random.NextDouble(), i = 5 * random.NextDouble(), ro = 0.01 + random.NextDouble() * 0.1, rn = 0.01 + (random.NextDouble() * 0.1);
            Element outer(int a, int b) => Element.Resistance(a, b, ro);
            // 0 middle of the source, 1 plus, 2 minus, 3 and 4 the loads' outer ends, 5 their middle.
            NetworkSolver whole = Solved(6, [outer(1, 3), outer(4, 2), Element.Resistance(5, 0, rn), Element.Drawn(3, 5, ip), Element.Drawn(5, 4, i)], [new(1, 0, v), new(0, 2, v)]);
            SharedNeutral formula = SharedNeutral.Solve(V(v), ElectricCurrent.FromAmperes(ip), ElectricCurrent.FromAmperes(i), Ohms(ro), Ohms(rn));
            Assert.Equal(whole.Volts[3] - whole.Volts[5], formula.PositiveVoltage.Volts, 1e-11);
            Assert.Equal(whole.Volts[5] - whole.Volts[4], formula.NegativeVoltage.Volts, 1e-11);
            Assert.Equal(whole.Amperes[2], formula.NeutralCurrent.Amperes, 1e-9);
            double rp = 1 + random.NextDouble(), rm = 1 + (10 * random.NextDouble());
            NetworkSolver broken = Solved(4, [Element.Resistance(1, 3, rp), Element.Resistance(3, 2, rm)], [new(1, 0, v), new(0, 2, v)]);
            SharedNeutral lost = SharedNeutral.Broken(V(v), Ohms(rp), Ohms(rm));
            Assert.Equal(broken.Volts[1] - broken.Volts[3], lost.PositiveVoltage.Volts, 1e-11);
            Assert.Equal(broken.Volts[3] - broken.Volts[2], lost.NegativeVoltage.Volts, 1e-11);
        }
    }

    [Fact]
    public void OpposingSources_RandomLoops_AreTheNetwork()
    {
        Random random = new(4);
        for (int n = 0; n < Cases; n++)
        {
            double a = 20 * random.NextDouble(), b = 20 * random.NextDouble(), r = 0.01 + random.NextDouble();
            NetworkSolver network = Solved(3, [Element.Resistance(1, 2, r)], [new(1, 0, a), new(2, 0, b)]);
            Assert.Equal(network.Amperes[0], OpposingSources.Solve(V(a), V(b), Ohms(r)).Current.Amperes, 1e-9);
        }
    }

    [Fact]
    public void ResistorNetwork_RandomGroups_AreTheNetwork()
    {
        Random random = new(5);
        for (int n = 0; n < Cases; n++)
        {
            double[] r = [.. Enumerable.Range(0, 2 + random.Next(5)).Select(_ => 0.1 + (100 * random.NextDouble()))];
            ElectricResistance[] all = [.. r.Select(Ohms)];
            NetworkSolver beside = Solved(2, [.. r.Select(x => Element.Resistance(1, 0, x)), Element.Drawn(0, 1, 1)], []);
            Assert.Equal(beside.Volts[1], ResistorNetwork.Parallel(all).Ohms, 1e-11);
            Assert.Equal(beside.Amperes[0], ResistorNetwork.DividedCurrent(ElectricCurrent.FromAmperes(1), all[0], all[1..]).Amperes, 1e-11);
            NetworkSolver chain = Solved(r.Length + 1, [.. r.Select((x, k) => Element.Resistance(k + 1, k == r.Length - 1 ? 0 : k + 2, x))], [new(1, 0, 12)]);
            Assert.Equal(12 / -chain.TieAmperes[0], ResistorNetwork.Series(all).Ohms, 1e-8);
            Assert.Equal(chain.Volts[1] - chain.Volts[2], ResistorNetwork.DividedVoltage(V(12), all[0], all[1..]).Volts, 1e-11);
        }
    }

    [Fact]
    public void MaximumPowerTransfer_RandomSources_IsWhereTheNetworkEnds()
    {
        Random random = new(6);
        for (int n = 0; n < 50; n++)
        {
            double v = 5 + (50 * random.NextDouble()), r = 0.01 + random.NextDouble(), most = (double)MaximumPowerTransfer.Into(V(v), Ohms(r)).Power.Watts;
            Element[] elements = [Element.Battery(1, 0, v, r), Element.Power(1, 0, 2 * most, 0)];
            NetworkSolver solver = new(NetworkShape.Create(2, 0, elements, []), elements, []);
            Assert.Equal(NetworkEnd.PowerOutOfReach, solver.Solve());
            Assert.Equal(0.5, solver.Share, 1e-6);
        }
    }

    private static NetworkSolver Solved(int nodes, IReadOnlyList<Element> elements, Tie[] ties)
    {
        NetworkSolver solver = new(NetworkShape.Create(nodes, 0, [.. elements], ties), [.. elements], ties);
        Assert.Equal(NetworkEnd.Solved, solver.Solve());
        return solver;
    }

    private static ElectricPotential V(double volts) => ElectricPotential.FromVolts(volts);

    private static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);
}
