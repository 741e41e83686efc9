using System.Runtime.CompilerServices;
using System.Security.Cryptography;
using System.Text;

namespace LowVoltage.Calc.Tests;

/// <summary>Text that a person has read, in the folder Approved beside its test.</summary>
internal static class ApprovedText
{
    /// <summary>Fails where the text differs from the approved one; with the environment variable set to 1 it is first written there, to be read and committed.</summary>
    internal static void Check(string name, string written, string variable, [CallerFilePath] string test = "")
    {
        if (Environment.GetEnvironmentVariable(variable) == "1")
        {
            File.WriteAllText(Path.Combine(Path.GetDirectoryName(test)!, "Approved", name), written);
        }

        Assert.Equal(Read(name), written);
    }

    /// <summary>What stands for a long text of which the like has been read elsewhere: it shows that it changed.</summary>
    internal static string Digest(string text) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(text)))[..16].ToLowerInvariant();

    internal static string Read(string name)
    {
        using Stream stream = typeof(ApprovedText).Assembly.GetManifestResourceStream("Approved." + name)
            ?? throw new InvalidOperationException($"There is no approved {name}.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
