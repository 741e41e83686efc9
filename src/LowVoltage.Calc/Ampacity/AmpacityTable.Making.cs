using System.Diagnostics.CodeAnalysis;
using LowVoltage.Calc.Conductors;
using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;
using UnitsNet;

namespace LowVoltage.Calc.Ampacity;

/// <content>Tables of the caller's.</content>
public sealed partial class AmpacityTable
{
    /// <summary>A table of the caller's, from a standard that is not carried, a maker's sheet or a measurement.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="baseAmbient">The ambient temperature that the currents hold for, below the lowest insulation rating.</param>
    /// <param name="loadedConductors">How many loaded conductors lie together for these currents: 1 for a wire alone, 2 for a pair; 1 to 1000.</param>
    /// <param name="insulationRatings">A column each, rising, from 40 °C to 400 °C: the conductor temperature at these currents.</param>
    /// <param name="rows">One row a size, of one system (AWG may go on in kcmil), smallest first; a current a column.</param>
    /// <param name="reference">Where the numbers come from.</param>
    /// <returns>The table, of <see cref="Ampacity.RuleSet.Caller"/>.</returns>
    /// <exception cref="ArgumentNullException">An argument or a row is null.</exception>
    /// <exception cref="ArgumentException">
    /// The name is empty; there is no column or no row; the columns do not rise; or a row does not fit: another number of currents, another system of sizes, no more metal
    /// than the row before it, a current below that of a smaller size or of a lower rating. The message names the row and says why.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException">A temperature or the count is outside its range.</exception>
    /// <remarks>
    /// A table that a wire is read from is used as it stands: not above its ambient, not for more conductors together than it holds for. <see cref="AmbientDerating"/> and <see cref="GroupingDerating"/>
    /// add factors for a design (<see cref="AmpacityBasis.FromTable(AmpacityTable, AmbientDerating, GroupingDerating)"/>), <see cref="DeratingFactor.Create"/> one for a rating read by hand.
    /// </remarks>
    public static AmpacityTable Create(
        string name,
        Temperature baseAmbient,
        int loadedConductors,
        IReadOnlyList<Temperature> insulationRatings,
        IReadOnlyList<AmpacityRow> rows,
        Reference reference)
    {
        double[] columns = Rising(insulationRatings ?? throw new ArgumentNullException(nameof(insulationRatings)));
        _ = rows ?? throw new ArgumentNullException(nameof(rows));
        _ = name ?? throw new ArgumentNullException(nameof(name));
        if (string.IsNullOrWhiteSpace(name) || rows.Count == 0)
        {
            throw new ArgumentException(rows.Count == 0 ? "At least one row is needed; there was none." : "A name is needed; it was empty.", rows.Count == 0 ? nameof(rows) : nameof(name));
        }

        double ambient = Accept.Within(TableKey.Celsius(baseAmbient, nameof(baseAmbient)), -60, columns[0] - 1, "°C", nameof(baseAmbient));
        int together = Accept.Count(loadedConductors, 1, 1000, nameof(loadedConductors));
        return new AmpacityTable(Systems(rows), columns, Checked(rows, columns))
        {
            Name = name,
            Reference = reference ?? throw new ArgumentNullException(nameof(reference)),
            RuleSet = RuleSet.Caller,
            BaseAmbientCelsius = ambient,
            Conductors = together,
            Conditions = $"ambient {Accept.Text(ambient)} °C, {(together == 1 ? "one loaded conductor alone" : $"{Accept.Text(together)} loaded conductors together")}, as stated by the caller",
        };
    }

    /// <summary>The rows of a table of the caller's as they were given.</summary>
    internal IEnumerable<AmpacityRow> CallersRows()
    {
        for (int i = 0; i < sizes.Length; i++)
        {
            ElectricCurrent?[] row = new ElectricCurrent?[columns.Length];
            for (int j = 0; j < row.Length; j++)
            {
                double cell = amperes[(i * columns.Length) + j];
                row[j] = double.IsNaN(cell) ? null : ElectricCurrent.FromAmperes(cell);
            }

            yield return AmpacityRow.Create(SizeOf(sizes[i]), row);
        }
    }

    private ConductorSize SizeOf(double key) => systems[0] switch
    {
        SizeSystem.Kcmil => ConductorSize.FromKcmil(KcmilSize.FromKcmil(key)),
        SizeSystem.VehicleGauge => ConductorSize.FromVehicleGauge(VehicleGaugeSize.FromNumber((int)key)),
        SizeSystem.AmericanWireGauge when key > LargestGauge => ConductorSize.FromKcmil(KcmilSize.FromKcmil(key)),
        SizeSystem.AmericanWireGauge => ConductorSize.FromAwg(AwgSize.FromNumber((int)key)),
        SizeSystem.AircraftWire => ConductorSize.FromAircraft(AircraftWireSize.FromNumber((int)key)),
        _ => ConductorSize.FromMetric(MetricSize.FromSquareMillimeters(key)),
    };

    private static double[] Rising(IReadOnlyList<Temperature> insulationRatings)
    {
        double[] columns = new double[insulationRatings.Count];
        for (int i = 0; i < columns.Length; i++)
        {
            columns[i] = TableKey.Rounded(Accept.CelsiusWithin(insulationRatings[i], 40, 400, nameof(insulationRatings)));
            if (i > 0 && columns[i] <= columns[i - 1])
            {
                throw new ArgumentException($"insulationRatings[{Accept.Text(i)}] is {Accept.Text(columns[i])} °C, which is not above the {Accept.Text(columns[i - 1])} °C before it.", nameof(insulationRatings));
            }
        }

        return columns.Length > 0 ? columns : throw new ArgumentException("At least one insulation rating is needed; there was none.", nameof(insulationRatings));
    }

    private static SizeSystem[] Systems(IReadOnlyList<AmpacityRow> rows)
    {
        SizeSystem first = (rows[0] ?? throw new ArgumentNullException(nameof(rows), "rows[0] is null.")).Size.System;
        return first switch
        {
            SizeSystem.Metric => [SizeSystem.Iec60228, SizeSystem.RoadVehicle],
            SizeSystem.AmericanWireGauge => [SizeSystem.AmericanWireGauge, SizeSystem.Kcmil],
            _ => [first],
        };
    }

    private static double[][] Checked(IReadOnlyList<AmpacityRow> rows, double[] columns)
    {
        double[][] cells = new double[rows.Count][];
        double[] highest = new double[columns.Length];
        for (int i = 0; i < cells.Length; i++)
        {
            AmpacityRow row = rows[i] ?? throw new ArgumentNullException(nameof(rows), $"rows[{Accept.Text(i)}] is null.");
            if (Fault(row, i == 0 ? null : rows[i - 1], columns, highest) is { } fault)
            {
                throw new ArgumentException($"rows[{Accept.Text(i)}] ({row.Size}) {fault}.", nameof(rows));
            }

            cells[i] = [row.Size.Value, .. row.Amperes.ToArray()];
        }

        return cells;
    }

    // Also raises the highest current seen so far in each column.
    private static string? Fault(AmpacityRow row, AmpacityRow? before, double[] columns, double[] highest)
    {
        if (row.Amperes.Length != columns.Length)
        {
            return $"has {Accept.Text(row.Amperes.Length)} currents, but there are {Accept.Text(columns.Length)} insulation ratings";
        }

        if (before is not null && !Follows(before.Size, row.Size, out string? why))
        {
            return why;
        }

        double along = 0;
        for (int j = 0; j < columns.Length; j++)
        {
            double amperes = row.Amperes[j];
            if (double.IsNaN(amperes))
            {
                continue;
            }

            if (amperes < along || amperes < highest[j])
            {
                return $"carries {Accept.Text(amperes)} A at {Accept.Text(columns[j])} °C, less than "
                    + (amperes < along ? $"the {Accept.Text(along)} A of a lower insulation rating" : $"the {Accept.Text(highest[j])} A of a smaller size");
            }

            along = amperes;
            highest[j] = amperes;
        }

        return null;
    }

    private static bool Follows(ConductorSize before, ConductorSize size, [NotNullWhen(false)] out string? why)
    {
        bool sameSystem = size.System == before.System || (before.System == SizeSystem.AmericanWireGauge && size.System == SizeSystem.Kcmil);
        why = !sameSystem
            ? $"is of another system of sizes than {before}"
            : size.NominalArea.SquareMillimeters > before.NominalArea.SquareMillimeters ? null : $"has no more metal than {before}, the row before it";
        return why is null;
    }
}
