namespace LowVoltage.Calc.Heating;

/// <summary>The air between wires and a round sleeve. Lengths in m, temperatures in °C, thermal resistance in K·m/W.</summary>
/// <remarks>
/// <code>1/W = 2π·ka/ln(Di/De) + P·σ·(T1⁴ − T2⁴)/(T1 − T2)/[1/ε′ + (De/Di)·(1/ε − 1)]</code>
/// Conduction and radiation between two cylinders at T1 and T2, ka in the middle between them, no convection.
/// </remarks>
internal static class Sleeve
{
    internal static double Resistance(WireBundle bundle, Surroundings air, double wires, double sleeve)
    {
        double inner = wires + AirKernel.ZeroCelsius, outer = sleeve + AirKernel.ZeroCelsius;
        double ratio = bundle.SleeveMeters / bundle.DiameterMeters;

        // A snug sleeve leaves no air: conduction without end, and no resistance.
        double conduction = 2 * Math.PI * AirKernel.ThermalConductivity(0.5 * (inner + outer), out _) / Math.Max(0, Math.Log(ratio));
        double radiation = ((inner * inner) + (outer * outer)) * (inner + outer) * HeatBalanceKernel.StefanBoltzmann;
        return 1 / (conduction + (Math.PI * bundle.DiameterMeters * radiation * Exchange(bundle, air, ratio)));
    }

    private static double Exchange(WireBundle bundle, Surroundings air, double ratio) => air.Emissivity == 0
        ? 0
        : 1 / ((1 / BundleHeat.Emissivity(bundle, air.Emissivity)) + (((1 / air.Emissivity) - 1) / ratio));
}
