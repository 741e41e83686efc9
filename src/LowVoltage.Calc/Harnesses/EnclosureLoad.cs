using LowVoltage.Calc.Circuits;
using LowVoltage.Calc.Networks;
using LowVoltage.Calc.Numerics;

namespace LowVoltage.Calc.Harnesses;

/// <summary>A load that is on, drawing so many times what its law says: a part that rises with the voltage, and a power that falls with it.</summary>
internal sealed class EnclosureLoad(int positive, int negative, Load load, LoadState state, Interval factor, bool staysOn) : EnclosureElement(positive, negative)
{
    private const int Pieces = 32;

    // As the solver counts a lamp below a millivolt: as the resistance that it is there.
    private const double LeastLamp = 1e-3;

    private readonly LoadLaw law = load.LawAt(state);
    private readonly double share = load.HeatFactor(state);

    /// <summary>Whether its power may be off at any voltage: what it takes is then anything between nothing and the most.</summary>
    internal bool MayBeOut { get; set; }

    /// <summary>The least voltage at which its power works; 0 for none.</summary>
    internal double CutOut { get; } = staysOn || load.LawAt(state).Watts == 0 ? 0 : load.MinimumVolts ?? 0;

    internal double Watts => law.Watts;

    /// <summary>Heating over on-state current, where that is one number; else anything up to 1, or to what a motor's starts make of it.</summary>
    internal Interval HeatShare => double.IsNaN(share)
        ? new Interval(0, Math.Max(1, load.GreatestHeatFactor(state, Math.Min(Volts.Greatest, Quantities.Accept.MostVolts))))
        : Interval.At(share);

    internal override Interval Rest()
    {
        if (Watts > 0 && CutOut == 0 && Volts.Low <= 0)
        {
            return Interval.All;
        }

        Interval found = new(double.PositiveInfinity, double.NegativeInfinity);
        double step = (Volts.High - Volts.Low) / Pieces;
        for (int k = 0; k < Pieces; k++)
        {
            Interval volts = new(Volts.Low + (k * step), k == Pieces - 1 ? Volts.High : Volts.Low + ((k + 1) * step));

            // What is in proportion to the voltage is taken together with the straight line: it nearly cancels.
            Interval line = ((law.Siemens * factor) - Interval.At(Siemens0)) * volts;
            found = found.Hull(line + (factor * (Rising(volts) + Power(volts))));
        }

        return found - Interval.At(Amperes0 - (Siemens0 * Volts0));
    }

    internal override double LeastSiemens()
    {
        double power = Watts == 0 || MayBeOut ? 0 : Volts.Low > 0 ? factor.High * Watts / (Volts.Low * Volts.Low) : double.PositiveInfinity;
        return (factor.Low * law.Siemens) - power;
    }

    /// <summary>Slope of its law at a voltage, its power left out where that may be off.</summary>
    internal double SlopeAt(double volts)
    {
        double step = Math.Max(1e-4, 1e-6 * Math.Abs(volts));
        double rising = (Rising(Interval.At(volts + step)).High - Rising(Interval.At(volts - step)).Low) / (2 * step);
        return law.Siemens + rising - (Watts > 0 && !MayBeOut ? Watts / (volts * volts) : 0);
    }

    // Constant currents, lamps and measured loads: each rises with the voltage, or stays.
    private Interval Rising(Interval volts) => new(RisingAt(volts.Low), RisingAt(volts.High));

    private double RisingAt(double volts) => (law.Amperes * Math.Tanh(volts / Element.Knee)) + (law.Exact ? 0 : More(volts));

    private double More(double volts)
    {
        double u = Math.Abs(volts);
        double amperes = u < LeastLamp ? MoreAt(LeastLamp) * u / LeastLamp : MoreAt(u);
        return volts < 0 ? -amperes : amperes;
    }

    private double MoreAt(double volts) => load.AmperesAt(volts, state) - law.AmperesAt(volts);

    // Below its least voltage the solver counts it, until it has cut out, as the resistance that takes its power there.
    private Interval Power(Interval volts)
    {
        if (Watts == 0)
        {
            return default;
        }

        Interval on = Interval.Between(PowerAt(volts.Low), PowerAt(volts.High));
        on = CutOut > volts.Low && CutOut < volts.High ? on.Hull(Watts / CutOut) : on;
        return MayBeOut ? on.Hull(0).Hull(Watts / Math.Max(CutOut, volts.Low)) : on;
    }

    private double PowerAt(double volts) => volts < CutOut ? Watts * volts / (CutOut * CutOut) : Watts / volts;
}
