using System.Collections.Concurrent;
using System.Globalization;
using System.Text;

namespace LowVoltage.Calc.Tests.Proof.Trees;

/// <summary>Many random trees, counted by kind of check. The same seed and number give the same counts.</summary>
internal sealed class TreeRun(int seed)
{
    private const int Kept = 3;

    private readonly ConcurrentDictionary<string, int> counts = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ConcurrentBag<(int Number, bool Design)>> found = new(StringComparer.Ordinal);

    public int Harnesses { get; private set; }

    public int this[string what] => counts.GetValueOrDefault(what);

    public static TreeRun Of(int seed, int verifications, int designs)
    {
        TreeRun run = new(seed) { Harnesses = verifications + designs };
        Parallel.For(0, verifications + designs, number => run.Try(number < verifications ? number : number - verifications, number >= verifications));
        return run;
    }

    /// <summary>How often a kind was ruled one way.</summary>
    public int Ruled(string kind, string say) => counts.Where(c => c.Key.StartsWith($"ruled: {kind} {say},", StringComparison.Ordinal)).Sum(c => c.Value);

    /// <summary>Disagreements whose kind begins with some words.</summary>
    public int Count(string prefix) => counts.Where(c => c.Key.StartsWith(prefix, StringComparison.Ordinal)).Sum(c => c.Value);

    public string Report()
    {
        StringBuilder text = new();
        text.AppendLine(CultureInfo.InvariantCulture, $"seed {seed}, {Harnesses} harnesses: {this["verdict Pass"]} pass, {this["verdict Undetermined"]} undetermined, {this["verdict Fail"]} fail, {this["refused"]} cannot be designed");
        text.AppendLine(CultureInfo.InvariantCulture, $"checks ruled on {Count("ruled: ")}, of them passed by the library {counts.Where(c => c.Key.EndsWith(", library Pass", StringComparison.Ordinal)).Sum(c => c.Value)}");
        foreach (KeyValuePair<string, int> count in counts.OrderBy(c => c.Key, StringComparer.Ordinal).Where(c => c.Key.Contains(':', StringComparison.Ordinal)))
        {
            text.AppendLine(CultureInfo.InvariantCulture, $"  {count.Key,-70} {count.Value,8}");
        }

        return text.ToString();
    }

    /// <summary>The first harnesses of each kind of disagreement that a prefix names, the smallest first.</summary>
    public string Examples(string prefix)
    {
        StringBuilder text = new();
        foreach ((string what, ConcurrentBag<(int Number, bool Design)> bag) in found.OrderBy(f => f.Key, StringComparer.Ordinal).Where(f => f.Key.StartsWith(prefix, StringComparison.Ordinal)))
        {
            foreach ((int number, bool design) in bag.OrderBy(b => TreeMaker.Make(seed, b.Number).Parts.Length).ThenBy(b => b.Number).Take(Kept))
            {
                TreeTrial trial = Trial(number, design);
                string kind = what[(what.IndexOf(": ", StringComparison.Ordinal) + 2)..];
                text.AppendLine(CultureInfo.InvariantCulture, $"// {what}; seed {seed}, {(design ? "design" : "verification")} {number}, library {trial.Answer.Verdict}");
                foreach (TreeRuling ruling in trial.Rulings.Where(r => r.Kind == kind))
                {
                    text.AppendLine(CultureInfo.InvariantCulture, $"// {ruling}; library {trial.OutcomeOf(ruling)}");
                }

                text.AppendLine(TreeText.Of(trial.Given));
                text.AppendLine(string.Join("\n", trial.Answer.Text().Split('\n').Where(line => line.Contains(kind, StringComparison.Ordinal)))).AppendLine();
            }
        }

        return text.ToString();
    }

    private TreeTrial Trial(int number, bool design) => design ? TreeTrial.Design(TreeMaker.Make(seed, number)) : TreeTrial.Verify(TreeMaker.Make(seed, number));

    private void Try(int number, bool design)
    {
        TreeTrial trial;
        try
        {
            trial = Trial(number, design);
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            throw new InvalidOperationException($"seed {seed}, {(design ? "design" : "verification")} {number}: {e.Message}\n{TreeText.Of(TreeMaker.Make(seed, number))}", e);
        }

        Add("verdict " + trial.Answer.Verdict);
        foreach (TreeRuling ruling in trial.Rulings)
        {
            Add($"ruled: {ruling.Kind} {ruling.Ruling.Say}, library {trial.OutcomeOf(ruling)}");
        }

        Note("false pass: ", trial.FalsePasses, number, design);
        Note("not asked: ", trial.NotAsked, number, design);
        Note("false verdict: ", trial.FalseVerdicts, number, design);
        Note("false fail: ", trial.FalseFails, number, design);
    }

    private void Note(string what, IEnumerable<TreeRuling> rulings, int number, bool design)
    {
        foreach (string kind in rulings.Select(ruling => what + ruling.Kind))
        {
            Add(kind);
            found.GetOrAdd(kind, _ => []).Add((number, design));
        }
    }

    private void Add(string what) => counts.AddOrUpdate(what, 1, (_, n) => n + 1);
}
