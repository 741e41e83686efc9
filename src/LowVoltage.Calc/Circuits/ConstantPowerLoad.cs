namespace LowVoltage.Calc.Circuits;

internal sealed class ConstantPowerLoad(double watts) : Load("constant power")
{
    internal override LoadLaw LawAt(LoadState state) => new(0, 0, watts, true);

    private protected override double AmperesCore(double volts, LoadState state) => watts / volts;
}
