using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>How a fuse's rating falls with the temperature around it: points of a maker or standard, straight between them.</summary>
/// <remarks>Refuses a temperature outside its points. The fuse also opens sooner in the heat; that is not taken into account anywhere, which is on the safe side for the wire.</remarks>
public sealed class AmbientRerating
{
    private readonly double[] celsius;
    private readonly double[] factors;

    private AmbientRerating(string name, Reference reference, double[] celsius, double[] factors)
    {
        Name = name;
        Reference = reference;
        this.celsius = celsius;
        this.factors = factors;
    }

    /// <summary>What the points are for.</summary>
    public string Name { get; }

    /// <summary>The source.</summary>
    public Reference Reference { get; }

    /// <summary>Lowest ambient temperature covered.</summary>
    public Temperature Lowest => Temperature.FromDegreesCelsius(celsius[0]);

    /// <summary>Highest ambient temperature covered.</summary>
    public Temperature Highest => Temperature.FromDegreesCelsius(celsius[celsius.Length - 1]);

    /// <summary>Small fuses rated by UL 248-14: carry 110 % of their rating at 25 °C in the open and 100 % at 40 °C in an enclosure (0.67 % per kelvin).</summary>
    public static AmbientRerating UlSmallFuse { get; } = new(
        "small fuse rated by UL 248-14",
        new Reference { Title = "Fuse re-rating note", Kind = ReferenceKind.Handbook, Note = "The two points; straight between them." },
        [25, 40],
        [1.10, 1.00]);

    /// <summary>gG fuse-links: 0.5 % per kelvin above 40 °C.</summary>
    /// <remarks>The source states no end; 40 °C to 80 °C are covered here.</remarks>
    public static AmbientRerating IndustrialGg { get; } = new(
        "gG fuse-link",
        new Reference { Title = "Application guidance for fuse-links", Kind = ReferenceKind.Handbook, Note = "0.5 % per kelvin above 40 °C; the end at 80 °C is set here." },
        [40, 80],
        [1.00, 0.80]);

    /// <summary>Space hardware: 0.5 % per kelvin above 25 °C, on top of <see cref="LoadingRule.SpaceHardware"/>.</summary>
    /// <remarks>The source states no end; 25 °C to 85 °C are covered here. The 0.5 % are taken of the rating at 25 °C.</remarks>
    public static AmbientRerating SpaceHardware { get; } = new(
        "cartridge fuse in space hardware",
        new Reference
        {
            Title = "Fuse derating guidelines for space hardware", Kind = ReferenceKind.Handbook,
            Note = "0.5 % per kelvin above 25 °C; the end at 85 °C is set here.",
        },
        [25, 85],
        [1.00, 0.70]);

    /// <summary>A re-rating from the caller's points.</summary>
    /// <param name="name">What the points are for.</param>
    /// <param name="reference">Where they come from.</param>
    /// <param name="ambients">Ambient temperatures, rising. At least two.</param>
    /// <param name="factors">Factor on the rating at each: above 0, at most 1.5, never rising with temperature.</param>
    /// <returns>The re-rating.</returns>
    /// <exception cref="ArgumentNullException">An argument is null.</exception>
    /// <exception cref="ArgumentException">There are fewer than two points, the lists differ in length, temperatures do not rise or factors do.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature or a factor is outside its range.</exception>
    public static AmbientRerating Create(string name, Reference reference, IReadOnlyList<Temperature> ambients, IReadOnlyList<double> factors)
    {
        _ = name ?? throw new ArgumentNullException(nameof(name));
        _ = reference ?? throw new ArgumentNullException(nameof(reference));
        _ = ambients ?? throw new ArgumentNullException(nameof(ambients));
        _ = factors ?? throw new ArgumentNullException(nameof(factors));
        if (ambients.Count < 2 || ambients.Count != factors.Count)
        {
            throw new ArgumentException(
                $"factors must be one for each of at least two ambients; there are {factors.Count} factors and {ambients.Count} ambients.", nameof(factors));
        }

        double[] temperatures = [.. ambients.Select(a => Accept.Celsius(a, nameof(ambients)))];
        double[] shares = [.. factors.Select(f => Accept.Positive(f, 1.5, "", nameof(factors)))];
        for (int i = 1; i < temperatures.Length; i++)
        {
            if (!(temperatures[i] > temperatures[i - 1]))
            {
                throw new ArgumentException($"ambients must rise; {Accept.Text(temperatures[i])} °C follows {Accept.Text(temperatures[i - 1])} °C.", nameof(ambients));
            }

            if (shares[i] > shares[i - 1])
            {
                throw new ArgumentException($"factors must not rise with temperature; {Accept.Text(shares[i])} follows {Accept.Text(shares[i - 1])}.", nameof(factors));
            }
        }

        return new AmbientRerating(name, reference, temperatures, shares);
    }

    /// <summary>The factor at an ambient temperature.</summary>
    /// <param name="ambient">Temperature around the fuse, within the points.</param>
    /// <returns>The factor on the rated current.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is outside the points.</exception>
    public double FactorAt(Temperature ambient) =>
        TryFactorAt(ambient, out double factor)
            ? factor
            : Accept.Within(Accept.Raw(ambient), celsius[0], celsius[celsius.Length - 1], "°C", nameof(ambient));

    /// <summary>The factor at an ambient temperature, when the points cover it.</summary>
    /// <param name="ambient">Temperature around the fuse.</param>
    /// <param name="factor">The factor on the rated current, or zero.</param>
    /// <returns>False outside the points.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is not above absolute zero.</exception>
    public bool TryFactorAt(Temperature ambient, out double factor) => TryFactorAt(Accept.Celsius(ambient, nameof(ambient)), out factor);

    /// <inheritdoc/>
    public override string ToString() => Name;

    internal double LowestCelsius => celsius[0];

    internal IReadOnlyList<double> CelsiusPoints => celsius;

    internal IReadOnlyList<double> Factors => factors;

    internal bool TryFactorAt(double ambientCelsius, out double factor)
    {
        factor = 0;
        int last = celsius.Length - 1;
        if (!(ambientCelsius >= celsius[0] && ambientCelsius <= celsius[last]))
        {
            return false;
        }

        int i = 0;
        while (ambientCelsius > celsius[i + 1])
        {
            i++;
        }

        double share = (ambientCelsius - celsius[i]) / (celsius[i + 1] - celsius[i]);
        factor = (factors[i] * (1 - share)) + (factors[i + 1] * share);
        return true;
    }
}
