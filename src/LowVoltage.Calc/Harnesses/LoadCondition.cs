namespace LowVoltage.Calc.Harnesses;

/// <summary>What a load of a solved harness does.</summary>
public enum LoadCondition
{
    /// <summary>Nothing is known: the harness has no solution.</summary>
    Undetermined,

    /// <summary>It works.</summary>
    Running,

    /// <summary>The load case has it off.</summary>
    Off,

    /// <summary>Its voltage is below the least at which it works: it draws nothing.</summary>
    CutOut,

    /// <summary>It has cut out, yet with it off its voltage is high enough to start again: there are two states, and it may hunt between them.</summary>
    Restartable,

    /// <summary>It wants a current that this wiring cannot bring it, and takes what it gets at next to no voltage.</summary>
    Starved,

    /// <summary>Current flows through it the wrong way, or would if it let any through: it is fed backwards.</summary>
    Reversed,

    /// <summary>No voltage reaches it.</summary>
    Dead,
}
