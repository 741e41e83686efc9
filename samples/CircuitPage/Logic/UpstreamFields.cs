namespace CircuitPage;

/// <summary>What lies between the supply and the circuit's fuse.</summary>
internal static class UpstreamFields
{
    /// <summary>The entry of the list of main fuses that stands for none.</summary>
    public const string None = "none";

    /// <summary>The entry that stands for a device with the values on its label.</summary>
    public const string Marked = "as marked";

    private static readonly Func<PageState, bool> HasMainFuse = state => state.Choice("main_fuse") != None;
    private static readonly Func<PageState, bool> IsMarked = Fields.When("main_fuse", Marked);

    public static Field[] All { get; } =
    [
        new("supply_lead_mOhm", "Supply lead, out and back", FieldKind.Number, FieldGroup.Upstream)
        {
            Hint = "From the supply to the fuse; 0 where the fuse sits on the terminal. Empty: not known, which can leave the breaking capacity undetermined.",
        },
        new("main_fuse", "Main fuse before it", FieldKind.Choice, FieldGroup.Upstream)
        {
            IsFolded = true, Choices = [new(None, "none, or not known"), .. Stock.FuseChoices, new(Marked, "another device, as marked")],
        },
        Number("main_fuse_A", "Rating of the main fuse", HasMainFuse) with { IsNeeded = true },
        Number("main_fuse_V", "Its d.c. voltage", IsMarked) with { Hint = "Not known if empty." },
        Number("main_fuse_breaks_A", "Its d.c. breaking capacity", IsMarked) with { Hint = "Not known if empty." },
        Number("main_fuse_lead_mOhm", "Lead from the supply to the main fuse, out and back", HasMainFuse) with { Hint = "0 on the terminal; not known if empty." },
        new("main_lead_size", "Wire of the lead behind the main fuse", FieldKind.Text, FieldGroup.Upstream)
        {
            IsUsed = HasMainFuse, IsFolded = true, Hint = "A size of the wires to choose from, such as 25 or 4 AWG; the lead is not judged if empty.",
        },
        Number("main_lead_m", "Length of that lead, one way", HasMainFuse) with { Hint = "Out and back by a wire each; needed with its wire." },
        Number("main_fuse_melts_A2s", "Least melting Joule integral of the main fuse", HasMainFuse) with { Hint = "From its data sheet; by its curve if empty." },
        Number("fuse_distance_m", "Wire between supply and fuse", _ => true) with { Hint = "Not known if empty." },
        new("fuse_lead_sheathed", "That wire is sheathed or enclosed", FieldKind.Tick, FieldGroup.Upstream) { IsFolded = true },
        Number("fuse_degC", "Air around the fuse", _ => true) with { Hint = "That of the wire if empty." },
    ];

    private static Field Number(string key, string label, Func<PageState, bool> isUsed) => new(key, label, FieldKind.Number, FieldGroup.Upstream) { IsUsed = isUsed, IsFolded = true };
}
