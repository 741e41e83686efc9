namespace LowVoltage.Calc.Checks;

/// <summary>How much of a check's answer somebody will read. The verdict is the same in all.</summary>
internal enum AskedFor
{
    /// <summary>Verdict and numbers.</summary>
    Everything,

    /// <summary>The verdict, and the numbers where it fails: to see which of several comes nearest.</summary>
    Failures,

    /// <summary>The verdict alone.</summary>
    Verdict,
}
