using System.Text;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

internal static class Program
{
    private static int Main(string[] args)
    {
        // Some consoles start with a legacy code page, which has no Ω.
        Console.OutputEncoding = Encoding.UTF8;

        // The progress is for a person who waits: none where the error stream goes to a file.
        return Sample.Run(args, Console.Out, Console.Error, showProgress: !Console.IsErrorRedirected);
    }
}
