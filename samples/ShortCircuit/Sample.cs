using System.Globalization;

namespace LowVoltage.Calc.Samples.ShortCircuit;

/// <summary>Reads the arguments, tells the story, writes the charts.</summary>
public static class Sample
{
    /// <summary>Runs the sample.</summary>
    /// <param name="args">Volts, milliohms, metres of wire in the loop, AWG size, fuse rating, folder for the charts; all optional, in this order.</param>
    /// <param name="output">Where the story goes.</param>
    /// <param name="error">Where a refusal goes.</param>
    /// <returns>0, or 2 for a bad argument.</returns>
    public static int Run(string[] args, TextWriter output, TextWriter error)
    {
        double[] values = [12.6, 8.3, 2, 16, 15];
        for (int i = 0; i < Math.Min(args.Length, values.Length); i++)
        {
            if (!double.TryParse(args[i], NumberStyles.Float, CultureInfo.InvariantCulture, out values[i]))
            {
                error.WriteLine($"Argument {i + 1} must be a number with a decimal point; it was '{args[i]}'. In order: volts, milliohms, metres of wire, AWG size, fuse rating in A, folder.");
                return 2;
            }
        }

        try
        {
            Scene scene = new(values[0], values[1], values[2], Gauge(values[3]), values[4]);
            Story.Tell(scene, output);
            string folder = args.Length > 5 ? args[5] : Environment.CurrentDirectory;
            Directory.CreateDirectory(folder);
            Charts.Write(scene, folder);
            output.WriteLine($"Charts written to {folder}.");
            return 0;
        }
        catch (ArgumentException refused)
        {
            error.WriteLine(refused.Message);
            return 2;
        }
    }

    private static int Gauge(double value) => value == Math.Round(value) && Math.Abs(value) < 100
        ? (int)value
        : throw new ArgumentException($"The AWG size must be a whole number; it was {value.ToString("R", CultureInfo.InvariantCulture)}. Write 1/0 as 0 and 4/0 as -3.");
}
