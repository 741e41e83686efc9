using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>One element of a network whose numbers are only known between limits, seen from a middle: I = I₀ + S₀·(U − U₀) + r.</summary>
/// <remarks>What is left of its law beside that straight line, r, is bounded over intervals of its voltage U and current I. One owner: not thread-safe.</remarks>
internal abstract class EnclosureElement(int positive, int negative)
{
    internal int Positive => positive;

    internal int Negative => negative;

    /// <summary>Voltage and current of the middle, V, A.</summary>
    internal double Volts0 { get; set; }

    internal double Amperes0 { get; set; }

    /// <summary>Slope of the straight line, A/V; any number would do, the true slope at the middle makes what is left least.</summary>
    internal double Siemens0 { get; set; }

    /// <summary>Voltage across it, V.</summary>
    internal Interval Volts { get; set; }

    /// <summary>Current through it, A.</summary>
    internal Interval Amperes { get; set; }

    /// <summary>Bounds of r, A.</summary>
    internal abstract Interval Rest();

    /// <summary>No slope of its law over its intervals is less, A/V.</summary>
    internal abstract double LeastSiemens();

    /// <summary>What is left at a point of its law.</summary>
    protected double RestAt(double volts, double amperes) => amperes - Amperes0 - (Siemens0 * (volts - Volts0));
}
