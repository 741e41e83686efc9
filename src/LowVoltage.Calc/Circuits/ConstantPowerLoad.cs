namespace LowVoltage.Calc.Circuits;

/// <summary>The power that a converter gives, and its efficiency: what it draws is the one over the other.</summary>
internal sealed class ConstantPowerLoad(double given, double efficiency = 1) : Load("constant power")
{
    private readonly double watts = given / efficiency;

    internal double GivenWatts => given;

    internal double Efficiency => efficiency;

    internal override LoadLaw LawAt(LoadState state) => new(0, 0, watts, true);

    private protected override Load ScaledCore(double factor) => new ConstantPowerLoad(given * factor, efficiency);

    private protected override void DescribeCore(LoadSymbols symbols) => symbols.Power(given, efficiency);

    private protected override double AmperesCore(double volts, LoadState state) => watts / volts;
}
