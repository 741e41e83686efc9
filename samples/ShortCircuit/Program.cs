using System.Globalization;
using LowVoltage.Calc.Samples.ShortCircuit;

// Volts, milliohms, metres of wire in the loop, AWG, fuse rating, folder for the charts; all optional, in this order.
double Number(int index, double otherwise) => args.Length > index ? double.Parse(args[index], CultureInfo.InvariantCulture) : otherwise;

Scene scene = new(Number(0, 12.6), Number(1, 8.3), Number(2, 2), (int)Number(3, 16), Number(4, 15));
Story.Tell(scene, Console.Out);
string folder = args.Length > 5 ? args[5] : Environment.CurrentDirectory;
Directory.CreateDirectory(folder);
Charts.Write(scene, folder);
Console.WriteLine($"Charts written to {folder}.");
