using System.Reflection;
using System.Text.RegularExpressions;
using LowVoltage.Calc.Tests.Docs.Questions;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The page of common questions: each answer is code that compiles, no longer than eight lines, and prints what stands below it.</summary>
/// <remarks>A region of Docs/Questions stands in the method of the same name (<c>how-hot</c> in <c>HowHot</c>). <c>.ci/docs-outputs</c> writes code and output into the page anew.</remarks>
public partial class QuestionsPageTests
{
    private const int MostLines = 8, LongestLine = 140;

    private static readonly Type[] Answers = [typeof(DropQuestions), typeof(WireQuestions), typeof(FuseQuestions), typeof(HeatQuestions), typeof(BatteryQuestions)];

    private static string Page => Path.Combine(DocsFolder.Docs, "howto", "questions.md");

    [Fact]
    public void Page_HoldsTheCodeAsItCompilesAndWhatItPrints()
    {
        string written = DocsFolder.Read(Page);
        string expected = Answer().Replace(written, match => Block(match.Groups["type"].Value, match.Groups["region"].Value));
        if (DocsFolder.Rewrites && written != expected)
        {
            File.WriteAllText(Page, expected);
            return;
        }

        Assert.Equal(expected, written);
    }

    [Fact]
    public void Page_AsksEveryQuestionOnce_AndThirtyAtLeast()
    {
        string page = DocsFolder.Read(Page);
        string[] there = [.. Answers.SelectMany(type => Regions(type).Keys.Select(region => $"{type.Name}#{region}"))];
        string[] shown = [.. Answer().Matches(page).Select(match => $"{match.Groups["type"].Value}#{match.Groups["region"].Value}")];
        Assert.Equal(there.Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
        Assert.True(shown.Length >= 30, $"{shown.Length} questions");
        Assert.Equal(shown.Length, Heading().Count(page));
    }

    [Fact]
    public void EveryAnswer_IsAtMostEightLinesOfPublicCalls()
    {
        foreach (Type type in Answers)
        {
            Assert.All(Regions(type), region =>
            {
                string[] lines = region.Value.Split('\n');
                Assert.True(lines.Length <= MostLines, $"{type.Name}#{region.Key} has {lines.Length} lines.");
                Assert.All(lines, line => Assert.True(line.Length <= LongestLine, $"{type.Name}#{region.Key}: {line.Length} letters in a line."));
                // One statement a line, or less: the count means something.
                Assert.All(lines, line => Assert.True(line.Count(letter => letter == ';') <= 1, line));
            });
        }
    }

    private static string Block(string typeName, string region)
    {
        Type type = Answers.Single(answer => answer.Name == typeName);
        MethodInfo method = type.GetMethod(string.Concat(region.Split('-').Select(word => char.ToUpperInvariant(word[0]) + word[1..])), BindingFlags.Public | BindingFlags.Static)!;
        string printed = Snippets.Console.Capture(method.CreateDelegate<Action>());
        Assert.NotEmpty(printed);
        return $"<!-- question: {typeName}#{region} -->\n```csharp\n{Regions(type)[region]}\n```\n\n```text\n{printed}\n```\n";
    }

    private static Dictionary<string, string> Regions(Type type)
    {
        string[] lines = DocsFolder.Read(Path.Combine(DocsFolder.Root, "tests", "LowVoltage.Calc.Tests", "Docs", "Questions", type.Name + ".cs")).Split('\n');
        Dictionary<string, string> regions = new(StringComparer.Ordinal);
        for (int i = 0; i < lines.Length; i++)
        {
            if (RegionStart().Match(lines[i]) is { Success: true } start)
            {
                int indent = start.Groups["indent"].Length, end = Array.FindIndex(lines, i, line => line.Trim() == "#endregion");
                regions.Add(start.Groups["name"].Value, string.Join('\n', lines[(i + 1)..end].Select(line => line.Length > indent ? line[indent..] : "")));
            }
        }

        return regions;
    }

    [GeneratedRegex("<!-- question: (?<type>\\w+)#(?<region>[a-z-]+) -->\n```csharp\n.*?```\n\n```text\n.*?```\n", RegexOptions.Singleline)]
    private static partial Regex Answer();

    [GeneratedRegex(@"^### .*\?$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"^(?<indent>\s*)#region (?<name>[a-z-]+)$")]
    private static partial Regex RegionStart();
}
