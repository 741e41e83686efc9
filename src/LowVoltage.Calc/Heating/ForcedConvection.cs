using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Heating;

/// <summary>Forced convection from a long cylinder in a stream of air across it.</summary>
/// <remarks>
/// <code>
/// Re = v · D / ν                                            air at the film temperature (Ts + Ta)/2
/// Nu = 0.3 + 0.62 · Re^(1/2) · Pr^(1/3) / [1 + (0.4/Pr)^(2/3)]^(1/4) · [1 + (Re/282 000)^(5/8)]^(4/5)
/// h  = Nu · k / D
/// </code>
/// <para><b>Symbols.</b> v: speed of the undisturbed stream. D: diameter. ν, k: kinematic viscosity and thermal conductivity of the air. h: heat-transfer coefficient.</para>
/// <para><b>Source.</b> Churchill and Bernstein (1977).</para>
/// <para><b>Valid for</b> Re·Pr above 0.2, Re to 1e7, an even stream square to the cylinder.</para>
/// <para><b>Accuracy.</b> Textbooks state 20 % in h at best; some 10 % in current. A stream that is not even, or along the wire, cools less.</para>
/// </remarks>
public static class ForcedConvection
{
    /// <summary>Least product of Reynolds and Prandtl number; it must be above.</summary>
    public const double LeastPeclet = 0.2;

    /// <summary>Greatest Reynolds number.</summary>
    public const double MostReynolds = 1e7;

    /// <summary>The correlation.</summary>
    public static Reference ChurchillBernsteinReference { get; } = new()
    {
        Title = "S. W. Churchill and M. Bernstein, A correlating equation for forced convection from gases and liquids to a circular cylinder in crossflow",
        Edition = "J. Heat Transfer 99, 1977", Locator = "pages 300 to 306", Kind = ReferenceKind.FromMemory,
        Note = "Formula as restated in heat-transfer textbooks.",
    };

    /// <summary>Nusselt number by Churchill and Bernstein.</summary>
    /// <param name="reynolds">Reynolds number on the diameter, to 1e7; times the Prandtl number above 0.2.</param>
    /// <param name="prandtl">Prandtl number of the fluid, 0.01 to 1000.</param>
    /// <returns>The Nusselt number.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public static double ChurchillBernstein(double reynolds, double prandtl)
    {
        double pr = Accept.Within(prandtl, 0.01, 1000, "", nameof(prandtl));
        return reynolds * pr > LeastPeclet && reynolds <= MostReynolds
            ? 0.3 + ForcedKernel.Varying(reynolds, pr, out _, out _)
            : Accept.Refuse(nameof(reynolds), reynolds, "", $"above {Accept.Text(LeastPeclet / pr)} (Re·Pr above 0.2) and at most {Accept.Text(MostReynolds)}");
    }

    /// <summary>Reynolds number of a cylinder in a stream of air.</summary>
    /// <param name="film">Air at the film temperature.</param>
    /// <param name="speed">Speed of the undisturbed stream, zero or more, to 1000 m/s.</param>
    /// <param name="diameter">Outer diameter.</param>
    /// <returns>The Reynolds number on the diameter.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="film"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Speed or diameter is outside its range.</exception>
    public static double ReynoldsNumber(AirProperties film, Speed speed, Length diameter)
    {
        _ = film ?? throw new ArgumentNullException(nameof(film));
        return Accept.NotNegative(Accept.Raw(speed), 1000, "m/s", nameof(speed)) * Accept.Meters(diameter, nameof(diameter)) / film.SquareMetersPerSecond;
    }

    /// <summary>Heat-transfer coefficient by Churchill and Bernstein.</summary>
    /// <param name="film">Air at the film temperature.</param>
    /// <param name="speed">Speed of the undisturbed stream, fast enough that Re·Pr is above 0.2.</param>
    /// <param name="diameter">Outer diameter.</param>
    /// <returns>h = Nu·k/D, convection only.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="film"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Speed or diameter is outside its range, or the two outside that of the correlation.</exception>
    public static HeatTransferCoefficient Coefficient(AirProperties film, Speed speed, Length diameter)
    {
        double nusselt = ChurchillBernstein(ReynoldsNumber(film, speed, diameter), film.PrandtlNumber);
        return HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(nusselt * film.WattsPerMeterKelvin / Accept.Meters(diameter, nameof(diameter)));
    }
}
