using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>How far above its continuous limit an overload may take a wire's insulation: an ageing allowance, with its source.</summary>
/// <remarks>
/// <para>Two cases are kept apart. <b>Opened:</b> the fuse ends the overload, within four hours at the latest. <b>Sustained:</b> a current just below the conventional
/// fusing current, which the fuse may carry indefinitely; nothing but a person ends it.</para>
/// <para>The allowances are the ageing temperatures of road-vehicle cable: an insulation of a class stands class + 25 K for 240 h and class + 50 K for
/// 6 h, once in its life (from memory). For other insulations they are used by analogy, which no standard does; <see cref="None"/> needs no
/// analogy. Never more than the short-circuit limit is allowed, whatever stands here.</para>
/// <para>Immutable.</para>
/// </remarks>
public sealed class OverloadAllowance
{
    private const double MostKelvins = 100;

    private OverloadAllowance(string name, double sustained, double opened, Reference reference)
    {
        Name = name;
        SustainedKelvins = sustained;
        OpenedKelvins = opened;
        Reference = reference;
    }

    /// <summary>Nothing: an overload never takes the wire above its continuous limit. The strictest.</summary>
    public static OverloadAllowance None { get; } =
        new("no allowance", 0, 0, Reference.CommonPractice("the wire never exceeds its continuous limit, whatever the fuse carries"));

    /// <summary>25 K, the ageing temperature of 240 h, for both cases. The default.</summary>
    public static OverloadAllowance Ageing240Hours { get; } = new("240 h ageing, 25 K", 25, 25, Ageing("240 h at class + 25 K"));

    /// <summary>25 K sustained; 50 K, the ageing temperature of 6 h, for an overload that the fuse ends.</summary>
    public static OverloadAllowance Ageing6Hours { get; } = new("6 h ageing, 50 K when the fuse opens", 25, 50, Ageing("6 h at class + 50 K, 240 h at class + 25 K"));

    /// <summary>Name: <c>240 h ageing, 25 K</c>.</summary>
    public string Name { get; }

    /// <summary>Allowed above the continuous limit for as long as it lasts.</summary>
    public TemperatureDelta Sustained => TemperatureDelta.FromKelvins(SustainedKelvins);

    /// <summary>Allowed above the continuous limit until the fuse opens.</summary>
    public TemperatureDelta Opened => TemperatureDelta.FromKelvins(OpenedKelvins);

    /// <summary>Whose allowance it is.</summary>
    public Reference Reference { get; }

    internal double SustainedKelvins { get; }

    internal double OpenedKelvins { get; }

    /// <summary>An allowance of the caller's.</summary>
    /// <param name="name">Name.</param>
    /// <param name="sustained">Allowed for as long as it lasts: 0 K to 100 K.</param>
    /// <param name="opened">Allowed until the fuse opens: from the former to 100 K.</param>
    /// <param name="reference">Whose allowance it is.</param>
    /// <returns>The allowance.</returns>
    /// <exception cref="ArgumentNullException">The name or the reference is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static OverloadAllowance Create(string name, TemperatureDelta sustained, TemperatureDelta opened, Reference reference)
    {
        double least = Accept.Within(Accept.Raw(sustained), 0, MostKelvins, "K", nameof(sustained));
        return new OverloadAllowance(
            name ?? throw new ArgumentNullException(nameof(name)),
            least,
            Accept.Within(Accept.Raw(opened), least, MostKelvins, "K", nameof(opened)),
            reference ?? throw new ArgumentNullException(nameof(reference)));
    }

    /// <inheritdoc/>
    public override string ToString() => Name;

    private static Reference Ageing(string what) => new()
    {
        Title = "ISO 6722-1", Edition = Editions.Iso6722, Locator = "short-term ageing and thermal overload", Kind = ReferenceKind.FromMemory,
        Note = what + "; also ISO 19642. Made for road-vehicle cable; other insulations by analogy.",
    };
}
