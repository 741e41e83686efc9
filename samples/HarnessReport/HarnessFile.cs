using LowVoltage.Calc.Documents;
using LowVoltage.Calc.Harnesses;

namespace HarnessReport;

/// <summary>Reads a harness from a JSON document or from CSV tables.</summary>
internal static class HarnessFile
{
    public static Harness Read(string path)
    {
        bool tables = Directory.Exists(path);
        string json = tables ? CsvTables.ToJson(path) : File.Exists(path) ? File.ReadAllText(path) : throw new HarnessFileException($"There is no file or folder {path}.");
        if (HarnessDocument.TryRead(json, out HarnessDocument? document, out IReadOnlyList<DocumentFault> faults))
        {
            return document.Harness;
        }

        string many = faults.Count == 1 ? "a mistake" : $"{faults.Count} mistakes";
        throw new HarnessFileException($"{path} has {many}:\n{string.Join("\n", faults.Select(f => tables ? $"{CsvTables.Place(f.Path)}: {f.Message}" : f.ToString()))}");
    }
}
