using System.Globalization;
using System.Text.RegularExpressions;
using LowVoltage.Calc.Checks;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Harnesses;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Harnesses;

/// <summary>A load of constant power draws more while a motor beside it starts and pulls the voltage down: the fuse before both carries that too.</summary>
public partial class PowerBesideAStartTests
{
    /// <summary>12 V behind 0.1 Ω, a start of 20 A, 60 W: U = 12 − 0.1·(20 + 60/U), so U² − 10·U + 6 = 0 and U = 5 + √19 = 9.36 V, where 60 W are 6.41 A; in running they are 5.48 A at 10.95 V.</summary>
    [Fact]
    public void FuseBeforeBoth_CarriesWhatThePowerDrawsMeanwhile()
    {
        Place air = new() { Ambient = C(30) };
        Harness harness = new HarnessBuilder("start", DesignRules.Bench).Terminals("plus", "fused").Busbars("bus").Grounds("ground")
            .Source("battery", "plus", "ground", Source.BehindResistance(V(12), V(12), V(12), MilliOhm(100), MilliOhm(100)))
            .Fuse("fuse", "plus", "fused", Blade(20)).Wire("wire", "fused", "bus", RoadVehicle(50), M(0.01), air, InsulationMaterial.PolyvinylChloride)
            .Load("pump", "bus", "ground", Load.Motor(A(5), A(20), A(20), UnitsNet.Duration.FromSeconds(1)))
            .Load("radio", "bus", "ground", Load.ConstantPower(W(60))).Build();
        CheckResult held = HarnessDesigner.Verify(harness).Find(CheckKind.InrushHeld, "fuse")!.Value.Result;
        double peak = double.Parse(Peak().Match(held.Note).Groups[1].Value, CultureInfo.InvariantCulture);
        Assert.InRange(peak, (20 + (60 / (5 + Math.Sqrt(19)))) * 0.9995, 26.5);
    }

    [GeneratedRegex("peaks at ([0-9.]+) A")]
    private static partial Regex Peak();
}
