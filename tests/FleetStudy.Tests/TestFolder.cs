[assembly: CollectionBehavior(DisableTestParallelization = true)]

namespace FleetStudy.Tests;

/// <summary>A folder of its own for a test, gone after it.</summary>
public abstract class TestFolder : IDisposable
{
    protected string Folder { get; } = Directory.CreateTempSubdirectory("fleet").FullName;

    protected string File => Path.Combine(Folder, "study.db");

    public void Dispose()
    {
        // Pooled connections of this process keep the file open.
        Microsoft.Data.Sqlite.SqliteConnection.ClearAllPools();
        Directory.Delete(Folder, recursive: true);
        GC.SuppressFinalize(this);
    }

    internal static StudySpec Harness(long variants, int piece, int draws = 1, bool faults = false) =>
        new() { Study = "harness", Variants = variants, PieceSize = piece, Seed = 1, Draws = draws, Faults = faults, Build = StudySpec.ThisBuild };

    /// <summary>Runs the program in this process.</summary>
    internal static (int Code, string Output, string Error) Run(params string[] args)
    {
        using StringWriter output = new() { NewLine = "\n" }, error = new() { NewLine = "\n" };
        int code = Program.Run(args, output, TextWriter.Synchronized(error), null);
        return (code, output.ToString(), error.ToString());
    }

    /// <summary>The hash of everything that was counted, off a printed report.</summary>
    internal static string Answer(string output) => output.TrimEnd().Split('\n')[^1] is ['a', 'n', 's', 'w', 'e', 'r', ' ', .. string digest] && digest.Length == 16
        ? digest
        : throw new Xunit.Sdk.XunitException($"No answer is printed:\n{output}");
}
