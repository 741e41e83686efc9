using FsCheck.Xunit;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>What holds for wires that lie together, whatever their size: more of them never carry more each, idle ones never help beyond their absence.</summary>
[Properties(Arbitrary = [typeof(HeatCases)], MaxTest = 300)]
public class BundleProperties
{
    private const double Rounding = 1 + 1e-9;

    private static readonly int[] Counts = [1, 2, 3, 4, 5, 6, 7, 8, 10, 12, 16, 20, 40, 100];

    /// <summary>Six thousand wires from 0.2 mm to 25 mm, bare to 5 mm of wall, any emissivity, to 20 km, any fill: no step up.</summary>
    [Fact]
    public void CurrentFor_MoreWiresAllLoaded_NeverRises()
    {
        Random random = new(20);
        int steps = 0;
        for (int i = 0; i < 6000; i++)
        {
            (Wire wire, Surroundings air, Temperature limit) = Any(random);
            double fill = random.Next(2) == 0 ? WireBundle.UsualFill : WireBundle.LeastFill + (random.NextDouble() * (WireBundle.MostFill - WireBundle.LeastFill));
            double before = double.PositiveInfinity;
            foreach (int n in Counts)
            {
                double now = BundleHeat.CurrentFor(WireBundle.Create(wire, n, n, fill), air, limit).Amperes;
                Assert.True(now <= before * Rounding, $"{n} wires of {wire.OuterDiameter.Millimeters} mm, fill {fill}: {now} after {before}");
                before = now;
                steps++;
            }
        }

        Assert.Equal(6000 * Counts.Length, steps);
    }

    [Fact]
    public void CurrentFor_MoreOfThemLoaded_NeverRises_AndNeverBeatsTheLoadedOnesAlone()
    {
        Random random = new(21);
        for (int i = 0; i < 2000; i++)
        {
            (Wire wire, Surroundings air, Temperature limit) = Any(random);
            int n = random.Next(2, 25);
            double before = double.PositiveInfinity, all = BundleHeat.CurrentFor(WireBundle.Create(wire, n, n), air, limit).Amperes;
            for (int m = 1; m <= n; m++)
            {
                double now = BundleHeat.CurrentFor(WireBundle.Create(wire, n, m), air, limit).Amperes;
                double alone = BundleHeat.CurrentFor(WireBundle.Create(wire, m, m), air, limit).Amperes;
                Assert.True(now <= before * Rounding && now >= all && now <= alone, $"{m} of {n}: {now}, before {before}, all {all}, without the idle {alone}");
                before = now;
            }
        }
    }

    /// <summary>Twenty thin wires of which one is loaded were rated 1.2 times the wire alone.</summary>
    [Fact]
    public void Factor_OneLoadedOfTwenty_IdleWiresNeverRaiseTheRating()
    {
        foreach (double area in new[] { 0.5, 1.5, 6 })
        {
            Wire wire = Wire.Create(Conductor.Iso6722(MetricSize.FromSquareMillimeters(area)), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.3));
            Assert.InRange(BundleHeat.Factor(WireBundle.Create(wire, 20, 1), Air(30), C(70))!.Value, 0.5, 1);
        }
    }

    [Property]
    public bool OneWire_IsTheHeatBalance_ToTheLastBit(HeatCase x)
    {
        ElectricCurrent alone = HeatBalance.CurrentFor(x.Wire, x.Air, x.Limit);
        return BundleHeat.CurrentFor(WireBundle.Alone(x.Wire), x.Air, x.Limit).Amperes.Equals(alone.Amperes)
            && BundleHeat.TemperatureAt(WireBundle.Alone(x.Wire), x.Air, alone).DegreesCelsius.Equals(HeatBalance.TemperatureAt(x.Wire, x.Air, alone).DegreesCelsius);
    }

    [Property]
    public bool CurrentAndTemperature_AreInverse_InEveryArrangement(HeatCase x, byte which)
    {
        WireBundle bundle = Arrangement(x.Wire, which);
        double amperes = BundleHeat.CurrentFor(bundle, x.Air, x.Limit).Amperes;
        return Math.Abs(BundleHeat.TemperatureAt(bundle, x.Air, A(amperes)).DegreesCelsius - x.Limit.DegreesCelsius) < 1e-6 * Math.Max(1, x.Rise);
    }

    /// <summary>To 150 K above the air; far beyond, warmer air conducts so much better inside a bundle that it may gain some 0.2 %.</summary>
    [Property]
    public bool CurrentFor_HotterAmbient_NeverRises(HeatCase x, byte which)
    {
        double rise = Math.Min(150, x.Rise);
        Temperature limit = C(x.Ambient + rise);
        WireBundle bundle = Arrangement(x.Wire, which);
        return BundleHeat.CurrentFor(bundle, Air(x.Ambient + Math.Min(1, 0.3 * rise), x.Meters, x.Emissivity), limit).Amperes <= BundleHeat.CurrentFor(bundle, x.Air, limit).Amperes * Rounding;
    }

    [Property]
    public bool CurrentFor_HigherUpOrDarker_BehavesAsOneWire(HeatCase x, byte which)
    {
        WireBundle bundle = Arrangement(x.Wire, which);
        double here = BundleHeat.CurrentFor(bundle, x.Air, x.Limit).Amperes;
        return here <= BundleHeat.CurrentFor(bundle, Air(x.Ambient, -500, x.Emissivity), x.Limit).Amperes * Rounding
            && here <= BundleHeat.CurrentFor(bundle, Air(x.Ambient, x.Meters, 1), x.Limit).Amperes * Rounding
            && here >= BundleHeat.CurrentFor(bundle, Air(x.Ambient, x.Meters, 0), x.Limit).Amperes / Rounding;
    }

    [Property]
    public bool InSleeve_NeverCarriesMore(HeatCase x, byte which, byte width)
    {
        WireBundle bundle = WireBundle.Create(x.Wire, 1 + (which % 7), 1 + (which % 7));
        double free = BundleHeat.CurrentFor(bundle, x.Air, x.Limit).Amperes;
        return BundleHeat.CurrentFor(bundle.InSleeve(bundle.Diameter * (1 + (width / 30.0))), x.Air, x.Limit).Amperes <= free;
    }

    private static WireBundle Arrangement(Wire wire, byte which) => (which % 8) switch
    {
        0 => WireBundle.Pair(wire),
        1 => WireBundle.Trefoil(wire),
        2 => WireBundle.Create(wire, 3, 1 + (which % 2)),
        3 => WireBundle.Create(wire, 4 + (which % 20), 4 + (which % 20)),
        4 => WireBundle.Create(wire, 24, 1 + (which % 23)),
        5 => WireBundle.TwinCable(wire, wire.OuterDiameter * 2.4),
        6 => WireBundle.Pair(wire).InSleeve(),
        _ => WireBundle.Create(wire, 7, 7).InSleeve(),
    };

    /// <summary>A wire in still air, its walls as warm as the air, or under a given coefficient.</summary>
    private static (Wire Wire, Surroundings Air, Temperature Limit) Any(Random random)
    {
        double between(double least, double most) => least * Math.Pow(most / least, random.NextDouble());
        Wire wire = Solid(between(0.2, 25), random.Next(6) == 0 ? 0 : between(0.02, 5), Insulation(2.5 + (4.5 * random.NextDouble())));
        double ambient = -60 + (160 * random.NextDouble()), emissivity = random.Next(6) switch { 0 => 0, 1 => 1, _ => random.NextDouble() };
        return (wire, Air(ambient, 20_000 * random.NextDouble(), emissivity), C(ambient + between(1, 150)));
    }
}
