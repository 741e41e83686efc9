using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Networks;

/// <summary>Sources side by side on common terminals: what each of them gives at a load, one charging another included.</summary>
/// <remarks>
/// <code>Ik = (Vk − U)/Rk, at most its limit    Σ Ik = I</code>
/// <para><b>Symbols.</b> U voltage of the terminals, Vk and Rk voltage and resistance of a source, I current of the load.</para>
/// <para>A battery takes current where the terminals are above its own voltage. A source that holds a limit never takes any and gives its limit at most; one that disconnects is taken off
/// when its current, in or out, passes its limit, the worst first. Links between the sources are not counted.</para>
/// <para><b>Source.</b> Kirchhoff's laws; Lessons in Electric Circuits, Volume I - DC, chapter 10.</para>
/// <para>Immutable and thread-safe.</para>
/// </remarks>
public sealed class ParallelSources
{
    private const int Terminal = 1;

    private readonly double volts;

    private ParallelSources(double volts, IReadOnlyList<SourceShare> shares, string explanation)
    {
        this.volts = volts;
        Shares = shares;
        Explanation = explanation;
    }

    /// <summary>Whether the sources can give that current together.</summary>
    public bool Exists => Explanation.Length == 0;

    /// <summary>Why they cannot, in words; empty when they can.</summary>
    public string Explanation { get; }

    /// <summary>Voltage of the common terminals.</summary>
    /// <exception cref="InvalidOperationException">The sources cannot give that current.</exception>
    public ElectricPotential TerminalVoltage => Exists
        ? ElectricPotential.FromVolts(volts)
        : throw new InvalidOperationException($"There is no voltage to read: {Explanation} Ask {nameof(Exists)} first.");

    /// <summary>What each source does, in the order given; where they cannot give the current together, what each can at most.</summary>
    public IReadOnlyList<SourceShare> Shares { get; }

    /// <summary>Divides a current among sources.</summary>
    /// <param name="total">Current of the load, zero or greater; with zero what flows between the sources is left.</param>
    /// <param name="level">Where in its range each supply is.</param>
    /// <param name="sources">At least one. At most one of them an ideal voltage, without resistance and limit.</param>
    /// <returns>Voltage of the terminals and every source's share.</returns>
    /// <exception cref="ArgumentNullException">The array or one of its elements is null.</exception>
    /// <exception cref="ArgumentException">There is no source, or two are ideal voltages, between which nothing bounds the current.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The current is negative or absurdly large, or the level is not one of its enumeration.</exception>
    public static ParallelSources Solve(ElectricCurrent total, SupplyLevel level, params Source[] sources)
    {
        double amperes = Accept.AmperesOrZero(total, nameof(total));
        _ = SourceNumbers.Check(level, nameof(level));
        Source[] own = Require(sources);
        List<Element> elements = [];
        List<Tie> ties = [];
        foreach (Source source in own)
        {
            Join(source.Numbers, level, elements, ties);
        }

        if (ties.Count > 1)
        {
            string[] ideal = [.. own.Where(s => IsIdeal(s.Numbers, level)).Select(s => s.ToString())];
            throw new ArgumentException($"At most one source may be an ideal voltage; these are: {string.Join("; ", ideal)}. Nothing bounds the current between them.", nameof(sources));
        }

        double highest = own.Max(s => s.Numbers.VoltsAt(level));
        elements.Add(Element.Steady(Terminal, 0, amperes, 1e-9 * highest));
        NetworkSolver solver = new(NetworkShape.Create(2, 0, [.. elements], [.. ties]), [.. elements], [.. ties]);
        NetworkEnd end = solver.Solve();
        double u = solver.Volts[Terminal];
        IReadOnlyList<SourceShare> shares = Shared(own, level, solver, u);
        string why = end != NetworkEnd.Solved ? "The calculation did not settle; nothing is known of these sources together."
            : amperes > 0 && u <= 1e-6 * highest ? $"The sources cannot give {Accept.Text(amperes)} A together: at most {Accept.Text(shares.Sum(s => s.Amperes))} A."
            : "";
        return new ParallelSources(u, shares, why);
    }

    private static bool IsIdeal(in SourceNumbers numbers, SupplyLevel level) =>
        numbers.OhmsAt(level) == 0 && double.IsInfinity(numbers.HeldAmperes);

    private static void Join(in SourceNumbers numbers, SupplyLevel level, List<Element> elements, List<Tie> ties)
    {
        double volts = numbers.VoltsAt(level), ohms = numbers.OhmsAt(level);
        if (IsIdeal(numbers, level))
        {
            ties.Add(new Tie(Terminal, 0, volts));
            return;
        }

        Element element = numbers.Action == LimitAction.Holds
            ? Element.Supply(Terminal, 0, volts, numbers.LimitAmperes, ohms)
            : Element.Battery(Terminal, 0, volts, ohms);
        element.Trips = numbers.Action == LimitAction.Disconnects ? numbers.LimitAmperes : double.PositiveInfinity;
        elements.Add(element);
    }

    private static SourceShare[] Shared(Source[] sources, SupplyLevel level, NetworkSolver solver, double volts)
    {
        SourceShare[] shares = new SourceShare[sources.Length];
        int element = 0;
        for (int k = 0; k < sources.Length; k++)
        {
            SourceNumbers numbers = sources[k].Numbers;
            bool ideal = IsIdeal(numbers, level);
            double given = 0 - (ideal ? solver.TieAmperes[0] : solver.Amperes[element]);
            shares[k] = new SourceShare(sources[k], given, volts, numbers.VoltsAt(level))
            {
                AtLimit = numbers.Action == LimitAction.Holds && given >= numbers.LimitAmperes,
                IsDisconnected = !ideal && solver.IsDisconnected(element),
            };
            element += ideal ? 0 : 1;
        }

        return shares;
    }

    private static Source[] Require(Source[] sources)
    {
        _ = sources ?? throw new ArgumentNullException(nameof(sources));
        if (sources.Length == 0)
        {
            throw new ArgumentException("At least one source is needed.", nameof(sources));
        }

        foreach (Source source in sources)
        {
            _ = source ?? throw new ArgumentNullException(nameof(sources));
        }

        return [.. sources];
    }
}
