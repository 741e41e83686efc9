namespace LowVoltage.Calc.Tests.Proof.Simulation;

/// <summary>What random cases are drawn with: from one source of chance that follows from a seed.</summary>
internal abstract class Draws(Random random)
{
    protected Random Random => random;

    protected bool Chance(double share) => random.NextDouble() < share;

    protected double Even(double low, double high) => low + ((high - low) * random.NextDouble());

    /// <summary>Log-uniform, to three digits.</summary>
    protected double Wide(double low, double high) => Digits(low * Math.Pow(high / low, random.NextDouble()));

    protected static double Digits(double value)
    {
        double unit = Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
        return Math.Round(value / unit) * unit;
    }

    protected T Pick<T>(params T[] items) => items[random.Next(items.Length)];
}
