using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>Puts main fuses before random circuits: of a series, with a caller's curve, with stated values alone; one or two in a row; with and without the lead's wire.</summary>
internal sealed class MainFuseMaker
{
    private static readonly double[] Mains = [1, 2, 4, 6, 10, 16, 25, 40, 63, 80, 100, 125, 160, 200, 250, 315, 400];

    private readonly Random random;
    private readonly CaseGiven given;

    private MainFuseMaker(CaseGiven given, int seed, int number)
    {
        this.given = given;
        random = new Random(unchecked((seed * 486_187_739) + number + 1_000_003));
    }

    /// <summary>A third of the cases get one or two, the rest stay as they are.</summary>
    public static CaseGiven Maybe(CaseGiven given, int seed, int number)
    {
        MainFuseMaker maker = new(given, seed, number);
        return maker.Chance(0.35) ? maker.Made() : given;
    }

    private CaseGiven Made()
    {
        int count = Chance(0.15) ? 2 : 1;
        double whole = given.UpstreamOhms ?? 0.01, before = Chance(0.6) ? 0 : whole * 0.3 * random.NextDouble();
        double wanted = Rough(given) * Math.Exp(-1 + (random.NextDouble() * 3.5));
        MainGiven[] mains = new MainGiven[count];
        for (int i = count - 1; i >= 0; i--)
        {
            double at = i == 0 ? before : before + ((whole - before) * 0.5), end = i == count - 1 ? whole : before + ((whole - before) * 0.5);
            Named<FuseRating> fuse = Fuse(wanted);
            double amperes = fuse.Value.Current.Amperes;
            bool lead = Chance(0.85);
            StretchGiven feed = Lead(amperes, Math.Max(0.05, (end - at) * 100));
            mains[i] = new MainGiven(fuse, Chance(0.9) ? at : null)
            {
                Feed = lead ? [feed] : [],
                Back = lead ? Chance(0.7) ? new BackGiven(BackType.Wire, feed.Meters) : new BackGiven(BackType.Chassis, Ohms: 0.0005) : new BackGiven(BackType.Chassis),
                LetThrough = Chance(0.4) ? Math.Round(amperes * amperes * Wide(1, 60)) : null,
                Withstood = Chance(0.5) ? Math.Round(amperes * amperes * Wide(3, 100)) : null,
                Melting = Chance(0.3) ? Math.Round(amperes * amperes * Wide(0.5, 3)) : null,
                Meters = Chance(0.8) ? Wide(0.02, Chance(0.8) ? 0.17 : 1) + i : null,
                Sheathed = Chance(0.3),
                Ambient = Chance(0.15) ? Math.Round(20 + (50 * random.NextDouble())) : null,
            };
            wanted = amperes * 2;
        }

        return given with { Mains = mains };
    }

    // A guess of the load; the rest is chance.
    private static double Rough(CaseGiven given) => given.Load.Type switch
    {
        LoadType.Power or LoadType.Lamp => given.Load.A / 12,
        LoadType.Resistance => 12 / given.Load.A,
        LoadType.Together => 3 * given.Load.Parts.Length,
        _ => given.Load.A,
    };

    private Named<FuseRating> Fuse(double wanted)
    {
        int kind = random.Next(8);
        FuseSeries? series = kind switch
        {
            < 3 => FuseSeries.IndustrialGgBladeContacts,
            3 => FuseSeries.RoadVehicleStrip51,
            4 => Library.Breakers,
            _ => null,
        };
        if (series is not null)
        {
            FuseRating rating = series.Ratings.FirstOrDefault(r => r.Current.Amperes >= wanted) ?? series.Ratings[^1];
            return new($"/* {series.Name} */ {rating.Current.Amperes} A", rating);
        }

        double amperes = Mains.FirstOrDefault(a => a >= wanted, Mains[^1]), volts = random.Next(4) == 0 ? 32 : 80, breaks = random.Next(3) switch { 0 => 1500, 1 => 6000, _ => 20_000 };
        bool curve = kind < 7, unknown = Chance(0.1);
        FuseRating device = UpstreamProtection.Device(
            "main device", ElectricCurrent.FromAmperes(amperes), ElectricPotential.FromVolts(volts), unknown ? null : ElectricCurrent.FromAmperes(breaks), curve ? Library.BreakerCurve(amperes) : null).Rating;
        return new($"/* stated: {amperes} A, {volts} V, {(unknown ? "?" : breaks)} A, {(curve ? "breaker curve" : "no curve")} */", device);
    }

    private StretchGiven Lead(double amperes, double meters)
    {
        Named<Conductor>[] sizes = Sizes.Of(given.Rules.Preset);
        double area = amperes / 5 * Wide(0.5, 3);
        StretchGiven plain = new(sizes.FirstOrDefault(size => size.Value.Area.SquareMillimeters >= area) ?? sizes[^1], Math.Round(Math.Min(meters, 8), 2), Chance(0.1) ? 2 : 1);
        return plain with { Place = Chance(0.3) ? new PlaceGiven(Math.Round(20 + (40 * random.NextDouble()))) : null, Celsius = Chance(0.03) ? 110 : null };
    }

    private bool Chance(double share) => random.NextDouble() < share;

    private double Wide(double low, double high) => low * Math.Pow(high / low, random.NextDouble());
}
