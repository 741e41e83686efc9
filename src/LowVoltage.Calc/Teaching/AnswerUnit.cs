using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Teaching;

/// <summary>A unit of an answer: how to come to the base unit of its dimension and back.</summary>
/// <remarks>Base units: SI, but mm² for a section and °C for a temperature. A gauge number is a unit of section too, though not a linear one.</remarks>
internal sealed class AnswerUnit
{
    internal const string Gauge = "AWG";

    private readonly double factor;
    private readonly double offset;
    private readonly bool isGauge;

    internal AnswerUnit(AnswerDimension dimension, double factor, double offset = 0, bool isGauge = false)
    {
        Dimension = dimension;
        this.factor = factor;
        this.offset = offset;
        this.isGauge = isGauge;
    }

    internal AnswerDimension Dimension { get; }

    /// <summary>The same unit with a prefix.</summary>
    internal AnswerUnit Times(double prefix) => new(Dimension, factor * prefix, offset);

    /// <summary>Whether a number can stand before the unit: 99 is no gauge.</summary>
    internal bool IsPossible(double value) => !isGauge || GaugeSection(value) > 0;

    internal double ToBase(double value) => isGauge ? GaugeSection(value) : (value + offset) * factor;

    internal double FromBase(double value) => isGauge ? GaugeOf(value) : (value / factor) - offset;

    // Numbers that are no gauge have no section; the grader then finds no match.
    private static double GaugeSection(double number) =>
        number is >= -3 and <= 40 && number == Math.Floor(number) ? AwgSize.FromNumber((int)number).Area.SquareMillimeters : -1;

    private static double GaugeOf(double squareMillimeters) =>
        36 - (39 * Math.Log(Math.Sqrt(squareMillimeters * 4 / Math.PI) / 0.127, 92));

    /// <summary>What the dimension is called in a sentence.</summary>
    internal static string Words(AnswerDimension dimension) => dimension switch
    {
        AnswerDimension.None => "a pure number",
        AnswerDimension.Voltage => "a voltage",
        AnswerDimension.Current => "a current",
        AnswerDimension.Resistance => "a resistance",
        AnswerDimension.Power => "a power",
        AnswerDimension.Length => "a length",
        AnswerDimension.Section => "a wire size",
        AnswerDimension.Time => "a time",
        AnswerDimension.Temperature => "a temperature",
        AnswerDimension.Charge => "a charge",
        AnswerDimension.Energy => "an energy",
        AnswerDimension.ResistancePerLength => "a resistance per length",
        AnswerDimension.CurrentDensity => "a current density",
        AnswerDimension.SectionPerCurrent => "a cross-section per ampere",
        _ => "a Joule integral",
    };
}
