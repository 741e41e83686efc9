namespace LowVoltage.Calc.Protection;

/// <summary>The current at which a fuse is closest to failing its wire. Ratio: wire time over fuse time; infinite when the wire never gets to its limit, 0 when the fuse need not open and the wire is not to be kept there.</summary>
internal readonly struct TightestPoint(double amperes, double ratio, ProtectionRegime regime)
{
    internal double Amperes { get; } = amperes;

    internal double Ratio { get; } = ratio;

    internal ProtectionRegime Regime { get; } = regime;
}
