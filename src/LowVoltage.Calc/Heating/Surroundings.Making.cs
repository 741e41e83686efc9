using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <content>The way to describe surroundings that every .NET language has.</content>
public sealed partial class Surroundings
{
    /// <summary>Still air at sea level; the rest by <c>With…</c>.</summary>
    /// <param name="ambient">Temperature of the air, −70 °C to 300 °C.</param>
    /// <returns>The surroundings.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public static Surroundings Create(Temperature ambient)
    {
        _ = Accept.CelsiusWithin(ambient, LeastCelsius, MostCelsius, nameof(ambient));
        return new Surroundings { Ambient = ambient };
    }

    /// <summary>The same at an altitude, where the air is thin and cools less.</summary>
    /// <param name="altitude">Pressure altitude, −500 m to 20 000 m.</param>
    /// <returns>A copy with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside its range.</exception>
    public Surroundings WithAltitude(Length altitude)
    {
        _ = Accept.MetersWithin(altitude, StandardAtmosphere.LeastMeters, StandardAtmosphere.MostMeters, nameof(altitude));
        return new Surroundings(this) { Altitude = altitude };
    }

    /// <summary>The same for a surface of another emissivity.</summary>
    /// <param name="emissivity">Emissivity of the wire's surface, 0 to 1.</param>
    /// <returns>A copy with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Surroundings WithEmissivity(double emissivity) => new(this) { Emissivity = Accept.Within(emissivity, 0, 1, "", nameof(emissivity)) };

    /// <summary>The same between walls of another temperature than the air.</summary>
    /// <param name="radiatingSurroundings">Temperature of the walls, −70 °C to 300 °C.</param>
    /// <returns>A copy with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside its range.</exception>
    public Surroundings WithRadiatingSurroundings(Temperature radiatingSurroundings)
    {
        _ = Accept.CelsiusWithin(radiatingSurroundings, LeastCelsius, MostCelsius, nameof(radiatingSurroundings));
        return new Surroundings(this) { RadiatingSurroundings = radiatingSurroundings };
    }

    /// <summary>The same with air that blows across the wire.</summary>
    /// <param name="airSpeed">See <see cref="AirSpeed"/>.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Surroundings WithAirSpeed(Speed airSpeed)
    {
        _ = Accept.Within(Accept.Raw(airSpeed), 0, MostSpeed, "m/s", nameof(airSpeed));
        return new(this) { AirSpeed = airSpeed };
    }

    /// <summary>The same for a vertical wire.</summary>
    /// <param name="verticalHeight">See <see cref="VerticalHeight"/>; <c>null</c> for a level wire.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Surroundings WithVerticalHeight(Length? verticalHeight)
    {
        _ = verticalHeight is { } height ? Accept.MetersWithin(height, LeastHeight, MostHeight, nameof(verticalHeight)) : 0;
        return new(this) { VerticalHeight = verticalHeight };
    }

    /// <summary>The same with a heat-transfer coefficient that the caller knows: moving air, a liquid, a test.</summary>
    /// <param name="surfaceCoefficient">Convection and radiation together. Positive, at most 1e6 W/(m²·K).</param>
    /// <returns>A copy with it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The coefficient is outside its range.</exception>
    public Surroundings WithSurfaceCoefficient(HeatTransferCoefficient surfaceCoefficient)
    {
        _ = Accept.Positive(Accept.Raw(surfaceCoefficient), MostCoefficient, "W/(m²·K)", nameof(surfaceCoefficient));
        return new Surroundings(this) { SurfaceCoefficient = surfaceCoefficient };
    }
}
