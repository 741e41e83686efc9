using System.Runtime.InteropServices;
using System.Text.Json;
using Microsoft.Extensions.Hosting;

namespace FleetStudy;

/// <summary>A silo in a process of its own, started by the program with <c>--silos</c>. Its settings come on the standard input; when that ends, the one who started it has gone, and so does it.</summary>
internal static class SiloProcess
{
    /// <summary>The first and only argument.</summary>
    public const string Argument = "silo-process";

    /// <summary>What it says when it takes part.</summary>
    public const string Ready = "ready";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(4);

    public static async Task<int> Go()
    {
        // Ctrl-C goes to every process of a terminal; here the starter decides when to stop.
        using PosixSignalRegistration interrupt = PosixSignalRegistration.Create(PosixSignal.SIGINT, context => context.Cancel = true);
        using CancellationTokenSource stop = new();
        using PosixSignalRegistration terminate = PosixSignalRegistration.Create(PosixSignal.SIGTERM, context =>
        {
            context.Cancel = true;
            stop.Cancel();
        });
        string? line = await Console.In.ReadLineAsync(stop.Token);
        if (line is null || JsonSerializer.Deserialize<SiloSettings>(line) is not { } settings)
        {
            return Program.BadInput;
        }

        using IHost host = await Silo.Start(settings, stop.Token);
        Console.WriteLine(Ready);
        Task<string?> end = Task.Run(Console.In.ReadLine);
        await Task.WhenAny(end, Task.Delay(Timeout.Infinite, stop.Token), host.WaitForShutdownAsync(CancellationToken.None));
        if (settings.Database.Kind != DatabaseKind.Sqlite)
        {
            // The others need not find out by themselves. A file's silos all go at once, and their list is nobody's after that.
            await Silo.Stop(host, Patience);
        }

        // What still runs after that, a piece that nobody waits for, goes with the process.
        Environment.Exit(0);
        return 0;
    }
}
