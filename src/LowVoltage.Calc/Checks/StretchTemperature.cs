using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Checks;

/// <summary>The conductor temperature of the circuit's own stretches, for the operating-point kernel.</summary>
internal readonly struct StretchTemperature(SegmentState[] stretches, int count) : IConductorTemperature
{
    private readonly SegmentState[] stretches = stretches;

    public bool DependsOnCurrent => true;

    /// <summary>The hottest stretch.</summary>
    public double CelsiusAt(double heatingAmperes)
    {
        double hottest = double.NegativeInfinity;
        for (int i = 0; i < count; i++)
        {
            hottest = Math.Max(hottest, stretches[i].CelsiusAt(heatingAmperes));
        }

        return hottest;
    }

    public double RatioAt(double heatingAmperes)
    {
        double cold = 0, warm = 0;
        for (int i = 0; i < count; i++)
        {
            ref readonly SegmentState stretch = ref stretches[i];
            double celsius = stretch.CelsiusAt(heatingAmperes), ohms = stretch.Ohms20;
            if (celsius > stretch.Conductor.Material.MeltingPointCelsius)
            {
                return double.PositiveInfinity;
            }

            cold += ohms;
            warm += ohms * stretch.Conductor.Material.RatioTo20(celsius);
        }

        return warm / cold;
    }
}
