using System.Runtime.CompilerServices;
using System.Text;
using LowVoltage.Calc.Working;

namespace LowVoltage.Calc.Tests.Working;

/// <summary>Every explanation of the library as text, read by a person when it changes. Whether its numbers are right is tested elsewhere: see <see cref="ExplanationProperties"/>.</summary>
/// <remarks>To renew after a change that is meant: run this test with the environment variable <c>APPROVE_EXPLANATIONS</c> set to 1, read the difference, commit it.</remarks>
public class ExplanationSnapshotTests
{
    // So many that each load, source, standard, metal and fuse series of the random draws occurs, and each ending: exists, melts, need not open.
    private const int Seeds = 4;

    [Fact]
    public void Explanations_AreThoseThatWereReviewed()
    {
        StringBuilder all = new();
        for (int seed = 1; seed <= Seeds; seed++)
        {
            foreach ((string name, WorkedSolution solution, double? _) in Explained.All(seed))
            {
                all.Append("### ").Append(name).Append(", draw ").Append(seed).Append("\n\n").Append(solution.ToText().TrimEnd()).Append("\n\n");
            }
        }

        string written = all.ToString();
        if (Environment.GetEnvironmentVariable("APPROVE_EXPLANATIONS") == "1")
        {
            File.WriteAllText(Path.Combine(Path.GetDirectoryName(Here())!, "Approved", "explanations.txt"), written);
        }

        using Stream stream = typeof(ExplanationSnapshotTests).Assembly.GetManifestResourceStream("Approved.explanations.txt")
            ?? throw new InvalidOperationException("There are no approved explanations.");
        using StreamReader reader = new(stream);
        Assert.Equal(reader.ReadToEnd(), written);
    }

    private static string Here([CallerFilePath] string path = "") => path;
}
