using System.Text.Json;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Documents;

/// <summary>One fuse in a document.</summary>
internal static class FusePart
{
    private static readonly Member<FuseSeries> Series = Member.Needed<FuseSeries>("series", FuseSeriesPart.Form, "The series that it is a rating of.");
    private static readonly Member<double> Amperes = Member.Needed<double>("rating_A", Ranges.Amperes, "Its rated current, A.");

    internal static ObjectForm Form { get; } = new("fuse", "A fuse: a rating of a series.", Find, [Series, Amperes]);

    internal static void Write(Utf8JsonWriter json, FuseRating fuse)
    {
        json.WriteStartObject();
        json.Put(Series, fuse.Series, FuseSeriesPart.Write);
        json.Put(Amperes, fuse.Amperes);
        json.WriteEndObject();
    }

    private static FuseRating? Find(Values at)
    {
        FuseSeries series = at.Get(Series);
        double amperes = at.Get(Amperes);
        if (Array.Find(series.RatingsArray, own => own.Amperes.Equals(amperes)) is { } rating)
        {
            return rating;
        }

        at.Reading.Judge(at.At(Amperes), $"must be a rating of \"{series.Name}\": {string.Join(", ", series.RatingsArray.Select(own => Quantities.Accept.Text(own.Amperes)).Distinct())} A; it was {Quantities.Accept.Text(amperes)} A.");
        return null;
    }
}
