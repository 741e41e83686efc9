using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Design;

/// <summary>The conductor temperature of a chain of self-heated stretches, for the operating-point kernel.</summary>
internal readonly struct ChainTemperature(ChainLink[] links) : IConductorTemperature
{
    private readonly ChainLink[] links = links;

    public bool DependsOnCurrent => true;

    /// <summary>The hottest stretch.</summary>
    public double CelsiusAt(double heatingAmperes)
    {
        double hottest = double.NegativeInfinity;
        for (int i = 0; i < links.Length; i++)
        {
            hottest = Math.Max(hottest, links[i].CelsiusAt(heatingAmperes));
        }

        return hottest;
    }

    public double RatioAt(double heatingAmperes)
    {
        double cold = 0, warm = 0;
        for (int i = 0; i < links.Length; i++)
        {
            ref readonly ChainLink link = ref links[i];
            double celsius = link.CelsiusAt(heatingAmperes), ohms = link.Ohms20;
            if (celsius > link.Conductor.Material.MeltingPointCelsius)
            {
                return double.PositiveInfinity;
            }

            cold += ohms;
            warm += ohms * link.Conductor.Material.RatioTo20(celsius);
        }

        return warm / cold;
    }

    public double RatioPerSquareAmpere
    {
        get
        {
            double cold = 0, bend = 0;
            for (int i = 0; i < links.Length; i++)
            {
                ref readonly ChainLink link = ref links[i];
                cold += link.Ohms20;
                bend += link.IsRated ? link.Ohms20 * link.Conductor.Material.TemperatureCoefficient * link.RiseKelvins / (link.RatedAmperes * link.RatedAmperes) : 0;
            }

            return bend / cold;
        }
    }

    public double MeltingAmperes
    {
        get
        {
            double least = double.PositiveInfinity;
            for (int i = 0; i < links.Length; i++)
            {
                ref readonly ChainLink link = ref links[i];
                double spare = link.Conductor.Material.MeltingPointCelsius - link.BaseCelsius;
                least = link.IsRated && link.RiseKelvins > 0 ? Math.Min(least, link.RatedAmperes * Math.Sqrt(Math.Max(0, spare) / link.RiseKelvins)) : least;
            }

            return least;
        }
    }
}
