using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <summary>One cell of a published table: an allowed continuous current, with the column it was read from.</summary>
/// <remarks>Immutable and thread-safe.</remarks>
public sealed class TableRating
{
    internal TableRating(AmpacityTable table, string size, double amperes, double insulationCelsius, double columnCelsius)
    {
        Table = table;
        Size = size;
        Amperes = amperes;
        InsulationCelsius = insulationCelsius;
        ColumnCelsius = columnCelsius;
    }

    /// <summary>The table.</summary>
    public AmpacityTable Table { get; }

    /// <summary>The size as text: <c>14 AWG</c>, <c>2.5 mm²</c>.</summary>
    public string Size { get; }

    /// <summary>The current as published, before any factor.</summary>
    public ElectricCurrent Current => ElectricCurrent.FromAmperes(Amperes);

    /// <summary>The insulation rating that was asked for.</summary>
    public Temperature InsulationRating => Temperature.FromDegreesCelsius(InsulationCelsius);

    /// <summary>The insulation rating of the column that was read: the one asked for, or the next lower.</summary>
    public Temperature Column => Temperature.FromDegreesCelsius(ColumnCelsius);

    /// <summary>Whether a lower column stood in for the insulation rating that was asked for.</summary>
    public bool FromLowerColumn => ColumnCelsius < InsulationCelsius;

    /// <summary>The source of the number.</summary>
    public Reference Reference => Table.Reference;

    internal double Amperes { get; }

    internal double InsulationCelsius { get; }

    internal double ColumnCelsius { get; }

    /// <summary>What was read, in one line.</summary>
    public override string ToString() =>
        $"{Size}: {Accept.Text(Amperes)} A in the {Accept.Text(ColumnCelsius)} °C column of {Table.Name}"
        + (FromLowerColumn ? $" (the next lower column for insulation of {Accept.Text(InsulationCelsius)} °C)" : "");
}
