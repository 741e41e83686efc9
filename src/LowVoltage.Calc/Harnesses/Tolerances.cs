using LowVoltage.Calc.Quantities;
using UnitsNet;

namespace LowVoltage.Calc.Harnesses;

/// <summary>By how much the parts of a harness or circuit may differ from what is stated: each value lies within its nominal plus or minus its tolerance.</summary>
/// <remarks>
/// Immutable; a variation is a copy (<c>tolerances.WithLoads(…)</c>). Not stated is none. Each part has its own draw, unless its kind is stated to be common: one reel of wire, one day's air.
/// Lengths and resistances of a wire are multiplied: its resistance is what both make of it.
/// </remarks>
public sealed class Tolerances
{
    /// <summary>The most that a share may be: beyond it a quantity could come near to nothing.</summary>
    private const double MostShare = 0.9;

    private Tolerances()
    {
    }

    private Tolerances(Tolerances basis)
    {
        (SupplyShare, LengthShare, ResistanceShare, JointShare, LoadShare, AmbientKelvins) =
            (basis.SupplyShare, basis.LengthShare, basis.ResistanceShare, basis.JointShare, basis.LoadShare, basis.AmbientKelvins);
        (CommonResistance, CommonAmbient, Shape) = (basis.CommonResistance, basis.CommonAmbient, basis.Shape);
    }

    /// <summary>Nothing differs; the start of a statement.</summary>
    public static Tolerances None { get; } = new();

    /// <summary>Of each source's voltages.</summary>
    public Ratio Supply => Ratio.FromDecimalFractions(SupplyShare);

    /// <summary>Of each wire's length.</summary>
    public Ratio Lengths => Ratio.FromDecimalFractions(LengthShare);

    /// <summary>Of each wire's resistance per length.</summary>
    public Ratio Resistances => Ratio.FromDecimalFractions(ResistanceShare);

    /// <summary>Of each joint, fuse, switch and chassis resistance.</summary>
    public Ratio Joints => Ratio.FromDecimalFractions(JointShare);

    /// <summary>Of each load's current.</summary>
    public Ratio Loads => Ratio.FromDecimalFractions(LoadShare);

    /// <summary>Of the air around each wire.</summary>
    public TemperatureDelta Ambient => TemperatureDelta.FromKelvins(AmbientKelvins);

    /// <summary>Whether all wires have one draw of resistance: one reel, one batch.</summary>
    public bool CommonResistance { get; private init; }

    /// <summary>Whether the air is warmer or cooler everywhere by one draw.</summary>
    public bool CommonAmbient { get; private init; } = true;

    /// <summary>How values lie within their tolerance.</summary>
    public ToleranceShape Shape { get; private init; }

    internal double SupplyShare { get; private init; }

    internal double LengthShare { get; private init; }

    internal double ResistanceShare { get; private init; }

    internal double JointShare { get; private init; }

    internal double LoadShare { get; private init; }

    internal double AmbientKelvins { get; private init; }

    /// <summary>The same with a tolerance of source voltages.</summary>
    /// <param name="share">0 to 90 %.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public Tolerances WithSupply(Ratio share) => new(this) { SupplyShare = Share(share, nameof(share)) };

    /// <summary>The same with a tolerance of lengths.</summary>
    /// <param name="share">0 to 90 %.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public Tolerances WithLengths(Ratio share) => new(this) { LengthShare = Share(share, nameof(share)) };

    /// <summary>The same with a tolerance of conductor resistances.</summary>
    /// <param name="share">0 to 90 %.</param>
    /// <param name="common">Whether all wires have one draw.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public Tolerances WithResistances(Ratio share, bool common = false) => new(this) { ResistanceShare = Share(share, nameof(share)), CommonResistance = common };

    /// <summary>The same with a tolerance of joints, fuses, switches and chassis.</summary>
    /// <param name="share">0 to 90 %.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public Tolerances WithJoints(Ratio share) => new(this) { JointShare = Share(share, nameof(share)) };

    /// <summary>The same with a tolerance of load currents.</summary>
    /// <param name="share">0 to 90 %.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range.</exception>
    public Tolerances WithLoads(Ratio share) => new(this) { LoadShare = Share(share, nameof(share)) };

    /// <summary>The same with a tolerance of the air.</summary>
    /// <param name="kelvins">0 to 100 K.</param>
    /// <param name="common">Whether one draw holds everywhere.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The difference is outside its range.</exception>
    public Tolerances WithAmbient(TemperatureDelta kelvins, bool common = true) => new(this)
    {
        AmbientKelvins = Accept.Within((double)kelvins.Kelvins, 0, 100, "K", nameof(kelvins)),
        CommonAmbient = common,
    };

    /// <summary>The same with values that lie otherwise within their tolerance.</summary>
    /// <param name="shape">The shape.</param>
    /// <returns>A copy.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The shape is not one of its enumeration.</exception>
    public Tolerances WithShape(ToleranceShape shape) => new(this)
    {
        Shape = shape is ToleranceShape.Uniform or ToleranceShape.Normal ? shape : throw new ArgumentOutOfRangeException(nameof(shape), shape, "A shape is Uniform or Normal."),
    };

    /// <inheritdoc/>
    public override string ToString() =>
        $"supply ±{P(SupplyShare)}, lengths ±{P(LengthShare)}, resistances ±{P(ResistanceShare)}, joints ±{P(JointShare)}, loads ±{P(LoadShare)}, air ±{Accept.Text(AmbientKelvins)} K, "
        + (Shape == ToleranceShape.Uniform ? "uniform" : "normal");

    private static string P(double share) => $"{Accept.Text(100 * share)} %";

    private static double Share(in Ratio share, string name) => Accept.Within((double)share.DecimalFractions, 0, MostShare, "", name);
}
