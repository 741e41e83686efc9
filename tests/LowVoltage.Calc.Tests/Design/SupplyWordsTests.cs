using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Design;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Tests.Design.Upstream;
using static LowVoltage.Calc.Tests.Design.Ask;

namespace LowVoltage.Calc.Tests.Design;

/// <summary>What was stated of a main fuse, in one line: each statement once, and what was not stated said so.</summary>
public class SupplyWordsTests
{
    [Fact]
    public void EverythingStated_IsSaid()
    {
        CircuitPath lead = CircuitPath.Create(Segment.Create(RoadVehicle(16), M(4), 2), ReturnPath.Wire(Segment.Create(RoadVehicle(35), M(3))));
        UpstreamProtection device = UpstreamProtection.Device("main breaker", A(63), V(80), A(10_000)).WithUpstream(MilliOhm(0.5)).WithDistance(M(0.2), sheathed: true)
            .WithLetThrough(JouleIntegral.FromAmpereSquaredSeconds(1000), JouleIntegral.FromAmpereSquaredSeconds(2000))
            .WithLeastMelting(JouleIntegral.FromAmpereSquaredSeconds(3000)).WithLead(lead);
        Assert.Equal(
            "63 A main breaker (as stated), 80 V, breaks 10000 A, after 0.5 mΩ of supply lead, 0.2 m from the source, sheathed, lets 1000 A²s through, 2000 A²s are withstood behind it, "
            + "melts at 3000 A²s at least, lead behind it 4 m of 2 × 16 mm² road-vehicle copper, 3 m of 35 mm² road-vehicle copper",
            SupplyWords.Of(device));
    }

    [Fact]
    public void NothingStated_IsSaidToBeMissing() => Assert.Equal(
        "63 A main breaker (as stated), place on the supply lead not stated, lead behind it not stated", SupplyWords.Of(UpstreamProtection.Device("main breaker", A(63), null, null)));

    [Fact]
    public void ConductorBeforeIt_IsSheathedOnlyWhereStated() => Assert.Equal(
        "63 A main breaker (as stated), 80 V, after 0 mΩ of supply lead, 0.1 m from the source, not sheathed, lead behind it 1 m of 16 mm² road-vehicle copper, 1 m of 16 mm² road-vehicle copper",
        SupplyWords.Of(UpstreamProtection.Device("main breaker", A(63), V(80), null).WithUpstream(ElectricResistance.Zero).WithDistance(M(0.1), sheathed: false).WithLead(Mains.Lead(16, 1))));
}
