using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Design;

/// <summary>The conductor temperature of a chain of self-heated stretches, for the operating-point kernel.</summary>
internal readonly struct ChainTemperature(ChainLink[] links, int count, double ambientCelsius) : IConductorTemperature
{
    private readonly ChainLink[] links = links;
    private readonly int count = count;
    private readonly double ambient = ambientCelsius;

    public bool DependsOnCurrent => true;

    /// <summary>The hottest stretch.</summary>
    public double CelsiusAt(double heatingAmperes)
    {
        double hottest = ambient;
        for (int i = 0; i < count; i++)
        {
            hottest = Math.Max(hottest, links[i].CelsiusAt(ambient, heatingAmperes));
        }

        return hottest;
    }

    public double RatioAt(double heatingAmperes)
    {
        double cold = 0, warm = 0;
        for (int i = 0; i < count; i++)
        {
            ref readonly ChainLink link = ref links[i];
            double celsius = link.CelsiusAt(ambient, heatingAmperes), ohms = link.Ohms20;
            if (celsius > link.Conductor.Material.MeltingPointCelsius)
            {
                return double.PositiveInfinity;
            }

            cold += ohms;
            warm += ohms * link.Conductor.Material.RatioTo20(celsius);
        }

        return warm / cold;
    }
}
