namespace LowVoltage.Calc.Harnesses;

/// <summary>Where the way back from a node ends.</summary>
internal enum FeedEnd : byte
{
    /// <summary>Nowhere: no source has a terminal in this part.</summary>
    Dead,

    /// <summary>At the only terminal in this part.</summary>
    Source,

    /// <summary>At a part that lies between terminals: it is fed from several sides.</summary>
    SeveralSources,

    /// <summary>At a ring or wires in parallel.</summary>
    Ring,
}
