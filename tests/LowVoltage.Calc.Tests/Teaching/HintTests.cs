using System.Text.RegularExpressions;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

/// <summary>That what a mistake says names only what its problem has: no way back where there is none, no circular mils where there are square millimetres.</summary>
public class HintTests(ManyProblems many) : IClassFixture<ManyProblems>
{
    // A word of a hint, and what a statement must then speak of. Letters and units count as words.
    private static readonly (string Hint, string Statement)[] Concepts =
    [
        (@"out and back|return path|way out|feed wire|second wire", @"out and back|out and one back|comes back|return|carries the current back"),
        (@"one way|\bdistance", @"one way"),
        (@"both leads|the leads|one lead|without the leads", @"\bleads?\b"),
        (@"whole length", @"length of copper wire"),
        (@"\bwires?\b|conductor", @"\bwires?\b|conductor|\bleads?\b"),
        (@"\bjoints?\b", @"\bjoints?\b"),
        (@"constant power", @"constant"),
        (@"circular mil", @"\bmil\b|cmil"),
        (@"π|radius|diameter", @"across|diameter|cross-section|AWG"),
        (@"π·d²/4|π/4 of it", @"mm"),
        (@"strand", @"strand"),
        (@"cross-section", @"cross-section|mm²|cmil"),
        (@"temperature|°C", @"°[CF]"),
        (@"°F", @"°F"),
        (@"20 °C", @"20.°C"),
        (@"[Cc]oefficient", @"coefficient"),
        (@"exponential", @"heat"),
        (@"milliohm", @"mΩ"),
        (@"resistance per length", @"Ω/(km|1000.ft)"),
        (@"[Dd]erating|[Tt]he factor|[Ff]actors|both factors", @"factor|may carry"),
        (@"neighbours", @"bundle"),
        (@"\btable\b", @"\btable\b|Table|\n  "),
        (@"\brow\b", @"\n  "),
        (@"\bfuse", @"\b[Ff]use"),
        (@"\brating\b(?! once)", @"\brating|rated|may carry|factor"),
        (@"\bshare\b", @"%|times its rating|times the rating"),
        (@"per cent", @"%|percentage"),
        (@"battery", @"battery"),
        (@"under load|loaded voltage", @"delivers|cranking"),
        (@"filament|\blamp\b", @"filament"),
        (@"rated voltage", @"\brated\b"),
        (@"another voltage", @"Later|is now run at"),
        (@"multiple", @"times"),
        (@"logarithmic", @"logarithm"),
        (@"\bminutes\b", @"\bmin\b"),
        (@"hours", @"\bmin\b|\bh\b|hours"),
        (@"run together", @"run together"),
        (@"[Rr]eciprocal|not averaged|parallel", @"parallel|laid beside|passes through|joints|fed through a fuse"),
        (@"Both conditions", @"fuse.*wire|wire.*fuse"),
        (@"\bsize\b", @"\bsize|wire"),
        (@"per cent|3 %", @"%"),
        (@"I = P/U|The power was", @"\bW\b"),
        (@"\bdrop\b|I²·R", @"lost|drop|leads|joint|at rest|What voltage"),
    ];

    [Fact]
    public void Hint_NamesOnlyWhatItsProblemHas()
    {
        (Regex Hint, Regex Statement, string Words)[] concepts = [.. Concepts.Select(pair => (new Regex(pair.Hint), new Regex(pair.Statement, RegexOptions.Singleline), pair.Hint))];
        HashSet<string> met = [];
        Dictionary<string, string> wrong = [];
        foreach (Problem problem in many.All)
        {
            // The form that asks for the mistake prints mistakes among its choices: what it says of itself proves nothing.
            string statement = problem.Story + (problem.Table is null ? "" : "\n  table: " + string.Join(", ", problem.Table.Heads)) + problem.Question + problem.Answer.Unit;
            foreach (Mistake mistake in problem.KnownMistakes.Select(answer => answer.Mistake))
            {
                string hint = mistake.Name + ". " + mistake.Explanation;
                foreach ((Regex inHint, Regex inStatement, string words) in concepts)
                {
                    if (inHint.IsMatch(hint))
                    {
                        met.Add(words);
                        if (!inStatement.IsMatch(statement))
                        {
                            wrong[$"'{words}' in '{hint}'"] = statement;
                        }
                    }
                }
            }
        }

        Assert.True(wrong.Count == 0, string.Join("\n", wrong.Select(pair => $"{pair.Key} for: {pair.Value}")));
        Assert.All(concepts, concept => Assert.Contains(concept.Words, met));
    }
}
