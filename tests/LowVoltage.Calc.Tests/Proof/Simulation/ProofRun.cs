using System.Collections.Concurrent;
using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>Many random cases on all processors, counted by check. The same seed and numbers give the same counts.</summary>
internal sealed class ProofRun(int seed)
{
    private const int Kept = 3;

    private readonly ConcurrentDictionary<string, int> counts = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ConcurrentBag<(int Number, bool Laid)>> found = new(StringComparer.Ordinal);

    public int Cases { get; private set; }

    /// <summary>How often a check was ruled one way.</summary>
    public int Ruled(string check, Say say) => counts.Where(c => c.Key.StartsWith($"ruled: {check} {say},", StringComparison.Ordinal)).Sum(c => c.Value);

    public int this[string what] => counts.GetValueOrDefault(what);

    /// <summary>Kinds of disagreement with their numbers.</summary>
    public IEnumerable<(string What, int Number)> Disagreements => counts.Where(c => found.ContainsKey(c.Key)).Select(c => (c.Key, c.Value)).OrderBy(c => c.Key, StringComparer.Ordinal);

    public static ProofRun Of(int seed, int designs, int verifications)
    {
        ProofRun run = new(seed) { Cases = designs + verifications };
        Parallel.For(0, designs + verifications, number => run.Try(number < designs ? number : number - designs, number >= designs));
        return run;
    }

    public static CaseGiven Case(int seed, int number, bool laid) => MainFuseMaker.Maybe(laid ? CaseMaker.Verification(seed, number) : CaseMaker.Design(seed, number), seed, laid ? -1 - number : number);

    /// <summary>The table of counts, and the first cases of each disagreement, made as plain as they can be.</summary>
    public string Report()
    {
        StringBuilder text = new();
        text.AppendLine(CultureInfo.InvariantCulture, $"seed {seed}, {Cases} cases: {this["verdict Pass"]} pass, {Cases - this["verdict Pass"] - this["verdict Fail"]} undetermined, {this["verdict Fail"]} fail ({this["no wire"]} without a wire)");
        text.AppendLine(CultureInfo.InvariantCulture, $"circuits with a false pass: {this["false pass"]}");
        foreach (KeyValuePair<string, int> count in counts.OrderBy(c => c.Key, StringComparer.Ordinal).Where(c => c.Key.Contains(':')))
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  {count.Key,-60} {count.Value,8}");
        }

        return text.ToString();
    }

    /// <summary>The first cases of each kind of disagreement that a prefix names, made as plain as they can be and written as C#.</summary>
    public string Examples(string prefix)
    {
        StringBuilder text = new();
        foreach ((string what, ConcurrentBag<(int Number, bool Laid)> bag) in found.OrderBy(f => f.Key, StringComparer.Ordinal).Where(f => f.Key.StartsWith(prefix, StringComparison.Ordinal)))
        {
            foreach ((int number, bool laid) in bag.OrderBy(b => b.Laid).ThenBy(b => b.Number).Take(Kept))
            {
                Trial trial = Plainer.Make(Case(seed, number, laid), what);
                string check = what[(what.IndexOf(": ", StringComparison.Ordinal) + 2)..];
                text.AppendLine(CultureInfo.InvariantCulture, $"// {what}; seed {seed}, {(laid ? "verification" : "design")} {number}; simulator: {trial.Rulings[check]}");
                text.AppendLine(CultureInfo.InvariantCulture, $"// library: {trial.Answer.Verdict}, {trial.Answer.Wire} with {trial.Answer.Fuse}; {check} {trial.Outcome(check)}");
                text.AppendLine(Recipe.Of(trial.Given)).AppendLine();
            }
        }

        return text.ToString();
    }

    private void Try(int number, bool laid)
    {
        Trial trial;
        try
        {
            trial = Trial.Of(Case(seed, number, laid));
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            throw new InvalidOperationException($"seed {seed}, {(laid ? "verification" : "design")} {number}: {e.Message}\n{Recipe.Of(Case(seed, number, laid))}", e);
        }

        Count("verdict " + trial.Answer.Verdict);
        if (trial.Answer.Wire is null)
        {
            Count("no wire");
        }

        foreach ((string check, Ruling ruling) in trial.Rulings)
        {
            Count($"ruled: {check} {ruling.Say}, library {trial.Outcome(check)}");
        }

        bool any = false;
        foreach (string check in trial.FalsePasses)
        {
            any = true;
            Note("false pass: " + check, number, laid);
        }

        if (any)
        {
            Count("false pass");
        }

        Note(trial.PassesInOpenVerdicts, "pass in an undetermined verdict: ", number, laid);
        Note(trial.LeftOpen, "left undetermined: ", number, laid);
        Note(trial.FalseFails, "false fail: ", number, laid);
        if (trial.Answer.Fails && trial.Rulings.Count > 0 && trial.Rulings.Values.All(r => r.Say == Say.MustPass))
        {
            Count("verdict: fail though all must pass");
        }
    }

    private void Note(IEnumerable<string> checks, string what, int number, bool laid)
    {
        foreach (string check in checks)
        {
            Note(what + check, number, laid);
        }
    }

    private void Note(string what, int number, bool laid)
    {
        Count(what);
        found.GetOrAdd(what, _ => []).Add((number, laid));
    }

    private void Count(string what) => counts.AddOrUpdate(what, 1, (_, n) => n + 1);
}
