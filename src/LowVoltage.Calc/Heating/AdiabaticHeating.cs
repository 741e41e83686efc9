using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Short-circuit heating of a conductor from which no heat escapes (IEC 60949): temperature, time, current or section from the others.</summary>
/// <remarks>
/// <code>I²t = K²·S²·ln((θf + β)/(θi + β)),  K² = σc·(β + 20)·1e-12/ρ20,  k = K·√ln((θf + β)/(θi + β))</code>
/// <para><b>Symbols.</b> I [A] current, constant; t [s]; S [mm²] section; θi, θf [°C] conductor temperature at the start and the end; β [K]: the
/// reciprocal of the temperature coefficient at 0 °C, 234.5 for copper; σc [J/(m³·K)] volumetric heat capacity; ρ20 [Ω·m] resistivity; K, k [A·√s/mm²].</para>
/// <para><b>Source.</b> IEC 60949:1988, clause 3, and IEC 60364-4-43:2008, 434.5.2; both from memory, checked by the published k and K values.</para>
/// <para><b>Valid for</b> durations up to 5 s (the source's limit; longer ones are refused) and from −100 °C, below which the resistance of a
/// metal leaves the straight line, to the melting point. A result never lies above the melting point. <b>Assumes</b> that no heat leaves the
/// conductor, which is on the safe side: by a little for a thick conductor, by a lot for a thin wire and seconds
/// (see <see cref="NonAdiabaticFactor"/>).</para>
/// <para><b>Section.</b> The forms that take a <see cref="Conductor"/> use its <see cref="Conductor.EffectiveArea"/>, ρ20/R′20. For a standard's
/// size that is the section which the largest permitted resistance stands for, never more than the real metal, so the result is on the safe side. For a
/// stranded conductor of known geometry it is smaller than the metal by the lay factor.</para>
/// <para><b>Accuracy.</b> Arithmetic 1e-12 of the temperature rise; small rises are not lost. The model: K within 1 % of the standard's rounded values.</para>
/// </remarks>
public static partial class AdiabaticHeating
{
    internal const double LongestSeconds = 5;
    internal const double LeastCelsius = -100;

    // Room for the rounding of an inverse pair that ends exactly at the melting point.
    private const double Rounding = 1e-12;

    /// <summary>The source of the equation.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60949",
        Edition = "1988",
        Locator = "clause 3",
        Kind = ReferenceKind.FromMemory,
        Note = "The k values of IEC 60364-4-43 and 60364-5-54 and the K constants follow from it within 1 %. Durations up to 5 s.",
    };

    /// <summary>The longest duration the method covers, 5 s. A time from <c>TimeToReach</c> beyond it is outside the source's range.</summary>
    public static Duration LongestDuration => Duration.FromSeconds(LongestSeconds);

    /// <summary>K of a metal in A·√s/mm²: 226 for copper.</summary>
    /// <param name="material">The metal.</param>
    /// <returns>K = √(σc·(β + 20)·1e-12/ρ20), not rounded.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    public static double MaterialConstant(ConductorMaterial material) => Math.Sqrt(AdiabaticKernel.ConstantSquared(Given(material)));

    /// <summary>k of IEC 60364-4-43 in A·√s/mm²: 115 for copper from 70 °C to 160 °C.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C, below the limit.</param>
    /// <param name="limit">Conductor temperature at the end, θf: above the initial one by at least 1e-12 K, at most the melting point.</param>
    /// <returns>k, not rounded; the tables of the standard round it to a whole number.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside its range.</exception>
    public static double KFactor(ConductorMaterial material, Temperature initial, Temperature limit) =>
        Math.Sqrt(AdiabaticKernel.ConstantSquared(Given(material)) * LogRatio(material, initial, limit));

    /// <summary>The section that a current heats from one temperature to another in a time.</summary>
    /// <param name="material">The metal.</param>
    /// <param name="current">Fault current, I, constant. Positive.</param>
    /// <param name="duration">Duration, t. Positive, at most 5 s.</param>
    /// <param name="initial">Conductor temperature at the start, θi: from −100 °C, below the limit.</param>
    /// <param name="limit">Highest conductor temperature at the end, θf: above the initial one by at least 1e-12 K, at most the melting point.</param>
    /// <returns>The least section, S = I·√t/k.</returns>
    /// <exception cref="ArgumentNullException">The material is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Area AreaFor(
        ConductorMaterial material, ElectricCurrent current, Duration duration, Temperature initial, Temperature limit)
    {
        double k = KFactor(material, initial, limit);
        double amperes = Accept.Amperes(current, nameof(current));
        return Area.FromSquareMillimeters(amperes * Math.Sqrt(Seconds(duration)) / k);
    }

    private static double Final(ConductorMaterial material, double squareMillimeters, double amperes, double seconds, double initial)
    {
        double beta = -material.InferredZeroCelsius, constant = AdiabaticKernel.ConstantSquared(material);
        double joule = amperes * amperes * seconds;
        double melting = AdiabaticKernel.JouleIntegral(constant, squareMillimeters, initial, material.MeltingPointCelsius, beta);
        return joule > melting * (1 + Rounding)
            ? double.NaN
            : Math.Min(AdiabaticKernel.FinalCelsius(constant, squareMillimeters, joule, initial, beta), material.MeltingPointCelsius);
    }

    private static ConductorMeltsException Melts(ConductorMaterial material, double squareMillimeters, double amperes, double initial)
    {
        double melting = AdiabaticKernel.JouleIntegral(
            AdiabaticKernel.ConstantSquared(material), squareMillimeters, initial, material.MeltingPointCelsius, -material.InferredZeroCelsius);
        double seconds = melting / (amperes * amperes);
        return new ConductorMeltsException(
            $"{Accept.Text(amperes)} A melts {Accept.Text(squareMillimeters)} mm² of {material.Name} "
            + $"({Accept.Text(material.MeltingPointCelsius)} °C) after {Accept.Text(seconds)} s; there is no final temperature.",
            material.MeltingPointCelsius,
            seconds);
    }

    private static double LogRatio(ConductorMaterial material, in Temperature initial, in Temperature limit)
    {
        double start = Initial(material, initial);
        double end = Accept.Celsius(limit, nameof(limit));
        return end - start >= Accept.Least && end <= material.MeltingPointCelsius
            ? AdiabaticKernel.LogRatio(start, end, -material.InferredZeroCelsius)
            : Accept.Refuse(
                nameof(limit), end, "°C",
                $"above the initial {Accept.Text(start)} °C {(end > start && end <= material.MeltingPointCelsius ? $"by at least {Accept.Text(Accept.Least)} °C " : "")}and at most {Accept.Text(material.MeltingPointCelsius)} °C, where {material.Name} melts");
    }

    private static double Initial(ConductorMaterial material, in Temperature initial) =>
        Accept.Within(Accept.Celsius(initial, nameof(initial)), LeastCelsius, material.MeltingPointCelsius, "°C", nameof(initial));

    private static double Seconds(in Duration duration) => Accept.Positive(
        Accept.Seconds(duration, nameof(duration)), LongestSeconds, "s", nameof(duration));

    private static ConductorMaterial Given(ConductorMaterial material) => material ?? throw new ArgumentNullException(nameof(material));

    private static Conductor Given(Conductor wire) => wire ?? throw new ArgumentNullException(nameof(wire));
}
