namespace LowVoltage.Calc.Checks;

/// <summary>What a check asks about: a designer chooses the wire first, then the fuse; what lies before both is as it is.</summary>
internal enum CheckGroup : byte
{
    Wire,
    Fuse,
    Supply,
}
