using LowVoltage.Calc;

namespace CircuitSchedule;

/// <summary>One column of the input file. The unit is part of the name and its case counts: mOhm is not MOhm.</summary>
internal sealed record Column(string Name, string Meaning, bool Required = false)
{
    private static readonly string[] Units = ["V", "A", "W", "Ah", "mOhm", "Ohm", "degC", "percent", "s", "m", "uF"];

    public static IReadOnlyList<Column> All { get; } =
    [
        new("circuit", "what the circuit is called", true),
        new("practice", $"the rules to follow: {Words.List(Words.Practices)}; those of --practice if empty"),
        new("supply", $"kind of supply: {SupplyCells.Kinds}; may be empty where its columns tell"),
        new("supply_V", "voltage: nominal voltage; current-limited, alternator: the voltage it holds"),
        new("supply_min_V", "voltage: lowest open-circuit voltage; supply_V if empty"),
        new("supply_max_V", "voltage: highest open-circuit voltage; supply_V if empty"),
        new("source_min_mOhm", "voltage: least internal resistance; empty with source_max_mOhm if not known"),
        new("source_max_mOhm", "voltage: greatest internal resistance"),
        new("limit_A", "current-limited: the limit; alternator: rated current"),
        new("cold_cranking_A", "lead-acid: cold-cranking current of one 12 V block"),
        new("cold_cranking_test", $"lead-acid: the test behind it: {Words.List(Words.CrankingTests)}; SAE J537 if empty"),
        new("blocks_in_series", "lead-acid: 12 V blocks in series; 1 if empty"),
        new("strings_in_parallel", "lead-acid: strings side by side; 1 if empty"),
        new("battery_degC", "lead-acid: battery temperature, -18 to 25; the whole of that range if empty"),
        new("cells_in_series", "LiFePO4: cells in series, 4 for 12.8 V"),
        new("capacity_Ah", "LiFePO4: capacity of the pack"),
        new("protection_A", "LiFePO4: current at which its protection disconnects; none counted if empty"),
        new("load", $"kind of load: {LoadCells.Kinds}; may be empty where its columns tell"),
        new("load_Ohm", "resistance: the resistance while it runs (or give load_W and load_rated_V)"),
        new("load_A", "current: the current; motor: running current"),
        new("load_W", "power: power given; lamp, resistance: power at load_rated_V"),
        new("load_rated_V", "lamp, resistance: voltage that load_W belongs to; motor: voltage that start_A and locked_A belong to, held at any voltage if empty"),
        new("efficiency_percent", "power: efficiency of the converter; 100 if empty"),
        new("start_A", "motor: highest current while starting"),
        new("locked_A", "motor: current with the rotor held"),
        new("start_s", "motor: how long starting takes"),
        new("thermal_cut_out", "motor: yes or no, a thermal cut-out of its own stops it when its rotor is held; no if empty"),
        new("input_uF", "any load: capacitor at its input, charged at switching on; none if empty"),
        new("duty_percent", "any load: share of the time that it is on; 100 if empty"),
        new("load_min_V", "any load: least voltage at the load on which it works; not checked if empty"),
        new("intermittent", "yes or no: short times only, which the light-aircraft drop limit distinguishes; no if empty"),
        new("feed_m", "length of the feed, one way, from fuse to load", true),
        new("return_m", "return by a wire like the feed: its length (give one of the three returns; a wire as long as the feed if all are empty)"),
        new("chassis_mOhm", "return by chassis, hull or frame: its resistance"),
        new("shared_mOhm", "return shared with other circuits: resistance of the shared part"),
        new("shared_other_A", "current of the others in the shared return"),
        new("joints_mOhm", "crimps, connectors, switches, fuse and holder, in all; none if empty"),
        new("supply_lead_mOhm", "lead from the supply to the fuse, out and back; not known if empty, which can leave the breaking capacity undetermined"),
        new("fuse_distance_m", "length of conductor between supply and fuse; not known if empty"),
        new("fuse_lead_sheathed", "yes or no: that conductor is sheathed or enclosed over its whole length; no if empty"),
        new("fuse_degC", "air around the fuse; that of the wire if empty"),
        new("starts", $"any load with a start: how often it starts in the life of its fuse; {CircuitRequirements.UsualStarts} if empty"),
        new("ambient_degC", "air around the wire where it is hottest", true),
        new("loaded_conductors", "current-carrying conductors that run together, this circuit's own included; its own alone if empty"),
        new("bundle_loading_percent", "share of the bundle's capacity in use, which the light-aircraft curves distinguish; 100 if empty"),
        new("insulation", $"of the wire: {Words.List(Words.Insulations)}, or a rating such as 105 degC; PVC if empty"),
        new("short_circuit_degC", "with a rating only: conductor temperature that the insulation stands for a short circuit; the rating if empty"),
        new("engine_space", "yes or no; no if empty"),
        new("altitude_m", "above sea level; 0 if empty"),
        new("drop_limit_percent", "allowed drop in per cent of nominal; the practice's own if both limits are empty"),
        new("drop_limit_V", "allowed drop in volts (give one of the two)"),
        new("note", "for your own remarks; not read"),
    ];

    private static readonly Dictionary<string, Column> ByName = All.ToDictionary(column => column.Name);

    public static bool IsKnown(string name) => ByName.ContainsKey(name);

    /// <summary>Whether the cells hold numbers that may have decimals: the name ends in a unit.</summary>
    public static bool IsNumber(string name) => IsKnown(name) && name.LastIndexOf('_') is > 0 and int unit && Units.Contains(name[(unit + 1)..]);

    /// <summary>The column that a misspelt name most likely means; null when none is near.</summary>
    public static Column? Nearest(string name)
    {
        string plain = Plain(name);
        return All.FirstOrDefault(column => Plain(column.Name) == plain)
            ?? All.FirstOrDefault(column => Plain(column.Name).Split('_') is [.. string[] words, _] && IsNumber(column.Name) && string.Join('_', words) == Stem(plain))
            ?? All.Where(column => column.Name.Length > 4).FirstOrDefault(column => IsOneSlipAway(Plain(column.Name), plain));
    }

    private static string Plain(string name) => name.Trim().ToLowerInvariant().Replace(' ', '_').Replace('-', '_');

    // Without the unit: feed_ft is near feed_m.
    private static string Stem(string name) => name.LastIndexOf('_') is > 0 and int unit ? name[..unit] : name;

    // One letter too many, too few, wrong, or two letters changed round.
    private static bool IsOneSlipAway(string name, string given)
    {
        int start = 0, end = 0, shorter = Math.Min(name.Length, given.Length);
        while (start < shorter && name[start] == given[start])
        {
            start++;
        }

        while (end < shorter - start && name[^(end + 1)] == given[^(end + 1)])
        {
            end++;
        }

        (string left, string right) = (name[start..^end], given[start..^end]);
        return (left.Length <= 1 && right.Length <= 1) || (left.Length == 2 && right.Length == 2 && left[0] == right[1] && left[1] == right[0]);
    }
}
