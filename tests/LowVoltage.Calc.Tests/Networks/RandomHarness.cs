using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>A random harness: a battery, distribution points, fuses, splices, loads of every law on return wires to shared ground points, perhaps more sources and ties that make meshes.</summary>
internal sealed class RandomHarness
{
    private readonly Random random;
    private readonly List<Element> elements = [];
    private readonly double volts;
    private int nodes = 2;

    internal RandomHarness(int seed, int branches)
    {
        random = new Random(seed);
        volts = new[] { 12.6, 25.4, 48.0 }[random.Next(3)];
        double share = volts * Between(0.5, 0.97);
        List<int> grounds = [0], feeds = [1];
        elements.Add(Element.Battery(1, 0, volts, volts / 3000 * Between(0.3, 3)));
        while (elements.Count < branches)
        {
            switch (random.Next(10))
            {
                case 0:
                    grounds.Add(Wire(grounds[random.Next(grounds.Count)], 0.02));
                    break;
                case 1:
                    feeds.Add(Wire(feeds[random.Next(feeds.Count)], 0.1));
                    break;
                case 2 when feeds.Count > 2 && random.Next(3) == 0:
                    Join(Pick(feeds), Pick(feeds), 0.2);
                    break;
                default:
                    int end = Wire(Wire(Pick(feeds), 0.3), 1), back = Wire(Pick(grounds), 1);
                    Load(end, back, branches, share);
                    break;
            }
        }

        for (int n = random.Next(3); n > 0; n--)
        {
            Source(Pick(feeds), Pick(grounds));
        }
    }

    internal int Nodes => nodes;

    internal Element[] Elements => [.. elements];

    internal double Volts => volts;

    internal NetworkSolver Solver() => new(NetworkShape.Create(nodes, 0, Elements, []), Elements, []);

    private int Pick(List<int> from) => from[random.Next(from.Count)];

    private double Between(double least, double most) => least * Math.Pow(most / least, random.NextDouble());

    private int Wire(int from, double times)
    {
        Join(from, nodes, times);
        return nodes++;
    }

    private void Join(int a, int b, double times)
    {
        if (a == b)
        {
            return;
        }

        double ohms = volts / 12.6 * times * Between(0.005, 0.1), rated = Between(5, 60) / Math.Max(times, 0.1);
        elements.Add(random.Next(3) switch
        {
            0 => Element.Resistance(a, b, ohms),
            1 => Element.RunawayWire(a, b, ohms, 0.2 / (rated * rated) * random.NextDouble()),
            _ => Element.Wire(a, b, ohms, 0.3 * ohms / (rated * rated) * random.NextDouble()),
        });
    }

    private void Load(int p, int n, int branches, double cutOut)
    {
        double amperes = Math.Min(12, 400.0 / branches) * Between(0.1, 1.5);
        elements.Add(random.Next(5) switch
        {
            0 => Element.Resistance(p, n, volts / amperes),
            1 => Element.Steady(p, n, amperes),
            2 => Element.Lamp(p, n, amperes, volts),
            3 => Element.Power(p, n, amperes * volts, cutOut),
            _ => Element.Power(p, n, amperes * volts, volts * Between(0.3, 0.97)),
        });
    }

    private void Source(int p, int n)
    {
        double amperes = Between(5, 100);
        elements.Add(random.Next(4) switch
        {
            0 => Element.Battery(p, n, volts * Between(0.95, 1.05), volts / 1500),
            1 => Element.Supply(p, n, volts * Between(0.9, 1.15), amperes),
            2 => Element.Supply(p, n, volts * Between(0.9, 1.15), amperes, volts / 500),
            _ => Element.Solar(p, n, amperes / 10, 1e-6, volts * 1.4 / Math.Log(1 + (amperes * 1e5))),
        });
    }
}
