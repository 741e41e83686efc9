using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A solar panel: its current falls as its voltage rises, and never turns round.</summary>
internal sealed class EnclosurePanel(int positive, int negative, SolarPanel panel) : EnclosureElement(positive, negative)
{
    private const int Pieces = 32;

    internal override Interval Rest()
    {
        Interval found = new(double.PositiveInfinity, double.NegativeInfinity);
        double step = (Volts.High - Volts.Low) / Pieces;
        for (int k = 0; k < Pieces; k++)
        {
            Interval volts = new(Volts.Low + (k * step), k == Pieces - 1 ? Volts.High : Volts.Low + ((k + 1) * step));
            Interval amperes = new(-Given(volts.Low), -Given(volts.High));
            found = found.Hull(amperes - Interval.At(Amperes0) - (Siemens0 * (volts - Interval.At(Volts0))));
        }

        return found;
    }

    internal override double LeastSiemens() => 0;

    internal double SlopeAt(double volts) => Given(volts) > 0 ? panel.SaturationAmperes * Math.Exp(volts / panel.SlopeVolts) / panel.SlopeVolts : 0;

    private double Given(double volts) => Math.Max(0, panel.ShortAmperes - (panel.SaturationAmperes * (Math.Exp(Math.Min(volts / panel.SlopeVolts, 700)) - 1)));
}
