using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;

namespace LowVoltage.Calc.Tests.Networks;

public class ParallelSourcesTests
{
    [Fact]
    public void Solve_UnequalBatteries_OneChargesTheOther()
    {
        // 12.8 V and 12.2 V, 20 mΩ each, no load: 0.6 V over 40 mΩ, 15 A round.
        ParallelSources idle = Solve(0, Battery(12.8, 0.02), Battery(12.2, 0.02));
        Assert.Equal([15.0, -15.0], idle.Shares.Select(s => Math.Round(s.Current.Amperes, 9)));
        Assert.Equal([false, true], idle.Shares.Select(s => s.IsCharged));
        Assert.Equal(12.5, idle.TerminalVoltage.Volts, 1e-12);
        Assert.Equal(-187.5, (double)idle.Shares[1].Power.Watts, 1e-9);
        Assert.Equal(4.5, (double)idle.Shares[1].Lost.Watts, 1e-9);
        // With 50 A: half of it each, and the 15 A as before.
        Assert.Equal([40.0, 10.0], Solve(50, Battery(12.8, 0.02), Battery(12.2, 0.02)).Shares.Select(s => Math.Round(s.Current.Amperes, 9)));
    }

    /// <summary>Three unequal cells of 1 Ω in parallel without a load (Basic Electrical Engineering, example 3.34): 1 A, none, −1 A.</summary>
    [Fact]
    public void Solve_ThreeCells_CirculateAsPublished()
    {
        ParallelSources cells = Solve(0, Battery(3, 1), Battery(2, 1), Battery(1, 1));
        Assert.Equal([1.0, 0.0, -1.0], cells.Shares.Select(s => Math.Round(s.Current.Amperes, 9) + 0.0));
        Assert.Equal(2, cells.TerminalVoltage.Volts, 1e-12);
    }

    [Fact]
    public void Solve_ChargerBesideABattery_HoldsItsLimit()
    {
        Source charger = Source.CurrentLimited(ElectricPotential.FromVolts(14.4), ElectricCurrent.FromAmperes(20)), battery = Battery(12.6, 0.05);
        ParallelSources charging = Solve(5, battery, charger);
        Assert.Equal([-15.0, 20.0], charging.Shares.Select(s => Math.Round(s.Current.Amperes, 9)));
        Assert.True(charging.Shares[1].AtLimit);
        Assert.Equal(13.35, charging.TerminalVoltage.Volts, 1e-9);
        ParallelSources heavy = Solve(100, battery, charger);
        Assert.Equal([80.0, 20.0], heavy.Shares.Select(s => Math.Round(s.Current.Amperes, 9)));
        // A regulated supply below the battery gives nothing and takes nothing.
        Source low = Source.CurrentLimited(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(20));
        Assert.Equal([5.0, 0.0], Solve(5, battery, low).Shares.Select(s => Math.Round(s.Current.Amperes, 9)));
    }

    [Fact]
    public void Solve_PackPastItsLimit_DisconnectsAndTheOtherGivesAll()
    {
        Source pack = Calc.Circuits.Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), ElectricCurrent.FromAmperes(100));
        ParallelSources both = Solve(150, pack, Battery(12.6, 0.01));
        Assert.True(both.Shares[0].IsDisconnected);
        Assert.Equal([0.0, 150.0], both.Shares.Select(s => Math.Round(s.Current.Amperes, 6)));
    }

    [Fact]
    public void AtLimit_IsOnlyASourceThatHoldsItsLimitAndGivesIt()
    {
        // 14.4 V and 12.6 V behind 50 mΩ: 36 A between them. A limit of 20 A is reached, one of 50 A is not, with 5 A of load 41 A.
        Source battery = Battery(12.6, 0.05);
        Assert.Equal([false, true], AtLimit(20));
        Assert.Equal([false, false], AtLimit(50));
        ParallelSources wide = Solve(5, battery, Source.CurrentLimited(ElectricPotential.FromVolts(14.4), ElectricCurrent.FromAmperes(50)));
        Assert.Equal([-36.0, 41.0], wide.Shares.Select(s => Math.Round(s.Current.Amperes, 6)));

        // A pack that disconnects never stands at a limit.
        Source pack = Calc.Circuits.Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), ElectricCurrent.FromAmperes(100));
        Assert.Equal([false, false], Solve(50, pack, battery).Shares.Select(s => s.AtLimit));

        IEnumerable<bool> AtLimit(double amperes) =>
            Solve(5, battery, Source.CurrentLimited(ElectricPotential.FromVolts(14.4), ElectricCurrent.FromAmperes(amperes))).Shares.Select(s => s.AtLimit);
    }

    /// <summary>48 V supplies at their limits stand at next to nothing, which is no terminal voltage; the reason stands in the refusal, too.</summary>
    [Fact]
    public void Solve_MoreThanHighSuppliesGive_HasNoVoltage()
    {
        Source supply = Source.CurrentLimited(ElectricPotential.FromVolts(48), ElectricCurrent.FromAmperes(5));
        ParallelSources few = Solve(12, supply, supply);
        Assert.Equal((false, "The sources cannot give 12 A together: at most 10 A."), (few.Exists, few.Explanation));
        Assert.Equal(
            "There is no voltage to read: The sources cannot give 12 A together: at most 10 A. Ask Exists first.", Assert.Throws<InvalidOperationException>(() => few.TerminalVoltage).Message);
        Assert.True(Solve(10 * (1 - 1e-9), supply, supply).Exists);
    }

    /// <summary>An ideal voltage first, then a battery that charges nothing, a pack past its limit and a supply below the terminals: each is told by itself.</summary>
    [Fact]
    public void Shares_AreThoseOfTheSourcesInTheirOrder()
    {
        Source ideal = Source.Ideal(ElectricPotential.FromVolts(13)), low = Source.CurrentLimited(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(20));
        Source pack = Calc.Circuits.Battery.LithiumIronPhosphate(4, ElectricCharge.FromAmpereHours(100), ElectricCurrent.FromAmperes(1));
        ParallelSources all = Solve(10, ideal, Battery(12.5, 0.1), pack, low);

        // 0.5 V over 0.1 Ω flow into the battery; the pack of 12.8 V would be charged with more than its 1 A.
        Assert.Equal([15.0, -5.0, 0.0, 0.0], all.Shares.Select(s => Math.Round(s.Current.Amperes, 9) + 0.0));
        Assert.Equal([false, true, false, false], all.Shares.Select(s => s.IsCharged));
        Assert.Equal([false, false, true, false], all.Shares.Select(s => s.IsDisconnected));
        Assert.Equal([false, false, false, false], all.Shares.Select(s => s.AtLimit));
        Assert.Equal(13, all.TerminalVoltage.Volts);
    }

    [Fact]
    public void Solve_MoreThanAllLimits_SaysHowMuchThereIs()
    {
        Source supply = Source.CurrentLimited(ElectricPotential.FromVolts(12), ElectricCurrent.FromAmperes(5));
        ParallelSources few = Solve(12, supply, supply);
        Assert.False(few.Exists);
        Assert.Contains("12 A together: at most 10 A", few.Explanation, StringComparison.Ordinal);
        Assert.Throws<InvalidOperationException>(() => few.TerminalVoltage);
        Assert.True(Solve(9.9, supply, supply).Exists);
    }

    [Fact]
    public void Solve_IdealBesideBatteries_TakesWhatIsLeftButTwoIdealAreRefused()
    {
        Source ideal = Source.Ideal(ElectricPotential.FromVolts(12));
        ParallelSources one = Solve(10, Battery(12.5, 0.1), ideal);
        Assert.Equal([5.0, 5.0], one.Shares.Select(s => Math.Round(s.Current.Amperes, 9)));
        Assert.Contains("ideal voltage, 12 V; ideal voltage, 12 V", Assert.Throws<ArgumentException>("sources", () => Solve(1, ideal, ideal)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>("sources", () => Solve(1));
        Assert.Throws<ArgumentNullException>("sources", () => Solve(1, null!));
        Assert.Throws<ArgumentNullException>("sources", () => Solve(1, ideal, null!));
        Assert.Throws<ArgumentOutOfRangeException>("total", () => Solve(-1, ideal));
        Assert.Throws<ArgumentOutOfRangeException>("level", () => ParallelSources.Solve(ElectricCurrent.Zero, (SupplyLevel)9, ideal));
    }

    /// <summary>
    /// The one source that <see cref="Source.InParallel"/> makes of several: nominally the terminal voltage that they have together; without a load the lowest and the highest of every choice of their resistances,
    /// under load no better than any. Found by trying them all, each solved as a network.
    /// </summary>
    [Fact]
    public void Solve_RandomBatteries_StayWithinTheirCombination()
    {
        Random random = new(21);
        for (int n = 0; n < 200; n++)
        {
            (double[] Volts, double[] Ohms)[] made = [.. Enumerable.Range(0, 1 + random.Next(4)).Select(_ => (
                (double[])[10 + (2 * random.NextDouble()), 12 + random.NextDouble(), 13 + (2 * random.NextDouble())], (double[])[0.001 + (0.01 * random.NextDouble()), 0.02 + (0.1 * random.NextDouble())]))];
            Source[] sources = [.. made.Select(m => Source.BehindResistance(
                ElectricPotential.FromVolts(m.Volts[0]), ElectricPotential.FromVolts(m.Volts[1]), ElectricPotential.FromVolts(m.Volts[2]), ElectricResistance.FromOhms(m.Ohms[0]), ElectricResistance.FromOhms(m.Ohms[1])))];
            Source one = Source.InParallel(sources);
            double amperes = 50 * random.NextDouble();
            double together(SupplyLevel level, double drawn, int corner) => ParallelSources.Solve(
                ElectricCurrent.FromAmperes(drawn), SupplyLevel.Nominal, [.. made.Select((m, k) => Paths.Battery(m.Volts[(int)level], m.Ohms[corner >> k & 1]))]).TerminalVoltage.Volts;
            ParallelSources nominal = ParallelSources.Solve(ElectricCurrent.FromAmperes(amperes), SupplyLevel.Nominal, sources);
            Assert.Equal(one.Numbers.NominalVolts - (amperes * one.Numbers.NominalOhms), nominal.TerminalVoltage.Volts, 1e-11);
            Assert.Equal(amperes, nominal.Shares.Sum(s => s.Current.Amperes), 1e-9);
            int[] corners = [.. Enumerable.Range(0, 1 << made.Length)];
            Assert.Equal(corners.Min(c => together(SupplyLevel.Minimum, 0, c)), one.Numbers.MinimumVolts, 1e-9);
            Assert.Equal(corners.Max(c => together(SupplyLevel.Maximum, 0, c)), one.Numbers.MaximumVolts, 1e-9);
            Assert.All(corners, c => Assert.True(one.Numbers.MinimumVolts - (amperes * one.Numbers.GreatestOhms) <= together(SupplyLevel.Minimum, amperes, c) + 1e-9));
            Assert.All(corners, c => Assert.True(one.Numbers.MaximumVolts - (amperes * one.Numbers.LeastOhms) >= together(SupplyLevel.Maximum, amperes, c) - 1e-9));
        }
    }

    /// <summary>12 V behind 1 to 100 mΩ beside 14 V behind 50 mΩ: 12 V·1000 S and 14 V·20 S are 12.04 V, 12 V·10 S and 14 V·20 S are 13.33 V. The first is the least, the second the most; they were told the other way round.</summary>
    [Fact]
    public void InParallel_OfUnequalVoltages_HasTheLowerVoltageAsItsMinimum()
    {
        Source both = Source.InParallel(
            Source.BehindResistance(ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(12), ElectricResistance.FromMilliohms(1), ElectricResistance.FromMilliohms(100)), Paths.Battery(14, 0.05));
        Assert.Equal(12280.0 / 1020, both.MinimumVoltage.Volts, 1e-9);
        Assert.Equal(400.0 / 30, both.MaximumVoltage.Volts, 1e-9);
    }

    private static Source Battery(double volts, double ohms) => Paths.Battery(volts, ohms);

    private static ParallelSources Solve(double amperes, params Source[] sources) =>
        ParallelSources.Solve(ElectricCurrent.FromAmperes(amperes), SupplyLevel.Nominal, sources);
}
