using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Protection;

/// <summary>
/// A bare wire that loses heat in proportion to its rise above 20 °C, so that everything about it has a closed form:
/// C·dx/dt = a + b·x with x = θ − 20 °C, a = I²·R, b = I²·R·α − G, thus t = C/b·ln((a + b·x₂)/(a + b·x₁)).
/// </summary>
/// <param name="Capacity">C, J/(m·K).</param>
/// <param name="Alpha">α, 1/K.</param>
/// <param name="Scale">All currents times this: the resistance is divided by its square.</param>
internal sealed record LinearWire(double Capacity, double Alpha = 0, double Scale = 1)
{
    /// <summary>G, W/(m·K).</summary>
    public const double Loss = 0.2;

    private const double Diameter = 0.002;

    /// <summary>R, Ω/m.</summary>
    public double Ohms => 0.02 / (Scale * Scale);

    public WireLimits Limits(double start = 70, double sustained = 95, double overload = 95, double shortCircuit = 160)
    {
        ConductorMaterial metal = new()
        {
            Name = "linear", Reference = LowVoltage.Calc.References.Reference.CommonPractice("built by the test"), OhmMeters20 = 1e-8,
            TemperatureCoefficient = Alpha, InferredZeroCelsius = -1e6, HeatCapacityJoulesPerCubicMeterKelvin = 3e6, MeltingPointCelsius = 1400,
        };
        HeatBalanceKernel heat = new(Diameter, 0, Ohms, metal, Given(20, Loss / (Math.PI * Diameter)));
        return new WireLimits(heat, Capacity, start, sustained, overload, shortCircuit);
    }

    /// <summary>The current that holds a temperature: I²·R·(1 + α·x) = G·x.</summary>
    public double Steady(double celsius) => Math.Sqrt(Loss * (celsius - 20) / (Ohms * (1 + (Alpha * (celsius - 20)))));

    public double Seconds(double amperes, double limit, double start = 70)
    {
        double a = amperes * amperes * Ohms, b = (a * Alpha) - Loss, end = a + (b * (limit - 20));
        return end > 0 ? Capacity / b * Math.Log(end / (a + (b * (start - 20)))) : double.PositiveInfinity;
    }

    /// <summary>Temperature after a time, α = 0: x = a/G − (a/G − x₁)·exp(−G·t/C).</summary>
    public double Celsius(double amperes, double seconds, double start = 70)
    {
        double steady = amperes * amperes * Ohms / Loss;
        return 20 + steady - ((steady - (start - 20)) * Math.Exp(-Loss * seconds / Capacity));
    }

    /// <summary>The least value of a convex function of ln x between two places, by thirds.</summary>
    public static (double Place, double Value) Least(Func<double, double> function, double from, double to)
    {
        double low = Math.Log(from), high = Math.Log(to);
        for (int i = 0; i < 200; i++)
        {
            double left = low + ((high - low) / 3), right = high - ((high - low) / 3);
            if (function(Math.Exp(left)) <= function(Math.Exp(right)))
            {
                high = right;
            }
            else
            {
                low = left;
            }
        }

        double place = Math.Exp(0.5 * (low + high));
        return (place, function(place));
    }
}
