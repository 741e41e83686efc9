using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>A source as terminal volts over current, at each supply level; the definitions of the batteries written out again.</summary>
/// <remarks>A supply that holds its current and is driven past it by another in series conducts at no volts.</remarks>
internal sealed class OwnSource
{
    public const double Unbounded = 1e7;

    private readonly double[] volts;
    private readonly double[] ohms;
    private readonly double held = double.PositiveInfinity;
    private readonly double trips = double.PositiveInfinity;
    private readonly OwnSource[] parts;
    private readonly bool parallel;
    private (double Volts, double Ohms)[][]? corners;

    public OwnSource(SourceGiven given)
    {
        parts = [.. given.Parts.Select(part => new OwnSource(part))];
        parallel = given.Type == SourceType.Parallel;
        switch (given.Type)
        {
            case SourceType.LeadAcid:
                // SAE J537: 7.2 V after 30 s from 12.6 V; warm and new 2.5 times less, aged 2 times more.
                double bound = (12.6 - 7.2) / given.A * given.B / given.C;
                volts = [11.89 * given.B, 12 * given.B, 14.4 * given.B];
                ohms = [2 * bound, bound, bound / 2.5];
                break;
            case SourceType.Lithium:
                double cell = given.A * 0.040 / given.B;
                volts = [2.5 * given.A, 3.2 * given.A, 3.65 * given.A];
                ohms = [2 * cell, cell, cell / 2];
                trips = double.IsNaN(given.C) ? double.PositiveInfinity : given.C;
                break;
            case SourceType.Range:
                volts = [given.A, given.B, given.C];
                ohms = [given.E, 0.5 * (given.D + given.E), given.D];
                break;
            case SourceType.Limited:
            case SourceType.Alternator:
                volts = [given.A, given.A, given.A];
                ohms = [0, 0, 0];
                held = given.B;
                break;
            default:
                volts = ohms = [];
                break;
        }
    }

    public double NominalVolts => Volts(SupplyLevel.Nominal, 0);

    public double MostVolts => Volts(SupplyLevel.Maximum, 0);

    /// <summary>The current that it holds where it is one supply, A; infinite where it holds none.</summary>
    public double HeldAmperes => held;

    /// <summary>Whether it or a part of it holds its current at a limit.</summary>
    public bool Holds => !double.IsInfinity(held) || Array.Exists(parts, part => part.Holds);

    public double Volts(SupplyLevel level, double amperes)
    {
        if (parts.Length == 0)
        {
            return amperes > held ? 0 : volts[(int)level] - (amperes * ohms[(int)level]);
        }

        if (!parallel)
        {
            return parts.Sum(part => part.Volts(level, amperes));
        }

        IEnumerable<double> corners = Corners(level).Select(line => line.Volts - (amperes * line.Ohms));
        return level == SupplyLevel.Minimum ? corners.Min() : corners.Max();
    }

    // Side by side each of them may be old or new for itself: a straight line for every choice of their resistances.
    private (double Volts, double Ohms)[] Corners(SupplyLevel level)
    {
        corners ??= [.. Enum.GetValues<SupplyLevel>().Select(at =>
        {
            (double Volts, double Ohms)[] own = [.. parts.Select(part => part.Straight(at))];
            double[] least = [.. parts.Select(part => part.Straight(SupplyLevel.Maximum).Ohms)], greatest = [.. parts.Select(part => part.Straight(SupplyLevel.Minimum).Ohms)];
            return at == SupplyLevel.Nominal ? [SideBySide(own)]
                : ((double Volts, double Ohms)[])[.. Enumerable.Range(0, 1 << parts.Length).Select(corner => SideBySide([.. own.Select((line, k) => (line.Volts, (corner >> k & 1) == 1 ? least[k] : greatest[k]))]))];
        })];
        return corners[(int)level];
    }

    private static (double Volts, double Ohms) SideBySide((double Volts, double Ohms)[] lines)
    {
        double siemens = lines.Sum(line => 1 / line.Ohms);
        return (lines.Sum(line => line.Volts / line.Ohms) / siemens, 1 / siemens);
    }

    /// <summary>Current into a resistance, A; <see cref="Unbounded"/> where nothing bounds it.</summary>
    public double Into(SupplyLevel level, double resistance, double opposing = 0)
    {
        double low = 0, high = Unbounded;
        if (Volts(level, high) - opposing > high * resistance)
        {
            return Unbounded;
        }

        for (int i = 0; i < 90; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Volts(level, middle) - opposing > middle * resistance ? (middle, high) : (low, middle);
        }

        return low;
    }

    /// <summary>The same, in one step where the source is straight or has one limit.</summary>
    public double Flow(SupplyLevel level, double resistance, double opposing)
    {
        if (parts.Length > 0 && (Holds || Array.Exists(parts, part => part.parallel)))
        {
            return Into(level, resistance, opposing);
        }

        if (parallel)
        {
            IEnumerable<double> flows = Corners(level).Select(line => Math.Max(0, line.Volts - opposing) / Math.Max(1e-12, line.Ohms + resistance));
            return level == SupplyLevel.Minimum ? flows.Min() : flows.Max();
        }

        (double e, double r) = parts.Length == 0 ? (volts[(int)level], ohms[(int)level]) : Straight(level);
        double free = Math.Max(0, e - opposing) / Math.Max(1e-12, r + resistance);
        return Math.Min(free, held);
    }

    /// <summary>Whether a current is one that it, or a part in series, only holds: its voltage is then what the load leaves of it.</summary>
    public bool OnlyHolds(double amperes, double share) => parts.Length == 0 ? amperes > held * share : !parallel && Array.Exists(parts, part => part.OnlyHolds(amperes, share));

    /// <summary>Whether any of its protections acts at a current, even if the others carry on.</summary>
    public bool AnyTrips(SupplyLevel level, double amperes, double share) => parts.Length == 0
        ? amperes > trips * share
        : Array.Exists(parts, part => part.AnyTrips(level, parallel ? (part.Straight(level).Volts - Volts(level, amperes)) / part.Straight(level).Ohms : amperes, share));

    /// <summary>Whether its protection takes it off at a current: every path through it is beyond its own limit, packs side by side one after the other.</summary>
    public bool Disconnects(SupplyLevel level, double amperes, double share = 1.02)
    {
        if (parts.Length == 0)
        {
            return amperes > trips * share;
        }

        if (!parallel)
        {
            return Array.Exists(parts, part => part.Disconnects(level, amperes, share));
        }

        List<OwnSource> on = [.. parts];
        while (on.Count > 0)
        {
            double siemens = on.Sum(part => 1 / part.Straight(level).Ohms), shorted = on.Sum(part => part.Straight(level).Volts / part.Straight(level).Ohms);
            double u = (shorted - amperes) / siemens;
            int gone = on.RemoveAll(part => part.Disconnects(level, (part.Straight(level).Volts - u) / part.Straight(level).Ohms, share));
            if (gone == 0)
            {
                return false;
            }
        }

        return true;
    }

    private (double Volts, double Ohms) Straight(SupplyLevel level)
    {
        // Apart by far less than any limit.
        double e = Volts(level, 0);
        return (e, (e - Volts(level, 1e-3)) / 1e-3);
    }
}
