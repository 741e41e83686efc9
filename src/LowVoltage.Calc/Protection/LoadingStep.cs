using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Protection;

/// <summary>The ratings that a loading factor holds for, in A.</summary>
internal sealed class LoadingStep(double least, bool includesLeast, double most, double factor)
{
    internal double Factor { get; } = factor;

    internal bool Covers(double amperes) => (includesLeast ? amperes >= least : amperes > least) && amperes <= most;

    public override string ToString()
    {
        if (least.Equals(most))
        {
            return $"{Accept.Text(least)} A";
        }

        return double.IsInfinity(most) ? $"above {Accept.Text(least)} A" : $"{Accept.Text(least)} A to {Accept.Text(most)} A";
    }
}
