using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Protection;

/// <summary>How a field chooses fuses: how far one may be loaded, how large it may be for its wire, how soon a fault must open it.</summary>
/// <remarks>Immutable; every value carries its source. What an initialiser leaves out keeps its default.</remarks>
public sealed partial class FusePractice
{
    private readonly double loading = 0.8;
    private readonly double shareOfAmpacity = 1;
    private readonly double faultSeconds = 5;

    /// <summary>The usual practice; an initialiser or the <c>With…</c> methods change it.</summary>
    public FusePractice()
    {
    }

    /// <summary>A copy of another practice, to be changed in its initialiser.</summary>
    /// <param name="basis">The practice to start from.</param>
    /// <exception cref="ArgumentNullException">The practice is null.</exception>
    public FusePractice(FusePractice basis)
    {
        _ = basis ?? throw new ArgumentNullException(nameof(basis));
        loading = basis.loading;
        shareOfAmpacity = basis.shareOfAmpacity;
        faultSeconds = basis.faultSeconds;
        LoadingReference = basis.LoadingReference;
        ShareReference = basis.ShareReference;
        Overload = basis.Overload;
        FaultReference = basis.FaultReference;
        Distance = basis.Distance;
    }

    /// <summary>Largest continuous load as a share of the fuse rating, above 0 to 1: 0.8 means the fuse is at least 1.25 times the load.</summary>
    public double Loading
    {
        get => loading;
        init => loading = Accept.Within(value, 0.1, 1, "", nameof(Loading));
    }

    /// <summary>Source of <see cref="Loading"/>.</summary>
    public Reference LoadingReference { get; init => field = value ?? throw new ArgumentNullException(nameof(LoadingReference)); } =
        Reference.CommonPractice("blade fuses are loaded to 70 % or 80 % of their rating in continuous service");

    /// <summary>Largest fuse rating as a share of the wire's continuous current where it runs, 0.1 to 1.5.</summary>
    public double ShareOfAmpacity
    {
        get => shareOfAmpacity;
        init => shareOfAmpacity = Accept.Within(value, 0.1, 1.5, "", nameof(ShareOfAmpacity));
    }

    /// <summary>Source of <see cref="ShareOfAmpacity"/>.</summary>
    public Reference ShareReference { get; init => field = value ?? throw new ArgumentNullException(nameof(ShareReference)); } = new()
    {
        Title = "IEC 60364-4-43", Edition = Editions.Iec60364Part443, Locator = "433.1", Kind = ReferenceKind.FromMemory,
        Note = "Load current at most the fuse rating, fuse rating at most the continuous current of the wire.",
    };

    /// <summary>
    /// How far above its continuous limit an overload that the fuse lets pass may take the conductor: then every current from the conventional fusing current to the
    /// prospective one is computed (<see cref="FuseAgainstWire"/>). <c>null</c> leaves it at the rule on currents.
    /// </summary>
    public OverloadAllowance? Overload { get; init; } = OverloadAllowance.Ageing240Hours;

    /// <summary>Longest time for a fault at the far end to open the fuse, at most 5 s: beyond that the adiabatic equation does not hold.</summary>
    public Duration FaultTime
    {
        get => Duration.FromSeconds(faultSeconds);
        init => faultSeconds = Accept.Within(Accept.Seconds(value, nameof(FaultTime)), 0.001, 5, "s", nameof(FaultTime));
    }

    /// <summary>Source of <see cref="FaultTime"/>.</summary>
    public Reference FaultReference { get; init => field = value ?? throw new ArgumentNullException(nameof(FaultReference)); } = new()
    {
        Title = "IEC 60364-4-43", Edition = Editions.Iec60364Part443, Locator = "434.5.2", Kind = ReferenceKind.FromMemory,
        Note = "The adiabatic equation is valid up to 5 s.",
    };

    /// <summary>Longest unprotected conductor between source and fuse, where a rule gives one; <c>null</c> for none.</summary>
    public SourceDistance? Distance { get; init; }

    internal double FaultSeconds => faultSeconds;
}
