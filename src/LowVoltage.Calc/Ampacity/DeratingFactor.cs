using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>A published multiplier on an allowed current, with the rules it belongs to and the conditions it holds for.</summary>
/// <remarks>Made by the types that carry the published rules (<see cref="NecAmbient"/>, <see cref="FaaBundle"/> …), or by <see cref="Create"/>. Immutable and thread-safe.</remarks>
public sealed class DeratingFactor
{
    private string? text;

    internal DeratingFactor(double value, DeratingKind kind, RuleSet ruleSet, Reference reference)
    {
        Value = value;
        Kind = kind;
        RuleSet = ruleSet;
        Reference = reference;
    }

    /// <summary>A factor that the caller states, from a standard that is not carried, a maker or a measurement.</summary>
    /// <param name="value">The multiplier, above 0 to 2. One above 1 is applied only where it is allowed explicitly.</param>
    /// <param name="kind">What it accounts for.</param>
    /// <param name="ruleSet">The family of rules whose tables it fits; <see cref="Ampacity.RuleSet.Caller"/> for a table of the caller's.</param>
    /// <param name="condition">What it was read for: <c>ambient 45 °C</c>.</param>
    /// <param name="reference">Where it comes from.</param>
    /// <param name="baseAmbient">The ambient that it counts from; needed for a factor of ambient, where it must be that of the table.</param>
    /// <param name="insulationRating">The insulation rating that it was read for, where it depends on one.</param>
    /// <returns>The factor.</returns>
    /// <exception cref="ArgumentNullException">Condition or reference is null.</exception>
    /// <exception cref="ArgumentException">The condition is empty, or a factor of ambient has no base ambient.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range, or a value is not one of its enumeration.</exception>
    public static DeratingFactor Create(
        double value,
        DeratingKind kind,
        RuleSet ruleSet,
        string condition,
        Reference reference,
        Temperature? baseAmbient = null,
        Temperature? insulationRating = null)
    {
        _ = condition ?? throw new ArgumentNullException(nameof(condition));
        if (string.IsNullOrWhiteSpace(condition))
        {
            throw new ArgumentException("What the factor holds for is needed; the text was empty.", nameof(condition));
        }

        DeratingKind effect = (DeratingKind)Accept.Count((int)kind, 0, (int)DeratingKind.Insulation, nameof(kind));
        if (effect == DeratingKind.Ambient && baseAmbient is null)
        {
            throw new ArgumentException("A factor of ambient needs the ambient that it counts from; baseAmbient was null.", nameof(baseAmbient));
        }

        return new DeratingFactor(
            Accept.Positive(value, 2, "", nameof(value)), effect, (RuleSet)Accept.Count((int)ruleSet, 0, (int)RuleSet.Caller, nameof(ruleSet)), reference ?? throw new ArgumentNullException(nameof(reference)))
        {
            Holds = new LateText(condition),
            BaseAmbientCelsius = baseAmbient is { } air ? TableKey.Celsius(air, nameof(baseAmbient)) : null,
            InsulationCelsius = insulationRating is { } rating ? TableKey.Celsius(rating, nameof(insulationRating)) : null,
        };
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
    public string Condition => text ??= Holds.ToString();

    /// <summary>Whether the rule asks for the factor here. False where the user applies it as a practice of his own.</summary>
    public bool IsRequired { get; internal init; } = true;

    /// <summary><see cref="Condition"/>, before anybody reads it.</summary>
    internal LateText Holds { get; init; }

    internal double? BaseAmbientCelsius { get; init; }

    internal double? InsulationCelsius { get; init; }

    /// <summary>The factor in one line.</summary>
    public override string ToString() => $"{Accept.Text(Value)} for {DeratingEffect.Describe(Kind)} ({Condition}): {Reference}";
}
