namespace LowVoltage.Calc.Harnesses;

/// <summary>What a fault is.</summary>
public enum HarnessFaultKind
{
    /// <summary>A node touches the way back of what it feeds, without resistance.</summary>
    ShortToReturn,

    /// <summary>A node touches the nearest ground point or chassis, without resistance, where that is another node than the way back.</summary>
    ShortToGround,

    /// <summary>A branch carries nothing any more: a broken wire, a lost ground, a loose joint, a switch that does not close, a fuse that was pulled.</summary>
    Interruption,
}
