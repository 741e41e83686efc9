using System.Security.Cryptography;
using System.Text;
using Shouldly;
using Shouldly.Configuration;

namespace LowVoltage.Calc.Tests;

/// <summary>Text that a person has read, in the folder Approved beside its test, compared by Shouldly.</summary>
/// <remarks>
/// The build copies the approved files beside the tests, so no path of a machine is in them. Where a text differs, what was received is written to the same folder of the output;
/// <c>bash .ci/approve</c> runs these tests and copies what was received over what was approved, to be read and committed.
/// </remarks>
internal static class ApprovedText
{
    private const string Received = ".received";

    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "Approved");

    /// <summary>Fails where the text differs from the approved one of this name.</summary>
    internal static void Check(string name, string written) => written.ShouldMatchApproved(settings => Settings(settings, name));

    /// <summary>What stands for a long text of which the like has been read elsewhere: it shows that it changed.</summary>
    internal static string Digest(string text) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..8].ToLowerInvariant();

    /// <summary>All approved files whose names begin so, one after the other.</summary>
    internal static string Read(string beginning) => string.Concat(Names(beginning).Select(name => File.ReadAllText(Path.Combine(Folder, name))));

    /// <summary>The names of the approved files that begin so.</summary>
    internal static IEnumerable<string> Names(string beginning) =>
        Directory.GetFiles(Folder, beginning + "*").Where(file => !file.Contains(Received, StringComparison.Ordinal)).Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal);

    // No tool is opened to show a difference. Several processes run the same tests side by side when mutants are tried: each has its own received file.
    private static void Settings(ShouldMatchConfigurationBuilder settings, string name) => settings
        .NoDiff()
        .SubFolder(Folder)
        .WithFilenameGenerator((_, _, kind, _) => kind == "received" ? $"{name}{Received}.{Environment.ProcessId}" : name);
}
