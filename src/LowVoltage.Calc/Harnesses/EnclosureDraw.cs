using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A current between two limits, whatever the voltage: what a load with a duty cycle draws on the square average.</summary>
internal sealed class EnclosureDraw(int positive, int negative) : EnclosureElement(positive, negative)
{
    internal Interval Drawn { get; set; }

    internal override Interval Rest() => Drawn - Interval.At(Amperes0);

    internal override double LeastSiemens() => 0;
}
