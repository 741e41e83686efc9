using LowVoltage.Calc.Circuits;

namespace LowVoltage.Calc.Networks;

/// <summary>A load of the circuits' room as elements of a network: its resistance, current and power side by side, and what has no closed form beside them.</summary>
internal static class LoadElements
{
    /// <summary>Adds the elements of a load.</summary>
    /// <param name="elements">Where to.</param>
    /// <param name="positive">Node of its positive end.</param>
    /// <param name="negative">Node of its negative end.</param>
    /// <param name="load">The load. Its least voltage, if it has one, is where its power cuts out.</param>
    /// <param name="state">What it is doing.</param>
    /// <param name="knee">Voltage over which a constant current comes up from nothing, V.</param>
    /// <param name="staysOn">Whether a power stays on below its least voltage, as the checks of a circuit count it.</param>
    internal static void Add(List<Element> elements, int positive, int negative, Load load, LoadState state, double knee = Element.Knee, bool staysOn = false)
    {
        LoadLaw law = load.LawAt(state);
        if (law.Siemens > 0)
        {
            elements.Add(Element.Resistance(positive, negative, 1 / law.Siemens));
        }

        if (law.Amperes > 0)
        {
            elements.Add(Element.Steady(positive, negative, law.Amperes, knee));
        }

        if (law.Watts > 0)
        {
            elements.Add(Element.Power(positive, negative, law.Watts, staysOn ? 0 : load.MinimumVolts ?? 0));
        }

        if (!law.Exact)
        {
            elements.Add(Element.Of(positive, negative, new Rest(load, state)));
        }
    }

    /// <summary>What a load draws beyond its closed form: its lamps.</summary>
    private sealed class Rest(Load load, LoadState state) : ICurrentLaw
    {
        // The slope of a lamp has no end at nothing; below a millivolt it is counted as the resistance that it is there.
        private const double Least = 1e-3;

        private readonly LoadLaw law = load.LawAt(state);

        public double CurrentAt(double volts, out double slope)
        {
            double u = Math.Abs(volts);
            if (u < Least)
            {
                slope = (load.AmperesAt(Least, state) - law.AmperesAt(Least)) / Least;
                return slope * volts;
            }

            slope = load.SlopeAt(u, state) - law.Siemens + (law.Watts / (u * u));
            return Math.Sign(volts) * (load.AmperesAt(u, state) - law.AmperesAt(u));
        }
    }
}
