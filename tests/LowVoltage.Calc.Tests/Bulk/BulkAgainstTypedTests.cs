using LowVoltage.Calc.Bulk;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Bulk;

/// <summary>Every bulk call gives the bits of the typed call, wherever a case stands and however many there are.</summary>
public class BulkAgainstTypedTests
{
    [Theory, MemberData(nameof(BulkCase.Names), MemberType = typeof(BulkCase))]
    public void Bulk_EveryLength_GivesTheBitsOfTheTypedCall(string name)
    {
        BulkCase bulk = BulkCase.Of(name);
        Random random = new(FixedSeedOf(name));
        for (int count = 0; count <= 70; count++)
        {
            double[][] inputs = bulk.Draw(random, count);
            double[] results = new double[count];
            int none = bulk.Run(inputs, results);
            Assert.Equal(results.Count(r => r == bulk.None), none);
            for (int i = 0; i < count; i++)
            {
                AssertSameBits(bulk.Typed(inputs, i), results[i], $"{name}[{i}] of {count}");
            }
        }
    }

    [Theory, MemberData(nameof(BulkCase.Names), MemberType = typeof(BulkCase))]
    public void Bulk_ManyCases_AreFiniteAndBothKindsOccur(string name)
    {
        BulkCase bulk = BulkCase.Of(name);
        const int Count = 20_000;
        double[][] inputs = bulk.Draw(new Random(1), Count);
        double[] results = new double[Count];
        int none = bulk.Run(inputs, results);
        Assert.All(results, r => Assert.True(double.IsFinite(r)));
        Assert.Equal(results.Count(r => r == bulk.None), none);
        Assert.True(double.IsNaN(bulk.None) ? none == 0 : none is > Count / 100 and < Count - (Count / 100), $"{none} have none");
        for (int i = 0; i < Count; i += 7)
        {
            AssertSameBits(bulk.Typed(inputs, i), results[i], $"{name}[{i}]");
        }
    }

    [Theory, MemberData(nameof(BulkCase.Names), MemberType = typeof(BulkCase))]
    public void Bulk_InPlace_GivesTheSame(string name)
    {
        BulkCase bulk = BulkCase.Of(name);
        foreach (int count in new[] { 1, 3, 4, 5, 8, 9, 31, 67 })
        {
            double[][] inputs = bulk.Draw(new Random(count), count);
            double[] apart = new double[count];
            int none = bulk.Run(inputs, apart);
            for (int k = 0; k < inputs.Length; k++)
            {
                double[][] copy = [.. inputs.Select(values => (double[])values.Clone())];
                Assert.Equal(none, bulk.Run(copy, copy[k]));
                Assert.Equal(apart, copy[k]);
            }
        }
    }

    [Theory, MemberData(nameof(BulkCase.Names), MemberType = typeof(BulkCase))]
    public void Bulk_EndsOfTheRanges_GiveTheBitsOfTheTypedCall(string name)
    {
        // One input after another at its least and at its most, among ordinary ones: the range check must let both through.
        BulkCase bulk = BulkCase.Of(name);
        for (int k = 0; k < bulk.Inputs.Count; k++)
        {
            BulkCase.Input input = bulk.Inputs[k];
            bool below = input.Name == "initialCelsius" && input.Most == 160;
            foreach (double end in new[] { input.Least, below ? Math.BitDecrement(input.Most - 1e-12) : input.Most })
            {
                if (name.EndsWith("AtCurrent", StringComparison.Ordinal) && k == 0)
                {
                    continue; // The typed model holds one ambient; the next test has others.
                }

                double[][] inputs = bulk.Draw(new Random(k), 11);
                inputs[k][5] = end;
                double[] results = new double[11];
                bulk.Run(inputs, results);
                AssertSameBits(bulk.Typed(inputs, 5), results[5], $"{name}, {input.Name} = {end}");
            }
        }
    }

    [Fact]
    public void AtCurrent_OtherAmbients_AreTheAmbientAndTheRise()
    {
        // Rated 25 A for a rise of 75 K: half the current a quarter of it, double the current four times.
        double[] celsius = new double[5];
        BulkConductorTemperature.AtCurrent(25, 75, [-100, 1000, 20, 40, -20], [25, 0, 12.5, 50, 25], celsius);
        Assert.Equal([-25, 1000, 38.75, 340, 55], celsius);
    }

    [Fact]
    public void ConstantPower_TextbookQuadratic_AndItsEdge()
    {
        // U² − 12·U + 0.1·P = 0: 60 W gives 6 + √30 V; 360 W is V²/4R, half the voltage; one watt more has none.
        double[] volts = new double[4];
        Assert.Equal(1, BulkLoadVoltage.ConstantPower([12, 12, 12, 12], [0.1, 0.1, 0.1, 0], [60, 361, 359.9999, 60], volts));
        Assert.Equal(6 + Math.Sqrt(30), volts[0], 12);
        Assert.Equal(0, volts[1]);
        Assert.InRange(volts[2], 6, 6.01);
        Assert.Equal(12, volts[3]);
        Assert.Equal(0, BulkLoadVoltage.ConstantPower([16], [0.25], [256], volts.AsSpan(0, 1)));
        Assert.Equal(8, volts[0]);
    }

    [Fact]
    public void ConstantCurrent_TheWholeVoltageDropped_HasNone()
    {
        double[] volts = new double[3];
        Assert.Equal(2, BulkLoadVoltage.ConstantCurrent([12, 12, 12], [0.5, 0.5, 0.5], [23, 24, 25], volts));
        Assert.Equal([0.5, 0, 0], volts);
    }

    [Fact]
    public void Bulk_AgainstThePublicOperatingPoint_AgreesToTheRoundingOfItsPath()
    {
        // The path sums its resistance in another order: a few units in the last place.
        Conductor wire = Conductor.Solid(AwgSize.FromNumber(14), ConductorMaterial.Copper);
        CircuitPath path = CircuitPath.Create(Segment.Create(wire, Length.FromMeters(5)), ReturnPath.Wire(Length.FromMeters(7)));
        ConductorTemperature warm = ConductorTemperature.At(Temperature.FromDegreesCelsius(60));
        OperatingPoint point = OperatingPoint.Solve(Source.Ideal(ElectricPotential.FromVolts(12)), path, Load.ConstantPower(Power.FromWatts(60)), warm);
        double[] perMeter = new double[1], ohms = new double[1], volts = new double[1], current = [point.Current.Amperes];
        BulkResistance.PerMeter(ConductorMaterial.Copper, [wire.ResistancePerLength(Temperature.FromDegreesCelsius(20)).OhmsPerMeter], [60], perMeter);
        BulkResistance.OutAndBack(perMeter, [5], perMeter, [7], ohms);
        BulkLoadVoltage.ConstantPower([12], ohms, [60], volts);
        Assert.Equal(point.VoltageAtLoad.Volts, volts[0], 13);
        BulkVoltageDrop.OutAndBack(perMeter, [5], perMeter, [7], current, volts);
        Assert.Equal(point.Drop.Volts, volts[0], 13);
        BulkProspectiveCurrent.Least([11.5], [0.02], ohms, current);
        ProspectiveCurrent end = ProspectiveCurrent.AtEnd(
            Source.BehindResistance(ElectricPotential.FromVolts(11.5), ElectricPotential.FromVolts(12), ElectricPotential.FromVolts(12.6), ElectricResistance.FromOhms(0.02), ElectricResistance.FromOhms(0.02)),
            path, Temperature.FromDegreesCelsius(60), Temperature.FromDegreesCelsius(60));
        Assert.Equal(end.Least!.Value.Amperes, current[0], 11);
        BulkProspectiveCurrent.Greatest([12.6], [0.02], ohms, current);
        Assert.Equal(end.Greatest!.Value.Amperes, current[0], 11);
    }

    private static int FixedSeedOf(string name) => name.Sum(c => c);

    private static void AssertSameBits(double expected, double actual, string where) =>
        Assert.True(BitConverter.DoubleToInt64Bits(expected) == BitConverter.DoubleToInt64Bits(actual), $"{where}: {actual:R} instead of {expected:R}");
}
