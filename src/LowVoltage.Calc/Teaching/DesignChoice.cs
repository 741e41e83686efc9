namespace LowVoltage.Calc.Teaching;

/// <summary>A wire and a fuse, right or wrong, and what follows from them.</summary>
/// <param name="Row">The wire.</param>
/// <param name="Rating">The fuse, in A.</param>
/// <param name="Ohms">Resistance out and back, in Ω.</param>
/// <param name="Amperes">Current, in A.</param>
internal sealed record DesignChoice(DesignRow Row, double Rating, double Ohms, double Amperes);
