using CircuitSchedule;

namespace CircuitPage;

/// <summary>The way out and back, and where the wire runs.</summary>
internal static class WayFields
{
    public const string Wire = "wire";
    public const string Chassis = "chassis";
    public const string Shared = "shared";

    /// <summary>The entry of the list of insulations that stands for a temperature of one's own.</summary>
    public const string Rated = "rated";

    public static Field[] All { get; } =
    [
        new("feed_m", "Length of the feed, one way", FieldKind.Number, FieldGroup.Way) { IsNeeded = true, Hint = "From the fuse to the load." },
        new("return", "Way back", FieldKind.Choice, FieldGroup.Way)
        {
            Choices = [new(Wire, "a wire like the feed"), new(Chassis, "chassis, hull or frame"), new(Shared, "shared with other circuits")],
        },
        new("return_m", "Length of the return", FieldKind.Number, FieldGroup.Way) { IsUsed = Fields.When("return", Wire), Hint = "As long as the feed if empty." },
        new("chassis_mOhm", "Resistance of the chassis", FieldKind.Number, FieldGroup.Way) { IsUsed = Fields.When("return", Chassis), IsNeeded = true, Hint = "Between its two ground points; measure it." },
        new("shared_mOhm", "Resistance of the shared part", FieldKind.Number, FieldGroup.Way) { IsUsed = Fields.When("return", Shared), IsNeeded = true },
        new("shared_other_A", "Current of the others in it", FieldKind.Number, FieldGroup.Way) { IsUsed = Fields.When("return", Shared), IsNeeded = true },
        new("joints_mOhm", "Joints in all", FieldKind.Number, FieldGroup.Way) { Hint = "Crimps, connectors, switches, fuse and holder; no resistance if empty." },
        new("ambient_degC", "Air around the wire", FieldKind.Number, FieldGroup.Place) { IsNeeded = true, Hint = "Where it is hottest." },
        new("loaded_conductors", "Loaded conductors that run together", FieldKind.Count, FieldGroup.Place) { Hint = "This circuit's own included; two if empty." },
        new("insulation", "Insulation", FieldKind.Choice, FieldGroup.Place)
        {
            Choices = [.. Fields.Of(Words.Insulations).Select(Spoken), new(Rated, "rated for a temperature")],
        },
        new("rated_degC", "Rated temperature", FieldKind.Number, FieldGroup.Place) { IsUsed = Fields.When("insulation", Rated), IsNeeded = true },
        new("short_circuit_degC", "Short-circuit temperature", FieldKind.Number, FieldGroup.Place)
        {
            IsUsed = Fields.When("insulation", Rated), Hint = "From the wire's data sheet; the rating if empty.",
        },
        new("engine_space", "Engine space", FieldKind.Tick, FieldGroup.Place) { IsFolded = true },
        new("altitude_m", "Height above sea level", FieldKind.Number, FieldGroup.Place) { IsFolded = true, Hint = "0 if empty." },
        new("bundle_loading_percent", "Share of the bundle's capacity in use", FieldKind.Number, FieldGroup.Place)
        {
            IsFolded = true, Hint = "The curves of light aircraft distinguish that; 100 % if empty.",
        },
    ];

    private static Choice Spoken(Choice choice) => choice with { Words = $"{choice.Value} ({Words.Insulations[choice.Value].ContinuousLimit.DegreesCelsius:0} °C)" };
}
