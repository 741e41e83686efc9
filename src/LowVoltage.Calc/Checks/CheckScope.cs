namespace LowVoltage.Calc.Checks;

/// <summary>What a check is about where there is more than one circuit.</summary>
internal enum CheckScope
{
    /// <summary>One wire.</summary>
    Wire,

    /// <summary>One load, with the way to it and back.</summary>
    Load,

    /// <summary>A fuse, or the lack of one, with the wires that it protects.</summary>
    Fuse,

    /// <summary>The supply lead before a circuit's fuse and what protects it: in a harness those are wires and fuses of their own.</summary>
    Supply,
}
