using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Protection;

namespace LowVoltage.Calc.Checks;

/// <summary>A load behind a path as the waveform of its start.</summary>
internal static class CircuitStart
{
    /// <summary>The start, every load of the circuit switched on together.</summary>
    /// <param name="start">What its loads do.</param>
    /// <param name="volts">Highest voltage of the source without current.</param>
    /// <param name="ohms">Least resistance of source and path; positive.</param>
    /// <param name="heldAmperes">The current that the source holds at most; +∞ without.</param>
    internal static StartWaveform Of(LoadStart start, double volts, double ohms, double heldAmperes)
    {
        start.Solve(volts, ohms);
        StartSurge[] surges = new StartSurge[start.Surges.Count];
        for (int i = 0; i < surges.Length; i++)
        {
            (string name, InrushWave wave, double peak, double seconds, bool charges) = start.Surges[i];
            StartSurgeShape shape = charges ? StartSurgeShape.Charging : wave == InrushWave.Exponential ? StartSurgeShape.Fading : StartSurgeShape.Constant;
            surges[i] = new StartSurge(name, shape, peak, seconds, shape == StartSurgeShape.Fading ? start.LampSoftness : 0);
        }

        return new StartWaveform(surges, start.RunningAmperes, volts / ohms, heldAmperes);
    }
}
