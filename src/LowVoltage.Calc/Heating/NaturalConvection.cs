using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Natural convection from a long horizontal cylinder in still air.</summary>
/// <remarks>
/// <code>
/// Ra = g · expansion · |Ts − Ta| · D³ · Pr / ν²       air at the film temperature (Ts + Ta)/2
/// h  = Nu · k / D
/// </code>
/// <para><b>Symbols.</b> Ts, Ta: surface and ambient temperature. D: diameter. h: heat-transfer coefficient.</para>
/// <para>The heat balance uses Churchill and Chu. Morgan's correlation stands beside it for comparison; for Ra from 0.1 to 1e4, where wires live,
/// Churchill and Chu lies below Morgan, by up to 20 % in Nu, which is up to 6 % in current and on the safe side.</para>
/// </remarks>
public static class NaturalConvection
{
    // Dry air from −100 °C to 1200 °C keeps within it.
    private const double AirPrandtl = 0.705;
    private const double AirPrandtlWidth = 0.04;

    /// <summary>Least Rayleigh number of the data behind the Churchill and Chu correlation.</summary>
    public const double LeastRayleigh = 1e-5;

    /// <summary>Greatest Rayleigh number of the Churchill and Chu correlation.</summary>
    public const double MostRayleigh = 1e12;

    private const double LeastMorgan = 1e-10;

    /// <summary>The correlation that the heat balance uses.</summary>
    public static Reference ChurchillChuReference { get; } = new()
    {
        Title = "S. W. Churchill and H. H. S. Chu, Correlating equations for laminar and turbulent free convection from a horizontal cylinder",
        Edition = "Int. J. Heat Mass Transfer 18, 1975", Locator = "pages 1049 to 1053", Kind = ReferenceKind.Paper,
        Note = "Formula as restated in heat-transfer textbooks.",
    };

    /// <summary>The correlation kept for comparison.</summary>
    public static Reference MorganReference { get; } = new()
    {
        Title = "V. T. Morgan, The overall convective heat transfer from smooth circular cylinders",
        Edition = "Advances in Heat Transfer 11, 1975", Locator = "pages 199 to 264", Kind = ReferenceKind.Paper,
        Note = "Constants as restated in heat-transfer textbooks.",
    };

    /// <summary>Nusselt number by Churchill and Chu.</summary>
    /// <param name="rayleigh">Rayleigh number on the diameter, 0 to 1e12.</param>
    /// <param name="prandtl">Prandtl number of the fluid, 0.01 to 1000.</param>
    /// <returns>The Nusselt number, 0.36 or more.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Rayleigh number is negative or above 1e12, or the Prandtl number is outside its range.</exception>
    /// <remarks>
    /// <code>Nu = {0.60 + 0.387 · Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}²</code>
    /// Data from Ra = 1e-5 up; below, the formula runs into its conduction limit of 0.36, which is on the high side for a wire barely
    /// warmer than the air: <see cref="HeatBalanceState.IsWithinCorrelation"/> says so.
    /// </remarks>
    public static double ChurchillChu(double rayleigh, double prandtl)
    {
        double root = 0.60 + SixthRootTerm(
            Accept.NotNegative(rayleigh, MostRayleigh, "", nameof(rayleigh)),
            Accept.Within(prandtl, 0.01, 1000, "", nameof(prandtl)),
            out _);
        return root * root;
    }

    /// <summary>Nusselt number by Morgan.</summary>
    /// <param name="rayleigh">Rayleigh number on the diameter, 1e-10 to 1e12.</param>
    /// <returns>The Nusselt number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The Rayleigh number is outside 1e-10 to 1e12.</exception>
    /// <remarks>
    /// <code>Nu = C · Ra^n</code>
    /// C and n: 0.675 and 0.058 to Ra = 1e-2; 1.02 and 0.148 to 1e2; 0.850 and 0.188 to 1e4; 0.480 and 0.250 to 1e7; 0.125 and 0.333 to 1e12.
    /// </remarks>
    public static double Morgan(double rayleigh)
    {
        _ = Accept.Within(rayleigh, LeastMorgan, MostRayleigh, "", nameof(rayleigh));
        (double factor, double exponent) = rayleigh switch
        {
            <= 1e-2 => (0.675, 0.058),
            <= 1e2 => (1.02, 0.148),
            <= 1e4 => (0.850, 0.188),
            <= 1e7 => (0.480, 0.250),
            _ => (0.125, 0.333),
        };
        return factor * Math.Pow(rayleigh, exponent);
    }

    /// <summary>Rayleigh number of a cylinder in air.</summary>
    /// <param name="film">Air at the film temperature.</param>
    /// <param name="difference">Temperature of the surface less that of the ambient; its sign does not matter.</param>
    /// <param name="diameter">Outer diameter.</param>
    /// <returns>The Rayleigh number on the diameter.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="film"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The difference is beyond ±2000 K, or the diameter is not positive.</exception>
    public static double RayleighNumber(AirProperties film, TemperatureDelta difference, Length diameter)
    {
        _ = film ?? throw new ArgumentNullException(nameof(film));
        double kelvins = Math.Abs(Accept.Within(Accept.Raw(difference), -2000, 2000, "K", nameof(difference)));
        double meters = Accept.Meters(diameter, nameof(diameter));
        double viscosity = film.SquareMetersPerSecond;
        return AirKernel.StandardGravity / film.Kelvin * kelvins * meters * meters * meters * film.PrandtlNumber / (viscosity * viscosity);
    }

    /// <summary>Heat-transfer coefficient by Churchill and Chu.</summary>
    /// <param name="film">Air at the film temperature.</param>
    /// <param name="difference">Temperature of the surface less that of the ambient; its sign does not matter.</param>
    /// <param name="diameter">Outer diameter.</param>
    /// <returns>h = Nu·k/D, convection only.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="film"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The difference is beyond ±2000 K, the diameter is not positive, or the Rayleigh number is above 1e12.</exception>
    public static HeatTransferCoefficient Coefficient(AirProperties film, TemperatureDelta difference, Length diameter)
    {
        double nusselt = ChurchillChu(RayleighNumber(film, difference, diameter), film.PrandtlNumber);
        return HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(
            nusselt * film.WattsPerMeterKelvin / Accept.Meters(diameter, nameof(diameter)));
    }

    /// <summary>0.387·Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27), and the slope of ln of its Prandtl part against ln Pr.</summary>
    /// <remarks>Near the Prandtl number of air both are Taylor's series to the eighth power, good to 2e-13; elsewhere the powers themselves.</remarks>
    internal static double SixthRootTerm(double rayleigh, double prandtl, out double prandtlSlope)
    {
        double away = prandtl - AirPrandtl;
        if (Math.Abs(away) > AirPrandtlWidth)
        {
            double z = Math.Pow(0.559 / prandtl, 0.5625);
            prandtlSlope = z / (6 * (1 + z));
            return 0.387 * Math.Pow(1 + z, -8 / 27.0) * SixthRoot(rayleigh);
        }

        // Even and odd powers apart: two short chains instead of one long.
        double square = away * away;
        double even = 0.321100624531198345 + (square * (-0.0307425715519035634 + (square * (-0.0340059517092679919 + (square * (-0.0463907743209855887 + (square * -0.0699065051298209789)))))));
        double odd = 0.0354815776227270983 + (square * (0.0310783473740171085 + (square * (0.0390660936349484357 + (square * 0.0564295813063880981)))));
        double slopeEven = 0.0779024091296719918 + (square * (0.0243383074861263546 + (square * (0.0214259035649947962 + (square * (0.0249284761764215248 + (square * 0.0332750873759449425)))))));
        double slopeOdd = -0.0331034816811950898 + (square * (-0.0216881158077242771 + (square * (-0.0225939551179602011 + (square * -0.028435396271100026)))));
        prandtlSlope = slopeEven + (away * slopeOdd);
        return (even + (away * odd)) * SixthRoot(rayleigh);
    }

    private static double SixthRoot(double value) =>
#if NET8_0_OR_GREATER
        Math.Sqrt(Math.Cbrt(value));
#else
        Math.Pow(value, 1 / 6.0);
#endif
}
