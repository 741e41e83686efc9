using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;
using LowVoltage.Calc.Quantities;
using static LowVoltage.Calc.Tests.Design.Ask;
using static LowVoltage.Calc.Tests.Design.Upstream.Mains;

namespace LowVoltage.Calc.Tests.Design.Upstream;

/// <summary>What can be stated of a main fuse, and what is refused.</summary>
public class UpstreamProtectionTests
{
    public static TheoryData<string, string, Func<object>> Refused => new()
    {
        { "rating", "above zero", () => UpstreamProtection.Device("main", A(0), V(80), A(1000)) },
        { "voltageRating", "above zero", () => UpstreamProtection.Device("main", A(63), V(-1), A(1000)) },
        { "breakingCapacity", "above zero", () => UpstreamProtection.Device("main", A(63), V(80), A(0)) },
        { "upstream", "zero or greater", () => UpstreamProtection.Fuse(Gg(63)).WithUpstream(MilliOhm(-1)) },
        { "distance", "zero or greater", () => UpstreamProtection.Fuse(Gg(63)).WithDistance(M(-1), false) },
        { "ambient", "from -60 °C to 250 °C", () => UpstreamProtection.Fuse(Gg(63)).WithAmbient(C(300)) },
    };

    [Theory, MemberData(nameof(Refused))]
    public void Value_OutsideItsRange_IsRefusedByName(string name, string accepted, Func<object> make)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(make);
        Assert.Equal(name, refusal.ParamName);
        Assert.True(refusal.Message.Contains(accepted, StringComparison.Ordinal) || accepted == "above zero", refusal.Message);
    }

    [Fact]
    public void Null_IsRefused()
    {
        Assert.Throws<ArgumentNullException>("rating", () => UpstreamProtection.Fuse(null!));
        Assert.Throws<ArgumentNullException>("name", () => UpstreamProtection.Device(null!, A(63), V(80), A(1000)));
        Assert.Throws<ArgumentNullException>("UpstreamProtection", () => Fan(12).WithUpstreamProtection(null!));
        Assert.Throws<ArgumentNullException>("UpstreamProtection", () => Fan(12).WithUpstreamProtection([null!]));
    }

    [Fact]
    public void Devices_NotInOrderFromTheSource_AreRefused()
    {
        UpstreamProtection first = UpstreamProtection.Fuse(Gg(200)).WithUpstream(MilliOhm(6)), second = UpstreamProtection.Fuse(Gg(63)).WithUpstream(MilliOhm(2));
        ArgumentException refusal = Assert.Throws<ArgumentException>("UpstreamProtection", () => Fan(12).WithUpstreamProtection(first, second));
        Assert.Contains("UpstreamProtection[1] must not sit nearer to the source", refusal.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(
            "UpstreamProtection", () => Fan(12).WithUpstreamProtection(UpstreamProtection.Fuse(Gg(200)).WithDistance(M(2), false), UpstreamProtection.Fuse(Gg(63)).WithDistance(M(1), false)));
    }

    [Fact]
    public void Device_BeyondTheEndOfTheLead_IsRefused()
    {
        CircuitRequirements asked = Fan(12).WithUpstreamProtection(UpstreamProtection.Fuse(Gg(63)).WithUpstream(MilliOhm(14)));
        ArgumentException refusal = Assert.Throws<ArgumentException>("requirements", () => CircuitDesigner.Design(asked, DesignRules.RoadVehicle));
        Assert.Contains("14 mΩ", refusal.Message, StringComparison.Ordinal);
        Assert.Contains("12 mΩ", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void EverythingStated_CanBeReadAndIsCopied()
    {
        CircuitPath lead = Lead(16, 4);
        JouleIntegral one = JouleIntegral.FromAmpereSquaredSeconds(1), two = JouleIntegral.FromAmpereSquaredSeconds(2), three = JouleIntegral.FromAmpereSquaredSeconds(3);
        UpstreamProtection main = UpstreamProtection.Device("main breaker", A(63), V(80), A(10_000)).WithUpstream(MilliOhm(0.3)).WithDistance(M(0.4), sheathed: true).WithAmbient(C(45)).WithLead(lead)
            .WithLetThrough(two, three).WithLeastMelting(one);
        Assert.Equal((63, 80, 10_000), (main.Rating.Current.Amperes, main.Rating.VoltageRating!.Value.Volts, main.Rating.BreakingCapacity!.Value.Amperes));
        Assert.Equal(RatingBasis.DirectCurrent, main.Rating.BreakingCapacityBasis);
        Assert.Equal(0.3, main.Upstream!.Value.Milliohms, 9);
        Assert.Equal((0.4, true, 45.0), (main.Distance!.Value.Meters, main.Sheathed, main.Ambient!.Value.DegreesCelsius));
        Assert.Same(lead, main.Lead);
        Assert.Equal((one, two, three), (main.LeastMelting, main.LetThrough, main.WithstandBehind));
        Assert.Equal("63 A main breaker (as stated)", main.ToString());

        CircuitRequirements asked = new(Fan(12).WithUpstreamProtection(main)) { Name = "copied" };
        Assert.Same(main, Assert.Single(asked.UpstreamProtection));
        Assert.Empty(Fan(12).UpstreamProtection);

        UpstreamProtection bare = UpstreamProtection.Device("main breaker", A(63), null, null);
        Assert.Null(bare.Rating.VoltageRating);
        Assert.Null(bare.Rating.BreakingCapacity);
        Assert.Equal((null, null, null, null), (bare.Upstream, bare.Distance, bare.Ambient, bare.Lead));
        Assert.Equal((null, null, null), (bare.LetThrough, bare.WithstandBehind, bare.LeastMelting));
    }
}
