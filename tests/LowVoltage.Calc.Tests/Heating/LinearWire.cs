using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>A wire that loses its heat through a given coefficient: loss and resistance are straight in temperature, and every time has a closed form.</summary>
/// <remarks>
/// G = π·D·h from the surface, W = ρT·ln(D/d)/(2π) inside it, K = G/(1 + W·G) from the conductor.
/// P(θ) = I²·R20·[1 + α(θ − 20)] − K·(θ − a), and C·dθ/dt = P gives t = C/s·ln(P1/P0) with the slope s = I²·R20·α − K.
/// </remarks>
internal sealed class LinearWire
{
    internal const double Ambient = 25;
    internal const double HeatCapacity = 3.45e6;
    internal const double Melting = 1083;

    private readonly HeatBalanceKernel kernel;

    internal LinearWire(
        double diameter = 2, double wall = 0.5, double coefficient = 20, double alpha = 0.004, double ohmMeters = 1.7e-8, double ambient = Ambient)
    {
        double square = Math.PI / 4 * diameter * diameter * 1e-6;
        Alpha = alpha;
        Start = ambient;
        Ohms20 = ohmMeters / square;
        Capacity = HeatCapacity * square;
        ConductorMaterial metal = new()
        {
            Name = "test metal",
            OhmMeters20 = ohmMeters,
            TemperatureCoefficient = alpha,
            InferredZeroCelsius = alpha > 0 ? 20 - (1 / alpha) : -1e6,
            HeatCapacityJoulesPerCubicMeterKelvin = HeatCapacity,
            MeltingPointCelsius = Melting,
        };
        Wire = Wire.Create(TestWires.Bare(diameter, Ohms20, metal), TestWires.Insulation(5), Length.FromMillimeters(wall));
        Air = TestWires.Given(ambient, coefficient);
        Outside = Math.PI * (diameter + (2 * wall)) * 1e-3 * coefficient;
        Inside = 5 * Math.Log((diameter + (2 * wall)) / diameter) / (2 * Math.PI);
        PerKelvin = Outside / (1 + (Inside * Outside));
        kernel = HeatBalanceKernel.For(Wire, Air);
    }

    internal Wire Wire { get; }

    internal Surroundings Air { get; }

    internal ref readonly HeatBalanceKernel Kernel => ref kernel;

    internal double Start { get; }

    internal double Ohms20 { get; }

    internal double Alpha { get; }

    internal double Capacity { get; }

    internal double Outside { get; }

    internal double Inside { get; }

    internal double PerKelvin { get; }

    internal double OhmsAt(double celsius) => Ohms20 * (1 + (Alpha * (celsius - 20)));

    internal double Power(double amperes, double celsius) => (amperes * amperes * OhmsAt(celsius)) - (PerKelvin * (celsius - Start));

    internal double Slope(double amperes) => (amperes * amperes * Ohms20 * Alpha) - PerKelvin;

    internal double Seconds(double amperes, double from, double to) =>
        Capacity / Slope(amperes) * Math.Log(Power(amperes, to) / Power(amperes, from));

    /// <summary>Conductor temperature after a time: the distance to the one without power grows or decays exponentially.</summary>
    internal double After(double amperes, double from, double seconds)
    {
        double slope = Slope(amperes);
        return from + (Power(amperes, from) / slope * (Math.Exp(slope * seconds / Capacity) - 1));
    }

    internal double Steady(double amperes) => Start - (amperes * amperes * OhmsAt(Start) / Slope(amperes));

    /// <summary>Surface temperature u of a conductor at θ: u + W·G·(u − a) = θ.</summary>
    internal double Surface(double conductor) => (conductor + (Inside * Outside * Start)) / (1 + (Inside * Outside));

    /// <summary>The current that holds a conductor temperature: P = 0.</summary>
    internal double Holding(double celsius) => Math.Sqrt(PerKelvin * (celsius - Start) / OhmsAt(celsius));
}
