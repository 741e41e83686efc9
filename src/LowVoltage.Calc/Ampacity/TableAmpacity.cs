using LowVoltage.Calc.Quantities;
using LowVoltage.Calc.References;

namespace LowVoltage.Calc.Ampacity;

/// <summary>Any table as a basis: read for a place by its own rule, or by the factors that the caller states for a table of his own.</summary>
internal sealed class TableAmpacity(AmpacityTable table, AmbientDerating? ambient = null, GroupingDerating? grouping = null)
    : AmpacityBasis(NameOf(table, ambient, grouping), ReferenceOf(table, ambient, grouping))
{
    internal AmpacityTable Table => table;

    internal AmbientDerating? Ambient => ambient;

    internal GroupingDerating? Grouping => grouping;

    internal override PreparedRating Prepare(Site at)
    {
        TablePlace place = new(at.AmbientCelsius, at.Insulation.ContinuousCelsius, at.LoadedConductors, at.LoadingShare, at.AltitudeMeters, at.EngineSpace, at.CircuitVolts);
        bool own = ambient is not null || grouping is not null;
        PlacedTable placed = own ? TableRules.WithFactors(table, place, ambient, grouping) : table.At(place);
        return new TablePrepared(table, placed.Factors)
        {
            Reference = Reference,
            RatedAmbientCelsius = placed.RatedAmbientCelsius,
            LimitCelsius = placed.ColumnCelsius,
            Gap = new LateText(placed.Gap),
            PlaceIsTooHard = placed.PlaceIsTooHard,
            Note = own && Array.Exists(placed.Factors, factor => factor.Value < 1) ? new LateText(() => Applied(placed.Factors)) : default,
        };
    }

    private string Applied(DeratingFactor[] factors) => $"Factors on the currents of {table.Name}: {string.Join("; ", factors.Where(factor => factor.Value < 1))}.";

    private static string Names(AmbientDerating? ambient, GroupingDerating? grouping) => string.Join(" and ", new[] { ambient?.Name, grouping?.Name }.Where(name => name is not null));

    private static string NameOf(AmpacityTable table, AmbientDerating? ambient, GroupingDerating? grouping) =>
        ambient is null && grouping is null ? table.Name : $"{table.Name} with {Names(ambient, grouping)}";

    // As strong as the weakest of table and factors.
    private static Reference ReferenceOf(AmpacityTable table, AmbientDerating? ambient, GroupingDerating? grouping)
    {
        Reference[] factors = [.. new[] { ambient?.Reference, grouping?.Reference }.OfType<Reference>()];
        Reference own = table.Reference;
        return factors.Length == 0 ? own : own.WithWeakest(factors)
            .WithLocator((own.Locator.Length == 0 ? "" : own.Locator + ", ") + "times " + Names(ambient, grouping))
            .WithNote((own.Note.Length == 0 ? "" : own.Note + " ") + $"Factors: {string.Join("; ", factors.Distinct())}.");
    }
}
