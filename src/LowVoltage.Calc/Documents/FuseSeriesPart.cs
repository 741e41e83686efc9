using System.Text.Json;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.References;
using UnitsNet;
using RatedCurve = LowVoltage.Calc.Documents.TimeCurrentCurvePart.RatedCurve;

namespace LowVoltage.Calc.Documents;

/// <summary>A fuse series in a document: the name of a carried one, several in one, a carried one with other limits, or its values.</summary>
internal static class FuseSeriesPart
{
    private static readonly FuseSeries[] Carried =
    [
        FuseSeries.RoadVehicleBlade, FuseSeries.RoadVehicleBlade58, FuseSeries.RoadVehicleSmallBlade, FuseSeries.RoadVehicleSmallBlade58, FuseSeries.RoadVehicleHighCurrentBlade,
        FuseSeries.RoadVehicleHighCurrentBlade58, FuseSeries.RoadVehicleStrip30, FuseSeries.RoadVehicleStrip51, FuseSeries.RoadVehicleFemaleContacts, FuseSeries.RoadVehicleBoltInContacts,
        FuseSeries.RoadVehicleGlass, FuseSeries.RoadVehicleTorpedo, FuseSeries.Iec60127Sheet1, FuseSeries.Iec60127Sheet2, FuseSeries.Iec60127Sheet3, FuseSeries.Iec60127Sheet5, FuseSeries.IndustrialGg,
        FuseSeries.IndustrialGgBladeContacts, FuseSeries.NationalElectricalCodeFuses, FuseSeries.NationalElectricalCodeBreakers, DesignRules.RoadVehicle.Fuses,
    ];

    private static readonly WordForm<FuseSeries> Words = new([.. Carried.Select(series => (series.Name, series))]);

    private static readonly WordForm<OperatingTimeLimits> LimitWords = new([.. new[]
    {
        OperatingTimeLimits.RoadVehicleBlade, OperatingTimeLimits.RoadVehicleSmallBlade, OperatingTimeLimits.RoadVehicleHighCurrentBlade, OperatingTimeLimits.RoadVehicleStrip, OperatingTimeLimits.RoadVehicleGlass,
        OperatingTimeLimits.IndustrialGg, OperatingTimeLimits.Iec60127Sheet1, OperatingTimeLimits.Iec60127Sheet2, OperatingTimeLimits.Iec60127Sheet3, OperatingTimeLimits.Iec60127Sheet5,
        OperatingTimeLimits.Ul248Supplementary, OperatingTimeLimits.Ul248TimeDelay,
    }.Select(limits => (limits.Name, limits))]);

    private static readonly WordForm<RatingBasis> Bases = new(("direct current", RatingBasis.DirectCurrent), ("alternating current", RatingBasis.AlternatingCurrent), ("not stated", RatingBasis.NotStated));

    private static readonly Member<FuseSeries[]> Combined = Member.Needed<FuseSeries[]>("combined", new ListForm<FuseSeries>(new LaterForm(() => Form!), 1), "The series, in the order in which equal currents are taken.");
    private static readonly Member<FuseSeries> Like = Member.Needed<FuseSeries>("like", Words, "The series that the library carries.");
    private static readonly Member<OperatingTimeLimits> NewLimits = Member.Needed<OperatingTimeLimits>("limits", LimitWords, "The operating-time limits to use with it.");
    private static readonly Member<double[]> Ratings = Member.Needed<double[]>("ratings_A", new ListForm<double>(Ranges.Amperes, 1), "Rated currents, A, rising.");
    private static readonly Member<string> Name = Member.Needed<string>("name", TextForm.Any, "The standard or other name.");
    private static readonly Member<string> What = Member.Needed<string>("fuse_kind", TextForm.Any, "What one of them is called: blade fuse.");
    private static readonly Member<Reference> Source = ReferencePart.Needed("reference", "Source of the ratings.");
    private static readonly Member<double> Volts = Member.Optional<double>("voltage_V", Ranges.Volts, "Rated voltage, V; left out: not known.");
    private static readonly Member<RatingBasis> VoltsFor = Member.Optional<RatingBasis>("voltage_for", Bases, "What the voltage was stated for; left out: not stated.");
    private static readonly Member<double> Breaking = Member.Optional<double>("breaking_capacity_A", Ranges.Amperes, "Breaking capacity, A; left out: not known.");
    private static readonly Member<RatingBasis> BreakingFor = Member.Optional<RatingBasis>("breaking_capacity_for", Bases, "What it was stated for; left out: not stated.");
    private static readonly Member<Reference> BreakingSource = ReferencePart.Optional("breaking_capacity_reference", "Source of the breaking capacity; left out: that of the ratings.");
    private static readonly Member<OperatingTimeLimits> Limits = Member.Optional<OperatingTimeLimits>("limits", LimitWords, "Operating-time limits of a standard.");
    private static readonly Member<AmbientRerating> Rerating = Member.Optional<AmbientRerating>("rerating", ReratingPart.Form, "How the fuses carry less in hotter air.");
    private static readonly Member<RatedCurve[]> Curves = Member.Optional<RatedCurve[]>("curves", new ListForm<RatedCurve>(TimeCurrentCurvePart.Form), "Curves of ratings, before the limits.");

    internal static EitherForm Form { get; } = new(
        "fuse_series",
        "The fuses to choose from: the name of a series that the library carries, several in one, a carried one with other limits, or its values.",
        Words,
        new ObjectForm("fuse_series_combined", "Several series in one.", at => FuseSeries.Combine(at.Get(Name), at.Get(Combined)), [Combined, Name]),
        new ObjectForm("fuse_series_like", "A carried series with operating-time limits of the caller's choice.", at => at.Get(Like).WithLimits(at.Get(NewLimits)), [Like, NewLimits]),
        new ObjectForm(
            "fuse_series_stated",
            "A series of the caller's.",
            Make,
            [Ratings, Name, What, Source, Volts, VoltsFor, Breaking, BreakingFor, BreakingSource, Limits, Rerating, Curves],
            MemberRule.Needs(VoltsFor, Volts),
            MemberRule.Needs(BreakingFor, Breaking),
            MemberRule.Needs(BreakingSource, Breaking)));

    internal static void Write(Utf8JsonWriter json, FuseSeries series)
    {
        if (Words.WordOf(series) is { } word)
        {
            json.WriteStringValue(word);
            return;
        }

        json.WriteStartObject();
        if (series.Definition is not { } definition)
        {
            json.PutAll(Combined, series.Parts, Write);
            json.Put(Name, series.Name);
        }
        else if (CarriedLike(series) is { } carried && series.Limits is { } limits)
        {
            json.WriteString(Like.Encoded, carried.Name);
            json.WriteString(NewLimits.Encoded, LimitWords.WordOf(limits));
        }
        else
        {
            WriteStated(json, series, definition);
        }

        json.WriteEndObject();
    }

    private static void WriteStated(Utf8JsonWriter json, FuseSeries series, FuseSeriesDefinition definition)
    {
        json.PutAll(Ratings, series.RatingsArray.Select(rating => rating.Amperes));
        json.Put(Name, series.Name);
        json.Put(What, series.Kind);
        json.Put(Source, series.Reference, ReferencePart.Write);
        if (series.Volts is { } volts)
        {
            json.Put(Volts, volts);
            json.WriteString(VoltsFor.Encoded, Bases.WordOf(series.VoltageBasis));
        }

        if (series.RatingsArray[0].BreakingAmperes is { } breaking)
        {
            json.Put(Breaking, breaking);
            json.WriteString(BreakingFor.Encoded, Bases.WordOf(series.BreakingCapacityBasis));
            if (definition.BreakingCapacityReference is { } source)
            {
                json.Put(BreakingSource, source, ReferencePart.Write);
            }
        }

        if (series.Limits is { } limits)
        {
            json.WriteString(Limits.Encoded, LimitWords.WordOf(limits));
        }

        if (series.Rerating is { } rerating)
        {
            json.Put(Rerating, rerating, ReratingPart.Write);
        }

        if (definition.Curves is not null)
        {
            json.PutAll(Curves, series.RatingsArray.Where(rating => rating.Curve is not null).Select(rating => new RatedCurve(rating.Amperes, rating.Curve!)), TimeCurrentCurvePart.Write);
        }
    }

    // Some carried series hold what no caller can state: the length of a glass body, a breaking capacity in multiples of the rating.
    private static FuseSeries? CarriedLike(FuseSeries series) => Array.Find(
        Carried,
        own => own.Definition is { } definition && own.Name == series.Name && own.Reference.Equals(series.Reference) && ReferenceEquals(definition.Ratings, series.Definition!.Ratings) && series.Definition.Curves is null);

    private static FuseSeries? Make(Values at)
    {
        double[] ratings = at.Get(Ratings);
        RatedCurve[]? curves = at.OrNull(Curves);
        for (int i = 0; curves is not null && i < curves.Length; i++)
        {
            if (Array.IndexOf(ratings, curves[i].Amperes) < 0 || Array.FindIndex(curves, own => own.Amperes.Equals(curves[i].Amperes)) < i)
            {
                at.Reading.Judge(at.At(Curves).Items[i], $"\"rating_A\" must be one of the ratings that has no curve before; it was {Quantities.Accept.Text(curves[i].Amperes)} A.");
                return null;
            }
        }

        return FuseSeries.Create(new FuseSeriesDefinition
        {
            Name = at.Get(Name),
            Kind = at.Get(What),
            Reference = at.Get(Source),
            Ratings = [.. ratings.Select(own => ElectricCurrent.FromAmperes(own))],
            VoltageRating = at.Maybe(Volts) is { } volts ? ElectricPotential.FromVolts(volts) : null,
            VoltageBasis = at.Or(VoltsFor, RatingBasis.NotStated),
            BreakingCapacity = at.Maybe(Breaking) is { } amperes ? ElectricCurrent.FromAmperes(amperes) : null,
            BreakingCapacityBasis = at.Or(BreakingFor, RatingBasis.NotStated),
            BreakingCapacityReference = at.OrNull(BreakingSource),
            Limits = at.OrNull(Limits),
            Rerating = at.OrNull(Rerating),
            Curves = curves is null ? null : [.. ratings.Select(rating => Array.Find(curves, own => own.Amperes.Equals(rating))?.Curve)],
        });
    }
}
