using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>What one wire carries continuously where it runs: bounds, the conductor temperature that the rating stands for, and the ambient that it belongs to.</summary>
internal readonly record struct RatingBand(double Low, double High, double Celsius, double BaseAmbient)
{
    public bool Known => High > 0;

    public RatingBand Lower(in RatingBand other) =>
        !Known ? other : !other.Known ? this : new(Math.Min(Low, other.Low), Math.Min(High, other.High), High <= other.High ? Celsius : other.Celsius, High <= other.High ? BaseAmbient : other.BaseAmbient);
}

/// <summary>Ratings in place: cells and factors of published tables read through the public surface, the rest worked out here.</summary>
internal static class OwnRating
{
    // The library lowers its heat balance by 3 %; own air properties may differ by 2 %.
    private const double HighOfOne = 0.97 * 1.02;
    private const double LowOfOne = 0.97 * 0.97;

    // Wires lying together: no heat balance of a bundle is closer to the published ones than this.
    private const double LowOfMany = 0.55;

    // Above what physics alone allows for wires lying together, before any margin.
    private const double PhysicsOfMany = 1.06;
    private const double PhysicsOfOne = 1.02;

    // Two wires touching carry at least a tenth less than one alone (FAA figure 11-5 and method F against G, IEC 60364-5-52: 13 % to 17 %).
    private const double PairAtMost = 0.9;

    // Sections of IEC 60228: those of them that the table has are its rows.
    private static readonly double[] Rows = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120];

    public static RatingBand Of(OwnWire wire, BasisType basis, PlaceGiven place, int n, double nominalVolts) => basis switch
    {
        BasisType.RoadVehicle => RoadVehicle(wire, place, n).Lower(Balance(wire, place, n)),
        BasisType.RoadVehicleTable => RoadVehicle(wire, place, n),
        // A table for boats that ends at four tenths knows no bundle of hundred wires, and one that ends at 50 °C no hotter place: physics counts beside the first, nothing beyond the second.
        BasisType.SmallCraft => place.Ambient > 50 ? default : SmallCraft(wire, place, n, nominalVolts).Lower(Balance(wire, place, n)),
        BasisType.Aircraft => Aircraft(wire, place, n),
        BasisType.Building => Building(wire, place, n),
        _ => Balance(wire, place, n),
    };

    /// <summary>The current beyond which physics says that the wire is hotter than its insulation, whatever a table says.</summary>
    public static double Physics(OwnWire wire, BasisType basis, PlaceGiven place, int n)
    {
        // The aircraft table counts on few loaded wires; method C lies on a wall that takes heat; the caller chose a table alone.
        int loaded = basis == BasisType.Aircraft ? Math.Max(1, (int)Math.Floor(n * place.Loading)) : n;
        double room = basis is BasisType.Aircraft or BasisType.Building or BasisType.RoadVehicleTable ? 1.12 : 1;
        return OwnBundle.Amperes(wire, loaded, wire.Continuous, place.Ambient, place.Altitude) * (loaded == 1 ? PhysicsOfOne : PhysicsOfMany) * room;
    }

    private static RatingBand Balance(OwnWire wire, PlaceGiven place, int n)
    {
        double amperes = OwnBundle.Amperes(wire, n, wire.Continuous, place.Ambient, place.Altitude);
        return new(amperes * (n == 1 ? LowOfOne : LowOfMany), amperes * HighOfOne, wire.Continuous, place.Ambient);
    }

    private static RatingBand RoadVehicle(OwnWire wire, PlaceGiven place, int n)
    {
        if (!TryCellOrBetween(RoadVehicleSingleCore.Ambient30, wire, 70, out double below, out double cell) || wire.Continuous is < 70 or >= 80 || place.Ambient >= 70 || !TryGroup(n, out double group))
        {
            return default;
        }

        double air = Math.Max(place.Ambient, 30), warm = Math.Sqrt((70 - air) / 40) * group, amperes = cell * warm;
        return new(below * warm * (n > 1 ? 0.75 : 1), amperes * (n > 1 ? PairAtMost : 1), 70, air);
    }

    private static RatingBand SmallCraft(OwnWire wire, PlaceGiven place, int n, double nominalVolts)
    {
        if (!TryColumn(Cfr33Part183Table5.Table, wire.Continuous, out double column) || place.Ambient > 50 || !TryCell(Cfr33Part183Table5.Table, wire, column, out double cell))
        {
            return default;
        }

        bool hot = place.EngineSpace || place.Ambient > 30;
        double engine = hot && Cfr33Part183EngineSpace.TryFactor(Celsius(column), out DeratingFactor? factor) ? factor.Value : 1;
        double amperes = cell * engine * Cfr33Part183ConductorCount.Factor(n, ElectricPotential.FromVolts(nominalVolts)).Value;
        return new(amperes, amperes, column, hot ? 50 : 30);
    }

    private static RatingBand Aircraft(OwnWire wire, PlaceGiven place, int n)
    {
        double percent = Math.Max(20, place.Loading * 100);
        if (!TryColumn(FaaAc43Table11Dash9.Table, wire.Continuous, out double column) || place.Ambient > 70 || place.Altitude > 18_288
            || !TryCell(FaaAc43Table11Dash9.Table, wire, column, out double cell)
            || !FaaBundle.TryFactor(n, Ratio.FromPercent(percent), out DeratingFactor? bundle))
        {
            return default;
        }

        // The table's own bundle: 33 wires for sizes 24 to 10, 9 for size 8 and larger, a fifth in use.
        int number = Number(wire.Conductor);
        bool covered = number > 8 ? bundle.Value >= 0.5325 || (percent <= 20 && n <= 33) : FaaBundle.TryFactor(9, Ratio.FromPercent(20), out DeratingFactor? nine) && bundle.Value >= nine.Value;
        return covered ? new(cell, cell, column, 70) : default;
    }

    private static RatingBand Building(OwnWire wire, PlaceGiven place, int n)
    {
        if (!TryColumn(Iec60364MethodC.Table, wire.Continuous, out double column) || wire.Continuous >= 105 || !TryCell(Iec60364MethodC.Table, wire, column, out double cell)
            || !Iec60364Ambient.TryFactor(Celsius(Math.Max(place.Ambient, 30)), Celsius(column), out DeratingFactor? warmth) || !TryGroup(n, out double group))
        {
            return default;
        }

        double amperes = cell * Math.Min(1, warmth.Value) * group;
        return new(amperes, amperes, column, Math.Max(place.Ambient, 30));
    }

    private static bool TryGroup(int n, out double value)
    {
        bool found = Iec60364Grouping.TryFactor((n + 1) / 2, Iec60364Arrangement.Bunched, out DeratingFactor? factor);
        value = found ? factor!.Value : 0;
        return found;
    }

    private static bool TryColumn(AmpacityTable table, double continuous, out double column)
    {
        double[] fitting = [.. table.InsulationRatings.Select(rating => rating.DegreesCelsius).Where(celsius => celsius <= continuous)];
        column = fitting.Length > 0 ? fitting.Max() : 0;
        return fitting.Length > 0;
    }

    private static bool TryCell(AmpacityTable table, OwnWire wire, double column, out double amperes)
    {
        TableRating? rating = null;
        bool found = wire.Conductor.Size is { } size && table.TryRating(size, Celsius(column), out rating);
        amperes = found ? rating!.Current.Amperes : 0;
        return found;
    }

    // A section between two rows carries at least what the chord between them says, for the current grows ever more slowly with the section, and at most
    // what one power of the section through both rows does.
    private static bool TryCellOrBetween(AmpacityTable table, OwnWire wire, double column, out double low, out double high)
    {
        bool found = TryCell(table, wire, column, out low);
        high = low;
        if (found || wire.Conductor.Size is not { } size || !size.TryGetMetric(out MetricSize metric))
        {
            return found;
        }

        double square = metric.NominalArea.SquareMillimeters;
        List<(double Square, double Amperes)> rows = [];
        foreach (double row in Rows)
        {
            if (table.TryRating(MetricSize.FromSquareMillimeters(row), Celsius(column), out TableRating? rating))
            {
                rows.Add((row, rating.Current.Amperes));
            }
        }

        if (rows.Count == 0 || square < rows[0].Square || square > rows[^1].Square)
        {
            return false;
        }

        (double Square, double Amperes) under = rows.Last(row => row.Square < square), over = rows.First(row => row.Square > square);
        low = under.Amperes + ((over.Amperes - under.Amperes) * (square - under.Square) / (over.Square - under.Square));
        high = under.Amperes * Math.Exp(Math.Log(over.Amperes / under.Amperes) * Math.Log(square / under.Square) / Math.Log(over.Square / under.Square));
        return true;
    }

    private static int Number(Conductor conductor) =>
        conductor.Size is not { } size ? 0 : size.TryGetAwg(out AwgSize awg) ? awg.Number : size.TryGetAircraft(out AircraftWireSize aircraft) ? aircraft.Number : 0;

    private static Temperature Celsius(double celsius) => Temperature.FromDegreesCelsius(celsius);
}
