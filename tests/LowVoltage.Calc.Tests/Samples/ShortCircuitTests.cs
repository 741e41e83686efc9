using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Samples.ShortCircuit;
using LowVoltage.Calc.Tests.Design;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The sample, run in this process: its story against plain arithmetic, its verdicts and exit codes, its charts, its refusals, its README.</summary>
public sealed class ShortCircuitTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("short-circuit").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Run_TheReadmesExamples_PrintWhatTheReadmeShows()
    {
        using StreamReader reader = new(PublishedTable.Open("ShortCircuit.README.md"));
        string readme = reader.ReadToEnd().ReplaceLineEndings("\n");
        (int code, string output, string error) = Run();
        Assert.Equal((0, ""), (code, error));
        Assert.Contains(output.TrimEnd(), readme, StringComparison.Ordinal);
        Assert.StartsWith("CAUTION: a shorted battery burns and can explode.", output, StringComparison.Ordinal);
        Assert.Contains(Run("--milliohms", "900").Output.TrimEnd(), readme, StringComparison.Ordinal);
        Assert.All(output.Split('\n'), line => Assert.Equal(line.TrimEnd(), line));
    }

    [Fact]
    public void Run_Story_AgreesWithSmallSteps()
    {
        // IEC 60028 copper, 2 % lay, IEC 60949 heat capacity: 1 µs steps of dθ/dt = I²·R′/C′, I = 12.6 V/(8.3 mΩ + 2 m·R′).
        (_, string output, _) = Run("--volts", "12.6", "--milliohms", "8.3", "--meters", "2", "--awg", "16", "--fuse", "15");
        double perKilometer = Plain.AwgPerKilometer(16), capacity = Plain.HeatCapacity * Math.Min(Plain.Rho / (perKilometer / 1000), Plain.AwgArea(16)) * 1e-6;
        double theta = 22, joules = 0;
        double amperes() => 12.6 / (0.0083 + (2 * Plain.PerMeter(perKilometer, theta)));
        Assert.Contains(FormattableString.Invariant($"Prospective current {amperes():G4} A"), output, StringComparison.Ordinal);
        int[] shown = [1, 10, 100, 1000];
        for (int step = 1; step <= 1_000_000; step++)
        {
            double i = amperes();
            joules += i * i * 1e-6;
            theta += i * i * Plain.PerMeter(perKilometer, theta) / capacity * 1e-6;
            if (Array.Exists(shown, ms => step == 1000 * ms))
            {
                // The table shows whole numbers.
                double[] row = Row(output, step / 1000);
                Assert.Equal(amperes(), row[1], 0.51);
                Assert.Equal(joules, row[2], 0.5 + (1e-5 * joules));
                Assert.Equal(theta, row[3], 0.51);
            }
        }
    }

    [Theory]
    [InlineData("900")]
    [InlineData("600")]
    public void Run_BelowTheFusingCurrent_SaysThatTheFuseNeedNotOpenAndNothingOfMelting(string milliohms)
    {
        // 1.35 × 15 A: the conventional fusing current that ISO 8820-3 gives a blade fuse.
        (int code, string output, _) = Run("--milliohms", milliohms);
        Assert.Equal(1, code);
        Assert.Contains("Does the fuse open? NO.", output, StringComparison.Ordinal);
        Assert.Contains("is less than the 20.25 A at which it must", output, StringComparison.Ordinal);
        Assert.DoesNotContain("melt", output, StringComparison.Ordinal);
        Assert.EndsWith("Verdict: NOT PROTECTED\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_BelowTheFusingCurrent_SettlesWhereTheHeatBalanceDoes()
    {
        // 12.6 V over 0.9 Ω and 2 m of 16 AWG, some 13.59 A: the settled temperature against the library's other way to it, at the current of the last row.
        (_, string output, _) = Run("--milliohms", "900");
        double[] last = Row(output, 300);
        Wire wire = Wire.Create(
            Conductor.Stranded(AwgSize.FromNumber(16), ConductorMaterial.Copper), InsulationMaterial.PolyvinylChloride, Length.FromMillimeters(0.6));
        double steady = LowVoltage.Calc.Heating.HeatBalance.TemperatureAt(
            wire, new LowVoltage.Calc.Heating.Surroundings { Ambient = Temperature.FromDegreesCelsius(22) }, ElectricCurrent.FromAmperes(last[1])).DegreesCelsius;

        // The table shows whole degrees, the current three figures.
        Assert.Equal(steady, last[3], 0.7);
        Assert.Contains("Then it stays as it is.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_CurrentThatFallsBelowTheFusingCurrent_NeedNotOpenTheFuse()
    {
        (int code, string output, _) = Run("--awg", "30", "--fuse", "3", "--meters", "8");
        Assert.Equal(1, code);
        Assert.Contains("as the wire warms, the current falls to", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, "Verdict: protected")]
    [InlineData(0, "Verdict: protected", "--milliohms", "550")]
    [InlineData(1, "Does the fuse protect the wire at every current up to this one? NO.", "--fuse", "40")]
    [InlineData(1, "Can the fuse break this current? NO.", "--volts", "58")]
    [InlineData(1, "Is the fuse made for this voltage? NO.", "--volts", "60", "--milliohms", "100")]
    [InlineData(1, "the wire can melt", "--awg", "30", "--fuse", "40", "--meters", "0.2")]
    [InlineData(3, "Verdict: undetermined: not a pass", "--fuse", "2")]
    public void Run_Verdict_IsTheExitCode(int code, string expected, params string[] args)
    {
        (int found, string output, string error) = Run(args);
        Assert.Equal((code, ""), (found, error));
        Assert.Contains(expected, output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_NumbersOfAnySize_AreReadableAndWhatWasAskedIsNotRounded()
    {
        string output = Run("--volts", "48.12345", "--milliohms", "1", "--awg", "4/0", "--meters", "0.00025", "--fuse", "40").Output;
        Assert.Contains("4/0 AWG stranded copper, PVC (70 °C), 0.00025 m in the loop", output, StringComparison.Ordinal);
        Assert.Contains("48.12345 V behind 1 mΩ", output, StringComparison.Ordinal);
        Assert.Matches("Prospective current [0-9]{5} A\n", output);
        Assert.DoesNotMatch("[0-9]E[+-]", output[..output.IndexOf("Does the fuse protect", StringComparison.Ordinal)]);
    }

    [Fact]
    public void Run_WireThatSettles_SaysWithWhichCurrent()
    {
        // 12.6 V over 8.3 mΩ and 2 m of 40 AWG, some 1.8 A at first; the wire warms until its own resistance holds the current down.
        string output = Run("--awg", "40", "--fuse", "40").Output;
        Assert.Matches(@"the wire\s+settles\s+with\s+1\.3[0-9]+\s+A\s+at\s+1", output);
    }

    [Fact]
    public void Run_WithoutACharts_Name_DrawsNone()
    {
        string[] before = Directory.GetFiles(Environment.CurrentDirectory);
        Run();
        Assert.Equal(before, Directory.GetFiles(Environment.CurrentDirectory));
    }

    [Theory]
    [InlineData("8.3")]
    [InlineData("900")]
    [InlineData("1500")]
    public void Run_Charts_AreDrawnWhereAskedFor(string milliohms)
    {
        string svg = Path.Combine(folder, "a.svg"), png = Path.Combine(folder, "b.png");
        (_, string output, string error) = Run("--milliohms", milliohms, "--chart", svg, "--temperature-chart", png);
        Assert.Empty(error);
        Assert.Contains($"Time against current drawn in {svg}\nTemperature against time drawn in {png}\n", output, StringComparison.Ordinal);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(png)[..4]);
        Assert.True(new FileInfo(png).Length > 10_000);
        Assert.NotNull(System.Xml.Linq.XDocument.Parse(File.ReadAllText(svg).TrimStart('\uFEFF')).Root);
    }

    [Theory]
    [InlineData("8.3")]
    [InlineData("900")]
    public void TimeCurrentChart_CurrentAxis_GrowsToTheRightAndHoldsTheShortCircuitAndTheFuse(string milliohms)
    {
        Scene scene = new(
            ElectricPotential.FromVolts(12.6), ElectricResistance.FromMilliohms(double.Parse(milliohms, System.Globalization.CultureInfo.InvariantCulture)), Length.FromMeters(2),
            AwgSize.FromNumber(16), LowVoltage.Calc.Protection.FuseSeries.RoadVehicleBlade.SmallestAtLeast(ElectricCurrent.FromAmperes(15)));
        ScottPlot.AxisLimits axes = Charts.TimeCurrent(scene).Axes.GetLimits();
        Assert.True(axes.Left < axes.Right);
        Assert.InRange(Math.Log10(scene.Path.ProspectiveCurrent.Amperes), axes.Left, axes.Right);
        Assert.InRange(Math.Log10(20.25), axes.Left, axes.Right);
    }

    [Theory]
    [InlineData("--volts must be a number with a decimal point, above 0 and at most 60; it was '12,6'.", "--volts", "12,6")]
    [InlineData("--volts must be a number with a decimal point, above 0 and at most 60; it was '61'.", "--volts", "61")]
    [InlineData("--volts must be", "--volts", "-5")]
    [InlineData("--volts must be", "--volts", "NaN")]
    [InlineData("--milliohms must be a number with a decimal point, from 0 to 1000000; it was '-1'.", "--milliohms", "-1")]
    [InlineData("--meters must be", "--meters", "0")]
    [InlineData("--awg must be a size from 40 to 0, 2/0, 3/0 or 4/0; it was '16.5'.", "--awg", "16.5")]
    [InlineData("--awg must be", "--awg", "77")]
    [InlineData("There is no blade fuse of 16 A. The ratings of ISO 8820-3 type C: 1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40 A.", "--fuse", "16")]
    [InlineData("There is no blade fuse of 60 A.", "--fuse", "60")]
    [InlineData("Unrecognized command or argument '12.6'.", "12.6")]
    [InlineData("Unrecognized command or argument '--colour'.", "--colour")]
    [InlineData("--chart writes .png or .svg; the name was 'chart.pdf'.", "--chart", "chart.pdf")]
    [InlineData("--chart needs the name of the file to write.", "--chart", "--fuse")]
    public void Run_BadArgument_IsRefusedInWords(string named, params string[] args)
    {
        (int code, string output, string error) = Run(args);
        Assert.Equal((2, ""), (code, output));
        Assert.Contains(named, error, StringComparison.Ordinal);
        Assert.EndsWith("Try --help.\n", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_ChartThatCannotBeWritten_IsRefusedInWords()
    {
        (int code, _, string error) = Run("--chart", Path.Combine(folder, "no", "such", "a.svg"));
        Assert.Equal(2, code);
        Assert.Contains("a.svg", error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Help_NamesOptionsAndExitCodes()
    {
        (int code, string output, string error) = Run("--help");
        Assert.Equal((0, ""), (code, error));
        foreach (string text in new[] { "--volts", "--milliohms", "--meters", "--awg", "--fuse", "--chart", "--temperature-chart", "Exit codes:", "CAUTION" })
        {
            Assert.Contains(text, output, StringComparison.Ordinal);
        }
    }

    private static double[] Row(string output, int time)
    {
        string line = output.Split('\n').Single(text => text.TrimStart().StartsWith(time + " ", StringComparison.Ordinal));
        return [.. line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Take(4).Select(text => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture))];
    }

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = Sample.Run(args, output, error);
        return (code, output.ToString(), error.ToString());
    }
}
