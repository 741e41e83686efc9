using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A random harness of public parts: distribution points behind fuses, loads of every law on shared grounds, sometimes a ring, a second battery, a charger, a panel.</summary>
internal sealed class RandomPublicHarness
{
    private static readonly double[] Sizes = [0.5, 0.75, 1, 1.5, 2.5, 4, 6];

    private readonly Random random;
    private readonly HarnessBuilder builder;
    private readonly List<string> feeds = ["panel"];
    private readonly List<string> grounds = ["minus"];
    private readonly Place place;
    private int count;
    private int most;

    private RandomPublicHarness(int seed)
    {
        random = new Random(seed);
        place = Place.Create(Temperature.FromDegreesCelsius(20 + random.Next(40)));
        builder = new HarnessBuilder($"random {seed}", DesignRules.RoadVehicle);
    }

    /// <summary>The harness of a seed with at least so many branches.</summary>
    public static Harness Make(int seed, int branches) => new RandomPublicHarness(seed).Build(branches);

    private Harness Build(int branches)
    {
        most = branches;
        _ = builder.Terminals("plus", "minus", "main fused").Busbars("panel").Source("battery", "plus", "minus", Battery.LeadAcid(Amperes(500 + random.Next(500))));
        _ = builder.Fuse("main", "plus", "main fused", FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(Amperes(60 + random.Next(20))));
        Wire("main lead", "main fused", "panel", 16, 1.5);
        MoreSources();
        while (count < branches)
        {
            switch (random.Next(8))
            {
                case 0:
                    grounds.Add(Ground());
                    break;
                case 1:
                    feeds.Add(Feed());
                    break;
                case 2 when feeds.Count > 2 && random.Next(4) == 0:
                    Wire(Name("tie"), feeds[1], feeds[feeds.Count - 1], 4, 3);
                    break;
                default:
                    Circuit();
                    break;
            }
        }

        return builder.Build();
    }

    private void MoreSources()
    {
        if (random.Next(3) == 0)
        {
            _ = builder.Terminals("second plus", "second minus", "second fused").Source("second", "second plus", "second minus", Battery.LeadAcid(Amperes(400)))
                .Fuse("second fuse", "second plus", "second fused", FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(Amperes(60)));
            Wire("second lead", "second fused", "panel", 16, 4);
            Wire("second back", "second minus", "minus", 16, 4);
        }

        if (random.Next(3) == 0)
        {
            _ = builder.Terminals("charger plus").Source("charger", "charger plus", "minus", Source.CurrentLimited(ElectricPotential.FromVolts(14.2), Amperes(20 + random.Next(20))));
            Wire("charger lead", "charger plus", "panel", 6, 2);
        }

        if (random.Next(5) == 0)
        {
            _ = builder.Terminals("panel plus").Add(HarnessSource.Create("sun", "panel plus", "minus", SolarPanel.Create(
                Amperes(5.5), ElectricPotential.FromVolts(22), ElectricPotential.FromVolts(18), Amperes(5))));
            Wire("sun lead", "panel plus", "panel", 4, 5);
        }
    }

    private string Feed()
    {
        string from = Pick(feeds), fused = Name("fused"), to = Name("point");
        count++;
        _ = builder.Terminals(fused).Splices(to).Fuse(Name("fuse"), from, fused, FuseSeries.RoadVehicleHighCurrentBlade.SmallestAtLeast(Amperes(30)));
        Wire(Name("feed"), fused, to, 6, 1 + (4 * random.NextDouble()));
        return to;
    }

    private string Ground()
    {
        string to = Name("ground");
        _ = builder.Grounds(to);
        if (random.Next(2) == 0)
        {
            count++;
            _ = builder.Chassis(Name("chassis"), to, Pick(grounds), ElectricResistance.FromMilliohms(1 + random.Next(5)));
        }
        else
        {
            Wire(Name("strap"), to, Pick(grounds), 10, 1);
        }

        return to;
    }

    private void Circuit()
    {
        string plus = Name("plus"), minus = Name("minus"), fused = Name("fused"), from = Pick(feeds);
        count++;
        _ = builder.Terminals(plus, minus, fused).Fuse(Name("fuse"), from, fused, FuseSeries.RoadVehicleBlade.SmallestAtLeast(Amperes(7.5 + random.Next(15))));
        Wire(Name("feed"), fused, plus, Sizes[2 + random.Next(4)], 1 + (6 * random.NextDouble()));
        Wire(Name("back"), minus, Pick(grounds), Sizes[2 + random.Next(4)], 0.3 + random.NextDouble());
        double amperes = Math.Min(2.8, 120.0 / most) * (0.1 + random.NextDouble());
        _ = builder.Load(Name("load"), plus, minus, random.Next(5) switch
        {
            0 => Load.ConstantCurrent(Amperes(amperes)),
            1 => Load.Resistance(ElectricResistance.FromOhms(12 / amperes)),
            2 => Load.Lamp(Power.FromWatts(12 * amperes), ElectricPotential.FromVolts(12)),
            3 => Load.ConstantPower(Power.FromWatts(10 * amperes), 1, ElectricPotential.FromVolts(9)),
            _ => Load.Motor(Amperes(amperes), Amperes(4 * amperes), Amperes(4 * amperes), Duration.FromSeconds(0.3)),
        });
    }

    private void Wire(string id, string from, string to, double square, double meters)
    {
        count++;
        _ = builder.Wire(id, from, to, Conductor.Iso6722(MetricSize.FromSquareMillimeters(square)), Length.FromMeters(meters), place, InsulationMaterial.CrossLinkedPolyethylene);
    }

    private string Name(string what) => $"{what} {++names}";

    private int names;

    private string Pick(List<string> from) => from[random.Next(from.Count)];

    private static ElectricCurrent Amperes(double amperes) => ElectricCurrent.FromAmperes(amperes);
}
