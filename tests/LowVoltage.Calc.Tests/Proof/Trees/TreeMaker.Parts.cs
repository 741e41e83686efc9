using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <content>Rules, places, sources, loads and fuses.</content>
internal sealed partial class TreeMaker
{
    private static readonly double[] Mains = [1, 2, 4, 6, 10, 16, 25, 40, 63, 80, 100, 125, 160, 200, 250, 315, 400];

    private static readonly Named<InsulationMaterial>[] Insulations =
    [
        new("PolyvinylChloride", InsulationMaterial.PolyvinylChloride),
        new("PolyvinylChloride", InsulationMaterial.PolyvinylChloride),
        new("HeatResistantPolyvinylChloride", InsulationMaterial.HeatResistantPolyvinylChloride),
        new("CrossLinkedPolyethylene", InsulationMaterial.CrossLinkedPolyethylene),
        new("RoadVehicle(B)", InsulationMaterial.RoadVehicle(RoadVehicleTemperatureClass.B)),
    ];

    private RulesGiven AnyRules()
    {
        RulesGiven plain = new(Pick(0, 0, 1, 3));
        plain = plain.Preset != 1 && Chance(0.3) ? plain with { Basis = Pick(BasisType.RoadVehicleTable, BasisType.Building, BasisType.HeatBalance) } : plain;
        return Chance(sensible ? 0.8 : 0.6) ? plain : plain with
        {
            Loading = Pick(0.7, 0.8, 1),
            Share = Pick(1.0, 1, 0.8, 1.2),
            Allowance = Pick<(double, double)?>((0, 0), (25, 25), (25, 50), null),
            FaultSeconds = Pick(5.0, 5, 0.4),
        };
    }

    private PlaceGiven AnyPlace()
    {
        if (sensible)
        {
            return new(Math.Round(Even(15, 45), 1), Chance(0.5) ? null : Pick(2, 2, 3, 4));
        }

        double ambient = Random.Next(10) switch { 0 => Even(-20, 10), < 9 => Even(15, 45), _ => Even(40, 75) };
        int? loaded = Random.Next(10) switch { < 3 => null, < 7 => 2, < 9 => Random.Next(3, 8), _ => Random.Next(8, 25) };
        return new(Math.Round(ambient, 1), loaded, 1, Chance(0.9) ? 0 : Even(0, 4000), rules.Preset == 1 && Chance(0.1));
    }

    private SourceGiven AnySource(double amperes)
    {
        double blocks = Pick(1.0, 1, 2, 3), nominal = 12 * blocks;
        if (sensible && Chance(0.85))
        {
            // Small batteries, which a blade fuse can still break.
            double ohms = Wide(0.0015, 0.01) * nominal;
            return new(SourceType.Range, Digits(nominal * Even(0.93, 1)), nominal, Digits(nominal * Even(1.05, 1.2)), Digits(ohms), Digits(ohms * Even(1.2, 2)));
        }

        return Random.Next(10) switch
        {
            < 5 => new(SourceType.LeadAcid, Wide(200, 1200), blocks, Chance(0.8) ? 1 : 2),
            < 7 => new(SourceType.Lithium, 4 * blocks, Wide(50, 300), Chance(0.5) ? double.NaN : Digits(amperes * Wide(2, 20))),
            < 9 => new(SourceType.Range, Digits(nominal * Even(0.9, 1)), nominal, Digits(nominal * Even(1, 1.2)), Wide(0.002, 0.01), Wide(0.01, 0.05)),
            _ => new(SourceType.Limited, nominal, Digits(amperes * Wide(1.5, 30))),
        };
    }

    private LoadGiven AnyLoad(double amperes)
    {
        if (Chance(0.1))
        {
            int count = Random.Next(2, 4);
            return new(LoadType.Together, Parts: [.. Enumerable.Range(0, count).Select(_ => OneLoad(Digits(amperes / count * Wide(0.5, 2))))]);
        }

        return OneLoad(amperes);
    }

    private LoadGiven OneLoad(double amperes)
    {
        double peak = Digits(amperes * Wide(1, sensible && Chance(0.5) ? 2.5 : 8));
        LoadGiven load = Random.Next(6) switch
        {
            0 => new(LoadType.Resistance, Digits(volts / amperes)),
            1 => new(LoadType.Current, amperes),
            2 => new(LoadType.Power, Digits(volts * amperes), Pick(1, 0.9)),
            3 => new(LoadType.Lamp, Digits(volts * amperes), volts, Pick(14.0, 10, 16)),
            _ => new(LoadType.Motor, amperes, peak, Digits(peak * Wide(1, 1.5)), Wide(0.03, 5), Chance(0.5) ? volts : double.NaN),
        };
        return load with
        {
            LeastVolts = Chance(0.2) ? Digits(volts * Even(0.5, sensible ? 0.8 : 0.95)) : null,
            Duty = Chance(0.12) ? Math.Round(Even(0.05, 1), 2) : null,
            CutsOut = load.Type == LoadType.Motor && Chance(sensible ? 0.95 : 0.7),
            CapacitorFarads = Chance(load.Type == LoadType.Power ? 0.5 : 0.06) ? Wide(1e-5, sensible ? 0.005 : 0.03) : null,
        };
    }

    private Named<FuseRating> AnyFuse(double wanted)
    {
        int kind = sensible ? Pick(0, 0, 0, 3, 3, 8) : Random.Next(10);
        FuseSeries? series = kind switch
        {
            < 3 => volts > 28 ? FuseSeries.RoadVehicleBlade58 : FuseSeries.RoadVehicleBlade,
            < 5 => volts > 28 ? FuseSeries.RoadVehicleHighCurrentBlade58 : FuseSeries.RoadVehicleHighCurrentBlade,
            5 => FuseSeries.RoadVehicleStrip51,
            < 8 => Library.GgDirectCurrent,
            8 => Library.Breakers,
            _ => null,
        };
        if (series is not null && !(sensible && wanted < 2.5) && series.Ratings[^1].Current.Amperes >= wanted)
        {
            FuseRating rating = series.Ratings.First(r => r.Current.Amperes >= wanted);
            return new($"{series.Name} {rating.Current.Amperes} A", rating);
        }

        double amperes = Mains.FirstOrDefault(a => a >= wanted, Mains[^1]), most = Random.Next(4) == 0 ? 32 : 80, breaks = Random.Next(3) switch { 0 => 1500, 1 => 6000, _ => 20_000 };
        bool curve = sensible || Chance(0.8);
        FuseRating device = UpstreamProtection.Device(
            "device", ElectricCurrent.FromAmperes(amperes), ElectricPotential.FromVolts(most), ElectricCurrent.FromAmperes(breaks), curve ? Library.BreakerCurve(amperes) : null).Rating;
        return new($"stated {amperes} A, {most} V, breaks {breaks} A, {(curve ? "breaker curve" : "no curve")}", device);
    }
}
