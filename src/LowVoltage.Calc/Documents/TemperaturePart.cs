using System.Text.Json;
using LowVoltage.Calc.Circuits;
using UnitsNet;

namespace LowVoltage.Calc.Documents;

/// <summary>How warm a stretch of wire is, in a document.</summary>
internal static class TemperaturePart
{
    private static readonly Member<double> At = Member.Needed<double>("conductor_C", Ranges.ConductorCelsius, "Conductor temperature at any current, °C.");
    private static readonly Member<double> Ambient = Member.Needed<double>("ambient_C", Ranges.ConductorCelsius, "Temperature without current, °C.");
    private static readonly Member<double> Rated = Member.Needed<double>("rated_A", Ranges.Amperes, "Current of one conductor that brings it to the rated temperature, A.");
    private static readonly Member<double> RatedCelsius = Member.Needed<double>("rated_C", Ranges.ConductorCelsius, "Temperature at that current, °C: above the ambient.");

    internal static EitherForm Form { get; } = new(
        "temperature",
        "How warm a stretch of wire is: at any current, or rising with the square of it.",
        null,
        new ObjectForm("temperature_fixed", "One temperature, whatever the current.", at => ConductorTemperature.At(Temperature.FromDegreesCelsius(at.Get(At))), [At]),
        new ObjectForm(
            "temperature_rising",
            "Ambient with no current, a rated temperature at a rated current.",
            at => ConductorTemperature.SelfHeated(Temperature.FromDegreesCelsius(at.Get(Ambient)), ElectricCurrent.FromAmperes(at.Get(Rated)), Temperature.FromDegreesCelsius(at.Get(RatedCelsius))),
            [Ambient, Rated, RatedCelsius]));

    internal static void Write(Utf8JsonWriter json, ConductorTemperature warmth)
    {
        json.WriteStartObject();
        if (warmth.DependsOnCurrent)
        {
            json.Put(Ambient, warmth.AmbientCelsius);
            json.Put(Rated, warmth.RatedAmperes);
            json.Put(RatedCelsius, Output.Undone(warmth.AmbientCelsius + warmth.RiseKelvins, warmth.RiseKelvins, hot => hot - warmth.AmbientCelsius));
        }
        else
        {
            json.Put(At, warmth.AmbientCelsius);
        }

        json.WriteEndObject();
    }
}
