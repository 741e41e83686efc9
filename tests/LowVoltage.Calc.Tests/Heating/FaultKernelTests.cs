using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using LowVoltage.Calc.Quantities;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>The adiabatic fault at its edges, by hand on a metal of 0.1 Ω/m and 4 J/(m·K) whose resistance does not change (1 mm², 1e-7 Ω·m, 4e6 J/(m³·K)).</summary>
public class FaultKernelTests
{
    private static readonly Conductor Constant = Bare(2 / Math.Sqrt(Math.PI), 0.1, ConstantMetal(1e-7, 4e6), area: 1);

    // 10 V into 0.1 Ω + 4 m · 0.1 Ω/m is 20 A, and every A²s warms 1/40 K: 1380 K to the melting point at 1400 °C are 55 200 A²s in 138 s.
    private static readonly FaultPath Path = FaultPath.Create(FaultCase.V(10), FaultCase.M(100), FaultSegment.Create(Constant, Length.FromMeters(4), C(20)));

    [Theory]
    [InlineData(55_199.99, false, 55_199.99)]
    [InlineData(55_200.01, true, 55_200)]
    [InlineData(1e12, true, 55_200)]
    public void StateAt_AroundMelting_EndsThere(double letThrough, bool melts, double reached)
    {
        FaultState state = FaultTransient.StateAt(Path, JouleIntegral.FromAmpereSquaredSeconds(letThrough));
        Assert.Equal(melts, state.IsMelting);
        Assert.Equal(reached, state.LetThrough.AmpereSquaredSeconds, 1e-6);
        Assert.Equal(20 + (reached / 40), state.HottestTemperature.DegreesCelsius, 1e-7);
        Assert.Equal(reached / 400, state.Time.Seconds, 1e-8);
    }

    /// <summary>Exactly the Joule integral of melting, or exactly its time, does not melt before.</summary>
    [Fact]
    public void State_ExactlyAtMelting_IsNotPastIt()
    {
        Assert.False(FaultTransient.StateAt(Path, JouleIntegral.FromAmpereSquaredSeconds(Path.Kernel.MeltingJoules)).IsMelting);
        Duration melting = FaultTransient.TimeToReach(Path, C(1400));
        Assert.Equal(138, melting.Seconds, 1e-9);
        Assert.False(FaultTransient.StateAfter(Path, melting).IsMelting);
        Assert.True(FaultTransient.StateAfter(Path, S(138.000_001)).IsMelting);
        Assert.False(FaultTransient.StateAfter(Path, S(137.999_999)).IsMelting);
    }

    /// <summary>A start above the limit once gave 0 s, which hid two temperatures in the wrong order.</summary>
    [Fact]
    public void TimeToReach_StartsAboveTheLimit_IsRefused()
    {
        ArgumentOutOfRangeException above = Assert.Throws<ArgumentOutOfRangeException>("limit", () => FaultTransient.TimeToReach(Path, C(10)));
        Assert.Contains("at least the 20 °C that the conductor starts at; it was 10 °C", above.Message, StringComparison.Ordinal);
        Assert.Equal(0, FaultTransient.TimeToReach(Path, C(20)).Seconds);
        FaultPath copper = FaultPath.Create(FaultCase.V(10), FaultCase.M(100), FaultCase.Segment(1, 1, 60));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => FaultTransient.TryTimeToReach(copper, C(59.9), out _));
        Assert.Throws<ArgumentOutOfRangeException>("limit", () => FaultTransient.TimeToReach(copper, 0, C(20)));
        Assert.Equal(0, FaultTransient.TimeToReach(copper, 0, C(60)).Seconds);
    }

    [Fact]
    public void HottestSegment_OfEqualOnes_IsTheFirst()
    {
        FaultSegment one = FaultCase.Segment(1, 1, 20), thick = FaultCase.Segment(1, 3, 20);
        Assert.Equal(1, FaultTransient.StateAfter(FaultPath.Create(FaultCase.V(12), FaultCase.M(100), thick, one, one), S(0.1)).HottestSegment);
        Assert.Equal(0, FaultTransient.StateAfter(FaultPath.Create(FaultCase.V(12), FaultCase.M(100), one, thick, one), S(0.1)).HottestSegment);
        Assert.Equal(0, FaultTransient.StateAfter(FaultPath.Create(FaultCase.V(12), FaultCase.M(100), one, thick, one), S(0)).HottestSegment);
    }

    [Fact]
    public void ToString_SaysTheStateAndTheLoop()
    {
        Assert.Equal("2 s: 20 A, 800 A²s, 40 °C", FaultTransient.StateAfter(Path, S(2)).ToString());
        Assert.Equal("138 s: 20 A, 55200 A²s, 1400 °C (melting)", FaultTransient.StateAfter(Path, S(500)).ToString());
        Assert.Equal("10 V behind 100 mΩ into 4 m test conductor", Path.ToString());
        FaultSegment other = FaultSegment.Create(Constant, Length.FromMeters(0.5), C(20));
        Assert.Equal(
            "10 V behind 100 mΩ into 4 m test conductor, 0.5 m test conductor",
            FaultPath.Create(FaultCase.V(10), FaultCase.M(100), Path.Segments[0], other).ToString());
        ArgumentException empty = Assert.Throws<ArgumentException>("segments", () => FaultPath.Create(FaultCase.V(10), FaultCase.M(100)));
        Assert.StartsWith("segments must hold at least one segment; it was empty.", empty.Message, StringComparison.Ordinal);
    }
}
