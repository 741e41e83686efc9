using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>U = E + R·I + B·I³: a resistance, a wire that its current warms, a battery.</summary>
internal sealed class EnclosureLine(int positive, int negative) : EnclosureElement(positive, negative)
{
    private const int Pieces = 8;

    /// <summary>E, V.</summary>
    internal Interval Source { get; set; }

    /// <summary>R, Ω, above 0.</summary>
    internal Interval Ohms { get; set; }

    /// <summary>B, Ω/A², zero or greater.</summary>
    internal Interval Cubic { get; set; }

    // By the currents that it may carry and by the voltages that it may see: the one is narrow near the middle, the other does not run away far from it.
    internal override Interval Rest() => ByAmperes().Meet(ByVolts());

    // A resistance more takes current away, of either sign; a piece at a time, because the straight line is taken off by interval.
    private Interval ByVolts()
    {
        Interval found = new(double.PositiveInfinity, double.NegativeInfinity);
        double step = (Volts.High - Volts.Low) / Pieces;
        for (int k = 0; k < Pieces; k++)
        {
            Interval volts = new(Volts.Low + (k * step), k == Pieces - 1 ? Volts.High : Volts.Low + ((k + 1) * step)), over = volts - Source;
            double least = CubicLine.At(over.Low, over.Low > 0 ? Ohms.High : Ohms.Low, over.Low > 0 ? Cubic.High : Cubic.Low, out _);
            double most = CubicLine.At(over.High, over.High > 0 ? Ohms.Low : Ohms.High, over.High > 0 ? Cubic.Low : Cubic.High, out _);
            found = found.Hull(new Interval(least, most) - Interval.At(Amperes0) - (Siemens0 * (volts - Interval.At(Volts0))));
        }

        return found;
    }

    // Straight in R, B and E, a cubic in I: its extremes lie at ends and where the cubic turns.
    private Interval ByAmperes()
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
