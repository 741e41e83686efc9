using System.Globalization;

namespace LowVoltage.Calc.Benchmarks;

/// <summary>How the time of a design is spread over the circuits of a mix, in a process of its own.</summary>
internal static class Mixes
{
    private const int Circuits = 20_000;

    /// <summary>Prints one mix a line, tabs between: name, then mean, p50, p90, p99 and slowest in µs, and bytes a circuit.</summary>
    internal static void Run(bool quick)
    {
        foreach ((string name, (CircuitRequirements Circuit, DesignRules Rules)[] mix) in Corpus.Mixes(quick ? Circuits / 20 : Circuits))
        {
            Corpus.Spread spread = Corpus.MeasureSettled(mix, quick ? 1 : 10);
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{name}\t{spread.Mean:R}\t{spread.At(0.5):R}\t{spread.At(0.9):R}\t{spread.At(0.99):R}\t{spread.Slowest:R}\t{spread.Bytes:R}"));
        }
    }
}
