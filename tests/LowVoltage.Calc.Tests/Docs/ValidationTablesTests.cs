using System.Text.RegularExpressions;
using LowVoltage.Calc.Tests.Docs.Tables;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The validation tables on the pages, between <c>&lt;!-- table: name --&gt;</c> and <c>&lt;!-- end --&gt;</c>, are what the library computes today. <c>.ci/validation-tables</c> writes them anew.</summary>
public partial class ValidationTablesTests
{
    private static readonly Dictionary<string, Func<string>> Tables = new()
    {
        ["accuracy"] = AccuracySummary.Table,
        ["resistance"] = ConductorTables.Resistance,
        ["voltage-drop"] = ConductorTables.VoltageDropExamples,
        ["heat-balance"] = HeatTables.HeatBalanceTable,
        ["bundle"] = HeatTables.Bundle,
        ["overload"] = HeatTables.Overload,
        ["adiabatic"] = ShortCircuitTables.Adiabatic,
        ["non-adiabatic"] = ShortCircuitTables.NonAdiabatic,
        ["batteries"] = ShortCircuitTables.Batteries,
        ["fuse-series"] = FuseTables.Series,
        ["blade-times"] = FuseTables.BladeTimes,
        ["fuse-against-wire"] = FuseTables.AgainstWire,
        ["fuse-against-fuse"] = FuseTables.AgainstFuse,
        ["pulses"] = FuseTables.Pulses,
        ["ampacity"] = PublishedTables.Ampacity,
        ["everyday-circuits"] = EverydayCircuits.Table,
        ["provenance"] = Provenance.Table,
        ["problems-not-solved"] = PublishedTables.NotSolved,
        ["published-tables"] = PublishedTables.Transcriptions,
    };

    public static TheoryData<string> PagesWithTables() => [.. DocsFolder.Pages.Where(page => Table().IsMatch(DocsFolder.Read(page))).Select(DocsFolder.Relative)];

    [Theory, MemberData(nameof(PagesWithTables))]
    public void Page_HoldsTheTablesThatTheLibraryComputes(string page)
    {
        string path = Path.Combine(DocsFolder.Docs, page);
        string written = DocsFolder.Read(path);
        string computed = Table().Replace(written, match => $"{match.Groups["head"].Value}{Tables[match.Groups["name"].Value]().Trim('\n')}\n\n<!-- end -->");
        if (DocsFolder.Rewrites && written != computed)
        {
            File.WriteAllText(path, computed);
            return;
        }

        Assert.Equal(computed, written);
    }

    [Fact]
    public void EveryTable_IsOnAPage()
    {
        IEnumerable<string> shown = DocsFolder.Pages.SelectMany(page => Table().Matches(DocsFolder.Read(page))).Select(match => match.Groups["name"].Value).Distinct();
        Assert.Equal(Tables.Keys.Order(StringComparer.Ordinal), shown.Order(StringComparer.Ordinal));
    }

    [GeneratedRegex("(?<head><!-- table: (?<name>[a-z-]+) -->\n\n).*?<!-- end -->", RegexOptions.Singleline)]
    private static partial Regex Table();
}
