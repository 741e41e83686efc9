using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Bounds that no harness within its tolerances passes: the voltage of every load, the current and temperature of every branch on its way.</summary>
/// <remarks>
/// <code>U ≥ V_min − Σ over loads of Z·I_max    Z = Σ of the resistances that both loads' ways share    I_max = G·U_max + J + P/U_min</code>
/// <para><b>What is guaranteed.</b> A harness in which every load hangs on one source by a single way out and back (a tree), its loads all on or each of them off. There the drop at a load rises with every
/// resistance on its way and with every load's current, so the largest resistances and currents together bound it; currents and voltages bound each other, and the bounds are narrowed from outside until they stay.
/// Where a load has several ways or several sources reach it, nothing is guaranteed: <see cref="IsGuaranteed"/> says so, load by load, and there are no bounds.</para>
/// <para><b>Accuracy.</b> Attained for constant currents. For resistances and lamps a little wide (they are counted at their highest voltage and their lowest at once); for constant powers a little wide
/// where they share a way. Source limits are not counted: a source at its limit gives less voltage than is said here, and <see cref="MayPassLimit"/> says that it may be there.</para>
/// <para>Immutable.</para>
/// </remarks>
public sealed class HarnessBounds
{
    private readonly Harness harness;
    private readonly BoundsFinder found;

    private HarnessBounds(Harness harness, BoundsFinder found)
    {
        this.harness = harness;
        this.found = found;
    }

    /// <summary>Loads whose voltage may fall below the least at which they work.</summary>
    public IReadOnlyList<string> MayCutOut => [.. harness.LoadArray.Where((load, k) => found.IsGuaranteed(k) && load.Load.MinimumVolts is { } least && found.LeastVolts[k] < least).Select(l => l.Id)];

    /// <summary>Loads of constant power for which no lower bound can be given: within the tolerances they may ask for more than can reach them.</summary>
    public IReadOnlyList<string> MayStarve => [.. harness.LoadArray.Where((_, k) => found.HasWay(k) && !found.IsGuaranteed(k)).Select(l => l.Id)];

    /// <summary>Whether the loads together may pass a source's current limit.</summary>
    public bool MayPassLimit => found.MayPassLimit;

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
        return new HarnessBounds(harness, new BoundsFinder(harness, tolerances, used));
    }

    /// <summary>Whether a load's voltage is bounded.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>Whether.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    public bool IsGuaranteed(string load) => found.IsGuaranteed(harness.LoadIndex(load));

    /// <summary>The least voltage at a load that is on.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>The bound; <c>null</c> where nothing is guaranteed.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    public ElectricPotential? LeastVoltage(string load) => harness.LoadIndex(load) is var k && found.IsGuaranteed(k) ? ElectricPotential.FromVolts(found.LeastVolts[k]) : null;

    /// <summary>The greatest voltage at a load.</summary>
    /// <param name="load">Name of the load.</param>
    /// <returns>The bound; <c>null</c> where nothing is guaranteed.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such load.</exception>
    public ElectricPotential? GreatestVoltage(string load) => harness.LoadIndex(load) is var k && found.IsGuaranteed(k) ? ElectricPotential.FromVolts(found.MostVolts[k]) : null;

    /// <summary>The greatest current of a branch.</summary>
    /// <param name="branch">Name of the branch.</param>
    /// <returns>The bound; <c>null</c> where nothing is guaranteed.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such branch.</exception>
    public ElectricCurrent? GreatestCurrent(string branch) => found.Most(harness.BranchIndex(branch)) is { } amperes ? ElectricCurrent.FromAmperes(amperes) : null;

    /// <summary>The highest steady temperature of a wire.</summary>
    /// <param name="wire">Name of the wire.</param>
    /// <returns>The bound; <c>null</c> where nothing is guaranteed, the wire is not rated, or it may not settle below the metal's melting point.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    /// <exception cref="ArgumentException">There is no such branch, or it is no wire.</exception>
    public Temperature? HighestTemperature(string wire)
    {
        int k = harness.BranchIndex(wire, nameof(wire));
        if (harness.BranchArray[k] is not HarnessWire)
        {
            throw new ArgumentException($"{harness.BranchArray[k]} is no wire; it has no temperature here.", nameof(wire));
        }

        return found.Hottest(k) is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;
    }
}
