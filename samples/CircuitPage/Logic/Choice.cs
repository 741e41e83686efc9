namespace CircuitPage;

/// <summary>One entry of a list.</summary>
/// <param name="Value">What the address and the schedule call it.</param>
/// <param name="Words">What the page calls it.</param>
internal sealed record Choice(string Value, string Words)
{
    public static Choice[] Plain(IEnumerable<string> values) => [.. values.Select(value => new Choice(value, value))];
}
