using LowVoltage.Calc;

namespace CircuitPage;

/// <summary>What is fed.</summary>
internal static class LoadFields
{
    private const string Current = "current";
    private const string Power = "power";
    private const string Lamp = "lamp";
    private const string Resistance = "resistance";
    private const string Motor = "motor";

    private static readonly Func<PageState, bool> IsMotor = Fields.When("load", Motor);

    public static Field[] All { get; } =
    [
        new("load", "Kind of load", FieldKind.Choice, FieldGroup.Load)
        {
            Choices =
            [
                new(Current, "the same current at any voltage"), new(Power, "the same power at any voltage, such as a converter"), new(Lamp, "incandescent lamp"),
                new(Resistance, "resistance, such as a heater"), new(Motor, "motor"),
            ],
        },
        Number("load_A", "Current", Fields.When("load", Current, Motor)) with { IsNeeded = true, Hint = "Of a motor: while it runs." },
        Number("load_W", "Power", Fields.When("load", Power, Lamp, Resistance)) with { Hint = "Of a lamp or heater: at its rated voltage." },
        Number("load_rated_V", "Rated voltage", Fields.When("load", Lamp, Resistance, Motor)) with { Hint = "The voltage that these values belong to. Of a motor: held at any voltage if empty." },
        Number("load_Ohm", "Resistance while it runs", Fields.When("load", Resistance)) with { Hint = "Instead of power and rated voltage." },
        Number("efficiency_percent", "Efficiency", Fields.When("load", Power)) with { Hint = "100 % if empty." },
        Number("start_A", "Highest current while starting", IsMotor) with { IsNeeded = true },
        Number("locked_A", "Current with the rotor locked", IsMotor) with { IsNeeded = true },
        Number("start_s", "How long starting takes", IsMotor) with { IsNeeded = true },
        new("thermal_cut_out", "A thermal cut-out stops it when it stalls", FieldKind.Tick, FieldGroup.Load) { IsUsed = IsMotor },
        Number("load_min_V", "Least voltage on which it works", _ => true) with { IsFolded = true, Hint = "Not checked if empty." },
        Number("duty_percent", "Share of the time that it is on", _ => true) with { IsFolded = true, Hint = "100 % if empty." },
        Number("input_uF", "Capacitor at its input", _ => true) with { IsFolded = true, Hint = "Charged when it is switched on; none if empty." },
        new("starts", "Starts in the life of the fuse", FieldKind.Count, FieldGroup.Load)
        {
            IsFolded = true, Hint = $"{CircuitRequirements.UsualStarts} if empty; of a load with a start or a capacitor.",
        },
        new("intermittent", "Runs for short times only", FieldKind.Tick, FieldGroup.Load) { IsFolded = true, Hint = "The drop limit of light aircraft distinguishes that." },
    ];

    private static Field Number(string key, string label, Func<PageState, bool> isUsed) => new(key, label, FieldKind.Number, FieldGroup.Load) { IsUsed = isUsed };
}
