using System.Reflection;
using System.Text.Json;
using LowVoltage.Calc.Ampacity;
using static LowVoltage.Calc.Tests.Docs.Tables.MarkdownTable;

namespace LowVoltage.Calc.Tests.Docs.Tables;

/// <summary>What is carried: from the head lines of the transcriptions and from the tables' own references.</summary>
internal static class PublishedTables
{
    /// <summary>One entry a transcription: its head lines and its rows.</summary>
    public static string Transcriptions()
    {
        MarkdownTable table = new("transcription", "rows", "what its head says");
        foreach (string name in Files())
        {
            using StreamReader reader = new(PublishedTable.Open(name));
            string[] lines = reader.ReadToEnd().ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
            string head = string.Join(' ', lines.Where(line => line[0] == '#').Select(line => line[1..].Trim()));
            table.Row($"`{name}`", Number(lines.Count(line => line[0] != '#') - 1), Tidy(head));
        }

        return table.ToString();
    }

    public static string Ampacity()
    {
        MarkdownTable table = new("table", "sizes", "insulation", "base ambient", "source");
        AmpacityTable[] tables =
        [
            Cfr33Part183Table5.Table, FaaAc43Table11Dash9.Table, FaaFreeAir.Ambient25, FaaFreeAir.Ambient50, FaaFreeAir.Ambient60, NasaEeeInst002.SingleWire,
            NasaEeeInst002.BundledWire, NecTable310Dash16.Table, NecTable310Dash17.Table, Iec60364MethodC.Table, Iec60364MethodF.Table,
            RoadVehicleSingleCore.Ambient30, RoadVehicleSingleCore.Ambient50,
        ];
        foreach (AmpacityTable item in tables)
        {
            table.Row(
                item.Name, Number(item.SizeKeys.Length),
                string.Join(", ", item.InsulationRatings.Select(rating => Number(rating.DegreesCelsius))) + " °C",
                Number(item.BaseAmbient.DegreesCelsius) + " °C",
                item.Reference.ToString().Replace('[', '(').Replace(']', ')'));
        }

        return table.ToString();
    }

    /// <summary>The published problems that the library does not answer: each says why it is none of wiring.</summary>
    public static string NotSolved()
    {
        MarkdownTable table = new("published problem", "asked", "why it is not one of wiring");
        using JsonDocument document = JsonDocument.Parse(PublishedTable.Open("thermal-problems.json"));
        foreach (JsonElement problem in document.RootElement.GetProperty("problems").EnumerateArray().Where(problem => problem.TryGetProperty("doesNotApply", out _)))
        {
            table.Row(problem.GetProperty("source").GetString()!, problem.GetProperty("asked").GetString()!, problem.GetProperty("doesNotApply").GetString()!);
        }

        return table.ToString();
    }

    public static int Count => Files().Count();

    public static int Rows => Files().Sum(name => PublishedTable.Load(name).Rows.Count);

    // Solved harnesses are computed, with a circuit simulator, and not transcribed.
    private static IEnumerable<string> Files() => Assembly.GetExecutingAssembly().GetManifestResourceNames()
        .Where(name => name.EndsWith(".csv", StringComparison.Ordinal) && !name.StartsWith("solved-", StringComparison.Ordinal)).Order(StringComparer.Ordinal);

    private static string Tidy(string head)
    {
        while (head.Contains("  ", StringComparison.Ordinal))
        {
            head = head.Replace("  ", " ", StringComparison.Ordinal);
        }

        return head.Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal).Replace("*", "\\*", StringComparison.Ordinal)
            .Replace("_", "\\_", StringComparison.Ordinal);
    }
}
