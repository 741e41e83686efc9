using LowVoltage.Calc.Checks;

namespace LowVoltage.Calc.Design;

/// <summary>How far given wiring can be pushed in one direction, and what stops it there.</summary>
/// <typeparam name="T">The quantity that was varied.</typeparam>
/// <remarks>Immutable. The value passes every check that the starting circuit passes; the accuracy is one part in a million of the range searched, on the safe side.</remarks>
public sealed class DesignLimit<T>
    where T : struct
{
    internal DesignLimit(T? value, CheckResult? governing, string explanation)
    {
        Value = value;
        Governing = governing;
        Explanation = explanation;
    }

    /// <summary>The furthest value that passes; <c>null</c> when nothing in the range searched does.</summary>
    public T? Value { get; }

    /// <summary>The check that fails beyond the value; <c>null</c> when the whole range searched passes.</summary>
    public CheckResult? Governing { get; }

    /// <summary>The answer in words.</summary>
    public string Explanation { get; }

    /// <inheritdoc/>
    public override string ToString() => Explanation;
}
