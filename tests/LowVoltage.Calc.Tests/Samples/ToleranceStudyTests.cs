using System.Globalization;
using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Samples.ToleranceStudy;
using Spectre.Console;

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
        string[] before = Directory.GetFiles(Environment.CurrentDirectory);
        (int code, string output, string error) = Run();
        Assert.Equal((0, ""), (code, error));
        using StreamReader reader = new(PublishedTable.Open("ToleranceStudy.README.md"));
        Assert.Contains(output.TrimEnd(), reader.ReadToEnd().ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.StartsWith("CAUTION: an invented circuit with invented spreads.", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.InRange(line.Length, 0, 110));
        Assert.Equal(before, Directory.GetFiles(Environment.CurrentDirectory));
    }

    [Fact]
    public void Run_Charts_AreDrawnWhereAskedFor()
    {
        string svg = Path.Combine(folder, "volts.svg"), png = Path.Combine(folder, "heat.png");
        (int code, string output, string error) = Run("--draws", "1000", "--chart", svg, "--temperature-chart", png);
        Assert.Equal((0, ""), (code, error));
        Assert.EndsWith($"Voltage at the load drawn in {svg}\nWire temperature drawn in {png}\n", output, StringComparison.Ordinal);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(png)[..4]);
        Assert.True(new FileInfo(png).Length > 10_000);
        Assert.NotNull(System.Xml.Linq.XDocument.Parse(File.ReadAllText(svg).TrimStart('\uFEFF')).Root);
    }

    [Fact]
    public void Run_SameSeed_SameAnswer_AnotherSeedAnother()
    {
        string first = Run("--seed", "42", "--draws", "1000").Output, again = Run("--seed", "42", "--draws", "1000").Output, other = Run("--seed", "43", "--draws", "1000").Output;
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
        string output = Run("--draws", Draws.ToString(CultureInfo.InvariantCulture)).Output;
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
        using StringWriter output = new() { NewLine = "\n" }, error = new(), terminal = new();
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.Yes, ColorSystem = ColorSystemSupport.NoColors, Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(terminal),
        });

        int code = Sample.Run(["--draws", "4000"], output, error, console);

        Assert.Equal((0, ""), (code, error.ToString()));
        Assert.Contains("Solving the draws", terminal.ToString(), StringComparison.Ordinal);
        Assert.Equal(Run("--draws", "4000").Output, output.ToString());
    }

    [Fact]
    public void Run_Stopped_SaysSoAndExitsAsShellsCount()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        using StringWriter output = new(), error = new() { NewLine = "\n" };
        Assert.Equal(130, Sample.Run([], output, error, stop: stop.Token));
        Assert.Equal(("", "Stopped.\n"), (output.ToString(), error.ToString()));
    }

    [Theory]
    [InlineData("--seed must be a whole number from 0 to", "--seed", "-1")]
    [InlineData("--seed must be a whole number from 0 to", "--seed", "x")]
    [InlineData("--draws must be a whole number from 1000 to 10000000; it was '999'.", "--draws", "999")]
    [InlineData("--draws must be", "--draws", "10000001")]
    [InlineData("--draws must be", "--draws", "1e5")]
    [InlineData("Unrecognized command or argument '1'.", "1")]
    [InlineData("--chart writes .png or .svg", "--chart", "folder")]
    public void Run_BadArgument_IsRefusedInWords(string named, params string[] args)
    {
        (int code, string output, string error) = Run(args);
        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith(named, error, StringComparison.Ordinal);
        Assert.EndsWith("Try --help.\n", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Help_NamesOptionsAndExitCodes()
    {
        (int code, string output, string error) = Run("--help");
        Assert.Equal((0, ""), (code, error));
        foreach (string text in new[] { "--seed", "--draws", "--chart", "--temperature-chart", "Exit codes:" })
        {
            Assert.Contains(text, output, StringComparison.Ordinal);
        }
    }

    private static (Circuit Circuit, Cases Cases) Solved()
    {
        Circuit circuit = new();
        Cases cases = Cases.Draw(circuit, 1, Draws);
        Study.Solve(circuit, cases, _ => { });
        return (circuit, cases);
    }

    private static void Check(double[] values, double mean, double variance, double least, double most)
    {
        double average = values.Average(), spread = values.Select(v => (v - average) * (v - average)).Average();
        Assert.Equal(mean, average, 5 * Math.Sqrt(variance / values.Length));
        Assert.Equal(variance, spread, 5 * variance * Math.Sqrt(2.0 / values.Length));
        Assert.All(values, v => Assert.InRange(v, least, most));
    }

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = Sample.Run(args, output, error);
        return (code, output.ToString(), error.ToString());
    }
}
