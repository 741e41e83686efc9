using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Checks;

/// <summary>A wire so thin that it heats and cools faster than the pulses of a load are counted for.</summary>
internal sealed class TooThin(int stretch, Conductor conductor)
{
    internal const string Advice = "The wire is too thin for the heat of pulses to be known: state the load as on all the time, without its duty cycle, or use a stranded wire of 30 AWG or more.";

    /// <summary>Which stretch of the branch it is.</summary>
    internal int Stretch { get; } = stretch;

    /// <summary>The first such stretch; null where there is none.</summary>
    internal static TooThin? Find(BranchState at)
    {
        for (int i = 0; i < at.Stretches.Length; i++)
        {
            if (at.IsTooThinForPulses(i))
            {
                return new TooThin(i, at.Stretches[i].Conductor);
            }
        }

        return null;
    }

    /// <inheritdoc/>
    public override string ToString() =>
        $"{conductor} heats and cools faster than the time constant by which the stated times of the load are counted, that of a stranded copper wire of 30 AWG; state the load as continuous";
}
