namespace LowVoltage.Calc.Checks;

/// <summary>What a check asks: its name, its unit, and whether its limit is the least or the most allowed. One object a question; compare by reference.</summary>
/// <remarks>
/// Each kind stands in a file of its own with its sentence, its evaluation, its advice and its working, and registers itself there: <see cref="All"/> lists
/// them in the order in which a design is checked.
/// </remarks>
public abstract partial class CheckKind
{
    static CheckKind()
    {
        Catalogue = [.. Registered.Checks];
        Array.Sort(Catalogue, (a, b) => a.Order.CompareTo(b.Order));
        OfWire = Array.FindAll(Catalogue, check => check.Group == CheckGroup.Wire);
        OfFuse = Array.FindAll(Catalogue, check => check.Group == CheckGroup.Fuse);
        OfSupply = Array.FindAll(Catalogue, check => check.Group == CheckGroup.Supply);
        QuickOfFuse = Array.FindAll(OfFuse, check => check.IsQuick);
        RestOfFuse = Array.FindAll(OfFuse, check => !check.IsQuick);
        All = Array.AsReadOnly<CheckKind>(Catalogue);
    }

    private protected CheckKind(string id, string name, string unit, bool limitIsLeast)
    {
        Id = id;
        Name = name;
        Unit = unit;
        LimitIsLeast = limitIsLeast;
    }

    /// <summary>Every kind there is, in the order in which a design is checked.</summary>
    public static IReadOnlyList<CheckKind> All { get; }

    /// <summary>The name of the property that gives this kind: <c>VoltageDrop</c>. It stays the same in every language and version.</summary>
    public string Id { get; }

    /// <summary>The kind in plain words: <c>voltage drop</c>.</summary>
    public string Name { get; }

    /// <summary>The unit of value and limit: <c>V</c>.</summary>
    public string Unit { get; }

    /// <summary>Whether the limit is the least allowed; otherwise it is the most allowed.</summary>
    public bool LimitIsLeast { get; }

    internal static Check[] Catalogue { get; }

    internal static Check[] OfWire { get; }

    internal static Check[] OfFuse { get; }

    internal static Check[] OfSupply { get; }

    /// <summary>Those of the fuse that only compare numbers which are known already.</summary>
    internal static Check[] QuickOfFuse { get; }

    internal static Check[] RestOfFuse { get; }

    /// <summary>The kind of an identifier.</summary>
    /// <param name="id">An <see cref="Id"/>, letters as they are.</param>
    /// <returns>The kind; <c>null</c> when there is none.</returns>
    /// <exception cref="ArgumentNullException">The identifier is null.</exception>
    public static CheckKind? Find(string id)
    {
        _ = id ?? throw new ArgumentNullException(nameof(id));
        return Array.Find(Catalogue, check => check.Id == id);
    }

    /// <summary>The kind's name.</summary>
    public override string ToString() => Name;

    private static Check Register(Check check)
    {
        Registered.Checks.Add(check);
        return check;
    }

    // Filled by the initialisers of the kinds, in whatever order the compiler puts them, and by nothing after that; in a type of its own, so that it is there before the first of them.
    private static class Registered
    {
        internal static readonly List<Check> Checks = [];
    }
}
