using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc;

/// <summary>The answer of the designer: wire, fuse, every check with its margin and source, what governs, and why each smaller size failed.</summary>
/// <remarks>
/// "Nothing fits" is an answer too: then <see cref="Wire"/> and <see cref="Fuse"/> are the nearest (<see cref="IsNearest"/>), <see cref="Verdict"/> is not
/// <see cref="Verdict.Pass"/>, and <see cref="Advice"/> says what would help. Immutable and thread-safe. The cautions are part of the result: show them.
/// </remarks>
public sealed partial class CircuitDesign
{
    private readonly ArraySegment<CheckResult> checks;

    // Each worked out when first asked for, the same whoever asks first: most callers never do.
    private CircuitPath? path;
    private IReadOnlyList<RejectedSize>? rejected;
    private SupplyRange? supplyRange;
    private IReadOnlyList<string>? assumptions;
    private IReadOnlyList<string>? cautions;
    private IReadOnlyList<string>? advice;
    private IReadOnlyList<CheckResult>? undetermined;
    private StrongBox? governing;
    private CircuitDiagram? diagram;

    internal CircuitDesign(CircuitRequirements requirements, DesignRules rules, Conductor wire, FuseRating? fuse, ArraySegment<CheckResult> checks)
    {
        Requirements = requirements;
        Rules = rules;
        Wire = wire;
        Fuse = fuse;
        this.checks = checks;
        Checks = checks;
        Verdict = VerdictOf(checks);
    }

    /// <summary>What was asked for.</summary>
    public CircuitRequirements Requirements { get; }

    /// <summary>The rules that were followed.</summary>
    public DesignRules Rules { get; }

    /// <summary>Pass, fail, or undetermined: no check fails and one at least could not be made from what was stated.</summary>
    public Verdict Verdict { get; }

    /// <summary>Whether no check fails. One may be undetermined: <see cref="Verdict"/> tells.</summary>
    public bool IsFeasible => Verdict != Verdict.Fail;

    /// <summary>Whether no wire and fuse of the rules serve load and wire, and these come nearest.</summary>
    public bool IsNearest { get; internal init; }

    /// <summary>The wire of the feed.</summary>
    public Conductor Wire { get; }

    /// <summary>The fuse; <c>null</c> when, in a verification, none is there, and in a design where the load has no operating point.</summary>
    public FuseRating? Fuse { get; }

    /// <summary>The way out and back with that wire, supply lead included, each stretch with its temperature model.</summary>
    public CircuitPath Path => path ??= RatedPath();

    /// <summary>Every check of the wire and fuse.</summary>
    public IReadOnlyList<CheckResult> Checks { get; }

    /// <summary>The sizes below the one chosen, small to large, each with the check that stopped it; none in a verification.</summary>
    public IReadOnlyList<RejectedSize> Rejected => rejected ??= Array.AsReadOnly(CircuitDesigner.Rejected(this));

    /// <summary>
    /// The check that decides: a failed one with the least margin; where none fails, in a design what stopped the largest of the smaller sizes (a size that the rating's source
    /// does not know is passed over), and where no smaller one was stopped, or in a verification, the check with the least margin.
    /// </summary>
    public CheckResult Governing => (governing ??= new StrongBox(FindGoverning())).Value;

    /// <summary>The checks that could not be made from what is known; each says what is missing.</summary>
    public IReadOnlyList<CheckResult> Undetermined => undetermined ??= Array.AsReadOnly([.. checks.Where(check => check.Outcome == CheckOutcome.Undetermined)]);

    /// <summary>The circuit at minimum, nominal and maximum supply voltage.</summary>
    public SupplyRange SupplyRange => supplyRange ??= SupplyRange.Solve(Requirements.Source, Path, Requirements.Load, ConductorTemperature.At(Requirements.Place.Ambient));

    /// <summary>The steps from the published table to the wire's continuous current; <c>null</c> where no table is used.</summary>
    public DeratedAmpacity? Ampacity => State().Site.Rating.Derate(Wire);

    /// <summary>What was assumed, to be confirmed by whoever installs the circuit.</summary>
    public IReadOnlyList<string> Assumptions => assumptions ??= DesignText.Assumptions(this);

    /// <summary>The cautions that go with the circuit.</summary>
    public IReadOnlyList<string> Cautions => cautions ??= DesignText.Cautions(this);

    /// <summary>What would help where something fails or is undetermined; empty when all passes.</summary>
    public IReadOnlyList<string> Advice => advice ??= DesignText.Advice(this);

    /// <summary>Mass of metal in the way out and back.</summary>
    public Mass ConductorMass
    {
        get
        {
            double kilograms = Path.FeedArray.Sum(s => s.Conductor.KilogramsPerMeter * s.Meters * s.Parallel);
            kilograms += Path.Return.IsShared ? 0 : Path.BackArray.Sum(s => s.Conductor.KilogramsPerMeter * s.Meters * s.Parallel);
            return Mass.FromKilograms(kilograms);
        }
    }

    /// <summary>The wiring that was verified, without the supply lead; null for a design, or when one size was verified.</summary>
    internal CircuitPath? Existing { get; init; }

    /// <summary>Whether somebody chose wire and fuse, and they were only checked.</summary>
    internal bool IsVerified { get; init; }

    /// <summary>How many sizes of the series, from the smallest, were tried and not taken; none in a verification.</summary>
    internal int Tried { get; init; }

    /// <summary>The check of a kind, when it was made.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The check; <c>null</c> when the circuit was not asked that.</returns>
    /// <exception cref="ArgumentNullException">The kind is null.</exception>
    public CheckResult? Find(CheckKind kind)
    {
        _ = kind ?? throw new ArgumentNullException(nameof(kind));
        foreach (CheckResult check in checks)
        {
            if (ReferenceEquals(check.Kind, kind))
            {
                return check;
            }
        }

        return null;
    }

    /// <summary>The answer in one line.</summary>
    public override string ToString() => DesignText.Summary(this);

    /// <summary>The state that the checks were asked in, laid out anew: the same input gives the same bits.</summary>
    internal BranchState State()
    {
        BranchState at = Existing is null ? Branches.ForCandidate(Requirements, Rules) : Branches.ForPath(Requirements, Rules, Existing);
        if (Existing is null)
        {
            at.SetCandidate(Wire);
        }

        if (IsVerified)
        {
            at.SetFitted(Fuse);
        }
        else
        {
            at.SetFuse(Fuse);
        }

        return at;
    }

    private CircuitPath RatedPath()
    {
        BranchState at = State();
        return Existing is null ? Branches.PathWith(Requirements, at, Wire) : Branches.Rated(Requirements, at, Existing);
    }

    private CheckResult FindGoverning() =>
        Verdict == Verdict.Fail ? Worst()
        : IsNearest && Undetermined.Count > 0 ? Undetermined[0]
        : Tried > 0 && CircuitDesigner.LargestStop(this) is { } stopped ? stopped
        : Tightest();

    private CheckResult Worst()
    {
        CheckResult worst = default;
        foreach (CheckResult check in checks)
        {
            worst = check.Outcome == CheckOutcome.Fail && (worst.Kind is null || check.IsTighterThan(worst)) ? check : worst;
        }

        return worst;
    }

    private CheckResult Tightest()
    {
        CheckResult tightest = default;
        foreach (CheckResult check in checks)
        {
            bool known = check.Outcome != CheckOutcome.Undetermined, knows = tightest.Kind is not null && tightest.Outcome != CheckOutcome.Undetermined;
            tightest = tightest.Kind is null || (known && (!knows || check.IsTighterThan(tightest))) ? check : tightest;
        }

        return tightest;
    }

    private static Verdict VerdictOf(ArraySegment<CheckResult> checks)
    {
        Verdict verdict = checks.Count == 0 ? Verdict.Undetermined : Verdict.Pass;
        foreach (CheckResult check in checks)
        {
            verdict = check.Outcome == CheckOutcome.Fail || verdict == Verdict.Fail ? Verdict.Fail : check.Outcome == CheckOutcome.Undetermined ? Verdict.Undetermined : verdict;
        }

        return verdict;
    }

    // A struct that is set once, whole, from any thread.
    private sealed class StrongBox(CheckResult value)
    {
        internal CheckResult Value { get; } = value;
    }
}
