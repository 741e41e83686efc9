using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml.Linq;
using LowVoltage.Calc.Teaching;

namespace LowVoltage.Calc.Tests.Teaching;

public class QtiPackageTests
{
    private static readonly ProblemSheet[] Sheets =
    [
        ProblemSheet.Create(41, 20, [], Difficulty.OneStep, ProblemUnits.Metric, ProblemForm.Numeric),
        ProblemSheet.Create(42, 20, [], Difficulty.SeveralSteps, ProblemUnits.UsCustomary, ProblemForm.Numeric),
        ProblemSheet.Create(43, 20, [], Difficulty.Design, ProblemUnits.Mixed, ProblemForm.Numeric),
        ProblemSheet.Create(44, 20, [], Difficulty.SeveralSteps, ProblemUnits.Metric, ProblemForm.MultipleChoice),
        ProblemSheet.Create(45, 20, [], Difficulty.SeveralSteps, ProblemUnits.Mixed, ProblemForm.FindTheMistake),
    ];

    public static TheoryData<int, QtiVersion> Packages
    {
        get
        {
            TheoryData<int, QtiVersion> packages = [];
            for (int i = 0; i < Sheets.Length; i++)
            {
                packages.Add(i, QtiVersion.Qti21);
                packages.Add(i, QtiVersion.Qti30);
            }

            return packages;
        }
    }

    [Fact]
    public void Zip_IsReadByTheFramework_WithFixedTimes_AndTheSameBytesAgain()
    {
        byte[] bytes = Sheets[0].ToQtiPackage(QtiVersion.Qti30);
        using ZipArchive zip = new(new MemoryStream(bytes));

        Assert.Equal("imsmanifest.xml", zip.Entries[0].FullName);
        Assert.All(zip.Entries, entry => Assert.Equal(new DateTime(1980, 1, 1), entry.LastWriteTime.DateTime));
        Assert.All(zip.Entries, entry => Assert.Equal(entry.Length, entry.CompressedLength));
        Assert.All(zip.Entries, entry => Assert.Equal(StoredZip.Crc32(Read(entry)), entry.Crc32));
        Assert.Equal(bytes, ProblemSheet.Create(41, 20, [], Difficulty.OneStep).ToQtiPackage(QtiVersion.Qti30));
        Assert.All(zip.Entries, entry => Assert.DoesNotContain((byte)'\r', Read(entry)));
    }

    [Fact]
    public void Crc32_OfTheCheckString_IsThePublishedValue() =>
        // The check value of this checksum, as catalogues of them state it: CBF43926 for the digits 1 to 9.
        Assert.Equal(0xCBF43926u, StoredZip.Crc32(Encoding.ASCII.GetBytes("123456789")));

    [Theory]
    [MemberData(nameof(Packages))]
    public void Items_MarkEveryAnswerAsTheLibraryDoes(int sheet, QtiVersion version)
    {
        int marked = 0;
        Dictionary<string, byte[]> files = Files(sheet, version);
        for (int i = 0; i < Sheets[sheet].Problems.Count; i++)
        {
            Problem problem = Sheets[sheet].Problems[i];
            QtiReader item = new(files[$"items/q{i + 1:000}.xml"]);
            Assert.Equal((0.0, null), item.Mark(null));
            foreach ((string typed, string said) in Answers(problem, item))
            {
                GradingResult verdict = problem.Grade(said);
                (double score, string? feedback) = item.Mark(typed);
                Assert.True(score == (verdict.IsCorrect ? 1 : 0), $"{problem.Statement}: {typed} -> {score}, {verdict}");
                string words = item.Feedback(feedback!);
                Assert.All(verdict.LikelyMistakes, mistake => Assert.Contains(mistake.Explanation, words, StringComparison.Ordinal));
                Assert.True(verdict.LikelyMistakes.Count == Mistake.All.Count(mistake => words.Contains(mistake.Name + ". " + mistake.Explanation, StringComparison.Ordinal) || words.Contains(mistake.Name + ": " + mistake.Explanation, StringComparison.Ordinal))
                    || problem.Form == ProblemForm.FindTheMistake, $"{problem.Statement}: {typed}: {words} | {verdict}");
                marked++;
            }
        }

        Assert.True(marked >= 80, $"{marked}");
    }

    [Theory]
    [MemberData(nameof(Packages))]
    public void Package_HasNoBrokenReference(int sheet, QtiVersion version)
    {
        Dictionary<string, byte[]> files = Files(sheet, version);
        XElement manifest = Parse(files["imsmanifest.xml"]);
        XElement[] resources = [.. manifest.Descendants().Where(element => element.Name.LocalName == "resource")];
        string[] listed = [.. resources.Elements().Where(element => element.Name.LocalName == "file").Select(file => (string)file.Attribute("href")!)];

        Assert.Equal(files.Keys.Where(name => name != "imsmanifest.xml").Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
        Assert.All(resources, resource => Assert.Equal((string)resource.Attribute("href")!, (string)resource.Elements().First().Attribute("href")!));
        string[] ids = [.. resources.Select(resource => (string)resource.Attribute("identifier")!)];
        Assert.All(manifest.Descendants().Where(element => element.Name.LocalName == "dependency"), needed => Assert.Contains((string)needed.Attribute("identifierref")!, ids));
        Assert.All(Parse(files["test.xml"]).Descendants().Select(element => (string?)element.Attribute("href")).OfType<string>(), href => Assert.Contains(href, files.Keys));
        foreach ((string name, byte[] bytes) in files.Where(file => file.Key.StartsWith("items/", StringComparison.Ordinal) && file.Key.EndsWith(".xml", StringComparison.Ordinal)))
        {
            QtiReader item = new(bytes);
            item.CheckReferences();
            Assert.All(item.Pictures, picture => Assert.Contains("items/" + picture, files.Keys));
            Assert.Equal(Path.GetFileNameWithoutExtension(name), item.Identifier);
        }
    }

    [Theory]
    [InlineData(QtiVersion.Qti21, "http://www.imsglobal.org/xsd/imsqti_v2p1")]
    [InlineData(QtiVersion.Qti30, "http://www.imsglobal.org/xsd/imsqtiasi_v3p0")]
    public void Names_AreThoseOfTheEdition(QtiVersion version, string ns)
    {
        string[] html = ["p", "strong", "img", "table", "thead", "tbody", "tr", "th", "td"];
        foreach (XElement root in Enumerable.Range(0, Sheets.Length).SelectMany(sheet => Files(sheet, version)).Where(file => file.Key.EndsWith(".xml", StringComparison.Ordinal) && file.Key != "imsmanifest.xml").Select(file => Parse(file.Value)))
        {
            Assert.All(root.DescendantsAndSelf(), element => Assert.Equal(ns, element.Name.NamespaceName));
            Assert.All(root.DescendantsAndSelf().Where(element => !html.Contains(element.Name.LocalName)), element =>
                Assert.Equal(version == QtiVersion.Qti30, element.Name.LocalName.StartsWith("qti-", StringComparison.Ordinal)));
            Assert.All(root.DescendantsAndSelf().Attributes(), attribute => Assert.False(version == QtiVersion.Qti21 && attribute.Name.LocalName.Contains('-', StringComparison.Ordinal)));
            Assert.All(root.DescendantsAndSelf().Attributes(), attribute => Assert.False(version == QtiVersion.Qti30 && attribute.Name.LocalName.Any(char.IsUpper)));
        }
    }

    [Theory]
    [MemberData(nameof(Packages))]
    public void Items_FollowTheContentModel(int sheet, QtiVersion version) => Assert.All(
        Files(sheet, version).Where(file => file.Key.StartsWith("items/", StringComparison.Ordinal) && file.Key.EndsWith(".xml", StringComparison.Ordinal)),
        file => QtiContentModel.Check(Parse(file.Value)));

    private static IEnumerable<(string Typed, string Said)> Answers(Problem problem, QtiReader item)
    {
        if (!item.AsksForANumber)
        {
            return item.Choices.Select(choice => (choice.Id, problem.Choices.Count > 0 ? choice.Id : choice.Text));
        }

        ProblemAnswer right = problem.Answer;
        double inside = 0.9999 * right.Tolerance, outside = 1.0001 * right.Tolerance;
        double[] values =
        [
            right.Value, right.Value - inside, right.Value + inside, right.Value - outside, right.Value + outside, -right.Value, right.Value * 10, right.Value / 1000, right.Value * 1.37, right.Value / 1.37,
            .. problem.KnownMistakes.Select(wrong => wrong.Value),
        ];
        // Seven figures and an exponent: enough that nobody asks for more of them.
        return values.Select(value => value.ToString("E11", CultureInfo.InvariantCulture)).Select(number => (number, $"{number} {right.Unit}"));
    }

    private static Dictionary<string, byte[]> Files(int sheet, QtiVersion version)
    {
        using ZipArchive zip = new(new MemoryStream(Sheets[sheet].ToQtiPackage(version)));
        return zip.Entries.ToDictionary(entry => entry.FullName, Read);
    }

    private static byte[] Read(ZipArchiveEntry entry)
    {
        using Stream stream = entry.Open();
        using MemoryStream copy = new();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    private static XElement Parse(byte[] bytes) => XDocument.Load(new MemoryStream(bytes)).Root!;
}
