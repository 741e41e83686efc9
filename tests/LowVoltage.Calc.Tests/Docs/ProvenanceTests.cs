using LowVoltage.Calc.References;
using LowVoltage.Calc.Tests.Docs.Tables;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>How the carried values are known: the counts on the accuracy page, and that the library says the same with each source.</summary>
public class ProvenanceTests
{
    public static TheoryData<string> Files() => [.. Provenance.All.Select(carried => carried.File)];

    [Theory, MemberData(nameof(Files))]
    public void Source_IsOfTheKindThatItsTranscriptionSays(string file)
    {
        Provenance.Carried carried = Provenance.All.Single(item => item.File == file);
        Provenance.Origin[] origins = [.. carried.Counts().Select(counted => counted.Origin).Distinct()];
        Assert.NotEmpty(origins);

        // A file of several sources says how each row is known; ReferenceClaimsTests hold those row by row.
        if (origins is [Provenance.Origin one])
        {
            Assert.Equal(one == Provenance.Origin.Memory, carried.Reference.Kind == ReferenceKind.FromMemory);
            Assert.Equal(one == Provenance.Origin.Transcription, carried.Reference.Kind == ReferenceKind.FromMemoryCompared);
        }
    }

    [Fact]
    public void Page_StatesTheCounts()
    {
        int[] counts = [.. Enum.GetValues<Provenance.Origin>().Select(Provenance.Count)];
        string sentence = FormattableString.Invariant($"Of {counts.Sum()} values, {counts[0]} were read in the document itself, {counts[1]} in a reprint or a page that quotes it, {counts[2]} are recollections that agree with an independent transcription, and {counts[3]} are recollections alone.");
        string page = DocsFolder.Read(Path.Combine(DocsFolder.Docs, "accuracy.md"));
        Assert.True(page.Replace('\n', ' ').Contains(sentence, StringComparison.Ordinal), sentence);
    }
}
