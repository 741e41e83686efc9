using LowVoltage.Calc.Harnesses;
using LowVoltage.Calc.Samples.ToleranceStudy;
using Spectre.Console;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The sample, run in this process: its README, its shares against the library's, its percentiles against draws of another kind, its charts.</summary>
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
        Assert.StartsWith("CAUTION: an invented circuit with invented tolerances.", output, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.InRange(line.Length, 0, 120));
        Assert.Equal(before, Directory.GetFiles(Environment.CurrentDirectory));
    }

    [Fact]
    public void Run_Charts_AreDrawnWhereAskedFor()
    {
        string svg = Path.Combine(folder, "volts.svg"), png = Path.Combine(folder, "heat.png");
        (int code, string output, string error) = Run("--draws", "1000", "--chart", svg, "--temperature-chart", png);
        Assert.Equal((0, ""), (code, error));
        Assert.EndsWith($"Voltage at the load drawn in {svg}\nConductor temperature drawn in {png}\n", output, StringComparison.Ordinal);
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
    public void Run_Shares_AreThoseOfTheLibrary()
    {
        CircuitDesign design = Circuit.Design();
        ToleranceSample sample = ToleranceSample.OfCircuit(design, Circuit.Tolerances, 1000, 1, threads: 1);
        string output = Run("--draws", "1000").Output;
        Assert.Equal(LowVoltage.Calc.Checks.Verdict.Pass, design.Verdict);
        Assert.InRange(sample.Whole.Failed, 1, 999);
        foreach (SampledCheck check in sample.Checks.Where(c => c.Failed > 0).Append(sample.Whole))
        {
            Assert.Contains(FormattableString.Invariant($"{check.Name,-38}{check.Failed,10}{check.FailedShare.Percent,9:0.00} %   at most {check.AtMost().Percent:0.00} %"), output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Run_Percentiles_AreNearThoseOfAnIndependentDraw()
    {
        // The voltage at the load, drawn here with .NET's own generator and the quadratic of a constant power behind a resistance; the wire warms by little, so its
        // temperature is that of the air. A percentile of n draws is off by some √(p(1 − p)/n)/f: 0.02 V is five of these at 1 % and both 20 000.
        CircuitDesign design = Circuit.Design();
        SampledCheck volts = ToleranceSample.OfCircuit(design, Circuit.Tolerances, Draws, 1).Checks.Single(c => c.Name == "voltage at the load");
        double[] drawn = new double[Draws];
        Random random = new(5);
        double Factor(double share) => 1 + (share * ((2 * random.NextDouble()) - 1));
        for (int i = 0; i < Draws; i++)
        {
            double celsius = 45 + (15 * ((2 * random.NextDouble()) - 1)), reel = Factor(0.03);
            double wire = design.Wire.ResistancePerLength(Temperature.FromDegreesCelsius(celsius)).OhmsPerMeter * reel * 3.5 * (Factor(0.09) + Factor(0.09));
            double ohms = wire + (0.010 * Factor(0.6)) + (0.025 * Factor(0.6)), supply = 12.3 * Factor(0.04), watts = 70 * Factor(0.15);
            drawn[i] = (supply + Math.Sqrt((supply * supply) - (4 * ohms * watts))) / 2;
        }

        Array.Sort(drawn);
        foreach (double percent in new[] { 1.0, 5, 50, 95, 99 })
        {
            Assert.Equal(drawn[(int)(percent / 100 * Draws)], volts.Percentile(percent)!.Value, 0.02);
        }
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
    [InlineData("--draws must be a whole number from 1000 to 1000000; it was '999'.", "--draws", "999")]
    [InlineData("--draws must be", "--draws", "1000001")]
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

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = Sample.Run(args, output, error);
        return (code, output.ToString(), error.ToString());
    }
}
