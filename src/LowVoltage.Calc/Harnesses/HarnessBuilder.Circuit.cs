using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <content>One circuit as a harness.</content>
public sealed partial class HarnessBuilder
{
    /// <summary>One circuit as a harness: for wires of unequal size, length or place side by side, which a path of segments cannot say.</summary>
    /// <param name="requirements">The circuit: source, supply lead, what protects it, load, joints, return. Its own length of feed and number of parallel wires are not used.</param>
    /// <param name="fuse">The circuit's fuse; <c>null</c> where there is none.</param>
    /// <param name="rules">The practice to check it by.</param>
    /// <param name="feed">The wires that lie side by side from the fuse to the load, at least one.</param>
    /// <returns>
    /// A builder with that circuit, to be added to or built. Nodes: <c>plus</c>, <c>minus</c>, <c>panel</c>, <c>fused</c>, <c>joints</c>, <c>load +</c>, <c>load −</c>; branches: <c>feed 1</c>, <c>feed 2</c> …,
    /// <c>return 1</c> …, <c>fuse</c>, <c>supply lead</c>, <c>main fuse</c>, <c>joints</c>, <c>chassis</c>; the load is <c>load</c>.
    /// </returns>
    /// <exception cref="ArgumentNullException">An argument, or one of the wires, is null.</exception>
    /// <exception cref="ArgumentException">There is no wire, the return is shared with other circuits: say those as a harness of your own; or a wire has a stated temperature (<see cref="Segment.WithTemperature"/>), which the wires of a harness have not: they are as warm as their current makes them.</exception>
    /// <remarks>
    /// The current divides by resistance, warmth included; <see cref="HarnessDesigner.Verify"/> then checks each wire for its own current, and the fuse against each wire alone, since one of them may come loose.
    /// All of them count as loaded conductors together. A return that is a wire like the feed is one for each wire of the feed, of the length that the requirements state. Of the supply lead the
    /// resistance counts and the fuses in it; its wires are not judged.
    /// </remarks>
    public static HarnessBuilder FromCircuit(CircuitRequirements requirements, FuseRating? fuse, DesignRules rules, params Segment[] feed)
    {
        _ = requirements ?? throw new ArgumentNullException(nameof(requirements));
        Segment[] wires = ReturnPath.Require(feed, nameof(feed));
        if (requirements.Return.IsShared)
        {
            throw new ArgumentException("requirements has a return that other circuits share; accepted is a return of its own: build a harness of them all.", nameof(requirements));
        }

        RefuseStated(wires, nameof(feed));
        RefuseStated(requirements.Return.Segments, nameof(requirements));
        HarnessBuilder builder = new HarnessBuilder(requirements.Name, rules).Terminals("plus", "minus", "load +", "load −").Source("source", "plus", "minus", requirements.Source);
        string at = builder.Lead(requirements);
        if (fuse is not null)
        {
            _ = builder.Terminals("fused").Add(HarnessFuse.Create("fuse", at, "fused", fuse).WithAmbient(Temperature.FromDegreesCelsius(requirements.FuseAmbientCelsius)));
            at = "fused";
        }

        if (requirements.JointsArray.Length > 0)
        {
            _ = builder.Terminals("joints").Resistance("joints", at, "joints", ElectricResistance.FromOhms(requirements.JointsArray.Sum(joint => joint.Ohms)));
            at = "joints";
        }

        int together = wires.Sum(wire => wire.Parallel) + BackWires(requirements.Return, wires);
        for (int k = 0; k < wires.Length; k++)
        {
            _ = builder.Add(Laid($"feed {k + 1}", at, "load +", wires[k], requirements, together));
        }

        builder.Back(requirements, wires, together);
        return builder.Add(HarnessLoad.Create("load", "load +", "load −", requirements.Load)
            .WithIntermittent(requirements.Intermittent).WithDropLimit(requirements.DropLimit).WithStarts(requirements.Starts));
    }

    private static void RefuseStated(IReadOnlyList<Segment> wires, string name)
    {
        for (int k = 0; k < wires.Count; k++)
        {
            if (wires[k].Temperature is not null)
            {
                throw new ArgumentException(
                    $"{name} has a wire with a stated temperature, {wires[k]}; accepted are wires that their own current warms: the warmth in a harness is solved. Verify the circuit as a path.", name);
            }
        }
    }

    // The resistance of the lead, cut where a fuse sits in it.
    private string Lead(CircuitRequirements requirements)
    {
        string at = "plus";
        double before = 0;
        int devices = requirements.ProtectionArray.Length;
        for (int k = 0; k < devices; k++)
        {
            UpstreamProtection device = requirements.ProtectionArray[k];
            double ohms = Math.Max(before, device.UpstreamOhms ?? before);
            string number = devices == 1 ? "" : $" {k + 1}", to = $"behind main fuse{number}";
            at = Resist($"supply lead to main fuse{number}", at, $"before main fuse{number}", ohms - before, k == 0 ? device.DistanceMeters : 0);
            _ = Terminals(to).Add(HarnessFuse.Create($"main fuse{number}", at, to, device.Rating).WithAmbient(device.Ambient));
            (at, before) = (to, ohms);
        }

        return Resist("supply lead", at, "panel", Math.Max(requirements.CountedLeadOhms, before) - before, devices == 0 ? requirements.FuseDistanceMeters : 0);
    }

    // A lead of no resistance is there too where its length is not known to be nothing: a rule may limit that.
    private string Resist(string id, string from, string to, double ohms, double? meters)
    {
        if (!(ohms > 0) && meters == 0)
        {
            return from;
        }

        HarnessResistance lead = HarnessResistance.Create(id, from, to, ElectricResistance.FromOhms(Math.Max(0, ohms)));
        _ = Terminals(to).Add(lead.WithLength(meters is { } known ? Length.FromMeters(known) : null));
        return to;
    }

    private static int BackWires(ReturnPath back, Segment[] feed) => back.Kind switch
    {
        ReturnKind.SameConductor => feed.Sum(wire => wire.Parallel),
        ReturnKind.Segments => back.Segments.Max(wire => wire.Parallel),
        _ => 0,
    };

    private void Back(CircuitRequirements requirements, Segment[] feed, int together)
    {
        ReturnPath back = requirements.Return;
        switch (back.Kind)
        {
            case ReturnKind.SameConductor:
                for (int k = 0; k < feed.Length; k++)
                {
                    _ = Add(Laid($"return {k + 1}", "load −", "minus", feed[k].Like(back.Meters, sameTemperature: true), requirements, together));
                }

                break;
            case ReturnKind.Segments:
                string from = "load −";
                for (int k = 0; k < back.Segments.Count; k++)
                {
                    string to = k == back.Segments.Count - 1 ? "minus" : $"return after {k + 1}";
                    _ = to == "minus" ? this : Terminals(to);
                    _ = Add(Laid($"return {k + 1}", from, to, back.Segments[k], requirements, together));
                    from = to;
                }

                break;
            default:
                _ = Chassis("chassis", "load −", "minus", ElectricResistance.FromOhms(back.Ohms));
                break;
        }
    }

    private static HarnessWire Laid(string id, string from, string to, Segment wire, CircuitRequirements requirements, int together)
    {
        Place place = wire.Place ?? requirements.Place;
        place = place.WithLoadedConductors(Math.Max(place.LoadedConductors ?? together, together));
        return HarnessWire.Create(id, from, to, wire.Conductor, wire.Length, place, wire.Wire?.Insulation ?? requirements.Insulation)
            .WithParallel(wire.Parallel).WithWallMillimeters(wire.Wire?.WallMillimeters ?? requirements.WallMillimeters);
    }
}
