using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Tests.Circuits;

public class LoadTests
{
    private static ElectricPotential Twelve => ElectricPotential.FromVolts(12);

    // Common practice, no published source.
    [Fact]
    public void Lamp_ThreeWattsAtTwelveVolts_DrawsAQuarterAmpereAndIs48Ohms()
    {
        LampLoad lamp = Load.Lamp(Power.FromWatts(3), Twelve);
        Assert.Equal(0.25, lamp.RatedCurrent.Amperes, 1e-12);
        Assert.Equal(48, lamp.HotResistance.Ohms, 1e-12);
        Assert.Equal(0.25, lamp.CurrentAt(Twelve, LoadState.Running).Amperes, 1e-12);
        Assert.Equal(12, lamp.RatedVoltage.Volts);
        OhmsLawPoint point = OhmsLaw.FromVoltageAndPower(Twelve, Power.FromWatts(3));
        Assert.Equal((0.25, 48.0), (point.Current.Amperes, point.Resistance.Ohms));
    }

    // Common practice, no published source: of two filaments on one voltage the brighter has the lower resistance.
    [Fact]
    public void Lamp_BrighterFilament_HasTheLowerResistance() =>
        Assert.True(Load.Lamp(Power.FromWatts(21), Twelve).HotResistance < Load.Lamp(Power.FromWatts(5), Twelve).HotResistance);

    [Fact]
    public void Lamp_AwayFromItsRating_FollowsTheExponentAndSaysWhereItEnds()
    {
        LampLoad lamp = Load.Lamp(Power.FromWatts(21), Twelve);
        // Exponent 0.55, from memory; its published range is 0.5 to 0.6.
        double ratio = lamp.CurrentAt(ElectricPotential.FromVolts(13.2), LoadState.Running).Amperes / 1.75;
        Assert.Equal(Math.Pow(1.1, 0.55), ratio, 1e-12);
        Assert.InRange(ratio, Math.Pow(1.1, 0.5), Math.Pow(1.1, 0.6));
        Assert.True(lamp.HoldsAt(ElectricPotential.FromVolts(13.2)));
        Assert.True(lamp.HoldsAt(ElectricPotential.FromVolts(10.8)));
        Assert.False(lamp.HoldsAt(ElectricPotential.FromVolts(13.21)));
        Assert.False(lamp.HoldsAt(ElectricPotential.FromVolts(10.79)));
    }

    [Fact]
    public void Lamp_ColdThroughWiring_GivesTheSurgeOfTheExample()
    {
        // Worked figure: 1.75 A lamp, hot 6.9 Ω, cold about 0.5 Ω; with 0.2 Ω of wiring 12.6 V/0.7 Ω = 18 A.
        LampLoad lamp = Load.Lamp(Power.FromWatts(21), Twelve);
        Assert.Equal(0.5, lamp.ColdResistance.Ohms, 0.05);
        Inrush surge = Assert.Single(lamp.InrushFrom(ElectricPotential.FromVolts(12.6), ElectricResistance.FromOhms(0.2)));
        Assert.Equal(18, surge.Peak.Amperes, 0.5);
        Assert.Equal(InrushWave.Exponential, surge.Wave);
        Assert.Equal(0.05 / 3, surge.Duration.Seconds, 1e-12);
        Assert.Equal(0.5 * surge.Peak.Amperes * surge.Peak.Amperes * 0.05 / 3, surge.JouleIntegral.AmpereSquaredSeconds, 1e-9);
        Assert.Equal("incandescent lamp", surge.Load);
        Assert.Same(LampLoad.InrushReference, surge.Reference);
        Assert.Equal(24.5, lamp.CurrentAt(Twelve, LoadState.Peak).Amperes, 1e-12);
    }

    [Fact]
    public void InputCapacitor_SurgesThroughTheResistanceAndDrawsNothingAfter()
    {
        Load load = Load.ConstantPower(Power.FromWatts(24)).WithInputCapacitor(ElectricCapacitance.FromMicrofarads(1000));
        Assert.Equal(2, load.CurrentAt(Twelve, LoadState.Running).Amperes, 1e-12);
        Inrush surge = Assert.Single(load.InrushFrom(Twelve, ElectricResistance.FromOhms(0.1)));
        Assert.Equal(120, surge.Peak.Amperes, 1e-9);
        Assert.Equal(1e-4, surge.Duration.Seconds, 1e-15);
        // V²·C/(2R)
        Assert.Equal(144 * 1e-3 / 0.2, surge.JouleIntegral.AmpereSquaredSeconds, 1e-9);
        Assert.Empty(Load.Resistance(ElectricResistance.FromOhms(1)).InrushFrom(Twelve, ElectricResistance.FromOhms(0.1)));
    }

    [Fact]
    public void Motor_ThreeStates_AreThreeCurrents()
    {
        Load motor = Load.Motor(Amperes(5), Amperes(20), Amperes(25), Duration.FromSeconds(0.2));
        Assert.Equal(5, motor.CurrentAt(Twelve, LoadState.Running).Amperes);
        Assert.Equal(20, motor.CurrentAt(Twelve, LoadState.Peak).Amperes);
        Assert.Equal(25, motor.CurrentAt(Twelve, LoadState.LockedRotor).Amperes);
        Inrush surge = Assert.Single(motor.InrushFrom(Twelve, ElectricResistance.FromOhms(0.1)));
        Assert.Equal((20.0, InrushWave.Rectangular), (surge.Peak.Amperes, surge.Wave));
        Assert.Equal(80, surge.JouleIntegral.AmpereSquaredSeconds, 1e-9);
        Load rated = Load.Motor(Amperes(5), Amperes(20), Amperes(25), Duration.FromSeconds(0.2), Twelve);
        Assert.Equal(12.5, rated.CurrentAt(ElectricPotential.FromVolts(6), LoadState.LockedRotor).Amperes, 1e-12);
        Assert.Equal(5, rated.CurrentAt(ElectricPotential.FromVolts(6), LoadState.Running).Amperes);
        // 12 V/(0.4 Ω + 0.6 Ω)
        Assert.Equal(12, Assert.Single(rated.InrushFrom(Twelve, ElectricResistance.FromOhms(0.4))).Peak.Amperes, 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>("peak", () => Load.Motor(Amperes(5), Amperes(4.9), Amperes(25), Duration.FromSeconds(1)));
        Assert.Throws<ArgumentOutOfRangeException>("lockedRotor", () => Load.Motor(Amperes(5), Amperes(5), Amperes(4.9), Duration.FromSeconds(1)));
    }

    [Fact]
    public void Together_SumsCurrentsAndKeepsTheHighestMinimum()
    {
        Load load = Load.Together(
            Load.ConstantCurrent(Amperes(1)).WithMinimumVoltage(ElectricPotential.FromVolts(9)),
            Load.ConstantPower(Power.FromWatts(24), 1, ElectricPotential.FromVolts(10.5)),
            Load.Resistance(ElectricResistance.FromOhms(4)));
        Assert.Equal(6, load.CurrentAt(Twelve, LoadState.Running).Amperes, 1e-12);
        Assert.Equal(10.5, load.MinimumVoltage!.Value.Volts);
        Assert.Equal(11, load.WithMinimumVoltage(ElectricPotential.FromVolts(11)).MinimumVoltage!.Value.Volts);
        Assert.Equal("constant current + constant power + resistance", load.Name);
        Assert.Null(Load.ConstantCurrent(Amperes(1)).MinimumVoltage);
        Assert.Throws<ArgumentException>("loads", () => Load.Together());
        Assert.Throws<ArgumentNullException>("loads", () => Load.Together(null!));
        Assert.Throws<ArgumentNullException>("loads", () => Load.Together(load, null!));
    }

    [Fact]
    public void WithMethods_LeaveTheOriginalAlone()
    {
        Load load = Load.ConstantCurrent(Amperes(1));
        Load other = load.WithDutyCycle(DutyCycle.FromFraction(0.5)).WithMinimumVoltage(Twelve);
        Assert.Equal((1.0, 0.5), (load.DutyCycle.Fraction, other.DutyCycle.Fraction));
        Assert.Null(load.MinimumVoltage);
        Assert.Throws<ArgumentOutOfRangeException>("dutyCycle", () => load.WithDutyCycle(default));
        Assert.Throws<ArgumentOutOfRangeException>("on", () => DutyCycle.FromTimes(Duration.FromSeconds(2), Duration.FromSeconds(1)));
    }

    [Fact]
    public void State_NotOfTheEnumeration_IsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>("state", () => Load.ConstantCurrent(Amperes(1)).CurrentAt(Twelve, (LoadState)9));
        Assert.Throws<ArgumentOutOfRangeException>("level", () => OperatingPoint.Solve(
            Source.Ideal(Twelve), Paths.Of(1), Load.ConstantCurrent(Amperes(1)), Paths.At(20), (SupplyLevel)9, LoadState.Running));
        Assert.Throws<ArgumentOutOfRangeException>("standard", () => ColdCrankingTest.Of((ColdCrankingStandard)9));
    }

    private static ElectricCurrent Amperes(double value) => ElectricCurrent.FromAmperes(value);
}
