using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Heating;
using static LowVoltage.Calc.Tests.Heating.TestWires;

namespace LowVoltage.Calc.Tests.Heating;

public class HeatBalanceKernelTests
{
    private static readonly LinearWire Linear = new();
    private static readonly Wire Insulated = Solid(1.628, 0.6);

    /// <summary>u + W·G·(u − a) = θ, on both sides of the temperature without current and at it.</summary>
    [Theory]
    [InlineData(-60)]
    [InlineData(24.9)]
    [InlineData(25)]
    [InlineData(25.1)]
    [InlineData(1083)]
    public void SurfaceFor_LossIsStraight_IsTheClosedForm(double conductor)
    {
        Assert.Equal(Linear.Surface(conductor), Linear.Kernel.SurfaceFor(conductor), 1e-11);
        Assert.Equal(conductor, Linear.Kernel.ConductorAt(Linear.Surface(conductor)), 1e-11);
    }

    /// <summary>In still air, colder than the air too: the surface lies between air and conductor, and q·W is the difference.</summary>
    [Theory]
    [InlineData(-60, 40)]
    [InlineData(0, 40)]
    [InlineData(39.999, 40)]
    [InlineData(160, 40)]
    public void SurfaceFor_StillAir_LeavesTheDropOfTheInsulation(double conductor, double ambient)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Insulated, Air(ambient));
        double surface = heat.SurfaceFor(conductor), drop = 5 * Math.Log(2.828 / 1.628) / (2 * Math.PI) * heat.Loss(surface, out _);
        Assert.InRange(surface, Math.Min(conductor, ambient), Math.Max(conductor, ambient));
        Assert.Equal(conductor - surface, drop, 1e-11);
        Assert.NotEqual(conductor, surface);
    }

    /// <summary>Settled up to a surface M = 1083 °C: (1 − I²·R20·α·W)·G·(M − a) = I²·R20·[1 + α·(M − 20)].</summary>
    [Fact]
    public void TryBalance_AroundTheLargestCurrent_SaysWhetherItSettles()
    {
        double loss = Linear.Outside * (1083 - 25), most = Math.Sqrt(loss / (Linear.OhmsAt(1083) + (Linear.Ohms20 * Linear.Alpha * Linear.Inside * loss)));
        Assert.True(Linear.Kernel.TryBalance(most * most * (1 - 1e-9), out double surface));
        Assert.Equal(1083, surface, 1e-3);
        Assert.False(Linear.Kernel.TryBalance(most * most * (1 + 1e-9), out _));
        Assert.False(Linear.Kernel.TryBalance(most * most * 1.2, out _));

        // I²·R20·α·W = 1 at 378 A, and beyond.
        Assert.False(Linear.Kernel.TryBalance(1 / (Linear.Ohms20 * Linear.Alpha * Linear.Inside), out _));
        Assert.False(Linear.Kernel.TryBalance(1e6, out _));
        Assert.True(Linear.Kernel.TryBalance(400, out surface));
        Assert.Equal(Linear.Surface(Linear.Steady(20)), surface, 1e-10);
        Assert.True(Linear.Kernel.TryBalance(0, out surface));
        Assert.Equal(25.0, surface);
    }

    /// <summary>Where radiation carries the heat, the balance is flat at half way to melting and steep at the end: Newton must be held in its bracket.</summary>
    [Theory]
    [InlineData(10, 1, 20_000, 0.9999)]
    [InlineData(10, 1, 20_000, 0.99)]
    [InlineData(12, 1, 20_000, 0.95)]
    [InlineData(12, 0.6, 10_000, 0.9999)]
    [InlineData(1.628, 0.9, 0, 0.9999)]
    [InlineData(0.1, 1, 0, 0.9999)]
    public void TryBalance_BareWireNearMelting_MakesTheHeatThatLeaves(double diameter, double emissivity, double meters, double part)
    {
        HeatBalanceKernel heat = HeatBalanceKernel.For(Solid(diameter, 0), Air(25, meters, emissivity));
        double amperes = part * heat.AmperesFor(1083);
        Assert.True(heat.TryBalance(amperes * amperes, out double surface));
        double loss = heat.Loss(surface, out _);
        Assert.InRange(surface, 300, 1083);
        Assert.InRange(amperes * amperes * heat.OhmsPerMeterAt(surface) / loss, 1 - 1e-9, 1 + 1e-9);
    }

    /// <summary>Walls of another temperature do nothing when the wire does not radiate, or when the coefficient is given.</summary>
    [Theory]
    [InlineData(40.3, 120)]
    [InlineData(40.3, -60.7)]
    [InlineData(-13.1, 99.9)]
    public void NoLoadCelsius_WallsThatDoNotCount_IsTheAir(double ambient, double walls)
    {
        Surroundings shining = new() { Ambient = C(ambient), RadiatingSurroundings = C(walls), Emissivity = 0 };
        Surroundings given = new()
        {
            Ambient = C(ambient),
            RadiatingSurroundings = C(walls),
            SurfaceCoefficient = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(15),
        };
        Assert.Equal(shining.AmbientCelsius, HeatBalanceKernel.For(Insulated, shining).NoLoadCelsius);
        Assert.Equal(given.AmbientCelsius, HeatBalanceKernel.For(Insulated, given).NoLoadCelsius);

        // Radiating, it settles where as much comes from the one as goes to the other.
        HeatBalanceKernel between = HeatBalanceKernel.For(Insulated, new Surroundings { Ambient = C(ambient), RadiatingSurroundings = C(walls) });
        Assert.InRange(between.NoLoadCelsius, Math.Min(ambient, walls) + 1, Math.Max(ambient, walls) - 1);
        Assert.Equal(0, between.Loss(between.NoLoadCelsius, out _), 1e-10);
    }

    /// <summary>n wires that share a current lose heat as before, at 1/n² of the resistance.</summary>
    [Fact]
    public void Sharing_HotWalls_LosesHeatAsBefore()
    {
        HeatBalanceKernel one = HeatBalanceKernel.For(Insulated, new Surroundings { Ambient = C(40), RadiatingSurroundings = C(120) }), shared = one.Sharing(3);
        Assert.Equal(one.Loss(90, out double slope), shared.Loss(90, out double sharedSlope));
        Assert.Equal(slope, sharedSlope);
        Assert.Equal(one.OhmsPerMeter20 / 9, shared.OhmsPerMeter20, 1e-18);
        Assert.Equal(one.NoLoadCelsius, shared.NoLoadCelsius);
        HeatBalanceKernel given = one.WithCoefficient(15);
        Assert.Equal(Math.PI * 2.828e-3 * 15 * (90 - one.NoLoadCelsius), given.Loss(90, out _), 1e-12);
    }

    /// <summary>Hardly above the temperature without current the loss is lost in rounding: no current, never a number that is none.</summary>
    [Theory]
    [InlineData(40, 120)]
    [InlineData(40, 41)]
    [InlineData(20, -60)]
    [InlineData(-30, 300)]
    public void AmperesFor_JustAboveNoLoad_IsAtLeastZero(double ambient, double walls)
    {
        foreach (double wall in new[] { 0, 0.6 })
        {
            HeatBalanceKernel heat = HeatBalanceKernel.For(
                Solid(1.628, wall), new Surroundings { Ambient = C(ambient), RadiatingSurroundings = C(walls) });
            double conductor = heat.NoLoadCelsius;
            for (int i = 0; i < 64; i++)
            {
                Assert.InRange(heat.AmperesFor(conductor), 0, 1e-3);
                conductor = Math.BitIncrement(conductor);
            }
        }
    }

    /// <summary>No heat leaves an idle wire, and no path has a share of it, also where what comes from the walls goes to the air.</summary>
    [Fact]
    public void Shares_IdleWireBetweenAirAndWalls_AreZero()
    {
        foreach (double walls in Enumerable.Range(0, 49).Select(i => (i * 7.5) - 60).Append(41.001).Append(41.000_001).Append(41))
        {
            Surroundings engine = new() { Ambient = C(41), RadiatingSurroundings = C(walls) };
            HeatBalanceState idle = HeatBalance.StateAt(Insulated, engine, A(0))!;
            Assert.Equal(0, idle.RadiativeShare);
            Assert.Equal(0, idle.ConvectiveShare);
            HeatBalanceState warm = HeatBalance.StateAt(Insulated, engine, A(0.1))!;
            double heat = 0.01 * Insulated.Conductor.OhmsPerMeterAt(warm.ConductorTemperature.DegreesCelsius);
            Assert.InRange(warm.RadiativeShare * heat / warm.Radiation.WattsPerMeter, 1 - 1e-6, 1 + 1e-6);
            Assert.InRange(warm.ConvectiveShare * heat / warm.Convection.WattsPerMeter, 1 - 1e-6, 1 + 1e-6);
        }
    }

    [Fact]
    public void StateFor_ConductorAsWarmAsWithoutCurrent_CarriesNothing()
    {
        HeatBalanceState? state = HeatBalance.StateFor(Insulated, Air(40), C(40));
        Assert.NotNull(state);
        Assert.Equal(0, state.Current.Amperes);
        Assert.Equal(40, state.SurfaceTemperature.DegreesCelsius, 1e-12);
        Assert.Equal(0, state.RadiativeShare);
        Assert.Null(HeatBalance.StateFor(Insulated, Air(40), C(39.999_999)));

        // Of a current of 1 nA the warmth is lost in rounding: shares are a number all the same.
        HeatBalanceState hardly = HeatBalance.StateAt(Insulated, Air(40), A(1e-9))!;
        Assert.Equal(0, hardly.ConvectiveShare);
    }
}
