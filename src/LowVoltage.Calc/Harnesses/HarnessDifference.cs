using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Harnesses;

/// <summary>One thing that differs between two states or two verifications of a harness.</summary>
/// <remarks>Immutable.</remarks>
public sealed class HarnessDifference
{
    internal HarnessDifference(string place, string what, double? before, double? after, string unit, string text)
    {
        Place = place;
        What = what;
        Before = before;
        After = after;
        Unit = unit;
        Text = text;
    }

    /// <summary>Name of the node, branch, source or load.</summary>
    public string Place { get; }

    /// <summary>What differs: <c>voltage</c>, <c>current</c>, <c>condition</c>, the name of a check.</summary>
    public string What { get; }

    /// <summary>The number before, in <see cref="Unit"/>; <c>null</c> where there is none.</summary>
    public double? Before { get; }

    /// <summary>The number after, in <see cref="Unit"/>; <c>null</c> where there is none.</summary>
    public double? After { get; }

    /// <summary>The unit of both numbers; empty where there are none.</summary>
    public string Unit { get; }

    /// <summary>By how much, as a share of the larger of the two numbers; 1 where a word changed.</summary>
    public double Share => Before is { } a && After is { } b && Math.Max(Math.Abs(a), Math.Abs(b)) is > 0 and double most ? Math.Abs(b - a) / most : 1;

    private string Text { get; }

    /// <summary>The difference in one line: <c>lamp: voltage 11.9 V before, 7.1 V after</c>.</summary>
    public override string ToString() => Text.Length > 0
        ? $"{Place}: {What} {Text}"
        : $"{Place}: {What} {Number(Before)} before, {Number(After)} after";

    private string Number(double? value) => value is { } number ? $"{Accept.Short(number)} {Unit}" : "none";
}
