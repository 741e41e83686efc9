using System.Globalization;
using LowVoltage.Calc.Samples.ShortCircuit;

// Volts, milliohms, metres of wire in the loop, AWG, fuse rating, folder for the charts; all optional, in this order.
double[] values = [12.6, 8.3, 2, 16, 15];
for (int i = 0; i < Math.Min(args.Length, values.Length); i++)
{
    if (!double.TryParse(args[i], NumberStyles.Float, CultureInfo.InvariantCulture, out values[i]))
    {
        Console.Error.WriteLine($"Argument {i + 1} must be a number with a decimal point; it was '{args[i]}'. In order: volts, milliohms, metres of wire, AWG size, fuse rating in A, folder.");
        return 2;
    }
}

try
{
    Scene scene = new(values[0], values[1], values[2], (int)values[3], values[4]);
    Story.Tell(scene, Console.Out);
    string folder = args.Length > 5 ? args[5] : Environment.CurrentDirectory;
    Directory.CreateDirectory(folder);
    Charts.Write(scene, folder);
    Console.WriteLine($"Charts written to {folder}.");
    return 0;
}
catch (ArgumentException refused)
{
    Console.Error.WriteLine(refused.Message);
    return 2;
}
