namespace LowVoltage.Calc.Tests.Docs;

/// <summary>What a page gives stands on its first screen: the answer of a how-to, what a model answers, a sentence elsewhere.</summary>
public class FirstScreenTests
{
    public static TheoryData<string> HowTos() => Pages(page => (page.StartsWith("howto/", StringComparison.Ordinal) && page != "howto/index.md") || page == "chart.md");

    public static TheoryData<string> Models() => Pages(page => page.StartsWith("models/", StringComparison.Ordinal) && page != "models/index.md");

    /// <summary>All but those two and the sheets, which are handed out.</summary>
    public static TheoryData<string> Others() => Pages(page => page is "howto/index.md" or "models/index.md" || (!page.Contains('/', StringComparison.Ordinal) && page != "chart.md"));

    [Theory, MemberData(nameof(HowTos))]
    public void HowTo_OpensWithItsQuestionAndItsAnswer(string page)
    {
        string[] paragraphs = Paragraphs(page);
        Assert.StartsWith("**Question.** ", paragraphs[1], StringComparison.Ordinal);
        Assert.EndsWith("?", paragraphs[1], StringComparison.Ordinal);
        Assert.StartsWith("**Answer.** ", paragraphs[2], StringComparison.Ordinal);
        Assert.EndsWith(".", paragraphs[2], StringComparison.Ordinal);
        Assert.InRange(paragraphs[2].Length, 30, 300);
    }

    [Theory, MemberData(nameof(HowTos))]
    public void HowTo_AnswersInOneSentence(string page) => Assert.DoesNotMatch(@"[.!?]\s+\S", Paragraphs(page)[2]["**Answer.** ".Length..]);

    [Theory, MemberData(nameof(HowTos))]
    public void HowTo_ShowsCodeAndWhatItPrints(string page)
    {
        string text = DocsFolder.Read(Path.Combine(DocsFolder.Docs, page));
        Assert.Matches("```(csharp|fsharp|powershell)\n", text);
        Assert.Matches("prints\n\n(<!-- transcript -->\n)?```(text|json)\n", text);
    }

    [Theory, MemberData(nameof(Models))]
    public void Model_OpensWithWhatItAnswers(string page) => Assert.StartsWith("**Answers:** ", Paragraphs(page)[1], StringComparison.Ordinal);

    [Theory, MemberData(nameof(Others))]
    public void Page_OpensWithASentence(string page) => Assert.Matches(@"^\p{Lu}.{20,}[.:]$", Paragraphs(page)[1].ReplaceLineEndings(" "));

    private static string[] Paragraphs(string page)
    {
        string[] paragraphs = DocsFolder.Read(Path.Combine(DocsFolder.Docs, page)).Split("\n\n", 4);
        Assert.StartsWith("# ", paragraphs[0], StringComparison.Ordinal);
        return paragraphs;
    }

    private static TheoryData<string> Pages(Func<string, bool> which) => [.. DocsFolder.Pages.Select(DocsFolder.Relative).Where(which)];
}
