namespace LowVoltage.Calc.Ampacity;

/// <summary>How grouped circuits lie, by item of IEC 60364-5-52 Table B.52.17.</summary>
public enum Iec60364Arrangement
{
    /// <summary>Item 1: bunched in air, on a surface, embedded or enclosed.</summary>
    Bunched,

    /// <summary>Item 2: a single layer, touching, on a wall, a floor or an unperforated tray (method C).</summary>
    SingleLayerOnSurface,
}
