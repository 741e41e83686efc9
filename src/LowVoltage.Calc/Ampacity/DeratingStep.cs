using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>One step from a table current to a derated current.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class DeratingStep
{
    internal DeratingStep(DeratingFactor factor, bool isForeign, double before)
    {
        Factor = factor;
        IsForeign = isForeign;
        BeforeAmperes = before;
        AfterAmperes = before * factor.Value;
    }

    /// <summary>The factor that was applied.</summary>
    public DeratingFactor Factor { get; }

    /// <summary>Whether the factor belongs to another family of rules than the table.</summary>
    public bool IsForeign { get; }

    /// <summary>The current before the step.</summary>
    public ElectricCurrent Before => ElectricCurrent.FromAmperes(BeforeAmperes);

    /// <summary>The current after the step, not rounded.</summary>
    public ElectricCurrent After => ElectricCurrent.FromAmperes(AfterAmperes);

    /// <summary>The source of the factor.</summary>
    public Reference Reference => Factor.Reference;

    internal double BeforeAmperes { get; }

    internal double AfterAmperes { get; }

    /// <summary>The step in one line.</summary>
    public override string ToString() =>
        $"{Accept.Text(BeforeAmperes)} A × {Accept.Text(Factor.Value)} = {Accept.Text(AfterAmperes)} A: {Factor}";
}
