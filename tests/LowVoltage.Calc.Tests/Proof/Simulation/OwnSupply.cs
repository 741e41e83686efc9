using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>A main fuse before the circuit: where it sits, the lead behind it, what its maker says.</summary>
internal sealed record MainGiven(Named<FuseRating> Fuse, double? Before)
{
    /// <summary>The way out of the lead behind it; empty where it is not stated.</summary>
    public StretchGiven[] Feed { get; init; } = [];

    public BackGiven Back { get; init; } = new(BackType.Chassis);

    public double? LetThrough { get; init; }

    public double? Withstood { get; init; }

    public double? Melting { get; init; }

    public double? Meters { get; init; }

    public bool Sheathed { get; init; }

    public double? Ambient { get; init; }
}

/// <summary>The supply lead as a circuit of its own, and what a device in front lets through.</summary>
internal static class OwnSupply
{
    private const double Warm = 20;

    public static bool NothingBetween(CaseGiven given, int index) =>
        End(given, index) is { } end && given.Mains[index].Before is { } start && Math.Abs(end - start) <= 1e-12;

    private static double? End(CaseGiven given, int index) => index + 1 < given.Mains.Length ? given.Mains[index + 1].Before : given.UpstreamOhms;

    /// <summary>What the current of the circuit meets of the lead: as stated, or what its wires have, if that is more.</summary>
    public static double LeadOhms(CaseGiven given) => given.IsLead ? given.UpstreamOhms ?? 0 : Counted(given, given.UpstreamOhms, given.Mains.Length);

    private static double Counted(CaseGiven given, double? whole, int devices) =>
        whole is { } stated && Known(given, devices, hot: false) <= stated * (1 + 1e-9) ? stated : Math.Max(whole ?? 0, Known(given, devices, hot: true));

    // As far as the end of the lead behind some of the devices.
    private static double Known(CaseGiven given, int devices, bool hot)
    {
        double cold = 0, warm = 0;
        foreach (MainGiven main in given.Mains.Take(devices))
        {
            // A whole that is stated with no less than the wires have when cold says it all.
            double stated = main.Before ?? 0;
            bool whole = stated > 0 && cold <= stated * (1 + 1e-9);
            (cold, warm) = (Math.Max(cold, stated), whole ? stated : Math.Max(warm, stated));
            if (main.Feed.Length > 0)
            {
                cold += WireOhms(given, main);
                warm += WireOhms(given, main, hot: true);
            }
        }

        return hot ? warm : cold;
    }

    private static double WireOhms(CaseGiven given, MainGiven main, bool hot = false)
    {
        double celsius(StretchGiven s) => hot ? Math.Max(given.Insulation.Value.ContinuousLimit.DegreesCelsius, s.Celsius ?? 0) : Warm;
        StretchGiven[] home = main.Back.Type == BackType.Wire && main.Feed.Length > 0 ? [main.Feed[0] with { Meters = main.Back.Meters }] : main.Back.Stretches;
        return main.Feed.Concat(home).Sum(s => new OwnWire(s.Conductor.Value, given.Insulation.Value, given.WallMillimeters).OhmsAt(celsius(s)) * s.Meters / s.Parallel) + main.Back.Ohms;
    }

    public static OwnCircuit Lead(CaseGiven given, int index)
    {
        MainGiven main = given.Mains[index];
        double? end = End(given, index);
        double wire = WireOhms(given, main), start = Counted(given, main.Before, index);
        CaseGiven lead = given with
        {
            Laid = main.Feed,
            Back = main.Back,
            UpstreamOhms = main.Before,
            JointOhms = start - (main.Before ?? 0) + Math.Max(0, (end ?? 0) - start - wire),
            Load = new LoadGiven(LoadType.Current, main.Fuse.Value.Current.Amperes * given.Rules.Loading),
            Fitted = main.Fuse,
            Unfused = false,
            IsLead = true,
            Wire = null,
            Mains = [.. given.Mains.Take(index)],
        };
        return new OwnCircuit(lead, main.Feed.Length > 0 ? main.Feed[0].Conductor.Value : Sizes.Of(given.Rules.Preset)[^1].Value, main.Fuse.Value);
    }

    /// <summary>The most A²s by its longest times at any current between two; infinite where it need not open at one of them, NaN without times.</summary>
    public static double MostThrough(OwnFuse front, double least, double most)
    {
        if (!front.HasTimes)
        {
            return double.NaN;
        }

        double through = 0;
        for (int k = 0; k <= 200; k++)
        {
            double amperes = least * Math.Pow(most / least, k / 200.0);
            through = Math.Max(through, amperes * amperes * front.Longest(amperes));
        }

        return through;
    }

    /// <summary>IEC 60949, adiabatic: the A²s that take a stretch from where a fault finds it to its limit. Nothing is claimed where the load decides where it starts.</summary>
    public static double Bears(OwnStretch s)
    {
        double area = s.Wire.EffectiveArea * s.Parallel, from = s.StartCelsius(0);
        return !s.Wire.HasRoom ? double.PositiveInfinity : s.Wire.ShortCircuit <= from ? 0 : s.Wire.KSquared * area * area * Math.Log((s.Wire.ShortCircuit + s.Wire.Beta) / (from + s.Wire.Beta));
    }
}
