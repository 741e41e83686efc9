namespace LowVoltage.Calc.Ampacity;

/// <summary>What a voltage-drop allowance is a share of.</summary>
public enum AllowanceBase
{
    /// <summary>Nothing: the allowance is in volts.</summary>
    Volts,

    /// <summary>The nominal voltage of the system.</summary>
    NominalVoltage,

    /// <summary>The voltage that the generator's regulator holds.</summary>
    RegulatedVoltage,
}
