namespace LowVoltage.Calc.Quantities;

/// <summary>The refusal of a result struct that nothing has filled: a <c>default</c> must not read as an answer of zero.</summary>
internal static class NoValue
{
    internal static InvalidOperationException Read(string type) => new($"There is no result here: a default {type} holds none.");
}
