namespace LowVoltage.Calc.Networks;

/// <summary>How a solve ended.</summary>
internal enum NetworkEnd
{
    /// <summary>Solved.</summary>
    Solved,

    /// <summary>The loads of constant power without a least voltage need more than can reach them.</summary>
    PowerOutOfReach,

    /// <summary>The iteration did not settle; nothing is known.</summary>
    Unsettled,
}
