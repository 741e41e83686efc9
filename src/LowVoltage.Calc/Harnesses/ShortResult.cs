namespace LowVoltage.Calc.Harnesses;

/// <summary>What a short does in one load case, on doubles. A, °C, s.</summary>
internal sealed class ShortResult
{
    internal FaultEnding Ending { get; set; }

    internal string Reason { get; set; } = "";

    internal double? Least { get; set; }

    internal double? Greatest { get; set; }

    internal double? Remaining { get; set; }

    internal List<FuseOpening> Openings { get; } = [];

    internal List<FaultedWire> Wires { get; } = [];

    internal List<string> WrongFuses { get; } = [];

    /// <summary>Whether one of the wrong fuses opens first for sure.</summary>
    internal bool SurelyWrong { get; set; }

    /// <summary>A fuse through which the current that stays flows; null where it passes none.</summary>
    internal string? Holding { get; set; }

    internal List<string> LostLoads { get; } = [];

    internal static ShortResult Unknown(string reason) => new() { Ending = FaultEnding.Undetermined, Reason = reason };
}
