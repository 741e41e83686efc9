using LowVoltage.Calc.Ampacity;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>Holds bounds against the limits of those checks that voltages, currents and temperatures decide.</summary>
internal static class BoundChecks
{
    internal const string NotSteady = "the wire is not rated where it runs, or may not settle below its metal's melting point";

    internal static IReadOnlyList<BoundedCheck> Of(Harness harness, Tolerances tolerances, LoadCase used, BoundsFinder? found, HarnessEnclosure enclosed)
    {
        List<BoundedCheck> checks = [];
        for (int k = 0; k < harness.LoadArray.Length; k++)
        {
            if (used.UseOf(harness.LoadArray[k].Id) != LoadUse.Off && Array.IndexOf(enclosed.Dead, k) < 0)
            {
                OfLoad(checks, harness, tolerances, k, found?.IsGuaranteed(k) == true ? found : null, enclosed);
            }
        }

        for (int k = 0; k < harness.BranchArray.Length; k++)
        {
            if (harness.BranchArray[k] is HarnessWire wire)
            {
                OfWire(checks, wire, k, found, enclosed);
            }
        }

        return checks.AsReadOnly();
    }

    private static void OfLoad(List<BoundedCheck> checks, Harness harness, Tolerances tolerances, int k, BoundsFinder? found, HarnessEnclosure enclosed)
    {
        HarnessLoad load = harness.LoadArray[k];
        Interval? volts = enclosed.ServedReason.Length == 0 ? enclosed.Served.LoadVolts[k] : null, drop = enclosed.ServedReason.Length == 0 ? enclosed.Served.Drops[k] : null;
        if (load.Load.MinimumVolts is { } least)
        {
            checks.Add(new BoundedCheck(load.Id, CheckKind.LoadVoltage, Kind(found, volts), Tighter(found?.LeastVolts[k], volts?.Low, Math.Max), least, enclosed.ServedReason));
        }

        double? allowed = Allowed(load.DropLimit ?? harness.Rules.DropLimit, load.Intermittent, harness, tolerances);
        checks.Add(new BoundedCheck(
            load.Id, CheckKind.VoltageDrop, Kind(found, drop), Tighter(found?.MostDrop(k), drop?.High, Math.Min), allowed, allowed is null ? "the allowance does not cover these voltages" : enclosed.ServedReason));
    }

    private static void OfWire(List<BoundedCheck> checks, HarnessWire wire, int k, BoundsFinder? found, HarnessEnclosure enclosed)
    {
        bool judged = enclosed.ServedReason.Length == 0;
        Interval? heat = judged ? enclosed.Served.Heat[k] : null;
        double rated = enclosed.Wires.LeastRated(k);
        BoundsFinder? sure = found?.MostHeat(k) is null ? null : found;
        string reason = rated > 0 ? enclosed.ServedReason : NotSteady;
        checks.Add(new BoundedCheck(wire.Id, CheckKind.ContinuousCurrent, Kind(sure, heat), Tighter(sure?.MostHeat(k), heat?.High, Math.Min), rated > 0 ? rated : null, reason));
        double? celsius = Tighter(sure?.Hottest(k), heat is { } through ? enclosed.Wires.Celsius(k, through)?.High + 1e-9 : null, Math.Min);
        checks.Add(new BoundedCheck(wire.Id, CheckKind.ConductorTemperature, Kind(sure, heat), celsius, wire.Insulation.ContinuousCelsius, enclosed.ServedReason.Length > 0 && !judged ? enclosed.ServedReason : NotSteady));
    }

    private static double? Tighter(double? one, double? other, Func<double, double, double> tighter) => one is { } a && other is { } b ? tighter(a, b) : one ?? other;

    private static BoundKind Kind(BoundsFinder? found, Interval? enclosed) => found is not null ? BoundKind.Guaranteed : enclosed is not null ? BoundKind.Enclosure : BoundKind.None;

    // An allowance in per cent is one of the source's own nominal voltage, which differs like the rest: the least of all.
    private static double? Allowed(DropLimit limit, bool intermittent, Harness harness, Tolerances tolerances)
    {
        double? least = null;
        foreach (double nominal in harness.SourceArray.Where(s => s.Source is not null).Select(s => s.Source!.Numbers.NominalVolts))
        {
            foreach (double volts in new[] { nominal * (1 - tolerances.SupplyShare), nominal, nominal * (1 + tolerances.SupplyShare) })
            {
                if (!limit.TryVolts(volts, intermittent, out double most))
                {
                    return null;
                }

                least = least < most ? least : most;
            }
        }

        return least;
    }
}
