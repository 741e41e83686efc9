using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A load that an interruption changes.</summary>
/// <remarks>Immutable.</remarks>
public sealed class FaultedLoad
{
    internal FaultedLoad(string load, LoadEffect effect, double before, double after, double amperes, string? through)
    {
        Load = load;
        Effect = effect;
        BeforeVolts = before;
        AfterVolts = after;
        Amperes = amperes;
        Through = through;
    }

    /// <summary>Name of the load.</summary>
    public string Load { get; }

    /// <summary>What becomes of it.</summary>
    public LoadEffect Effect { get; }

    /// <summary>Its voltage before.</summary>
    public ElectricPotential Before => ElectricPotential.FromVolts(BeforeVolts);

    /// <summary>Its voltage with the fault; negative where it is fed backwards.</summary>
    public ElectricPotential After => ElectricPotential.FromVolts(AfterVolts);

    /// <summary>Its current with the fault; negative where it is fed backwards.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>Name of the branch, or where there is none of the load, that brings it what it should not get; <c>null</c> where it is not fed back.</summary>
    public string? Through { get; }

    internal double BeforeVolts { get; }

    internal double AfterVolts { get; }

    internal double Amperes { get; }

    /// <inheritdoc/>
    public override string ToString() => Effect switch
    {
        LoadEffect.Reversed => $"{Load} is fed backwards with {Accept.Short(AfterVolts)} V{By}",
        LoadEffect.FedBack => $"{Load} is fed {Accept.Short(AfterVolts)} V by another way{By}",
        LoadEffect.Dead => $"{Load} is dead",
        LoadEffect.DropsOut => $"{Load} drops out at {Accept.Short(AfterVolts)} V",
        LoadEffect.Rises => $"{Load} rises from {Accept.Short(BeforeVolts)} V to {Accept.Short(AfterVolts)} V",
        _ => $"{Load} falls from {Accept.Short(BeforeVolts)} V to {Accept.Short(AfterVolts)} V",
    };

    private string By => Through is null ? "" : $" through {Through}";
}
