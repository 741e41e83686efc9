using System.Text;

namespace CircuitPage;

/// <summary>The circuit in the address of the page, behind the #, so that it can be sent: <c>units=us&amp;load_A=4&amp;feed_ft=18</c>. It never leaves the browser.</summary>
internal static class Address
{
    // More is no field of a circuit.
    private const int LongestText = 400;

    private const string Units = "units";
    private const string Us = "us";

    /// <summary>The fields in use; empty ones, and lists at their first entry, are left out.</summary>
    public static string Write(PageState state)
    {
        StringBuilder text = new();
        if (state.Units == PageUnits.Us)
        {
            text.Append(Units).Append('=').Append(Us);
        }

        foreach (Field field in state.Used)
        {
            string value = state.Text(field.Key).Trim();
            bool isSilent = value.Length == 0 || (field.Kind == FieldKind.Choice && value == field.Default && field.IsFolded);
            value = field.Kind == FieldKind.Choice ? state.Choice(field.Key) : value;
            if (!isSilent || (field.Kind == FieldKind.Choice && !field.IsFolded))
            {
                text.Append(text.Length > 0 ? "&" : "").Append(field.AddressKey(state.Units)).Append('=').Append(Uri.EscapeDataString(value).Replace("%20", "+", StringComparison.Ordinal));
            }
        }

        return text.ToString();
    }

    /// <summary>The fields of an address.</summary>
    /// <param name="address">Without the #.</param>
    /// <param name="remarks">What of it could not be used: nothing is silently left out.</param>
    public static PageState Read(string address, out IReadOnlyList<string> remarks)
    {
        List<string> found = [];
        List<(string Key, string Value)> pairs = [.. address.Split('&', StringSplitOptions.RemoveEmptyEntries).Select(Pair)];
        PageUnits units = pairs.Contains((Units, Us)) ? PageUnits.Us : PageUnits.Metric;
        Dictionary<string, Field> byName = Fields.All.ToDictionary(field => field.AddressKey(units));
        Dictionary<string, string> texts = new(StringComparer.Ordinal);
        foreach ((string key, string value) in pairs.Where(pair => pair.Key != Units))
        {
            if (!byName.TryGetValue(key, out Field? field))
            {
                found.Add($"'{Shortened(key)}' is not a field of this page.");
            }
            else if (value.Length > LongestText || !Fits(field, value))
            {
                found.Add($"'{Shortened(value)}' is not an entry of \"{field.Label}\".");
            }
            else if (!texts.TryAdd(field.Key, value))
            {
                found.Add($"\"{field.Label}\" is there twice; the first counts.");
            }
        }

        found.AddRange(pairs.Where(pair => pair.Key == Units && pair.Value != Us).Select(pair => $"'{Shortened(pair.Value)}' is no system of units."));
        PageState state = new(units, texts);
        found.AddRange(texts.Keys.Select(key => Fields.Find(key)!).Where(field => !field.IsUsed(state)).Select(field => $"\"{field.Label}\" has no use with this supply, load and return."));
        remarks = found;
        return state;
    }

    private static bool Fits(Field field, string value) => field.Kind switch
    {
        FieldKind.Choice => field.Choices.Any(choice => choice.Value == value),
        FieldKind.Tick => value == "yes",
        _ => true,
    };

    private static (string Key, string Value) Pair(string part)
    {
        int equals = part.IndexOf('=', StringComparison.Ordinal);
        return equals < 0 ? (Unescape(part), "") : (Unescape(part[..equals]), Unescape(part[(equals + 1)..]));
    }

    private static string Unescape(string text) => Uri.UnescapeDataString(text.Replace('+', ' '));

    private static string Shortened(string text) => text.Length > 40 ? text[..40] + "..." : text;
}
