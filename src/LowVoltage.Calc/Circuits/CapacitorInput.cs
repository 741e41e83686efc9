using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Circuits;

/// <summary>A capacitor across the terminals: nothing in the steady state, a surge V/R with time constant R·C at switching on.</summary>
internal sealed class CapacitorInput(double farads) : Load("input capacitor")
{
    private static readonly Reference Charging = new()
    {
        Title = "College Physics 2e",
        Locator = "section 21.6",
        Kind = ReferenceKind.Handbook,
        Note = "Charging through a resistance: peak V/R, time constant R·C, Joule integral V²C/(2R). The series resistance of the capacitor, which lowers the peak, is not counted.",
    };

    internal double Farads => farads;

    internal override LoadLaw LawAt(LoadState state) => new(0, 0, 0, true);

    internal override void AddInrush(double volts, double ohms, List<Inrush> surges) =>
        surges.Add(new Inrush(Name, volts / ohms, ohms * farads, InrushWave.Exponential, Charging));

    internal override bool HasSurge => true;

    internal override void AddStart(LoadStart start) => start.AddCapacitor(Name, farads);

    // A capacitor draws nothing that a tolerance of current could mean; its own is stated by the caller.
    private protected override Load ScaledCore(double factor) => new CapacitorInput(farads);

    private protected override void DescribeCore(LoadSymbols symbols) => symbols.Capacitor(farads);

    private protected override double AmperesCore(double volts, LoadState state) => 0;
}
