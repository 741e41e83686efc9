using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

/// <summary>An incandescent lamp.</summary>
/// <remarks>
/// <code>I = I0·(U/U0)^0.55    R(cold) = U0/(I0·k)</code>
/// <para><b>Symbols.</b> U0 and I0 rated point, k ratio of hot to cold resistance.</para>
/// <para><b>Valid for</b> 0.9 to 1.1 of the rated voltage. Outside that the exponent is only a guide, and a result says so.</para>
/// <para><b>Accuracy.</b> The exponent is given as 0.5 to 0.6: 0.5 % of the current at 10 % from the rated voltage.</para>
/// </remarks>
public sealed class LampLoad : Load
{
    /// <summary>Exponent of the current over voltage near the rated point.</summary>
    internal const double Exponent = 0.55;

    internal const double DefaultColdResistanceRatio = 14;

    // Published: "falling near nominal in about 0.05 s". Three time constants are 5 % from the end.
    private const double SettlingSeconds = 0.05;

    private readonly double ratedWatts;
    private readonly double coldRatio;
    private readonly double ratedAmperes;
    private readonly double ratedVolts;
    private readonly double coldOhms;

    internal LampLoad(double watts, double volts, double coldRatio)
        : base("incandescent lamp")
    {
        ratedWatts = watts;
        this.coldRatio = coldRatio;
        ratedVolts = volts;
        ratedAmperes = watts / volts;
        coldOhms = volts / ratedAmperes / coldRatio;
    }

    /// <summary>Source of the exponent.</summary>
    public static Reference CurrentReference { get; } = new()
    {
        Title = "Incandescent lamp characteristics near rated voltage",
        Kind = ReferenceKind.FromMemory,
        Note = "Current exponent 0.55, range 0.5 to 0.6; within 10 % of the rated voltage.",
    };

    /// <summary>Source of the inrush ratio and duration.</summary>
    public static Reference InrushReference { get; } = new()
    {
        Title = "Electrical installation guide",
        Kind = ReferenceKind.Handbook,
        Note = "10 to 15 times the steady current for a few to tens of milliseconds; 14 is taken, which tungsten resistivity gives at about 2700 K. "
            + "A halogen lamp may reach 17. Settling in 0.05 s is a large lamp's; a small one is faster.",
    };

    /// <summary>Rated voltage.</summary>
    public ElectricPotential RatedVoltage => ElectricPotential.FromVolts(ratedVolts);

    /// <summary>Current at the rated voltage.</summary>
    public ElectricCurrent RatedCurrent => ElectricCurrent.FromAmperes(ratedAmperes);

    /// <summary>Resistance at the rated voltage.</summary>
    public ElectricResistance HotResistance => ElectricResistance.FromOhms(ratedVolts / ratedAmperes);

    /// <summary>Resistance of the cold filament.</summary>
    public ElectricResistance ColdResistance => ElectricResistance.FromOhms(coldOhms);

    /// <summary>Whether the exponent holds at a voltage: within 10 % of the rated one.</summary>
    /// <param name="voltage">Voltage at the lamp, positive.</param>
    /// <returns>True from 0.9 to 1.1 of the rated voltage.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The voltage is not positive or is absurdly large.</exception>
    public bool HoldsAt(ElectricPotential voltage) => Holds(Accept.Volts(voltage, nameof(voltage)));

    internal double RatedWatts => ratedWatts;

    internal double RatedVolts => ratedVolts;

    internal double ColdRatio => coldRatio;

    internal override IEnumerable<(Working.DiagramSymbol Symbol, string Name)> Drawn => [(Working.DiagramSymbol.Lamp, Name)];

    internal override LoadLaw LawAt(LoadState state) =>
        state == LoadState.Peak ? new LoadLaw(1 / coldOhms, 0, 0, true) : new LoadLaw(0, 0, 0, false);

    internal override double SlopeAt(double volts, LoadState state) =>
        state == LoadState.Peak ? 1 / coldOhms : Exponent * AmperesAt(volts, state) / volts;

    internal override string? RemarkAt(double volts, LoadState state) =>
        state == LoadState.Peak || Holds(volts)
            ? null
            : $"The lamp is at {Accept.Text(volts)} V, outside 10 % of its rated {Accept.Text(ratedVolts)} V: its current there is only a guide.";

    internal override void AddInrush(double volts, double ohms, List<Inrush> surges) =>
        surges.Add(new Inrush(Name, volts / (ohms + coldOhms), SettlingSeconds / 3, InrushWave.Exponential, InrushReference));

    internal override bool HasSurge => true;

    internal override void AddStart(LoadStart start) => start.AddLamp(this, 1 / coldOhms, SettlingSeconds / 3);

    private protected override Load ScaledCore(double factor) => new LampLoad(ratedWatts * factor, ratedVolts, coldRatio);

    private protected override void DescribeCore(LoadSymbols symbols) => symbols.Lamp(ratedWatts, ratedVolts, coldRatio, ratedAmperes, coldOhms);

    private protected override double AmperesCore(double volts, LoadState state) =>
        state == LoadState.Peak ? volts / coldOhms : ratedAmperes * Math.Pow(volts / ratedVolts, Exponent);

    // A part in 1e12 of play, so that 12 V less 10 % counts as inside after its rounding.
    private bool Holds(double volts) => Math.Abs((volts / ratedVolts) - 1) <= 0.1 + 1e-12;
}
