using System.Text;
using Spectre.Console;

namespace LowVoltage.Calc.Samples.ToleranceStudy;

internal static class Program
{
    private static int Main(string[] args)
    {
        // Some consoles start with a legacy code page, which has no Ω.
        Console.OutputEncoding = new UTF8Encoding(false);

        // The progress is for a person who waits: none where the error stream goes to a file.
        IAnsiConsole? progress = Console.IsErrorRedirected
            ? null
            : AnsiConsole.Create(new AnsiConsoleSettings { Interactive = InteractionSupport.Yes, Out = new AnsiConsoleOutput(Console.Error) });
        return Sample.Run(args, Console.Out, Console.Error, progress);
    }
}
