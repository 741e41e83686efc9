using System.Text.Json;

namespace CircuitPage;

/// <summary>Whether two documents say the same; a number may differ in its last bits, which a change of units costs.</summary>
internal static class SameJson
{
    private const double Relative = 1e-13;

    public static bool Are(string one, string other)
    {
        using JsonDocument first = JsonDocument.Parse(one), second = JsonDocument.Parse(other);
        return Are(first.RootElement, second.RootElement);
    }

    private static bool Are(JsonElement one, JsonElement other) => one.ValueKind == other.ValueKind && one.ValueKind switch
    {
        JsonValueKind.Object => Members(one).Count == Members(other).Count && Members(one).All(pair => other.TryGetProperty(pair.Key, out JsonElement value) && Are(pair.Value, value)),
        JsonValueKind.Array => one.GetArrayLength() == other.GetArrayLength() && one.EnumerateArray().Zip(other.EnumerateArray()).All(pair => Are(pair.First, pair.Second)),
        JsonValueKind.Number => Math.Abs(one.GetDouble() - other.GetDouble()) <= Relative * Math.Abs(one.GetDouble()),
        JsonValueKind.String => one.GetString() == other.GetString(),
        _ => true,
    };

    private static Dictionary<string, JsonElement> Members(JsonElement element) => element.EnumerateObject().ToDictionary(member => member.Name, member => member.Value);
}
