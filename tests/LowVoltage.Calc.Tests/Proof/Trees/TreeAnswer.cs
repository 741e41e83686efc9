using LowVoltage.Calc.Harnesses;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>What the library made of a harness: its verdict, and the worst outcome of each kind of check at each place.</summary>
internal sealed class TreeAnswer
{
    private readonly Dictionary<(string Kind, string Place), string> outcomes = [];

    public TreeAnswer(HarnessVerification found)
    {
        Verdict = found.Verdict.ToString();
        Text = () => string.Join("\n", found.Checks.Select(check => $"{check.Outcome} {check.Kind!.Id} {check} [{check.LoadCase}]"));
        foreach (HarnessCheck check in found.Checks)
        {
            string outcome = check.Outcome.ToString();
            (string, string) key = (check.Kind!.Id, check.Place);
            outcomes[key] = outcomes.TryGetValue(key, out string? known) && Rank(known) >= Rank(outcome) ? known : outcome;
        }
    }

    public string Verdict { get; }

    public Func<string> Text { get; }

    /// <summary>What would have been answered had a check not been asked at a place.</summary>
    public void Forget(string kind, string place) => outcomes.Remove((kind, place));

    /// <summary>Its outcome, or "none" where it was not asked.</summary>
    public string Outcome(string kind, string place) => outcomes.GetValueOrDefault((kind, place), "none");

    /// <summary>Whether any check at a place did not pass: what is wrong there is then said, if by another check.</summary>
    public bool SaysSomething(string place) => outcomes.Any(pair => pair.Key.Place == place && pair.Value != "Pass");

    /// <summary>Whether a check of a kind did not pass anywhere.</summary>
    public bool Doubts(string kind) => outcomes.Any(pair => pair.Key.Kind == kind && pair.Value != "Pass");

    private static int Rank(string outcome) => outcome switch { "Fail" => 2, "Undetermined" => 1, _ => 0 };
}
