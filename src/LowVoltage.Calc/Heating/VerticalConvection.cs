using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Natural convection from a vertical cylinder in still air: a wire that runs up a wall, a mast or a rack.</summary>
/// <remarks>
/// <code>
/// h·D/k = (4/3)·[7·Ra·Pr/(5·(20 + 21·Pr))]^(1/4)·D/L + 4·(272 + 315·Pr)/(35·(64 + 63·Pr))     mean over the height
/// at the top the first part counts three quarters
/// </code>
/// <para><b>Symbols.</b> Ra [–] Rayleigh number on the height L; Pr [–] Prandtl number; D diameter; k conductivity of the air at the film temperature.</para>
/// <para>The air that rises along the wire warms up: it cools the top less than the bottom, and a thin wire much less than one that lies level, by half and more.
/// <see cref="Surroundings.VerticalHeight"/> puts the coefficient at the top, the hottest place, into the heat balance.</para>
/// <para><b>Source.</b> Le Fevre and Ede (1956). <b>Valid for</b> laminar flow of air, Ra on the height to 1e9; beyond, the turbulent flow cools more than this says. The formula is the beginning of a
/// series for a thin boundary layer; against the exact solution for air (Cebeci 1974, in the fit of Popiel 2008, from memory) it lies 6 % high for a plate and below from (L/D)/Gr^(1/4) = 0.1 on, by up to 13 %. A wire that
/// touches the wall is cooled less than one that is free on all sides.</para>
/// </remarks>
public static class VerticalConvection
{
    /// <summary>Greatest Rayleigh number on the height of the laminar flow that the formula is for.</summary>
    public const double MostRayleigh = 1e9;

    /// <summary>The source of the formula.</summary>
    public static Reference LeFevreEdeReference { get; } = new()
    {
        Title = "E. J. Le Fevre and A. J. Ede, Laminar free convection from the outer surface of a vertical circular cylinder",
        Edition = "Proc. 9th Int. Congress of Applied Mechanics, Brussels, volume 4, 1956", Locator = "pages 175 to 183", Kind = ReferenceKind.FromMemory,
        Note = "Formula as restated in heat-transfer textbooks.",
    };

    /// <summary>Mean Nusselt number on the height by Le Fevre and Ede.</summary>
    /// <param name="rayleigh">Rayleigh number on the height, 0 to 1e12; laminar to <see cref="MostRayleigh"/>.</param>
    /// <param name="prandtl">Prandtl number of the fluid, 0.01 to 100.</param>
    /// <param name="heightToDiameter">Height over diameter, 0.01 to 1e6.</param>
    /// <returns>h·L/k.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static double LeFevreEde(double rayleigh, double prandtl, double heightToDiameter)
    {
        _ = Accept.NotNegative(rayleigh, 1e12, "", nameof(rayleigh));
        _ = Accept.Within(prandtl, 0.01, 100, "", nameof(prandtl));
        double ratio = Accept.Within(heightToDiameter, 0.01, 1e6, "", nameof(heightToDiameter));
        return ratio * (VerticalKernel.Plate(rayleigh / (ratio * ratio * ratio), ratio, prandtl) + VerticalKernel.Curved(prandtl));
    }

    /// <summary>Heat-transfer coefficient at the top of a vertical wire, where it is hottest.</summary>
    /// <param name="film">Air at the film temperature.</param>
    /// <param name="difference">Temperature of the surface less that of the ambient; its sign does not matter.</param>
    /// <param name="diameter">Outer diameter.</param>
    /// <param name="height">Height of the straight vertical run.</param>
    /// <returns>h, convection only.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="film"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The difference is beyond ±2000 K, or the diameter or the height is not positive.</exception>
    public static HeatTransferCoefficient CoefficientAtTop(AirProperties film, TemperatureDelta difference, Length diameter, Length height)
    {
        double rayleigh = NaturalConvection.RayleighNumber(film, difference, diameter), meters = Accept.Meters(diameter, nameof(diameter));
        double ratio = Accept.Meters(height, nameof(height)) / meters;
        return HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(
            ((0.75 * VerticalKernel.Plate(rayleigh, ratio, film.PrandtlNumber)) + VerticalKernel.Curved(film.PrandtlNumber)) * film.WattsPerMeterKelvin / meters);
    }
}
