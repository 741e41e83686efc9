namespace LowVoltage.Calc.Circuits;

/// <summary>The part of a load's current that has a closed form: G·U + J + P/U, with U the voltage at the load.</summary>
/// <remarks>Exact is false when the load draws something more (a lamp), which only <see cref="Load.AmperesAt"/> knows.</remarks>
internal readonly struct LoadLaw(double siemens, double amperes, double watts, bool exact)
{
    internal double Siemens { get; } = siemens;

    internal double Amperes { get; } = amperes;

    internal double Watts { get; } = watts;

    internal bool Exact { get; } = exact;

    internal double AmperesAt(double volts)
    {
        double i = (Siemens * volts) + Amperes;
        return Watts > 0 ? i + (Watts / volts) : i;
    }

    internal LoadLaw Plus(in LoadLaw other) =>
        new(Siemens + other.Siemens, Amperes + other.Amperes, Watts + other.Watts, Exact && other.Exact);
}
