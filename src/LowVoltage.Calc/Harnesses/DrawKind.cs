namespace LowVoltage.Calc.Harnesses;

/// <summary>What a draw is for.</summary>
internal enum DrawKind
{
    Supply,
    Length,
    Resistance,
    Joint,
    Load,
    Ambient,
}
