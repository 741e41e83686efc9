using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc;

/// <summary>The answer of the designer: wire, fuse, every check with its margin and source, what governs, and why each smaller size failed.</summary>
/// <remarks>
/// "Nothing fits" is an answer too: then <see cref="Wire"/> or <see cref="Fuse"/> is null, <see cref="Verdict"/> is <see cref="Verdict.Fail"/>, and
/// <see cref="Advice"/> says what would help. Immutable. The cautions are part of the result: show them.
/// </remarks>
public sealed partial class CircuitDesign
{
    private readonly CheckResult[] checks;

    // Worked out when first asked for, the same whoever asks first: most callers never do.
    private CircuitPath? path;
    private RejectedSize[]? rejected;

    internal CircuitDesign(CircuitRequirements requirements, DesignRules rules, Conductor? wire, FuseRating? fuse, CheckResult[] checks)
    {
        Requirements = requirements;
        Rules = rules;
        Wire = wire;
        Fuse = fuse;
        this.checks = checks;
        Verdict = VerdictOf(wire, checks);
    }

    /// <summary>What was asked for.</summary>
    public CircuitRequirements Requirements { get; }

    /// <summary>The rules that were followed.</summary>
    public DesignRules Rules { get; }

    /// <summary>Pass, open points, or fail.</summary>
    public Verdict Verdict { get; }

    /// <summary>Whether a wire and a fuse were found and no check fails.</summary>
    public bool IsFeasible => Verdict != Verdict.Fail;

    /// <summary>The wire of the feed; <c>null</c> when none of the series fits.</summary>
    public Conductor? Wire { get; }

    /// <summary>The fuse; <c>null</c> when none was found or, in a verification, none is there.</summary>
    public FuseRating? Fuse { get; }

    /// <summary>The way out and back with the wire chosen, each stretch with its temperature model; <c>null</c> when no wire fits.</summary>
    public CircuitPath? Path => Wire is null ? null : path ??= RatedPath(Wire);

    /// <summary>Every check of the wire and fuse chosen; where nothing fits, those of the largest wire tried, up to what stopped it.</summary>
    public IReadOnlyList<CheckResult> Checks => Array.AsReadOnly(checks);

    /// <summary>The sizes below the one chosen, small to large, each with the check that stopped it.</summary>
    public IReadOnlyList<RejectedSize> Rejected => Array.AsReadOnly(rejected ??= CircuitDesigner.Rejected(Requirements, Rules, Tried));

    /// <summary>
    /// The check that decides: in a design what stopped the largest of the smaller sizes (a size that the rating's source does not know is passed over; where no
    /// smaller one was stopped, the check with the least margin); where no size fits, what stopped the largest; in a verification the failed check, or the one with the least margin.
    /// </summary>
    public CheckResult Governing =>
        Wire is null ? Worst()
        : IsFeasible && CircuitDesigner.LargestStop(Requirements, Rules, Tried) is { } stopped ? stopped
        : Verdict == Verdict.Fail ? Worst()
        : Tightest();

    /// <summary>The checks that could not be evaluated.</summary>
    public IReadOnlyList<CheckResult> Undetermined => Array.FindAll(checks, check => check.Outcome == CheckOutcome.Undetermined);

    /// <summary>The circuit at minimum, nominal and maximum supply voltage; <c>null</c> when no wire fits.</summary>
    public SupplyRange? SupplyRange => Path is null
        ? null
        : SupplyRange.Solve(Requirements.Source, Path, Requirements.Load, ConductorTemperature.At(Requirements.Ambient));

    /// <summary>The steps from the published table to the wire's continuous current; <c>null</c> where no table is used or no wire fits.</summary>
    public DeratedAmpacity? Ampacity => Wire is null ? null : Rules.Ampacity.Prepare(At).Derate(Wire);

    /// <summary>What was taken for granted, to be confirmed by whoever installs the circuit.</summary>
    public IReadOnlyList<string> Assumptions => DesignText.Assumptions(this);

    /// <summary>The cautions that go with the circuit.</summary>
    public IReadOnlyList<string> Cautions => DesignText.Cautions(this);

    /// <summary>What would help where something fails; empty when nothing does.</summary>
    public IReadOnlyList<string> Advice => DesignText.Advice(this);

    /// <summary>The wiring that was verified, without the supply lead; null for a design, or when one size was verified.</summary>
    internal CircuitPath? Existing { get; init; }

    /// <summary>Where the wire runs, its own conductors counted.</summary>
    internal Installation At => Existing is null ? new Installation(Requirements) : new Installation(Requirements, Existing);

    /// <summary>How many sizes of the series, from the smallest, were tried and not taken; none in a verification.</summary>
    internal int Tried { get; init; }

    /// <summary>Mass of metal in the way out and back; zero when no wire fits.</summary>
    public Mass ConductorMass
    {
        get
        {
            double kilograms = 0;
            if (Path is { } path)
            {
                kilograms += path.FeedArray.Sum(s => s.Conductor.KilogramsPerMeter * s.Meters * s.Parallel);
                kilograms += path.Return.IsShared ? 0 : path.BackArray.Sum(s => s.Conductor.KilogramsPerMeter * s.Meters * s.Parallel);
            }

            return Mass.FromKilograms(kilograms);
        }
    }

    /// <summary>The check of a kind, when it was made.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The check; <c>null</c> when the circuit was not asked that.</returns>
    public CheckResult? Check(CheckKind kind)
    {
        int index = Array.FindIndex(checks, check => check.Kind == kind);
        return index < 0 ? null : checks[index];
    }

    /// <summary>The answer in one line.</summary>
    public override string ToString() => DesignText.Summary(this);

    private CircuitPath RatedPath(Conductor wire)
    {
        CircuitEvaluator evaluator = new(Requirements, Rules, At);
        return Existing is null ? evaluator.PathWith(wire) : evaluator.Rated(Existing);
    }

    // The failed check with the least margin; where none failed, what left the size without an answer.
    private CheckResult Worst()
    {
        CheckResult worst = checks[checks.Length - 1];
        bool failed = false;
        foreach (CheckResult check in checks)
        {
            bool worse = check.Outcome == CheckOutcome.Fail && (!failed || check.IsTighterThan(worst));
            worst = worse ? check : worst;
            failed |= worse;
        }

        return worst;
    }

    private CheckResult Tightest()
    {
        CheckResult tightest = checks[0];
        foreach (CheckResult check in checks)
        {
            bool tighter = tightest.Outcome == CheckOutcome.Undetermined || (check.Outcome != CheckOutcome.Undetermined && check.IsTighterThan(tightest));
            tightest = tighter ? check : tightest;
        }

        return tightest;
    }

    private static Verdict VerdictOf(Conductor? wire, CheckResult[] checks)
    {
        if (wire is null || Array.Exists(checks, check => check.Outcome == CheckOutcome.Fail))
        {
            return Verdict.Fail;
        }

        return Array.Exists(checks, check => check.Outcome == CheckOutcome.Undetermined) ? Verdict.Undetermined : Verdict.Pass;
    }
}
