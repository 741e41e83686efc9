using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>How hot a wire gets in a short circuit, and what its insulation stands.</summary>
/// <remarks>Immutable.</remarks>
public sealed class FaultedWire
{
    internal FaultedWire(string wire, double celsius, double limit, double amperes, bool melts, bool stays)
    {
        Wire = wire;
        Celsius = celsius;
        LimitCelsius = limit;
        Amperes = amperes;
        Melts = melts;
        Stays = stays;
    }

    /// <summary>Name of the wire.</summary>
    public string Wire { get; }

    /// <summary>The highest temperature that its conductor reaches, an upper bound; the melting point of the metal where it gets that far.</summary>
    public Temperature Temperature => Temperature.FromDegreesCelsius(Celsius);

    /// <summary>What its insulation stands: for a fault that ends its short-circuit limit, for one that stays its continuous limit.</summary>
    public Temperature Limit => Temperature.FromDegreesCelsius(LimitCelsius);

    /// <summary>The current that takes it there; of a fault that stays, the one that stays.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Whether its metal may melt.</summary>
    public bool Melts { get; }

    /// <summary>Whether the current stays, so that the continuous limit counts.</summary>
    public bool Stays { get; }

    /// <summary>Whether it gets hotter than it may.</summary>
    public bool IsTooHot => Celsius > LimitCelsius * (1 + 1e-9);

    internal double Celsius { get; }

    internal double LimitCelsius { get; }

    internal double Amperes { get; }

    /// <inheritdoc/>
    public override string ToString() => Melts
        ? $"{Wire} melts"
        : $"{Wire} reaches {Accept.Short(Celsius)} °C, {(IsTooHot ? "more than" : "of at most")} {Accept.Short(LimitCelsius)} °C";
}
