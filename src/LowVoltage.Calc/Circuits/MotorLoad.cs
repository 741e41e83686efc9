using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Circuits;

internal sealed class MotorLoad : Load
{
    private static readonly Reference Given = Reference.CommonPractice(
        "the caller's peak current, held for the whole start: on the safe side, since it falls while the motor runs up");

    private readonly double running;
    private readonly double peak;
    private readonly double locked;
    private readonly double startSeconds;
    private readonly double? ratedVolts;

    // Of the heat of a start that lasts, the share that the starts in every period reach.
    private double startShare;

    private MotorLoad(double running, double peak, double locked, double startSeconds, double? ratedVolts)
        : base("motor")
    {
        this.running = running;
        this.peak = peak;
        this.locked = locked;
        this.startSeconds = startSeconds;
        this.ratedVolts = ratedVolts;
    }

    internal static MotorLoad Create(
        in ElectricCurrent running, in ElectricCurrent peak, in ElectricCurrent lockedRotor, in Duration startDuration, double? ratedVolts)
    {
        double run = Accept.Amperes(running, nameof(running));

        // A motor draws most while it does not turn: starting it cannot take more.
        double standstill = Accept.Within(Accept.Amperes(lockedRotor, nameof(lockedRotor)), run, Accept.MostAmperes, "A", nameof(lockedRotor));
        return new MotorLoad(
            run,
            Accept.Within(Accept.Amperes(peak, nameof(peak)), run, standstill, "A", nameof(peak)),
            standstill,
            Accept.Seconds(startDuration, nameof(startDuration)),
            ratedVolts);
    }

    internal double RunningAmperes => running;

    internal double PeakAmperes => peak;

    internal double LockedAmperes => locked;

    internal double StartSeconds => startSeconds;

    internal double? RatedVolts => ratedVolts;

    internal override IEnumerable<(Working.DiagramSymbol Symbol, string Name)> Drawn => [(Working.DiagramSymbol.Motor, Name)];

    internal override bool Starts => peak > running;

    internal override bool HasSurge => peak > running;

    internal override bool CanStall => true;

    internal override LoadLaw LawAt(LoadState state) =>
        state != LoadState.Running && ratedVolts is { } volts
            ? new LoadLaw(At(state) / volts, 0, 0, true)
            : new LoadLaw(0, At(state), 0, true);

    internal override void AddInrush(double volts, double ohms, List<Inrush> surges)
    {
        double amperes = ratedVolts is { } rated ? volts / (ohms + (rated / peak)) : Math.Min(peak, volts / ohms);
        surges.Add(new Inrush(Name, amperes, startSeconds, InrushWave.Rectangular, Given));
    }

    internal override void AddStart(LoadStart start) => start.AddMotor(this, LawAt(LoadState.Peak), startSeconds);

    private protected override Load ScaledCore(double factor) => new MotorLoad(running * factor, peak * factor, locked * factor, startSeconds, ratedVolts);

    private protected override void DescribeCore(LoadSymbols symbols) => symbols.Motor(running, peak, locked, startSeconds, ratedVolts);

    private protected override double AmperesCore(double volts, LoadState state) => LawAt(state).AmperesAt(volts);

    // Every switching on, of its own or of its group, may start it: the starts' parts add up to no more than a start that lasts.
    private protected override void SettleHeat()
    {
        base.SettleHeat();
        startShare = 0;
        foreach (DutyCycle duty in Duties())
        {
            startShare = Starts ? Math.Min(1, startShare + duty.StartShareOf(startSeconds)) : 0;
        }
    }

    // The running current for the time on, at the end of its pulse; the rest of the peak's square by its mean, since a start passes, as without a duty cycle.
    private protected override double HeatingCore(double volts) => startShare > 0 ? Heating(LawAt(LoadState.Peak).AmperesAt(volts)) : base.HeatingCore(volts);

    private protected override double HeatFactorCore() =>
        startShare == 0 ? base.HeatFactorCore() : ratedVolts is null ? Heating(peak) / running : double.NaN;

    private protected override double GreatestFactorCore(double mostVolts) =>
        startShare == 0 ? base.GreatestFactorCore(mostVolts) : Heating(LawAt(LoadState.Peak).AmperesAt(mostVolts)) / running;

    private double Heating(double peakAmperes) =>
        Math.Sqrt((running * running * HeatShare) + (Math.Max(0, (peakAmperes * peakAmperes) - (running * running)) * startShare));

    private double At(LoadState state) => state switch
    {
        LoadState.Peak => peak,
        LoadState.LockedRotor => locked,
        _ => running,
    };
}
