using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Lays parts of a solved harness out as the branches that the checks ask.</summary>
internal sealed partial class HarnessBranches
{
    // Enough to keep the arithmetic alive where others leave a fault no voltage; every check then fails by itself.
    private const double LeastVolts = 1e-6;

    /// <summary>Stands where what is asked does not ask the load.</summary>
    internal static readonly Load AnyLoad = Load.ConstantCurrent(ElectricCurrent.FromAmperes(1));

    private readonly CaseDuty duty;
    private readonly FeedingSource feeding;
    private readonly bool[] delivers;
    private readonly double[] loadHeat;
    private readonly double[] sumHeat;

    // What each load's current passes, there and back.
    private readonly int[][] ways;

    // Of the loads behind one fuse, while that is laid out; zero otherwise.
    private readonly double[] behindHeat;

    internal HarnessBranches(CaseDuty duty)
    {
        this.duty = duty;
        feeding = new FeedingSource(duty);
        Harness harness = duty.Harness;
        loadHeat = new double[harness.LoadArray.Length];
        LoadDuties = new WireDuty[loadHeat.Length];
        sumHeat = new double[harness.BranchArray.Length];
        behindHeat = new double[sumHeat.Length];
        ways = [.. harness.LoadArray.Select(load => (int[])[.. duty.Graph.WayFrom(harness.NodeIndex(load.Positive)).Branches, .. duty.Graph.WayFrom(harness.NodeIndex(load.Negative)).Branches])];
        for (int k = 0; k < loadHeat.Length; k++)
        {
            WireDuty of = LoadDuties[k] = DutyOf(k);
            loadHeat[k] = of.Exists ? of.HeatingAmperes : 0;
            AddHeat(sumHeat, k);
        }

        delivers = [.. Enumerable.Repeat(duty.Exists, sumHeat.Length)];
        foreach (int k in Enumerable.Range(0, loadHeat.Length).Where(k => !LoadDuties[k].Exists && duty.IsOn(k)))
        {
            foreach (int branch in ways[k])
            {
                delivers[branch] = false;
            }
        }
    }

    /// <summary>What each load sees over the supply levels.</summary>
    internal WireDuty[] LoadDuties { get; }

    private Harness Harness => duty.Harness;

    /// <summary>Ω of a branch as cool as it can be.</summary>
    internal double CoolOhms(int branch) => feeding.CoolOhms(branch);

    /// <summary>One wire by itself.</summary>
    internal BranchState OfWire(int branch, bool fedFromSeveralSides = false)
    {
        SegmentState wire = duty.WireOf(branch);
        WireDuty of = new() { Exists = delivers[branch], OnAmperes = duty.On[branch], OnLevel = duty.OnLevel[branch], HeatingAmperes = duty.Heat[branch], Level = duty.HeatLevel[branch] };
        return New(AnySource(), AnyLoad, wire.Site, [wire], 1, new SolvedDuty { Duty = of, Heating = [duty.Heat[branch]] }, fedFromSeveralSides: fedFromSeveralSides);
    }

    /// <summary>Whether a branch lies between sources or in a ring.</summary>
    internal bool IsTie(int branch) => !duty.Graph.IsFedFromOneEnd(branch, out _) && duty.On[branch] > 0;

    /// <summary>A wire between sources or in a ring, by what the fuses and supplies at its ends let through.</summary>
    internal BranchState OfTie(int branch, Conductors.Conductor? conductor = null)
    {
        LetThrough one = LetThrough.At(duty, branch, duty.Graph.From[branch]), other = LetThrough.At(duty, branch, duty.Graph.To[branch]);
        bool back = one.IsReturn || other.IsReturn, apart = !one.Nodes.Overlaps(other.Nodes);

        // On the way back all of it comes through either end; a short on a way out is fed from each end by itself.
        double amperes = back && apart ? Math.Min(one.Amperes, other.Amperes) : Math.Max(one.Amperes, other.Amperes);
        SegmentState wire = duty.WireOf(branch);
        wire.Conductor = conductor ?? wire.Conductor;
        wire.Rate();
        WireDuty of = new() { Exists = true, HeatingAmperes = duty.Heat[branch], Level = duty.HeatLevel[branch] };
        return New(
            AnySource(), AnyLoad, wire.Site, [wire], 1, new SolvedDuty { Duty = of, Heating = [duty.Heat[branch]] }, fedFromSeveralSides: true,
            letThrough: back || (one.Fuses.Length <= 1 && other.Fuses.Length <= 1) ? amperes : double.PositiveInfinity);
    }

    /// <summary>The same behind the one fuse at one of its ends, for a short at its other end; null where there is not just one.</summary>
    internal (BranchState State, string Fuse)? OfTieFuse(int branch, int node)
    {
        LetThrough end = LetThrough.At(duty, branch, node);
        if (end.IsReturn || end.Fuses.Length != 1 || double.IsInfinity(end.Amperes))
        {
            return null;
        }

        HarnessFuse fuse = (HarnessFuse)Harness.BranchArray[end.Fuses[0]];
        int outer = end.Nodes.Contains(duty.Graph.From[end.Fuses[0]]) ? duty.Graph.To[end.Fuses[0]] : duty.Graph.From[end.Fuses[0]];
        if (feeding.Between(outer, Harness.NodeIndex(Harness.Reference)) is not { } source)
        {
            return null;
        }

        SegmentState wire = duty.WireOf(branch);
        WireDuty of = new() { Exists = true, HeatingAmperes = duty.Heat[branch], Level = duty.HeatLevel[branch], OnAmperes = duty.On[branch] };
        BranchState at = New(
            source, AnyLoad, wire.Site, [wire], 1, new SolvedDuty { Duty = of, Heating = [duty.Heat[branch]] }, fuseAmbient: fuse.AmbientCelsius ?? wire.Site.AmbientCelsius);
        at.SetFuse(fuse.Rating);
        return (at, fuse.Id);
    }

    /// <summary>One wire by itself in another conductor, behind a fuse.</summary>
    internal BranchState OfCandidate(int branch, Conductors.Conductor conductor, HarnessFuse? fuse)
    {
        SegmentState wire = duty.WireOf(branch);
        wire.Conductor = conductor;
        wire.Rate();
        WireDuty of = new() { Exists = true, OnAmperes = duty.On[branch], OnLevel = duty.OnLevel[branch], HeatingAmperes = duty.Heat[branch], Level = duty.HeatLevel[branch] };
        BranchState at = New(
            AnySource(), AnyLoad, wire.Site, [wire], 1, new SolvedDuty { Duty = of, Heating = [duty.Heat[branch]] }, fuseAmbient: fuse?.AmbientCelsius ?? wire.Site.AmbientCelsius);
        at.SetFuse(fuse?.Rating);
        return at;
    }

    /// <summary>Ω of a wire in another conductor, without its joints, as warm as its r.m.s. current would make it.</summary>
    internal double OhmsOfCandidate(int branch, Conductors.Conductor conductor)
    {
        SegmentState wire = duty.WireOf(branch);
        wire.Conductor = conductor;
        wire.Rate();
        return wire.OhmsAt(wire.CelsiusAt(duty.Heat[branch]));
    }

    /// <summary>A load with the way to it and back, for what is asked of the load.</summary>
    internal BranchState OfLoad(ZoneEnd end, in WireDuty of, LoopPoint[] starts)
    {
        SegmentState[] stretches = [.. end.Path.Concat(end.Back).Where(IsWire).Select(duty.WireOf)];
        HarnessLoad load = Harness.LoadArray[end.Load];
        SourceNumbers source = feeding.Single(end.Feed, end.Return) is >= 0 and int k ? Harness.SourceArray[k].Source!.Numbers : AnySource();
        Site site = stretches.Length > 0 ? stretches[0].Site : AnySite();
        SolvedDuty solved = new() { Duty = of, Heating = new double[stretches.Length], Starts = starts };
        return New(source, load.Load, site, stretches, stretches.Length, solved, dropLimit: load.DropLimit, intermittent: load.Intermittent);
    }

    /// <summary>A fuse with the way to one end of its zone and back; null where what feeds it cannot be told.</summary>
    internal BranchState? OfFuse(StartLoads start) => OfFuse(start.End, start.Load, start.Starts, start.ApartOhms);

    /// <summary>The same with what lies beside it, Ω.</summary>
    internal BranchState? OfFuse(ZoneEnd end, Load load, int starts, double apartOhms = 0)
    {
        int single = feeding.Single(end.Feed, end.Return);
        if ((single >= 0 ? Harness.SourceArray[single].Source!.Numbers : feeding.Between(end.Feed.EndNode, end.Return.EndNode)) is not { } source)
        {
            return null;
        }

        // A start is met by what is cool: no wire on its way counts as warmed by others.
        if (end.IsOfStart)
        {
            return OfFuse(end, load, starts, single, source, sumHeat, apartOhms);
        }

        foreach (int k in end.Behind)
        {
            AddHeat(behindHeat, k);
        }

        BranchState state = OfFuse(end, load, starts, single, source, behindHeat, apartOhms);
        foreach (int k in end.Behind)
        {
            foreach (int branch in ways[k])
            {
                behindHeat[branch] = 0;
            }
        }

        return state;
    }

    private BranchState OfFuse(ZoneEnd end, Load load, int starts, int single, in SourceNumbers source, double[] behind, double apartOhms)
    {
        (SegmentState[] stretches, int own, double[] heating) = Stretches(end, behind);
        Site site = stretches.Length > 0 ? stretches[0].Site : SiteBeside(end.Fuse);
        (double fixedOhms, double fixedVolts) = Fixed(end, behind);
        fixedOhms += apartOhms;
        (double sharedOhms, double sharedVolts) = Shared(stretches, own);
        HarnessFuse? fuse = end.Fuse >= 0 ? (HarnessFuse)Harness.BranchArray[end.Fuse] : null;
        WireDuty of = Carried(end);
        BranchState at = New(
            Before(source, single >= 0, end, behind), load, site, stretches, own, new SolvedDuty { Duty = of, Heating = heating },
            fixedOhms: fixedOhms + sharedOhms, ownFixedOhms: fixedOhms, sharedVolts: sharedVolts + fixedVolts, fixedSharedVolts: fixedVolts,
            fuseDistance: Unprotected(end.Upstream, end.Feed.End), fuseAmbient: fuse?.AmbientCelsius ?? site.AmbientCelsius, starts: starts,
            fedFromSeveralSides: single < 0 && fuse is null && !ReachesSource(end.Feed.EndNode));
        at.SetFuse(fuse?.Rating);
        return at;
    }

    // What passes the fuse, or without one the path's own load.
    private WireDuty Carried(ZoneEnd end)
    {
        WireDuty of = end.Load >= 0 ? LoadDuties[end.Load] : new WireDuty { Exists = duty.Exists };
        return end.Fuse >= 0 ? duty.DutyOfBranch(end.Fuse, of) : of;
    }

    private void AddHeat(double[] sums, int load)
    {
        foreach (int k in ways[load])
        {
            sums[k] += loadHeat[load];
        }
    }

    // A load that gets nothing and is alone on its way is told with the numbers of a circuit: how much power could come through.
    private WireDuty DutyOf(int load)
    {
        WireDuty of = duty.DutyOf(load);
        if (of.Exists || !duty.IsOn(load) || !ways[load].All(k => duty.Zones.LoadsBehind(k) == 1))
        {
            return of;
        }

        HarnessLoad at = Harness.LoadArray[load];
        FeedWay feed = duty.Graph.WayFrom(Harness.NodeIndex(at.Positive)), back = duty.Graph.WayFrom(Harness.NodeIndex(at.Negative));
        SegmentState[] stretches = [.. ways[load].Where(IsWire).Select(duty.WireOf)];
        if (feeding.Single(feed, back) is not (>= 0 and int k) || stretches.Length == 0)
        {
            return of;
        }

        double fixedOhms = ways[load].Sum(b => Harness.BranchArray[b].FixedOhms);
        BranchState alone = New(Harness.SourceArray[k].Source!.Numbers, at.Load, stretches[0].Site, stretches, stretches.Length, null, fixedOhms: fixedOhms, ownFixedOhms: fixedOhms);
        return alone.Duty.Exists ? of : alone.Duty;
    }

    private bool IsWire(int branch) => Harness.BranchArray[branch] is HarnessWire;

    private SourceNumbers AnySource()
    {
        SourceNumbers? any = Array.Find(Harness.SourceArray, s => s.Source is not null)?.Source!.Numbers;
        return any ?? new SourceNumbers(Harness.NominalVolts, Harness.NominalVolts, Harness.NominalVolts, 1, 1, 1);
    }

    private Site AnySite()
    {
        HarnessWire? any = Harness.BranchArray.OfType<HarnessWire>().FirstOrDefault();
        return any is null
            ? new Site(Conductors.Place.Create(Temperature.FromDegreesCelsius(20)), Conductors.InsulationMaterial.PolyvinylChloride, null, 1, Harness.NominalVolts).RatedBy(Harness.Rules.Ampacity)
            : new Site(any.Place, any.Insulation, any.WallMillimeters, 1, Harness.NominalVolts).RatedBy(Harness.Rules.Ampacity);
    }

    private BranchState New(
        SourceNumbers source, Load load, Site site, SegmentState[] stretches, int own, SolvedDuty? solved, DropLimit? dropLimit = null, bool intermittent = false, double fixedOhms = 0, double ownFixedOhms = 0,
        double sharedVolts = 0, double fixedSharedVolts = 0, double? fuseDistance = null, double fuseAmbient = 20, int starts = CircuitRequirements.UsualStarts, bool fedFromSeveralSides = false, double? letThrough = null,
        bool startDivides = false)
    {
        DesignRules rules = Harness.Rules;
        return new BranchState
        {
            Source = source,
            Load = load,
            Ampacity = rules.Ampacity,
            DropLimit = dropLimit ?? rules.DropLimit,
            Practice = rules.FusePractice,
            MinimumSquareMillimeters = rules.MinimumSquareMillimeters,
            MinimumReference = rules.MinimumSectionReference,
            Site = site,
            Intermittent = intermittent,
            UpstreamOhms = 0,
            FuseDistanceMeters = fuseDistance,
            FuseAmbientCelsius = fuseAmbient,
            Starts = starts,
            FixedOhms = fixedOhms,
            OwnFixedOhms = ownFixedOhms,
            SharedVolts = sharedVolts,
            FixedSharedVolts = fixedSharedVolts,
            Stretches = stretches,
            OwnCount = own,
            Solved = solved,
            FedFromSeveralSides = fedFromSeveralSides,
            LetThroughAmperes = letThrough,
            StartDivides = startDivides,
        };
    }
}
