using LowVoltage.Calc.Quantities;

namespace LowVoltage.Calc.Documents;

/// <summary>A number within a range, ends included.</summary>
internal sealed class NumberForm(double least, double most, string unit) : Form
{
    internal double Least => least;

    internal double Most => most;

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind != ValueKind.Number)
        {
            return Refuse(node, reading, $"must be a number{(unit.Length == 0 ? "" : ", in " + unit)}; it was {node.Said}.");
        }

        return node.Number >= least && node.Number <= most
            ? node.Number
            : Refuse(node, reading, $"must be from {Accept.Text(least)} to {Accept.Text(most)}{(unit.Length == 0 ? "" : " " + unit)}; it was {Accept.Text(node.Number)}.");
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Text("type", "number");
        schema.Number("minimum", least);
        schema.Number("maximum", most);
    }
}

/// <summary>A whole number within a range.</summary>
internal sealed class CountForm(int least, int most) : Form
{
    internal int Least => least;

    internal int Most => most;

    internal override object Read(DocumentNode node, Reading reading)
    {
        if (node.Kind != ValueKind.Number)
        {
            return Refuse(node, reading, $"must be a whole number; it was {node.Said}.");
        }

        return node.Number >= least && node.Number <= most && node.Number == Math.Floor(node.Number)
            ? (int)node.Number
            : Refuse(node, reading, least == most
                ? $"must be {Accept.Text(least)}; it was {Accept.Text(node.Number)}."
                : $"must be a whole number from {Accept.Text(least)} to {Accept.Text(most)}; it was {Accept.Text(node.Number)}.");
    }

    internal override void Describe(SchemaWriter schema)
    {
        schema.Text("type", "integer");
        schema.Number("minimum", least);
        schema.Number("maximum", most);
    }
}

/// <summary>A number or, where a table has a blank cell, null, which is read as NaN.</summary>
internal sealed class CellForm(NumberForm number) : Form
{
    internal override object Read(DocumentNode node, Reading reading) => node.Kind == ValueKind.Null ? double.NaN : number.Read(node, reading);

    internal override void Describe(SchemaWriter schema)
    {
        schema.Texts("type", ["number", "null"]);
        schema.Number("minimum", number.Least);
        schema.Number("maximum", number.Most);
    }
}

/// <summary>The ranges of quantities: those of the library's public edge.</summary>
internal static class Ranges
{
    internal static NumberForm Amperes { get; } = new(Accept.Least, Accept.MostAmperes, "A");

    internal static NumberForm AmperesOrZero { get; } = new(0, Accept.MostAmperes, "A");

    internal static NumberForm Volts { get; } = new(Accept.Least, Accept.MostVolts, "V");

    internal static NumberForm Watts { get; } = new(Accept.Least, Accept.MostWatts, "W");

    internal static NumberForm Ohms { get; } = new(Accept.Least, Accept.MostOhms, "Ω");

    internal static NumberForm OhmsOrZero { get; } = new(0, Accept.MostOhms, "Ω");

    internal static NumberForm Meters { get; } = new(Accept.Least, Accept.MostMeters, "m");

    internal static NumberForm MetersOrZero { get; } = new(0, Accept.MostMeters, "m");

    internal static NumberForm Seconds { get; } = new(Accept.Least, Accept.MostSeconds, "s");

    internal static NumberForm SquareMillimeters { get; } = new(Accept.Least, Accept.MostSquareMillimeters, "mm²");

    internal static NumberForm JouleIntegrals { get; } = new(0, 1e24, "A²·s");

    /// <summary>Air around a wire or a fuse.</summary>
    internal static NumberForm Ambient { get; } = new(-60, 250, "°C");

    /// <summary>A conductor in a circuit, as <see cref="Circuits.ConductorTemperature"/> accepts it.</summary>
    internal static NumberForm ConductorCelsius { get; } = new(-100, 1000, "°C");

    /// <summary>The rating of an insulation.</summary>
    internal static NumberForm RatedCelsius { get; } = new(40, 400, "°C");

    internal static NumberForm Any { get; } = new(-1e300, 1e300, "");
}
