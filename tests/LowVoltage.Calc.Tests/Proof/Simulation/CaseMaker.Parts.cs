using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <content>Sources, loads, and wiring that exists.</content>
internal sealed partial class CaseMaker
{
    /// <summary>Wiring as found: stretches of several sizes, parallel wires, stated temperatures, a fuse that may be too small or too large.</summary>
    public static CaseGiven Verification(int seed, int number)
    {
        CaseMaker maker = new(seed, -1 - number);
        double amperes = maker.Wide(0.2, 60);
        return maker.Laid(maker.Circuit(amperes), amperes);
    }

    private CaseGiven Laid(CaseGiven given, double amperes)
    {
        // Long enough in the rules: what a wire may lose is not the point here.
        int stretches = Random.Next(5) switch { < 3 => 1, 3 => 2, _ => 3 };
        StretchGiven[] feed = new StretchGiven[stretches];
        for (int i = 0; i < stretches; i++)
        {
            bool foreign = Chance(0.1);
            StretchGiven plain = Stretch(foreign ? new RulesGiven(Random.Next(4)) : given.Rules, amperes * Wide(0.6, 5), given.Feed / stretches);
            int parallel = Chance(0.15) ? Random.Next(2, 5) : 1;
            feed[i] = plain with { Parallel = parallel, Celsius = Chance(0.05) ? Math.Round(Even(20, 130)) : null };
        }

        BackGiven back = given.Back.Type == BackType.Wire && stretches > 1
            ? new BackGiven(BackType.Segments, Stretches: [.. feed.Select(s => s with { Celsius = null })])
            : given.Back;
        double wanted = amperes * Wide(0.8, 4);
        FuseSeries series = given.Rules.Fuses switch
        {
            FuseType.Gg => Library.GgDirectCurrent,
            FuseType.Breakers => Library.Breakers,
            FuseType.Blades => FuseSeries.RoadVehicleBlade,
            _ => Pick(FuseSeries.RoadVehicleBlade, FuseSeries.RoadVehicleBlade, FuseSeries.RoadVehicleBlade58, FuseSeries.RoadVehicleHighCurrentBlade, FuseSeries.RoadVehicleHighCurrentBlade58, FuseSeries.RoadVehicleStrip51, FuseSeries.RoadVehicleGlass, FuseSeries.IndustrialGg),
        };
        FuseRating fuse = series.Ratings.FirstOrDefault(rating => rating.Current.Amperes >= wanted) ?? series.Ratings[^1];
        bool unfused = Chance(0.06);
        if (Chance(0.2))
        {
            int warm = Random.Next(feed.Length);
            feed[warm] = feed[warm] with { Place = Place(given.Insulation.Value.ContinuousLimit.DegreesCelsius, given.Rules) };
        }

        return given with
        {
            Laid = feed,
            Back = back,
            Unfused = unfused,
            Fitted = unfused ? null : new($"/* {series.Name} */ {series.Kind} {fuse.Current.Amperes} A", fuse),
            DropPercent = Chance(0.7) ? 15 : given.DropPercent,
            DropVolts = null,
        };
    }

    private SourceGiven AnySource(double amperes)
    {
        double blocks = Pick(1.0, 1, 2, 3);
        SourceGiven leadAcid = new(SourceType.LeadAcid, Wide(60, 1200), blocks, Chance(0.8) ? 1 : 2);
        double cells = Pick(4.0, 4, 8, 16), hours = Wide(5, 300), nominal = 12 * blocks;
        bool stiff = Chance(0.3);
        SourceGiven range = new(SourceType.Range, Digits(nominal * Even(0.85, 1)), nominal, Digits(nominal * Even(1, 1.2)), Wide(0.0005, stiff ? 0.005 : 0.05), stiff ? 0.02 : Wide(0.05, 0.5));
        return Random.Next(20) switch
        {
            < 8 => leadAcid,
            < 11 => new(SourceType.Lithium, cells, hours, Chance(0.5) ? Wide(amperes * 0.8, amperes * 10) : double.NaN),
            < 14 => range,
            < 16 => new(SourceType.Limited, nominal, Digits(amperes * Wide(0.8, 20))),
            16 => new(SourceType.Alternator, 14.4 * Math.Min(blocks, 2), Digits(amperes * Wide(1, 10))),
            17 => new(SourceType.Series, Parts: [leadAcid with { B = 1 }, Chance(0.5) ? new(SourceType.Limited, 12, Digits(amperes * Wide(1, 5))) : new(SourceType.LeadAcid, Wide(60, 900), 1, 1)]),
            18 => new(SourceType.Parallel, Parts: [leadAcid, new(SourceType.LeadAcid, Wide(60, 900), blocks, 1)]),
            _ => new(SourceType.Parallel, Parts: [new(SourceType.Lithium, cells, hours, Digits(amperes * Wide(0.6, 5))), new(SourceType.Lithium, cells, Wide(5, 300), Digits(amperes * Wide(0.6, 5)))]),
        };
    }

    private LoadGiven AnyLoad(double amperes)
    {
        if (Chance(0.2))
        {
            int parts = Random.Next(2, 5);
            return new(LoadType.Together, Parts: [.. Enumerable.Range(0, parts).Select(_ => OneLoad(Digits(amperes / parts * Wide(0.3, 2))))]);
        }

        return OneLoad(amperes);
    }

    private LoadGiven OneLoad(double amperes)
    {
        double peak = Digits(amperes * Wide(1, 8));
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
            LeastVolts = Chance(0.3) ? Digits(volts * Even(0.7, 0.98)) : null,
            Duty = Chance(0.15) ? Math.Round(Even(0.05, 1), 2) : null,
            CutsOut = load.Type == LoadType.Motor && Chance(0.6),
            CapacitorFarads = Chance(load.Type == LoadType.Power ? 0.5 : 0.08) ? Wide(1e-5, 0.05) : null,
        };
    }
}
