using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Tests.Proof.Simulation;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A random circuit said twice: as a circuit with its path, and as a harness of one loop.</summary>
internal sealed record OneLoop(CircuitDesign Circuit, Harness Harness)
{
    /// <summary>The circuit of a seed and number; null where a harness cannot say it: a stated temperature, others in the return, sources with several limits in series.</summary>
    public static OneLoop? Draw(int seed, int number)
    {
        CaseGiven given = CaseMaker.Design(seed, number);
        if (given.Back.Type is BackType.SharedOhms or BackType.SharedSegments || given.Back.Stretches?.Any(s => s.Celsius is not null) == true)
        {
            return null;
        }

        double upstream = given.UpstreamOhms ?? 0;
        CircuitRequirements asked = new(Library.Requirements(given))
        {
            Upstream = ElectricResistance.FromOhms(upstream),
            FuseDistance = upstream > 0 ? null : Length.Zero,
            SheathedToFuse = false,
        };
        if (asked.Source.Numbers.Beyond is not null || asked.Source.MaximumVoltage.Volts > 60)
        {
            return null;
        }

        DesignRules rules = Library.Rules(given.Rules);
        CircuitDesign design = CircuitDesigner.Design(asked, rules);
        Segment feed = Segment.Create(design.Wire, asked.Feed);
        CircuitPath path = CircuitPath.Create(feed, asked.Return).WithFeedJoints([.. asked.Joints]);
        CircuitDesign verified = CircuitDesigner.Verify(asked, path, design.Fuse, rules);
        return new OneLoop(verified, Say(asked, path, design.Fuse, rules, upstream));
    }

    /// <summary>The lowest voltage at the load that runs, V, by the circuit; infinite where it does not.</summary>
    public double LeastLoadVolts => Circuit.State().Duty.Exists ? Circuit.State().Duty.LeastLoadVolts : double.PositiveInfinity;

    private static Harness Say(CircuitRequirements asked, CircuitPath path, FuseRating? fuse, DesignRules rules, double upstream)
    {
        HarnessBuilder builder = new HarnessBuilder("one loop", rules).Terminals("plus", "minus", "panel", "load +", "load −").Source("source", "plus", "minus", asked.Source);
        string at = "plus";
        if (upstream > 0)
        {
            _ = builder.Resistance("lead", "plus", "panel", ElectricResistance.FromOhms(upstream));
            at = "panel";
        }

        if (fuse is not null)
        {
            _ = builder.Terminals("fused").Add(HarnessFuse.Create("fuse", at, "fused", fuse).WithAmbient(asked.FuseAmbient ?? asked.Place.Ambient));
            at = "fused";
        }

        _ = builder.Add(Wire("feed", at, "load +", path.Feed[0], asked).WithJoints([.. path.FeedJoints]));
        string from = "load −";
        for (int k = 0; k < path.ReturnSegments.Count; k++)
        {
            string to = k == path.ReturnSegments.Count - 1 ? "minus" : $"on the way {k}";
            _ = to == "minus" ? builder : builder.Terminals(to);
            _ = builder.Add(Wire($"return {k}", from, to, path.ReturnSegments[k], asked));
            from = to;
        }

        if (path.ReturnSegments.Count == 0)
        {
            _ = builder.Chassis("chassis", from, "minus", ElectricResistance.FromOhms(path.Return.Ohms));
        }

        HarnessLoad load = HarnessLoad.Create("load", "load +", "load −", asked.Load).WithIntermittent(asked.Intermittent).WithDropLimit(asked.DropLimit).WithStarts(asked.Starts);
        return builder.Add(load).Build();
    }

    private static HarnessWire Wire(string id, string from, string to, Segment segment, CircuitRequirements asked) =>
        HarnessWire.Create(id, from, to, segment.Conductor, segment.Length, segment.Place ?? asked.Place, asked.Insulation).WithParallel(segment.Parallel).WithWall(asked.Wall);
}
