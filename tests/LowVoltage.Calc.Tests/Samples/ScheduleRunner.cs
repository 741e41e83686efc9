using System.Globalization;
using System.Text;
using CircuitSchedule;
using CsvHelper;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>Runs the schedule in this process on files of its own.</summary>
public abstract class ScheduleRunner : IDisposable
{
    // One good circuit; the tests change single cells of it.
    private static readonly Dictionary<string, string> Good = new()
    {
        ["circuit"] = "Lamp", ["practice"] = "road vehicle", ["supply"] = "voltage", ["supply_V"] = "12", ["source_min_mOhm"] = "20", ["source_max_mOhm"] = "40",
        ["load"] = "current", ["load_A"] = "4", ["feed_m"] = "2", ["return_m"] = "2", ["supply_lead_mOhm"] = "5", ["ambient_degC"] = "30", ["insulation"] = "XLPE",
        ["loaded_conductors"] = "2", ["joints_mOhm"] = "3",
    };

    private protected static string Faults { get; } = Path.Combine(AppContext.BaseDirectory, "scenario-with-faults.csv");

    private protected static string SixColumns { get; } = Path.Combine(AppContext.BaseDirectory, "six-columns.csv");

    private protected string Folder { get; } = Directory.CreateTempSubdirectory("circuit-schedule").FullName;

    public void Dispose()
    {
        Directory.Delete(Folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    private protected static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = Program.Run(args, Screen.Plain(output), error, null);
        return (code, output.ToString(), error.ToString());
    }

    private protected static Dictionary<string, string> With(params (string Column, string Cell)[] changes)
    {
        Dictionary<string, string> row = new(Good);
        foreach ((string column, string cell) in changes)
        {
            row[column] = cell;
        }

        return row;
    }

    private protected string FileOf(params Dictionary<string, string>[] rows) => FileOf(',', rows);

    private protected string FileOf(char separator, params Dictionary<string, string>[] rows) => Written(Text(separator, rows));

    private protected static string Text(char separator, params Dictionary<string, string>[] rows)
    {
        string[] header = [.. rows.SelectMany(row => row.Keys).Distinct()];
        return string.Join(separator, header) + "\n"
            + string.Concat(rows.Select(row => string.Join(separator, header.Select(name => row.GetValueOrDefault(name, ""))) + "\n"));
    }

    private protected string Written(string text, Encoding? encoding = null)
    {
        string path = Path.Combine(Folder, "circuits.csv");
        File.WriteAllText(path, text, encoding ?? new UTF8Encoding(false));
        return path;
    }

    private protected List<Dictionary<string, string>> Results(params string[] input) => ResultsBetween(",", input);

    private protected List<Dictionary<string, string>> ResultsBetween(string separator, params string[] input)
    {
        string path = Path.Combine(Folder, "results.csv");
        Run([.. input, "--csv", path]);
        using CsvReader csv = new(new StreamReader(path), new CsvHelper.Configuration.CsvConfiguration(CultureInfo.InvariantCulture) { Delimiter = separator });
        csv.Read();
        csv.ReadHeader();
        List<Dictionary<string, string>> rows = [];
        while (csv.Read())
        {
            rows.Add(csv.HeaderRecord!.ToDictionary(name => name, name => csv.GetField(name)!));
        }

        return rows;
    }

    // The printed text as one line, so that a message can be looked for whatever the wrapping.
    private protected static string Unwrapped(string output) => string.Join(' ', output.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries));
}
