using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Design;

/// <summary>The letters of the checks in a calculation sheet where no step has given the number: none of them stands for anything else there.</summary>
internal static class CheckSymbols
{
    internal static Symbol Value(in CheckResult check) => new(Letters(check.Kind).Value, check.Value, check.Unit, check.Name);

    internal static Symbol Limit(in CheckResult check) =>
        new(Letters(check.Kind).Limit, check.Limit, check.Unit, $"{(check.LimitIsLeast ? "least" : "most")} allowed: {check.Name}");

    private static (string Value, string Limit) Letters(CheckKind kind) => kind switch
    {
        CheckKind.PowerDelivery => ("P_del", "P_want"),
        CheckKind.MechanicalMinimum => ("A_v", "A_lim"),
        CheckKind.VoltageDrop => ("ΔV_v", "ΔV_lim"),
        CheckKind.LoadVoltage => ("U_v", "U_lim"),
        CheckKind.StartVoltage => ("U_start", "U_sl"),
        CheckKind.ContinuousCurrent => ("I_cv", "I_cl"),
        CheckKind.ConductorTemperature => ("θ_cv", "θ_cl"),
        CheckKind.FuseCarriesLoad => ("I_fv", "I_fl"),
        CheckKind.FuseProtectsWire => ("I_wv", "I_wl"),
        CheckKind.FuseVoltage => ("V_f", "V_fl"),
        CheckKind.BreakingCapacity => ("I_k", "I_c"),
        CheckKind.InrushHeld => ("t_i", "t_l"),
        CheckKind.FaultOpensFuse => ("t_c", "t_lim"),
        CheckKind.ShortCircuitTemperature => ("θ_f", "θ_fl"),
        CheckKind.OverloadTemperature => ("θ_ov", "θ_ol"),
        CheckKind.FuseDistance => ("l_v", "l_max"),
        _ => ("x_v", "x_lim"),
    };
}
