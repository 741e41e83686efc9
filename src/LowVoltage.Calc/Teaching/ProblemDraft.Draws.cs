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
    internal LoadDraw DrawChassisLoad()
    {
        isOnTrailer = World.Site.Chassis.Loads is not null;
        return World.Site.Chassis.Loads is { } loads ? Draw(loads, [WorldChassis.TrailerVolts]) : Draw(World.Loads, World.Supplies);
    }

    private LoadDraw Draw(IReadOnlyList<WorldLoad> loads, IReadOnlyList<int> supplies)
    {
        WorldLoad load = Random.Pick(loads);
        int watts = load.LeastWatts + Random.Next(load.MostWatts - load.LeastWatts + 1);
        return new LoadDraw(load.Name, load.Kind, watts, Random.Pick(supplies));
    }

    /// <summary>A voltage as a meter shows it at a supply of so many volts: a little below to well above, as batteries and chargers have it.</summary>
    internal decimal DrawVolts(int nominal) => Random.OnGrid(Math.Round(nominal * 0.97m, 1), Math.Round(nominal * 1.2m, 1), 0.1m);

    /// <summary>A distance in this world, one way: tenths of a metre, or half feet.</summary>
    internal decimal DrawDistance() => Feet
        ? Rounding.Trimmed(Random.OnGrid(Math.Ceiling(World.LeastMeters / 0.3048m), Math.Floor(World.MostMeters / 0.3048m), 0.5m))
        : Rounding.Trimmed(Random.OnGrid(World.LeastMeters, World.MostMeters, 0.1m));

    /// <summary>A temperature between so many °C, printed in the units of this problem: whole degrees.</summary>
    internal decimal DrawTemperature(int least, int most) =>
        Fahrenheit ? Random.OnGrid((least * 9 / 5) + 32, (most * 9 / 5) + 32, 1) : Random.OnGrid(least, most, 1);

    /// <summary>Where tables state resistance and resistivity.</summary>
    internal string At20 => Fahrenheit ? "68 °F (20 °C)" : "20 °C";

    internal string SectionUnit => Gauges ? "cmil" : "mm²";

    /// <summary>The cross-section of a size, as this problem prints it.</summary>
    internal decimal SectionOf(WireRow row) => Gauges ? Rounding.Figures(row.SquareMillimeters / Conductors.CircularMil.SquareMillimeters, 3) : Rounding.Figures(row.SquareMillimeters, 3);

    /// <summary>A size with its metal, and its cross-section where its name does not say it: a 14 AWG copper wire (4110 cmil).</summary>
    internal string WireOf(WireRow row, DrawnGiven section) => Gauges ? $"{Article(row.Text)} {row.Text} copper wire ({section})" : $"{Article(row.Text)} {section} copper wire";

    /// <summary>The article of what begins with a number: an 8 AWG wire, an 11 m length, a 6 mm² wire.</summary>
    internal static string Article(string size)
    {
        string whole = string.Concat(size.TakeWhile(c => c is >= '0' and <= '9'));
        return whole is "11" or "18" || (whole.Length > 0 && whole[0] == '8') ? "an" : "a";
    }

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

    /// <summary>A temperature that was found in °C, in the units of this problem: the symbol itself, or a step that converts it.</summary>
    internal Symbol InPrinted(Symbol celsius, string sought, string name) =>
        Fahrenheit ? Step(sought, name, (celsius * 1.8) + 32, "°F", null, "θ in °F is 1.8 times θ in °C, plus 32.") : celsius;

    internal double Printed(double celsius) => Fahrenheit ? (celsius * 1.8) + 32 : celsius;

    /// <summary>A rating in °C as US practice prints it, or plainly.</summary>
    internal string PrintedRating(int celsius) => Fahrenheit ? $"{PrintedCelsius(celsius)} ({AnswerText.Of(celsius, "°C")})" : PrintedCelsius(celsius);

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
