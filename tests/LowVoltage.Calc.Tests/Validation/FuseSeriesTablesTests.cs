using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>Every rating of every standard series, and every stated operating time, against a separate transcription.</summary>
public class FuseSeriesTablesTests
{
    internal static readonly Dictionary<string, FuseSeries> Series = new()
    {
        ["RoadVehicleBlade"] = FuseSeries.RoadVehicleBlade,
        ["RoadVehicleBlade58"] = FuseSeries.RoadVehicleBlade58,
        ["RoadVehicleSmallBlade"] = FuseSeries.RoadVehicleSmallBlade,
        ["RoadVehicleSmallBlade58"] = FuseSeries.RoadVehicleSmallBlade58,
        ["RoadVehicleHighCurrentBlade"] = FuseSeries.RoadVehicleHighCurrentBlade,
        ["RoadVehicleHighCurrentBlade58"] = FuseSeries.RoadVehicleHighCurrentBlade58,
        ["RoadVehicleStrip30"] = FuseSeries.RoadVehicleStrip30,
        ["RoadVehicleStrip51"] = FuseSeries.RoadVehicleStrip51,
        ["RoadVehicleFemaleContacts"] = FuseSeries.RoadVehicleFemaleContacts,
        ["RoadVehicleBoltInContacts"] = FuseSeries.RoadVehicleBoltInContacts,
        ["RoadVehicleGlass"] = FuseSeries.RoadVehicleGlass,
        ["RoadVehicleTorpedo"] = FuseSeries.RoadVehicleTorpedo,
        ["Iec60127Sheet1"] = FuseSeries.Iec60127Sheet1,
        ["Iec60127Sheet2"] = FuseSeries.Iec60127Sheet2,
        ["Iec60127Sheet3"] = FuseSeries.Iec60127Sheet3,
        ["Iec60127Sheet5"] = FuseSeries.Iec60127Sheet5,
        ["IndustrialGg"] = FuseSeries.IndustrialGg,
        ["IndustrialGgBladeContacts"] = FuseSeries.IndustrialGgBladeContacts,
        ["NationalElectricalCodeFuses"] = FuseSeries.NationalElectricalCodeFuses,
        ["NationalElectricalCodeBreakers"] = FuseSeries.NationalElectricalCodeBreakers,
    };

    private static readonly Dictionary<string, OperatingTimeLimits> Limits = new()
    {
        ["RoadVehicleBlade"] = OperatingTimeLimits.RoadVehicleBlade,
        ["RoadVehicleSmallBlade"] = OperatingTimeLimits.RoadVehicleSmallBlade,
        ["RoadVehicleHighCurrentBlade"] = OperatingTimeLimits.RoadVehicleHighCurrentBlade,
        ["RoadVehicleStrip"] = OperatingTimeLimits.RoadVehicleStrip,
        ["RoadVehicleGlass"] = OperatingTimeLimits.RoadVehicleGlass,
        ["Iec60127Sheet1"] = OperatingTimeLimits.Iec60127Sheet1,
        ["Iec60127Sheet2"] = OperatingTimeLimits.Iec60127Sheet2,
        ["Iec60127Sheet3"] = OperatingTimeLimits.Iec60127Sheet3,
        ["Iec60127Sheet5"] = OperatingTimeLimits.Iec60127Sheet5,
        ["IndustrialGg"] = OperatingTimeLimits.IndustrialGg,
        ["Ul248Supplementary"] = OperatingTimeLimits.Ul248Supplementary,
        ["Ul248TimeDelay"] = OperatingTimeLimits.Ul248TimeDelay,
    };

    public static TheoryData<string> SeriesNames()
    {
        TheoryData<string> data = [];
        foreach (string name in Series.Keys)
        {
            data.Add(name);
        }

        return data;
    }

    [Fact]
    public void Transcription_CoversEverySeries() => Assert.Equal(
        Series.Keys.Order(StringComparer.Ordinal),
        PublishedTable.Load("fuse-ratings.csv").Rows.Select(r => r.Text("series")).Distinct().Order(StringComparer.Ordinal));

    [Theory, MemberData(nameof(SeriesNames))]
    public void Ratings_OfTheSeries_MatchThePublishedRows(string name)
    {
        PublishedTable.Row[] rows = [.. PublishedTable.Load("fuse-ratings.csv").Rows.Where(r => r.Text("series") == name).OrderBy(r => r.Number("rating"))];
        IReadOnlyList<FuseRating> ratings = Series[name].Ratings;
        Assert.Equal(rows.Length, ratings.Count);
        for (int i = 0; i < rows.Length; i++)
        {
            Assert.Equal(rows[i].Number("rating"), ratings[i].Current.Amperes);
            Assert.Equal(rows[i].Has("voltage") ? rows[i].Number("voltage") : null, ratings[i].VoltageRating?.Volts);
            Assert.Equal(rows[i].Has("breaking") ? rows[i].Number("breaking") : null, ratings[i].BreakingCapacity?.Amperes);
            Assert.Equal(rows[i].Has("length") ? rows[i].Number("length") : null, ratings[i].BodyLength?.Millimeters);
            Assert.Same(Series[name], ratings[i].Series);
        }
    }

    public static TheoryData<string, double, double, double, double, double, string> Gates()
    {
        TheoryData<string, double, double, double, double, double, string> data = [];
        foreach (PublishedTable.Row r in PublishedTable.Load("fuse-operating-times.csv").Rows)
        {
            data.Add(
                r.Text("limits"), r.Number("least_rating"), r.Number("most_rating"), r.Number("percent"),
                r.Has("least") ? r.Number("least") : 0, r.Has("longest") ? r.Number("longest") : 0, r.Text("how"));
        }

        return data;
    }

    [Theory, MemberData(nameof(Gates))]
    public void OperatingTime_AtEveryStatedGate_IsExact(string limits, double from, double to, double percent, double least, double longest, string how)
    {
        double[] ratings = Series.TryGetValue(limits == "RoadVehicleStrip" ? "RoadVehicleStrip51" : limits, out FuseSeries? series)
            ? [.. series.Ratings.Select(r => r.Current.Amperes).Where(a => a >= from && a <= to)]
            : [from, to];
        Assert.NotEmpty(ratings);
        foreach (double rating in ratings)
        {
            TimeCurrentCurve curve = Limits[limits].CurveFor(ElectricCurrent.FromAmperes(rating))!;
            ElectricCurrent at = ElectricCurrent.FromAmperes(rating * percent / 100);
            if (least > 0)
            {
                Assert.Equal(least, curve.LeastTime(at)!.Value.Seconds);
                Assert.Equal(least, curve.ProvenLeastTime(at)!.Value.Seconds);
            }

            Assert.Equal(longest > 0 ? longest : null, curve.LongestTime(at)?.Seconds);
        }

        // How a row is known must show in its reference.
        OperatingTimeGate gate = Limits[limits].Gates.Single(g =>
            g.PercentOfRating == percent && g.LeastRating.Amperes <= ratings[0] && g.MostRating.Amperes >= ratings[0]);
        Assert.Equal(how == "from memory", gate.Reference.Kind == References.ReferenceKind.FromMemory);
        Assert.Equal(least > 0 ? least : null, gate.Least?.Seconds);
        Assert.Equal(longest > 0 ? longest : null, gate.Longest?.Seconds);
    }

    [Fact]
    public void Gates_OfTheShippedSets_AreAllTranscribed()
    {
        // Each gate in per cent stands in at least one row; the gates in amperes have their own tables below.
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("fuse-operating-times.csv").Rows;
        foreach ((string name, OperatingTimeLimits limits) in Limits)
        {
            foreach (OperatingTimeGate gate in limits.Gates.Where(g => g.PercentOfRating is not null))
            {
                // The standard prints the 110 % and 135 % rows of supplementary fuses for the time-delay ones too.
                string set = name == "Ul248TimeDelay" && gate.PercentOfRating < 200 ? "Ul248Supplementary" : name;
                Assert.Contains(rows, r => r.Text("limits") == set && r.Number("percent") == gate.PercentOfRating
                    && (r.Has("least") ? r.Number("least") : null as double?) == gate.Least?.Seconds
                    && (r.Has("longest") ? r.Number("longest") : null as double?) == gate.Longest?.Seconds);
            }
        }
    }

    [Fact]
    public void IndustrialGg_EveryGateInAmperes_IsExact()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("gg-gates.csv").Rows;
        Assert.Equal(80, rows.Count);
        foreach (PublishedTable.Row row in rows)
        {
            Assert.True(FuseSeries.IndustrialGg.TrySmallestAtLeast(ElectricCurrent.FromAmperes(row.Number("rating")), out FuseRating? fuse));
            ElectricCurrent at = ElectricCurrent.FromAmperes(row.Number("current"));
            if (row.Has("least"))
            {
                Assert.Equal(row.Number("least"), fuse.Curve!.LeastTime(at)!.Value.Seconds);
            }
            else
            {
                Assert.Equal(row.Number("longest"), fuse.Curve!.LongestTime(at)!.Value.Seconds);
            }
        }
    }

    [Fact]
    public void IndustrialGg_PreArcingJouleIntegrals_AreExact()
    {
        IReadOnlyList<PublishedTable.Row> rows = PublishedTable.Load("gg-pre-arcing.csv").Rows;
        OperatingTimeGate[] gates = [.. OperatingTimeLimits.IndustrialGg.Gates.Where(g => g.LeastPreArcing is not null)];
        Assert.Equal(rows.Count, gates.Length);
        foreach (PublishedTable.Row row in rows)
        {
            OperatingTimeGate gate = gates.Single(g => g.LeastRating.Amperes == row.Number("rating"));
            Assert.Equal(row.Number("least"), gate.LeastPreArcing!.Value.AmpereSquaredSeconds);
            Assert.Equal(row.Number("most"), gate.MostPreArcing!.Value.AmpereSquaredSeconds);
            TimeCurrentCurve curve = FuseSeries.IndustrialGg.SmallestAtLeast(gate.LeastRating).Curve!;
            Assert.Equal(row.Number("least"), curve.LeastJouleIntegral!.Value.AmpereSquaredSeconds, row.Number("least") * 1e-12);
            Assert.Equal(0.01, curve.LeastTime(gate.Current!.Value)!.Value.Seconds);
        }
    }

    // As the standard intends for selectivity: the 0.1 s maximum of a rating is the 0.1 s minimum of the rating two steps higher.
    [Fact]
    public void IndustrialGg_TenthSecondGates_InterlockTwoStepsApart()
    {
        PublishedTable.Row[] rows = [.. PublishedTable.Load("gg-gates.csv").Rows];
        double[] least = [.. rows.Where(r => r.Has("least") && r.Number("least") == 0.1).Select(r => r.Number("current"))];
        double[] most = [.. rows.Where(r => r.Has("longest") && r.Number("longest") == 0.1).Select(r => r.Number("current"))];
        for (int i = 0; i + 2 < least.Length; i++)
        {
            Assert.Equal(most[i], least[i + 2]);
        }
    }

    [Fact]
    public void PreferredNumbers_MatchTheStandardAndItsPowersOfTen()
    {
        foreach (PreferredNumbers series in (PreferredNumbers[])[PreferredNumbers.R5, PreferredNumbers.R10, PreferredNumbers.R20])
        {
            double[] published = [.. PublishedTable.Load("iso3-preferred-numbers.csv").Rows.Where(r => r.Text("series") == series.Name).Select(r => r.Number("value"))];
            Assert.Equal(published, series.Values);
            for (int i = 0; i < published.Length; i++)
            {
                Assert.InRange(published[i] / Math.Pow(10, i / (double)published.Length), 0.99, 1.0127);
            }
        }
    }
}
