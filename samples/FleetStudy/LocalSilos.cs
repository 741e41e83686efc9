using System.Diagnostics;
using System.Text.Json;

namespace FleetStudy;

/// <summary>The processes of <c>--silos</c>, on the loopback address of this machine.</summary>
internal sealed class LocalSilos(SiloSettings settings, int count, TextWriter notes) : IAsyncDisposable
{
    // When the last has gone, a new one takes over what was kept; more than that is not bad luck.
    private const int MostReplacements = 3;
    private static readonly TimeSpan StartPatience = TimeSpan.FromSeconds(120), EndPatience = TimeSpan.FromSeconds(8);

    private readonly List<Process> running = [];
    private int started, replaced;

    /// <summary>Starts them all and waits until they take part; one that does not is named, and the others go on.</summary>
    /// <exception cref="UnfinishedException">None did.</exception>
    public async Task Start(CancellationToken stop)
    {
        Process[] all = [.. Enumerable.Range(0, count).Select(_ => StartOne())];
        string?[] problems = await Task.WhenAll(all.Select(p => WaitUntilReady(p, stop)));
        if (!problems.Contains(null))
        {
            throw new UnfinishedException($"No silo started: {problems[0]}");
        }
    }

    /// <summary>Names the silos that have gone; starts a new one when none is left.</summary>
    /// <exception cref="UnfinishedException">Silo after silo ends.</exception>
    public async Task Watch(CancellationToken stop)
    {
        foreach (Process gone in running.Where(p => p.HasExited).ToArray())
        {
            running.Remove(gone);
            notes.WriteLine($"The silo of process {gone.Id} has ended; {running.Count} of {count} are left and go on.");
            gone.Dispose();
        }

        if (running.Count == 0)
        {
            if (replaced++ == MostReplacements)
            {
                throw new UnfinishedException("Silo after silo ended.");
            }

            if (await WaitUntilReady(StartOne(), stop) is { } problem)
            {
                throw new UnfinishedException($"No silo is left, and no new one started: {problem}");
            }
        }
    }

    public async ValueTask DisposeAsync()
    {
        foreach (Process silo in running)
        {
            try
            {
                silo.StandardInput.Close();
            }
            catch (IOException)
            {
                // It has gone already.
            }
        }

        using CancellationTokenSource enough = new(EndPatience);
        foreach (Process silo in running)
        {
            try
            {
                await silo.WaitForExitAsync(enough.Token);
            }
            catch (OperationCanceledException)
            {
                silo.Kill();
            }

            silo.Dispose();
        }

        running.Clear();
    }

    private Process StartOne()
    {
        string program = typeof(LocalSilos).Assembly.Location;
        string host = Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path).Equals("dotnet", StringComparison.OrdinalIgnoreCase) ? path : "dotnet";
        ProcessStartInfo start = new(host, [program, SiloProcess.Argument]) { RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        Process silo = Process.Start(start) ?? throw new UnfinishedException("A process could not be started.");
        silo.StandardInput.WriteLine(JsonSerializer.Serialize(settings));
        silo.StandardInput.Flush();
        running.Add(silo);
        notes.WriteLine($"Silo {++started} is process {silo.Id}.");
        return silo;
    }

    // Null when it takes part; else what kept it from that.
    private async Task<string?> WaitUntilReady(Process silo, CancellationToken stop)
    {
        Task<string> wrong = silo.StandardError.ReadToEndAsync(CancellationToken.None);
        try
        {
            string? line = await silo.StandardOutput.ReadLineAsync(stop).AsTask().WaitAsync(StartPatience, stop);
            if (line == SiloProcess.Ready)
            {
                return null;
            }

            string told = (await wrong).Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).FirstOrDefault() ?? "it ended without a word";
            notes.WriteLine($"The silo of process {silo.Id} did not start: {told}");
            return told;
        }
        catch (TimeoutException)
        {
            silo.Kill();
            return $"it did not take part within {StartPatience.TotalSeconds:0} s";
        }
    }
}
