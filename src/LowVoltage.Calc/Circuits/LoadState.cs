namespace LowVoltage.Calc.Circuits;

/// <summary>What a load is doing. Each is an operating point of its own.</summary>
public enum LoadState
{
    /// <summary>Steady running.</summary>
    Running,

    /// <summary>The moment of switching on: a cold lamp, a motor starting. It passes by itself.</summary>
    Peak,

    /// <summary>A stalled motor. It may last until a fuse opens.</summary>
    LockedRotor,
}
