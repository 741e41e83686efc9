using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Checks;

/// <summary>What is known of one circuit with this wire and fuse: what every check asks. Each quantity is found when first asked for and forgotten when wire or fuse changes.</summary>
/// <remarks>Works on doubles. One instance per call of the designer; not shared between threads. It never judges: that is the checks' work.</remarks>
internal sealed partial class BranchState
{
    /// <summary>A share of a limit that rounding may take.</summary>
    internal const double Rounding = 1e-9;

    private SegmentState[] stretches = null!;
    private double atFuse = double.NaN;
    private Known known;

    [Flags]
    private enum Known : byte
    {
        None = 0,
        Rated = 1,
        Duty = 2,
        Service = 4,
        Surges = 8,
        FarEnd = 16,
        Limits = 32,
    }

    internal required SourceNumbers Source { get; init; }

    internal required Load Load { get; set; }

    internal required AmpacityBasis Ampacity { get; init; }

    internal required DropLimit DropLimit { get; init; }

    internal required FusePractice Practice { get; init; }

    internal required double MinimumSquareMillimeters { get; init; }

    internal required Reference MinimumReference { get; init; }

    /// <summary>Where the circuit runs, unless a stretch says otherwise.</summary>
    internal required Site Site { get; init; }

    internal bool Intermittent { get; init; }

    internal double? UpstreamOhms { get; set; }

    internal double? FuseDistanceMeters { get; init; }

    internal bool SheathedToFuse { get; init; }

    /// <summary>Temperature of the air around the fuse, °C.</summary>
    internal required double FuseAmbientCelsius { get; init; }

    internal required int Starts { get; init; }

    /// <summary>Joints, supply lead, chassis and shared return, Ω: what does not warm up with this circuit's current.</summary>
    internal required double FixedOhms { get; init; }

    /// <summary>The part of it that is no shared stretch of wire, Ω.</summary>
    internal required double OwnFixedOhms { get; init; }

    /// <summary>The voltage that other circuits take in a shared return, V.</summary>
    internal double SharedVolts { get; init; }

    /// <summary>The part of it that they take in a stated resistance, V.</summary>
    internal double FixedSharedVolts { get; init; }

    /// <summary>Stretches that carry this circuit's current alone, then those that others share.</summary>
    internal required SegmentState[] Stretches
    {
        get => stretches;
        init => stretches = value;
    }

    /// <summary>How many of them, from the first on, are of the candidate: feed and return apart where wires lie in parallel.</summary>
    internal int CandidateCount { get; init; } = 1;

    /// <summary>How many of them are the circuit's own.</summary>
    internal required int OwnCount { get; init; }

    internal FuseRating? Fuse { get; private set; }

    /// <summary>What a network says where the branch is part of one; null for a circuit of its own.</summary>
    internal SolvedDuty? Solved { get; init; }

    /// <summary>Whether fuses on several sides feed it, so that none of them protects it alone.</summary>
    internal bool FedFromSeveralSides { get; init; }

    /// <summary>Whether a start reaches the load through other fuses too, so that only a part of it passes this one.</summary>
    internal bool StartDivides { get; init; }

    /// <summary>What is asked for: while the search looks for wire and fuse most numbers are read by nobody.</summary>
    internal AskedFor AskedFor { get; set; }

    /// <summary>Whether there is more than one stretch, so that a check must say which it is about.</summary>
    internal bool Several => stretches.Length > 1;

    /// <summary>Puts a candidate wire into the first stretch, or the first two.</summary>
    internal void SetCandidate(Conductor conductor)
    {
        if (ReferenceEquals(stretches[0].Conductor, conductor))
        {
            return;
        }

        for (int i = 0; i < CandidateCount; i++)
        {
            stretches[i].Conductor = conductor;
        }

        known = Known.None;
    }

    /// <summary>The same circuit with other lengths of the candidate, m: this object, which then says nothing of the former one.</summary>
    internal BranchState WithMeters(double feed, double back)
    {
        if (CandidateCount == 1)
        {
            stretches[0].Meters = feed + back;
        }
        else
        {
            stretches[0].Meters = feed;
            stretches[1].Meters = back;
        }

        known &= Known.Rated;
        return this;
    }

    /// <summary>The same circuit with another load: this object, which then says nothing of the former one.</summary>
    internal BranchState WithLoad(Load load)
    {
        Load = load;
        loadStart = null;
        known &= Known.Rated;
        return this;
    }

    internal void SetFuse(FuseRating? fuse)
    {
        if (ReferenceEquals(Fuse, fuse))
        {
            return;
        }

        Fuse = fuse;
        known &= ~Known.FarEnd;
    }

    /// <summary>Whether every stretch is rated.</summary>
    internal bool IsRated
    {
        get
        {
            Rate();
            for (int i = 0; i < stretches.Length; i++)
            {
                if (!stretches[i].IsRated)
                {
                    return false;
                }
            }

            return true;
        }
    }

    /// <summary>The continuous current of the weakest stretch, A, in a shared one what the others leave of it; zero when a stretch is not rated or the others fill it.</summary>
    internal double WeakestAmperes => WeakestStretch(out double amperes) < 0 ? 0 : amperes;

    /// <summary>The stretch that carries least, and what it carries.</summary>
    internal int WeakestStretch(out double amperes)
    {
        Rate();
        int weakest = -1;
        amperes = double.PositiveInfinity;
        for (int i = 0; i < stretches.Length; i++)
        {
            if (stretches[i].LeftAmperes < amperes)
            {
                weakest = i;
                amperes = stretches[i].LeftAmperes;
            }
        }

        return weakest;
    }

    /// <summary>What fuses and limited supplies at its ends let through continuously, A, where that bounds the current instead of the source; else null.</summary>
    internal double? LetThroughAmperes { get; init; }

    /// <summary>Greatest prospective current where the fuse sits, A; infinite behind a source without resistance.</summary>
    internal double AtFuseAmperes => LetThroughAmperes ?? (double.IsNaN(atFuse) ? atFuse = ProspectiveCurrent.GreatestAt(Source, UpstreamOhms ?? 0) : atFuse);

    /// <summary>The same, where a number is needed: the largest current that is accepted at all stands for an infinite one.</summary>
    internal double BoundedAtFuseAmperes => Math.Min(AtFuseAmperes, Accept.MostAmperes);

    /// <summary>Whether the supply cannot push more than the wire carries continuously: then nothing has to open.</summary>
    internal bool SupplyIsWeak => AtFuseAmperes <= WeakestAmperes;

    /// <summary>The source at its weakest. Others keep feeding their current into a shared return: it takes its part of the voltage in a fault too.</summary>
    internal SourceNumbers Weakest => SharedVolts == 0 ? Source : Source with { MinimumVolts = Math.Max(0, Source.MinimumVolts - SharedVolts) };

    /// <summary>Resistance of the whole path with every conductor as hot as it may be, Ω; no source.</summary>
    internal double HotPathOhms
    {
        get
        {
            double ohms = FixedOhms;
            for (int i = 0; i < OwnCount; i++)
            {
                ohms += stretches[i].OhmsAt(stretches[i].HotCelsius(HeatingAmperes));
            }

            return ohms;
        }
    }

    /// <summary>Resistance of the whole path as cool as it can be while the air is as hot as stated, Ω; no source.</summary>
    internal double CoolPathOhms
    {
        get
        {
            double ohms = FixedOhms;
            for (int i = 0; i < OwnCount; i++)
            {
                ohms += stretches[i].OhmsAt(stretches[i].CoolCelsius);
            }

            return ohms;
        }
    }

    /// <summary>What a check about one stretch calls it; null where there is only one.</summary>
    internal StretchName? NameOf(int stretch) => Several ? stretches[stretch].Name : null;

    private void Rate()
    {
        if ((known & Known.Rated) != 0)
        {
            return;
        }

        for (int i = 0; i < stretches.Length; i++)
        {
            stretches[i].Rate();
        }

        known |= Known.Rated;
    }
}
