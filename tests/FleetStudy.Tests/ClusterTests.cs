using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace FleetStudy.Tests;

/// <summary>The study on silos, held to the plain calculation: whole, stopped, killed, started again.</summary>
public sealed partial class ClusterTests : TestFolder
{
    private const int PieceSize = 10;

    // Some three seconds of work for this machine, so that there is a middle to kill it in.
    private static readonly int Variants = Math.Max(2500, PieceSize * (int)(3 * Environment.ProcessorCount * VariantsPerSecond() / PieceSize));

    private static readonly Lazy<string> Plain = new(() => PlainRun.Go(Harness(Variants, PieceSize), null, default).Digest());

    [Fact]
    public void OneProcess_EqualsPlain_AndTellsAFinishedStudyAgain()
    {
        (int code, string output, string error) = Run("--variants", "300", "--piece", "20", "--file", File);
        (int plainCode, string plain, _) = Run("--variants", "300", "--piece", "20", "--plain");
        Assert.Equal((plainCode, plain), (code, output));
        Assert.DoesNotContain("kept before", error, StringComparison.Ordinal);

        // Another piece size is another study with the same answer; the first is still there.
        Assert.Equal(output, Run("--variants", "300", "--piece", "70", "--file", File).Output);
        (_, string again, string told) = Run("--variants", "300", "--piece", "20", "--file", File);
        Assert.Equal(output, again);
        Assert.Contains("The study was finished before; this is what it found.", told, StringComparison.Ordinal);
        Assert.False(System.IO.File.Exists(File + ".lock"));
    }

    [Fact]
    public void OneProcess_Sheets_EqualPlain() =>
        Assert.Equal(Run("sheets", "--variants", "40", "--piece", "9", "--plain").Output, Run("sheets", "--variants", "40", "--piece", "9", "--file", File).Output);

    [Fact]
    public void ThreeSilos_TheFirstAndAnotherKilledInMidRun_GoesOnAndEqualsPlain()
    {
        using Child run = new(Args("--silos", "3"));
        run.WaitForWrites(File, 2);
        int[] silos = run.Silos;
        Assert.Equal(3, silos.Length);
        foreach (int id in silos[..2])
        {
            // The second as soon as the two that are left have kept something.
            long writes = Child.Writes(File);
            using Process silo = Process.GetProcessById(id);
            silo.Kill();
            if (id == silos[0])
            {
                run.WaitForWrites(File, writes + 2);
            }
        }

        (int code, string output, string error) = run.End();
        Assert.Equal(Program.SomethingFails, code);
        Assert.Contains($"The silo of process {silos[0]} has ended; 2 of 3 are left and go on.", error, StringComparison.Ordinal);
        Assert.Contains($"The silo of process {silos[1]} has ended; 1 of 3 are left and go on.", error, StringComparison.Ordinal);
        Assert.Equal(Plain.Value, Answer(output));
    }

    [Fact]
    public void EverythingKilled_StartedAgain_ResumesAndEqualsPlain()
    {
        int[] silos;
        using (Child first = new(Args("--silos", "3")))
        {
            first.WaitForWrites(File, 3);
            silos = first.Silos;
            first.Kill();
        }

        using Child second = new(Args());
        second.WaitForWrites(File, Child.Writes(File) + 2);
        second.Kill();
        _ = second.End();

        using Child third = new(Args());
        (int code, string output, string error) = third.End();
        Assert.Equal(Program.SomethingFails, code);
        Match kept = KeptLine().Match(error);
        Assert.True(kept.Success, error);
        Assert.InRange(int.Parse(kept.Groups[1].Value, CultureInfo.InvariantCulture), 1, (Variants / PieceSize) - 1);
        Assert.Equal(Plain.Value, Answer(output));

        // Silos whose starter is gone go too.
        Assert.Equal(3, silos.Length);
        Assert.All(silos, id => Assert.True(IsGone(id), $"Silo {id} is still there."));
    }

    [Fact]
    public void Signalled_KeepsWhatIsDone_AndGoesOnFromThere()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        string kept = "";
        foreach (string signal in (string[])["INT", "TERM"])
        {
            using Child run = new(Args());
            run.WaitForWrites(File, Child.Writes(File) + 3);
            run.Signal(signal);
            (int code, string output, string error) = run.End();
            Assert.Equal((Program.Stopped, ""), (code, output));
            Assert.EndsWith("Stopped. The same command goes on from there.\n", error.TrimEnd('\n') + "\n", StringComparison.Ordinal);

            // Nothing that was told as kept is done again.
            Assert.Equal(kept, KeptLine().Match(error).Groups[1].Value);
            kept = KeptAtStop().Match(error).Groups[1].Value;
            Assert.NotEqual("", kept);
        }

        (_, string rest, string told) = Run(Args());
        Assert.Equal(kept, KeptLine().Match(told).Groups[1].Value);
        Assert.Equal(Plain.Value, Answer(rest));
    }

    [Fact]
    public void StoppedBeforeItStarts_SaysSo()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        foreach (string[] args in new[] { Args(), Args("--plain"), Args("--silos", "2") })
        {
            using StringWriter output = new(), error = new() { NewLine = "\n" };
            Assert.Equal(Program.Stopped, Program.Run(args, output, TextWriter.Synchronized(error), null, stop.Token));
            Assert.Equal("", output.ToString());
            Assert.EndsWith("Stopped. The same command goes on from there.\n", error.ToString(), StringComparison.Ordinal);
        }
    }

    private string[] Args(params string[] more) => ["--variants", $"{Variants}", "--piece", $"{PieceSize}", "--draws", "1", "--file", File, .. more];

    private static double VariantsPerSecond()
    {
        _ = Piece.Calculate(Harness(100, 100), 0, default);
        Stopwatch watch = Stopwatch.StartNew();
        _ = Piece.Calculate(Harness(200, 100), 1, default);
        return 100 / watch.Elapsed.TotalSeconds;
    }

    private static bool IsGone(int id)
    {
        for (Stopwatch waited = Stopwatch.StartNew(); waited.Elapsed < TimeSpan.FromMinutes(2); Thread.Sleep(50))
        {
            try
            {
                using Process silo = Process.GetProcessById(id);
            }
            catch (ArgumentException)
            {
                return true;
            }
        }

        return false;
    }

    [GeneratedRegex(@"^(\d+) of \d+ pieces were kept before; the study goes on from there\.$", RegexOptions.Multiline)]
    private static partial Regex KeptLine();

    [GeneratedRegex(@"^(\d+) of \d+ pieces are kept\.$", RegexOptions.Multiline)]
    private static partial Regex KeptAtStop();
}
