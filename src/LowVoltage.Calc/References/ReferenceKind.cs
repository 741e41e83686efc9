namespace LowVoltage.Calc.References;

/// <summary>What sort of authority stands behind a published value.</summary>
public enum ReferenceKind
{
    /// <summary>A law or regulation.</summary>
    Law,

    /// <summary>A technical standard.</summary>
    Standard,

    /// <summary>A handbook, advisory circular, textbook or manual.</summary>
    Handbook,

    /// <summary>A paper in a journal or the proceedings of a conference.</summary>
    Paper,

    /// <summary>Common practice of the trade; no published source.</summary>
    CommonPractice,

    /// <summary>A recollection of the document named; not read again. Confirm it in the document before relying on it.</summary>
    FromMemory,

    /// <summary>A recollection whose every value was compared, cell by cell, with an independent public transcription in 2026-11, and agrees. The document named was not read again.</summary>
    FromMemoryCompared,
}
