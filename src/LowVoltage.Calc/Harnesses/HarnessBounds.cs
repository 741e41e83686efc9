using LowVoltage.Calc.Numerics;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Bounds that no harness within its tolerances exceeds: voltages of loads and nodes, currents, temperatures; what may cut out; which checks pass everywhere within the tolerances.</summary>
/// <remarks>
/// <code>U ≥ V_min − Σ over loads of Z·I_max    Z = Σ of the resistances that both loads' ways share    I_max = G·U_max + J + P/U_min</code>
/// <para><b>Guaranteed</b> (<see cref="BoundKind.Guaranteed"/>) where every load hangs on one source by a single way out and back (a tree). There the drop at a load rises with every
/// resistance on its way and with every load's current, so the largest resistances and currents together bound it; currents and voltages bound each other, and the bounds are narrowed from outside until they stay.
/// Converters are kept on for it; a source that may come to its limit gives no guarantee. Where an enclosure is narrower, that is given: both hold.</para>
/// <para><b>Enclosed</b> (<see cref="BoundKind.Enclosure"/>) everywhere else: rings, several sources, converters that cut out, sources at their limit. With the state as stated for its middle, each element is a straight line and what
/// is left of its law; the linear network is solved exactly for what is left, which is bounded over intervals of voltage and current, and the intervals are widened until they hold their own image. Nothing is lost to the first
/// order; what is lost is of the second order in the tolerances. The air enters as the interval of resistance and warming that it makes. A converter that may cut out counts as any current from nothing to the most that
/// it takes. What is enclosed is the state that follows from the stated one without a jump.</para>
/// <para><b>None</b> (<see cref="BoundKind.None"/>) where the intervals would not narrow, more than one state may exist, a source may disconnect, or there is no operating point as stated; <see cref="Reason"/> says which.</para>
/// <para><b>Source.</b> Interval iteration after R. Krawczyk (1969), from memory. Everything is rounded to nearest, and a slack far beyond that rounding is added. Immutable and thread-safe.</para>
/// </remarks>
public sealed class HarnessBounds
{
    private readonly Harness harness;
    private readonly LoadCase used;
    private readonly BoundsFinder found;
    private readonly bool guarantees;
    private readonly HarnessEnclosure enclosed;

    private HarnessBounds(Harness harness, Tolerances tolerances, LoadCase used)
    {
        (this.harness, this.used) = (harness, used);
        found = new BoundsFinder(harness, tolerances, used);
        enclosed = new HarnessEnclosure(harness, tolerances, used);
        guarantees = enclosed.Wires.Gap is null;
        Checks = BoundChecks.Of(harness, tolerances, used, guarantees ? found : null, enclosed);
    }

    /// <summary>Loads whose voltage may fall below the least at which they work.</summary>
    public IReadOnlyList<string> MayCutOut => [.. harness.LoadArray.Where((load, k) => MayFall(load, k)).Select(l => l.Id)];

    /// <summary>Loads that are on and have no bound of their voltage: within the tolerances they may ask for more than can reach them, or no bound was found.</summary>
    public IReadOnlyList<string> MayStarve => [.. harness.LoadArray.Where((load, k) => IsOn(k) && !Guarantees(k) && enclosed.Reason.Length > 0).Select(l => l.Id)];

    /// <summary>Whether a source may come to its current limit.</summary>
    public bool MayPassLimit => enclosed.Reason.Length == 0
        ? harness.SourceArray.Where((s, k) => s.Source is { } source && enclosed.States.Sources[k].High >= source.Numbers.LimitAmperes * (1 - 1e-9)).Any()
        : Array.Exists(found.MayPassLimit, may => may);

    /// <summary>Why nothing is enclosed; empty where it is.</summary>
    public string Reason => enclosed.Reason;

    /// <summary>The checks that a bound can judge, over everything within the tolerances: voltage and drop of every load that is on, current and temperature of every wire.</summary>
    /// <remarks>Converters stay on below their least voltage, as in every verification. What these do not name (fuses, faults, starts) no bound here judges.</remarks>
    public IReadOnlyList<BoundedCheck> Checks { get; }

    /// <summary>Bounds over a load case and all its supply levels.</summary>
    /// <param name="harness">The harness; every wire with its conductor.</param>
    /// <param name="tolerances">What varies; draws that are common to several parts are bounded as if they were not.</param>
    /// <param name="loadCase">The load case; <c>null</c> for everything on.</param>
    /// <returns>The bounds.</returns>
    /// <exception cref="ArgumentNullException">The harness or the tolerances are null.</exception>
    /// <exception cref="ArgumentException">The load case names what the harness does not have.</exception>
    /// <exception cref="InvalidOperationException">A wire has no conductor.</exception>
    public static HarnessBounds Of(Harness harness, Tolerances tolerances, LoadCase? loadCase = null)
    {
        _ = harness ?? throw new ArgumentNullException(nameof(harness));
        _ = tolerances ?? throw new ArgumentNullException(nameof(tolerances));
        LoadCase used = loadCase ?? LoadCase.AllOn;
        HarnessMistakes.RefuseUnknown(harness, used, nameof(loadCase));
        harness.RequireSized();
        return new HarnessBounds(harness, tolerances, used);
    }

    /// <summary>Voltage at a load that is on.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>The bound.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    public HarnessBound<ElectricPotential> VoltageAt(string load)
    {
        int k = harness.LoadIndex(load);
        return Guarantees(k)
            ? new HarnessBound<ElectricPotential>(BoundKind.Guaranteed, ElectricPotential.FromVolts(LeastVolts(k)), ElectricPotential.FromVolts(Math.Min(found.MostVolts[k], Enclosed(enclosed.States.LoadVolts[k]).High)), "")
            : Of(enclosed.States.LoadVolts[k], WhyNot(k), volts => ElectricPotential.FromVolts(volts));
    }

    /// <summary>Current of a load that is on.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>The bound.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    public HarnessBound<ElectricCurrent> CurrentAt(string load)
    {
        int k = harness.LoadIndex(load);
        return Of(enclosed.States.LoadAmperes[k], WhyNot(k), amperes => ElectricCurrent.FromAmperes(amperes));
    }

    /// <summary>Voltage of a node, as <see cref="HarnessSolution.VoltageOf"/> counts it.</summary>
    /// <param name="node">Name of the node.</param>
    /// <returns>The bound.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such node.</exception>
    public HarnessBound<ElectricPotential> VoltageOf(string node)
    {
        int k = harness.NodeIndex(node);
        return Of(Any(enclosed.States.Nodes[k]), Reason, volts => ElectricPotential.FromVolts(volts));
    }

    /// <summary>Size of the current of a branch, whichever way it flows.</summary>
    /// <param name="branch">Name of the branch.</param>
    /// <returns>The bound; a guaranteed one has no least.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such branch.</exception>
    public HarnessBound<ElectricCurrent> CurrentOf(string branch)
    {
        int k = harness.BranchIndex(branch);
        if (guarantees && found.Most(k) is { } most)
        {
            return new HarnessBound<ElectricCurrent>(BoundKind.Guaranteed, null, ElectricCurrent.FromAmperes(Math.Min(most, Enclosed(enclosed.States.Branches[k]).Greatest)), "");
        }

        Interval through = enclosed.States.Branches[k];
        return Of(Any(new Interval(through.Least, through.Greatest)), Reason, amperes => ElectricCurrent.FromAmperes(amperes));
    }

    /// <summary>Current that a source gives; below zero it is charged.</summary>
    /// <param name="source">Name of the source.</param>
    /// <returns>The bound.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such source.</exception>
    public HarnessBound<ElectricCurrent> CurrentFrom(string source)
    {
        int k = harness.SourceIndex(source);
        return Of(Any(enclosed.States.Sources[k]), Reason, amperes => ElectricCurrent.FromAmperes(amperes));
    }

    /// <summary>Steady temperature of a wire.</summary>
    /// <param name="wire">Name of the wire.</param>
    /// <returns>The bound; a guaranteed one has no least. None where the wire is not rated, or may not settle below the metal's melting point.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such branch, or it is no wire.</exception>
    public HarnessBound<Temperature> TemperatureOf(string wire)
    {
        int k = harness.BranchIndex(wire, nameof(wire));
        if (harness.BranchArray[k] is not HarnessWire)
        {
            throw new ArgumentException($"{harness.BranchArray[k]} is no wire; it has no temperature here.", nameof(wire));
        }

        if (guarantees && found.Hottest(k) is { } celsius)
        {
            return new HarnessBound<Temperature>(BoundKind.Guaranteed, null, Temperature.FromDegreesCelsius(celsius), "");
        }

        Interval? warm = enclosed.Reason.Length == 0 ? enclosed.Wires.Celsius(k, enclosed.States.Heat[k]) : null;
        return Of(warm?.Wider(1e-9), Reason.Length > 0 ? Reason : BoundChecks.NotSteady, c => Temperature.FromDegreesCelsius(c));
    }

    private bool Guarantees(int load) => guarantees && found.IsGuaranteed(load);

    private bool IsOn(int load) => used.UseOf(harness.LoadArray[load].Id) != LoadUse.Off && Array.IndexOf(enclosed.Dead, load) < 0;

    private bool MayFall(HarnessLoad load, int k) => IsOn(k) && load.Load.MinimumVolts is { } least
        && (Guarantees(k) ? LeastVolts(k) < least : enclosed.Reason.Length == 0 && (enclosed.MayCutOut.Contains(k) || (enclosed.States.LoadVolts[k] is { } volts && volts.Low < least)));

    private string WhyNot(int load) => used.UseOf(harness.LoadArray[load].Id) == LoadUse.Off ? "the load is off" : Array.IndexOf(enclosed.Dead, load) >= 0 ? "no source feeds the load" : Reason;

    // Both hold: the narrower is given.
    private double LeastVolts(int load) => Math.Max(found.LeastVolts[load], Enclosed(enclosed.States.LoadVolts[load]).Low);

    private Interval Enclosed(Interval? interval) => enclosed.Reason.Length == 0 ? interval ?? Interval.All : Interval.All;

    private Interval? Any(Interval interval) => enclosed.Reason.Length == 0 ? interval : null;

    private HarnessBound<T> Of<T>(Interval? interval, string reason, Func<double, T> quantity)
        where T : struct => enclosed.Reason.Length == 0 && interval is { } there
            ? new HarnessBound<T>(BoundKind.Enclosure, quantity(there.Low), quantity(there.High), "")
            : new HarnessBound<T>(BoundKind.None, null, null, reason);
}
