using System.Globalization;
using Xunit.Abstractions;

namespace LowVoltage.Calc.Tests.Proof;

/// <summary>A quick run with a fixed seed; <c>bash .ci/fuzz</c> runs a million cases with a seed of its own and prints it.</summary>
public class FuzzTests(ITestOutputHelper output)
{
    [Fact]
    public void PublicSurface_AnyArguments_AnswersFinitelyOrRefusesAsDocumented()
    {
        int cases = Setting("LOWVOLTAGE_FUZZ_CASES", 20_000), seed = Setting("LOWVOLTAGE_FUZZ_SEED", 20_260_101), first = Setting("LOWVOLTAGE_FUZZ_FIRST", 0);
        Fuzzer fuzzer = new(seed);
        IReadOnlyCollection<string> defects = fuzzer.Run(cases, first);
        output.WriteLine($"{cases} cases, seed {seed}: {fuzzer.Answered} answered, {fuzzer.Refused} refused, {defects.Count} defects");
        Assert.True(defects.Count == 0, $"seed {seed}\n" + string.Join('\n', defects));
        // Most calls must get past the checks of their arguments, else nothing was tested.
        Assert.InRange(fuzzer.Answered, cases / 10, cases);
        Assert.InRange(fuzzer.Refused, cases / 10, cases);
    }

    private static int Setting(string name, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.Integer, CultureInfo.InvariantCulture, out int value) ? value : otherwise;
}
