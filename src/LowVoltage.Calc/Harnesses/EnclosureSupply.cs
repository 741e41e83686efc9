using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A supply that gives up to its limit at a voltage behind a resistance and never takes any: at its limit, regulating, or idle.</summary>
internal sealed class EnclosureSupply(int positive, int negative, double limit, double ohms) : EnclosureElement(positive, negative)
{
    /// <summary>Voltage E that it regulates to, V.</summary>
    internal Interval Source { get; set; }

    /// <summary>Whether everywhere in its intervals it regulates.</summary>
    internal bool Regulates => Amperes.Low > -limit && Amperes.High < 0;

    /// <summary>Its slope where it regulates; without a resistance of its own a great one, beside which what is left makes up for it.</summary>
    internal double RegulatingSiemens => 1 / (ohms > 0 ? ohms : 1e-4 * Source.Middle / limit);

    // I counts into it: −limit at its limit, 0 idle, and in between U = E + R·I. Each of the three lines as far as it reaches into the intervals.
    internal override Interval Rest()
    {
        Interval found = new(double.PositiveInfinity, double.NegativeInfinity);
        double knee = Source.High - (ohms * limit);

        // Without a slope what is left is the current itself: to bound it by its own interval would hold it where it began.
        Interval through = Siemens0 == 0 ? new Interval(-limit, 0) : Amperes;
        if (Volts.Low <= knee && through.Low <= -limit)
        {
            found = found.Hull(RestAt(Volts.Low, -limit)).Hull(RestAt(Math.Min(Volts.High, knee), -limit));
        }

        if (Volts.High >= Source.Low && through.High >= 0)
        {
            found = found.Hull(RestAt(Math.Max(Volts.Low, Source.Low), 0)).Hull(RestAt(Volts.High, 0));
        }

        double low = Math.Max(-limit, through.Low), high = Math.Min(0, through.High);
        if (ohms > 0)
        {
            (low, high) = (Math.Max(low, (Volts.Low - Source.High) / ohms), Math.Min(high, (Volts.High - Source.Low) / ohms));
        }

        if (low <= high && Volts.High >= Source.Low + (ohms * low) && Volts.Low <= Source.High + (ohms * high))
        {
            Interval line = Interval.At(RestAt(ohms * low, low)).Hull(RestAt(ohms * high, high));
            found = found.Hull(line - (Siemens0 * Source));
        }

        // Rounding may leave a point just outside of all three.
        return found.Low <= found.High ? found : Interval.At(RestAt(Volts.Middle, Amperes.Middle));
    }

    internal override double LeastSiemens() => Regulates ? RegulatingSiemens : 0;
}
