using System.CommandLine;
using System.Globalization;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>Reads the command line, tells the story, draws the charts that were asked for.</summary>
public static class Sample
{
    // Where type C turns from one rated voltage to the next.
    private const double LowVolts = 32;

    /// <summary>Runs the sample.</summary>
    /// <param name="args">The command line.</param>
    /// <param name="output">Where the story goes.</param>
    /// <param name="error">Where a refusal goes.</param>
    /// <returns>0 protected, 1 not protected, 2 for bad arguments, 3 undetermined.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error)
    {
        Option<double> volts = CommandLine.Number("--volts", "Open-circuit voltage of the source, V", 0, CircuitDesigner.HighestVoltage.Volts, 12.6);
        Option<double> milliohms = CommandLine.Number("--milliohms", "Resistance of source, joints and fuse together, mΩ", 0, 1e6, 8.3, orEqual: true);
        Option<double> meters = CommandLine.Number("--meters", "Metres of wire in the loop, out and back", 0, 1000, 2);
        Option<AwgSize> awg = Gauge();
        Option<double> fuse = CommandLine.Number("--fuse", $"Rating of the blade fuse, A: {Ratings}", 0, 1000, 15);
        Option<string?> chart = CommandLine.OutputFile("--chart", "Draw time against current, as .png or .svg", ChartFile.Endings);
        Option<string?> heat = CommandLine.OutputFile("--temperature-chart", "Draw temperature against time, as .png or .svg", ChartFile.Endings);
        fuse.Validators.Add(result => RefuseOtherRatings(result.Tokens.Count > 0 ? result.Tokens[0].Value : "", result.AddError));
        RootCommand command = CommandLine.Create("Computes the short circuit of a wire from its first moment to the opening of its fuse. " + Scene.Caution, MoreHelp);
        foreach (Option option in new Option[] { volts, milliohms, meters, awg, fuse, chart, heat })
        {
            command.Options.Add(option);
        }

        command.SetAction(parsed =>
        {
            FuseSeries series = parsed.GetValue(volts) > LowVolts ? FuseSeries.RoadVehicleBlade58 : FuseSeries.RoadVehicleBlade;
            Scene scene = new(
                ElectricPotential.FromVolts(parsed.GetValue(volts)),
                ElectricResistance.FromMilliohms(parsed.GetValue(milliohms)),
                Length.FromMeters(parsed.GetValue(meters)),
                parsed.GetValue(awg),
                series.SmallestAtLeast(ElectricCurrent.FromAmperes(parsed.GetValue(fuse))));
            Meaning meaning = Story.Tell(scene, output);
            Draw(scene, parsed.GetValue(chart), parsed.GetValue(heat), output);
            return meaning switch { Meaning.Protected => 0, Meaning.NotProtected => 1, _ => 3 };
        });
        try
        {
            return CommandLine.Run(command, args, output, error);
        }
        catch (Exception refused) when (refused is ArgumentException or IOException or UnauthorizedAccessException)
        {
            error.WriteLine(refused.Message);
            return CommandLine.BadInput;
        }
    }

    private static string Ratings => string.Join(", ", FuseSeries.RoadVehicleBlade.Ratings.Select(rating => rating.Current.Amperes.ToString("R", CultureInfo.InvariantCulture)));

    private static void RefuseOtherRatings(string text, Action<string> refuse)
    {
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double amperes) && amperes > 0
            && !FuseSeries.RoadVehicleBlade.Contains(ElectricCurrent.FromAmperes(amperes)))
        {
            refuse($"There is no blade fuse of {text} A. The ratings of ISO 8820-3 type C: {Ratings} A.");
        }
    }

    private static Option<AwgSize> Gauge() => new("--awg")
    {
        Description = "Size of the wire, AWG: 40 to 0, 2/0, 3/0, 4/0",
        HelpName = "SIZE",
        DefaultValueFactory = _ => AwgSize.FromNumber(16),
        CustomParser = result =>
        {
            string text = result.Tokens.Count > 0 ? result.Tokens[0].Value : "";
            if (!AwgSize.TryParse(text, CultureInfo.InvariantCulture, out AwgSize size))
            {
                result.AddError($"--awg must be a size from 40 to 0, 2/0, 3/0 or 4/0; it was '{text}'.");
            }

            return size;
        },
    };

    private static void Draw(Scene scene, string? chart, string? heat, TextWriter output)
    {
        if (chart is not null)
        {
            ChartFile.Save(Charts.TimeCurrent(scene), chart);
            output.WriteLine($"Time against current drawn in {chart}");
        }

        if (heat is not null)
        {
            ChartFile.Save(Charts.Temperatures(scene), heat);
            output.WriteLine($"Temperature against time drawn in {heat}");
        }
    }

    private static void MoreHelp(TextWriter output) => output.WriteLine("""
        Exit codes:
          0  protected: the fuse opens, in time, and is made for this current and voltage
          1  not protected
          2  bad arguments
          3  undetermined: for this fuse something is not published
        """);
}
