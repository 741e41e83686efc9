namespace LowVoltage.Calc.Circuits;

internal sealed class ConstantCurrentLoad(double amperes) : Load("constant current")
{
    internal double Amperes => amperes;

    internal override LoadLaw LawAt(LoadState state) => new(0, amperes, 0, true);

    private protected override Load ScaledCore(double factor) => new ConstantCurrentLoad(amperes * factor);

    private protected override void DescribeCore(LoadSymbols symbols) => symbols.Current(amperes, "current of the load, at any voltage", "I_L");

    private protected override double AmperesCore(double volts, LoadState state) => amperes;
}
