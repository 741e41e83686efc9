using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Allowances for voltage drop in small craft: ABYC E-11 and ISO 10133, 3 % and 10 % of the nominal voltage.</summary>
/// <remarks>Both count the way out and back. ISO 10133 was withdrawn in 2020 and followed by ISO 13297. United States boat law sets no limit.</remarks>
public static class SmallCraftVoltageDrop
{
    /// <summary>Where the ABYC values come from.</summary>
    public static Reference AbycReference { get; } = new()
    {
        Title = "ABYC E-11", Edition = "as quoted, year not stated", Locator = "11.14.2.6", Kind = ReferenceKind.Standard, Note = "A voluntary standard, read in quotations.",
    };

    /// <summary>Where the ISO values come from.</summary>
    public static Reference IsoReference { get; } = new()
    {
        Title = "ISO 10133", Edition = Editions.Iso10133, Locator = "clause 4", Kind = ReferenceKind.Standard, Note = "3 % for vital circuits, as read.",
    };

    /// <summary>Where the ISO value of 10 % comes from.</summary>
    public static Reference IsoOtherReference { get; } = new()
    {
        Title = "ISO 10133", Edition = Editions.Iso10133, Locator = "clause 4", Kind = ReferenceKind.FromMemory, Note = "10 % for other circuits.",
    };

    /// <summary>ABYC: panel feeders, bilge blowers, electronics, navigation lights: 3 %.</summary>
    public static VoltageDropAllowance AbycCritical { get; } =
        Percent("panelboard and switchboard feeders, bilge blowers, electronics, navigation lights", 3, AbycReference);

    /// <summary>ABYC: other lighting and circuits where drop is not critical: 10 %.</summary>
    public static VoltageDropAllowance AbycNonCritical { get; } = Percent("other lighting and circuits where drop is not critical", 10, AbycReference);

    /// <summary>ISO: main conductors of the panel, navigation lights, bilge blowers and pumps, vital equipment: 3 %.</summary>
    public static VoltageDropAllowance IsoVital { get; } =
        Percent("panel and switchboard main conductors, navigation lights, bilge blowers, bilge pumps, vital equipment", 3, IsoReference);

    /// <summary>ISO: every other appliance, all loads on: 10 %.</summary>
    public static VoltageDropAllowance IsoOther { get; } = Percent("every other appliance, all loads on", 10, IsoOtherReference);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<VoltageDropAllowance> All => [AbycCritical, AbycNonCritical, IsoVital, IsoOther];

    private static VoltageDropAllowance Percent(string circuit, double percent, Reference reference) => new()
    {
        Circuit = circuit,
        Reference = reference,
        Status = AllowanceStatus.Standard,
        Base = AllowanceBase.NominalVoltage,
        Path = AllowancePath.OutAndBack,
        Value = percent,
    };
}
