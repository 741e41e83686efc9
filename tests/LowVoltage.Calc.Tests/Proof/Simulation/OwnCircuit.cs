using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>One stretch of wire as it is laid.</summary>
internal sealed class OwnStretch(OwnWire wire, double meters, int parallel, double? stated, in RatingBand rating, double physics, PlaceGiven place, double others, bool isReturn)
{
    public OwnWire Wire => wire;

    public double Meters => meters;

    public int Parallel => parallel;

    public double? Stated => stated;

    public RatingBand Rating { get; } = rating;

    /// <summary>Current of one wire beyond which physics says that it is too hot.</summary>
    public double Physics => physics;

    public double Ambient => place.Ambient;

    public double Altitude => place.Altitude;

    /// <summary>Current of other circuits in it, A.</summary>
    public double Others => others;

    public bool IsReturn => isReturn;

    public double OhmsAt(double celsius) => wire.OhmsAt(celsius) * meters / parallel;

    /// <summary>The conductor temperature at an r.m.s. current of this circuit: by the rating's square law at the cool or the warm end of what is known.</summary>
    public double CelsiusAt(double amperes, bool warm)
    {
        if (stated is { } given)
        {
            return given;
        }

        double hottest = Math.Max(Ambient, wire.Continuous);
        if (!Rating.Known || others > 0)
        {
            return warm ? hottest : Ambient;
        }

        double load = amperes / parallel / (warm ? Rating.Low : Rating.High);
        return Ambient + (Math.Max(0, Rating.Celsius - (warm ? Ambient : Math.Max(Ambient, Rating.BaseAmbient))) * load * load);
    }

    /// <summary>How hot a fault or an overload finds it: as hot as it may be; where the insulation has no short-circuit limit above that, as its load makes it.</summary>
    public double StartCelsius(double amperes) =>
        stated ?? Math.Max(Ambient, wire.HasRoom ? wire.Continuous : Math.Min(wire.Continuous, CelsiusAt(amperes + others, false)));
}

/// <summary>The circuit of a case with the wire and the fuse that are in question.</summary>
internal sealed class OwnCircuit
{
    // Conductors of this circuit itself that lie together.
    private readonly int own;

    public OwnCircuit(CaseGiven given, Conductor wire, FuseRating? fuse)
    {
        Given = given;
        Source = new OwnSource(given.Source);
        Load = new OwnLoad(given.Load);
        fuse ??= given.Unfused && given.Mains.Length > 0 ? given.Mains[^1].Fuse.Value : null;
        Fuse = fuse is null ? null : new OwnFuse(fuse);
        Named<Conductor> chosen = new("", wire);
        StretchGiven[] feed = given.Laid.Length > 0 ? given.Laid : [new(chosen, given.Feed)];
        BackGiven back = given.Back;
        StretchGiven[] home = back.Type == BackType.Wire ? [feed[0] with { Meters = back.Meters }] : back.Stretches;
        bool ofWire = back.Type is BackType.Wire or BackType.Segments or BackType.SharedSegments;
        own = given.IsVerification && given.Laid.Length > 0
            ? feed.Max(s => s.Parallel) + home.Select(s => s.Parallel).DefaultIfEmpty(0).Max()
            : ofWire ? 2 : 1;
        Stretches = [.. feed.Select(s => Make(s, 0, false)), .. home.Select(s => Make(s, back.Type == BackType.SharedSegments ? back.Others : 0, true))];
        FeedCount = feed.Length;
        OtherAmperes = back.Others;
        SharedOhms = back.Type == BackType.SharedOhms ? back.Ohms : 0;
        FixedOhms = given.JointOhms + OwnSupply.LeadOhms(given) + back.Ohms;
    }

    public CaseGiven Given { get; }

    public OwnSource Source { get; }

    public OwnLoad Load { get; }

    public OwnFuse? Fuse { get; }

    public OwnStretch[] Stretches { get; }

    public int FeedCount { get; }

    /// <summary>Joints, supply lead, chassis and stated shared resistance, Ω.</summary>
    public double FixedOhms { get; }

    public double SharedOhms { get; }

    public double OtherAmperes { get; }

    /// <summary>Air around the fuse.</summary>
    public double FuseAmbient => Given.FuseAmbient ?? Given.Place.Ambient;

    /// <summary>Largest continuous current that every stretch still carries, one bound or the other.</summary>
    public double Weakest(bool high) => Stretches.Min(s => Math.Max(0, ((high ? s.Rating.High : s.Rating.Low) * s.Parallel) - s.Others));

    public bool IsRated => Array.TrueForAll(Stretches, s => s.Rating.Known);

    public double Ohms(double heating, bool warm) => FixedOhms + Stretches.Sum(s => Molten(s, s.CelsiusAt(heating, warm)));

    /// <summary>Volts that other circuits take in a shared return.</summary>
    public double OthersVolts(double heating, bool warm) =>
        OtherAmperes == 0 ? 0 : OtherAmperes * (SharedOhms + Stretches.Where(s => s.Others > 0).Sum(s => Molten(s, s.CelsiusAt(heating, warm))));

    private static double Molten(OwnStretch s, double celsius) => celsius > s.Wire.Melting ? double.PositiveInfinity : s.OhmsAt(celsius);

    private OwnStretch Make(StretchGiven s, double others, bool isReturn)
    {
        OwnWire wire = new(s.Conductor.Value, Given.Insulation.Value, Given.WallMillimeters);
        PlaceGiven place = s.Place ?? Given.Place;
        int n = Math.Max(place.Loaded ?? 0, own);
        BasisType basis = Given.Rules.Basis;
        return new(wire, s.Meters, s.Parallel, s.Celsius, OwnRating.Of(wire, basis, place, n, Source.NominalVolts), OwnRating.Physics(wire, basis, place, n), place, others, isReturn);
    }
}
