using System.Globalization;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Samples.ToleranceStudy;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The sample, run in this process: its README, its cases against the operating-point solver, its dice against their distributions, its histograms.</summary>
public sealed class ToleranceStudyTests : IDisposable
{
    private const int Draws = 20_000;

    private readonly string folder = Directory.CreateTempSubdirectory("tolerance").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Run_TheReadmesExample_PrintsWhatTheReadmeShows()
    {
        (int code, string output, string error) = Run(false, "1", "100000", folder);
        Assert.Equal((0, ""), (code, error));
        using StreamReader reader = new(PublishedTable.Open("ToleranceStudy.README.md"));
        Assert.Contains(output.Replace(folder, "charts", StringComparison.Ordinal).TrimEnd(), reader.ReadToEnd().ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.StartsWith("CAUTION: an invented circuit with invented spreads.", output, StringComparison.Ordinal);
        foreach (string name in new[] { "tolerance-volts", "tolerance-temperature" })
        {
            byte[] png = File.ReadAllBytes(Path.Combine(folder, name + ".png"));
            Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], png[..4]);
            Assert.True(png.Length > 10_000);
            string svg = File.ReadAllText(Path.Combine(folder, name + ".svg"));
            Assert.NotNull(System.Xml.Linq.XDocument.Parse(svg.TrimStart('\uFEFF')).Root);
        }
    }

    [Fact]
    public void Run_SameSeed_SameAnswer_AnotherSeedAnother()
    {
        string first = Run(false, "42", "1000", folder).Output, again = Run(false, "42", "1000", folder).Output, other = Run(false, "43", "1000", folder).Output;
        Assert.Equal(first, again);
        Assert.NotEqual(first.Replace("seed 42", "", StringComparison.Ordinal), other.Replace("seed 43", "", StringComparison.Ordinal));
    }

    [Fact]
    public void Solve_EachCase_IsTheOperatingPointOfItsCircuit()
    {
        // The solver for one circuit takes another way to the same point: a bracketed root instead of rounds.
        (Circuit circuit, Cases cases) = Solved();
        for (int i = 0; i < Draws; i += 97)
        {
            Length way = Length.FromMeters(cases.Meters[i]);
            CircuitPath path = CircuitPath.Create(Segment.Create(circuit.Wire.Conductor, way), ReturnPath.Wire(way))
                .WithFeedJoints(Joint.Create("joints", ElectricResistance.FromOhms(cases.JointOhms[i])));
            ConductorTemperature warm = ConductorTemperature.SelfHeated(
                Temperature.FromDegreesCelsius(cases.AmbientCelsius[i]), ElectricCurrent.FromAmperes(circuit.RatedAmperes), Temperature.FromDegreesCelsius(cases.AmbientCelsius[i] + 25));
            OperatingPoint point = OperatingPoint.Solve(
                Source.Ideal(ElectricPotential.FromVolts(cases.SupplyVolts[i])), path, Load.ConstantPower(Power.FromWatts(cases.LoadWatts[i])), warm);

            // Rounds end when no wire changes by more than 1e-9 K; the power is a decimal with 15 digits.
            Assert.Equal(point.VoltageAtLoad.Volts, cases.LoadVolts[i], 1e-9);
            Assert.Equal(point.Current.Amperes, cases.Amperes[i], 1e-9);
            Assert.Equal(point.HottestConductor.DegreesCelsius, cases.WireCelsius[i], 1e-8);
        }
    }

    [Fact]
    public void Solve_Shares_AreThoseOfTheCases()
    {
        (Circuit circuit, Cases cases) = Solved();
        string output = Run(false, "1", Draws.ToString(CultureInfo.InvariantCulture), folder).Output;
        int low = cases.LoadVolts.Count(v => v < 10.5), hot = cases.WireCelsius.Count(c => c > 70);
        int either = Enumerable.Range(0, Draws).Count(i => cases.LoadVolts[i] < 10.5 || cases.WireCelsius[i] > 70);
        Assert.Equal((10.5, 70), (circuit.LeastVolts, circuit.MostCelsius));
        Assert.Contains(FormattableString.Invariant($"below 10.5 V at the load                {100.0 * low / Draws,6:0.00} %"), output, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"wire above 70 °C                        {100.0 * hot / Draws,6:0.00} %"), output, StringComparison.Ordinal);
        Assert.Contains(FormattableString.Invariant($"fails either                            {100.0 * either / Draws,6:0.00} %"), output, StringComparison.Ordinal);
        double[] sorted = [.. cases.WireCelsius.Order()];
        Assert.Equal(sorted[(Draws / 2) - 1], Report.Percentile(sorted, 50));
        Assert.Equal(sorted[0], Report.Percentile(sorted, 0));
        Assert.Equal(sorted[^1], Report.Percentile(sorted, 100));
        Assert.Equal(3, Report.Percentile([1, 2, 3, 4], 75));
    }

    [Fact]
    public void Dice_Shapes_HaveTheirMomentsAndEnds()
    {
        // Mean and variance of each distribution from its textbook formula; five standard errors of 200 000 draws.
        const int Count = 200_000;
        Dice dice = new(5);
        Check([.. Enumerable.Range(0, Count).Select(_ => dice.Uniform(5, 6))], 5.5, 1 / 12.0, 5, 6);
        Check([.. Enumerable.Range(0, Count).Select(_ => dice.Triangular(3, 8, 30))], 41 / 3.0, ((9 + 64 + 900) - (24 + 90 + 240)) / 18.0, 3, 30);
        Check([.. Enumerable.Range(0, Count).Select(_ => dice.Normal(45, 8))], 45, 64, -3, 93);
    }

    [Fact]
    public void Dice_FirstNumbers_AreThoseOfThePublishedGenerator()
    {
        // SplitMix64 from a seed of 0 begins 0xE220A8397B1DCDAF, 0x6E789E6AA1B965F4, 0x06C45D188009454F (published with the generator; from memory).
        Dice dice = new(0);
        Assert.Equal((0xE220A8397B1DCDAFul >> 11) / (double)(1L << 53), dice.Uniform(0, 1));
        Assert.Equal((0x6E789E6AA1B965F4ul >> 11) / (double)(1L << 53), dice.Uniform(0, 1));
        Assert.Equal((0x06C45D188009454Ful >> 11) / (double)(1L << 53), dice.Uniform(0, 1));
    }

    [Fact]
    public void Run_WithProgress_TellsHowFarItIs()
    {
        string error = Run(true, "1", "4000", folder).Error;
        Assert.Contains("\r25 % of 4000 draws solved", error, StringComparison.Ordinal);
        Assert.EndsWith("\r100 % of 4000 draws solved\n", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-1")]
    [InlineData("x")]
    [InlineData("1", "999")]
    [InlineData("1", "10000001")]
    [InlineData("1", "1e5")]
    public void Run_BadArgument_IsRefusedInWords(params string[] args)
    {
        (int code, string output, string error) = Run(true, args);
        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith("The arguments are a seed", error, StringComparison.Ordinal);
        Assert.Contains($"they were '{string.Join("' '", args)}'", error, StringComparison.Ordinal);
    }

    private static (Circuit Circuit, Cases Cases) Solved()
    {
        Circuit circuit = new();
        Cases cases = Cases.Draw(circuit, 1, Draws);
        Study.Solve(circuit, cases, null);
        return (circuit, cases);
    }

    private static void Check(double[] values, double mean, double variance, double least, double most)
    {
        double average = values.Average(), spread = values.Select(v => (v - average) * (v - average)).Average();
        Assert.Equal(mean, average, 5 * Math.Sqrt(variance / values.Length));
        Assert.Equal(variance, spread, 5 * variance * Math.Sqrt(2.0 / values.Length));
        Assert.All(values, v => Assert.InRange(v, least, most));
    }

    private static (int Code, string Output, string Error) Run(bool showProgress, params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = Sample.Run(args, output, error, showProgress);
        return (code, output.ToString(), error.ToString());
    }
}
