namespace LowVoltage.Calc.Conductors;

/// <summary>What every size type does with its <c>default</c>, which is no size: one text, two refusals.</summary>
internal static class NoSize
{
    internal const string Text = "no size";

    /// <summary>The refusal of a property that only a size has.</summary>
    internal static InvalidOperationException Read(string type) => new($"There is no size here: {Said(type)}.");

    /// <summary>The refusal of an argument.</summary>
    internal static ArgumentOutOfRangeException Argument(string name, string type) =>
        new(name, Text, $"{name} must be a size; it was no size: {Said(type)}.");

    private static string Said(string type) => $"a default {type}, or what a TryParse left that answered false";
}
