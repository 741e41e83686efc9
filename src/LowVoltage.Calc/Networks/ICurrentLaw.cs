namespace LowVoltage.Calc.Networks;

/// <summary>A current that never falls as the voltage rises, such as a measured curve. Called many times in a solve; it must not allocate.</summary>
internal interface ICurrentLaw
{
    /// <summary>Current in A from the positive to the negative end inside the element, at the voltage across it, and its slope in A/V, zero or greater.</summary>
    double CurrentAt(double volts, out double slope);
}
