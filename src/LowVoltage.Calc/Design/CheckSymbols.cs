using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>The letters of the checks in a calculation sheet.</summary>
internal static class CheckSymbols
{
    internal static Symbol Value(in DesignCheck check) => new(Letters(check.Kind).Value, check.Value, check.Unit, check.Name);

    internal static Symbol Limit(in DesignCheck check) =>
        new(Letters(check.Kind).Limit, check.Limit, check.Unit, check.LimitIsLeast ? "least allowed" : "most allowed");

    private static (string Value, string Limit) Letters(CheckKind kind) => kind switch
    {
        CheckKind.PowerDelivery => ("P", "P_min"),
        CheckKind.MechanicalMinimum => ("S", "S_min"),
        CheckKind.VoltageDrop => ("ΔV", "ΔV_max"),
        CheckKind.LoadVoltage => ("U", "U_min"),
        CheckKind.StartVoltage => ("U_start", "U_min"),
        CheckKind.ContinuousCurrent => ("I_b", "I_z"),
        CheckKind.ConductorTemperature => ("θ", "θ_max"),
        CheckKind.FuseCarriesLoad => ("I_n", "I_min"),
        CheckKind.FuseProtectsWire => ("I_n", "I_max"),
        CheckKind.FuseVoltage => ("V_n", "V_max"),
        CheckKind.BreakingCapacity => ("I_k", "I_c"),
        CheckKind.InrushHeld => ("t_start", "t_min"),
        CheckKind.FaultOpensFuse => ("t", "t_max"),
        CheckKind.ShortCircuitTemperature => ("θ_f", "θ_max"),
        CheckKind.OverloadTemperature => ("θ_o", "θ_lim"),
        CheckKind.FuseDistance => ("L_f", "L_max"),
        _ => ("x", "x_lim"),
    };
}
