using System.Text;
using LowVoltage.Calc.Samples.ShortCircuit;

// Some consoles start with a legacy code page, which has no Ω.
Console.OutputEncoding = new UTF8Encoding(false);
return Sample.Run(args, Console.Out, Console.Error);
