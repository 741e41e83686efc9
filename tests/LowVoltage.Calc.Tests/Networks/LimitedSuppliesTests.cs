using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

/// <summary>Supplies without resistance beside a battery and loads: each stands at its own voltage, or at its limit below it, or gives nothing above it.</summary>
public class LimitedSuppliesTests
{
    // Among the second thousand is a circuit (31112) that did not settle while a supply's limit was held against a voltage that had not followed yet.
    [Theory]
    [InlineData(0)]
    [InlineData(31_000)]
    public void Solve_RandomSupplies_EachStandsAtItsVoltageOrItsLimitOrGivesNothing(int first)
    {
        int held = 0, limited = 0, idle = 0;
        for (int n = first; n < first + 1000; n++)
        {
            (int nodes, Element[] elements) = Circuit(new Random(n));
            NetworkSolver solver = new(NetworkShape.Create(nodes, 0, elements, []), elements, []);
            Assert.Equal(NetworkEnd.Solved, solver.Solve());
            foreach (int k in Enumerable.Range(0, elements.Length).Where(k => elements[k].Law == ElementLaw.Supply))
            {
                double given = -solver.Amperes[k], volts = solver.Volts[elements[k].Positive];
                (held, limited, idle) = given <= 0 ? (held, limited, idle + 1) : given >= elements[k].B ? (held, limited + 1, idle) : (held + 1, limited, idle);
                Assert.InRange(given, 0, elements[k].B);
                Assert.True(given >= elements[k].B || volts >= elements[k].A - 1e-11, $"Circuit {n}: a supply below its limit stands below its voltage.");
                Assert.True(given <= 0 || volts <= elements[k].A + 1e-11, $"Circuit {n}: a supply that gives stands above its voltage.");
            }
        }

        Assert.True(held > 100 && limited > 100 && idle > 100, $"{held} at their voltage, {limited} at their limit, {idle} idle");
    }

    private static (int Nodes, Element[] Elements) Circuit(Random random)
    {
        double between(double least, double most) => least * Math.Pow(most / least, random.NextDouble());
        List<Element> elements = [Element.Battery(1, 0, 12 + random.NextDouble(), between(0.003, 0.1))];
        int nodes = 2;
        for (int n = 1 + random.Next(3); n > 0; n--)
        {
            elements.Add(Element.Supply(nodes, 0, 12.5 + (2 * random.NextDouble()), between(2, 80)));
            elements.Add(random.Next(2) == 0
                ? Element.Resistance(nodes, 1 + random.Next(nodes - 1), between(0.0005, 0.1))
                : Element.Wire(nodes, 1 + random.Next(nodes - 1), between(0.0005, 0.1), 1e-6));
            nodes++;
        }

        for (int n = 0; n < 3; n++)
        {
            double amperes = between(1, 60);
            int at = 1 + random.Next(nodes - 1);
            elements.Add(random.Next(4) switch
            {
                0 => Element.Steady(at, 0, amperes),
                1 => Element.Power(at, 0, 12 * amperes, 9),
                2 => Element.Resistance(at, 0, 12 / amperes),
                _ => Element.Lamp(at, 0, amperes, 12),
            });
        }

        return (nodes, [.. elements]);
    }
}
