using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>A tree with its own wires, fuses and loads, and which current passes what.</summary>
internal sealed class OwnTree
{
    private readonly RatingBand[] ratings;
    private readonly double[] physics;

    public OwnTree(TreeGiven given)
    {
        Given = given;
        Source = new OwnSource(given.Source);
        Loads = [.. given.Loads.Select(load => new OwnLoad(load.Load))];
        Ways = [.. given.Loads.Select(load => (int[])[.. WayTo(load.Plus), .. WayTo(load.Minus)])];
        Behind = [.. given.Parts.Select((_, part) => (int[])[.. Enumerable.Range(0, Ways.Length).Where(load => Ways[load].Contains(part))])];
        Fuses = [.. given.Parts.Select(part => part.Fuse is { } fuse ? new OwnFuse(fuse.Value) : null)];
        ratings = new RatingBand[given.Parts.Length];
        physics = new double[given.Parts.Length];
        Wires = new OwnStretch?[given.Parts.Length];
        for (int k = 0; k < Wires.Length; k++)
        {
            if (given.Parts[k] is { Wire: { } laid } part)
            {
                OwnWire wire = new(laid.Conductor.Value, part.Insulation!.Value, null);
                PlaceGiven place = laid.Place ?? new PlaceGiven();
                int n = Math.Max(place.Loaded ?? 0, Together(k));
                ratings[k] = OwnRating.Of(wire, given.Rules.Basis, place, n, Source.NominalVolts);
                physics[k] = OwnRating.Physics(wire, given.Rules.Basis, place, n);
                Wires[k] = Stretch(k, wire, 0);
            }
        }
    }

    public TreeGiven Given { get; }

    public OwnSource Source { get; }

    public OwnLoad[] Loads { get; }

    /// <summary>Of each load the parts that its current passes, out and back, from the terminals on.</summary>
    public int[][] Ways { get; }

    /// <summary>Of each part the loads whose current passes it.</summary>
    public int[][] Behind { get; }

    public OwnFuse?[] Fuses { get; }

    public OwnStretch?[] Wires { get; }

    /// <summary>The parts from the terminal to the end of a part.</summary>
    public int[] WayTo(int part)
    {
        List<int> way = [];
        for (int k = part; k >= 0; k = Given.Parts[k].Before)
        {
            way.Insert(0, k);
        }

        return [.. way];
    }

    /// <summary>The same wire with a current of others in it.</summary>
    public OwnStretch WithOthers(int part, double others) => others <= 0 ? Wires[part]! : Stretch(part, Wires[part]!.Wire, others);

    /// <summary>Ω of a part; NaN where a wire melts.</summary>
    public double Ohms(int part, double heating, bool warm) => Given.Parts[part].Ohms + (Wires[part] is { } wire ? Molten(wire, wire.CelsiusAt(heating, warm)) : 0);

    private static double Molten(OwnStretch wire, double celsius) => celsius > wire.Wire.Melting ? double.NaN : wire.OhmsAt(celsius);

    private OwnStretch Stretch(int k, OwnWire wire, double others)
    {
        StretchGiven laid = Given.Parts[k].Wire!;
        return new(wire, laid.Meters, laid.Parallel, laid.Celsius, ratings[k], physics[k], laid.Place ?? new PlaceGiven(), others, Given.Parts[k].IsReturn);
    }

    // Out and back of one load's own circuit lie together, as far as the next fuse; what several share lies by itself, unless its place says more.
    private int Together(int k)
    {
        int own = Given.Parts[k].Wire!.Parallel;
        foreach (TreeLoadGiven load in Given.Loads)
        {
            int[] feed = Alone(load.Plus), back = Alone(load.Minus);
            own = feed.Contains(k) || back.Contains(k) ? Math.Max(own, Most(feed) + Most(back)) : own;
        }

        return own;
    }

    private int[] Alone(int end) => [.. Enumerable.Reverse(WayTo(end)).TakeWhile(part => !Given.Parts[part].IsFuse && Behind[part].Length == 1)];

    private int Most(int[] way) => way.Select(part => Given.Parts[part].Wire?.Parallel ?? 0).DefaultIfEmpty(0).Max();
}
