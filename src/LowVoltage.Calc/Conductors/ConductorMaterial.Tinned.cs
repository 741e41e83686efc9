using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Conductors;

public sealed partial class ConductorMaterial
{
    private const double MillimetersPerInch = 25.4;

    // ASTM B33: least wire diameter of the class in inches, largest mass resistivity in Ω·g/m² at 20 °C; thickest class first.
    private static readonly (double LeastInches, double MassResistivity)[] TinnedClasses =
    [
        (0.290, 0.15695),
        (0.103, 0.15776),
        (0.0201, 0.15940),
        (0.0111, 0.16279),
        (0.0030, 0.16454),
    ];

    /// <summary>The source of the resistivity of tinned wire.</summary>
    public static Reference TinnedReference { get; } = new()
    {
        Title = "ASTM B33",
        Edition = "2004",
        Locator = "Table 2",
        Kind = ReferenceKind.Standard,
        Note = "Largest mass resistivity by diameter of the single wire; temperature coefficient, density and heat capacity as annealed copper.",
    };

    /// <summary>Tinned copper of strands of unknown diameter: the most resistive class, ρ20 = 1.8508e-8 Ω·m (7.3 % above bare copper).</summary>
    /// <remarks>The class of strands under 0.0111 in (0.28 mm), which is what flexible wire is made of. <see cref="TinnedCopperOfStrand"/> gives the others.</remarks>
    public static ConductorMaterial TinnedCopper { get; } = Tinned(TinnedClasses[TinnedClasses.Length - 1].MassResistivity);

    /// <summary>Tinned copper by the diameter of the single strand, not of the conductor.</summary>
    /// <param name="diameter">Diameter of one strand, from 0.0762 mm (0.0030 in) to 11.684 mm (0.460 in).</param>
    /// <returns>The metal: 2.4 % above bare copper from 7.37 mm to 7.3 % from 0.28 mm down.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is outside that range.</exception>
    /// <remarks>
    /// <code>ρ20 = δ/(8.89e6 g/m³); δ = 0.15695, 0.15776, 0.15940, 0.16279, 0.16454 Ω·g/m² for wire thicker than 0.290, 0.103, 0.0201, 0.0111, 0.0030 in</code>
    /// At exactly a class limit the more resistive class is taken.
    /// </remarks>
    public static ConductorMaterial TinnedCopperOfStrand(Length diameter)
    {
        double millimeters = Accept.Within(
            Accept.Meters(diameter, nameof(diameter)) * 1000, 0.0030 * MillimetersPerInch * (1 - Slack), 0.460 * MillimetersPerInch * (1 + Slack), "mm", nameof(diameter));
        foreach ((double leastInches, double massResistivity) in TinnedClasses)
        {
            if (millimeters > leastInches * MillimetersPerInch * (1 + Slack))
            {
                return Tinned(massResistivity);
            }
        }

        return TinnedCopper;
    }

    // A diameter given in inches comes back from the conversion with a last-bit error.
    private const double Slack = 1e-9;

    private static ConductorMaterial Tinned(double massResistivity) =>
        CopperLike("tinned copper", massResistivity / (CopperDensity * 1e3), TinnedReference);
}
