using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Conductors;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>The wires of a harness as the stretches that solver and checks know.</summary>
internal static class HarnessWires
{
    /// <summary>One for every branch; those of branches that are no wires are empty.</summary>
    internal static SegmentState[] StatesOf(Harness harness, LoadCase used)
    {
        int[] own = OwnConductors(harness);
        bool[] pulsed = Behind(harness, load => load.Load.HasStatedTimes), starts = Behind(harness, load => load.Load.HasStatedTimes && load.Load.Starts);
        SegmentState[] states = new SegmentState[harness.BranchArray.Length];
        for (int k = 0; k < states.Length; k++)
        {
            if (harness.BranchArray[k] is HarnessWire { Conductor: { } conductor } wire)
            {
                states[k] = Of(harness, wire, conductor, own[k], used);
                (states[k].IsPulsed, states[k].HasPulsedStarts) = (pulsed[k], starts[k]);
            }
        }

        return states;
    }

    internal static SegmentState Of(Harness harness, HarnessWire wire, Conductor conductor, int own, LoadCase used)
    {
        Place place = used.AmbientCelsius is { } celsius ? wire.Place.WithAmbient(Temperature.FromDegreesCelsius(celsius)) : wire.Place;
        SegmentState state = new()
        {
            Conductor = conductor,
            Meters = wire.Meters,
            Parallel = wire.Parallel,
            Name = StretchName.Of(wire.Id, wire.Meters, wire.Parallel, conductor),
            Site = new Site(place, wire.Insulation, wire.WallMillimeters, own, harness.NominalVolts).RatedBy(harness.Rules.Ampacity),
        };
        state.Rate();
        return state;
    }

    // Branches on the way of such a load, out or back; where several ways lead, of any.
    private static bool[] Behind(Harness harness, Predicate<HarnessLoad> those)
    {
        bool[] behind = new bool[harness.BranchArray.Length];
        if (!Array.Exists(harness.LoadArray, those))
        {
            return behind;
        }

        for (int k = 0; k < behind.Length; k++)
        {
            behind[k] = !harness.Graph.IsFedFromOneEnd(k, out _);
        }

        foreach (HarnessLoad load in harness.LoadArray.Where(load => those(load)))
        {
            foreach (int k in harness.Graph.WayFrom(harness.NodeIndex(load.Positive)).Branches.Concat(harness.Graph.WayFrom(harness.NodeIndex(load.Negative)).Branches))
            {
                behind[k] = true;
            }
        }

        return behind;
    }

    /// <summary>
    /// Conductors of the same circuit that run with a wire: those in parallel, and the ones of the way back where that is a wire of the same circuit.
    /// </summary>
    internal static int[] OwnConductors(Harness harness)
    {
        HarnessGraph graph = harness.Graph;
        int[] own = [.. harness.BranchArray.Select(b => b is HarnessWire wire ? wire.Parallel : 0)];
        HarnessZones zones = HarnessZones.Of(harness, graph);
        foreach (HarnessLoad load in harness.LoadArray)
        {
            int[] feed = zones.OwnWires(harness.NodeIndex(load.Positive)), back = zones.OwnWires(harness.NodeIndex(load.Negative));
            int together = Most(harness, feed) + Most(harness, back);
            foreach (int k in feed.Concat(back))
            {
                own[k] = Math.Max(own[k], together);
            }
        }

        return own;
    }

    private static int Most(Harness harness, int[] wires) => wires.Length == 0 ? 0 : wires.Max(k => ((HarnessWire)harness.BranchArray[k]).Parallel);
}
