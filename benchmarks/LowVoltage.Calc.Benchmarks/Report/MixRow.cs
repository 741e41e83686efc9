namespace LowVoltage.Calc.Benchmarks.Report;

/// <summary>The designs of a mix: µs by how many take less, and bytes, the least of some processes each.</summary>
internal sealed record MixRow(string Name, double Mean, double Half, double NineTenths, double P99, double Slowest, double Bytes)
{
    internal static MixRow Of((string Name, List<double[]> Launches) row)
    {
        double[] least = [.. Enumerable.Range(0, row.Launches[0].Length).Select(i => row.Launches.Min(launch => launch[i]))];
        return new MixRow(row.Name, least[0], least[1], least[2], least[3], least[4], least[5]);
    }
}
