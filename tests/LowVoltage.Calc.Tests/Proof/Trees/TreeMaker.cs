using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Proof.Simulation;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>Random trees; each follows from the seed and its own number alone.</summary>
internal sealed partial class TreeMaker : Draws
{
    private readonly List<PartGiven> parts = [];
    private readonly List<TreeLoadGiven> loads = [];
    private readonly RulesGiven rules;
    private readonly Named<InsulationMaterial> insulation;
    private readonly SourceGiven source;
    private readonly double volts;
    private readonly double share;

    // Whether it is one that somebody might build: what is fitted is larger than needed, and made for its source.
    private readonly bool sensible;
    private int common = -1;
    private bool chassis;

    private TreeMaker(int seed, int number)
        : base(new Random(unchecked((seed * 486_187_739) + number + 7_000_003)))
    {
        sensible = Chance(0.7);
        rules = AnyRules();
        insulation = sensible && rules.Basis != BasisType.HeatBalance ? Insulations[0] : Pick(Insulations);
        share = sensible ? Wide(2, 8) : Wide(0.5, 8);
        source = AnySource(share * 6);
        volts = new OwnSource(source).NominalVolts;
    }

    public static TreeGiven Make(int seed, int number)
    {
        TreeMaker maker = new(seed, number);
        return maker.Build($"tree {seed} {number}");
    }

    private TreeGiven Build(string name)
    {
        int bus = Main();
        Grounds();
        int circuits = Random.Next(1, 5);
        for (int k = 0; k < circuits; k++)
        {
            Circuit(bus);
        }

        if (Chance(0.5))
        {
            int sub = Feeder(bus), more = Random.Next(1, 4);
            for (int k = 0; k < more; k++)
            {
                Circuit(sub);
            }
        }

        FitMains();
        int[] starts = [.. Enumerable.Range(0, loads.Count).Where(load => new OwnLoad(loads[load].Load).Surges)];
        int[][] together = starts.Length > 1 && Chance(0.3) ? [Chance(0.5) ? starts : [starts[0], starts[^1]]] : [];
        return new TreeGiven(name, source, rules, [.. parts], [.. loads]) { Together = together };
    }

    // The positive bus; −1 is the terminal. Ratings and sizes of what many share are fitted at the end.
    private int Main()
    {
        int at = -1;
        switch (Random.Next(10))
        {
            case < 2:
                return at;
            case 2 when !sensible || Chance(0.3):
                return Wire("lead", at, Wide(0.2, 3), bus: true);
            case < 6:
                return Fuse("main fuse", at, bus: true);
            default:
                at = Chance(0.3) ? Wire("lead", at, Wide(0.03, 0.3)) : at;
                return Wire("main wire", Fuse("main fuse", at), Wide(0.3, 5), bus: true);
        }
    }

    private void Grounds()
    {
        switch (Random.Next(4))
        {
            case 0:
                chassis = true;
                parts.Add(new PartGiven("chassis", -1, true) { Ohms = Wide(0.0003, 0.008), IsBus = true });
                common = parts.Count - 1;
                break;
            case 1:
                common = Wire("shared return", -1, Wide(0.3, 5), isReturn: true, bus: true);
                break;
        }
    }

    private int Feeder(int bus) => Wire("feeder", Fuse("feeder fuse", bus), Wide(0.5, 6), bus: true);

    private void Circuit(int bus)
    {
        int k = loads.Count, at = bus;
        at = Chance(sensible ? 0.98 : 0.9) ? Fuse($"fuse {k}", at) : at;
        int both = Chance(0.15) ? 2 : 1;
        at = both == 2 ? Wire($"splice wire {k}", at, Wide(0.3, 4), bus: true) : at;
        for (int n = 0; n < both; n++)
        {
            int load = loads.Count, plus = at, pieces = Chance(0.15) ? 2 : 1;
            for (int piece = 0; piece < pieces; piece++)
            {
                plus = Wire(piece == 0 ? $"wire {load}" : $"far wire {load}", plus, Wide(0.3, 6));
            }

            double amperes = Digits(share * Wide(0.3, 3));
            int minus = common;
            minus = common < 0 || Chance(chassis ? 0.5 : 0.85) ? Wire($"return {load}", common, Wide(0.3, 5), isReturn: true) : minus;
            loads.Add(new TreeLoadGiven($"load {load}", AnyLoad(amperes), plus, minus)
            {
                DropPercent = Chance(sensible ? 0.95 : 0.8) ? Wide(5, 25) : null,
                Starts = Chance(0.2) ? Pick(1, 100, 1000, 100_000) : null,
            });
        }
    }

    private int Wire(string id, int before, double meters, bool isReturn = false, bool bus = false)
    {
        parts.Add(new PartGiven(id, before, isReturn)
        {
            Wire = new StretchGiven(Sizes.Of(rules.Preset)[^1], Digits(meters), Chance(0.06) ? 2 : 1) { Place = AnyPlace() },
            Insulation = insulation,
            Ohms = Chance(0.2) ? Wide(0.0002, 0.005) : 0,
            IsBus = bus,
        });
        return parts.Count - 1;
    }

    private int Fuse(string id, int before, bool bus = false)
    {
        parts.Add(new PartGiven(id, before) { Fuse = AnyFuse(1), FuseAmbient = Chance(0.7) ? Math.Round(Even(20, 60)) : null, Ohms = Chance(0.5) ? Wide(0.0002, 0.004) : 0, IsBus = bus });
        return parts.Count - 1;
    }

    // A fuse by the sum of what it carries, a wire by the fuse before it, each with luck.
    private void FitMains()
    {
        for (int part = 0; part < parts.Count; part++)
        {
            double amperes = loads.Where(load => Passes(load, part)).Sum(load => Rough(load.Load));
            if (parts[part].IsFuse)
            {
                parts[part] = parts[part] with { Fuse = AnyFuse(Math.Max(0.3, amperes) * (sensible ? Wide(1.25, 3.5) : Wide(0.9, 3))) };
            }
            else if (parts[part].Wire is { } wire)
            {
                int fuse = parts[part].Before;
                while (fuse >= 0 && !parts[fuse].IsFuse)
                {
                    fuse = parts[fuse].Before;
                }

                double wanted = fuse >= 0 ? parts[fuse].Fuse!.Value.Current.Amperes : parts[part].IsReturn ? amperes * 2.5 : amperes * 1.5;
                parts[part] = parts[part] with { Wire = wire with { Conductor = Size(wanted * (sensible ? Wide(1.3, 4) : Wide(0.6, 1.6))) } };
            }
        }
    }

    private bool Passes(TreeLoadGiven load, int part)
    {
        for (int at = parts[part].IsReturn ? load.Minus : load.Plus; at >= 0; at = parts[at].Before)
        {
            if (at == part)
            {
                return true;
            }
        }

        return false;
    }

    private double Rough(LoadGiven load) => load.Type switch
    {
        LoadType.Power => load.A / load.B / volts * 1.1,
        LoadType.Lamp => load.A / load.B,
        LoadType.Resistance => volts / load.A * 1.1,
        LoadType.Together => load.Parts.Sum(Rough),
        _ => load.A,
    };

    // Some 5 A for each mm².
    private Named<Conductor> Size(double amperes)
    {
        Named<Conductor>[] sizes = Sizes.Of(rules.Preset);
        return sizes.FirstOrDefault(size => size.Value.Area.SquareMillimeters >= Math.Max(amperes / 5, 0.4)) ?? sizes[^1];
    }
}
