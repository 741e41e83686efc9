using CircuitSchedule;

namespace CircuitPage;

/// <summary>What feeds the circuit.</summary>
internal static class SupplyFields
{
    private const string LeadAcid = "lead-acid";
    private const string Lithium = "LiFePO4";
    private const string Limited = "current-limited";
    private const string Alternator = "alternator";
    private const string Voltage = "voltage";

    private static readonly Func<PageState, bool> IsLeadAcid = Fields.When("supply", LeadAcid);
    private static readonly Func<PageState, bool> IsLithium = Fields.When("supply", Lithium);
    private static readonly Func<PageState, bool> IsVoltage = Fields.When("supply", Voltage);

    public static Field[] All { get; } =
    [
        new("supply", "Kind of supply", FieldKind.Choice, FieldGroup.Supply)
        {
            Choices =
            [
                new(LeadAcid, "lead-acid starter battery"), new(Lithium, "lithium iron phosphate pack"), new(Limited, "supply that holds a current limit"),
                new(Alternator, "alternator without a battery"), new(Voltage, "any supply, by its voltage"),
            ],
        },
        Number("cold_cranking_A", "Cold-cranking current", IsLeadAcid) with { IsNeeded = true, Hint = "Of one 12 V block, as its label says." },
        new("cells_in_series", "Cells in series", FieldKind.Count, FieldGroup.Supply) { IsUsed = IsLithium, IsNeeded = true, Hint = "4 for 12.8 V, 8 for 25.6 V, 16 for 51.2 V." },
        Number("capacity_Ah", "Capacity of the pack", IsLithium) with { IsNeeded = true },
        Number("protection_A", "Protection disconnects at", IsLithium) with { Hint = "No limit is counted if empty." },
        Number("supply_V", "Voltage", Fields.When("supply", Limited, Alternator, Voltage)) with { IsNeeded = true, Hint = "Nominal, or what it holds; at most 60 V." },
        Number("limit_A", "Current limit", Fields.When("supply", Limited, Alternator)) with { IsNeeded = true, Hint = "Of an alternator: its rated current." },
        Number("source_min_mOhm", "Least internal resistance", IsVoltage) with { Hint = "Without both resistances the short circuit cannot be judged." },
        Number("source_max_mOhm", "Greatest internal resistance", IsVoltage),
        new("cold_cranking_test", "Test behind that current", FieldKind.Choice, FieldGroup.Supply) { Choices = Fields.Of(Words.CrankingTests), IsUsed = IsLeadAcid, IsFolded = true },
        new("blocks_in_series", "12 V blocks in series", FieldKind.Count, FieldGroup.Supply) { IsUsed = IsLeadAcid, IsFolded = true, Hint = "1 if empty; 2 for 24 V." },
        new("strings_in_parallel", "Strings side by side", FieldKind.Count, FieldGroup.Supply) { IsUsed = IsLeadAcid, IsFolded = true, Hint = "1 if empty." },
        Number("battery_degC", "Battery temperature", IsLeadAcid) with { IsFolded = true, Hint = "The whole range from −18 °C (0 °F) to 25 °C (77 °F) if empty." },
        Number("supply_min_V", "Lowest voltage", IsVoltage) with { IsFolded = true, Hint = "The nominal voltage if empty." },
        Number("supply_max_V", "Highest voltage", IsVoltage) with { IsFolded = true, Hint = "The nominal voltage if empty." },
    ];

    private static Field Number(string key, string label, Func<PageState, bool> isUsed) => new(key, label, FieldKind.Number, FieldGroup.Supply) { IsUsed = isUsed };
}
