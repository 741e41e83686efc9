using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>What a wire gives its heat to: still or moving air of a temperature at an altitude, and walls that it radiates to.</summary>
/// <remarks>Immutable and thread-safe. Every property is checked when it is set.</remarks>
public sealed partial class Surroundings
{
    internal const double LeastCelsius = -70;
    internal const double MostCelsius = 300;
    internal const double MostCoefficient = 1e6;
    private const double MostSpeed = 100;
    private const double LeastHeight = 0.05;
    private const double MostHeight = 10_000;

    /// <summary>Surroundings to be filled by an initialiser; <see cref="Create"/> does without.</summary>
    public Surroundings()
    {
    }

    [SetsRequiredMembers]
    private Surroundings(Surroundings other)
    {
        Ambient = other.Ambient;
        Altitude = other.Altitude;
        Emissivity = other.Emissivity;
        RadiatingSurroundings = other.RadiatingSurroundings;
        AirSpeed = other.AirSpeed;
        VerticalHeight = other.VerticalHeight;
        SurfaceCoefficient = other.SurfaceCoefficient;
    }

    /// <summary>Temperature of the air around the wire, −70 °C to 300 °C.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public required Temperature Ambient
    {
        get;
        init
        {
            AmbientCelsius = Accept.CelsiusWithin(value, LeastCelsius, MostCelsius, nameof(Ambient));
            field = value;
        }
    }

    /// <summary>Pressure altitude, −500 m to 20 000 m; sea level unless stated.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Length Altitude
    {
        get;
        init
        {
            Pascals = StandardAtmosphere.Pascals(
                Accept.MetersWithin(value, StandardAtmosphere.LeastMeters, StandardAtmosphere.MostMeters, nameof(Altitude)));
            field = value;
        }
    }

    /// <summary>Emissivity of the wire's surface, 0 to 1; 0.9 unless stated, which suits insulation of any colour.</summary>
    /// <remarks>
    /// Plastics 0.85 to 0.95. Bare metal radiates far less: bright copper or tin about 0.05, oxidised copper about 0.6 (general tables, from
    /// memory): state it for a bare wire.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public double Emissivity
    {
        get;
        init => field = Accept.Within(value, 0, 1, "", nameof(Emissivity));
    } = 0.9;

    /// <summary>Temperature of the walls that the wire radiates to, −70 °C to 300 °C; <c>null</c>: that of the air.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Temperature? RadiatingSurroundings
    {
        get;
        init
        {
            RadiatingCelsius = value is { } walls
                ? Accept.CelsiusWithin(walls, LeastCelsius, MostCelsius, nameof(RadiatingSurroundings))
                : null;
            field = value;
        }
    }

    /// <summary>Speed of air that blows across the wire, 0 to 100 m/s; still air unless stated.</summary>
    /// <remarks>
    /// Convection is then the larger of natural convection and that of <see cref="ForcedConvection"/>, not their sum, which is on the safe side. A wire along the
    /// stream is cooled less: leave this out. Air too slow for the correlation at the wire's diameter is refused where the two meet.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Speed AirSpeed
    {
        get;
        init
        {
            MetersPerSecond = Accept.Within(Accept.Raw(value), 0, MostSpeed, "m/s", nameof(AirSpeed));
            field = value;
        }
    }

    /// <summary>Height of the straight run of a vertical wire, 0.05 m to 10 km; <c>null</c>: the wire runs level.</summary>
    /// <remarks>
    /// The wire is then as hot as at its top, where the air that rises along it is warmest (<see cref="VerticalConvection"/>). Of a run that goes up in part, state the longest vertical part.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside its range.</exception>
    public Length? VerticalHeight
    {
        get;
        init
        {
            HeightMeters = value is { } height ? Accept.MetersWithin(height, LeastHeight, MostHeight, nameof(VerticalHeight)) : 0;
            field = value;
        }
    }

    /// <summary>
    /// A heat-transfer coefficient that the caller knows, for convection and radiation together; <c>null</c>: computed for the air.
    /// </summary>
    /// <remarks>
    /// For a liquid, or a coefficient from a test. Altitude, height, speed of the air and walls then do nothing, and the emissivity counts only where wires radiate to each
    /// other or to their sleeve (<see cref="BundleHeat"/>).
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">The value is not positive or above 1e6 W/(m²·K).</exception>
    public HeatTransferCoefficient? SurfaceCoefficient
    {
        get;
        init
        {
            WattsPerSquareMeterKelvin = value is { } coefficient
                ? Accept.Positive(Accept.Raw(coefficient), MostCoefficient, "W/(m²·K)", nameof(SurfaceCoefficient))
                : null;
            field = value;
        }
    }

    internal double AmbientCelsius { get; private init; }

    internal double Pascals { get; private init; } = StandardAtmosphere.SeaLevelPascals;

    internal double MetersPerSecond { get; private init; }

    /// <summary>Height of a vertical wire, m; 0 for a level one.</summary>
    internal double HeightMeters { get; private init; }

    internal double? RadiatingCelsius { get; private init; }

    internal double? WattsPerSquareMeterKelvin { get; private init; }
}
