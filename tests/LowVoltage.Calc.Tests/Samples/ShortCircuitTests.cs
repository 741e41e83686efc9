using LowVoltage.Calc.Samples.ShortCircuit;
using LowVoltage.Calc.Tests.Design;

namespace LowVoltage.Calc.Tests.Samples;

/// <summary>The sample, run in this process: its story against plain arithmetic, its charts, its refusals, its README.</summary>
public sealed class ShortCircuitTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("short-circuit").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Run_TheReadmesExample_PrintsWhatTheReadmeShows()
    {
        (int code, string output, string error) = Run("12.6", "8.3", "2", "16", "15", folder);
        Assert.Equal((0, ""), (code, error));
        using StreamReader reader = new(PublishedTable.Open("ShortCircuit.README.md"));
        Assert.Contains(output.Replace(folder, "charts", StringComparison.Ordinal).TrimEnd(), reader.ReadToEnd().ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.StartsWith("CAUTION: a shorted battery burns and can explode.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Story_AgreesWithSmallSteps()
    {
        // IEC 60028 copper, 2 % lay, IEC 60949 heat capacity: 1 µs steps of dθ/dt = I²·R′/C′, I = 12.6 V/(8.3 mΩ + 2 m·R′).
        (_, string output, _) = Run("12.6", "8.3", "2", "16", "15", folder);
        double perKilometer = Plain.AwgPerKilometer(16), capacity = Plain.HeatCapacity * Math.Min(Plain.Rho / (perKilometer / 1000), Plain.AwgArea(16)) * 1e-6;
        double theta = 22, joules = 0;
        double amperes() => 12.6 / (0.0083 + (2 * Plain.PerMeter(perKilometer, theta)));
        Assert.Contains(FormattableString.Invariant($"prospective current {amperes():G4} A"), output, StringComparison.Ordinal);
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

    [Fact]
    public void Run_Charts_AreWrittenWithTheirWords()
    {
        Run("12.6", "8.3", "2", "16", "15", folder);
        foreach (string name in new[] { "short-circuit-time-current", "short-circuit-temperature" })
        {
            byte[] png = File.ReadAllBytes(Path.Combine(folder, name + ".png"));
            Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], png[..4]);
            Assert.True(png.Length > 10_000);
            string svg = File.ReadAllText(Path.Combine(folder, name + ".svg"));
            Assert.StartsWith("<?xml", svg.TrimStart('\uFEFF'), StringComparison.Ordinal);
            Assert.NotNull(System.Xml.Linq.XDocument.Parse(svg.TrimStart('\uFEFF')).Root);
        }
    }

    [Theory]
    [InlineData("Argument 1 must be a number with a decimal point; it was '12,6'", "12,6")]
    [InlineData("voltage", "-5")]
    [InlineData("fixedResistance", "12.6", "-1")]
    [InlineData("length", "12.6", "8", "0")]
    [InlineData("The AWG size must be a whole number; it was 16.5", "12.6", "8", "2", "16.5")]
    [InlineData("from -3 to 40; it was 77", "12.6", "8", "2", "77")]
    public void Run_BadArgument_IsRefusedInWords(string named, params string[] args)
    {
        (int code, _, string error) = Run(args);
        Assert.Equal(2, code);
        Assert.Contains(named, error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    private static double[] Row(string output, int milliseconds)
    {
        string line = output.Split('\n').Single(text => text.TrimStart().StartsWith(milliseconds + " ", StringComparison.Ordinal));
        return [.. line.Split(' ', StringSplitOptions.RemoveEmptyEntries).Take(4).Select(text => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture))];
    }

    private static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = Sample.Run(args, output, error);
        return (code, output.ToString(), error.ToString());
    }
}
