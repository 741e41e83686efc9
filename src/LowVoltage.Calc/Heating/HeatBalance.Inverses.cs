using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Numerics;
using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <content>The balance solved for what is around the wire, and for the wire.</content>
public static partial class HeatBalance
{
    private const double ThinnestMeters = 1e-5;
    private const double ThickestMeters = 0.1;

    /// <summary>The heat-transfer coefficient, convection and radiation together, that a measured temperature tells of.</summary>
    /// <param name="wire">The wire; a wall of zero makes it bare.</param>
    /// <param name="ambient">Temperature of what is around it, −70 °C to 300 °C.</param>
    /// <param name="current">The current. Positive.</param>
    /// <param name="conductor">Temperature that the conductor settled at, above the ambient by more than the drop in the insulation.</param>
    /// <returns>h = q′/[π·D·(θs − θa)], with q′ = I²·R′(θc) and θs = θc − q′·ρT·ln(D/d)/(2π); for <see cref="Surroundings.SurfaceCoefficient"/>.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="wire"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or the conductor is too cold for any coefficient to 1e6 W/(m²·K).</exception>
    public static HeatTransferCoefficient CoefficientFrom(Wire wire, Temperature ambient, ElectricCurrent current, Temperature conductor)
    {
        _ = wire ?? throw new ArgumentNullException(nameof(wire));
        _ = Accept.CelsiusWithin(ambient, Surroundings.LeastCelsius, Surroundings.MostCelsius, nameof(ambient));
        HeatBalanceKernel kernel = HeatBalanceKernel.For(wire, new Surroundings { Ambient = ambient });
        double amperes = Accept.Amperes(current, nameof(current)), celsius = Conductor(conductor, kernel, nameof(conductor));
        double heat = amperes * amperes * kernel.OhmsPerMeterAt(celsius), area = Math.PI * kernel.Diameter;
        double rise = celsius - (heat * kernel.InnerResistance) - kernel.NoLoadCelsius;
        double coefficient = heat / (area * rise);
        if (rise > 0 && coefficient <= Surroundings.MostCoefficient)
        {
            return HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(coefficient);
        }

        double least = kernel.NoLoadCelsius + (heat * (kernel.InnerResistance + (1 / (area * Surroundings.MostCoefficient))));
        return HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(
            Accept.Refuse(nameof(conductor), celsius, "°C", $"above {Accept.Text(least)} °C, the ambient and what the insulation takes at this current"));
    }

    /// <summary>Diameter of a bare solid wire that a current brings to a temperature.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="surroundings">Air, altitude and emissivity: bare metal radiates little.</param>
    /// <param name="current">The current. Positive.</param>
    /// <param name="conductor">The temperature, above that of the surroundings.</param>
    /// <returns>The diameter, 0.01 mm to 100 mm.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range, or no diameter of the range fits.</exception>
    public static Length SolidDiameterFor(ConductorMaterial material, Surroundings surroundings, ElectricCurrent current, Temperature conductor)
    {
        _ = material ?? throw new ArgumentNullException(nameof(material));
        _ = surroundings ?? throw new ArgumentNullException(nameof(surroundings));
        double amperes = Accept.Amperes(current, nameof(current));
        double celsius = Conductor(conductor, Solid(material, surroundings, ThickestMeters), nameof(conductor));
        ByDiameter function = new(material, surroundings, celsius, amperes);
        double least = Solid(material, surroundings, ThinnestMeters).AmperesFor(celsius), most = Solid(material, surroundings, ThickestMeters).AmperesFor(celsius);
        return amperes >= least && amperes <= most && Brent.TryFindRoot(function, Math.Log(ThinnestMeters), Math.Log(ThickestMeters), 1e-13, out double root)
            ? Length.FromMeters(Math.Exp(root))
            : Length.FromMeters(Accept.Refuse(
                nameof(current), amperes, "A", $"from {Accept.Text(least)} A to {Accept.Text(most)} A, what 0.01 mm and 100 mm carry at {Accept.Text(celsius)} °C here"));
    }

    private static HeatBalanceKernel Solid(ConductorMaterial material, Surroundings surroundings, double meters) =>
        new(meters, 0, material.OhmMeters20 / (Math.PI / 4 * meters * meters), material, surroundings);

    /// <summary>Current that a diameter carries over the one sought, less one, against the logarithm of the diameter.</summary>
    private readonly struct ByDiameter(ConductorMaterial material, Surroundings surroundings, double celsius, double amperes) : IScalarFunction
    {
        public double Evaluate(double x) => (Solid(material, surroundings, Math.Exp(x)).AmperesFor(celsius) / amperes) - 1;
    }
}
