using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Random harnesses in which no bound by corners holds: rings, a second battery, a supply at or near its limit, a panel, converters near their least voltage, duty cycles.</summary>
internal static class RandomMesh
{
    public static Harness Of(Random random, int loads)
    {
        double some(double low, double high) => low + ((high - low) * random.NextDouble());
        HarnessBuilder builder = RandomTree.Of(random, loads).ToBuilder();
        Harness tree = builder.Build();
        for (int k = 0; k < 1 + random.Next(2); k++)
        {
            int a = random.Next(loads), b = (a + 1 + random.Next(loads - 1)) % loads;
            _ = builder.AddWire($"ring {k}", $"p{a}", $"p{b}", 2.5, some(0.5, 3));
        }

        if (random.Next(2) == 0)
        {
            _ = builder.AddWire("ground ring", $"m{random.Next(loads)}", "minus", 4, some(0.5, 2));
        }

        if (random.Next(2) == 0)
        {
            _ = builder.Terminals("other plus").Source("other", "other plus", "minus", Source.BehindResistance(ElectricPotential.FromVolts(some(12, 12.8)), ElectricResistance.FromMilliohms(some(10, 30))))
                .AddWire("other lead", "other plus", $"p{random.Next(loads)}", 10, some(1, 3));
        }

        if (random.Next(2) == 0)
        {
            _ = builder.Terminals("charger plus").Source("charger", "charger plus", "minus", Source.CurrentLimited(ElectricPotential.FromVolts(some(12, 14)), ElectricCurrent.FromAmperes(some(3, 30))))
                .AddWire("charger lead", "charger plus", $"f{random.Next(loads)}", 6, some(1, 3));
        }

        if (random.Next(4) == 0)
        {
            _ = builder.Terminals("sun plus").Add(HarnessSource.Create("sun", "sun plus", "minus", SolarPanel.Create(
                ElectricCurrent.FromAmperes(5.5), ElectricPotential.FromVolts(22), ElectricPotential.FromVolts(18), ElectricCurrent.FromAmperes(5)))).AddWire("sun lead", "sun plus", $"p{random.Next(loads)}", 4, some(1, 3));
        }

        Harness built = builder.Build();
        return new Harness(built.Parts with
        {
            Loads = [.. built.LoadArray.Select(l => l.WithLoad(random.Next(5) switch
            {
                0 => Load.ConstantPower(Power.FromWatts(some(5, 35)), 0.9, ElectricPotential.FromVolts(some(9, 11.4))),
                1 => l.Load.WithDutyCycle(DutyCycle.FromFraction(some(0.2, 0.9))),
                _ => l.Load,
            }))],
            Cases = tree.CaseArray,
        });
    }
}
