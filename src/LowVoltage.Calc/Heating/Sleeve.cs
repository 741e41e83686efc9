namespace LowVoltage.Calc.Heating;

/// <summary>The air between wires and a round sleeve. Lengths in m, thermal resistance in K·m/W.</summary>
/// <remarks>
/// <code>1/W = 2π·ka/ln(Di/De) + π·De·4·σ·Ta³/[1/ε′ + (De/Di)·(1/ε − 1)]</code>
/// Conduction and radiation between two cylinders, no convection; air and radiation as cold as the ambient, which is safe.
/// </remarks>
internal static class Sleeve
{
    internal static double Resistance(double within, double sleeve, double emissivity, Surroundings air, double airConductivity)
    {
        double conduction = 2 * Math.PI * airConductivity / Math.Max(0, Math.Log(sleeve / within));
        return 1 / (conduction + Radiation(within, sleeve, emissivity, air));
    }

    private static double Radiation(double within, double sleeve, double emissivity, Surroundings air)
    {
        if (air.Emissivity == 0)
        {
            return 0;
        }

        double kelvin = air.AmbientCelsius + AirKernel.ZeroCelsius;
        double exchange = 1 / ((1 / emissivity) + (within / sleeve * ((1 / air.Emissivity) - 1)));
        return Math.PI * within * exchange * 4 * HeatBalanceKernel.StefanBoltzmann * kelvin * kelvin * kelvin;
    }
}
