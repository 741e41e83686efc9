using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>The rule of IEC 60364-4-43, 433.1, for overload: Ib ≤ In ≤ Iz and I2 ≤ 1.45·Iz.</summary>
/// <remarks>
/// Ib: current of the load. In: rated current of the fuse. Iz: continuous current of the wire where it runs. I2: conventional fusing current. A rule on currents:
/// it says nothing of temperatures, and allows an overload below I2 that lasts for hours. <see cref="FuseAgainstWire"/> computes instead.
/// </remarks>
public static partial class OverloadCoordination
{
    /// <summary>Largest I2 as a multiple of Iz.</summary>
    public const double FusingFactor = 1.45;

    private const double Rounding = 1e-12;

    /// <summary>The source.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "IEC 60364-4-43", Edition = Editions.Iec60364Part443, Locator = "433.1", Kind = ReferenceKind.FromMemory,
        Note = "Also read in application guidance for fuses.",
    };

    /// <summary>Whether a fuse follows the rule.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="load">Current of the load, Ib. Zero or greater.</param>
    /// <param name="continuous">Continuous current of the wire where it runs, Iz. Positive.</param>
    /// <returns>The verdict: within, exceeded, or not proven where no fusing current is published for the fuse.</returns>
    /// <exception cref="ArgumentNullException">The fuse is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A current is outside its range.</exception>
    public static RatingCheck Check(FuseRating fuse, ElectricCurrent load, ElectricCurrent continuous)
    {
        _ = fuse ?? throw new ArgumentNullException(nameof(fuse));
        double ib = Accept.AmperesOrZero(load, nameof(load)), iz = Accept.Amperes(continuous, nameof(continuous));
        string wire = $"the wire's {Accept.Text(iz)} A";
        if (ib > fuse.Amperes * (1 + Rounding))
        {
            return new RatingCheck(RatingVerdict.Exceeded, ib / fuse.Amperes, $"The load of {Accept.Text(ib)} A exceeds the rating of the {fuse}.");
        }

        if (fuse.Amperes > iz * (1 + Rounding))
        {
            return new RatingCheck(RatingVerdict.Exceeded, fuse.Amperes / iz, $"The rating of the {fuse} exceeds {wire}.");
        }

        if (fuse.Curve is not { } curve)
        {
            return new RatingCheck(RatingVerdict.NotProven, null, $"No conventional fusing current is published for the {fuse}.");
        }

        double share = curve.FusingAmperes / (FusingFactor * iz);
        RatingVerdict verdict = share <= 1 + Rounding ? RatingVerdict.Within : RatingVerdict.Exceeded;
        string word = verdict == RatingVerdict.Within ? "is within" : "exceeds";
        return new RatingCheck(verdict, share, $"The conventional fusing current of the {fuse}, {Accept.Text(curve.FusingAmperes)} A, {word} 1.45 times {wire}.");
    }
}
