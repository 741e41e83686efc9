namespace LowVoltage.Calc.Circuits;

/// <content>What of its current heats the conductor: how duty cycles, its own and those of the groups that it is in, thin it.</content>
public abstract partial class Load
{
    // Of the groups that it is in; those that are always on are left out.
    private DutyCycle[] around = [];

    /// <summary>The square of the heating current over the current while on: the smallest that a duty cycle leaves, since the pulses of several may coincide.</summary>
    private protected double HeatShare { get; private set; } = 1;

    /// <summary>The shortest stated time between two starts of a load in it that draws more at switching on, s; infinite where none is stated.</summary>
    internal double StartPeriodSeconds { get; private protected set; } = double.PositiveInfinity;

    /// <summary>Whether the times of a duty cycle of its own or of a load in it were stated.</summary>
    internal bool HasStatedTimes { get; private protected set; }

    /// <summary>Each load in it that is no group, and the duty cycles that thin it.</summary>
    internal virtual IEnumerable<(Load Load, DutyCycle[] Duties)> Leaves => [(this, Duties())];

    /// <summary>The current that heats the conductor, in A.</summary>
    /// <remarks>A peak passes and a locked rotor stays: neither is thinned by the duty cycle of normal running.</remarks>
    internal double HeatingAmperesAt(double volts, LoadState state) => state == LoadState.Running ? HeatingCore(volts) : AmperesCore(volts, state);

    /// <summary>Heating over on-state current when that is one number for every voltage; else NaN. Above one where a motor's starts heat more than its pauses cool.</summary>
    internal double HeatFactor(LoadState state) => state == LoadState.Running ? HeatFactorCore() : 1;

    /// <summary>The same where there is no such number: at most that up to a voltage.</summary>
    internal double GreatestHeatFactor(LoadState state, double mostVolts) =>
        HeatFactor(state) is var factor && double.IsNaN(factor) ? GreatestFactorCore(mostVolts) : factor;

    /// <summary>The same load as one of a group that has these duty cycles.</summary>
    internal Load Under(DutyCycle[] outer)
    {
        Load copy = (Load)MemberwiseClone();
        copy.around = outer;
        copy.SettleHeat();
        return copy;
    }

    /// <summary>Its own duty cycle and those around it, as far as one is none.</summary>
    private protected DutyCycle[] Duties() => duty.Share < 1 ? [.. around, duty] : around;

    /// <summary>Finds again what follows from the duty cycles, after one was stated.</summary>
    private protected virtual void SettleHeat()
    {
        (HeatShare, StartPeriodSeconds, HasStatedTimes) = (1, double.PositiveInfinity, false);
        foreach (DutyCycle each in Duties())
        {
            HeatShare = Math.Min(HeatShare, each.HeatShare);
            HasStatedTimes |= each.OnSeconds > 0;
            StartPeriodSeconds = HasSurge && each.OnSeconds > 0 ? Math.Min(StartPeriodSeconds, each.PeriodSeconds) : StartPeriodSeconds;
        }
    }

    private protected virtual double HeatingCore(double volts) => AmperesCore(volts, LoadState.Running) * HeatFactorCore();

    private protected virtual double HeatFactorCore() => Math.Sqrt(HeatShare);

    private protected virtual double GreatestFactorCore(double mostVolts) => HeatFactorCore();
}
