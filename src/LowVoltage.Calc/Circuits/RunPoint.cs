using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>A point of a run that feeds loads along its length.</summary>
/// <remarks>A <c>default</c> is no point, and every member says so.</remarks>
public readonly struct RunPoint
{
    private readonly double meters;
    private readonly double volts;
    private readonly double amperes;
    private readonly bool made;

    internal RunPoint(double meters, double volts, double amperes)
    {
        this.meters = meters;
        this.volts = volts;
        this.amperes = amperes;
        made = true;
    }

    /// <summary>Distance from the near feed.</summary>
    public Length Distance => Length.FromMeters(Made(meters));

    /// <summary>Voltage there.</summary>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(Made(volts));

    /// <summary>Current arriving from the near feed; negative when it comes from the far one.</summary>
    public ElectricCurrent CurrentFromNear => ElectricCurrent.FromAmperes(Made(amperes));

    internal double Volts => volts;

    private double Made(double value) => made ? value : throw NoValue.Read(nameof(RunPoint));
}
