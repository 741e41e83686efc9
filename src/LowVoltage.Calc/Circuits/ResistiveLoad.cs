namespace LowVoltage.Calc.Circuits;

internal sealed class ResistiveLoad(double ohms) : Load("resistance")
{
    internal double Ohms => ohms;

    internal override IEnumerable<(Working.DiagramSymbol Symbol, string Name)> Drawn => [(Working.DiagramSymbol.Resistor, Name)];

    internal override LoadLaw LawAt(LoadState state) => new(1 / ohms, 0, 0, true);

    private protected override Load ScaledCore(double factor) => new ResistiveLoad(ohms / factor);

    private protected override void DescribeCore(LoadSymbols symbols) => symbols.Resistance(ohms);

    private protected override double AmperesCore(double volts, LoadState state) => volts / ohms;
}
