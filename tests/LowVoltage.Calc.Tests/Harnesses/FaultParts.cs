using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Protection;
using UnitsNet;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>Short words for the harnesses whose faults are worked out by hand.</summary>
internal static class FaultParts
{
    public static ElectricResistance Ohms(double ohms) => ElectricResistance.FromOhms(ohms);

    public static Load Lamp(double ohms) => Load.Resistance(Ohms(ohms));

    public static Source Battery(double volts, double ohms) => Source.BehindResistance(ElectricPotential.FromVolts(volts), Ohms(ohms));

    public static FuseRating Blade(double amperes) => FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(amperes));

    public static HarnessFault Short(this FaultAudit audit, string node) =>
        audit.Find(HarnessFaultKind.ShortToReturn, node) ?? throw new InvalidOperationException($"There is no short at {node}.");

    public static HarnessFault Ground(this FaultAudit audit, string node) =>
        audit.Find(HarnessFaultKind.ShortToGround, node) ?? throw new InvalidOperationException($"There is no short to ground at {node}.");

    public static HarnessFault Open(this FaultAudit audit, string branch) =>
        audit.Find(HarnessFaultKind.Interruption, branch) ?? throw new InvalidOperationException($"There is no interruption of {branch}.");

    public static FaultedLoad On(this HarnessFault fault, string load) => fault.Loads.Single(l => l.Load == load);

    public static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-9 * Math.Max(1, Math.Abs(expected)));
}
