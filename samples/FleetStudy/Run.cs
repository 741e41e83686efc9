using System.Diagnostics;
using System.Globalization;
using Microsoft.Extensions.Hosting;
using Spectre.Console;

namespace FleetStudy;

/// <summary>One run: study, follow, print.</summary>
internal sealed class Run(Options options, TextWriter output, TextWriter notes, IAnsiConsole? terminal, CancellationToken stop)
{
    private readonly Stopwatch sinceLast = new();
    private TimeSpan longestPause;
    private TimeSpan? workTime;
    private TimeSpan processorBefore;
    private bool toldOfKept;
    private int studied;
    private StudyProgress? last;

    public async Task<int> Go()
    {
        StudySpec spec = options.Spec;
        Study study = Study.Named(spec.Study);
        if (options.Show is { } variant)
        {
            study.Show(spec, variant, output);
            return Program.AllPass;
        }

        if (options.Joins)
        {
            return await TakePart();
        }

        if (spec.PagesFolder is { } folder)
        {
            Directory.CreateDirectory(folder);
        }

        Stopwatch watch = Stopwatch.StartNew();
        processorBefore = ProcessorTime;
        Tally tally = options.IsPlain ? await Watched(told => Task.FromResult(PlainRun.Go(spec, told, stop))) : await Clustered(watch);
        double seconds = (workTime ?? watch.Elapsed).TotalSeconds;
        TimeSpan processor = ProcessorTime - processorBefore;
        study.Report(spec, tally, output);
        double share = options.IsPlain ? 1 : (double)studied / spec.Pieces;
        notes.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{spec.Variants * share:0} variants in {seconds:0.00} s, {spec.Variants * share / seconds:0} a second{(options.IsPlain ? "" : $"; longest pause {longestPause.TotalSeconds:0.0} s")}{(options.Silos > 1 ? "" : $"; {processor.TotalSeconds:0.00} s of the processor")}."));
        return tally.Failed > 0 ? Program.SomethingFails : tally.Undetermined + tally.BadCount > 0 ? Program.SomethingUndetermined : Program.AllPass;
    }

    private async Task<Tally> Clustered(Stopwatch watch)
    {
        using FileStream? mine = options.Database.Kind == DatabaseKind.Sqlite ? Lock(options.Database.Connection + ".lock") : null;
        Prepare();
        await using Session session = await Session.Start(options, notes, stop);

        // The start of the cluster is told apart from its work.
        notes.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Ready after {watch.Elapsed.TotalSeconds:0.0} s."));
        watch.Restart();
        processorBefore = ProcessorTime;
        Tally tally = await Watched(told => new Follower(session.Grains, options.Spec, progress => Told(progress, told), session.Watch).Go(stop));
        workTime = watch.Elapsed;
        return tally;
    }

    // Of this process: what other work on the machine takes is not in it.
    private static TimeSpan ProcessorTime
    {
        get
        {
            using Process own = Process.GetCurrentProcess();
            return own.TotalProcessorTime;
        }
    }

    private async Task<int> TakePart()
    {
        Prepare();
        SiloSettings settings = new() { Database = options.Database, Cluster = options.Cluster, Address = options.Address };
        using IHost host = await Silo.Start(settings, stop);
        notes.WriteLine($"Takes part as {options.Address} until it is stopped (Ctrl-C).");
        try
        {
            await Task.Delay(Timeout.Infinite, stop);
        }
        finally
        {
            await Silo.Stop(host, TimeSpan.FromSeconds(10));
        }

        return Program.AllPass;
    }

    private void Prepare()
    {
        try
        {
            Tables.Prepare(options.Database);
        }
        catch (Exception problem) when (problem is System.Data.Common.DbException or ArgumentException or IOException or StackExchange.Redis.RedisException)
        {
            // A connection string may hold a password: it is not repeated.
            (string name, string accepted) = options.Database.Kind switch
            {
                DatabaseKind.Sqlite => ($"--file '{options.Database.Connection}'", "a new file, or one that this program made"),
                DatabaseKind.Postgres => ("--postgres", "a connection string such as \"Host=10.0.0.5;Database=fleet;Username=fleet\" of a server that answers"),
                _ => ("--redis", "a connection string such as \"10.0.0.5:6379\" of a server that answers"),
            };
            throw new UsageException($"{name} cannot be used: {problem.Message.Split('\n')[0]} What is accepted: {accepted}.");
        }
    }

    private static FileStream Lock(string path)
    {
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException problem) when (problem is not DirectoryNotFoundException)
        {
            throw new UsageException($"--file '{path[..^".lock".Length]}' is in use by another run, or cannot be written: {problem.Message}");
        }
    }

    private void Told(StudyProgress progress, Action<double> told)
    {
        if (!toldOfKept && progress.Pieces > 0)
        {
            toldOfKept = true;
            studied = progress.Pieces - progress.Kept;
            if (progress.Kept > 0)
            {
                notes.WriteLine(progress.IsFinished ? "The study was finished before; this is what it found." : $"{progress.Kept} of {progress.Pieces} pieces were kept before; the study goes on from there.");
            }
        }

        if (progress.Kept > (last?.Kept ?? 0) || !sinceLast.IsRunning)
        {
            longestPause = sinceLast.Elapsed > longestPause ? sinceLast.Elapsed : longestPause;
            sinceLast.Restart();
        }

        last = progress;
        told(progress.Pieces == 0 ? 0 : (double)progress.Kept / progress.Pieces);
    }

    // Progress is for a person who waits: on the error stream, and only where that is a terminal.
    private async Task<Tally> Watched(Func<Action<double>, Task<Tally>> work)
    {
        try
        {
            return terminal is null
                ? await work(_ => { })
                : await terminal.Progress().AutoClear(true).StartAsync(async context =>
                {
                    ProgressTask task = context.AddTask("studying the variants", maxValue: 1);
                    return await Task.Run(() => work(share => task.Value = share));
                });
        }
        catch (OperationCanceledException) when (last is { } progress)
        {
            notes.WriteLine($"{progress.Kept} of {progress.Pieces} pieces are kept.");
            throw;
        }
    }
}
