using LowVoltage.Calc.Tests.Docs.Tables;

namespace LowVoltage.Calc.Tests.Docs;

/// <summary>The validation tables of the model pages are what the library computes today. <c>.ci/validation-tables</c> writes them anew.</summary>
public class ValidationTablesTests
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
        ["published-tables"] = PublishedTables.Transcriptions,
    };

    private static string Folder => Path.Combine(DocsFolder.Docs, "models", "_validation");

    public static TheoryData<string> Names() => [.. Tables.Keys];

    [Theory, MemberData(nameof(Names))]
    public void CommittedTable_IsWhatTheLibraryComputes(string name)
    {
        string file = Path.Combine(Folder, name + ".md"), computed = Tables[name]();
        if (DocsFolder.Rewrites)
        {
            Directory.CreateDirectory(Folder);
            File.WriteAllText(file, computed);
        }

        Assert.True(File.Exists(file), $"docs/models/_validation/{name}.md is missing: run .ci/validation-tables.");
        Assert.Equal(computed, DocsFolder.Read(file));
    }

    [Fact]
    public void EveryTable_IsOnAPage()
    {
        string[] files = [.. Directory.EnumerateFiles(Folder, "*.md").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];
        Assert.Equal(Tables.Keys.Order(StringComparer.Ordinal), files);
        string all = string.Concat(DocsFolder.Pages.Select(DocsFolder.Read));
        Assert.All(files, name => Assert.Contains($"_validation/{name}.md)]", all, StringComparison.Ordinal));
    }
}
