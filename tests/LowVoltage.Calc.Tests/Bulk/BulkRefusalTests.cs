using LowVoltage.Calc.Bulk;
using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Tests.Bulk;

/// <summary>What a bulk call refuses, in which words, and what is left standing then.</summary>
public class BulkRefusalTests
{
    [Theory, MemberData(nameof(BulkCase.Names), MemberType = typeof(BulkCase))]
    public void Bulk_OneValueOutside_IsRefusedByParameterIndexAndRange(string name)
    {
        BulkCase bulk = BulkCase.Of(name);
        for (int k = 0; k < bulk.Inputs.Count; k++)
        {
            BulkCase.Input input = bulk.Inputs[k];
            bool below = input.Name == "initialCelsius" && input.Most == 160;
            double[] outside =
            [
                double.NaN, -double.NaN, double.PositiveInfinity, double.NegativeInfinity, double.MaxValue, double.MinValue, -400,
                BitConverter.Int64BitsToDouble(0x7FF0_0000_0000_0001), Math.BitDecrement(input.Least), below ? Math.BitDecrement(input.Most) : Math.BitIncrement(input.Most),
            ];
            foreach (int count in new[] { 1, 3, 4, 7, 8, 33 })
            {
                foreach (int at in new[] { 0, count / 2, count - 1 })
                {
                    foreach (double value in outside)
                    {
                        double[][] inputs = bulk.Draw(new Random(count), count);
                        inputs[k][at] = value;
                        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(input.Name, () => bulk.Run(inputs, new double[count]));
                        Assert.StartsWith($"{input.Name}[{at}] must be ", refusal.Message, StringComparison.Ordinal);
                        Assert.Contains($"it was {value.ToString("G6", System.Globalization.CultureInfo.InvariantCulture)} {input.Unit}.", refusal.Message, StringComparison.Ordinal);
                        Assert.Equal(value, refusal.ActualValue);
                    }
                }
            }
        }
    }

    [Theory, MemberData(nameof(BulkCase.Names), MemberType = typeof(BulkCase))]
    public void Bulk_RefusedInPlace_LeavesTheInputAsItWas(string name)
    {
        BulkCase bulk = BulkCase.Of(name);
        for (int k = 0; k < bulk.Inputs.Count; k++)
        {
            double[][] inputs = bulk.Draw(new Random(k), 21);
            inputs[^1][20] = double.NaN;
            double[] before = (double[])inputs[k].Clone();
            Assert.Throws<ArgumentOutOfRangeException>(bulk.Inputs[^1].Name, () => bulk.Run(inputs, inputs[k]));
            Assert.Equal(before, inputs[k]);
        }
    }

    [Theory, MemberData(nameof(BulkCase.Names), MemberType = typeof(BulkCase))]
    public void Bulk_OtherLength_IsRefused(string name)
    {
        BulkCase bulk = BulkCase.Of(name);
        for (int k = 0; k < bulk.Inputs.Count; k++)
        {
            double[][] inputs = bulk.Draw(new Random(1), 9);
            inputs[k] = inputs[k][..8];
            ArgumentException refusal = Assert.Throws<ArgumentException>(bulk.Inputs[k].Name, () => bulk.Run(inputs, new double[9]));
            Assert.StartsWith($"{bulk.Inputs[k].Name} must hold as many values as {bulk.Results}, 9; it holds 8.", refusal.Message, StringComparison.Ordinal);
        }

        Assert.Throws<ArgumentException>(bulk.Inputs[0].Name, () => bulk.Run(bulk.Draw(new Random(1), 9), new double[8]));
    }

    [Fact]
    public void Bulk_ResultsOverPartOfAnInput_AreRefused()
    {
        double[] memory = [1, 1, 1, 1, 1, 1, 1, 1, 1, 1], others = new double[9], more = new double[9];
        foreach ((int input, int results) in new[] { (0, 1), (1, 0) })
        {
            ArgumentException refusal = Assert.Throws<ArgumentException>(
                "volts", () => BulkVoltageDrop.Along(others, memory.AsSpan(input, 9), more, memory.AsSpan(results, 9)));
            Assert.StartsWith("volts must be apart from meters or the very same memory; it overlaps a part of it.", refusal.Message, StringComparison.Ordinal);
            Assert.Throws<ArgumentException>("volts", () => BulkVoltageDrop.Along(memory.AsSpan(input, 9), others, more, memory.AsSpan(results, 9)));
            Assert.Throws<ArgumentException>("volts", () => BulkVoltageDrop.Along(others, more, memory.AsSpan(input, 9), memory.AsSpan(results, 9)));
            Assert.Throws<ArgumentException>("volts", () => BulkVoltageDrop.OutAndBack(others, more, others, memory.AsSpan(input, 9), more, memory.AsSpan(results, 9)));
            Assert.Throws<ArgumentException>("volts", () => BulkVoltageDrop.OutAndBack(others, more, others, more, memory.AsSpan(input, 9), memory.AsSpan(results, 9)));
        }

        Assert.All(memory, value => Assert.Equal(1, value));
    }

    [Fact]
    public void Bulk_RangesInWords()
    {
        double[] one = new double[1];
        Assert.StartsWith(
            "amperes[0] must be zero or greater and at most 1E+07 A; it was -1 A.",
            Assert.Throws<ArgumentOutOfRangeException>("amperes", () => BulkVoltageDrop.Along([1], [1], [-1], one)).Message, StringComparison.Ordinal);
        Assert.StartsWith(
            "watts[0] must be greater than zero and at most 1E+12 W; it was 0 W.",
            Assert.Throws<ArgumentOutOfRangeException>("watts", () => BulkLoadVoltage.ConstantPower([12], [1], [0], one)).Message, StringComparison.Ordinal);
        Assert.StartsWith(
            "watts[0] must be at least 1E-12 W; it was 1E-13 W.",
            Assert.Throws<ArgumentOutOfRangeException>("watts", () => BulkLoadVoltage.ConstantPower([12], [1], [1e-13], one)).Message, StringComparison.Ordinal);
        Assert.StartsWith(
            "celsius[0] must be from -100 °C to 1083 °C; it was 1100 °C.",
            Assert.Throws<ArgumentOutOfRangeException>("celsius", () => BulkResistance.PerMeter(ConductorMaterial.Copper, [1], [1100], one)).Message, StringComparison.Ordinal);
        Assert.StartsWith(
            "initialCelsius[0] must be from -100 °C to below 160 °C; it was 160 °C.",
            Assert.Throws<ArgumentOutOfRangeException>("initialCelsius", () => BulkAdiabaticHeating.TimeToReach(ConductorMaterial.Copper, 160, [1], [1], [160], one)).Message, StringComparison.Ordinal);

        // Next to the limit nothing finite is left; in the middle of a vector too.
        double[] starts = [-1, -1, -1, 0, -1, -1, -1, -1, -1], ones = [.. starts.Select(_ => 1.0)];
        Assert.StartsWith(
            "initialCelsius[3] must be from -100 °C to below 1E-13 °C by at least 1E-12 °C; it was 0 °C.",
            Assert.Throws<ArgumentOutOfRangeException>("initialCelsius", () => BulkAdiabaticHeating.LeastArea(ConductorMaterial.Copper, 1e-13, ones, ones, starts, new double[9])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Bulk_TheFirstValueOutsideIsNamed_InTheOrderOfTheParameters() =>
        Assert.StartsWith(
            "meters[2] ",
            Assert.Throws<ArgumentOutOfRangeException>("meters", () => BulkVoltageDrop.Along([1, 1, 1, 1, 1, 1], [1, 1, -1, -1, 1, 1], [-1, 1, 1, 1, 1, 1], new double[6])).Message,
            StringComparison.Ordinal);

    [Fact]
    public void Bulk_MinusZero_IsZero()
    {
        double[] volts = new double[5];
        BulkVoltageDrop.Along([-0.0, 1, 1, 1, 1], [1, -0.0, 1, 1, 1], [1, 1, 1, 1, -0.0], volts);
        Assert.All(volts, v => Assert.Equal(0, Math.Abs(v) < 1 ? Math.Abs(v) : v - 1));
    }

    [Theory]
    [InlineData(-100)]
    [InlineData(1084)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Adiabatic_LimitNoWireReaches_IsRefused(double limit)
    {
        double[] one = new double[1];
        Assert.StartsWith(
            "limitCelsius must be above -100 °C and at most 1083 °C, where copper melts",
            Assert.Throws<ArgumentOutOfRangeException>("limitCelsius", () => BulkAdiabaticHeating.TimeToReach(ConductorMaterial.Copper, limit, [1], [1], [20], one)).Message,
            StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>("limitCelsius", () => BulkAdiabaticHeating.WithstandJouleIntegral(ConductorMaterial.Copper, limit, [1], [20], one));
        Assert.Throws<ArgumentOutOfRangeException>("limitCelsius", () => BulkAdiabaticHeating.LeastArea(ConductorMaterial.Copper, limit, [1], [1], [20], one));
        Assert.Throws<ArgumentOutOfRangeException>("limitCelsius", () => BulkAdiabaticHeating.GreatestCurrent(ConductorMaterial.Copper, limit, [1], [1], [20], one));
    }

    [Fact]
    public void Bulk_NoMaterial_IsRefused()
    {
        double[] one = new double[1];
        Assert.Throws<ArgumentNullException>("material", () => BulkResistance.PerMeter(null!, [1], [20], one));
        Assert.Throws<ArgumentNullException>("material", () => BulkVoltageDrop.LeastArea(null!, [20], [1], [1], [1], one));
        Assert.Throws<ArgumentNullException>("material", () => BulkAdiabaticHeating.FinalTemperature(null!, [1], [1], [1], [20], one));
        Assert.Throws<ArgumentNullException>("material", () => BulkAdiabaticHeating.TimeToReach(null!, 160, [1], [1], [20], one));
        Assert.Throws<ArgumentNullException>("material", () => BulkAdiabaticHeating.TimeToReach(null!, double.NaN, [1], [1], [20], one));
        Assert.Throws<ArgumentNullException>("material", () => BulkAdiabaticHeating.WithstandJouleIntegral(null!, 160, [1], [20], one));
        Assert.Throws<ArgumentNullException>("material", () => BulkAdiabaticHeating.LeastArea(null!, 160, [1], [1], [20], one));
        Assert.Throws<ArgumentNullException>("material", () => BulkAdiabaticHeating.GreatestCurrent(null!, 160, [1], [1], [20], one));
        Assert.Throws<ArgumentOutOfRangeException>("ratedAmperes", () => BulkConductorTemperature.AtCurrent(0, 75, [20], [1], one));
        Assert.Throws<ArgumentOutOfRangeException>("ratedRiseKelvins", () => BulkConductorTemperature.AtCurrent(25, 1101, [20], [1], one));
    }
}
