namespace LowVoltage.Calc.Tests.Docs.Tables;

/// <summary>Computed values beside published ones: how many, how far off at most, how far on average.</summary>
internal sealed class Deviations
{
    private readonly List<(string Row, double Relative)> all = [];

    public int Count => all.Count;

    public double Mean => all.Average(item => item.Relative);

    public double Least => all.Min(item => item.Relative);

    public double Most => all.Max(item => item.Relative);

    public (string Row, double Relative) Worst => all.MaxBy(item => Math.Abs(item.Relative));

    public void Add(string row, double computed, double published) => all.Add((row, (computed / published) - 1));
}
