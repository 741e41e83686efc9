using LowVoltage.Calc.Circuits;

namespace CircuitSchedule;

/// <summary>The supply of a row.</summary>
internal static class SupplyCells
{
    private static readonly Dictionary<string, Func<CircuitRow, Source?>> Readers = new(StringComparer.OrdinalIgnoreCase)
    {
        ["lead-acid"] = LeadAcid,
        ["LiFePO4"] = LithiumIronPhosphate,
        ["current-limited"] = CurrentLimited,
        ["alternator"] = Alternator,
        ["voltage"] = Voltage,
    };

    public static string Kinds => Words.List(Readers);

    public static Source? Read(CircuitRow row) => row.Kind("supply", Readers, Implied(row))?.Invoke(row);

    // Where only one kind has what the row gives, the kind goes without saying.
    public static string? Implied(CircuitRow row) =>
        row.Gives("cold_cranking_A") ? "lead-acid"
        : row.Gives("cells_in_series") ? "LiFePO4"
        : row.Gives("supply_V") && !row.Gives("limit_A") ? "voltage"
        : null;

    private static Source? LeadAcid(CircuitRow row)
    {
        double amperes = row.Number("cold_cranking_A");
        ColdCrankingStandard test = row.Has("cold_cranking_test") ? row.Choice("cold_cranking_test", Words.CrankingTests) : ColdCrankingStandard.SaeJ537;
        int blocks = row.Count("blocks_in_series", 1), strings = row.Count("strings_in_parallel", 1);
        double? celsius = row.OptionalNumber("battery_degC");
        return row.Build(
            () => Battery.LeadAcid(
                ElectricCurrent.FromAmperes(amperes), test, blocks, strings, celsius is { } known ? Temperature.FromDegreesCelsius(known) : null),
            ("coldCranking", "cold_cranking_A"),
            ("blocksInSeries", "blocks_in_series"),
            ("stringsInParallel", "strings_in_parallel"),
            ("temperature", "battery_degC"));
    }

    private static Source? LithiumIronPhosphate(CircuitRow row)
    {
        int cells = row.Count("cells_in_series");
        double ampereHours = row.Number("capacity_Ah");
        double? limit = row.OptionalNumber("protection_A");
        return row.Build(
            () => Battery.LithiumIronPhosphate(
                cells, ElectricCharge.FromAmpereHours(ampereHours), limit is { } amperes ? ElectricCurrent.FromAmperes(amperes) : null),
            ("cellsInSeries", "cells_in_series"),
            ("capacity", "capacity_Ah"),
            ("protectionLimit", "protection_A"));
    }

    private static Source? CurrentLimited(CircuitRow row)
    {
        double volts = row.Number("supply_V"), amperes = row.Number("limit_A");
        return row.Build(
            () => Source.CurrentLimited(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(amperes)),
            ("voltage", "supply_V"),
            ("limit", "limit_A"));
    }

    private static Source? Alternator(CircuitRow row)
    {
        double volts = row.Number("supply_V"), amperes = row.Number("limit_A");
        return row.Build(
            () => Source.Alternator(ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(amperes)),
            ("regulated", "supply_V"),
            ("rated", "limit_A"));
    }

    private static Source? Voltage(CircuitRow row)
    {
        double volts = row.Number("supply_V");
        ElectricPotential nominal = Volts(volts);
        ElectricPotential minimum = Volts(row.OptionalNumber("supply_min_V") ?? volts);
        ElectricPotential maximum = Volts(row.OptionalNumber("supply_max_V") ?? volts);
        (string, string)[] columns = [("minimum", "supply_min_V"), ("nominal", "supply_V"), ("maximum", "supply_max_V")];
        if (!row.Has("source_min_mOhm") && !row.Has("source_max_mOhm"))
        {
            return row.Build(() => Source.Ideal(minimum, nominal, maximum), columns);
        }

        // Both, because each is the dangerous one for another question: can the fuse break the current, and does it open at all.
        double least = row.Number("source_min_mOhm"), greatest = row.Number("source_max_mOhm");
        return row.Build(
            () => Source.BehindResistance(
                minimum, nominal, maximum, ElectricResistance.FromMilliohms(least), ElectricResistance.FromMilliohms(greatest)),
            [.. columns, ("leastResistance", "source_min_mOhm"), ("greatestResistance", "source_max_mOhm")]);
    }

    private static ElectricPotential Volts(double volts) => double.IsNaN(volts) ? default : ElectricPotential.FromVolts(volts);
}
