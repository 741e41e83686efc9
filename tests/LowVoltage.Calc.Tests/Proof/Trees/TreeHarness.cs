using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>The only place that names the library's harness: a plain tree goes in, what the library makes of each check comes out.</summary>
internal static class TreeHarness
{
    /// <summary>The tree as a harness.</summary>
    /// <param name="given">The tree.</param>
    /// <param name="sized">Whether with its wires and fuses; otherwise these are left to the design.</param>
    public static Harness Of(TreeGiven given, bool sized = true)
    {
        HarnessBuilder builder = new HarnessBuilder(given.Name, Library.Rules(given.Rules)).Terminals("plus", "minus").Source("source", "plus", "minus", Library.Source(given.Source));
        foreach (PartGiven part in given.Parts)
        {
            string end = EndOf(part), start = part.Before < 0 ? part.IsReturn ? "minus" : "plus" : EndOf(given.Parts[part.Before]);
            _ = !part.IsBus ? builder.Terminals(end) : part.IsReturn ? builder.Grounds(end) : builder.Busbars(end);
            _ = builder.Add(Branch(part, part.IsReturn ? end : start, part.IsReturn ? start : end, sized));
        }

        foreach (TreeLoadGiven load in given.Loads)
        {
            string plus = load.Plus < 0 ? "plus" : EndOf(given.Parts[load.Plus]), minus = load.Minus < 0 ? "minus" : EndOf(given.Parts[load.Minus]);
            DropLimit? limit = load.DropPercent is { } percent ? DropLimit.Percent(percent) : null;
            _ = builder.Add(HarnessLoad.Create(load.Id, plus, minus, Library.Load(load.Load)).WithIntermittent(load.Intermittent).WithDropLimit(limit).WithStarts(load.Starts));
        }

        if (given.Together.Length > 0)
        {
            _ = builder.Add(LoadCase.AllOn).Add([.. given.Together.Select((set, k) => LoadCase.Create($"together {k}").WithStarting([.. set.Select(load => given.Loads[load].Id)]))]);
        }

        return builder.Build();
    }

    /// <summary>The tree with the conductors and ratings that a design chose.</summary>
    public static TreeGiven With(TreeGiven given, Harness designed) => given with
    {
        Parts = [.. given.Parts.Select(part => designed.Branches.Single(b => b.Id == part.Id) switch
        {
            HarnessWire wire => part with { Wire = part.Wire! with { Conductor = new(wire.Conductor!.ToString(), wire.Conductor) } },
            HarnessFuse fuse => part with { Fuse = new(fuse.Rating!.ToString(), fuse.Rating) },
            _ => part,
        })],
    };

    private static HarnessBranch Branch(PartGiven part, string from, string to, bool sized)
    {
        ElectricResistance ohms = ElectricResistance.FromOhms(part.Ohms);
        if (part.Fuse is { } fuse)
        {
            Temperature? ambient = part.FuseAmbient is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;
            return HarnessFuse.Create(part.Id, from, to, sized ? fuse.Value : null).WithResistance(ohms).WithAmbient(ambient);
        }

        if (part.Wire is not { } wire)
        {
            return HarnessResistance.Chassis(part.Id, from, to, ohms);
        }

        HarnessWire laid = HarnessWire.Create(
            part.Id, from, to, sized ? wire.Conductor.Value : null, Length.FromMeters(wire.Meters), Library.Place(wire.Place ?? new PlaceGiven()), part.Insulation!.Value).WithParallel(wire.Parallel);
        return part.Ohms > 0 ? laid.WithJoints(Joint.Create("joints", ohms)) : laid;
    }

    private static string EndOf(PartGiven part) => $"end of {part.Id}";
}
