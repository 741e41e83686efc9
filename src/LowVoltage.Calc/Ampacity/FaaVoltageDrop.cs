using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>FAA allowances for voltage drop in 14 V and 28 V aircraft.</summary>
/// <remarks>AC 43.13-1B Table 11-6, between the bus and the ground of the equipment; its worked example counts the ground wire. Intermittent values are from memory. Guidance.</remarks>
public static class FaaVoltageDrop
{
    /// <summary>Where the load-circuit values come from.</summary>
    public static Reference Reference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "Table 11-6", Kind = ReferenceKind.Handbook,
        Note = "Continuous values, as Tables 11-7 and 11-8 use them.",
    };

    /// <summary>Where the intermittent values come from.</summary>
    public static Reference IntermittentReference { get; } = new()
    {
        Title = "FAA AC 43.13-1B", Edition = "Change 1", Locator = "Table 11-6", Kind = ReferenceKind.FromMemory, Note = "Intermittent values, and their pairing with the nominal voltage.",
    };

    /// <summary>Where the main-power value comes from.</summary>
    public static Reference MainPowerReference { get; } = new()
    {
        Title = "FAA-H-8083-31", Edition = "2012", Locator = "chapter 9, wire size selection", Kind = ReferenceKind.Handbook,
    };

    /// <summary>Load circuit at 14 V, continuous: 0.5 V.</summary>
    public static VoltageDropAllowance Continuous14 { get; } = Load("load circuit, continuous", 14, 0.5, Reference);

    /// <summary>Load circuit at 14 V, intermittent: 1 V.</summary>
    public static VoltageDropAllowance Intermittent14 { get; } = Load("load circuit, intermittent", 14, 1, IntermittentReference);

    /// <summary>Load circuit at 28 V, continuous: 1 V.</summary>
    public static VoltageDropAllowance Continuous28 { get; } = Load("load circuit, continuous", 28, 1, Reference);

    /// <summary>Load circuit at 28 V, intermittent: 2 V.</summary>
    public static VoltageDropAllowance Intermittent28 { get; } = Load("load circuit, intermittent", 28, 2, IntermittentReference);

    /// <summary>Main power wires, generator or battery to bus: 2 % of the regulated voltage.</summary>
    public static VoltageDropAllowance MainPower { get; } = new()
    {
        Circuit = "main power wires, generator or battery to bus",
        Reference = MainPowerReference,
        Status = AllowanceStatus.Guidance,
        Base = AllowanceBase.RegulatedVoltage,
        Path = AllowancePath.SourceToBus,
        Value = 2,
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<VoltageDropAllowance> All => [Continuous14, Intermittent14, Continuous28, Intermittent28, MainPower];

    private static VoltageDropAllowance Load(string circuit, double nominal, double volts, Reference reference) => new()
    {
        Circuit = circuit,
        Reference = reference,
        Status = AllowanceStatus.Guidance,
        Base = AllowanceBase.Volts,
        Path = AllowancePath.OutAndBack,
        NominalVolts = nominal,
        Value = volts,
    };
}
