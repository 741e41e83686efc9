namespace LowVoltage.Calc.References;

/// <summary>A published source: carried by every table and printed by every result that used it.</summary>
/// <remarks>Immutable. Two references are equal when all their parts are.</remarks>
public sealed class Reference : IEquatable<Reference>
{
    /// <summary>The document: <c>IEC 60228</c>, <c>33 CFR 183.425</c>.</summary>
    public required string Title { get; init; }

    /// <summary>Edition or year: <c>2004</c>. Empty for common practice.</summary>
    public string Edition { get; init; } = "";

    /// <summary>Where in the document: a clause, table, page or equation.</summary>
    public string Locator { get; init; } = "";

    /// <summary>What sort of authority it is.</summary>
    public required ReferenceKind Kind { get; init; }

    /// <summary>What a careful user must know about the value: how it was read, a conflict between editions, a limit. May be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>A practice of the trade that no published source states.</summary>
    /// <param name="practice">The practice, in a few words.</param>
    public static Reference CommonPractice(string practice) =>
        new() { Title = practice ?? throw new ArgumentNullException(nameof(practice)), Kind = ReferenceKind.CommonPractice };

    /// <inheritdoc/>
    public bool Equals(Reference? other) =>
        ReferenceEquals(this, other)
        || (other is not null && Title == other.Title && Edition == other.Edition && Locator == other.Locator
            && Kind == other.Kind && Note == other.Note);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Reference);

    /// <inheritdoc/>
    public override int GetHashCode() => (Title, Edition, Locator, Kind).GetHashCode();

    /// <summary>Whether two references are the same in all their parts.</summary>
    /// <param name="left">A reference, or null.</param>
    /// <param name="right">Another reference, or null.</param>
    public static bool operator ==(Reference? left, Reference? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two references differ in a part.</summary>
    /// <param name="left">A reference, or null.</param>
    /// <param name="right">Another reference, or null.</param>
    public static bool operator !=(Reference? left, Reference? right) => !(left == right);

    /// <summary>The source in one line: <c>IEC 60228 (2004), Table 2 [standard]</c>.</summary>
    public override string ToString()
    {
        string edition = Edition.Length == 0 ? "" : $" ({Edition})";
        string locator = Locator.Length == 0 ? "" : $", {Locator}";
        return $"{Title}{edition}{locator} [{Describe(Kind)}]";
    }

    private static string Describe(ReferenceKind kind) => kind switch
    {
        ReferenceKind.Law => "law",
        ReferenceKind.Standard => "standard",
        ReferenceKind.Handbook => "handbook",
        ReferenceKind.Paper => "paper",
        ReferenceKind.CommonPractice => "common practice, no published source",
        _ => "from memory",
    };
}
