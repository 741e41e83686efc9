using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Design;

namespace LowVoltage.Calc.Harnesses;

/// <summary>What was found in a harness: every check with its place and load case, the findings of its structure, the verdict.</summary>
/// <remarks>Immutable and thread-safe. The cautions are part of the result: show them.</remarks>
public sealed class HarnessVerification
{
    internal HarnessVerification(Harness harness, HarnessCheck[] checks, IReadOnlyList<HarnessFinding> findings, IReadOnlyList<SelectivityPair> selectivity)
    {
        Harness = harness;
        Checks = Array.AsReadOnly(checks);
        Findings = findings;
        Selectivity = selectivity;
        Verdict = Array.Exists(checks, c => c.Outcome == CheckOutcome.Fail) || findings.Any(f => f.Severity == FindingSeverity.Fail) ? Verdict.Fail
            : checks.Length == 0 || Array.Exists(checks, c => c.Outcome == CheckOutcome.Undetermined) || findings.Any(f => f.Severity == FindingSeverity.Undetermined) ? Verdict.Undetermined
            : Verdict.Pass;
    }

    /// <summary>The harness.</summary>
    public Harness Harness { get; }

    /// <summary>Every check, each where it is tightest.</summary>
    public IReadOnlyList<HarnessCheck> Checks { get; }

    /// <summary>What is odd in how the harness is connected.</summary>
    public IReadOnlyList<HarnessFinding> Findings { get; }

    /// <summary>Every fuse against the fuse before it. It does not enter the verdict: a harness without selectivity is safe, but loses more than one circuit at a fault.</summary>
    public IReadOnlyList<SelectivityPair> Selectivity { get; }

    /// <summary>Pass, fail, or undetermined: no check fails and one at least could not be made.</summary>
    public Verdict Verdict { get; }

    /// <summary>The failed checks, the worst first.</summary>
    public IReadOnlyList<HarnessCheck> Failed => [.. Checks.Where(c => c.Outcome == CheckOutcome.Fail).OrderBy(c => c.Result.Tightness)];

    /// <summary>The checks that could not be made from what is known.</summary>
    public IReadOnlyList<HarnessCheck> Undetermined => [.. Checks.Where(c => c.Outcome == CheckOutcome.Undetermined)];

    /// <summary>What would help where something fails or is undetermined, with the place.</summary>
    public IReadOnlyList<string> Advice => [.. Failed.Concat(Undetermined).Select(c => $"{c.Place}: {c.Advice}").Distinct()];

    /// <summary>What was assumed.</summary>
    public IReadOnlyList<string> Assumptions => HarnessAssumptions.Of(Harness);

    /// <summary>The cautions that go with every harness.</summary>
    public IReadOnlyList<string> Cautions => Verdict == Verdict.Pass ? Design.Cautions.General :
    [
        Verdict == Verdict.Fail ? "This harness fails a check. Do not build it as it stands." : "Some checks could not be made from what was stated. They are undetermined, not passed: settle them before building.",
        .. Design.Cautions.General,
    ];

    /// <summary>The check of a kind at a place; the worst where there are several.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="place">Name of the wire, fuse or load.</param>
    /// <returns>The check; <c>null</c> when it was not asked there.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    public HarnessCheck? Find(CheckKind kind, string place)
    {
        _ = kind ?? throw new ArgumentNullException(nameof(kind));
        _ = place ?? throw new ArgumentNullException(nameof(place));
        HarnessCheck? found = null;
        foreach (HarnessCheck check in Checks)
        {
            if (ReferenceEquals(check.Kind, kind) && (check.Place == place || check.Wire == place) && (found is not { } before || check.IsWorseThan(before)))
            {
                found = check;
            }
        }

        return found;
    }

    /// <summary>The verdict in one line.</summary>
    public override string ToString() => Verdict switch
    {
        Verdict.Pass => $"{Harness.Name}: pass, {Quantities.Accept.Text(Checks.Count)} checks",
        Verdict.Fail => Failed.Count > 0 ? $"{Harness.Name}: {Quantities.Accept.Text(Failed.Count)} of {Quantities.Accept.Text(Checks.Count)} checks fail, the worst {Failed[0]}" : $"{Harness.Name}: {Findings.First(f => f.Severity == FindingSeverity.Fail)}",
        _ => $"{Harness.Name}: no check fails, {Quantities.Accept.Text(Undetermined.Count)} of {Quantities.Accept.Text(Checks.Count)} undetermined",
    };
}
