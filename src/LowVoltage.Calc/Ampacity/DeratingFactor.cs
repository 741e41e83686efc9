using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>A published multiplier on an allowed current, with the rules it belongs to and the conditions it holds for.</summary>
/// <remarks>Made by the types that carry the published rules (<see cref="NecAmbient"/>, <see cref="FaaBundle"/> …). Immutable and thread-safe.</remarks>
public sealed class DeratingFactor
{
    internal DeratingFactor(double value, DeratingKind kind, RuleSet ruleSet, Reference reference)
    {
        Value = value;
        Kind = kind;
        RuleSet = ruleSet;
        Reference = reference;
    }

    /// <summary>The multiplier.</summary>
    public double Value { get; }

    /// <summary>What it accounts for.</summary>
    public DeratingKind Kind { get; }

    /// <summary>The family of rules whose tables it fits.</summary>
    public RuleSet RuleSet { get; }

    /// <summary>Where it comes from.</summary>
    public Reference Reference { get; }

    /// <summary>The ambient that the factor counts from, where 1.00 is reached; null when it does not depend on the ambient.</summary>
    public Temperature? BaseAmbient => BaseAmbientCelsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>The insulation rating that the factor was read for; null when it does not depend on it.</summary>
    public Temperature? InsulationRating => InsulationCelsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null;

    /// <summary>What the rule counts as a bundle, in words; empty when it counts none.</summary>
    public string BundleMeaning { get; internal init; } = "";

    /// <summary>What the factor was read for, and which row stood in: <c>ambient 43 °C, row 45 °C</c>.</summary>
    public string Condition { get; internal init; } = "";

    /// <summary>Whether the rule asks for the factor here. False where the user applies it as a practice of his own.</summary>
    public bool IsRequired { get; internal init; } = true;

    internal double? BaseAmbientCelsius { get; init; }

    internal double? InsulationCelsius { get; init; }

    /// <summary>The factor in one line.</summary>
    public override string ToString() => $"{Accept.Text(Value)} for {DeratingEffect.Describe(Kind)} ({Condition}): {Reference}";
}
