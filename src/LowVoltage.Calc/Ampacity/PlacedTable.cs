using LowVoltage.Calc.Conductors;

namespace LowVoltage.Calc.Ampacity;

/// <summary>How a table is read for a place.</summary>
internal delegate PlacedTable TableRule(AmpacityTable table, in TablePlace place);

/// <summary>A table at the column of one insulation, with the factors of one place; or the reason why it says nothing there.</summary>
/// <remarks>A design wraps it: the continuous current is the cell times the factors, none of which raises it.</remarks>
internal sealed class PlacedTable
{
    private readonly double product = 1;

    internal PlacedTable(AmpacityTable table, double columnCelsius, params DeratingFactor[] factors)
    {
        Table = table;
        ColumnCelsius = columnCelsius;
        RatedAmbientCelsius = table.BaseAmbientCelsius;
        Factors = factors;
        foreach (DeratingFactor factor in factors)
        {
            product *= Math.Min(factor.Value, 1);
        }
    }

    internal AmpacityTable Table { get; }

    /// <summary>Conductor temperature that the currents stand for, °C.</summary>
    internal double ColumnCelsius { get; }

    internal DeratingFactor[] Factors { get; }

    /// <summary>Why no size at all is rated here; empty when sizes are.</summary>
    internal string Gap { get; init; } = "";

    /// <summary>Whether the gap is the place's doing and not that the table is silent on this insulation.</summary>
    internal bool PlaceIsTooHard { get; init; }

    /// <summary>The ambient that the currents with these factors stand for, °C: where a place is cooler than the table, that of the table.</summary>
    internal double RatedAmbientCelsius { get; init; }

    /// <summary>The continuous current of a size here, A; false where the table says nothing of it.</summary>
    internal bool TryAmperes(SizeSystem system, double sizeKey, out double amperes)
    {
        bool rated = Gap.Length == 0 & Table.TryDesignAmperes(system, sizeKey, ColumnCelsius, out double cell);
        amperes = rated ? cell * product : 0;
        return rated;
    }
}
