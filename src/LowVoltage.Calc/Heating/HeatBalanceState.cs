using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>A wire in balance with its surroundings: temperatures, heat and the share of each path.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class HeatBalanceState
{
    private readonly double amperes;
    private readonly double conductor;
    private readonly double surface;
    private readonly double film;
    private readonly double convection;
    private readonly double radiation;

    internal HeatBalanceState(in HeatBalanceKernel kernel, double amperes, double surface, Surroundings air)
    {
        (convection, radiation, double rayleigh) = kernel.Paths(surface);
        this.amperes = amperes;
        this.surface = surface;
        conductor = kernel.ConductorInBalance(amperes * amperes, surface);
        film = 0.5 * (surface + air.AmbientCelsius);
        RayleighNumber = rayleigh;
        IsForced = kernel.IsForcedAt(surface);
        IsWithinCorrelation = IsForced || air.WattsPerSquareMeterKelvin is not null
            || (rayleigh >= NaturalConvection.LeastRayleigh && rayleigh <= NaturalConvection.MostRayleigh);
    }

    /// <summary>Current of one wire.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(amperes);

    /// <summary>Temperature of the (hottest) conductor.</summary>
    public Temperature ConductorTemperature => Temperature.FromDegreesCelsius(conductor);

    /// <summary>Temperature of the outer surface.</summary>
    public Temperature SurfaceTemperature => Temperature.FromDegreesCelsius(surface);

    /// <summary>Mean of surface and ambient temperature, at which the air properties were taken.</summary>
    public Temperature FilmTemperature => Temperature.FromDegreesCelsius(film);

    /// <summary>Heat that leaves, per length: of the wire, or of the whole bundle.</summary>
    public LinearPowerDensity HeatPerLength => LinearPowerDensity.FromWattsPerMeter(convection + radiation);

    /// <summary>Heat that leaves by convection (or by the coefficient that the caller gave), per length.</summary>
    public LinearPowerDensity Convection => LinearPowerDensity.FromWattsPerMeter(convection);

    /// <summary>Heat that leaves by radiation, per length; negative when the walls are hotter than the wire.</summary>
    public LinearPowerDensity Radiation => LinearPowerDensity.FromWattsPerMeter(radiation);

    /// <summary>Radiation as a part of all the heat; 0 when no heat leaves.</summary>
    public double RadiativeShare => Share(radiation);

    /// <summary>Convection as a part of all the heat; 0 when no heat leaves.</summary>
    public double ConvectiveShare => Share(convection);

    /// <summary>Whether the stream of <see cref="Surroundings.AirSpeed"/> carries off more heat than natural convection would, and so is what counts.</summary>
    public bool IsForced { get; }

    /// <summary>Rayleigh number on the outer diameter; 0 when the caller gave the coefficient.</summary>
    public double RayleighNumber { get; }

    /// <summary>Whether the Rayleigh number lies in the range of the correlation's data, 1e-5 to 1e12 (or the coefficient was given, or the stream counts).</summary>
    /// <remarks>False for a wire that is hardly warmer than the air, where the correlation's conduction limit stands in.</remarks>
    public bool IsWithinCorrelation { get; }

    /// <summary>The sources of the model.</summary>
    public IReadOnlyList<Reference> References { get; } = HeatBalance.References;

    // Without current what comes from hot walls goes to the air: the sum is rounding, and not a heat to have shares of.
    private double Share(double path)
    {
        double whole = convection + radiation;
        return amperes == 0 || Math.Abs(whole) <= 1e-12 * Math.Abs(path) ? 0 : path / whole;
    }
}
