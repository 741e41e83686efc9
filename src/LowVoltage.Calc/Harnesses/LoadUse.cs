namespace LowVoltage.Calc.Harnesses;

/// <summary>What a load case has a load do.</summary>
internal enum LoadUse
{
    /// <summary>Steady running.</summary>
    Running,

    /// <summary>Switched off.</summary>
    Off,

    /// <summary>Starting.</summary>
    Starting,

    /// <summary>A stalled motor.</summary>
    Stalled,
}
