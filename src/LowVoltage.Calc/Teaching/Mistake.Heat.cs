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

    internal static Mistake ReferenceTemperatureForgotten { get; } = new("20 °C not taken away",
        "The coefficient counts from 20 °C, so it multiplies θ − 20 °C, not θ.");

    internal static Mistake RiseForValue { get; } = new("only the change",
        "That is the change alone; the value asked for contains the starting value too.");

    internal static Mistake FahrenheitUsed { get; } = new("°F put where °C belongs",
        "The formula takes degrees Celsius; convert first: θ in °C is (θ in °F − 32)/1.8.");

    private static Mistake[] OfHeat =>
    [
        ColdForHot, ColdWhileHeating, TemperatureSign, ReferenceTemperatureForgotten, RiseForValue, FahrenheitUsed,
    ];
}
