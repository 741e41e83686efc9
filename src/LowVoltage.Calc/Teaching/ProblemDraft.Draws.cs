using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.Working;
using UnitsNet;

namespace LowVoltage.Calc.Teaching;

/// <content>What recipes draw, and the units they draw it in.</content>
internal sealed partial class ProblemDraft
{
    private const double MetersPerFoot = 0.3048;

    internal string LengthUnit => Feet ? "ft" : "m";

    internal string PerLengthUnit => Feet ? "Ω/1000 ft" : "Ω/km";

    internal string TemperatureUnit => Fahrenheit ? "°F" : "°C";

    internal string SizeUnit => Gauges ? AnswerUnit.Gauge : "mm²";

    /// <summary>A load of this world at one of its supply voltages; of some kinds only, when kinds are named.</summary>
    internal LoadDraw DrawLoad(params LoadKind[] kinds) =>
        Draw(kinds.Length == 0 ? World.Loads : [.. World.Loads.Where(load => kinds.Contains(load.Kind))], World.Supplies);

    /// <summary>A load whose current comes back through the chassis of this world.</summary>
    internal LoadDraw DrawChassisLoad() =>
        World.Site.Chassis.Loads is { } loads ? Draw(loads, [WorldChassis.TrailerVolts]) : Draw(World.Loads, World.Supplies);

    private LoadDraw Draw(IReadOnlyList<WorldLoad> loads, IReadOnlyList<int> supplies)
    {
        WorldLoad load = Random.Pick(loads);
        int watts = load.LeastWatts + (load.Step * Random.Next(((load.MostWatts - load.LeastWatts) / load.Step) + 1));
        return new LoadDraw(load.Name, watts, Random.Pick(supplies));
    }

    /// <summary>A distance in this world, one way: half metres, or whole feet.</summary>
    internal decimal DrawDistance()
    {
        int halves = (2 * World.LeastMeters) + Random.Next((2 * (World.MostMeters - World.LeastMeters)) + 1);
        return Rounding.Trimmed(Feet ? Math.Round(halves / 2m / 0.3048m) : halves / 2m);
    }

    /// <summary>A temperature of so many °C, printed in the units of this problem.</summary>
    internal decimal DrawTemperature(int least, int most) =>
        Random.OnGrid(least, most, 5) is var celsius && Fahrenheit ? (celsius * 9 / 5) + 32 : celsius;

    /// <summary>A temperature that no formula needs, printed in the units of this problem.</summary>
    internal string PrintedCelsius(int celsius) => AnswerText.Of(Fahrenheit ? (celsius * 9 / 5m) + 32 : celsius, TemperatureUnit);

    /// <summary>A printed temperature in °C: the given itself, or a step that converts it.</summary>
    internal Symbol InCelsius(DrawnGiven given, string name)
    {
        if (!Fahrenheit)
        {
            return given.Symbol;
        }

        double celsius = Temperature.FromDegreesFahrenheit(given.Value).DegreesCelsius;
        return Step("the temperature in °C", name, (given.Symbol - 32) / 1.8, celsius, "°C", null, "θ in °C is (θ in °F − 32)/1.8.");
    }

    /// <summary>A hint on the conversion, where one is needed.</summary>
    internal void SayConversion()
    {
        if (Fahrenheit)
        {
            Say("(θ in °C is (θ in °F − 32)/1.8.)");
        }
    }

    internal Length LengthOf(double value) => Feet ? Length.FromFeet(value) : Length.FromMeters(value);

    internal double MetersOf(double value) => Feet ? value * MetersPerFoot : value;

    internal LinearResistance PerLength(double value) =>
        Feet ? LinearResistance.FromOhmsPerThousandFeet(value) : LinearResistance.FromOhmsPerKilometer(value);

    /// <summary>A wire that suits a current: neither red-hot nor absurdly thick.</summary>
    internal WireRow? DrawWire(double amperes)
    {
        List<WireRow> fitting = [.. WireRow.Sizes(Gauges).Where(row => amperes / row.SquareMillimeters is >= 1.2 and <= 6 || (row.IsSmallest && amperes / row.SquareMillimeters < 1.2))];
        return fitting.Count == 0 ? null : Random.Pick(fitting);
    }

    internal decimal PerLengthOf(WireRow row) => Feet ? row.PerThousandFeet : row.PerKilometer;
}
