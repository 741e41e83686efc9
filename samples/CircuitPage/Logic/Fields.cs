using CircuitSchedule;

namespace CircuitPage;

/// <summary>All fields of the page, in their order.</summary>
internal static class Fields
{
    public static IReadOnlyList<Field> All { get; } = [.. CircuitFields.All, .. SupplyFields.All, .. LoadFields.All, .. WayFields.All, .. UpstreamFields.All, .. RulesFields.All];

    private static readonly Dictionary<string, Field> ByKey = All.ToDictionary(field => field.Key);

    public static Field? Find(string key) => ByKey.GetValueOrDefault(key);

    public static string Title(FieldGroup group) => group switch
    {
        FieldGroup.Circuit => "Circuit",
        FieldGroup.Supply => "Supply",
        FieldGroup.Load => "Load",
        FieldGroup.Way => "Way there and back",
        FieldGroup.Place => "Place",
        FieldGroup.Upstream => "Before the fuse",
        _ => "Limits and stock",
    };

    /// <summary>What the folded part of a group is called.</summary>
    public static string MoreTitle(FieldGroup group) => group switch
    {
        FieldGroup.Supply => "More about the supply",
        FieldGroup.Load => "More about the load",
        FieldGroup.Way => "More about the way",
        FieldGroup.Place => "More about the place",
        FieldGroup.Upstream => "A main fuse, and where the fuse sits",
        FieldGroup.Rules => "Drop limit, wires and fuses in stock",
        _ => "More",
    };

    /// <summary>Whether the choice of a field is this one.</summary>
    internal static Func<PageState, bool> When(string key, params string[] values) => state => Array.IndexOf(values, state.Choice(key)) >= 0;

    internal static Choice[] Of<T>(Dictionary<string, T> words) => CircuitPage.Choice.Plain(words.Keys);
}
