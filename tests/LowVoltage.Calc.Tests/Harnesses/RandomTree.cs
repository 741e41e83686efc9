using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Random harnesses on one battery: feeds that branch, grounds that join.</summary>
internal static class RandomTree
{
    public static Harness Of(Random random, int loads)
    {
        double some(double low, double high) => low + ((high - low) * random.NextDouble());
        HarnessBuilder builder = new HarnessBuilder("tree", DesignRules.RoadVehicle).Terminals("plus", "minus")
            .Source("battery", "plus", "minus", Source.BehindResistance(ElectricPotential.FromVolts(11.5), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(14), ElectricResistance.FromMilliohms(5), ElectricResistance.FromMilliohms(15)));
        List<string> feeds = ["plus"], grounds = ["minus"];
        for (int k = 0; k < loads; k++)
        {
            string from = feeds[random.Next(feeds.Count)], back = grounds[random.Next(grounds.Count)], node = $"f{k}", plus = $"p{k}", minus = $"m{k}";
            _ = builder.Terminals(node, plus, minus).Fuse($"F{k}", from, node, Vans.Blade(30)).Replace(HarnessFuse.Create($"F{k}", from, node, Vans.Blade(30)).WithResistance(ElectricResistance.FromMilliohms(some(1, 4))));
            _ = builder.AddWire($"w{k}", node, plus, random.Next(3) switch { 0 => 1.5, 1 => 2.5, _ => 4 }, some(0.5, 4));
            _ = random.NextDouble() < 0.3
                ? builder.Chassis($"g{k}", minus, back, ElectricResistance.FromMilliohms(some(0.5, 3)))
                : builder.AddWire($"g{k}", minus, back, random.Next(2) == 0 ? 2.5 : 6, some(0.3, 2));
            feeds.Add(plus);
            grounds.Add(minus);
            _ = builder.Load($"L{k}", plus, minus, random.Next(4) switch
            {
                0 => Load.Resistance(ElectricResistance.FromOhms(some(4, 20))),
                1 => Load.ConstantCurrent(ElectricCurrent.FromAmperes(some(0.5, 3))),
                2 => Load.ConstantPower(Power.FromWatts(some(5, 35))),
                _ => Load.Lamp(Power.FromWatts(some(5, 30)), ElectricPotential.FromVolts(12)),
            });
        }

        return builder.Build();
    }
}
