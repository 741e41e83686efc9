namespace LowVoltage.Calc.Networks;

/// <summary>What a load of constant power does in a solved network.</summary>
internal enum PowerState : byte
{
    /// <summary>It works (or the element is not such a load).</summary>
    On,

    /// <summary>It is below its least voltage and draws nothing.</summary>
    CutOut,

    /// <summary>It has cut out, yet sees enough voltage to start again: there are two states.</summary>
    Restartable,
}
