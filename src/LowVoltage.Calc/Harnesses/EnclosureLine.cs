using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>U = E + R·I + B·I³: a resistance, a wire that its current warms, a battery.</summary>
internal sealed class EnclosureLine(int positive, int negative) : EnclosureElement(positive, negative)
{
    /// <summary>E, V.</summary>
    internal Interval Source { get; set; }

    /// <summary>R, Ω, above 0.</summary>
    internal Interval Ohms { get; set; }

    /// <summary>B, Ω/A², zero or greater.</summary>
    internal Interval Cubic { get; set; }

    // Straight in R, B and E, a cubic in I: its extremes lie at ends and where the cubic turns.
    internal override Interval Rest()
    {
        Interval found = new(double.PositiveInfinity, double.NegativeInfinity);
        for (int k = 0; k < 4; k++)
        {
            double ohms = (k & 1) == 0 ? Ohms.Low : Ohms.High, cubic = (k & 2) == 0 ? Cubic.Low : Cubic.High;
            found = found.Hull(At(Amperes.Low, ohms, cubic)).Hull(At(Amperes.High, ohms, cubic));
            double turn = (1 - (Siemens0 * ohms)) / (3 * Siemens0 * cubic);
            if (cubic > 0 && turn > 0)
            {
                double amperes = Math.Sqrt(turn);
                found = amperes > Amperes.Low && amperes < Amperes.High ? found.Hull(At(amperes, ohms, cubic)) : found;
                found = -amperes > Amperes.Low && -amperes < Amperes.High ? found.Hull(At(-amperes, ohms, cubic)) : found;
            }
        }

        return found - (Siemens0 * Source);
    }

    internal override double LeastSiemens() => 1 / (Ohms.High + (3 * Cubic.High * Amperes.Greatest * Amperes.Greatest));

    private double At(double amperes, double ohms, double cubic) => RestAt(amperes * (ohms + (cubic * amperes * amperes)), amperes);
}
