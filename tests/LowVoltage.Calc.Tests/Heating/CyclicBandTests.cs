using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

/// <summary>
/// On a wire whose loss is straight in temperature a pulse takes x = θ − a to e·x + f and a rest multiplies it by r, so that the band begins at
/// r·f/(1 − r·e), if the pulses do not outrun the rests.
/// </summary>
public class CyclicBandTests
{
    private static readonly LinearWire Linear = new();

    [Theory]
    [InlineData(40, 10, 20)]
    [InlineData(40, 600, 30)]
    [InlineData(75, 60, 60)]
    [InlineData(79, 100, 30)]
    [InlineData(200, 5, 300)]
    [InlineData(300, 8, 60)]
    [InlineData(400, 4, 60)]
    [InlineData(2000, 0.1, 100)]
    [InlineData(2000, 0.15, 100)]
    [InlineData(2000, 0.15, 400)]
    public void CyclicBand_LossIsStraight_IsTheClosedForm(double amperes, double on, double off)
    {
        double cold = Linear.After(amperes, 25, on) - 25, growth = Linear.After(amperes, 26, on) - 25 - cold, rest = Linear.After(0, 26, off) - 25;
        double lowest = rest * cold / (1 - (rest * growth)), highest = (growth * lowest) + cold;
        TemperatureBand? band = OverloadHeating.CyclicBand(Linear.Wire, Linear.Air, A(amperes), S(on), S(off));
        if (rest * growth >= 1 || highest + 25 > LinearWire.Melting)
        {
            Assert.Null(band);
            return;
        }

        Assert.NotNull(band);
        Assert.Equal(25 + lowest, band.Lowest.DegreesCelsius, 1e-6);
        Assert.Equal(25 + highest, band.Highest.DegreesCelsius, 1e-6);
    }

    /// <summary>A current that would settle past the melting point, with the surface still below it: short pulses of it melt nothing.</summary>
    [Fact]
    public void CyclicBand_SteadyStatePastMelting_SettlesWhenThePulsesAreShort()
    {
        LinearWire thick = new(wall: 4, coefficient: 100);
        double amperes = thick.Holding(1083) * 1.05;
        Assert.True(thick.Kernel.TryBalance(amperes * amperes, out double settled));
        Assert.True(settled > thick.Surface(1083));
        Assert.False(HeatBalance.TryTemperatureAt(thick.Wire, thick.Air, A(amperes), out _));
        foreach ((double on, double off) in new[] { (5.0, 5.0), (60, 10), (20, 10), (200, 20) })
        {
            double cold = thick.After(amperes, 25, on) - 25, growth = thick.After(amperes, 26, on) - 25 - cold, rest = thick.After(0, 26, off) - 25;
            double lowest = rest * cold / (1 - (rest * growth)), highest = (growth * lowest) + cold;
            TemperatureBand? band = OverloadHeating.CyclicBand(thick.Wire, thick.Air, A(amperes), S(on), S(off));
            Assert.Equal(highest + 25 < LinearWire.Melting, band is not null);
            if (band is not null)
            {
                Assert.Equal(25 + lowest, band.Lowest.DegreesCelsius, 1e-6);
            }
        }
    }

    /// <summary>A current of nothing warms by less than rounding: the band is the ambient temperature, never nothing.</summary>
    [Fact]
    public void CyclicBand_HardlyACurrent_IsTheAmbientTemperature()
    {
        Wire wire = Solid(1.628, 0.6);
        for (double amperes = 1e-9; amperes < 1e-3; amperes *= 1.7)
        {
            TemperatureBand? band = OverloadHeating.CyclicBand(wire, Air(40.3), A(amperes), S(10), S(3));
            Assert.NotNull(band);
            Assert.Equal(40.3, band.Lowest.DegreesCelsius, 1e-6);
            Assert.Equal(40.3, band.Highest.DegreesCelsius, 1e-6);
        }
    }
}
