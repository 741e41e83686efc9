using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Tests.Design;
using LowVoltage.Calc.Protection;
using static LowVoltage.Calc.Tests.Design.Ask;
namespace LowVoltage.Calc.Tests;
public class Scratch(Xunit.Abstractions.ITestOutputHelper o)
{
    [Fact]
    public void Show()
    {
        foreach (var d in new[] {
            CircuitDesigner.Design(Circuit(Load.ConstantPower(W(60), 0.9, V(10.5)), feed: 5.5, ambient: 50, conductors: 6, insulation: InsulationMaterial.CrossLinkedPolyethylene, upstreamMilliOhms: 12), DesignRules.RoadVehicle),
            CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(2)).WithDutyCycle(DutyCycle.FromFraction(0.2)), feed: 21.87, ambient: -10, conductors: 10, back: ReturnPath.Shared(MilliOhm(6), A(30))), DesignRules.SmallCraft),
            CircuitDesigner.Design(Circuit(Load.Motor(A(5), A(20), A(20), Duration.FromSeconds(0.3)), feed: 3.5), DesignRules.RoadVehicle),
            CircuitDesigner.Design(Circuit(Load.ConstantCurrent(A(3.2)), feed: 4.5, source: Battery.LithiumIronPhosphate(4, UnitsNet.ElectricCharge.FromAmpereHours(200)), upstreamMilliOhms: 14), DesignRules.RoadVehicle),
            CircuitDesigner.Verify(Circuit(Load.ConstantCurrent(A(3.2)), feed: 4.5), CircuitPath.Create([Segment.Create(RoadVehicle(1.5), M(1), 12)], ReturnPath.Chassis(MilliOhm(3))), Blade(10), DesignRules.RoadVehicle),
        })
        {
            o.WriteLine(d.ToString());
            foreach (var c in d.Checks) o.WriteLine($"  {c}   [{c.Where} {c.Level} | {c.Note}]");
            foreach (var c in d.Advice) o.WriteLine($"  A {c}");
            foreach (var c in d.Assumptions) o.WriteLine($"  . {c}");
            foreach (var c in d.Rejected.Skip(Math.Max(0, d.Rejected.Count - 2))) o.WriteLine($"  R {c}");
            var r = d.SupplyRange;
            o.WriteLine($"{r.Minimum} | {r.Nominal} | {r.Maximum}");
        }
        o.WriteLine(CircuitDesigner.Design(Circuit(Load.ConstantPower(W(60), 0.9, V(10.5)), feed: 5.5, ambient: 50, conductors: 6, insulation: InsulationMaterial.CrossLinkedPolyethylene, upstreamMilliOhms: 12), DesignRules.RoadVehicle).Explain().ToString());
    }
}
