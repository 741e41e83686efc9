using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

public sealed partial class ConductorMaterial
{
    // The most by which a limit of ASTM B566 lies above the rule of mixtures (class 15A).
    private const double CladMargin = 1.037;

    /// <summary>Copper-clad aluminium (CCA) by the copper's share of the volume.</summary>
    /// <param name="copperShareByVolume">The copper's share, from 0.05 to 0.40; 0.10 and 0.15 are classes 10A and 15A of ASTM B566.</param>
    /// <returns>The metal.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside that range.</exception>
    /// <remarks>
    /// <code>1/ρ20 = [f/ρ20,Cu + (1 − f)/ρ20,Al]/1.037;  σ and density: f·Cu + (1 − f)·Al;  α20 weighted by the current each metal carries</code>
    /// <para>At 0.10 and 0.15 the standard's largest resistivity stands (2.743e-8 and 2.676e-8 Ω·m, from memory; conductivity and density confirmed
    /// in a reprint). It is 3.3 % and 3.7 % above two metals in parallel, so other shares carry the larger of these margins and are never on
    /// the optimistic side. The aluminium core governs the melting point.</para>
    /// </remarks>
    public static ConductorMaterial CopperCladAluminium(double copperShareByVolume)
    {
        double f = Accept.Within(copperShareByVolume, 0.05, 0.40, "", nameof(copperShareByVolume));
        double copper = f / CopperOhmMeters;
        double aluminium = (1 - f) / Aluminium.OhmMeters20;
        double coefficient = ((copper * CopperCoefficient) + (aluminium * Aluminium.TemperatureCoefficient)) / (copper + aluminium);
        return new ConductorMaterial
        {
            Name = $"copper-clad aluminium ({Accept.Text(f * 100)} % Cu)",
            OhmMeters20 = f switch { 0.10 => 2.743e-8, 0.15 => 2.676e-8, _ => CladMargin / (copper + aluminium) },
            TemperatureCoefficient = coefficient,
            InferredZeroCelsius = 20 - (1 / coefficient),
            DensityKilogramsPerCubicMeter = f switch { 0.10 => 3320, 0.15 => 3630, _ => Mixed(f, CopperDensity, Aluminium.DensityKilogramsPerCubicMeter) },
            HeatCapacityJoulesPerCubicMeterKelvin = Mixed(f, CopperHeatCapacity, Aluminium.HeatCapacityJoulesPerCubicMeterKelvin),
            MeltingPointCelsius = Aluminium.MeltingPointCelsius,
            Reference = new Reference
            {
                Title = "ASTM B566",
                Kind = ReferenceKind.FromMemory,
                Note = f is 0.10 or 0.15
                    ? "Largest resistivity of the class; heat capacity and temperature coefficient by the rule of mixtures."
                    : "Not a class of the standard: rule of mixtures with a margin of 3.7 % on resistivity.",
            },
        };
    }

    /// <summary>Copper of a stated conductivity, with α20 in proportion to it.</summary>
    /// <param name="percentIacs">Conductivity in per cent of the International Annealed Copper Standard, from 70 to 103.</param>
    /// <returns>The metal; density, heat capacity and melting point as annealed copper.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The conductivity is outside that range.</exception>
    /// <remarks>
    /// <code>ρ20 = (1/58 Ω·mm²/m)/s;  α20 = 0.00393·s;  s = per cent/100</code>
    /// Holds for copper whose conductivity is lowered by cold work or traces of other metals; not for aluminium or brass.
    /// </remarks>
    public static ConductorMaterial FromConductivity(double percentIacs)
    {
        double percent = Accept.Within(percentIacs, 70, 103, "% IACS", nameof(percentIacs));
        return OfIacs($"copper, {Accept.Text(percent)} % IACS", percent / 100, new Reference
        {
            Title = "NBS Handbook 100",
            Edition = "1966",
            Locator = "temperature coefficient proportional to conductivity",
            Kind = ReferenceKind.Handbook,
            Note = "Conductivity as stated by the caller.",
        });
    }

    /// <summary>A metal of the caller's.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="resistivity">ρ20 at 20 °C, from 1e-9 to 1e-2 Ω·m.</param>
    /// <param name="temperatureCoefficient">α20 at 20 °C, from 0.00001 to 0.008 per kelvin, or 0 for a metal whose resistance does not change (constantan, manganin); the inferred zero follows from it as 20 °C − 1/α20.</param>
    /// <param name="density">Density, from 100 to 30 000 kg/m³.</param>
    /// <param name="volumetricHeatCapacity">σ, from 1e5 to 1e7 J/(m³·K).</param>
    /// <param name="meltingPoint">Upper end of the range, from 100 °C to 4000 °C.</param>
    /// <param name="reference">Where the values come from.</param>
    /// <returns>The metal.</returns>
    /// <exception cref="ArgumentNullException">Name or reference is null.</exception>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value is outside its range.</exception>
    public static ConductorMaterial Create(
        string name,
        ElectricResistivity resistivity,
        double temperatureCoefficient,
        Density density,
        VolumetricHeatCapacity volumetricHeatCapacity,
        Temperature meltingPoint,
        Reference reference)
    {
        double coefficient = temperatureCoefficient == 0 ? 0 : Accept.Within(temperatureCoefficient, 1e-5, 0.008, "1/K", nameof(temperatureCoefficient));
        return new ConductorMaterial
        {
            Name = Named(name),
            OhmMeters20 = Accept.Within(Accept.Raw(resistivity), 1e-9, 1e-2, "Ω·m", nameof(resistivity)),
            TemperatureCoefficient = coefficient,
            InferredZeroCelsius = coefficient == 0 ? NoInferredZero : 20 - (1 / coefficient),
            DensityKilogramsPerCubicMeter = Accept.Within(Accept.Raw(density), 100, 30_000, "kg/m³", nameof(density)),
            HeatCapacityJoulesPerCubicMeterKelvin = Accept.Within(
                Accept.Raw(volumetricHeatCapacity), 1e5, 1e7, "J/(m³·K)", nameof(volumetricHeatCapacity)),
            MeltingPointCelsius = Accept.Within(Accept.Celsius(meltingPoint, nameof(meltingPoint)), 100, 4000, "°C", nameof(meltingPoint)),
            Reference = reference ?? throw new ArgumentNullException(nameof(reference)),
        };
    }

    private static string Named(string name)
    {
        _ = name ?? throw new ArgumentNullException(nameof(name));
        return string.IsNullOrWhiteSpace(name) ? throw new ArgumentException("A name is needed; it was empty.", nameof(name)) : name;
    }

    private static double Mixed(double share, double first, double second) => (share * first) + ((1 - share) * second);
}
