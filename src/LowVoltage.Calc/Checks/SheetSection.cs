namespace LowVoltage.Calc.Checks;

/// <summary>The sections of a calculation sheet that checks stand in, in their order.</summary>
internal enum SheetSection : byte
{
    Wire,
    Delivery,
    Service,
    Fuse,
    Start,
    FuseShort,
    FarEnd,
    Overload,
    Supply,
}
