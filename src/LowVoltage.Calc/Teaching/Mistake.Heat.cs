namespace LowVoltage.Calc.Teaching;

/// <content>Mistakes about temperature.</content>
public sealed partial class Mistake
{
    internal static Mistake ColdForHot { get; } = new("resistance at 20 °C where another temperature is asked",
        "The resistance stated for 20 °C was used unchanged; it must first be taken to the temperature asked for.");

    internal static Mistake ColdWhileHeating { get; } = new("resistance kept at its value for 20 °C",
        "The resistance rises while the wire heats, and the heating with it: so the temperature climbs exponentially, not in a straight line.");

    internal static Mistake TemperatureSign { get; } = new("sign of the temperature term",
        "The temperature term was taken with the wrong sign: a metal's resistance rises with temperature.");

    internal static Mistake ReferenceTemperatureForgotten { get; } = new("20 °C not subtracted",
        "The coefficient counts from 20 °C, so it multiplies θ − 20 °C, not θ.");

    internal static Mistake RiseForValue { get; } = new("only the change given",
        "That is the change alone; the value asked for includes the starting value.");

    internal static Mistake FahrenheitUsed { get; } = new("°F put where °C belongs",
        "The formula takes degrees Celsius; convert first: θ in °C is (θ in °F − 32)/1.8.");

    internal static Mistake NaturalLogarithm { get; } = new("natural logarithm instead of base 10",
        "The equation takes the logarithm to the base 10, so a power of 10 undoes it, not a power of e.");

    internal static Mistake OffsetForgotten { get; } = new("b left out",
        "The logarithm is that of temperatures counted from b below zero; add b before, and subtract it after.");

    internal static Mistake OffsetLeft { get; } = new("b not subtracted at the end",
        "The result of the power still contains b; subtract it to get the temperature.");

    private static Mistake[] OfHeat =>
    [
        ColdForHot, ColdWhileHeating, TemperatureSign, ReferenceTemperatureForgotten, RiseForValue, FahrenheitUsed, NaturalLogarithm, OffsetForgotten, OffsetLeft,
    ];
}
