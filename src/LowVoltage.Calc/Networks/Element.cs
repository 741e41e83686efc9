namespace LowVoltage.Calc.Networks;

/// <summary>One element of a network between two nodes, on SI doubles; what its numbers mean says its law.</summary>
internal struct Element
{
    // Slope of a current that tanh bends, so that what stands without voltage draws nothing; U beyond 2 V gets the whole current to 1e-17.
    internal const double Knee = 0.1;

    internal int Positive;
    internal int Negative;
    internal ElementLaw Law;
    internal double A;
    internal double B;
    internal double C;
    internal ICurrentLaw? Other;

    /// <summary>Above this current it disconnects; +∞ for most.</summary>
    internal double Trips;

    /// <summary>Whether it is out of the circuit: a load switched off, a source disconnected.</summary>
    internal bool Off;

    internal static Element Resistance(int a, int b, double ohms) => New(ElementLaw.Line, a, b, 0, 1 / ohms);

    internal static Element Wire(int a, int b, double ohms, double cubic) => New(ElementLaw.Cubic, a, b, ohms, cubic);

    internal static Element RunawayWire(int a, int b, double ohms, double k) => New(ElementLaw.Runaway, a, b, ohms, k);

    internal static Element Battery(int positive, int negative, double volts, double ohms) => New(ElementLaw.Line, positive, negative, volts, 1 / ohms);

    internal static Element Supply(int positive, int negative, double volts, double mostAmperes, double ohms = 0) =>
        New(ElementLaw.Supply, positive, negative, volts, mostAmperes, ohms);

    internal static Element Solar(int positive, int negative, double photoAmperes, double saturationAmperes, double slopeVolts) =>
        New(ElementLaw.Solar, positive, negative, photoAmperes, saturationAmperes, slopeVolts);

    internal static Element Drawn(int from, int to, double amperes) => New(ElementLaw.Drawn, from, to, amperes, 0);

    internal static Element Steady(int positive, int negative, double amperes, double knee = Knee) => New(ElementLaw.Steady, positive, negative, amperes, knee);

    /// <param name="cutOutVolts">The least voltage at which it works; 0 for none.</param>
    internal static Element Power(int positive, int negative, double watts, double cutOutVolts) => New(ElementLaw.Power, positive, negative, watts, cutOutVolts);

    internal static Element Lamp(int positive, int negative, double amperes, double ratedVolts) => New(ElementLaw.Lamp, positive, negative, amperes, ratedVolts);

    /// <param name="startAmperes">The current of the linear first step at no voltage.</param>
    /// <param name="startSiemens">Its slope.</param>
    internal static Element Of(int positive, int negative, ICurrentLaw law, double startAmperes = 0, double startSiemens = 0)
    {
        Element element = New(ElementLaw.Other, positive, negative, startAmperes, startSiemens);
        element.Other = law;
        return element;
    }

    private static Element New(ElementLaw law, int positive, int negative, double a, double b, double c = 0) => new()
    {
        Law = law,
        Positive = positive,
        Negative = negative,
        A = a,
        B = b,
        C = c,
        Trips = double.PositiveInfinity,
    };
}
