using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Advice on voltage drop in buildings: NEC informational notes and IEC 60364-5-52 annex G. Neither is binding.</summary>
public static class BuildingVoltageDrop
{
    /// <summary>Where the NEC values come from.</summary>
    public static Reference NecReference { get; } = new()
    {
        Title = "NFPA 70 (NEC)", Edition = "2020 and later", Locator = "informational notes to 210.19 and 215.2", Kind = ReferenceKind.Standard, Note = "Not enforceable.",
    };

    /// <summary>Where the IEC values come from.</summary>
    public static Reference IecReference { get; } = new()
    {
        Title = "IEC 60364-5-52", Edition = "2009", Locator = "Table G.52.1", Kind = ReferenceKind.Standard, Note = "Informative annex.",
    };

    /// <summary>NEC branch circuit: 3 %.</summary>
    public static VoltageDropAllowance NecBranch { get; } = Percent("branch circuit", 3, NecReference, AllowancePath.OutAndBack);

    /// <summary>NEC feeder and branch circuit together: 5 %.</summary>
    public static VoltageDropAllowance NecFeederAndBranch { get; } = Percent("feeder and branch circuit together", 5, NecReference, AllowancePath.OutAndBack);

    /// <summary>IEC, supplied from a public network, lighting: 3 %.</summary>
    public static VoltageDropAllowance IecPublicLighting { get; } = Percent("public supply, lighting", 3, IecReference, AllowancePath.OriginToLoad);

    /// <summary>IEC, supplied from a public network, other uses: 5 %.</summary>
    public static VoltageDropAllowance IecPublicOther { get; } = Percent("public supply, other uses", 5, IecReference, AllowancePath.OriginToLoad);

    /// <summary>IEC, supplied privately, lighting: 6 %.</summary>
    public static VoltageDropAllowance IecPrivateLighting { get; } = Percent("private supply, lighting", 6, IecReference, AllowancePath.OriginToLoad);

    /// <summary>IEC, supplied privately, other uses: 8 %.</summary>
    public static VoltageDropAllowance IecPrivateOther { get; } = Percent("private supply, other uses", 8, IecReference, AllowancePath.OriginToLoad);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<VoltageDropAllowance> All =>
        [NecBranch, NecFeederAndBranch, IecPublicLighting, IecPublicOther, IecPrivateLighting, IecPrivateOther];

    /// <summary>What IEC annex G adds for main wiring longer than 100 m: 0.005 % a metre beyond, at most 0.5 %.</summary>
    /// <param name="mainWiring">Length of the main wiring, one way.</param>
    /// <returns>The share to add to the allowance.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or too large.</exception>
    public static Ratio IecSupplement(Length mainWiring) =>
        Ratio.FromPercent(Math.Min(0.5, 0.005 * Math.Max(0, Accept.MetersOrZero(mainWiring, nameof(mainWiring)) - 100)));

    private static VoltageDropAllowance Percent(string circuit, double percent, Reference reference, AllowancePath path) => new()
    {
        Circuit = circuit,
        Reference = reference,
        Status = AllowanceStatus.Guidance,
        Base = AllowanceBase.NominalVoltage,
        Path = path,
        Value = percent,
    };
}
