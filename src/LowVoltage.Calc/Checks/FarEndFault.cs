namespace LowVoltage.Calc.Checks;

/// <summary>A dead short at the far end, on doubles: the least current, and the latest moment at which the fuse has opened.</summary>
internal struct FarEndFault
{
    internal FarEndEnding Ending;

    /// <summary>The least prospective current, A.</summary>
    internal double FirstAmperes;

    /// <summary>When the fuse has opened for sure, s.</summary>
    internal double Seconds;

    /// <summary>Current at that moment, the least of the fault, A.</summary>
    internal double LastAmperes;

    /// <summary>The Joule integral by then, A²s; zero where the current does not fall.</summary>
    internal double Joules;
}
