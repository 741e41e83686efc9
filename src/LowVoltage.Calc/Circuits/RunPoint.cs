using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>A point of a run that feeds loads along its length.</summary>
public readonly struct RunPoint
{
    private readonly double meters;
    private readonly double volts;
    private readonly double amperes;

    internal RunPoint(double meters, double volts, double amperes)
    {
        this.meters = meters;
        this.volts = volts;
        this.amperes = amperes;
    }

    /// <summary>Distance from the near feed.</summary>
    public Length Distance => Length.FromMeters(meters);

    /// <summary>Voltage there.</summary>
    public ElectricPotential Voltage => ElectricPotential.FromVolts(volts);

    /// <summary>Current arriving from the near feed; negative when it comes from the far one.</summary>
    public ElectricCurrent CurrentFromNear => ElectricCurrent.FromAmperes(amperes);

    internal double Volts => volts;
}
