using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using CsvHelper;
using CsvHelper.Configuration;

namespace HarnessReport;

/// <summary>The tables of a harness as the JSON document that they stand for: a column is a member, inner members after a point.</summary>
internal static partial class CsvTables
{
    private static readonly (string File, string Member)[] Lists = [("nodes", "nodes"), ("sources", "sources"), ("branches", "branches"), ("loads", "loads"), ("cases", "load_cases")];

    public static string ToJson(string folder)
    {
        JsonObject document = new() { ["lowvoltage_harness"] = 1 };
        foreach (Dictionary<string, string> row in Rows(folder, "harness", needed: true))
        {
            Set(document, row.GetValueOrDefault("member", ""), row.GetValueOrDefault("value", ""));
        }

        foreach ((string file, string member) in Lists)
        {
            JsonArray list = [];
            foreach (Dictionary<string, string> row in Rows(folder, file, needed: file != "cases"))
            {
                JsonObject item = [];
                foreach ((string column, string cell) in row)
                {
                    Set(item, column, cell);
                }

                list.Add((JsonNode)item);
            }

            if (list.Count > 0)
            {
                document[member] = list;
            }
        }

        return document.ToJsonString();
    }

    /// <summary>Where a mistake stands: the table and the line, after the way in the document that it was made into.</summary>
    public static string Place(string path)
    {
        Match match = InList().Match(path);
        return match.Success && Array.Find(Lists, l => l.Member == match.Groups["list"].Value) is { File: not null } list
            ? $"{list.File}.csv, line {int.Parse(match.Groups["row"].Value, CultureInfo.InvariantCulture) + 2}{(match.Groups["rest"].Value is [_, ..] rest ? $", {rest.TrimStart('.')}" : "")}"
            : $"harness.csv, {path.TrimStart('$', '.')}";
    }

    private static void Set(JsonObject item, string column, string cell)
    {
        if (cell.Trim().Length == 0 || column.Length == 0)
        {
            return;
        }

        string[] names = column.Split('.');
        foreach (string name in names[..^1])
        {
            item = item[name] as JsonObject ?? (JsonObject)(item[name] = new JsonObject());
        }

        item[names[^1]] = names[^1] is "off" or "starting" or "stalled" or "closed" or "open"
            ? new JsonArray([.. cell.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Select(id => (JsonNode)JsonValue.Create(id))])
            : Value(cell.Trim());
    }

    private static JsonValue Value(string cell) =>
        double.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? JsonValue.Create(number)
        : cell is "true" or "false" ? JsonValue.Create(cell == "true")
        : JsonValue.Create(cell);

    private static List<Dictionary<string, string>> Rows(string folder, string name, bool needed)
    {
        string path = Path.Combine(folder, name + ".csv");
        if (!File.Exists(path))
        {
            return needed ? throw new HarnessFileException($"The folder {folder} has no {name}.csv.") : [];
        }

        try
        {
            using StreamReader text = new(path);
            using CsvReader reader = new(text, new CsvConfiguration(CultureInfo.InvariantCulture) { DetectDelimiter = true, TrimOptions = TrimOptions.Trim });
            List<Dictionary<string, string>> rows = [];
            _ = reader.Read() && reader.ReadHeader();
            while (reader.Read())
            {
                rows.Add(reader.HeaderRecord!.Zip(Enumerable.Range(0, reader.HeaderRecord!.Length), (column, k) => (column, cell: reader.TryGetField(k, out string? cell) ? cell! : "")).ToDictionary(c => c.column, c => c.cell));
            }

            return rows;
        }
        catch (Exception problem) when (problem is CsvHelperException or ArgumentException)
        {
            throw new HarnessFileException($"{path} cannot be read as CSV: {problem.Message.Split('\n')[0]}");
        }
    }

    [GeneratedRegex(@"^\$\.(?<list>\w+)\[(?<row>\d+)\](?<rest>.*)$")]
    private static partial Regex InList();
}
