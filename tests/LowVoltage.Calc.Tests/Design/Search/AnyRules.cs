using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design.Search;

/// <summary>Short invented lists of wires and fuses, in which ratings overlap, miss times, volts or breaking capacity, and circuits that they serve well, badly or not at all.</summary>
internal sealed class AnyRules(int seed)
{
    private static readonly double[] Squares = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25], Ratings = [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 80];

    private readonly Random random = new(seed);

    internal (CircuitRequirements Asked, DesignRules Rules) Next()
    {
        int kind = random.Next(9);
        double volts = random.Next(3) switch { 0 => 24, 1 => 48, _ => 12 }, amperes = Log(0.5, 40);
        CircuitRequirements asked = Circuit(
            LoadOf(kind, amperes, volts), SourceOf(volts, amperes), Log(0.3, 12), Back(), random.Next(-1, 9) * 10, 1 + (random.Next(8) / 2), Insulation(),
            Maybe() ? Log(2, 60) : null, Maybe() ? Log(0.05, 0.6) : null);
        return (asked, new DesignRules(DesignRules.RoadVehicle)
        {
            Conductors = ConductorSeries.RoadVehicle.Only("few", [.. Some(Squares, 1, 7).Select(s => ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(s)))]),
            Fuses = FuseSeries.Combine("invented", [.. Enumerable.Range(0, random.Next(1, 4)).Select(i => Fuses(i))]),
            Ampacity = random.Next(4) == 0 ? AmpacityBasis.LowerOf(AmpacityBasis.RoadVehicleTable, AmpacityBasis.HeatBalance) : AmpacityBasis.RoadVehicleTable,
            DropLimit = random.Next(8) == 0 ? DropLimit.AircraftTable : DropLimit.Percent(Log(1, 25)),
            FusePractice = new FusePractice { Overload = random.Next(3) == 0 ? OverloadAllowance.Ageing240Hours : null, ShareOfAmpacity = random.Next(3) == 0 ? 1.5 : 1, Distance = DesignRules.SmallCraft.FusePractice.Distance },
            MinimumSection = Area.FromSquareMillimeters(random.Next(3) == 0 ? 1.5 : 0.5),
        });
    }

    private FuseSeries Fuses(int which)
    {
        double[] ratings = Some(Ratings, 1, 6);
        FuseSeriesDefinition list = new()
        {
            Name = $"list {which}", Kind = "fuse", Reference = Reference.CommonPractice("made up for a test"), Ratings = [.. ratings.Select(A)],
        };
        list = random.Next(8) == 0 ? list : list.WithVoltageRating(V(random.Next(3) == 0 ? 32 : 60), random.Next(8) == 0 ? RatingBasis.AlternatingCurrent : RatingBasis.DirectCurrent);
        list = random.Next(8) == 0 ? list : list.WithBreakingCapacity(A(random.Next(4) == 0 ? 150 : 5000), RatingBasis.DirectCurrent);
        list = random.Next(4) == 0 ? list : list.WithCurves([.. ratings.Select(rating => random.Next(6) == 0 ? null : Curve(rating))]);
        return FuseSeries.Create(random.Next(5) == 0 ? list.WithRerating(AmbientRerating.IndustrialGg) : list);
    }

    private static TimeCurrentCurve Curve(double rating) => TimeCurrentCurve.Create(
        [.. Plain.BladeLeast.Select(g => new TimeCurrentPoint(g.Multiple * rating, g.Seconds))], [.. Plain.BladeLongest.Select(g => new TimeCurrentPoint(g.Multiple * rating, g.Seconds))]);

    private Load LoadOf(int kind, double amperes, double volts) => kind switch
    {
        0 or 1 => Load.ConstantCurrent(A(amperes)),
        2 => Load.ConstantPower(W(amperes * volts), 0.9, V(0.8 * volts)),
        3 => Load.Lamp(W(amperes * volts), V(volts)),
        4 => Load.Motor(A(amperes), A(2.5 * amperes), A(4 * amperes), Duration.FromSeconds(0.3)),
        5 => Load.Motor(A(amperes), A(3 * amperes), A(3 * amperes), Duration.FromSeconds(2)).WithMinimumVoltage(V(0.7 * volts)),
        6 => Load.Resistance(ElectricResistance.FromOhms(volts / amperes)),
        7 => Load.ConstantCurrent(A(amperes)).WithMinimumVoltage(V(volts * (random.Next(2) == 0 ? 1.05 : 0.93))),
        _ => Load.ConstantPower(W(amperes * volts)).WithInputCapacitor(ElectricCapacitance.FromMicrofarads(500)),
    };

    private Source SourceOf(double volts, double amperes) => random.Next(6) switch
    {
        0 => Source.CurrentLimited(V(volts), A(amperes * Log(0.9, 4))),
        1 => Source.Ideal(V(volts)),
        2 => Source.BehindResistance(V(0.95 * volts), V(volts), V(1.1 * volts), MilliOhm(4), MilliOhm(Log(12, 300))),
        _ => LeadAcid((int)(volts / 12)),
    };

    private ReturnPath? Back() => random.Next(4) switch
    {
        0 => ReturnPath.Chassis(MilliOhm(2)),
        1 => ReturnPath.Shared([Segment.Create(RoadVehicle(16), M(2))], A(Log(1, 60))),
        2 => ReturnPath.Wire(Segment.Create(RoadVehicle(random.Next(4) == 0 ? 1.5 : 25), M(3))),
        _ => ReturnPath.Wire(M(Log(0.3, 12))),
    };

    private InsulationMaterial Insulation() => random.Next(3) == 0 ? InsulationMaterial.CrossLinkedPolyethylene : InsulationMaterial.PolyvinylChloride;

    private bool Maybe() => random.Next(8) > 0;

    private double Log(double least, double most) => least * Math.Pow(most / least, random.NextDouble());

    private double[] Some(double[] all, int least, int most) => [.. all.OrderBy(_ => random.Next()).Take(random.Next(least, most + 1)).Order()];
}
