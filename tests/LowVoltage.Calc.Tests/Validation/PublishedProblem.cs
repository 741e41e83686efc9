using System.Text.Json;

namespace LowVoltage.Calc.Tests.Validation;

/// <summary>One published problem: its numbers as printed, its answer and the tolerance that the printed digits allow.</summary>
public sealed class PublishedProblem
{
    private readonly JsonElement json;

    private PublishedProblem(JsonElement json) => this.json = json;

    public string Id => json.GetProperty("id").GetString()!;

    public double Answer => json.GetProperty("answer").GetDouble();

    public double Tolerance => json.GetProperty("tolerance").GetDouble();

    public bool Suspect => json.GetProperty("suspect").GetBoolean();

    /// <summary>A given number in the unit of the file: V, A, ohm, W and so on.</summary>
    public double this[string name]
    {
        get
        {
            JsonElement given = json.GetProperty("given").GetProperty(name);
            return given.ValueKind == JsonValueKind.Object ? given.GetProperty("value").GetDouble() : given.GetDouble();
        }
    }

    public string Text(string name) => json.GetProperty("given").GetProperty(name).ToString();

    public ElectricPotential Volts(string name) => ElectricPotential.FromVolts(this[name]);

    public ElectricCurrent Amperes(string name) => ElectricCurrent.FromAmperes(this[name]);

    public ElectricResistance Ohms(string name) => ElectricResistance.FromOhms(this[name]);

    public override string ToString() => Id;

    public static IReadOnlyDictionary<string, PublishedProblem> Load(string file)
    {
        using Stream stream = PublishedTable.Open(file);
        using JsonDocument document = JsonDocument.Parse(stream);
        return document.RootElement.EnumerateArray().Select(e => new PublishedProblem(e.Clone())).ToDictionary(p => p.Id, StringComparer.Ordinal);
    }
}
