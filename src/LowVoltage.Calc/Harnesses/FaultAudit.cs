using LowVoltage.Calc.Design;
using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What happens when something breaks: every node shorted and every branch interrupted, one at a time, with what follows from it.</summary>
/// <remarks>
/// <para><b>Shorts</b> are dead: without resistance or arc of their own. Each is looked at with its greatest current (sources at their strongest, wires cool, loads off) and with its least (sources at
/// their weakest, wires as hot as their insulation allows, every load drawing its running current as long as it has voltage; once with batteries alone, once with chargers and panels too). In each the fuse
/// that opens next is found from the bands of the operating times, the harness solved again with that fuse open, and so on until no current flows in the short or no fuse need open any more.</para>
/// <para><b>Where the current comes by one way</b> the moment is that of <see cref="Protection.FaultClearing"/>, as for a circuit: the wires heat and the current falls. Elsewhere (two batteries, a ring) every stage counts
/// with the current that flows when it ends. Wires are heated without loss, an upper bound; where a fuse takes longer than the rules let a fault last, the steady temperature bounds it as well.</para>
/// <para><b>Interruptions</b> are solved at the nominal supply (or that of the load case) as <see cref="Harness.Solve"/> solves, and compared with the harness without the fault.</para>
/// <para><b>Not covered</b>: a fault through a resistance or an arc, which draws less than a dead short and may open nothing; two faults at once; a fault inside a device. A source that disconnects
/// by itself is never counted on.</para>
/// <para>Immutable and thread-safe. The cautions are part of the result: show them.</para>
/// </remarks>
public sealed class FaultAudit
{
    private const int MostWorst = 10;

    private FaultAudit(Harness harness, HarnessFault[] faults, LoadCase[] cases)
    {
        Harness = harness;
        Faults = Array.AsReadOnly(faults);
        LoadCases = Array.AsReadOnly(cases);
    }

    /// <summary>The harness.</summary>
    public Harness Harness { get; }

    /// <summary>The load cases that were looked at; what starts counts as running.</summary>
    public IReadOnlyList<LoadCase> LoadCases { get; }

    /// <summary>Every fault, the worst first.</summary>
    public IReadOnlyList<HarnessFault> Faults { get; }

    /// <summary>The faults that ask for something, the worst first.</summary>
    public IReadOnlyList<HarnessFault> Findings => [.. Faults.Where(f => f.Rank < FaultRank.Harmless)];

    /// <summary>The ten worst of them.</summary>
    public IReadOnlyList<HarnessFault> Worst => [.. Faults.Where(f => f.Rank < FaultRank.Harmless).Take(MostWorst)];

    /// <summary>What was assumed.</summary>
    public IReadOnlyList<string> Assumptions => FaultWords.Assumptions(Harness, LoadCases);

    /// <summary>The cautions that go with every audit.</summary>
    public IReadOnlyList<string> Cautions => FaultWords.Cautions(Faults);

    /// <summary>Breaks a harness in every place, one at a time.</summary>
    /// <param name="harness">The harness; every wire with its conductor, every fuse with its rating.</param>
    /// <param name="cases">The load cases to look at; <c>null</c> for those of the harness. Of each fault the worst is kept.</param>
    /// <param name="progress">Is told the share that is done, 0 to 1.</param>
    /// <param name="cancellation">Ends a long call.</param>
    /// <returns>Every fault and what follows from it.</returns>
    /// <exception cref="ArgumentNullException">The harness or one of the cases is null.</exception>
    /// <exception cref="ArgumentException">A source can exceed 60 V, there is no load case, or one names what the harness does not have.</exception>
    /// <exception cref="InvalidOperationException">A wire has no conductor, or a fuse no rating.</exception>
    /// <exception cref="OperationCanceledException">The call was ended.</exception>
    public static FaultAudit Run(Harness harness, IReadOnlyList<LoadCase>? cases = null, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        _ = harness ?? throw new ArgumentNullException(nameof(harness));
        HarnessDesigner.Refuse(harness);
        harness.RequireSized();
        harness.RequireFused();
        Harness asked = cases is null ? harness : With(harness, cases);
        FaultRun run = new(asked, progress, cancellation);
        return new FaultAudit(harness, run.All(), [.. CaseGroup.Of(asked).Select(g => g.Steady)]);
    }

    /// <summary>The worst fault at a place.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="place">Name of the node or branch.</param>
    /// <returns>The fault; <c>null</c> where there is none.</returns>
    /// <exception cref="ArgumentNullException">The name is null.</exception>
    public HarnessFault? Find(HarnessFaultKind kind, string place)
    {
        _ = place ?? throw new ArgumentNullException(nameof(place));
        return Faults.FirstOrDefault(f => f.Kind == kind && string.Equals(f.Place, place, StringComparison.Ordinal));
    }

    /// <summary>How many faults have a rank.</summary>
    /// <param name="rank">The rank.</param>
    /// <returns>Their number.</returns>
    public int Count(FaultRank rank) => Faults.Count(f => f.Rank == rank);

    /// <summary>The audit as a report: the ten worst faults, how many there are of each rank, what was assumed, and the cautions.</summary>
    /// <returns>Lines of plain text.</returns>
    public string ToText() => FaultWords.Report(this);

    /// <summary>The audit in one line.</summary>
    public override string ToString() => Worst.Count == 0
        ? $"{Harness.Name}: {Accept.Text(Faults.Count)} faults, none to act on"
        : $"{Harness.Name}: {Accept.Text(Findings.Count)} of {Accept.Text(Faults.Count)} faults to act on, {Accept.Text(Count(FaultRank.BurnsOn))} of them a danger of fire; the worst: {Worst[0]}";

    private static Harness With(Harness harness, IReadOnlyList<LoadCase> cases)
    {
        if (cases.Count == 0)
        {
            throw new ArgumentException("There is no load case to look at; leave them out for those of the harness.", nameof(cases));
        }

        foreach (LoadCase used in cases)
        {
            HarnessMistakes.RefuseUnknown(harness, used ?? throw new ArgumentNullException(nameof(cases), "A load case is null."), nameof(cases));
        }

        return new Harness(harness.Parts with { Cases = [.. cases] });
    }
}
