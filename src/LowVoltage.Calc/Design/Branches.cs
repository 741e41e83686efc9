using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc.Design;

/// <summary>Lays requirements, or existing wiring, out as the branch that the checks ask.</summary>
internal static class Branches
{
    /// <summary>
    /// For a design: the first stretch is the candidate, feed and wire return together; a return of its own follows. Wires in parallel are a stretch each way: a fault in one
    /// of them meets the wires of that way only.
    /// </summary>
    internal static BranchState ForCandidate(CircuitRequirements asked, DesignRules rules)
    {
        ReturnPath back = asked.Return;
        int wires = asked.ParallelWires.Least;
        Site site = Main(asked, rules, OwnConductors(asked));
        bool apart = back.Kind == ReturnKind.SameConductor && wires > 1;
        SegmentState[] stretches = new SegmentState[apart ? 2 : back.Segments.Count + 1];
        stretches[0] = new SegmentState
        {
            Meters = asked.FeedMeters + (apart ? 0 : back.Meters), Parallel = wires, Site = site, Name = StretchName.Feed,
        };
        for (int i = 1; i < stretches.Length; i++)
        {
            stretches[i] = apart
                ? new SegmentState { Meters = back.Meters, Parallel = wires, Site = site, Name = StretchName.Return }
                : Stretch(back.Segments[i - 1], back.IsShared ? "shared return" : "return", asked, rules, site);
        }

        return State(asked, rules, site, stretches, back, OhmsOf(asked.JointsArray), SupplyStages.Of(asked, rules), apart ? 2 : 1);
    }

    /// <summary>For existing wiring.</summary>
    internal static BranchState ForPath(CircuitRequirements asked, DesignRules rules, CircuitPath path)
    {
        Site site = Main(asked, rules, OwnConductors(path));
        List<SegmentState> stretches = [.. path.FeedArray.Select(s => Stretch(s, "feed", asked, rules, site))];
        stretches.AddRange(path.BackArray.Select(s => Stretch(s, path.Return.IsShared ? "shared return" : "return", asked, rules, site)));
        return State(asked, rules, site, [.. stretches], path.Return, OhmsOf(path.FeedJoints) + OhmsOf(path.ReturnJoints), SupplyStages.Of(asked, rules));
    }

    /// <summary>For a part of the supply lead: its wire, with what else lies between the source and its end.</summary>
    /// <param name="asked">The circuit with the lead's own load, place of the fuse and resistance before it.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="lead">The wire; null where none is stated.</param>
    /// <param name="amperes">What it carries in service, A. That is told, not solved: a source that does not bring it to a load at the end still warms the lead.</param>
    /// <param name="otherOhms">What lies before its end besides the resistance before the device and the wire, Ω.</param>
    /// <param name="before">The devices before it.</param>
    internal static BranchState ForLead(CircuitRequirements asked, DesignRules rules, CircuitPath? lead, double amperes, double otherOhms, SupplyStage[] before)
    {
        Site site = Main(asked, rules, lead is null ? 1 : OwnConductors(lead));
        SegmentState[] stretches = lead is null
            ? []
            : [.. lead.FeedArray.Select(s => Stretch(s, "supply lead", asked, rules, site)), .. lead.BackArray.Select(s => Stretch(s, lead.Return.IsShared ? "shared return of the supply lead" : "return of the supply lead", asked, rules, site))];
        double joints = lead is null ? 0 : OhmsOf(lead.FeedJoints) + OhmsOf(lead.ReturnJoints);
        return State(asked, rules, site, stretches, lead?.Return ?? ReturnPath.Chassis(ElectricResistance.Zero), joints + otherOhms, before, amperes: amperes);
    }

    /// <summary>Loaded conductors of a circuit to be designed: those of the candidate, and those of a return of its own.</summary>
    internal static int OwnConductors(CircuitRequirements asked) => asked.ParallelWires.Least + asked.Return.Kind switch
    {
        ReturnKind.SameConductor => asked.ParallelWires.Least,
        ReturnKind.Segments or ReturnKind.SharedSegments => Most([.. asked.Return.Segments]),
        _ => 0,
    };

    /// <summary>Wires laid in parallel are loaded conductors of the bundle too.</summary>
    internal static int OwnConductors(CircuitPath path) => Most(path.FeedArray) + Most(path.BackArray);

    /// <summary>The path with a candidate wire, supply lead included, each stretch with the temperature model that its rating gives.</summary>
    internal static CircuitPath PathWith(CircuitRequirements asked, BranchState at, Conductor wire) =>
        Rated(asked, at, CircuitPath.Create(Segment.Create(wire, Length.FromMeters(asked.FeedMeters), asked.ParallelWires.Least), asked.Return).WithFeedJoints([.. asked.Joints]));

    /// <summary>A path, supply lead included, each stretch with the temperature model that its rating gives: the circuit that the checks are about.</summary>
    internal static CircuitPath Rated(CircuitRequirements asked, BranchState at, CircuitPath path)
    {
        if (asked.CountedLeadOhms is > 0 and double ohms)
        {
            path = path.WithFeedJoints(Joint.Create("supply lead", ElectricResistance.FromOhms(ohms)));
        }

        _ = at.IsRated;
        int last = at.Stretches.Length - 1, next = 0;
        Segment[] feed = [.. path.FeedArray.Select(segment => Warm(segment, at.Stretches[Math.Min(next++, last)]))];
        Segment[] back = [.. path.BackArray.Select(segment => Warm(segment, at.Stretches[Math.Min(next++, last)]))];
        ReturnPath returning = path.Return.Kind switch
        {
            ReturnKind.SameConductor or ReturnKind.Segments => ReturnPath.Wire(back),
            ReturnKind.SharedSegments => ReturnPath.Shared(back, path.Return.OtherCurrent),
            _ => path.Return,
        };
        return CircuitPath.Create(feed, returning).WithFeedJoints([.. path.FeedJoints]).WithReturnJoints([.. path.ReturnJoints]);
    }

    private static Segment Warm(Segment segment, in SegmentState s) => segment.Temperature is not null ? segment : segment.WithTemperature(
        s.OtherAmperes == 0 && s.IsRated && s.RiseKelvins > 0
            ? ConductorTemperature.SelfHeated(
                Temperature.FromDegreesCelsius(s.BaseCelsius), ElectricCurrent.FromAmperes(s.RatedAmperes / s.Parallel), Temperature.FromDegreesCelsius(s.BaseCelsius + s.RiseKelvins))
            : ConductorTemperature.At(Temperature.FromDegreesCelsius(s.OtherAmperes == 0 && s.IsRated ? s.BaseCelsius : s.UnratedCelsius)));

    private static Site Main(CircuitRequirements asked, DesignRules rules, int ownConductors) =>
        new Site(asked.Place, asked.Insulation, asked.WallMillimeters, ownConductors, asked.Source.Numbers.NominalVolts).RatedBy(rules.Ampacity);

    private static SegmentState Stretch(Segment segment, string part, CircuitRequirements asked, DesignRules rules, Site main) => new()
    {
        Conductor = segment.Conductor,
        Meters = segment.Meters,
        Parallel = segment.Parallel,
        Stated = segment.Temperature,
        Name = StretchName.Of(part, segment),
        Site = segment.Place is null && segment.Wire is null ? main : new Site(
            segment.Place ?? asked.Place, segment.Wire?.Insulation ?? asked.Insulation, segment.Wire?.WallMillimeters ?? asked.WallMillimeters, main.OwnConductors, main.CircuitVolts).RatedBy(rules.Ampacity),
    };

    private static BranchState State(CircuitRequirements asked, DesignRules rules, Site site, SegmentState[] stretches, ReturnPath back, double jointOhms, SupplyStage[] supply, int candidates = 1, double? amperes = null)
    {
        int own = back.Kind == ReturnKind.SharedSegments ? stretches.Length - back.Segments.Count : stretches.Length;
        double others = back.OtherAmperes, sharedWires = 0, stated = back.Ohms;
        for (int i = own; i < stretches.Length; i++)
        {
            stretches[i].OtherAmperes = others;
            sharedWires += stretches[i].OhmsAt(stretches[i].HotCelsius(others));
        }

        double fixedOhms = jointOhms + asked.CountedLeadOhms + stated;
        return new BranchState
        {
            Source = asked.Source.Numbers,
            Load = asked.Load,
            Ampacity = rules.Ampacity,
            DropLimit = asked.DropLimit ?? rules.DropLimit,
            Practice = rules.FusePractice,
            MinimumSquareMillimeters = rules.MinimumSquareMillimeters,
            MinimumReference = rules.MinimumSectionReference,
            Site = site,
            Intermittent = asked.Intermittent,
            UpstreamOhms = asked.UpstreamOhms,
            FuseDistanceMeters = asked.FuseDistanceMeters,
            SheathedToFuse = asked.SheathedToFuse,
            FuseAmbientCelsius = asked.FuseAmbientCelsius,
            Starts = asked.CountedStarts,
            OwnFixedOhms = fixedOhms,
            FixedOhms = fixedOhms + sharedWires,
            SharedVolts = (sharedWires + stated) * others,
            FixedSharedVolts = stated * others,
            Stretches = stretches,
            Supply = supply,
            OwnCount = own,
            CandidateCount = candidates,
            Solved = amperes is { } told ? Told(told, stretches) : null,
        };
    }

    private static SolvedDuty Told(double amperes, SegmentState[] stretches) => new()
    {
        Duty = new WireDuty { Exists = true, Level = SupplyLevel.Minimum, OnAmperes = amperes, OnLevel = SupplyLevel.Minimum, HeatingAmperes = amperes },
        Heating = [.. stretches.Select(s => amperes + s.OtherAmperes)],
    };

    private static double OhmsOf(IReadOnlyList<Joint> joints)
    {
        double ohms = 0;
        for (int i = 0; i < joints.Count; i++)
        {
            ohms += joints[i].Ohms;
        }

        return ohms;
    }

    private static int Most(Segment[] segments)
    {
        int most = 0;
        foreach (Segment segment in segments)
        {
            most = Math.Max(most, segment.Parallel);
        }

        return most;
    }
}
