using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Data.Sqlite;

namespace FleetStudy.Tests;

/// <summary>The program in a process of its own, so that it can be killed.</summary>
internal sealed partial class Child : IDisposable
{
    // Never reached by a run that goes on at all, however busy the machine.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(4);

    private readonly Process process;
    private readonly StringBuilder error = new();
    private readonly Task<string> output;

    public Child(params string[] args)
    {
        string host = Environment.ProcessPath is { } path && Path.GetFileNameWithoutExtension(path) == "dotnet" ? path : "dotnet";
        process = Process.Start(new ProcessStartInfo(host, [typeof(Program).Assembly.Location, .. args]) { RedirectStandardError = true, RedirectStandardOutput = true })!;
        process.ErrorDataReceived += (_, line) =>
        {
            lock (error)
            {
                error.Append(line.Data).Append('\n');
            }
        };
        process.BeginErrorReadLine();
        output = process.StandardOutput.ReadToEndAsync();
    }

    public int Id => process.Id;

    public string Error
    {
        get
        {
            lock (error)
            {
                return error.ToString();
            }
        }
    }

    /// <summary>The processes of the silos, in the order in which they were started.</summary>
    public int[] Silos => [.. SiloLine().Matches(Error).Select(m => int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture))];

    /// <summary>Waits until the study was kept so often.</summary>
    public void WaitForWrites(string file, long writes)
    {
        Stopwatch waited = Stopwatch.StartNew();
        while (Writes(file) < writes)
        {
            Assert.False(process.HasExited, $"It has ended before: {Error}");
            Assert.True(waited.Elapsed < Patience, $"Nothing is kept: {Error}");
            Thread.Sleep(20);
        }
    }

    public void Kill() => process.Kill();

    public void Signal(string name)
    {
        using Process kill = Process.Start("kill", ["-" + name, $"{Id}"]);
        kill.WaitForExit();
    }

    public (int Code, string Output, string Error) End()
    {
        Assert.True(process.WaitForExit(Patience), $"It does not end: {Error}");
        process.WaitForExit();
        return (process.ExitCode, output.GetAwaiter().GetResult(), Error);
    }

    public void Dispose()
    {
        if (!process.HasExited)
        {
            process.Kill();
        }

        process.Dispose();
    }

    /// <summary>How often a study was kept.</summary>
    public static long Writes(string file)
    {
        try
        {
            using SqliteConnection connection = new(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
            connection.Open();
            using SqliteCommand command = connection.CreateCommand();
            command.CommandText = "SELECT COALESCE(MAX(Version), 0) FROM GrainState";
            return (long)command.ExecuteScalar()!;
        }
        catch (SqliteException)
        {
            // Not there yet, or just being made.
            return 0;
        }
    }

    [GeneratedRegex(@"^Silo \d+ is process (\d+)\.", RegexOptions.Multiline)]
    private static partial Regex SiloLine();
}
