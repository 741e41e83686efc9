using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>A piece of the way of a fault current: a part, and how much of it.</summary>
internal readonly record struct FaultPiece(int Part, double Share);

/// <summary>How a fault in a tree ended.</summary>
/// <param name="Seconds">Until the first fuse on its way has opened at the latest; infinite where none need open.</param>
/// <param name="Excess">Kelvins by which the hottest wire behind the fuse in question passed its short-circuit limit; negative when all stayed below.</param>
/// <param name="Before">The same of the wires before it.</param>
/// <param name="First">Current at the beginning, A.</param>
/// <param name="ByLast">Whether it was the last fuse on the way that opened.</param>
internal readonly record struct TreeFaultEnd(double Seconds, double Excess, double Before, double First, bool ByLast);

/// <summary>A fault in a tree stepped in time until some fuse on its way has opened at the latest; every wire on the way heats adiabatically.</summary>
internal sealed class TreeFault
{
    private const double MostSeconds = 30;

    private readonly OwnTree tree;
    private readonly FaultPiece[] way;
    private readonly double[] others;
    private readonly double[] celsius;
    private readonly TreeSupply supply;

    private TreeFault(OwnTree tree, SupplyLevel level, FaultPiece[] way, double[] others, double total, TreeFlow service)
    {
        this.tree = tree;
        this.way = way;
        this.others = others;
        celsius = [.. way.Select(piece => tree.Wires[piece.Part]?.StartCelsius(service.Heating[piece.Part]) ?? 20)];
        supply = TreeSupply.Of(tree, level, total, 0);
    }

    /// <summary>How it ends behind a fuse.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="level">Weakest source: minimum; strongest: maximum.</param>
    /// <param name="fuse">The last fuse on the way.</param>
    /// <param name="way">From the source to the fault and back.</param>
    /// <param name="service">Currents in service; those of the loads that are not behind the fuse flow on where <paramref name="othersFlow"/> says so.</param>
    /// <param name="othersFlow">Whether they do; a fault may leave the others no voltage.</param>
    public static TreeFaultEnd At(OwnTree tree, SupplyLevel level, int fuse, FaultPiece[] way, TreeFlow service, bool othersFlow)
    {
        int[] behind = tree.Behind[fuse];
        double others(int part) => othersFlow ? tree.Behind[part].Except(behind).Sum(load => service.Amperes[load]) : 0;
        double total = othersFlow ? service.Total - behind.Sum(load => service.Amperes[load]) : 0;
        return new TreeFault(tree, level, way, [.. way.Select(piece => others(piece.Part))], total, service).Run(tree.WayTo(fuse));
    }

    private TreeFaultEnd Run(int[] toFuse)
    {
        OwnFuse[] fuses = [.. toFuse.Select(part => tree.Fuses[part]).OfType<OwnFuse>()];
        double time = 0, joule = 0, first = Current();
        while (true)
        {
            double i = Current(), soonest = double.PositiveInfinity;
            foreach (OwnFuse fuse in fuses)
            {
                double longest = fuse.Longest(i + OthersIn(fuse));
                soonest = Math.Min(soonest, longest);
                if (fuse.IsBreaker ? time >= longest : joule >= i * i * longest)
                {
                    return new(time, Excess(toFuse.Length, way.Length), Excess(0, toFuse.Length), first, ReferenceEquals(fuse, fuses[^1]));
                }
            }

            if (double.IsInfinity(soonest) || double.IsPositiveInfinity(Excess(toFuse.Length, way.Length)) || time > MostSeconds)
            {
                return new(double.PositiveInfinity, double.PositiveInfinity, Excess(0, toFuse.Length), first, false);
            }

            double dt = Math.Min(soonest / 80, 8 / Fastest(i));
            for (int k = 0; k < way.Length; k++)
            {
                if (tree.Wires[way[k].Part] is { } wire)
                {
                    double middle = celsius[k] + (0.5 * dt * Rate(wire, k, celsius[k], i));
                    celsius[k] = Math.Min(celsius[k] + (dt * Rate(wire, k, middle, i)), wire.Wire.Melting);
                }
            }

            time += dt;
            joule += i * i * dt;
        }
    }

    // What flows beside the fault in a fuse before the last one only makes it open sooner.
    private double OthersIn(OwnFuse fuse) => others[Array.FindIndex(way, piece => ReferenceEquals(tree.Fuses[piece.Part], fuse))];

    private double Current()
    {
        double ohms = 0, opposing = 0;
        for (int k = 0; k < way.Length; k++)
        {
            double own = way[k].Share * (tree.Given.Parts[way[k].Part].Ohms + (tree.Wires[way[k].Part]?.OhmsAt(celsius[k]) ?? 0));
            ohms += own;
            opposing += own * others[k];
        }

        return supply.Flow(ohms, opposing);
    }

    private double Rate(OwnStretch wire, int k, double at, double amperes)
    {
        double each = (amperes + others[k]) / wire.Parallel;
        return each * each * wire.Wire.OhmsAt(at) / wire.Wire.HeatPerKelvin;
    }

    private double Fastest(double amperes)
    {
        double most = 1e-9;
        for (int k = 0; k < way.Length; k++)
        {
            most = tree.Wires[way[k].Part] is { } wire ? Math.Max(most, Rate(wire, k, celsius[k], amperes)) : most;
        }

        return most;
    }

    private double Excess(int from, int to)
    {
        double most = double.NegativeInfinity;
        for (int k = from; k < to; k++)
        {
            if (tree.Wires[way[k].Part] is { } wire)
            {
                most = celsius[k] >= wire.Wire.Melting ? double.PositiveInfinity : Math.Max(most, celsius[k] - wire.Wire.ShortCircuit);
            }
        }

        return most;
    }
}
