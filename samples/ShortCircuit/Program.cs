using System.Text;

namespace LowVoltage.Calc.Samples.ShortCircuit;

internal static class Program
{
    private static int Main(string[] args)
    {
        // Some consoles start with a legacy code page, which has no Ω.
        Console.OutputEncoding = new UTF8Encoding(false);
        return Sample.Run(args, Console.Out, Console.Error);
    }
}
